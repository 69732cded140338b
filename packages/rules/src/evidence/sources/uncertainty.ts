import type { Source } from "../types.ts";

/** How far inputs differ from what was measured, and how an answer's uncertainty is shared out over them. */
export const uncertaintySources: Source[] = [
  {
    id: "saltelli-2010",
    cite: "Saltelli, A., Annoni, P., Azzini, I., Campolongo, F., Ratto, M., Tarantola, S. (2010): Variance based sensitivity analysis of model output. Design and estimator for the total sensitivity index. Computer Physics Communications 181, 259-270. The estimators were read as libraries' manuals give them, not in the paper.",
    kind: "review",
    year: 2010,
    doi: "10.1016/j.cpc.2009.09.018",
    status: "secondary",
  },
  {
    id: "ishigami-homma-1990",
    cite: "Ishigami, T., Homma, T. (1990): An importance quantification technique in uncertainty analysis for computer models. Proceedings of ISUMA '90, IEEE, 398-403. From memory; its indices follow from its formula by hand.",
    kind: "review",
    year: 1990,
    status: "memory",
  },
  {
    id: "ferrari-vermeulen",
    cite: "Ferrari, T.J., Vermeulen, F.H.B.: Soil heterogeneity and soil testing. Netherlands Journal of Agricultural Science; the authors' summary was read, not the paper.",
    kind: "trial",
    url: "https://library.wur.nl/ojs/index.php/njas/article/view/17805",
    status: "seen",
  },
  {
    id: "foss-1975",
    cite: "Foss, J.E., Wright, W.R., Coles, R.H. (1975): Testing the accuracy of field textures. Soil Science Society of America Proceedings 39, 800-802; the abstract was read.",
    kind: "trial",
    year: 1975,
    status: "seen",
  },
  {
    id: "zhao-2021",
    cite: "Zhao, H., Sassenrath, G.F., Kirkham, M.B., Wan, N., Lin, X. (2021): Daily soil temperature modeling improved by integrating observed snow cover and estimated soil moisture in the USA Great Plains. Hydrology and Earth System Sciences 25; the abstract was read.",
    kind: "trial",
    year: 2021,
    doi: "10.5194/hess-25-4357-2021",
    status: "seen",
  },
  {
    id: "ascough-kiker-2002",
    cite: "Ascough, G.W., Kiker, G.A. (2002): The effect of irrigation uniformity on irrigation water requirements. Water SA; the abstract was read.",
    kind: "trial",
    year: 2002,
    status: "seen",
  },
  {
    id: "nolan-1997",
    cite: "Nolan, B.T., Ruddy, B.C., Hitt, K.J., Helsel, D.R. (1997): Risk of nitrate in groundwaters of the United States: a national perspective. Environmental Science and Technology 31, 2229-2236; the abstract was read.",
    kind: "data",
    year: 1997,
    url: "http://water.usgs.gov/nawqa/nutrients/pubs/est_v31_no8/",
    status: "seen",
  },
];
