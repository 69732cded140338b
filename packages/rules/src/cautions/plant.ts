import type { Caution } from "./types.ts";

export const plantCautions: Caution[] = [
  {
    id: "local-rules-first",
    version: 1,
    severity: "care",
    text: {
      en: "Local codes, product labels and licensed practice come first. This advice informs and does not replace them.",
      es: "Las normas locales, las etiquetas de los productos y la práctica profesional con licencia mandan. Este consejo informa y no las reemplaza.",
    },
  },
  {
    id: "graft-union-above-soil",
    version: 1,
    severity: "warning",
    text: {
      en: "Keep the graft union clear of the soil and of mulch heaped around it. If the top roots there, the rootstock protects nothing.",
      es: "Mantenga la unión del injerto fuera del suelo y lejos del acolchado amontonado. Si la parte de arriba echa raíces ahí, el portainjerto ya no protege nada.",
    },
  },
  {
    id: "stake-ends",
    version: 1,
    severity: "care",
    text: {
      en: "Stakes at face height injure eyes. Cap the ends, or cut them below or well above face height.",
      es: "Las estacas a la altura de la cara lastiman los ojos. Cubra las puntas, o córtelas más abajo o bien por encima de la cara.",
    },
  },
  {
    id: "clean-cut",
    version: 1,
    severity: "warning",
    text: {
      en: "Virus and bacteria go from plant to plant on hands and blades. Wash hands before and between beds, and after handling tobacco. Handle healthy plants first and leave sick ones alone. Use the blade's disinfectant as its label says, and cut away from your fingers.",
      es: "Los virus y las bacterias pasan de planta en planta con las manos y las cuchillas. Lávese las manos antes y entre cama y cama, y después de tocar tabaco. Trabaje primero las plantas sanas y deje en paz las enfermas. Use el desinfectante de la cuchilla como dice su etiqueta, y corte hacia afuera de sus dedos.",
    },
  },
];
