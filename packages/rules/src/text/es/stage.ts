/** What stage says, in Spanish. */
export const stage: Record<string, string> = {
  "stage.not.ended": "Esta plantación terminó.",
  "stage.not.unsown": "Estas semillas todavía no se siembran.",
  "stage.not.overwintered":
    "Estas plantas se guardaron durante el invierno, así que los días y el calor desde la siembra no dicen nada.",
  "stage.name.sown": "sembrada, aún sin brotar",
  "stage.name.emerged": "plántulas brotadas",
  "stage.name.seed-leaves": "hojas de semilla abiertas",
  "stage.name.true-leaves": "primera hoja verdadera",
  "stage.name.buds": "botones a la vista",
  "stage.name.first-flower": "primera flor",
  "stage.name.set": "primer fruto cuajado",
  "stage.name.mature-green": "primer fruto verde maduro",
  "stage.name.colour": "primer fruto con color",
  "stage.decision.sown-between":
    "Ahora: {now}. Sigue: {next}, hacia el {likely}; ocho de cada diez veces entre el {low} y el {high}.",
  "stage.decision.sown-open": "Ahora: {now}. Sigue: {next}, hacia el {likely}, difícilmente antes del {low}.",
  "stage.decision.sown-none": "Ahora: {now}. Sigue: {next}, no en la temporada que se miró.",
  "stage.decision.noted-between":
    "Ahora: {now}. Sigue: {next}, hacia el {likely}; ocho de cada diez veces entre el {low} y el {high}.",
  "stage.decision.noted-open":
    "Ahora: {now}. Sigue: {next}, hacia el {likely}, difícilmente antes del {low}; puede no llegar esta temporada.",
  "stage.decision.noted-none":
    "Ahora: {now}. Sigue: {next}, a la que aquí la mayoría de los años no llegan en esta temporada.",
  "stage.decision.reckoned-between":
    "Por días y calor ya debería haber llegado: {now}; nadie lo ha anotado. Sigue: {next}, hacia el {likely}; ocho de cada diez veces entre el {low} y el {high}.",
  "stage.decision.reckoned-open":
    "Por días y calor ya debería haber llegado: {now}; nadie lo ha anotado. Sigue: {next}, hacia el {likely}, difícilmente antes del {low}.",
  "stage.decision.reckoned-none":
    "Por días y calor ya debería haber llegado: {now}; nadie lo ha anotado. Sigue: {next}, a la que aquí la mayoría de los años no llegan en esta temporada.",
  "stage.decision.last-noted": "El primer fruto ya tomó color. No se sigue ninguna etapa más.",
  "stage.decision.last-reckoned":
    "Por días y calor el primer fruto ya debería tener color; nadie lo ha anotado.",
  "stage.step.look":
    "Mire hoy si es así: {now}. Anótelo con el día en que llegó, o anote la etapa que sí ve.",
  "stage.step.from":
    "Búsquela un día sí y otro no desde el {low}, y anote el primer día en que la mitad de las plantas la muestre: {next}.",
  "stage.step.leaves":
    "Cuente hojas verdaderas en cinco plantas, cada hoja del ancho de una uña o más, y anote la cuenta del medio.",
  "stage.step.leaf-days": "En la semana que viene una hoja verdadera tarda unos {days}.",
  "stage.step.sign-emerged": "Brotadas quiere decir que la mitad de las plántulas asoma sobre el suelo.",
  "stage.step.sign-seed-leaves": "Las dos hojas de semilla están planas y abiertas.",
  "stage.step.sign-true-leaves": "La primera hoja con forma de hoja de pimiento tiene el ancho de una uña.",
  "stage.step.sign-buds": "Hay botones en la horqueta del tallo, tan grandes que se ven sin tocar.",
  "stage.step.sign-first-flower": "La primera flor está del todo abierta.",
  "stage.step.sign-set": "Los pétalos se cayeron y queda un fruto del tamaño de un chícharo.",
  "stage.step.sign-mature-green":
    "El primer fruto tiene tamaño completo, firme y brillante, y sus paredes no ceden.",
  "stage.step.sign-colour": "El primer fruto muestra su color maduro en la mitad de la piel.",
  "stage.step.pick-between": "Para planear: {stage} hacia el {likely}, entre el {low} y el {high}.",
  "stage.step.pick-open":
    "Para planear: {stage} hacia el {likely}, difícilmente antes del {low}; puede no llegar esta temporada.",
  "stage.step.pick-none": "Para planear: {stage}; aquí no se llega en la mayoría de los años.",
  "stage.step.last": "Siga anotando cosechas: la primera dice los días de la próxima temporada.",
  "stage.ends": "Termina con una nota nueva, una semana más de tiempo o la etapa siguiente.",
  "stage.stakes":
    "Sin notas las fechas quedan anchas, y por ellas se fijan la cosecha, el despunte y la protección contra la helada.",
  "stage.limit.base-variety":
    "El calor se cuenta por encima de {base}, la base propia de la variedad como se anotó.",
  "stage.limit.base-office":
    "El calor se cuenta por encima de {base}: las bases publicadas no coinciden, y la oficina escogió esta.",
  "stage.limit.base-default":
    "El calor se cuenta por encima de {base}, porque no se conoce la base propia de la variedad; las bases publicadas no coinciden, y la oficina puede escoger.",
  "stage.limit.family":
    "Las bases publicadas van de {lowBase} a {highBase}. Con la más baja: {stage} hacia el {low}; con la más alta hacia el {high}.",
  "stage.limit.family-open":
    "Las bases publicadas van de {lowBase} a {highBase}. Con una de las dos no se llega a esto en la temporada que se miró: {stage}.",
  "stage.limit.family-noted": "Las bases publicadas van de {lowBase} a {highBase}.",
  "stage.limit.order":
    "La nota del {day} no se cuenta, porque no está en orden con las otras: {stage}. Si es correcta, corrija las otras.",
  "stage.limit.fewer-leaves": "La cuenta de hojas del {day} no se cuenta: es más baja que una anterior.",
  "stage.limit.table":
    "Las sumas de calor son de chile sembrado en el campo en tierra cálida y seca, y los dos informes no coinciden en la primera flor. De la flor al fruto los días son de guías para productores, de memoria.",
  "stage.limit.leaves":
    "Las hojas del pimiento dulce siguen la temperatura media, pero no se pudo leer la velocidad publicada; el calor de una hoja es el de un pimiento biquinho.",
  "stage.limit.species": "Las sumas de calor son de Capsicum annuum; las especies más lentas llegan después.",
  "stage.limit.check":
    "Lo que el trasplante le cuesta a una planta en días no está en las fechas hasta que una nota posterior lo muestre.",
  "stage.limit.no-years": "Sin años pasados no se dice nada de los días más allá del pronóstico.",
  "stage.limit.few-years":
    "Solo {n, plural, one {se conoce un año pasado} other {se conocen # años pasados}}, así que los días pueden estar más separados de lo dicho.",
  "stage.missing.emerged": "Anote el día en que asomó la mitad de las plántulas.",
  "stage.missing.emerged-moves":
    "A esta temperatura del sustrato ninguna tabla dice cuándo brotan las plántulas, y todas las fechas cuentan desde ahí.",
  "stage.missing.weather":
    "Mínimas y máximas diarias desde el trasplante, o años pasados de una estación para llenar los huecos.",
  "stage.missing.weather-moves":
    "Los días sin temperatura no cuentan nada, y cada fecha saldría demasiado tarde.",
  "stage.missing.climatology": "Años pasados de mínimas y máximas diarias de una estación.",
  "stage.missing.climatology-moves":
    "La etapa siguiente está más allá del pronóstico, y no se puede dar ninguna fecha.",
  "stage.change.note":
    "Una nota de la etapa siguiente, o de las hojas verdaderas: cada una estrecha las fechas que siguen.",
  "stage.change.base":
    "La temperatura base de la propia variedad, de quien la obtuvo o de los registros de esta finca.",
  "stage.change.first-pick":
    "Los días de la primera cosecha de esta variedad aquí en temporadas anteriores: pesan más que la lista de semillas.",
  "stage.change.list": "Los días a madurez de la lista de semillas, y desde qué y hasta qué cuentan.",
  "stage.change.growing": "Un termómetro donde siguen creciendo las plántulas.",
  "stage.table.stages": "Las etapas y sus días",
  "stage.table.sources": "Lo que dice cada fuente de la primera cosecha: {stage}",
  "stage.column.stage": "Etapa",
  "stage.column.how": "Se sabe por",
  "stage.column.low": "Lo más temprano (uno de cada diez antes)",
  "stage.column.likely": "Probable",
  "stage.column.high": "Lo más tarde (uno de cada diez después)",
  "stage.column.source": "Fuente",
  "stage.column.says": "Dice",
  "stage.column.counted": "Contado",
  "stage.how.noted": "anotado",
  "stage.how.forecast": "días y calor",
  "stage.source.own": "{n, plural, one {Esta finca, una temporada} other {Esta finca, # temporadas}}",
  "stage.source.list-mature-green": "Lista de semillas, a fruto verde",
  "stage.source.list-colour": "Lista de semillas, a fruto con color",
  "stage.source.table": "Tabla de calor, sin notas",
  "stage.says.days-out": "{days} desde el trasplante",
  "stage.says.list-sowing": "{days} desde la siembra: {day}",
  "stage.says.list-transplanting": "{days} desde el trasplante: {day}",
  "stage.says.no-day": "no en la temporada que se miró",
  "stage.in-force.yes": "vale",
  "stage.in-force.no": "se muestra, no se cuenta",
  "stage.in-force.no-years": "se muestra, no se cuenta: sin años pasados no se conocen sus días como calor",
  "stage.chart.heat": "Calor desde que asomaron las plántulas, y las etapas",
  "stage.chart.day": "Día",
  "stage.chart.heat-axis": "Calor por encima de la base",
  "stage.chart.past": "hasta ahora",
  "stage.chart.cool": "año fresco (uno de cada diez)",
  "stage.chart.likely": "año intermedio",
  "stage.chart.warm": "año cálido (uno de cada diez)",
  "stage.chart.intervals": "Qué tan anchos son los días de cada etapa",
  "stage.chart.from-today": "Días desde hoy",
};
