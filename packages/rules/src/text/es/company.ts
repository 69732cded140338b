/** What company says, in Spanish. */
export const company: Record<string, string> = {
  "company.breach.unplaced": "La plantación {block} todavía no tiene cama.",
  "company.breach.unknown-bed": "La plantación {block} está en una cama que este plano no tiene.",
  "company.breach.rows":
    "La plantación {block} llega a la hilera {last}; en la cama {bed} caben {rows, plural, one {# hilera} other {# hileras}}.",
  "company.breach.length":
    "La plantación {block} necesita {needs} desde {from}; la cama {bed} mide {length} de largo.",
  "company.breach.overlap": "Las plantaciones {block} y {other} están en el mismo suelo en la cama {bed}.",
  "company.breach.rotation.pepper":
    "Plantación {block}: la cama {bed} tuvo {crop} en {season}. Pimientos después de pimientos piden {years, plural, one {# temporada} other {# temporadas}} de por medio, así que no antes de {from}.",
  "company.breach.rotation.phytophthora-blight":
    "Plantación {block}: la cama {bed} tuvo {crop} en {season}. La marchitez por Phytophthora pide {years, plural, one {# temporada} other {# temporadas}} de por medio, así que no antes de {from}.",
  "company.breach.rotation.verticillium-wilt":
    "Plantación {block}: la cama {bed} tuvo {crop} en {season}. La marchitez por Verticillium pide {years, plural, one {# temporada} other {# temporadas}} de por medio, así que no antes de {from}.",
  "company.breach.rotation.bacterial-leaf-spot":
    "Plantación {block}: la cama {bed} tuvo {crop} en {season}, y ahí se halló mancha bacteriana de la hoja. Pide {years, plural, one {# temporada} other {# temporadas}} de por medio, así que no antes de {from}.",
  "company.breach.rotation.sclerotinia":
    "Plantación {block}: la cama {bed} tuvo {crop} en {season}, y ahí se halló moho blanco. Pide {years, plural, one {# temporada} other {# temporadas}} de por medio, así que no antes de {from}.",
  "company.breach.water-valve":
    "Las plantaciones {block} y {other} dependen de una misma válvula, y solo a una se le va a dar menos agua.",
  "company.breach.water-bed":
    "Las plantaciones {block} y {other} comparten la cama {bed}, y solo a una se le va a dar menos agua.",
  "company.breach.isolation":
    "Las plantaciones {block} y {other} están a {gap} una de otra. La semilla que se guarda de una de ellas pide {needed}.",
  "company.cost.clump": "Variedades que están en más de un lugar",
  "company.cost.shade": "Plantas en la sombra de mediodía de una plantación más alta",
  "company.cost.outside-shade": "Plantas en camas que reciben sombra de árboles o de una casa",
  "company.cost.walk": "Camino entre plantaciones que se cosechan la misma semana",
  "company.cost.mixing": "Plantaciones dulces y picantes tan cerca que se pueden confundir los frutos",
  "company.not.no-plantings": "Este plano todavía no tiene plantaciones.",
  "company.not.no-beds": "Este plano todavía no tiene camas.",
  "company.missing.history":
    "Qué hubo en {n, plural, one {una cama de este plano} other {# camas de este plano}} en las últimas cinco temporadas.",
  "company.missing.history-moves":
    "Si ahí hubo un huésped de la marchitez, la cama queda cerrada para pimientos por años.",
  "company.missing.place":
    "Dónde {n, plural, one {está una cama} other {están # camas}} en la finca: una esquina, y hacia dónde corre la cama.",
  "company.missing.place-moves":
    "Se guarda semilla, y la distancia entre las plantaciones decide si sale pura.",
  "company.decision.fits":
    "Este plano se sostiene: {plantings, plural, one {una plantación} other {# plantaciones}}, {points} puntos.",
  "company.decision.better":
    "Este plano se sostiene, con {points} puntos. Mover una plantación ahorraría {saves}.",
  "company.decision.breaks":
    "Este plano rompe {n, plural, one {una regla firme} other {# reglas firmes}}: corrija eso primero.",
  "company.decision.unplaced":
    "{n, plural, one {Una plantación todavía no tiene} other {# plantaciones todavía no tienen}} cama.",
  "company.step.propose": "Arrástrelas a las camas, o pida una propuesta: deja lo fijado donde está.",
  "company.step.move":
    "La plantación {block} a la cama {bed}, desde la hilera {row}, desde {from}, ahorra {saves} puntos.",
  "company.step.place":
    "Cama {bed}: plantación {block} en {rows, plural, one {la hilera {first}} other {las hileras {first} a {last}}}, de {from} a {to}: {plants} plantas, a {spacing} una de otra.",
  "company.step.table": "Las {n} plantaciones están en la tabla.",
  "company.ends": "Una plantación que se mueve, una cama nueva o lo que hubo en una cama lo cambia.",
  "company.stakes.broken":
    "Un plano que rompe una regla firme pierde plantas, semilla o una temporada de una cama.",
  "company.stakes.better": "Lo que queda es caminar, sombra y orden.",
  "company.limit.microbes":
    "Por qué la misma variedad junta: es más fácil de trabajar. Los microbios alrededor de las raíces del pimiento difieren según la variedad, en un campo; que los grupos rindan más nadie lo ha mostrado, y no se afirma que los pimientos reconozcan a los suyos.",
  "company.limit.rotation":
    "Juntos en una temporada no es en un mismo lugar por años. Donde están juntos todos los pimientos, las otras camas descansan; el año que viene se mudan juntos.",
  "company.limit.weights":
    "Cuánto cuenta cada costo es práctica común y esta finca puede verlo de otra manera. Las unidades están junto a los puntos.",
  "company.limit.noon":
    "La sombra es la del mediodía del 1 de septiembre al norte del ecuador, o del 1 de marzo al sur. Una hilera alta al este o al oeste también da sombra, en la mañana y en la tarde, y no se cuenta.",
  "company.limit.isolation":
    "Las distancias para semilla son las de semilla casera: {sweet} entre dulces, {hot} donde una es picante, con un cultivo de barrera en medio. La semilla certificada y la comercial piden otras. Otras especies de pimiento también se pueden cruzar.",
  "company.limit.unknown-height":
    "{n, plural, one {Una plantación no tiene} other {# plantaciones no tienen}} altura: no se cuenta sombra por ellas.",
  "company.limit.unknown-place":
    "{n, plural, one {Una cama no tiene} other {# camas no tienen}} lugar en el plano: no se cuentan la sombra ni la distancia de ellas y hacia ellas, y el camino solo como si estuvieran lado a lado.",
  "company.limit.unknown-first-pick":
    "{n, plural, one {Una plantación no tiene} other {# plantaciones no tienen}} día de primera cosecha: no se cuenta el camino hacia ellas.",
  "company.change.move": "Mover una plantación a mano: antes de soltarla se muestra lo que costaría.",
  "company.change.proposal": "Una propuesta con otra semilla de azar, o con otras plantaciones fijadas.",
  "company.table.title": "Qué está dónde",
  "company.table.bed": "Cama",
  "company.table.planting": "Plantación",
  "company.table.rows": "Hileras",
  "company.table.from": "Desde",
  "company.table.to": "Hasta",
  "company.table.plants": "Plantas",
  "company.table.water": "Agua",
  "company.table.bed-name": "{bed}",
  "company.table.planting-name": "{block}",
  "company.table.row-range": "{rows, plural, one {{first}} other {{first} a {last}}}",
  "company.table.water-full": "completa",
  "company.table.water-deficit": "con menos agua",
};
