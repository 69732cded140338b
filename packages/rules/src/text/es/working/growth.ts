/** The working of sowing, stages, ripe fruit, tips and setting depth, in Spanish. */
export const growth: Record<string, string> = {
  "last day to sow": "último día para sembrar",
  "t_out - 6 weeks - d, d rounded up": "t_out - 6 semanas - d, d redondeado hacia arriba",
  "first day to sow": "primer día para sembrar",
  "t_out - 8 weeks - d": "t_out - 8 semanas - d",
  "temperature at the seed, day and night": "temperatura junto a la semilla, de día y de noche",
  "20 C, the cool end of a nursery's 20-24 C": "20 C, el extremo fresco de los 20-24 C de un vivero",
  "{1} C, the cool end of a nursery's 20-24 C": "{1} C, el extremo fresco de los 20-24 C de un vivero",
  "days from seedlings showing to the bed": "días desde que asoman las plántulas hasta la cama",
  "6 to 8 weeks": "6 a 8 semanas",
  "of these, days of hardening": "de estos, días de endurecimiento",
  "{1} to {2}, the last of them": "{1} a {2}, los últimos de ellos",
  "6 to 8, not adjusted to {1} C: the published rates of leaves are of other peppers, in warm houses":
    "6 a 8, sin ajustar a {1} C: las velocidades publicadas de las hojas son de otros pimientos, en invernaderos cálidos",
  "normal seedlings of a hundred seeds, as reckoned with":
    "plántulas normales de cien semillas, como se calcula",
  "table {1} % at this medium; the lower": "tabla {1} % a esta temperatura del sustrato; lo más bajo",
  "packet {1} %, table {2} % at this medium; the lower":
    "sobre {1} %, tabla {2} % a esta temperatura del sustrato; lo más bajo",
  "the table's normal seedlings at this medium":
    "las plántulas normales de la tabla a esta temperatura del sustrato",
  "{1} % of the seedlings": "{1} % de las plántulas",
  "wanted chance of enough plants": "probabilidad deseada de tener plantas suficientes",
  "heat the table asks from showing to {stage} ({basis})":
    "calor que pide la tabla desde que asoman hasta: {stage} ({basis})",
  "table, at this base": "tabla, con esta base",
  "heat this planting is to take, from its last note":
    "calor que ha de tomar esta plantación, desde su última nota",
  "spread of that": "dispersión de eso",
  "day that half of the courses reach it; eight in ten between {low} and {high}":
    "día en que la mitad de los cursos llega; ocho de cada diez entre {low} y {high}",
  "no day": "ningún día",
  "past years with the forecast, each with the spread":
    "años pasados con el pronóstico, cada uno con la dispersión",
  "past years with the forecast": "años pasados con el pronóstico",
  "day the seedlings show": "día en que asoman las plántulas",
  "by the table of emergence at {1} C": "según la tabla de emergencia a {1} C",
  "day from which they stand outside": "día desde el que están afuera",
  "set out": "trasplante",
  "seven weeks from showing": "siete semanas desde que asoman",
  "seven weeks from showing, the middle of 6 to 8": "siete semanas desde que asoman, el medio de 6 a 8",
  "{1} C, 24 by day and 18 by night": "{1} C, 24 de día y 18 de noche",
  "a usual year's heat for {1} days without extremes": "el calor de un año usual para {1} días sin extremos",
  "base above which heat is counted": "base por encima de la cual se cuenta el calor",
  "of the variety": "de la variedad",
  "of the variety, {from}": "de la variedad, {from}",
  "default where the variety's is not known": "lo habitual donde no se conoce la de la variedad",
  "above this a day's warmth brings no more": "por encima de esto el calor de un día no trae más",
  "mean temperature indoors": "temperatura media bajo techo",
  "given or usual": "dado o usual",
  "mean temperature of the coming week in the open; days go from {1} in cool years to {2} in warm ones":
    "temperatura media de la semana que viene al aire libre; los días van de {1} en años frescos a {2} en cálidos",
  "mean of the days' middles, past years with the forecast":
    "media de los puntos medios de los días, años pasados con el pronóstico",
  "heat from showing to yesterday": "calor desde que asomaron hasta ayer",
  "Σ single sine, L to U": "Σ seno simple, L a U",
  "heat of a leaf as published, above its own base":
    "calor de una hoja como está publicado, por encima de su propia base",
  "base {1} C": "base {1} C",
  "years that the coming days may be like": "años a los que los próximos días pueden parecerse",
  "spread of varieties about the table": "dispersión de las variedades alrededor de la tabla",
  "254 of 954 at first bloom": "254 de 954 en la primera flor",
  "spread of a stage about its planting's pace":
    "dispersión de una etapa alrededor del paso de su plantación",
  "215 of 2393 at maturity": "215 de 2393 en la madurez",
  "the seed list's days as a share of the table's heat":
    "los días de la lista de semillas como parte del calor de la tabla",
  "counted, ± 0.12 (cp)": "se cuenta, ± 0.12 (pc)",
  "shown; the farm's own first picks outrank it":
    "se muestra; pesan más las primeras cosechas de la propia finca",
  "own first pick of {1}, {2} days from setting out":
    "primera cosecha propia del {1}, {2} días desde el trasplante",
  "{weather}, ± 0.08 (cp)": "{weather}, ± 0.08 (pc)",
  "that season's weather": "el tiempo de esa temporada",
  "a usual year's weather": "el tiempo de un año usual",
  "pace before this planting's notes": "paso antes de las notas de esta plantación",
  own: "cosechas propias",
  list: "lista de semillas",
  "its spread": "su dispersión",
  "from {stage} to {1} true leaves: heat taken of heat asked":
    "desde: {stage}, hasta: {1} hojas verdaderas; calor tomado del calor pedido",
  "from {stage} to {next}: heat taken of heat asked":
    "desde: {stage}, hasta: {next}; calor tomado del calor pedido",
  "pace after it": "paso después de eso",
  "spread of the pace now": "dispersión del paso ahora",
  "when its fruit is picked": "cuándo se cosecha su fruto",
  "as the planting says": "como dice la plantación",
  "as the market type is": "según el tipo de mercado",
  "{at}, as its market type is picked": "{at}, como se cosecha su tipo de mercado",
  "heat from showing to the first green fruit, as stage reckons it":
    "calor desde que asoman hasta el primer fruto verde, como lo calcula el consejo de etapas",
  "heat from showing to the first colour fruit, as stage reckons it":
    "calor desde que asoman hasta el primer fruto con color, como lo calcula el consejo de etapas",
  "its day; eight in ten between {low} and {high}": "su día; ocho de cada diez entre {low} y {high}",
  "thermometer reading that counts as frost": "lectura del termómetro que cuenta como helada",
  "first autumn frost at the plants in the middle year; eight in ten between {low} and {high}":
    "primera helada de otoño junto a las plantas en el año intermedio; ocho de cada diez entre {low} y {high}",
  "counted in the station's years, site and covers in it":
    "se cuenta en los años de la estación, con el sitio y las cubiertas",
  "chance of a green fruit before the first frost":
    "probabilidad de un fruto verde antes de la primera helada",
  "chance of a colour fruit before the first frost":
    "probabilidad de un fruto con color antes de la primera helada",
  "each year's warmth against that year's frost": "el calor de cada año frente a la helada de ese año",
  "forecast at the plants for the night after {1}":
    "pronóstico junto a las plantas para la noche después del {1}",
  "forecast + site + cover": "pronóstico + sitio + cubierta",
  "fruit chills below": "el fruto sufre frío por debajo de",
  "on the shelf; taken alike on the plant": "en almacén; se toma igual en la planta",
  "fruit freezes at": "el fruto se congela a",
  "coolest place to keep fruit": "lugar más fresco para guardar fruto",
  "days at 5 C before mature green fruit shows chilling":
    "días a 5 C antes de que el fruto verde maduro muestre daño por frío",
  "warmth in which begun colour goes on": "calor con que sigue el color que empezó",
  "first day the labels of its sprays let fruit be picked":
    "primer día en que las etiquetas de sus aplicaciones dejan cosechar fruto",
  "day of spraying + pre-harvest days, the latest":
    "día de la aplicación + días antes de la cosecha, lo más tarde",
  "reading in force, where practice and publications differ":
    "lectura vigente, donde la práctica y las publicaciones difieren",
  "reading in force for a leggy plant, where the trade's rule and the trials differ":
    "lectura vigente para una planta espigada, donde la regla del oficio y los ensayos difieren",
  "chosen by the office": "escogida por la oficina",
  "default: nobody chose": "lo habitual: nadie escogió",
  "true leaves at the last count": "hojas verdaderas en la última cuenta",
  "note of {1}": "nota del {1}",
  "nobody counted": "nadie contó",
  "heat is counted above": "el calor se cuenta por encima de",
  "this planting's heat as a share of the table's": "el calor de esta plantación como parte del de la tabla",
  "from its notes and variety": "de sus notas y su variedad",
  "true leaves today": "hojas verdaderas hoy",
  "eight in ten between {low} and {high}": "ocho de cada diez entre {low} y {high}",
  "day of {1} true leaves": "día de {1} hojas verdaderas",
  "day of {1} true leaves: the window has closed": "día de {1} hojas verdaderas: la ventana se cerró",
  "from a medium at {1} C": "de un sustrato a {1} C",
  "from the heat since they showed, at a published heat per leaf of another species":
    "del calor desde que asomaron, con un calor por hoja publicado de otra especie",
  "rain today, recorded or forecast": "lluvia de hoy, registrada o pronosticada",
  "the larger": "lo mayor",
  "days that fruit came later on cut plants; {1} in another genotype":
    "días que el fruto llegó más tarde en plantas cortadas; {1} en otro genotipo",
  "the longer": "lo más largo",
  "heat it is taken for": "calor por el que se toma",
  "first fruit in colour, tip left": "primer fruto con color, con la punta",
  "first fruit mature green, tip left": "primer fruto verde maduro, con la punta",
  "the same, tip taken": "lo mismo, sin la punta",
  "first autumn frost at the plants": "primera helada de otoño junto a las plantas",
  "middle of {1} years": "mediana de {1} años",
  "chance of ripe fruit before frost, tip left":
    "probabilidad de fruto maduro antes de la helada, con la punta",
  "share of years and of the sum's spread": "parte de los años y de la dispersión de la suma",
  "accepted chance that frost comes first": "probabilidad aceptada de que la helada llegue antes",
  "no seed list and no earlier season of this farm: from published heat sums of chile":
    "sin lista de semillas ni temporada anterior de esta finca: de sumas de calor publicadas de chile",
  "first ripe fruit, tip left": "primer fruto maduro, con la punta",
  "first ripe fruit, tip taken": "primer fruto maduro, sin la punta",
  "{1} days at 24 C later": "{1} días a 24 C más tarde",
  "heat sum of the stage": "suma de calor de la etapa",
  "chance that it is ripe before frost, tip left":
    "probabilidad de que madure antes de la helada, con la punta",
  "chance that it is ripe before frost, tip taken":
    "probabilidad de que madure antes de la helada, sin la punta",
  "{1} years": "{1} años",
  "days by which fruit came later on plants cut back":
    "días que el fruto llegó más tarde en plantas recortadas",
  "the longer of two genotypes": "lo más largo de dos genotipos",
  "stem as last noted": "tallo como se anotó la última vez",
  "both noted; the later counts": "se anotaron los dos; cuenta el último",
  woody: "leñoso",
  "plants noted as leggy": "plantas anotadas como espigadas",
  "neither measured nor modelled": "ni medido ni modelado",
  "{how}, {1} days": "{how}, {1} días",
  "soil warm enough to set deeper": "suelo bastante tibio para plantar más hondo",
  "most stem to bury": "lo más de tallo que enterrar",
  "to the first true leaf at most": "a lo más hasta la primera hoja verdadera",
  "stem to bury": "tallo que enterrar",
  "because: {reason}": "porque: {reason}",
  grafted: "están injertadas",
  "because: woody": "porque: el tallo es leñoso",
  "not-leggy": "no están espigadas",
  "stem-unknown": "no se conoce el tallo",
  "soil-unknown": "no se conoce el suelo",
  "soil-cold": "el suelo está frío",
  "trade-rule": "la regla del oficio",
  "leggy-green-warm": "espigadas, tallo verde y suelo tibio",
  "stem buried, as tried": "tallo enterrado, como se prueba",
  "stem to bury by the rule": "tallo que enterrar según la regla",
  choice: "elección",
};
