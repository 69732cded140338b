/** What look-closer says, in Spanish. */
export const lookCloser: Record<string, string> = {
  "look-closer.not.ended": "Esta plantación se quitó.",
  "look-closer.not.unsown": "Estas semillas todavía no se siembran.",
  "look-closer.not.no-signs":
    "No hay señales anotadas de esta plantación. Si las plantas se ven mal, anote lo que ve, en qué parte, en qué lugar de la cama y qué tan rápido llegó.",
  "look-closer.missing.signs":
    "Anote lo que muestran las plantas enfermas: la señal, la parte de la planta, en qué lugar de la cama están y qué tan rápido llegó.",
  "look-closer.missing.move": "Sin una sola señal, cada causa es tan probable como la siguiente.",
  "look-closer.decision.leading":
    "Lo que se vio corresponde mejor a {first}, por delante de {second}. Mire más de cerca antes de actuar.",
  "look-closer.decision.several":
    "Lo que se vio corresponde a {first} y {second} más o menos igual. Mire más de cerca antes de actuar por cualquiera de las dos.",
  "look-closer.decision.several-more":
    "Lo que se vio corresponde más o menos igual a {count, plural, =3 {tres} =4 {cuatro} =5 {cinco} =6 {seis} =7 {siete} =8 {ocho} =9 {nueve} other {#}} causas: {causes}. Mire más de cerca antes de actuar por cualquiera de ellas.",
  "look-closer.decision.unclear":
    "Lo que se vio no corresponde bien a nada que conozca esta lista. Mire de nuevo, y mande una muestra.",
  "look-closer.ends": "Termina con una señal nueva, otra mirada a la cama, o la respuesta de un laboratorio.",
  "look-closer.step.no-picking":
    "No coseche nada aquí antes del {day}: la etiqueta de una aplicación detiene la cosecha hasta entonces.",
  "look-closer.step.look-for":
    "Busque esto hoy: {sign}. Las guías lo ligan a {cause} más que a {other}. Anótelo si lo halla.",
  "look-closer.step.note-part":
    "Anote en qué parte se muestra: hojas viejas, hojas jóvenes, tallo, raíces o fruto.",
  "look-closer.step.note-pattern":
    "Camine la cama y anote dónde están las plantas: sueltas, en un manchón, en la parte baja, en la orilla, o por todas partes igual.",
  "look-closer.step.note-speed":
    "Anote qué tan rápido llegó: en una noche, en días, en semanas, o desde que se plantaron.",
  "look-closer.step.photos":
    "{photos, plural, one {Hay una foto adjunta: mándela} other {Hay # fotos adjuntas: mándelas}} con la muestra.",
  "look-closer.step.photograph":
    "Tome fotos de una planta entera, de la señal de cerca, y de la cama desde su extremo.",
  "look-closer.step.sample-where":
    "Mándela o llévela al laboratorio de diagnóstico de plantas de la universidad o del servicio de extensión de su estado o región; pregunte primero por su formulario y su costo. Empáquela el día que la saque, manténgala fresca y fuera del sol, no añada agua, y envíela al principio de la semana.",
  "look-closer.step.sample-today":
    "Mándela hoy: si es lo que parece, los días cuentan. Pregunte por teléfono si hay que reportar algo.",
  "look-closer.step.sample-if-spreading":
    "Si en tres días más plantas lo muestran, mande la muestra. Hasta entonces {cause} es una adivinanza.",
  "look-closer.safe.dry-plants":
    "No entre a la cama con las hojas mojadas, y trabájela al final: las manos y la ropa llevan enfermedad de planta en planta.",
  "look-closer.safe.hands": "Lávese las manos y las herramientas con jabón antes y después de esta cama.",
  "look-closer.safe.rogue":
    "Ponga las peores plantas, con raíces y todo, en una bolsa cerrada donde están y sáquelas del campo. No a la composta. Guarde lo que necesita la muestra.",
  "look-closer.safe.pick-off":
    "Quite el fruto echado a perder y el caído, y sáquelo del campo en una bolsa cerrada.",
  "look-closer.safe.hand-pick":
    "Mire temprano en la mañana y al anochecer, quite con la mano lo que halle y échelo en agua con jabón.",
  "look-closer.safe.wash-off":
    "En una mañana seca lave el envés de las hojas con un chorro firme de agua sola, de modo que se sequen para el mediodía. Deje en paz a las mariquitas (catarinas) y crisopas.",
  "look-closer.safe.weeds":
    "Arranque la maleza en la cama y alrededor: mucha aloja las mismas plagas y virus.",
  "look-closer.safe.collar":
    "Ponga un collar de papel o cartón alrededor de cada tallo joven, de 2 a 3 dedos de hondo y de alto, y busque en el suelo junto a las plantas cortadas.",
  "look-closer.safe.drain":
    "Deje salir el agua parada: abra los extremos de las hileras y cualquier parte baja. No dé agua ahí hasta que el suelo se desmorone.",
  "look-closer.safe.splash":
    "Riegue el suelo y nunca las hojas; donde solo hay aspersores, riegue temprano para que las hojas se sequen pronto.",
  "look-closer.safe.water-even":
    "Riegue parejo, según el plan de riego: ninguna pausa larga, y no empape después de una.",
  "look-closer.safe.dig":
    "Cave junto a una planta enferma y una sana, una pala de hondo. Los terrones secos piden agua; el suelo mojado que huele, o las raíces cafés, no piden ninguna.",
  "look-closer.safe.shade":
    "Conserve todas las hojas, y ponga sombra ligera sobre el fruto descubierto en las horas de calor.",
  "look-closer.safe.cover":
    "Tenga a la mano una cubierta ligera para las próximas noches o para plantas chicas, y ábrala antes de que le dé el sol.",
  "look-closer.safe.windbreak":
    "Ponga un rompevientos, ate las plantas a estacas, y apriete el suelo junto a los tallos flojos.",
  "look-closer.safe.soil-test":
    "Tome una muestra de suelo de la parte enferma de la cama y una de la sana, y haga analizar las dos.",
  "look-closer.safe.leaf-test":
    "Haga analizar hojas o savia antes de fertilizar más: las hojas viejas amarillas tienen también otras causas.",
  "look-closer.safe.no-more-salt":
    "No dé aquí fertilizante, ceniza ni estiércol hasta que se haya medido la sal.",
  "look-closer.safe.drift":
    "No arranque nada todavía. Anote el día, el viento, quién aplicó cerca y qué otras plantas lo muestran, y no coseche nada aquí hasta que la autoridad de plaguicidas o su asesor haya dicho que se puede comer o vender.",
  "look-closer.sample.whole-plant":
    "Para la muestra saque con pala, nunca jale, tres plantas: una que apenas empieza, una más avanzada, una sana. Embolse las raíces con su suelo y ate la bolsa al tallo; envuelva la parte de arriba en papel seco.",
  "look-closer.sample.leaves":
    "Para la muestra tome una docena de hojas con sus tallitos, de las primeras señales a las avanzadas, y unas sanas, entre papel seco en una bolsa.",
  "look-closer.sample.fruit":
    "Para la muestra tome tres o cuatro frutos que apenas lo muestran y uno sano, cada uno en papel seco.",
  "look-closer.sample.insects":
    "Para la muestra atrape unos cuantos en un frasco chico, con una hoja o un fruto que dañaron. Pregunte al laboratorio cómo los quiere.",
  "look-closer.sample.soil-or-leaf-test":
    "Para la muestra tome suelo de la zona de raíces en diez puntos de la parte enferma, mezclado, y lo mismo de la parte sana.",
  "look-closer.stakes.urgent": "Si es uno que se extiende, puede llevarse la cama en una o dos semanas.",
  "look-closer.stakes.living": "Lo que vive en las plantas pasa de planta en planta.",
  "look-closer.stakes.else": "Lo perdido está perdido; la causa puede seguir trabajando.",
  "look-closer.limit.points":
    "Los puntos ordenan posibilidades y no son probabilidades: las guías dicen a menudo o a veces, y qué tan común es aquí cada causa nadie lo ha publicado. Ninguna señal, tiempo ni registro lo decide; solo un laboratorio puede.",
  "look-closer.limit.two-at-once":
    "Cada señal se pesa como si viniera sola, y todas como si las hiciera una sola causa. Dos males a la vez, o uno que esta lista no conoce, la engañan.",
  "look-closer.limit.old":
    "La señal más nueva es del {day}, hace {age}. Mire de nuevo: el cuadro ha cambiado desde entonces.",
  "look-closer.limit.set-aside":
    "{signs, plural, one {Una señal} other {# señales}} de más de {gap} antes de la más nueva {signs, plural, one {se deja} other {se dejan}} de lado.",
  "look-closer.limit.sheltered":
    "Cuando empezó, las plantas estaban adentro, o bajo un túnel o invernadero: no se pesó el tiempo de afuera.",
  "look-closer.limit.weather":
    "De los {days} días antes de la primera señal, se conoce el tiempo de {known}.",
  "look-closer.change.laboratory": "La respuesta de un laboratorio, que va antes que todo esto.",
  "look-closer.change.sign": "Cualquier otra señal, anotada como se vio.",
  "look-closer.change.pattern": "En qué lugar de la cama están las plantas enfermas.",
  "look-closer.change.weather": "Temperaturas y lluvia diarias de las dos semanas antes de la primera señal.",
  "look-closer.chart.title": "Qué tanto corresponde cada causa a lo visto y anotado",
  "look-closer.chart.cause": "Causa posible",
  "look-closer.chart.points": "Puntos",
  "look-closer.table.title": "Qué habla por cada una y en contra, y lo que nadie miró",
  "look-closer.column.cause": "Causa posible",
  "look-closer.column.what": "Qué",
  "look-closer.column.speaks": "Habla",
  "look-closer.column.points": "Puntos",
  "look-closer.speaks.for": "a favor",
  "look-closer.speaks.against": "en contra",
  "look-closer.speaks.neither": "ni uno ni otro",
  "look-closer.speaks.open": "no se miró, o no se sabe",
  "look-closer.item.sign": "Señal: {what}",
  "look-closer.item.part": "Parte de la planta: {what}",
  "look-closer.item.pattern": "En qué lugar de la cama: {what}",
  "look-closer.item.speed": "Qué tan rápido: {what}",
  "look-closer.item.weather": "Tiempo antes: {what}",
  "look-closer.item.clue": "Registros: {what}",
  "look-closer.item.history": "Hallado antes en esta cama: {what}",
  "look-closer.cause.aphids": "pulgones",
  "look-closer.cause.thrips": "trips",
  "look-closer.cause.flea-beetles": "pulguillas",
  "look-closer.cause.pepper-weevil": "picudo del chile",
  "look-closer.cause.pepper-maggot": "mosca del pimiento",
  "look-closer.cause.corn-borer": "barrenador del maíz",
  "look-closer.cause.cutworms": "gusanos cortadores",
  "look-closer.cause.hornworms": "gusanos cornudos",
  "look-closer.cause.spider-mites": "araña roja",
  "look-closer.cause.broad-mites": "ácaro blanco",
  "look-closer.cause.damping-off": "ahogamiento de plántulas (damping-off)",
  "look-closer.cause.bacterial-leaf-spot": "mancha bacteriana de la hoja",
  "look-closer.cause.phytophthora-blight": "marchitez por Phytophthora",
  "look-closer.cause.verticillium-wilt": "marchitez por Verticillium",
  "look-closer.cause.southern-blight": "tizón sureño",
  "look-closer.cause.anthracnose": "antracnosis",
  "look-closer.cause.mosaic-virus": "un virus de mosaico",
  "look-closer.cause.cucumber-mosaic": "virus del mosaico del pepino",
  "look-closer.cause.spotted-wilt": "virus de la marchitez manchada",
  "look-closer.cause.short-nitrogen": "muy poco nitrógeno",
  "look-closer.cause.short-phosphorus": "muy poco fósforo",
  "look-closer.cause.short-potassium": "muy poco potasio",
  "look-closer.cause.short-magnesium": "muy poco magnesio",
  "look-closer.cause.short-calcium": "muy poco calcio",
  "look-closer.cause.short-iron": "muy poco hierro o manganeso",
  "look-closer.cause.salt": "sal",
  "look-closer.cause.herbicide-drift": "herbicida llevado por el viento o en el estiércol",
  "look-closer.cause.sunscald": "golpe de sol",
  "look-closer.cause.blossom-end-rot": "pudrición apical",
  "look-closer.cause.cold": "frío",
  "look-closer.cause.heat": "calor",
  "look-closer.cause.drought": "suelo seco",
  "look-closer.cause.waterlogging": "raíces ahogadas",
  "look-closer.cause.wind": "viento",
  "look-closer.sign.wilting-by-day": "las plantas cuelgan de día y se levantan para la mañana",
  "look-closer.sign.wilting-for-good": "las plantas cuelgan también al amanecer",
  "look-closer.sign.leaves-yellow-old": "hojas viejas amarillas",
  "look-closer.sign.leaves-yellow-young": "hojas jóvenes amarillas",
  "look-closer.sign.leaves-yellow-between-veins": "hojas amarillas entre venas verdes",
  "look-closer.sign.leaves-mottled": "hojas con mosaico claro y oscuro",
  "look-closer.sign.leaves-curled": "hojas enroscadas o arrugadas",
  "look-closer.sign.leaves-narrow": "hojas angostas como cintas",
  "look-closer.sign.leaf-spots-water-soaked": "manchas chicas en las hojas que se ven mojadas o grasosas",
  "look-closer.sign.leaf-spots-ringed": "anillos o manchas con anillos en las hojas",
  "look-closer.sign.leaf-edges-brown": "orillas de las hojas cafés y secas",
  "look-closer.sign.leaves-bronzed": "hojas bronceadas",
  "look-closer.sign.leaves-with-holes": "hoyos en las hojas",
  "look-closer.sign.leaves-purple": "hojas moradas",
  "look-closer.sign.leaves-dropping": "hojas que se caen",
  "look-closer.sign.sticky-leaves": "hojas pegajosas, o negras de moho sobre lo pegajoso",
  "look-closer.sign.fine-webbing": "telarañas finas debajo de las hojas",
  "look-closer.sign.stem-black-at-soil": "tallo oscuro junto al suelo",
  "look-closer.sign.stem-inside-brown": "tallo café por dentro al cortarlo",
  "look-closer.sign.stem-chewed-through": "tallos mordidos del todo",
  "look-closer.sign.roots-brown": "raíces cafés o pocas",
  "look-closer.sign.growing-point-dead": "punto de crecimiento muerto",
  "look-closer.sign.plants-stunted": "plantas enanas",
  "look-closer.sign.flowers-dropping": "flores o botones que se caen",
  "look-closer.sign.fruit-end-dark": "una mancha oscura y seca en la punta del fruto",
  "look-closer.sign.fruit-bleached": "una mancha pálida como papel en el lado soleado del fruto",
  "look-closer.sign.fruit-spots-raised": "manchas levantadas y ásperas en el fruto",
  "look-closer.sign.fruit-sunken-spots": "manchas hundidas en el fruto",
  "look-closer.sign.fruit-rings": "anillos en el fruto",
  "look-closer.sign.fruit-holes": "hoyos en el fruto, o gusanos adentro",
  "look-closer.sign.fruit-water-soaked": "manchas blandas como mojadas en el fruto",
  "look-closer.sign.fruit-misshapen": "fruto deforme o áspero",
  "look-closer.sign.insects-seen": "insectos en las plantas",
  "look-closer.sign.eggs-seen": "huevos en las plantas",
  "look-closer.sign.mites-seen": "puntitos que caminan, con una lupa",
  "look-closer.sign.leaves-stippled": "hojas con puntitos pálidos finos",
  "look-closer.sign.leaves-silvery": "rayas plateadas o envés plateado de las hojas",
  "look-closer.sign.leaves-torn": "hojas rotas o hechas tiras",
  "look-closer.sign.leaves-dark-limp": "hojas oscuras, flojas y vidriosas después de una noche",
  "look-closer.sign.seedlings-fallen": "plántulas caídas junto al suelo",
  "look-closer.sign.white-threads-at-soil":
    "hilos blancos, o bolitas cafés como semillas, en el tallo junto al suelo",
  "look-closer.sign.stem-bored": "un hoyo en el tallo, o aserrín en él",
  "look-closer.part.old-leaves": "hojas viejas",
  "look-closer.part.young-leaves": "hojas jóvenes",
  "look-closer.part.all-leaves": "todas las hojas",
  "look-closer.part.stem": "tallo",
  "look-closer.part.roots": "raíces",
  "look-closer.part.flowers": "flores",
  "look-closer.part.fruit": "fruto",
  "look-closer.part.whole-plant": "planta entera",
  "look-closer.pattern.single-plants": "plantas sueltas",
  "look-closer.pattern.patch": "un manchón",
  "look-closer.pattern.low-spot": "la parte baja",
  "look-closer.pattern.edge": "la orilla",
  "look-closer.pattern.along-row": "a lo largo de una hilera",
  "look-closer.pattern.windward": "el lado de donde viene el viento",
  "look-closer.pattern.everywhere": "por todas partes igual",
  "look-closer.speed.overnight": "en una noche",
  "look-closer.speed.days": "en días",
  "look-closer.speed.weeks": "en semanas",
  "look-closer.speed.since-planting": "desde que se plantaron",
  "look-closer.weather.warm-wet": "tibio y lluvioso",
  "look-closer.weather.hot-wet": "caluroso y lluvioso, con noches tibias",
  "look-closer.weather.hot-dry": "caluroso y seco",
  "look-closer.weather.cool": "fresco",
  "look-closer.weather.cool-wet": "fresco y lluvioso",
  "look-closer.weather.dry": "seco, y sin riego",
  "look-closer.weather.soaked": "lluvia que satura el suelo",
  "look-closer.weather.hot": "días de calor",
  "look-closer.weather.cold": "noches frías",
  "look-closer.weather.uneven-water": "sequía, calor o empapadas",
  "look-closer.weather.windy": "viento fuerte",
  "look-closer.clue.herbicide": "una aplicación contra maleza en esta cama o al lado",
  "look-closer.clue.residue-in-manure": "estiércol o composta en el último año",
  "look-closer.clue.insects-sprayed":
    "una aplicación contra insectos, después de la cual pueden subir los ácaros",
  "look-closer.clue.salty": "sal según el análisis de suelo o de agua",
  "look-closer.clue.short-K": "potasio según el análisis de suelo",
  "look-closer.clue.short-P": "fósforo según el análisis de suelo",
  "look-closer.clue.short-Mg": "magnesio según el análisis de suelo",
  "look-closer.clue.short-Ca": "calcio según el análisis de suelo",
  "look-closer.clue.nitrogen-given": "nitrógeno dado en las cuatro semanas anteriores",
  "look-closer.clue.high-ph": "el pH del suelo, la cal y la ceniza",
  "look-closer.clue.host-before": "cultivos anteriores en esta cama que la llevan",
  "look-closer.clue.newly-set-out": "recién trasplantadas, o todavía no",
  "look-closer.history.phytophthora-blight": "marchitez por Phytophthora",
  "look-closer.history.verticillium-wilt": "marchitez por Verticillium",
  "look-closer.history.bacterial-leaf-spot": "mancha bacteriana de la hoja",
  "look-closer.history.southern-blight": "tizón sureño",
};
