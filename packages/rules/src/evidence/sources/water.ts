import type { Source } from "../types.ts";

export const waterSources: Source[] = [
  {
    id: "fao56",
    cite: "Allen, R.G., Pereira, L.S., Raes, D., Smith, M. (1998). Crop evapotranspiration: guidelines for computing crop water requirements. FAO Irrigation and Drainage Paper 56. FAO, Rome.",
    kind: "handbook",
    year: 1998,
    url: "https://www.fao.org/4/x0490e/x0490e00.htm",
    status: "seen",
  },
  {
    id: "fao33",
    cite: "Doorenbos, J., Kassam, A.H. (1979). Yield response to water. FAO Irrigation and Drainage Paper 33. FAO, Rome. Read as restated in FAO Irrigation and Drainage Paper 56, eq. 90 and Table 24.",
    kind: "handbook",
    year: 1979,
    status: "secondary",
  },
  {
    id: "fao29",
    cite: "Ayers, R.S., Westcot, D.W. (1985). Water quality for agriculture. FAO Irrigation and Drainage Paper 29 rev. 1. FAO, Rome. Leaching requirement read as restated in FAO Irrigation and Drainage Paper 56, p. 180.",
    kind: "handbook",
    year: 1985,
    url: "https://www.fao.org/4/t0234e/t0234e00.htm",
    status: "secondary",
  },
  {
    id: "maas-hoffman-1977",
    cite: "Maas, E.V., Hoffman, G.J. (1977). Crop salt tolerance: current assessment. Journal of the Irrigation and Drainage Division ASCE 103(IR2):115-134. Read as restated in FAO Irrigation and Drainage Paper 56, eq. 89.",
    kind: "review",
    year: 1977,
    status: "secondary",
  },
  {
    id: "maas-1990",
    cite: "Maas, E.V. (1990). Crop salt tolerance. In: Agricultural Salinity Assessment and Management. ASCE Manuals and Reports 71. Read in the table of relative salt tolerance of herbaceous crops kept by the US Salinity Laboratory.",
    kind: "handbook",
    year: 1990,
    status: "secondary",
  },
  {
    id: "psu-drip-2013",
    cite: "Penn State Extension (26 June 2013). Determining how long to run drip irrigation systems for vegetables.",
    kind: "extension",
    year: 2013,
    status: "seen",
  },
  {
    id: "usu-vegetable-irrigation-2015",
    cite: "Utah State University Extension (March 2015). Vegetable irrigation: sweet pepper and tomato. Fact sheet.",
    kind: "extension",
    year: 2015,
    status: "seen",
  },
  {
    id: "georgia-pepper-irrigation-2017",
    cite: "Trials of bell pepper irrigated at 33 to 167 % of crop evapotranspiration, Tifton, Georgia, 2001-2005. HortScience 52(5):774-781 (2017).",
    kind: "trial",
    year: 2017,
    doi: "10.21273/HORTSCI11830-17",
    status: "seen",
  },
  {
    id: "fao-pepper-card",
    cite: "FAO Land and Water. Crop water information: pepper. Read in a mirrored copy.",
    kind: "handbook",
    status: "secondary",
  },
];
