import type { Caution } from "./types.ts";

/** What containers can do to roots, and acid to people. */
export const containerCautions: Caution[] = [
  {
    id: "hot-pots",
    version: 1,
    severity: "care",
    text: {
      en: "Dark pots in full sun cook the roots on the sunny side. Shade the pots, not the leaves; choose light ones or set them close together. Let hot water out of the hose first.",
      es: "Las macetas oscuras a pleno sol cuecen las raíces del lado soleado. Dé sombra a las macetas, no a las hojas; elija macetas claras o júntelas bien. Deje salir primero el agua caliente de la manguera.",
    },
  },
  {
    id: "acid-handling",
    version: 1,
    severity: "danger",
    text: {
      en: "Acids burn eyes and skin and their fumes burn lungs. Only trained people with goggles, gloves and apron; acid into water, never water into acid; never with bleach or fertiliser stock. The label and the law come first.",
      es: "Los ácidos queman ojos y piel, y sus vapores queman los pulmones. Solo personas capacitadas, con gafas de protección, guantes y delantal; el ácido en el agua, nunca el agua en el ácido; nunca con cloro ni con soluciones madre de fertilizante. La etiqueta y la ley mandan.",
    },
  },
  {
    id: "drain-water",
    version: 1,
    severity: "warning",
    text: {
      en: "What drains from fed pots is fertiliser. Catch it and give it to other plants or ground that can use it; keep it out of ditches, drains and wells.",
      es: "Lo que escurre de las macetas fertilizadas es fertilizante. Recójalo y déselo a otras plantas o a un suelo que lo aproveche; que no llegue a zanjas, desagües ni pozos.",
    },
  },
];
