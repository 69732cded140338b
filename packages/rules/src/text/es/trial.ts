/** What trial says, in Spanish. */
export const trial: Record<string, string> = {
  "trial.what.marketable-kg": "fruto vendible por parcela",
  "trial.what.total-kg": "fruto por parcela",
  "trial.what.fruit-count": "frutos por parcela",
  "trial.what.mean-fruit-g": "peso de un fruto",
  "trial.what.first-pick-day": "día de la primera cosecha",
  "trial.what.coloured-kg": "fruto con color por parcela",
  "trial.what.height-cm": "altura de las plantas",
  "trial.what.lodged-pct": "plantas acamadas",
  "trial.what.culls-pct": "fruto de descarte",
  "trial.what.capsaicinoids-mg-per-kg": "capsaicinoides en el fruto seco",
  "trial.what.other": "lo que se midió",
  "trial.step.measure.marketable-kg": "Pese en cada cosecha lo que vendería de cada parcela, y súmelo.",
  "trial.step.measure.total-kg":
    "Pese en cada cosecha todo el fruto de cada parcela, también el descarte, y súmelo.",
  "trial.step.measure.fruit-count": "Cuente en cada cosecha el fruto de cada parcela, y súmelo.",
  "trial.step.measure.mean-fruit-g": "Pese junto todo el fruto de cada parcela y divida entre su número.",
  "trial.step.measure.first-pick-day":
    "Anote el día de la primera cosecha de cada parcela, en días desde el trasplante.",
  "trial.step.measure.coloured-kg": "Pese en cada cosecha el fruto con color de cada parcela, y súmelo.",
  "trial.step.measure.height-cm":
    "Mida cinco plantas del centro de cada parcela desde el suelo hasta la punta, y anote su promedio.",
  "trial.step.measure.lodged-pct":
    "Cuente las plantas de cada parcela que se inclinan más de la mitad, y anótelas en por ciento de todas sus plantas.",
  "trial.step.measure.culls-pct":
    "Pese el descarte de cada parcela, y anótelo en por ciento de todo su fruto.",
  "trial.step.measure.capsaicinoids-mg-per-kg":
    "Mande a un laboratorio una muestra de fruto maduro de cada parcela, todas por el mismo método, y anote juntas la capsaicina y la dihidrocapsaicina en peso seco.",
  "trial.step.measure.other": "Mida cada parcela de la misma manera, el mismo día, por la misma persona.",
  "trial.decision.differ.marketable-kg":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} una parcela dio {by} más de fruto vendible que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.total-kg":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} una parcela dio {by} más de fruto que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.fruit-count":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} una parcela dio {by} frutos más que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.mean-fruit-g":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} un fruto pesó {by} más que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.first-pick-day":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} la primera cosecha llegó {by} más tarde que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.coloured-kg":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} una parcela dio {by} más de fruto con color que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.height-cm":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} las plantas fueron {by} más altas que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.lodged-pct":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} se acamaron {by} más de las plantas que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.culls-pct":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} se descartó {by} más del fruto que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.capsaicinoids-mg-per-kg":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} el fruto seco tuvo {by} más de capsaicinoides que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ.other":
    "En este ensayo, con {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} una parcela midió {by} más que con {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}: entre {low} y {high}, hasta donde lo pueden decir {plots} parcelas en una finca en {season} (intervalo de {confidence} %). Otra temporada u otro lugar puede diferir.",
  "trial.decision.differ-somewhere":
    "En este ensayo los tratamientos difirieron en {what} más que por azar, pero {plots} parcelas en una finca en {season} no pueden decir cuál de cuál.",
  "trial.decision.none-seen":
    "No se vio diferencia en {what}. Eso no quiere decir que no la haya: con {plots} parcelas en una finca en {season}, una diferencia menor de cerca de {missed} bien pudo no notarse.",
  "trial.decision.layout":
    "Marque {plots} parcelas como dice la tabla: {treatments} tratamientos, {repeats} parcelas de cada uno.",
  "trial.decision.measure":
    "Están {done} de {wanted} números. Mida las parcelas de la tabla, o diga por qué una parcela no tiene ninguno.",
  "trial.decision.cannot-judge.too-few":
    "Se midieron muy pocas parcelas para juzgar {what}: lo que queda no distingue los tratamientos del azar.",
  "trial.decision.cannot-judge.no-spread":
    "No se puede decir nada de {what}: las parcelas que se trataron igual no difieren nada, así que no se puede juzgar el azar.",
  "trial.decision.cannot-judge.level-lost":
    "No se puede decir nada de {what}: a un tratamiento no le queda ninguna parcela.",
  "trial.decision.cannot-judge.cannot-tell":
    "No se puede decir nada de {what}: las parcelas que quedan no están juntas en los mismos bloques.",
  "trial.step.mark":
    "Marque cada parcela con su número antes de hacerle nada. Imprima para eso las etiquetas.",
  "trial.step.as-drawn":
    "Dé a cada parcela lo que dice la tabla, aunque el orden se vea raro. Se sorteó, con la semilla {seed}; mover parcelas a mejor suelo lo deshace.",
  "trial.step.alike":
    "Trate todas las parcelas igual en todo lo demás: agua, fertilizante, ataduras, cosecha el mismo día.",
  "trial.step.blocks":
    "Haga un bloque después de otro, cada uno entero en un día, para que la diferencia de un día caiga en todos los tratamientos del bloque.",
  "trial.step.edges": "Mida el centro de cada parcela y deje fuera las plantas de sus extremos.",
  "trial.step.lost":
    "Si una parcela se pierde o se confunde, anote por qué. Nunca ponga cero por ella ni adivine.",
  "trial.step.more-is-better":
    "Aquí más es mejor: si vuelve a valer, {xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} es lo que conviene conservar.",
  "trial.step.less-is-better":
    "Aquí menos es mejor: si vuelve a valer, {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}} es lo que conviene conservar.",
  "trial.step.repeat": "Repítalo en otra temporada antes de cambiar toda la finca.",
  "trial.step.larger":
    "Para hallar una diferencia menor, use más bloques. Con la dispersión de estas parcelas, {blocks} bloques hallarían la mitad de lo que pudo este ensayo, ocho de cada diez veces.",
  "trial.step.look-again":
    "Mire otra vez la parcela {plot}: está lejos de lo que darían su tratamiento y su bloque. Cámbiela solo si se anotó mal.",
  "trial.step.still-lacking":
    "{count, plural, one {Algo de lo que se mide todavía no está completo} other {# cosas de las que se miden todavía no están completas}}; la tabla dice en qué parcelas.",
  "trial.ends.layout": "Termina con el comienzo del ensayo.",
  "trial.ends.measure": "Termina con el último número.",
  "trial.ends.analysed": "Termina con un número corregido, o con el ensayo de otra temporada.",
  "trial.stakes.layout": "Las parcelas que no se reparten por sorteo no dicen nada después.",
  "trial.stakes.measure": "Una parcela que no se mide a tiempo se pierde para la comparación.",
  "trial.stakes.analysed": "No se pierde nada por esperar.",
  "trial.limit.one-farm":
    "Una finca, una temporada. El suelo, el tiempo y las manos de otro lugar o año no están en esto.",
  "trial.limit.seasons": "Una finca. Los números se tomaron en más de un año.",
  "trial.limit.left-out":
    "{count, plural, one {Una parcela queda} other {# parcelas quedan}} fuera de {what}; la tabla dice cuáles y por qué. Los promedios toman en cuenta los bloques en que estaban.",
  "trial.limit.left-out-pairs":
    "{count, plural, one {Una franja queda} other {# franjas quedan}} fuera de {what}; la tabla dice cuáles y por qué. Una franja sin su pareja no dice nada y también queda fuera.",
  "trial.limit.left-out-alone":
    "{count, plural, one {Una parcela queda} other {# parcelas quedan}} fuera de {what}; la tabla dice cuáles y por qué.",
  "trial.limit.lost-unevenly":
    "Se perdieron más parcelas de unos tratamientos que de otros. Si el propio tratamiento las mató, la comparación lo favorece.",
  "trial.limit.many-responses":
    "Se midieron {count} cosas, cada una juzgada por sí sola. Donde nada difiere, cerca de una de cada {oneIn} parecería que sí.",
  "trial.limit.lsd-only":
    "{count, plural, one {Un par más difiere} other {# pares más difieren}} según la diferencia mínima significativa, que no toma en cuenta cuántos pares se miraron. No se base en eso.",
  "trial.limit.interplay":
    "Lo que hace un factor depende aquí de otro. Lea las combinaciones; los promedios sobre el otro factor engañan.",
  "trial.limit.confounded":
    "El arreglo no puede distinguir las combinaciones de los bloques, así que solo se compara cada factor por sí mismo.",
  "trial.limit.shares":
    "Las partes cerca de nada o de todo varían menos que las de en medio. Lea el intervalo con cuidado, y mire los residuos.",
  "trial.limit.few": "Con pocas parcelas, los dibujos de los residuos muestran solo fallas gruesas.",
  "trial.limit.scoville":
    "Las unidades Scoville son los miligramos del laboratorio por {factor}, que es para capsaicina y dihidrocapsaicina. Un laboratorio que cuenta otros capsaicinoides, o usa otro factor, da otras unidades.",
  "trial.change.season": "El mismo ensayo en otra temporada, y en otra finca.",
  "trial.change.blocks": "Más bloques, que estrechan el intervalo.",
  "trial.change.numbers": "Un número que se anotó mal.",
  "trial.change.layout":
    "Otra semilla, otras camas u otro largo de parcela lo arreglan de nuevo, antes de que empiece.",
  "trial.change.values": "Cada número que llega.",
  "trial.table.layout": "Parcelas en el orden en que se caminan",
  "trial.table.lacking": "Lo que todavía falta medir",
  "trial.table.means": "Promedios de {what}, con intervalos de {confidence} %",
  "trial.table.anova": "Análisis de varianza de {what}",
  "trial.table.pairs": "Diferencias de {what}, de dos en dos",
  "trial.table.left-out": "Parcelas que quedan fuera de {what}",
  "trial.column.plot": "Parcela",
  "trial.column.block": "Bloque",
  "trial.column.treatment": "Tratamiento",
  "trial.column.bed": "Cama",
  "trial.column.from": "Desde",
  "trial.column.to": "Hasta",
  "trial.column.what": "Qué",
  "trial.column.plots": "Parcelas",
  "trial.column.mean": "Promedio",
  "trial.column.low": "Bajo",
  "trial.column.high": "Alto",
  "trial.column.scoville": "Unidades Scoville",
  "trial.column.source": "Fuente",
  "trial.column.df": "Grados de libertad",
  "trial.column.ss": "Suma de cuadrados",
  "trial.column.ms": "Cuadrado medio",
  "trial.column.f": "F",
  "trial.column.p": "p",
  "trial.column.difference": "Diferencia",
  "trial.column.lsd": "DMS",
  "trial.column.hsd": "Tukey",
  "trial.column.tells": "Se distinguen",
  "trial.column.why": "Por qué",
  "trial.who": "{xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}}",
  "trial.pair":
    "{xn, select, 1 {{x1}} 2 {{x1} con {x2}} other {{x1} con {x2} y {x3}}} menos {yn, select, 1 {{y1}} 2 {{y1} con {y2}} other {{y1} con {y2} y {y3}}}",
  "trial.bed": "{bed}",
  "trial.source.block": "Bloques",
  "trial.source.treatment": "Tratamientos",
  "trial.source.factor": "{a}",
  "trial.source.two": "{a} y {b} juntos",
  "trial.source.three": "{a}, {b} y {c} juntos",
  "trial.source.residual": "Parcelas tratadas igual",
  "trial.source.total": "Total",
  "trial.tells.both": "sí",
  "trial.tells.lsd": "solo por DMS",
  "trial.tells.no": "no",
  "trial.why.plants-lost": "plantas perdidas",
  "trial.why.not-measured": "no se midió",
  "trial.why.mixed-up": "confundida",
  "trial.why.spoiled": "echada a perder",
  "trial.why.not-told": "nadie dijo",
  "trial.why.partner": "su pareja está fuera",
  "trial.chart.means": "Promedios de {what}, y los extremos de sus intervalos de {confidence} %",
  "trial.chart.residuals": "Lo que deja el modelo, contra lo que espera: {what}",
  "trial.chart.normal": "Lo que deja el modelo, contra una muestra normal: {what}",
  "trial.chart.mean": "Promedio",
  "trial.chart.low": "Extremo bajo",
  "trial.chart.high": "Extremo alto",
  "trial.chart.plots": "Parcelas",
  "trial.chart.line": "Donde estaría una muestra normal",
  "trial.chart.zero": "Nada que queda",
  "trial.axis.treatment": "Tratamiento",
  "trial.axis.expected": "Esperado por el modelo",
  "trial.axis.left": "Lo que queda",
  "trial.axis.normal": "Cuantil normal",
  "trial.evidence.cite": "El ensayo de la propia oficina, {season}, {plots} parcelas.",
  "trial.evidence.design.completely-randomised": "Completamente al azar, semilla {seed}",
  "trial.evidence.design.randomised-blocks": "Bloques al azar, semilla {seed}",
  "trial.evidence.design.paired-strips": "Pares de franjas, orden por sorteo, semilla {seed}",
  "trial.evidence.design.factorial-blocks": "Factorial en bloques al azar, semilla {seed}",
  "trial.evidence.size":
    "Una finca, {season}; {plots} parcelas, {repeats} de cada tratamiento{leftOut, plural, =0 {} one {; una parcela fuera} other {; # parcelas fuera}}",
  "trial.evidence.effect.differ": "{difference}, intervalo de {confidence} % de {low} a {high}",
  "trial.evidence.effect.none-seen": "No se vio ninguna; una menor de cerca de {missed} bien pudo no notarse",
  "trial.evidence.effect.differ-somewhere": "Los tratamientos difieren, los pares no se distinguen",
  "trial.evidence.limits": "Una finca en {season}. Otra temporada, otro suelo u otra variedad puede diferir.",
  "trial.evidence.would-change": "El mismo ensayo en otra temporada o en otra finca.",
};
