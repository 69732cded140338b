import type { Source } from "../types.ts";

/** Sources of topping, and of grafting as setting-depth speaks of it. */
export const trainingSources: Source[] = [
  {
    id: "gisbert-2010",
    cite: "Gisbert, C., Sánchez-Torres, P., Raigón, M.D., Nuez, F. (2010). Phytophthora capsici resistance evaluation in pepper hybrids: agronomic performance and fruit quality of pepper grafted plants. Journal of Food, Agriculture and Environment 8(1). Abstract.",
    kind: "trial",
    year: 2010,
    url: "https://www.wflpublisher.com/Abstract/1465",
    status: "seen",
  },
  {
    id: "pinching-chitwan",
    cite: "Effect of different dates of pinching on growth and yield attributes of chilli pepper variety Marshal in Chitwan, Nepal (2024). Abstract.",
    kind: "trial",
    year: 2024,
    status: "seen",
  },
  {
    id: "pinching-baitadi",
    cite: "Aryal, S., Thapa, P., Panth, S., Bhatt, A., Thapa, B., Khanal, B. (2023). Effect of pinching on the growth and yield of chili (Capsicum annuum). Turkish Journal of Food and Agriculture Sciences 5(2):106-112. Abstract.",
    kind: "trial",
    year: 2023,
    doi: "10.53663/turjfas.1359572",
    status: "seen",
  },
  {
    id: "pinching-lamjung",
    cite: "Effect of pinching in vegetative and reproductive attributes of chilli (Capsicum annuum L.). Russian Journal of Agricultural and Socio-Economic Sciences 129(9):121-126 (2022). Abstract.",
    kind: "trial",
    year: 2022,
    status: "seen",
  },
  {
    id: "pinching-lalitpur",
    cite: "Effect of pinching methods on growth and yield of capsicum at Chapagaun, Lalitpur. AEDC 02(2025):50-57. Abstract.",
    kind: "trial",
    year: 2025,
    url: "https://aedc.com.my/aedc-02-2025-50-57/",
    status: "seen",
  },
  {
    id: "pruning-lamjung",
    cite: "Effect of different pruning methods in two varieties of chilli pepper on growth and yield traits in Lamjung, Nepal. AEDC 01(2024):53-63. Abstract.",
    kind: "trial",
    year: 2024,
    url: "https://aedc.com.my/aedc-01-2024-53-63/",
    status: "seen",
  },
  {
    id: "acta-hort-1060-249",
    cite: "Ribeiro, W.S., Costa, L.C., Pinto, C.M.F., Silva, F.C., Finger, F.L. (2015). Effect of pruning on ornamental characteristics of potted pepper (Capsicum spp.). Acta Horticulturae 1060:249-254. Abstract.",
    kind: "trial",
    year: 2015,
    url: "https://www.ishs.org/ishs-article/1060_37",
    doi: "10.17660/ActaHortic.2015.1060.37",
    status: "seen",
  },
  {
    id: "ijhs-stem-pruning",
    cite: "Effect of shoot pruning and fruit thinning on yield and qualitative characteristics of two greenhouse pepper (Capsicum annuum L.) cultivars. Iranian Journal of Horticultural Science. Abstract.",
    kind: "trial",
    url: "https://ijhs.ut.ac.ir/article_29372.html?lang=en",
    status: "seen",
  },
];
