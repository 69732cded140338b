import type { Source, SourceKind, SourceStatus } from "../types.ts";

const source = (
  id: string,
  cite: string,
  url: string | undefined,
  more: { kind?: SourceKind; year?: number; status?: SourceStatus } = {},
): Source => ({
  id,
  cite,
  kind: more.kind ?? "extension",
  ...(more.year !== undefined && { year: more.year }),
  ...(url !== undefined && { url }),
  status: more.status ?? "seen",
});

/** Sources of look-closer and of the intervals on spray labels. Most were read in part: the passages on the sign or cause. */
export const diagnosisSources: Source[] = [
  source(
    "cfr-40-170-112",
    "40 CFR 170.112, Worker Protection Standard: Entry restrictions, as of July 1, 2007, paragraph (a). The revised standard of 2015 (40 CFR 170.407) was not re-read.",
    "http://edocket.access.gpo.gov/cfr_2007/julqtr/40cfr170.112.htm",
    { kind: "standard", year: 2007 },
  ),
  source(
    "npic-phi",
    "National Pesticide Information Center (2023). Preharvest Interval (PHI).",
    "https://npic.orst.edu/health/phi.html",
    { year: 2023 },
  ),
  source(
    "wsu-intervals",
    "Washington State University. Crop Protection Guide: Entry and Preharvest Intervals.",
    "https://cpg.treefruit.wsu.edu/pesticide-safety/entry-and-preharvest-intervals/",
  ),
  source(
    "ncsu-pepper-pests",
    "North Carolina State University Extension. Insect and Related Pests of Vegetables: Pests of Pepper. Read in part.",
    "https://content.ces.ncsu.edu/pests-of-pepper",
  ),
  source(
    "uky-entfact-301",
    "Bessin, R. University of Kentucky ENTFACT-301: Common Insects Attacking Peppers. Read in part.",
    "https://entomology.ca.uky.edu/ef301",
  ),
  source(
    "vt-pepper-maggot",
    "Barlow, V.M., Kuhar, T. Virginia Tech: Pepper Maggot in Sweet (Bell) Pepper. Read in part, as reprinted.",
    undefined,
    { status: "secondary" },
  ),
  source(
    "seal-martin-2016",
    "Seal, D.R., Martin, C.G. (2016). Pepper weevil preferences for specific pepper cultivars, plant parts, fruit colors, fruit sizes, and timing. Insects 7:9. Abstract.",
    undefined,
    { kind: "trial", year: 2016 },
  ),
  source(
    "umd-hg57",
    "University of Maryland (2002). HG 57, IPM Series: Peppers. A key from symptoms to possible causes.",
    "https://studylib.net/doc/14845671/ipm--series--peppers-symptoms-possible--causes-notes",
    { year: 2002 },
  ),
  source(
    "ucipm-pepper-damage",
    "University of California IPM. Peppers: check for the following pests or their damage. Read in part.",
    "http://ipm.ucanr.edu/PMG/C604/m604gppestdamage.html",
  ),
  source(
    "cornell-spider-mites",
    "Cornell University. Two-Spotted Spider Mites (on soybeans).",
    "https://cals.cornell.edu/field-crops/soybeans/insects-soybeans/two-spotted-spider-mites",
  ),
  source(
    "msstate-broad-mites",
    "Mississippi State University Extension (2016). Broad Mites. Bug's Eye View 2(16). Read in part.",
    "http://extension.msstate.edu/newsletters/bug%E2%80%99s-eye-view/2016/broad-mites-vol-2-no-16",
    { year: 2016 },
  ),
  source(
    "uga-broad-mites",
    "University of Georgia Extension, Colquitt County (2014). Broad Mites in Pepper.",
    "https://site.extension.uga.edu/colquittag/2014/10/broad-mites-in-pepper/",
    { year: 2014 },
  ),
  source(
    "msstate-p3747",
    "Mississippi State University Extension P3747: Damping-off in Vegetables. Read in part.",
    "http://extension.msstate.edu/publications/damping-vegetables",
  ),
  source(
    "ncsu-vdin-018",
    "Ritchie, D.F., Averre, C.W. North Carolina State University VDIN-0018: Bacterial Spot of Pepper and Tomato. Read in part.",
    "http://www.ces.ncsu.edu/depts/pp/notes/Vegetable/vdin018/vdin018.htm",
  ),
  source(
    "lsu-pepper-diseases",
    "Louisiana State University AgCenter. Disease image gallery: Pepper Diseases.",
    "https://www.lsuagcenter.com/portals/our_offices/departments/plant-pathology-crop-physiology/plant_disease_clinic/disease_image_gallery/herbs_vegetables/peppers/pepper-diseases",
  ),
  source(
    "bacterial-spot-warmth",
    "Extension texts on the warmth that bacterial spot of pepper likes, 24 to 30 C; none was re-read.",
    undefined,
    { status: "memory" },
  ),
  source(
    "ncsu-vdin-027",
    "Louws, F.J., Holmes, G.J., Ristaino, J.B. North Carolina State University VDIN-0027: Phytophthora Blight of Peppers and Cucurbits. Read in part.",
    "http://www.ces.ncsu.edu/depts/pp/notes/Vegetable/vdin027/vdin027.htm",
  ),
  source(
    "cornell-phytophthora-pepper",
    "Cornell University. Phytophthora blight on peppers. Read in part.",
    "http://blogs.cornell.edu/livegpath/gallery/peppers/phytophthora-blight-on-peppers",
  ),
  source(
    "inrae-capsici",
    "INRAE e-phytia. Phytophthora capsici on squash: biology, epidemiology. Read in part.",
    "http://ephytia.inra.fr/en/Contents/view/8092/Calabacin-y-calabaza-Biologia-epidemiologia",
  ),
  source(
    "ucipm-verticillium",
    "University of California IPM (2016). Verticillium wilt on peppers and eggplant.",
    "https://ipm.ucanr.edu/PMG/GARDEN/VEGES/DISEASES/pepvertwilt.html",
    { year: 2016 },
  ),
  source(
    "omafra-verticillium",
    "Ontario Ministry of Agriculture, Food and Rural Affairs. Ontario CropIPM, Peppers: Verticillium Wilt. Read in part.",
    "http://www.omafra.gov.on.ca/IPM/english/peppers/diseases-and-disorders/verticillium-wilt.html",
  ),
  source(
    "avrdc-verticillium",
    "Cerkauskas, R. AVRDC, The World Vegetable Center. Pepper Diseases: Verticillium Wilt.",
    undefined,
  ),
  source(
    "pnw-verticillium",
    "Pacific Northwest Plant Disease Management Handbook. Pepper: Verticillium Wilt.",
    "https://pnwhandbooks.org/plantdisease/host-disease/pepper-capsicum-spp-verticillium-wilt",
    { kind: "handbook" },
  ),
  source(
    "udel-southern-blight",
    "Brust, J. University of Maryland, in University of Delaware Weekly Crop Update: Southern Blight Problem in Peppers. Read in part.",
    "https://sites.udel.edu/weeklycropupdate/?p=24885",
  ),
  source(
    "ufl-southern-blight",
    "University of Florida, U-Scout pepper: Southern Blight.",
    "https://plantpath.ifas.ufl.edu/u-scout/pepper/southern-blight.html",
  ),
  source(
    "edis-vh054",
    "University of Florida EDIS VH054: Some Common Diseases of Pepper in Florida. Read in part.",
    "http://edis.ifas.ufl.edu/vh054",
  ),
  source(
    "ucipm-cucumber-mosaic",
    "University of California IPM. Peppers: Cucumber Mosaic.",
    "https://ipm.ucanr.edu/agriculture/peppers/cucumber-mosaic/",
  ),
  source(
    "avrdc-cmv",
    "Cerkauskas, R. AVRDC, The World Vegetable Center. Pepper Diseases: Cucumber Mosaic Virus.",
    undefined,
  ),
  source(
    "ucipm-spotted-wilt",
    "University of California IPM. Peppers: Tomato Spotted Wilt. Read in part.",
    "https://ipm.ucanr.edu/agriculture/peppers/tomato-spotted-wilt",
  ),
  source(
    "usu-spotted-wilt",
    "Nischwitz, C., Noorlander, M., Hubell, M.A. (2019). Utah State University: Tomato Spotted Wilt Virus of Tomato and Pepper. Read in part.",
    "https://extension.usu.edu/pests/research/tswv.php",
    { year: 2019 },
  ),
  source(
    "uga-b1569",
    "University of Georgia Extension B1569: nutrient deficiency of vegetables. Read in part (nitrogen).",
    "https://extension.uga.edu/publications/detail.html?number=B1569",
  ),
  source(
    "deficiency-keys",
    "Keys to nutrient shortages: those that move within the plant show on old leaves, the others on young ones. From memory, none re-read whole.",
    undefined,
    { kind: "handbook", status: "memory" },
  ),
  source(
    "ncsu-vdin-010",
    "Averre, C.W., Lilly, J.P. North Carolina State University VDIN-0010: High Soil Salts Injury to Vegetable Crops. Read in part.",
    "https://www.ces.ncsu.edu/depts/pp/notes/oldnotes/vg10.htm",
  ),
  source(
    "tamu-salt",
    "Texas A&M AgriLife Extension (2009). Excessive soluble salts (cucurbits).",
    "https://aggie-horticulture.tamu.edu/vegetable/cucurbit-problem-solver/leaf-disorders/salt-injury",
    { year: 2009 },
  ),
  source(
    "udel-growth-regulators",
    "University of Delaware Weekly Crop Update: Growth Regulator Herbicide Damage to Vegetables.",
    "https://sites.udel.edu/weeklycropupdate/?p=20607",
  ),
  source(
    "unl-drift",
    "Cue, K. University of Nebraska Extension: Herbicide Drift.",
    "https://extension.unl.edu/statewide/dodge/herbicide-drift",
  ),
  source(
    "tennessee-herbicide",
    "University of Tennessee. Diagnosing Suspected Herbicide Damage in Tomatoes. Read in part.",
    "https://herbicidestewardship.tennessee.edu/diagnosing-suspected-herbicide-damage-in-tomatoes/",
  ),
  source(
    "nmsu-h249",
    "Goldberg, N.P. New Mexico State University Guide H-249: Chile Pepper Disorders Caused by Environmental Stress. Read in part.",
    "https://pubs.nmsu.edu/_h/H249",
  ),
  source(
    "osu-vegnet-2020",
    "Ohio State University VegNet (2020). Blossom End Rot of Peppers.",
    "https://u.osu.edu/vegnetnews/2020/07/18/blossom-end-rot-of-peppers",
    { year: 2020 },
  ),
  source(
    "egro-chilling",
    "Lopez, R. (2022). Michigan State University, e-GRO: Chilling Injury Symptoms.",
    "http://egroblog.com/showblog.php?ID=175",
    { year: 2022 },
  ),
  source(
    "omafra-frost-wind",
    "Ontario Ministry of Agriculture, Food and Rural Affairs. Ontario CropIPM, Peppers: Frost Damage, Hail Injury, Sand Abrasion or Sandblasting.",
    "http://www.omafra.gov.on.ca/IPM/english/peppers/diseases-and-disorders/frost-damage.html",
  ),
  source(
    "purdue-waterlogged",
    "Purdue University. Waterlogged Vegetable Gardens. Read in part.",
    "https://www.purdue.edu/hla/sites/yardandgarden/waterlogged-vegetable-gardens/",
  ),
  source(
    "udel-flooding",
    "Johnson, G. University of Delaware Weekly Crop Update: Vegetable Recovery from Temporary Flooding. Read in part.",
    "https://extension.udel.edu/weeklycropupdate/?p=12153",
  ),
  source(
    "udel-wind",
    "Johnson, G. University of Delaware Weekly Crop Update: Wind and Sun Damage to Transplants.",
    "https://sites.udel.edu/weeklycropupdate/?p=5658",
  ),
  source(
    "diagnosis-patterns",
    "Chapter on diagnosing plant diseases in Trigiano, Windham and Windham, Plant Pathology: Concepts and Laboratory Exercises (10.1201/b12388-50). Abstract; title of the book from memory.",
    "https://www.taylorfrancis.com/books/9781135515850/chapters/10.1201/b12388-50",
    { kind: "handbook" },
  ),
  source(
    "wisc-pddc-sample",
    "University of Wisconsin Plant Disease Diagnostics Clinic. General Sample Collection. Read in part.",
    "https://pddc.wisc.edu/general-sample-collection-2/",
    { kind: "laboratory" },
  ),
  source(
    "clemson-sample",
    "Clemson University Plant and Pest Diagnostic Clinic. Plant Diagnostics Sample Collection. Read in part.",
    "https://clemson.edu/public/regulatory/plant-problem/guidelines.html",
    { kind: "laboratory" },
  ),
  source(
    "umaine-sample",
    "University of Maine Cooperative Extension. Submit a Plant Sample.",
    "https://extension.umaine.edu/ipm/how-to-send-a-plant-sample/",
    { kind: "laboratory" },
  ),
];
