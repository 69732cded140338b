import type { Caution } from "./types.ts";

export const warmthCautions: Caution[] = [
  {
    id: "cover-overheats",
    version: 1,
    severity: "warning",
    text: {
      en: "A closed cover in sun can kill every plant under it within an hour or two, even on a cold day. Whoever puts it up must be there to open it.",
      es: "Una cubierta cerrada al sol puede matar a todas las plantas que tiene debajo en una o dos horas, aun en un día frío. Quien la pone debe estar ahí para abrirla.",
    },
  },
  {
    id: "cold-pools",
    version: 1,
    severity: "care",
    text: {
      en: "Cold air pools in hollows and behind hedges. The lowest bed may freeze on a night when the thermometer by the house does not.",
      es: "El aire frío se junta en las hondonadas y detrás de los setos. La cama más baja puede helarse una noche en que el termómetro junto a la casa no llega a helar.",
    },
  },
  {
    id: "cold-look-alikes",
    version: 1,
    severity: "care",
    text: {
      en: "Herbicide drift, viruses, too much fertiliser and wet roots can look like cold. If the pattern does not follow the cold spots, look for another cause before throwing plants away.",
      es: "La deriva de herbicidas, los virus, el exceso de fertilizante y las raíces encharcadas pueden parecer frío. Si el daño no sigue los lugares fríos, busque otra causa antes de tirar plantas.",
    },
  },
  {
    id: "night-heat-fire",
    version: 1,
    severity: "danger",
    text: {
      en: "A heater that burns fuel gives off carbon monoxide: never without a flue or an open vent, never where people sleep. Electric heat stands dry, behind a residual-current device, away from film and fleece. Local fire and electrical codes come first.",
      es: "Un calefactor que quema combustible suelta monóxido de carbono: nunca sin chimenea o una ventila abierta, nunca donde duerme gente. La calefacción eléctrica va en lugar seco, detrás de un interruptor diferencial, lejos del plástico y de la manta térmica. Las normas locales de incendios y de electricidad mandan.",
    },
  },
  {
    id: "frost-fire-and-ice",
    version: 1,
    severity: "danger",
    text: {
      en: "Burn nothing under or beside a cover: film and fleece catch fire, and fumes kill. Open fires and orchard heaters need whatever permit the local fire and air codes ask for. Paths and covers are slippery with ice before dawn: go with a lamp and not alone.",
      es: "No queme nada debajo ni al lado de una cubierta: el plástico y la manta térmica se prenden, y los gases matan. Las fogatas y los calefactores de huerto necesitan el permiso que pidan las normas locales de incendios y de aire. Los caminos y las cubiertas están resbalosos de hielo antes del amanecer: vaya con lámpara y no vaya solo.",
    },
  },
  {
    id: "frost-water",
    version: 1,
    severity: "warning",
    text: {
      en: "Do not spray water on plants against frost unless a system built for it runs without a break until all ice has melted: a little water makes the damage worse, and ice breaks plants and covers. Keep wet fleece off the leaves: where it touches, they freeze.",
      es: "No rocíe agua sobre las plantas contra la helada, salvo con un sistema hecho para eso que trabaje sin parar hasta que se derrita todo el hielo: un poco de agua empeora el daño, y el hielo rompe plantas y cubiertas. Que la manta mojada no toque las hojas: donde toca, se hielan.",
    },
  },
];
