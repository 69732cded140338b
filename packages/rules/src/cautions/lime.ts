import type { Caution } from "./types.ts";

const caution = (id: string, severity: Caution["severity"], en: string, es: string): Caution => ({
  id,
  version: 1,
  severity,
  text: { en, es },
});

/** What lime, sulfur and ash can do to people and buildings. */
export const limeCautions: Caution[] = [
  caution(
    "lime-caustic",
    "danger",
    "Burnt and hydrated lime burn eyes and skin, and burnt lime boils with water. Goggles, gloves, long sleeves and a mask; never in wind, never on wet skin. Rinse eyes with water at once and see a doctor. Store it dry, away from children, animals and anything that burns.",
    "La cal viva y la cal hidratada queman ojos y piel, y la cal viva hierve con el agua. Gafas de protección, guantes, mangas largas y mascarilla; nunca con viento, nunca sobre piel mojada. Enjuague los ojos con agua enseguida y vaya al médico. Guárdela seca, lejos de niños, animales y de todo lo que arde.",
  ),
  caution(
    "lime-dust",
    "warning",
    "Lime dust irritates eyes and lungs. Wear eye protection and a mask, and spread it on a still day.",
    "El polvo de cal irrita los ojos y los pulmones. Use protección para los ojos y mascarilla, y aplíquela un día sin viento.",
  ),
  caution(
    "lime-not-with-ammonium",
    "warning",
    "Never mix lime with ammonium or urea fertilisers or fresh manure, and never put them on the same ground at the same time: ammonia gas escapes, which hurts people and wastes nitrogen.",
    "Nunca mezcle cal con fertilizantes de amonio o urea ni con estiércol fresco, y nunca los ponga en el mismo suelo al mismo tiempo: se escapa gas amoníaco, que daña a la gente y desperdicia nitrógeno.",
  ),
  caution(
    "sulfur-dust",
    "danger",
    "Sulfur dust burns and can explode: no flame, no sparks, never stored with nitrate fertilisers or other oxidisers. It stings eyes and lungs: goggles and a mask. Never more at once than advised.",
    "El polvo de azufre arde y puede explotar: sin llama, sin chispas, nunca guardado con nitratos ni otros oxidantes. Arde en los ojos y los pulmones: gafas de protección y mascarilla. Nunca ponga de una sola vez más de lo aconsejado.",
  ),
  caution(
    "ash-embers",
    "danger",
    "Embers live for days in ash. Keep it outdoors in a metal bin with a tight metal lid, on bare ground, until it is stone cold; never in a bag, a box or a barn.",
    "Las brasas viven días dentro de la ceniza. Guárdela afuera en un bote de metal con tapa de metal ajustada, sobre suelo desnudo, hasta que esté totalmente fría; nunca en un saco, una caja o un granero.",
  ),
];
