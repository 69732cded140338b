/** What sow-by says, in Spanish. */
export const sowBy: Record<string, string> = {
  "sow-by.not.ended": "Esta plantación terminó.",
  "sow-by.not.sown": "Estas semillas ya se sembraron.",
  "sow-by.not.overwintered": "Estas plantas se guardaron durante el invierno; no hay nada que sembrar.",
  "sow-by.not.no-date":
    "Según años pasados no llega ninguna fecha de trasplante dentro del riesgo aceptado para plantas sembradas ahora. Siembre para el próximo año, o planee una cubierta.",
  "sow-by.decision.sow": "Siembre entre el {from} y el {by} para trasplantar el {out}.",
  "sow-by.decision.sow-earlier":
    "Siembre a más tardar el {by}, no el {sown}: plantas más tardías no estarán listas para trasplantar el {out}.",
  "sow-by.decision.sow-later":
    "Espere con la siembra hasta el {from}; sembradas el {sown}, las plantas esperarían demasiado antes del {out}.",
  "sow-by.decision.too-late":
    "Demasiado tarde para el {out}: pedía sembrar a más tardar el {by}. Sembradas hoy, las plantas están listas desde el {soonest}.",
  "sow-by.ends": "Termina con la siembra, y también con otro día de trasplante.",
  "sow-by.stakes.delay": "Cada día de retraso es un día de temporada.",
  "sow-by.stakes.late": "El día ya se pasó; cada uno más quita del final de la temporada.",
  "sow-by.step.seeds":
    "Siembre {seeds} semillas para {plants} plantas: {germination} brotan normales, {loss} se pierden después, y con esto alcanza con una probabilidad de {chance}.",
  "sow-by.step.emerge": "Con {c} en el sustrato, día y noche, las plántulas asoman después de unos {days}.",
  "sow-by.step.warmer":
    "Un sustrato a {c} ahorra unos {days}. Sobre una estera térmica mida en el sustrato, ponga ahí un termostato y respete la precaución sobre las esteras.",
  "sow-by.step.cooler":
    "Con este calor solo {pct} brotan normales. Cerca de {c} llegan igual de rápido y viven más.",
  "sow-by.step.late":
    "Siembre hoy y trasplante más tarde, o compre plantas de la edad correcta; no se salte el endurecimiento por ganar días.",
  "sow-by.step.pot-on":
    "Sembradas el último día, pase a macetas con la primera o segunda hoja verdadera, más o menos del {from} al {to}.",
  "sow-by.step.harden": "Endurézcalas desde el {day}.",
  "sow-by.step.out": "Trasplante el {day}, si las noches entonces lo permiten.",
  "sow-by.step.leaves":
    "Cuente hojas, no semanas: de 6 a 8 hojas verdaderas, planta corta y fuerte, ninguna flor abierta. Quite las bandejas del calor cuando la mayoría haya brotado.",
  "sow-by.missing.day":
    "El día que el productor tiene en mente para trasplantar, o al menos ocho años de mínimas y máximas diarias de una estación cercana.",
  "sow-by.missing.day-moves":
    "La siembra es de {least} a {most} antes; sin eso el día puede estar en cualquier parte de la temporada.",
  "sow-by.limit.weeks-memory":
    "De seis a ocho semanas desde que asoman las plántulas, con el endurecimiento incluido, es la cifra usual de las guías para productores, y no se volvió a leer. Un manual de lugares cálidos da de 25 a 35 días desde la siembra, para plantas más chicas.",
  "sow-by.limit.table":
    "Los días y las plántulas son de una sola serie de ensayos con temperaturas parejas, a 13 mm (1/2 pulgada) de hondo. Los cambios, las costras y la semilla vieja lo alargan.",
  "sow-by.limit.not-adjusted":
    "Las semanas no están ajustadas a los {c} donde siguen creciendo: las velocidades de hojas publicadas son de otros pimientos, en invernaderos cálidos. Más fresco tarda más.",
  "sow-by.limit.by-years":
    "Nadie planeó un día, así que es el más temprano que permiten los años pasados para plantas endurecidas.",
  "sow-by.limit.species": "La tabla es para el pimiento común. Otras especies suelen brotar más despacio.",
  "sow-by.change.medium": "Un termómetro en el sustrato por un día y una noche.",
  "sow-by.change.germination": "La germinación del sobre, o veinte semillas en un paño húmedo.",
  "sow-by.change.loss": "Cuántas plántulas se perdieron en otros años.",
  "sow-by.change.day": "El día que el productor tiene en mente.",
  "sow-by.change.own-weeks": "Las semanas que tomaron las plantas de este productor en otros años.",
  "sow-by.chart.title": "Días hasta que asoman las plántulas, según el calor del sustrato",
  "sow-by.chart.medium": "Sustrato",
  "sow-by.chart.days": "Días",
  "sow-by.chart.table": "Publicado",
  "sow-by.chart.yours": "Este sustrato",
};
