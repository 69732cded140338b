/** What salt says, in Spanish. */
export const salt: Record<string, string> = {
  "salt.not.ended": "Esta plantación terminó.",
  "salt.not.unmeasured": "Nadie ha medido la sal de este suelo ni de esta agua.",
  "salt.not.containers":
    "Estas plantas están en macetas. Los límites de aquí son los del suelo en el terreno y no leen un sustrato de maceta.",
  "salt.not.harmless":
    "El suelo marca {ece} en la pasta saturada. A ese nivel la sal no les quita nada a los pimientos.",
  "salt.decision.fine": "La sal no les cuesta nada a estas plantas: use esta agua como está.",
  "salt.decision.watch":
    "La sal cuesta ahora cerca de {loss} de la cosecha. Evite que se junte, y mida de nuevo antes de hacer más.",
  "salt.decision.watch-none":
    "La sal todavía no cuesta casi nada. Evite que se junte, y mida de nuevo antes de hacer más.",
  "salt.decision.leach":
    "La sal cuesta cerca de {loss} de la cosecha. Lávela por debajo de las raíces donde el suelo drena.",
  "salt.decision.better-water":
    "Esta agua trae más de lo que el lavado puede componer (cerca de {loss} de la cosecha por su sal). Busque una mejor, antes que nada para las plantas jóvenes.",
  "salt.step.soil-measured":
    "El suelo marca {ece} en la pasta saturada: {loss} de la cosecha perdida, de {low} a {high} según lo publicado.",
  "salt.step.soil-converted":
    "El laboratorio marca {ec} en un extracto {extraction}. En esta textura eso es cerca de {ece} en la pasta saturada: {loss} de la cosecha perdida, de {low} a {high} según lo publicado.",
  "salt.step.water":
    "Agua de {ec} hace, con el tiempo, un suelo de cerca de {ece}, si drena de 15 a 20 % de ella y ninguna lluvia ayuda: {loss} de la cosecha perdida.",
  "salt.step.cost-fruit": "En esta plantación eso es cerca de {kg} de fruto.",
  "salt.step.cost-money":
    "En esta plantación eso es cerca de {kg} de fruto, que valen {money} al precio que usted espera.",
  "salt.step.better-water":
    "Busque agua mejor: lluvia de un techo, la red, otro pozo; o mézclela, y haga analizar la mezcla.",
  "salt.step.drain-first":
    "Solo donde el suelo drena. Cave hasta 60 cm (2 pies) un día después de un buen riego: si hay agua en el hoyo, no lave nada, la sal volvería a subir.",
  "salt.step.wash":
    "Antes de plantar o entre cosechas deje pasar {depth} de agua con poca sal por los primeros 30 cm (1 pie), en varios riegos con una pausa entre ellos, no en una inundación.",
  "salt.step.leach-share":
    "Deje que {share} del agua dada drene por debajo de las raíces: {more} más de lo que usan las plantas, en la temporada y no en cada riego. La lluvia fuerte cuenta para eso.",
  "salt.step.seedlings":
    "Guarde la mejor agua para las plántulas y las primeras semanas: las plantas jóvenes son las que menos sal aguantan.",
  "salt.step.ring":
    "La sal se junta en la orilla del anillo mojado de una línea de goteo. Plante bien adentro, y deje correr el goteo cuando empiece una lluvia ligera, para que el anillo no se lave de vuelta a las raíces.",
  "salt.step.dry-leaves":
    "Que esta agua no toque las hojas: el sodio y el cloruro entran por ellas. Donde haya que regar por aspersión, poco seguido y largo es mejor que muy seguido, y nunca con viento caliente.",
  "salt.step.infiltration":
    "Con una relación de adsorción de sodio de {value}, agua de esta fuerza se infiltra mal ({class}): vigile charcos y costra.",
  "salt.step.ask-gypsum":
    "Pregunte al laboratorio si el yeso ayudaría a este suelo, con un análisis de su sodio intercambiable, antes de que alguien lo esparza.",
  "salt.step.sodium":
    "Relación de adsorción de sodio {value}: {class}. El sodio desplaza al calcio; busque pudrición apical.",
  "salt.step.chloride": "Cloruro {value} meq/L: {class}. No añada cloruro de potasio.",
  "salt.step.boron":
    "Boro {value}. El pimiento rojo aguanta de {low} a {high} en el agua del suelo. No dé boro, y busque orillas quemadas en las hojas viejas.",
  "salt.step.nitrate":
    "El agua misma trae {value} de N de nitrato. Eso es fertilizante: cuéntelo, y no beba esta agua sin analizar.",
  "salt.step.bicarbonate":
    "Bicarbonato {value} meq/L: {class} donde se riega por aspersión. Deja manchas blancas y tapa goteros; lave las líneas.",
  "salt.step.ph":
    "El pH del agua, {value}, está fuera de 6.5 a 8.4. Hágalo analizar otra vez antes de actuar.",
  "salt.class.none": "sin restricción",
  "salt.class.slight": "restricción ligera a moderada",
  "salt.class.severe": "restricción severa",
  "salt.ends": "Termina con una lectura nueva del suelo o del agua, y también con un mes lluvioso.",
  "salt.stakes.loses": "La sal se lleva cerca de {loss} de la cosecha si la temporada sigue así.",
  "salt.stakes.watch": "Ahora se pierde poco por la sal. Se junta con cada riego que no drena.",
  "salt.limit.cultivars":
    "Un solo umbral vale por todos los pimientos. En agua de 4.1 dS/m ocho de ellos perdieron entre 19 y 86 % de su fruto, el habanero más; cinco chiles aguantaron hasta cerca de 3 dS/m.",
  "salt.limit.two-tolerances":
    "El valor usual pierde 14 % por cada dS/m por encima de 1.5. La FAO también publica 12 % por encima de 1.7: el rango dado abarca los dos.",
  "salt.limit.converted":
    "No se leyó la pasta saturada. El paso desde {extraction} es una relación de suelos de otros lugares, leída de segunda mano.",
  "salt.limit.unread-texture": "No se lee la conductividad del suelo, porque no se conoce su textura.",
  "salt.limit.unread-extraction":
    "No se lee la conductividad del suelo, porque el informe no nombra su extracción.",
  "salt.limit.rain":
    "Donde la lluvia lava el suelo cada invierno, la sal del agua rara vez se junta tanto como se dice.",
  "salt.limit.boron":
    "El límite del boro es el del agua en el suelo, que se hace más fuerte que el agua dada.",
  "salt.limit.chloride":
    "Las clases de cloruro son generales. La cifra del propio pimiento, 15 mmol/L en el extracto saturado, es de memoria y no se usa.",
  "salt.limit.old":
    "La lectura del {day} de {year} tiene más de un año. La sal se mueve con cada mes lluvioso.",
  "salt.change.paste":
    "Una lectura de esta cama en la pasta saturada: según lo publicado la pérdida está entre {low} y {high}.",
  "salt.change.extraction": "El nombre de la extracción en el informe de suelo.",
  "salt.change.soil":
    "Una lectura de esta cama en la pasta saturada: la lluvia pudo no dejar nada, así que la pérdida está entre nada y {high}.",
  "salt.change.water":
    "La conductividad del agua: de {low} a {high} llegaría a costar de {least} a {most} de la cosecha.",
  "salt.change.ions":
    "Calcio, magnesio, sodio, cloruro y boro del agua: sin ellos queda abierto lo que le hace a la estructura del suelo y a las hojas.",
  "salt.missing.texture":
    "La textura del suelo de esta cama, al tacto o del laboratorio: {extraction} se convierte según la textura. O una lectura en la pasta saturada.",
  "salt.missing.texture-moves":
    "En la pasta saturada el suelo podría marcar de {low} a {high}: de {least} a {most} de la cosecha perdida.",
  "salt.missing.water-ec": "La conductividad eléctrica del agua.",
  "salt.missing.water-ec-moves": "De {low} a {high} llegaría a costar de {least} a {most} de la cosecha.",
  "salt.chart.title": "Cosecha que deja la sal en el suelo",
  "salt.chart.ece": "sal en la pasta saturada",
  "salt.chart.yield": "cosecha",
  "salt.chart.maas": "1.5 dS/m y 14 % (lo usual)",
  "salt.chart.fao56": "1.7 dS/m y 12 % (lo más suave publicado)",
  "salt.chart.threshold": "umbral",
  "salt.chart.soil": "este suelo",
  "salt.chart.water": "el suelo que hace esta agua",
};
