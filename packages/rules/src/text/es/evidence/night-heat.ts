import type { ClaimWords } from "../../../evidence/types.ts";

export const nightHeat: Record<string, ClaimWords> = {
  "night-heat.floor": {
    finding: "Las plántulas de pimiento criadas bajo techo se mantienen a 16 C o más de noche.",
    design: "Costumbre del oficio.",
    size: null,
    effect: "16 C",
    limits:
      "Los óptimos de noche publicados para crecimiento y cuajado van de 10 a 27 C según la fuente y el propósito.",
    wouldChange: "Un ensayo de plántulas criadas a 12, 14 y 16 C de noche.",
  },
  "night-heat.heat-loss": {
    finding: "Un invernadero pierde U A dT por su cubierta y 0.33 V N dT con el aire que se fuga.",
    design: "Fórmula estándar de ingeniería, de memoria, no leída de nuevo.",
    size: null,
    effect: "dos aguas de 16 x 24 ft con 65 F de diferencia: 75,504 Btu/h con U 1.1 (GH-13, calculado)",
    limits: "Régimen constante, sin sol, piso ni calor guardado. El viento está dentro de la U de la tabla.",
    wouldChange: "El texto de la norma, o el combustible quemado en este invernadero.",
  },
  "night-heat.u-values": {
    finding:
      "Vidrio sencillo 1.1, plástico sencillo 1.1 a 1.2, plástico doble 0.7, plástico doble infrarrojo 0.5, doble pared 0.6 a 0.65, triple pared 0.5 Btu/(h ft2 F).",
    design:
      "Tabla de manual, de memoria; el valor del acristalamiento doble se leyó en una hoja de extensión.",
    size: null,
    effect: "5.68 W/(m2 K) por cada unidad",
    limits: "Cubiertas nuevas, secas, viento moderado. De un rango se toma el extremo que más gasta.",
    wouldChange: "El valor del fabricante para esta cubierta.",
  },
  "night-heat.second-layer": {
    finding: "Una segunda capa de acristalamiento ahorra cerca de un tercio.",
    design: "Estudio con un modelo, resumen.",
    size: "un modelo",
    effect: "34 % menos pérdida",
    limits:
      "De acristalamiento, no de un plástico corrido a mano: los huecos en los bordes pierden la mayor parte de ese ahorro.",
    wouldChange: "Combustible quemado con y sin el plástico en este invernadero.",
  },
  "night-heat.u-values-double": {
    finding: "Según la U del manual un plástico doble pierde 39 % menos que uno sencillo.",
    design: "Tabla de manual, de memoria.",
    size: null,
    effect: "39 % menos",
    limits: "La cubierta sola; las fugas se suman.",
    wouldChange: "El texto de la norma.",
  },
  "night-heat.screen": {
    finding: "Una pantalla térmica corrida de noche ahorra de 20 a 50 % del calor que se va por el techo.",
    design: "Hojas de extensión, de memoria; se toma 30 %.",
    size: null,
    effect: "20 a 50 %",
    limits: "Una pantalla cerrada sin huecos.",
    wouldChange: "El informe de prueba de la propia pantalla.",
  },
  "night-heat.infrared-film": {
    finding: "El plástico que guarda el infrarrojo y escurre las gotas usa de 15 a 20 % menos energía.",
    design: "Página de extensión.",
    size: null,
    effect: "15 a 20 %",
    limits: "Se muestra junto a la tabla; el 0.5 contra 0.7 de la tabla diría 29 %.",
    wouldChange: "Una prueba de este plástico.",
  },
  "night-heat.by-night": {
    finding: "Cuatro quintos del calor hacen falta de noche.",
    design: "Página de extensión.",
    size: null,
    effect: "80 %",
    limits: "De la calefacción de un invierno entero. Aquí los días se dejan al sol.",
    wouldChange: "Un medidor leído al anochecer y al amanecer.",
  },
  "night-heat.hours": {
    finding: "Las horas de una noche salen de la máxima de la tarde y la mínima de la mañana.",
    design: "Modelo del curso diario, leído en reimplementaciones públicas.",
    size: null,
    effect: null,
    limits: "Los frentes y las noches que se despejan siguen otro curso.",
    wouldChange: "Un pronóstico por hora o un registrador.",
  },
  "night-heat.fuels": {
    finding:
      "Un litro de propano tiene 7.1 kWh, de aceite de calefacción 10.7; un kilogramo de pellets 5.3, de leña seca al aire 4.1.",
    design: "Poderes caloríficos brutos de tablas, de memoria.",
    size: null,
    effect: null,
    limits:
      "La leña mojada tiene mucho menos. Lo que llega al aire es menos, según la eficiencia del calefactor.",
    wouldChange: "El valor del proveedor y la prueba del calefactor.",
  },
  "night-heat.mats": {
    finding: "Las esteras para plántulas usan de 12 a 20 W por pie cuadrado.",
    design: "Rango de extensión y de fabricantes, de memoria.",
    size: null,
    effect: "129 a 215 W/m2",
    limits: "Con termostato los usan solo una parte del tiempo.",
    wouldChange: "La placa de la estera.",
  },
  "night-heat.fleece": {
    finding: "Una manta térmica ligera mantiene las plantas de 2 a 3 F más tibias.",
    design: "Nota de extensión, al aire libre.",
    size: null,
    effect: "se toma 1.1 C",
    limits:
      "Medido al aire libre. En un invernadero con aire quieto puede ser más o menos; solo un termómetro debajo lo dice.",
    wouldChange: "Mínimas debajo y encima de la manta térmica en este invernadero.",
  },
};
