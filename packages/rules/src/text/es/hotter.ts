/** What hotter says, in Spanish. */
export const hotter: Record<string, string> = {
  "hotter.not.no-plants": "En esta válvula todavía no hay plantas, o ya se quitaron.",
  "hotter.not.nobody": "Nadie pidió más picor en esta válvula.",
  "hotter.not.over": "Ya pasó el tiempo en que alguien quería estas plantas con estrés.",
  "hotter.not.no-pungency": "Este tipo casi no tiene picor. La sequía costaría fruto y no añadiría nada.",
  "hotter.decision.try-half":
    "Pruébelo en la mitad del bloque: riegue esa mitad cuando falten {line}. En todo el bloque costaría cerca de {loss} de la cosecha, y nadie puede decir cuánto más pica.",
  "hotter.decision.not-by-default":
    "Mejor no: nadie ha probado la sequía en este tipo. Si quiere saberlo, pruebe en la mitad del bloque, regada cuando falten {line}; en todo el bloque costaría cerca de {loss} de la cosecha.",
  "hotter.decision.hold-off": "Ahora no: dé a estas plantas toda el agua que usan.",
  "hotter.decision.stop": "Termine la sequía hoy: riegue bien todo el bloque.",
  "hotter.because.not-set":
    "Nadie ha anotado el cuajado en cada plantación de esta válvula. Antes de eso la sequía cuesta flores y toda la cosecha; el estrés es para el fruto que ya cuelga.",
  "hotter.because.cold":
    "El frío frenó estas plantas. Dos males a la vez cuestan más que los dos por separado.",
  "hotter.because.heat": "Hace demasiado calor para la sequía: {hot} el {day}, el límite es {limit}.",
  "hotter.because.signs":
    "En las últimas dos semanas alguien anotó marchitez al amanecer, pudrición apical, golpe de sol o ácaros. La sequía los alimentaría.",
  "hotter.because.wilting-at-dawn":
    "Las plantas están marchitas al amanecer: la noche no las llenó. Eso pasa de cualquier estrés que valga la pena.",
  "hotter.because.end-rot":
    "Los frutos tienen pudrición apical: muy poca agua lleva muy poco calcio a la punta.",
  "hotter.because.sunscald": "Los frutos tienen golpe de sol: las hojas caídas ya no les dan sombra.",
  "hotter.because.mites": "Hay ácaros: prosperan en plantas secas.",
  "hotter.because.too-dry": "El sensor de la cama marca claramente más seco que la línea fijada.",
  "hotter.step.refill":
    "Abra la válvula hoy hasta llenar lo que falta, en dos o tres riegos sobre suelo seco, para que el fruto no se raje y el agua no pase de largo.",
  "hotter.step.tell-stopped":
    "Termine el déficit en el registro de la plantación, para que el riego se calcule otra vez para uso completo.",
  "hotter.step.full-water":
    "Riegue como cualquier otra plantación hasta que desaparezcan las razones de arriba.",
  "hotter.step.when-over":
    "Después pregunte de nuevo: esta respuesta cambia sola cuando se anota el cuajado y el tiempo lo permite.",
  "hotter.step.species":
    "En Capsicum {species}, {studies, plural, one {# estudio} other {# estudios}} de {cultivars, plural, one {# variedad} other {# variedades}} con poca agua: {up} más picantes, {down} menos picantes, {same} sin cambio, {open} sin claridad{memory, plural, =0 {} other { (# de ellos de memoria)}}.",
  "hotter.step.species-none": "No se halló ningún estudio de sequía y picor en Capsicum {species}.",
  "hotter.step.type":
    "De este tipo ({type}), {cultivars, plural, one {# variedad} other {# variedades}} en {studies, plural, one {# estudio} other {# estudios}}: {up} más picantes, {down} menos picantes, {same} sin cambio, {open} sin claridad{memory, plural, =0 {} other { (# de ellos de memoria)}}.",
  "hotter.step.type-none":
    "No se probó ninguna variedad de este tipo ({type}). Así que, de entrada, la respuesta es no hacerlo.",
  "hotter.step.price":
    "{share} del agua que podrían usar, durante {days} días, cuesta cerca de {loss} de la cosecha donde la recibe todo el bloque; más donde todavía abren flores.",
  "hotter.step.cost-fruit": "En todo el bloque eso es cerca de {kg} de fruto; en la mitad, la mitad de eso.",
  "hotter.step.cost-money":
    "En todo el bloque eso es cerca de {kg} de fruto, que valen {money} al precio que usted espera; en la mitad, la mitad de eso.",
  "hotter.step.half":
    "Divida el bloque: una llave de cierre en una línea sí y otra no, escogidas por sorteo. La otra mitad recibe siempre toda el agua. Deje fuera de la cuenta una hilera entre ellas.",
  "hotter.step.line":
    "Riegue la mitad seca cuando falten {line} en su zona de raíces (el uso completo sería a {raw}), y entonces llénela. Sin lluvia eso es más o menos cada {days, plural, one {día} other {# días}}.",
  "hotter.step.tension":
    "En esta cama eso marcó {kPa} en el sensor de tensión: el centro de {n} pares con el sensor de contenido de agua.",
  "hotter.step.enter-share":
    "Nadie escogió qué tan seco. {share} es lo más suave que está en las tablas: si nadie escoge otra parte, el riego de esta válvula se calcula para ella desde el {from}. Si sigue adelante, anote antes la mitad seca como válvula propia, para que la otra mitad siga con agua completa.",
  "hotter.step.enter-share-begun":
    "Nadie escogió qué tan seco. {share} es lo más suave que está en las tablas, y el tiempo seco que empezó el {from} se mantiene con esa parte. Anote otra parte en el registro de la plantación si quiere otra, o termine ahí el tiempo seco para dar agua completa.",
  "hotter.step.held":
    "En esta válvula se mantiene un tiempo seco a propósito desde el {from}: el consejo de riego espera hasta que falten {line} en lugar de {raw}, según esta misma línea, y para todas las plantas de la válvula. Para una mitad con agua completa, anote la mitad seca como válvula propia.",
  "hotter.step.stop-rules":
    "Mire cada mañana. Pare enseguida y riegue bien si las plantas se marchitan al amanecer, si el fruto muestra pudrición apical o golpe de sol, si aparecen ácaros debajo de las hojas, o si se pronostica un día de {hot}. Anótelo, para que este consejo cambie.",
  "hotter.step.measure":
    "Coseche frutos de una misma edad y color del centro de las dos mitades, séquelos y haga medir los capsaicinoides en un laboratorio, tres muestras de cada una. Pese las dos cosechas. La lengua se cansa y no puede decidirlo.",
  "hotter.type.padron-type": "Padrón",
  "hotter.type.poblano-type": "poblano",
  "hotter.type.anaheim-type": "Anaheim",
  "hotter.type.jalapeno-type": "jalapeño",
  "hotter.type.serrano-type": "serrano",
  "hotter.type.cayenne-type": "cayena",
  "hotter.type.thai-type": "tailandés",
  "hotter.type.habanero-type": "habanero",
  "hotter.type.aji-type": "ají",
  "hotter.type.rocoto-type": "rocoto",
  "hotter.type.ornamental": "ornamental",
  "hotter.ends": "Termina con una señal de alto, unos días de calor o la última cosecha.",
  "hotter.ends.signs": "Termina cuando desaparecen las razones: dos semanas sin una señal nueva.",
  "hotter.stakes.stop": "Cada día seco más cuesta fruto que no se puede componer.",
  "hotter.stakes.none": "No se pierde nada por no hacerlo.",
  "hotter.limit.no-percentage":
    "No se da un número para el picor: no hay ningún coeficiente publicado, y las variedades fueron en los dos sentidos.",
  "hotter.limit.cultivar":
    "Un estudio habla de su variedad, sus macetas y su calor. La suya puede hacer lo contrario; solo sus propias dos mitades lo dicen.",
  "hotter.limit.part-season":
    "El factor de cosecha es el de toda una temporada. Aquí la sequía cubre una parte, así que la pérdida está extrapolada; donde todavía abren flores es más.",
  "hotter.limit.memory": "Lo que se dice de este tipo descansa en un estudio recordado y no leído de nuevo.",
  "hotter.limit.containers":
    "En macetas la línea llega en horas. Una vuelta perdida es el fin del experimento, y de las plantas.",
  "hotter.limit.cover":
    "Bajo una cubierta hace más calor de lo que dice el pronóstico. Juzgue los días de calor con un termómetro adentro.",
  "hotter.limit.no-forecast": "No hay pronóstico, así que no se ve el calor que viene.",
  "hotter.limit.cold": "El frío se calcula de los extremos del día y de un piso de libro, de memoria.",
  "hotter.limit.heat":
    "Las fuentes ponen el límite en 35 °C (95 °F) o cerca de 38 °C (100 °F). Se toma el más bajo.",
  "hotter.limit.cause":
    "La marchitez, la pudrición apical y los ácaros tienen también otras causas. Agua completa es lo correcto mientras usted mira.",
  "hotter.change.look": "Mirar las plantas al amanecer, y anotar lo que ve.",
  "hotter.change.trial": "Los números del laboratorio de las dos mitades de este bloque.",
  "hotter.change.soil":
    "La capacidad de campo y el punto de marchitez del propio suelo: la línea está entre {low} y {high} en suelos de esta textura.",
  "hotter.change.pair":
    "Un sensor de tensión y uno de contenido de agua lado a lado, con la capacidad de campo medida: después de tres pares cerca de la línea se puede decir en kPa.",
  "hotter.missing.weather": "Lo más alto y lo más bajo de la temperatura diaria de las últimas dos semanas.",
  "hotter.missing.weather-moves":
    "Sin eso no se pueden juzgar ni el calor ni la línea: a las plantas que usan {thirsty} al día se les retiene con {less} menos de falta que con {cool}.",
  "hotter.missing.soil":
    "La textura del suelo de la cama, al tacto o del laboratorio; o su capacidad de campo y su punto de marchitez.",
  "hotter.missing.soil-moves":
    "En el suelo que menos guarda la línea es {low}; en el que más guarda, {high}.",
  "hotter.chart.line-title": "Hasta dónde puede secarse la mitad seca",
  "hotter.chart.day": "día",
  "hotter.chart.mm": "lámina de agua que falta",
  "hotter.chart.line": "riegue aquí la mitad seca",
  "hotter.chart.raw": "riegue aquí la otra mitad",
  "hotter.chart.taw": "todo lo que puede dar la zona de raíces",
  "hotter.chart.yield-title": "Cosecha que queda según la parte de agua",
  "hotter.chart.share": "agua recibida, como parte del agua deseada",
  "hotter.chart.yield": "cosecha",
  "hotter.chart.asked": "por los días pedidos (extrapolado)",
  "hotter.chart.season": "toda la temporada",
  "hotter.chart.chosen": "la parte pedida",
};
