import type { ClaimWords } from "../../../evidence/types.ts";

export const settingDepth: Record<string, ClaimWords> = {
  "setting-depth.trade-rule": {
    finding:
      "La regla del oficio es no enterrar los pimientos: echan pocas raíces en el tallo, y un tallo leñoso enterrado se pudre.",
    design: "Práctica del oficio; guías de memoria permiten las hojas de semilla o la primera hoja verdadera",
    size: null,
    effect: null,
    limits: "No se halló ningún ensayo de pudrición del tallo enterrado en pimiento.",
    wouldChange: "Un ensayo que cuente pudrición y raíces en tallos enterrados.",
  },
  "setting-depth.lodging": {
    finding:
      "Puestos hasta las hojas de semilla o la primera hoja verdadera, los pimientos se acamaron menos que al nivel del cepellón; en Massachusetts la cosecha no cambió.",
    design: "Ensayos de campo de tres profundidades en Florida y Massachusetts, tres variedades",
    size: "cinco ensayos",
    effect:
      "Más fruto rojo en uno de dos años; el suelo junto a las raíces, más frío mientras más hondo estaban.",
    limits: "Plantas de tallo verde. En una primavera fresca el suelo más hondo es más frío.",
    wouldChange:
      "Ensayos en lugares frescos y ventosos que informen juntos la temperatura del suelo y el acame.",
  },
  "setting-depth.georgia": {
    finding:
      "'Jupiter' rindió más por planta puesta hasta las hojas de semilla o la primera hoja verdadera; 'Camelot' mostró solo una tendencia.",
    design: "Dos sitios, tres repeticiones, cinco plantas por parcela",
    size: "una temporada",
    effect: null,
    limits: "Una primavera cálida; una temporada.",
    wouldChange: "Más temporadas, y más frescas.",
  },
  "setting-depth.stem-roots": {
    finding:
      "No se halló ningún estudio de raíces que crezcan de tallos de pimiento enterrados. No se prometen raíces de más.",
    design: "Un hueco en lo publicado que se vio",
    size: null,
    effect: null,
    limits: "Que falte un estudio no prueba nada en ningún sentido.",
    wouldChange: "Un estudio que cave y cuente.",
  },
  "setting-depth.cold-soil": {
    finding:
      "Las guías piden de 16 a 18 °C a 10 cm; se toma el extremo cálido antes de que un tallo vaya más hondo.",
    design: "Guías de memoria; un ensayo midió suelo más frío a mayor profundidad",
    size: null,
    effect: null,
    limits: "Ninguna fuente fija una temperatura para plantar hondo.",
    wouldChange: "Un ensayo de profundidad por temperatura del suelo.",
  },
  "setting-depth.grafting": {
    finding:
      "Los portainjertos 'Foc' y 'Charlot' aguantaron Phytophthora capsici tan bien como SCM-334, y las plantas injertadas en ellos dieron más fruto.",
    design:
      "Dos variedades en dos portainjertos, contra plantas sin injertar e injertadas en sí mismas; inoculaciones",
    size: "un estudio, dos variedades",
    effect: "Cosecha vendible mayor en una de dos variedades",
    limits:
      "Lo que da un portainjerto depende de la variedad injertada. Que una unión bajo el suelo eche raíces y lo pierda es práctica del oficio.",
    wouldChange: "Un ensayo de pimientos injertados con la unión por debajo y por encima del suelo.",
  },
};
