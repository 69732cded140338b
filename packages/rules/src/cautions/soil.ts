import type { Caution } from "./types.ts";

const caution = (id: string, severity: Caution["severity"], en: string, es: string): Caution => ({
  id,
  version: 1,
  severity,
  text: { en, es },
});

/** What soil tests, fertilisers and manures can do to people, crops and water. */
export const soilCautions: Caution[] = [
  caution(
    "soil-no-conversion",
    "care",
    "Never compare numbers of two extractants, and never convert one into the other: the same soil reads differently by each.",
    "Nunca compare números de dos extractantes, y nunca convierta uno en otro: el mismo suelo da otro número con cada uno.",
  ),
  caution(
    "fertiliser-handling",
    "warning",
    "Fertilisers irritate eyes, skin and lungs. Read the label, wear gloves and eye protection, and keep them dry and away from children, animals, food and fuel.",
    "Los fertilizantes irritan los ojos, la piel y los pulmones. Lea la etiqueta, use guantes y protección para los ojos, y guárdelos secos y lejos de niños, animales, alimentos y combustible.",
  ),
  caution(
    "nitrate-leaching",
    "warning",
    "Nitrate washes into wells and streams. Never give more to be safe, never before heavy rain, and do not water past the roots.",
    "El nitrato se lava hacia pozos y arroyos. Nunca dé de más por si acaso, nunca antes de una lluvia fuerte, y no riegue más allá de las raíces.",
  ),
  caution(
    "nutrient-law",
    "care",
    "Nutrient plans, yearly limits, closed periods and distances to water and wells are set by local law. They come before this advice.",
    "Los planes de nutrientes, los límites anuales, las épocas prohibidas y las distancias al agua y a los pozos los fija la ley local. Mandan sobre este consejo.",
  ),
  caution(
    "phosphorus-runoff",
    "care",
    "Phosphate that runs off feeds algae. Keep it off slopes, ditches and wet or frozen ground, and work it in.",
    "El fosfato que se va con el agua alimenta a las algas. Que no caiga en laderas, zanjas ni suelo mojado o helado, e incorpórelo.",
  ),
  caution(
    "backflow",
    "danger",
    "Fertiliser drawn back into a well or main poisons drinking water. Inject only behind a working backflow preventer, as your code requires.",
    "El fertilizante que se devuelve a un pozo o a la red envenena el agua de beber. Inyecte solo detrás de una válvula antirretorno que funcione, como pide su norma.",
  ),
  caution(
    "ash-caustic",
    "danger",
    "Wood ash is caustic: it burns eyes, skin and lungs. Wear goggles, gloves and a mask, and never spread it in wind. Only from clean, untreated wood.",
    "La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar.",
  ),
  caution(
    "ash-not-with-ammonium",
    "warning",
    "Never mix ammonium or urea fertilisers with wood ash or lime, and never put them on the same ground at the same time: ammonia gas escapes, which hurts people and wastes nitrogen.",
    "Nunca mezcle fertilizantes de amonio o urea con ceniza de leña o cal, y nunca los ponga en el mismo suelo al mismo tiempo: se escapa gas amoníaco, que daña a la gente y desperdicia nitrógeno.",
  ),
  caution(
    "urea-work-in",
    "care",
    "Urea left on the surface loses ammonia to the air. Work it in or water it in the same day, and keep it off leaves.",
    "La urea que queda en la superficie pierde amoníaco al aire. Incorpórela o riéguela el mismo día, y que no toque las hojas.",
  ),
  caution(
    "oxidiser",
    "danger",
    "Nitrate fertilisers feed fire and can explode when mixed with fuel. Keep them from oil, fuel, sulfur, sawdust and sparks, and obey the storage law.",
    "Los nitratos alimentan el fuego y pueden explotar mezclados con combustible. Manténgalos lejos de aceite, combustible, azufre, aserrín y chispas, y cumpla la ley de almacenamiento.",
  ),
  caution(
    "chloride",
    "warning",
    "Chloride and salt near roots scorch peppers. Keep potassium chloride away from young plants and salty ground.",
    "El cloruro y la sal cerca de las raíces queman los pimientos. Mantenga el cloruro de potasio lejos de plantas jóvenes y de suelo salado.",
  ),
  caution(
    "manure-raw",
    "danger",
    "Raw manure carries germs that make people ill. Never on a standing crop. On certified ground in the US at least 120 days before harvest where fruit can touch soil, else 90 (7 CFR 205.203(c)); elsewhere follow your produce-safety rule. Wash hands and tools.",
    "El estiércol crudo lleva gérmenes que enferman a la gente. Nunca sobre un cultivo en pie. En suelo certificado en EE. UU., al menos 120 días antes de la cosecha donde el fruto puede tocar el suelo, si no 90 (7 CFR 205.203(c)); en otro lugar siga su norma de inocuidad. Lávese las manos y las herramientas.",
  ),
  caution(
    "grade-varies",
    "care",
    "Composts and manures differ many times over. Have this lot analysed before you rely on its numbers.",
    "Las compostas y los estiércoles varían muchísimo. Haga analizar este lote antes de confiar en sus números.",
  ),
  caution(
    "organic-dust",
    "care",
    "Dust of meals, composts and manures irritates lungs. Wear a mask in dry weather; keep meals from dogs and vermin.",
    "El polvo de harinas, compostas y estiércoles irrita los pulmones. Use mascarilla en tiempo seco; que no lleguen a las harinas los perros ni las plagas.",
  ),
  caution(
    "certifier-first",
    "warning",
    "This material is restricted on certified ground. Ask the certifier before it is used, and keep the record of the need.",
    "Este material está restringido en suelo certificado. Pregunte al certificador antes de usarlo y guarde el registro de la necesidad.",
  ),
];
