/** What rotation says, in Spanish. */
export const rotation: Record<string, string> = {
  "rotation.crop.pepper": "pimientos",
  "rotation.crop.tomato": "tomates",
  "rotation.crop.eggplant": "berenjenas",
  "rotation.crop.potato": "papas",
  "rotation.crop.tomatillo": "tomatillos",
  "rotation.crop.cucumber": "pepinos",
  "rotation.crop.melon": "melones",
  "rotation.crop.squash": "calabacitas",
  "rotation.crop.pumpkin": "calabazas",
  "rotation.crop.snap-bean": "ejotes",
  "rotation.crop.lima-bean": "frijol lima",
  "rotation.crop.pea": "chícharos",
  "rotation.crop.soybean": "soya",
  "rotation.crop.brassica": "coles o sus parientes",
  "rotation.crop.lettuce": "lechuga",
  "rotation.crop.spinach-beet": "espinaca o betabel",
  "rotation.crop.onion-garlic": "cebolla o ajo",
  "rotation.crop.carrot-parsley": "zanahoria o sus parientes",
  "rotation.crop.sweet-corn": "maíz dulce",
  "rotation.crop.small-grain": "grano",
  "rotation.crop.grass-clover": "pasto o trébol",
  "rotation.crop.mustard-cover": "mostaza",
  "rotation.crop.buckwheat": "alforfón",
  "rotation.crop.strawberry": "fresas",
  "rotation.crop.sweet-potato": "camotes",
  "rotation.crop.fallow": "nada",
  "rotation.crop.other": "otro cultivo",
  "rotation.disease.pepper": "pimientos después de pimientos",
  "rotation.disease.phytophthora-blight": "Marchitez por Phytophthora",
  "rotation.disease.verticillium-wilt": "Marchitez por Verticillium",
  "rotation.disease.bacterial-leaf-spot": "mancha bacteriana de la hoja",
  "rotation.disease.sclerotinia": "moho blanco",
  "rotation.disease.southern-blight": "tizón sureño",
  "rotation.disease.root-knot": "nematodos agalladores",
  "rotation.not.containers":
    "Las macetas rotan por su mezcla: la mezcla nueva no tiene pasado, y la que tuvo una planta enferma se saca.",
  "rotation.not.no-peppers": "No se piensan poner pimientos en esta cama.",
  "rotation.missing.history":
    "Qué hubo en esta cama en cada temporada de {from} a {to}, y cualquier enfermedad del suelo que se halló.",
  "rotation.missing.history-moves":
    "Una temporada de tomates, calabazas o frijoles entre ellas puede alejar los pimientos por años.",
  "rotation.decision.clear": "Esta cama descansó lo suficiente: puede haber pimientos aquí en {season}.",
  "rotation.decision.too-soon":
    "No ponga pimientos en esta cama en {season}: aquí hubo {crop} en {last}. Pueden volver en {from}.",
  "rotation.decision.too-soon-standing":
    "Los pimientos están aquí demasiado pronto: hubo {crop} en {last}, y el descanso terminaba en {from}. Vigílelos.",
  "rotation.step.plant": "Ponga aquí los pimientos de {season}.",
  "rotation.step.rest-after":
    "Cuando terminen, la cama descansa de pimientos y de todos los huéspedes {years, plural, one {# temporada} other {# temporadas}}: pimientos otra vez en {back}.",
  "rotation.step.elsewhere": "Dé a los pimientos una cama que haya descansado.",
  "rotation.step.instead":
    "Cultive lo que no mantiene viva ninguna de estas: col y sus parientes, cebolla, lechuga, zanahoria, maíz dulce, grano o pasto.",
  "rotation.step.if-anyway":
    "Si tienen que estar aquí: levante la cama para que la lluvia se vaya en un día, evite con acolchado que el suelo salpique las hojas, y no lleve suelo de aquí a camas limpias.",
  "rotation.step.watch":
    "Recorra la cama después de cada lluvia fuerte. La planta que se marchita con el tallo oscuro junto al suelo sale con sus raíces, y una muestra va a una clínica de plantas.",
  "rotation.step.drain": "Vea que no quede agua dos días en la cama: la marchitez empieza ahí.",
  "rotation.step.grouping":
    "Mantenga juntos los pimientos de cada temporada: con un descanso de {years, plural, one {# temporada} other {# temporadas}} ocupan una cama de cada {of}, y todas las otras descansan.",
  "rotation.step.write-down": "Anote cada temporada qué hubo aquí, y cualquier enfermedad que se halle.",
  "rotation.ends": "Lo que se anote de esta cama puede cambiarlo; también una enfermedad que se halle.",
  "rotation.stakes.found":
    "En un año lluvioso se pierde la cuarta parte de la cosecha y más donde la enfermedad está en el suelo.",
  "rotation.stakes.suspected":
    "Hace menos de {years, plural, one {# temporada} other {# temporadas}} hubo aquí huéspedes. Nadie sabe si la enfermedad está.",
  "rotation.stakes.none": "Nada de esta temporada depende ya de esto.",
  "rotation.limit.grouping":
    "Estar juntos en una temporada y estar en un mismo lugar por años son dos cosas. Plantas de una variedad lado a lado son más fáciles de trabajar; la misma cama año tras año alimenta sus enfermedades.",
  "rotation.limit.reading-shortest":
    "Las fuentes dan un descanso más corto y uno más largo. Aquí vale el más corto, y el más largo donde esa enfermedad se halló en la cama; la oficina puede escoger el más largo para todas.",
  "rotation.limit.reading-longest":
    "Las fuentes dan un descanso más corto y uno más largo. La oficina escogió el más largo para todas las camas.",
  "rotation.limit.beans":
    "Las fuentes no coinciden sobre los frijoles: una los llama huéspedes de Phytophthora, una más antigua no. Aquí cuentan como huéspedes.",
  "rotation.limit.lasting":
    "El descanso hace menos probable la enfermedad. Las esporas duran más que él, el agua las lleva de cama en cama, y el drenaje importa más.",
  "rotation.limit.without-interval":
    "Para {disease}, que se halló aquí, no se encontró publicado ningún descanso en años. Esta respuesta no lo cubre.",
  "rotation.change.clinic":
    "La palabra de una clínica de plantas sobre lo que se halló en esta cama, o que no se halló nada.",
  "rotation.change.choice": "Que la oficina escoja el otro descanso publicado.",
  "rotation.table.title": "Qué hubo aquí, y el descanso que pide cada enfermedad",
  "rotation.table.disease": "Por causa de",
  "rotation.table.last": "Último huésped",
  "rotation.table.season": "En",
  "rotation.table.rested": "Temporadas sin huésped",
  "rotation.table.needed": "Temporadas que se piden",
  "rotation.table.verdict": "Pimientos",
  "rotation.table.none": "ninguno registrado",
  "rotation.table.year": "{year}",
  "rotation.table.clear": "puede haber aquí",
  "rotation.table.too-soon": "no antes de {from}",
  "rotation.table.unknown": "registro muy corto",
};
