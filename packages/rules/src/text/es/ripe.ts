/** What ripe says, in Spanish. */
export const ripe: Record<string, string> = {
  "ripe.not.ended": "Esta plantación terminó.",
  "ripe.not.unsown": "Estas semillas todavía no se siembran.",
  "ripe.not.overwintered":
    "Estas plantas se guardaron durante el invierno, así que su primer fruto no se calcula; anótelo cuando esté listo.",
  "ripe.not.too-early": "Estas plantas siguen adentro; su fruto será hacia el {likely}.",
  "ripe.at.green": "verde maduro",
  "ripe.at.colour": "con color",
  "ripe.decision.frost":
    "Coseche todo el fruto de tamaño completo antes de la noche del {evening}: se pronostica helada para esa noche.",
  "ripe.decision.frost-closed":
    "No coseche antes del {from}: lo prohíbe la etiqueta de una aplicación. Se pronostica helada para la noche después del {evening}, así que cubra las plantas.",
  "ripe.decision.frost-shut":
    "No entre hasta el {from}: la etiqueta de una aplicación prohíbe entrar. Se pronostica helada para la noche después del {evening}, y lo que se lleve está perdido.",
  "ripe.decision.closed": "No coseche antes del {from}: lo prohíbe la etiqueta de una aplicación.",
  "ripe.decision.pick-now": "Coseche ahora, {stage}.",
  "ripe.decision.pick-on": "Coseche de nuevo el {day}, {stage}.",
  "ripe.decision.look": "Mire hoy: por días y calor el primer fruto está listo, {stage}.",
  "ripe.decision.wait":
    "El primer fruto, {stage}, estará listo hacia el {likely}; ocho de cada diez veces entre el {low} y el {high}.",
  "ripe.decision.wait-open":
    "El primer fruto, {stage}, estará listo hacia el {likely}, difícilmente antes del {low}; puede no llegar esta temporada.",
  "ripe.decision.wait-none": "Al primer fruto, {stage}, aquí no se llega en la mayoría de los años.",
  "ripe.decision.pick-green":
    "Planee cosechar en verde maduro, desde cerca del {green}: en solo {share} de lo que puede venir el fruto toma color antes de la helada.",
  "ripe.decision.none-before-frost":
    "En solo {share} de lo que puede venir hay fruto de tamaño completo antes de la helada: planee proteger estas plantas en otoño.",
  "ripe.window.green": "Verde maduro: hacia el {likely}, entre el {low} y el {high}.",
  "ripe.window.green-open":
    "Verde maduro: hacia el {likely}, difícilmente antes del {low}; puede no llegar esta temporada.",
  "ripe.window.green-none": "Verde maduro: aquí no se llega en la mayoría de los años.",
  "ripe.window.green-noted": "Verde maduro: anotado el {day}.",
  "ripe.window.colour": "Con color: hacia el {likely}, entre el {low} y el {high}.",
  "ripe.window.colour-open":
    "Con color: hacia el {likely}, difícilmente antes del {low}; puede no llegar esta temporada.",
  "ripe.window.colour-none": "Con color: aquí no se llega en la mayoría de los años.",
  "ripe.window.colour-noted": "Con color: anotado el {day}.",
  "ripe.step.closed":
    "Ningún fruto sale de esta cama antes del {from}, tampoco para la cocina: lo dice la etiqueta de una aplicación.",
  "ripe.step.sign-green":
    "Verde maduro: del tamaño completo de la variedad, firme, brillante, y las paredes no ceden entre dos dedos.",
  "ripe.step.sign-colour": "Con color: al menos la mitad de la piel tiene su color maduro.",
  "ripe.step.look-green":
    "Mire hoy el fruto más bajo; si alguno está listo, coséchelo y anótelo como verde maduro.",
  "ripe.step.look-colour":
    "Mire hoy el fruto más bajo; si alguno está listo, coséchelo y anótelo como tomando color.",
  "ripe.step.how":
    "Corte con un cuchillo o tijeras limpios y deje el pedúnculo en el fruto. Coseche las plantas secas en el fresco de la mañana, y lleve el fruto a la sombra enseguida.",
  "ripe.step.again-green": "Pase por la cama cada semana; el fruto que se queda atrasa al siguiente.",
  "ripe.step.again-colour": "Pase por la cama dos veces por semana mientras el fruto toma color.",
  "ripe.step.before-frost":
    "Antes de la noche del {evening} meta lo que tenga tamaño completo, primero lo que ya empezó a tomar color, después el verde maduro. El fruto chico y blando no se conserva: déjelo.",
  "ripe.step.stay-out":
    "Nadie entra tampoco a cubrir: esa noche todavía no ha pasado el plazo de reingreso de la etiqueta.",
  "ripe.step.cover":
    "El {evening} cubra las plantas antes de la puesta del sol de modo que la cubierta llegue al suelo, y que no toque las hojas. Respete el plazo de reingreso de la etiqueta.",
  "ripe.step.chill":
    "La noche después del {evening} baja a {min} junto a las plantas, por debajo de {mark}: meta el fruto que ya empezó a tomar color, que es el primero que se daña con el frío.",
  "ripe.step.autumn":
    "Primera helada en estas plantas: el {likely} en el año intermedio, el {low} o antes en uno de cada diez años.",
  "ripe.step.breakers":
    "El fruto que ya empezó a tomar color sigue haciéndolo en un cuarto húmedo de {low} a {high}, cerca de {rh}. El fruto todavía del todo verde rara vez toma color fuera de la planta: úselo verde.",
  "ripe.step.keep":
    "Guarde el resto de {low} a {high} y de {rhLow} a {rhHigh} de humedad: de {daysLow} a {daysHigh}. No junto a manzanas, peras ni tomates.",
  "ripe.step.not-colder":
    "No por debajo de {mark}: vienen hoyos y semillas oscuras. A {five} el pimiento dulce verde lo mostró después de {daysLow} a {daysHigh}.",
  "ripe.ends.frost": "Termina con la helada, o con un pronóstico sin ella.",
  "ripe.ends.else":
    "Termina con una cosecha, una nota o un pronóstico nuevo; a más tardar con la primera helada.",
  "ripe.stakes.frost": "El fruto de buen tamaño que se hiela está perdido.",
  "ripe.stakes.frost-closed":
    "El fruto de buen tamaño que se hiela está perdido, y no se puede cosechar antes.",
  "ripe.stakes.closed":
    "No se pierde nada por esperar el día de la etiqueta, salvo fruto que se pasa de maduro.",
  "ripe.stakes.pick": "El fruto que se queda más de su tiempo se ablanda y atrasa al siguiente.",
  "ripe.stakes.look": "El fruto que se queda más de su tiempo se ablanda y atrasa al siguiente.",
  "ripe.stakes.wait": "Nada urge todavía.",
  "ripe.stakes.pick-green": "Los compradores de fruto con color quieren saberlo a tiempo.",
  "ripe.stakes.none-before-frost": "Las cubiertas para el otoño tienen que estar a tiempo.",
  "ripe.limit.share": "Un fruto {stage} antes de la primera helada: {share} de lo que puede venir.",
  "ripe.limit.no-dates":
    "No se calculan los días del primer fruto, porque falta el tiempo desde el trasplante.",
  "ripe.limit.no-frost":
    "Sin años pasados, o en un invernadero con calefacción, no se dice nada de la primera helada de otoño.",
  "ripe.limit.fruit":
    "Los días son del primer fruto. De la flor al fruto son de guías para productores, de memoria, a una sola temperatura.",
  "ripe.limit.storage":
    "Las fuentes no coinciden en cuánto se conservan los pimientos: de dos a tres semanas, o de tres a cinco; aquí se dice lo más corto. Que el fruto en la planta se dañe con el frío como en el estante es una suposición.",
  "ripe.limit.ethylene":
    "Una fuente dice que el etileno apura mucho la madurez, otra que los pimientos casi no responden. Tenerlos lejos de las manzanas no cuesta nada.",
  "ripe.missing.weather":
    "Mínimas y máximas diarias desde el trasplante y el día en que brotaron las plántulas, o una nota cuando el primer fruto esté listo.",
  "ripe.missing.weather-moves": "Sin eso no se puede calcular ningún día del primer fruto.",
  "ripe.missing.climatology": "Años pasados de mínimas y máximas diarias de una estación.",
  "ripe.missing.climatology-moves":
    "El primer fruto está más allá del pronóstico, y nada dice de la helada de otoño.",
  "ripe.change.pick-at": "Decir si esta plantación se cosecha verde o con color.",
  "ripe.change.note": "Notas de la primera flor, del verde maduro y del color, y de cada cosecha.",
  "ripe.change.forecast": "Un pronóstico de las próximas noches.",
  "ripe.chart.title": "Primer fruto y primera helada",
  "ripe.chart.day": "Día",
  "ripe.chart.share": "Probabilidad de que ya haya llegado",
  "ripe.chart.green": "Primer fruto verde maduro",
  "ripe.chart.colour": "Primer fruto con color",
  "ripe.chart.frost": "Primera helada de otoño",
  "ripe.table.windows": "Fruto y helada",
  "ripe.table.keeping": "Cómo se conserva el fruto",
  "ripe.column.what": "Qué",
  "ripe.column.low": "Lo más temprano (uno de cada diez antes)",
  "ripe.column.likely": "Probable",
  "ripe.column.high": "Lo más tarde (uno de cada diez después)",
  "ripe.column.place": "Dónde",
  "ripe.column.becomes": "Qué pasa con él",
  "ripe.keeping.store": "{low} a {high}, húmedo",
  "ripe.keeping.store-becomes": "se conserva de {daysLow} a {daysHigh}",
  "ripe.keeping.cold": "{five}",
  "ripe.keeping.cold-becomes":
    "el fruto verde muestra daño por frío después de {daysLow} a {daysHigh}; el maduro lo aguanta mejor; el que empieza a tomar color, peor que ninguno",
  "ripe.keeping.warm": "{low} a {high}, húmedo",
  "ripe.keeping.warm-becomes": "el fruto que ya empezó a tomar color sigue tomándolo",
};
