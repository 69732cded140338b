import type { Source } from "../types.ts";

/** Raw manure before harvest, and the nitrogen of manures. */
export const manureSources: Source[] = [
  {
    id: "cfr-7-205-203",
    cite: "Code of Federal Regulations, title 7, section 205.203 (National Organic Program: soil fertility and crop nutrient management practice standard), paragraphs (c)(1) and (c)(2). The section was opened down to the start of paragraph (c); the intervals and the composting terms were read as quoted by others.",
    kind: "standard",
    year: 2011,
    url: "https://www.govinfo.gov/content/pkg/CFR-2011-title7-vol3/xml/CFR-2011-title7-vol3-sec205-203.xml",
    status: "secondary",
  },
  {
    id: "cornell-gaps-amendments",
    cite: "Cornell University, National Good Agricultural Practices Program. Decision tree: soil amendments (raw manure, compost; intervals of the National Organic Program; no interval stated by the Produce Safety Rule where manure does not touch produce; work in within 72 hours).",
    kind: "extension",
    url: "https://cals.cornell.edu/national-good-agricultural-practices-program/resources/educational-materials/decision-trees/soil-amendments",
    status: "seen",
  },
  {
    id: "vt-fst-39",
    cite: "Virginia Tech Extension FST-39. Enhancing the safety of locally grown produce: use of manure and other soil amendments of animal origin (germs live three months or more in soil; aged or stacked manure counts as untreated).",
    kind: "extension",
    url: "https://pubs.ext.vt.edu/content/pubs_ext_vt_edu/en/FST/FST-39/FST-39NP.html",
    status: "seen",
  },
  {
    id: "montana-manure-plan",
    cite: "Montana State University Extension. Comprehensive nutrient management plan worksheet, step 5: nitrogen available from manure.",
    kind: "extension",
    url: "https://animalrangeextension.montana.edu/articles/natresourc/cnmp/nonprint/step5.htm",
    status: "seen",
  },
  {
    id: "cornell-organic-n-release",
    cite: "Cornell University, CSS 412, module 2, page 6: release of organic nitrogen from manures by animal, dry matter and year.",
    kind: "extension",
    url: "https://courses.cit.cornell.edu/css412/mod2/ext_m2_pg6.htm",
    status: "seen",
  },
  {
    id: "nmsu-cr579",
    cite: "New Mexico State University, Circular 579. Nitrogen in soil and groundwater: nitrate is the form held least.",
    kind: "extension",
    url: "https://pubs.nmsu.edu/_circulars/CR579",
    status: "seen",
  },
];
