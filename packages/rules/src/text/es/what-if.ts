/** Lo que las reglas dicen de algo que se prueba, en español. */
export const whatIf: Record<string, string> = {
  "what-if.not.refused":
    "La regla no puede leer lo que está guardado de esta plantación; su borrador dice qué corregir.",
  "what-if.not.no-valve": "La cama no está en ninguna válvula que Pith conozca.",
  "what-if.not.not-out": "Las plantas todavía no están en la cama.",

  "what-if.cover.none": "al aire libre",
  "what-if.cover.fleece": "bajo una manta térmica ligera",
  "what-if.cover.low-tunnel": "bajo un túnel bajo",
  "what-if.cover.fleece-and-low-tunnel": "bajo una manta térmica con un túnel bajo encima",
  "what-if.cover.high-tunnel": "en el túnel alto",

  "what-if.set-out.chance":
    "Trasplantadas el {day} {cover}: {beyond} de probabilidad (entre {low} y {high}) de más frío en dos semanas del que las plantas deben pasar; se acepta {accepted}. Helada: {frost}, de lo que se acepta {frostAccepted}.",
  "what-if.set-out.dose":
    "En un año medio son {middle} por debajo de {floor}, en uno frío {cold}; se permiten {allowed}.",

  "what-if.depth.as-ruled": "Enterrar {tried} de tallo es lo que la regla aconseja aquí.",
  "what-if.depth.less":
    "Enterrar {tried} es menos que los {ruled} que aconseja la regla. No daña a ninguna planta; una espigada pide un tutor.",
  "what-if.depth.deeper": "Enterrar {tried} es más hondo que los {ruled} que la regla permite aquí.",
  "what-if.depth.too-deep":
    "Enterrar {tried} pasa de la primera hoja verdadera: {most} es lo más en cualquier planta.",

  "what-if.topping.ripe-left":
    "Con la punta: primer fruto maduro hacia el {likely}, entre el {low} y el {high}.",
  "what-if.topping.ripe-taken":
    "Sin la punta: primer fruto maduro hacia el {likely}, entre el {low} y el {high}.",
  "what-if.topping.never-left": "Con la punta, en un año medio no madura ningún fruto en esta temporada.",
  "what-if.topping.late-left":
    "Con la punta: primer fruto maduro hacia el {likely} en un año medio; en uno tardío, ninguno esta temporada.",
  "what-if.topping.never-taken": "Sin la punta, en un año medio no madura ningún fruto en esta temporada.",
  "what-if.topping.late-taken":
    "Sin la punta: primer fruto maduro hacia el {likely} en un año medio; en uno tardío, ninguno esta temporada.",
  "what-if.topping.chance-left":
    "Con la punta: {chance} de probabilidad de que madure antes de la primera helada; se pide {wanted}.",
  "what-if.topping.chance-taken":
    "Sin la punta: {chance} de probabilidad de que madure antes de la primera helada; se pide {wanted}.",

  "what-if.water.line":
    "Con {withheld} de menos, al suelo le llegan a faltar {line} antes de cada riego; {raw} es lo que las plantas aguantan sin daño.",
  "what-if.water.loss":
    "Sostenido desde el {from} hasta el {until} costaría cerca de {loss} del rendimiento {plantings, plural, one {de la plantación} other {de las # plantaciones}} en esta válvula.",
  "what-if.water.kg": "Con la meta de rendimiento son {kg} de fruto.",

  "what-if.potash.left":
    "Con eso se han dado {given} de potasa de los {need} que necesita la temporada; faltan {left}.",
  "what-if.potash.over":
    "Con eso se han dado {given} de potasa donde la temporada necesita {need}: {over} de más.",
  "what-if.potash.above-most":
    "Con eso se han dado {given} de potasa; ninguna hoja publicada pasa de {most} al año.",
  "what-if.potash.unread":
    "Con eso se han dado {given} de potasa. Cuánta necesita la temporada no se sabe: ningún análisis de suelo lo dice.",
  "what-if.potash.as-held": "La dosis son {kg} de {material} de la bodega en esta cama.",
  "what-if.potash.as-usual":
    "La dosis serían {kg} de {material} en esta cama; la bodega no tiene potasa que esta plantación pueda recibir.",
  "what-if.potash.salt":
    "A lo largo de las hileras sala el suelo como {salt} de nitrato de sodio; la oficina no fijó límite.",
  "what-if.potash.salt-within":
    "A lo largo de las hileras sala el suelo como {salt} de nitrato de sodio; la oficina permite {most} por temporada.",
  "what-if.potash.salt-over":
    "A lo largo de las hileras sala el suelo como {salt} de nitrato de sodio, más que los {most} que la oficina permite por temporada.",
  "what-if.potash.alone":
    "Aquí la bodega es solo de esta plantación. En el borrador se reparte entre toda la finca.",

  "what-if.ash.none": "No se prueba ceniza.",
  "what-if.ash.brings":
    "{kg} en esta cama aportan de {k2oLow} a {k2oHigh} de potasa, y encalan como de {limeLow} a {limeHigh} de cal pura.",
  "what-if.ash.ph": "El suelo está en pH {ph} y llegaría a entre {low} y {high}.",
  "what-if.ash.ph-above":
    "El suelo está en pH {ph} y podría llegar a {high} (al menos a {low}): por encima de pH {ceiling} no se debe dar ceniza.",
  "what-if.ash.ph-unknown":
    "El suelo está en pH {ph}. Adónde lo llevaría la ceniza no se puede decir con este análisis: no trae un pH buffer que se pueda invertir.",
  "what-if.ash.within-cap":
    "Con la del último año son {all} de ceniza; la fuente más estricta permite {most} al año.",
  "what-if.ash.over-cap":
    "Con la del último año son {all} de ceniza, más que los {most} al año que permite la fuente más estricta.",

  "what-if.chart.potash": "Potasa de la temporada según lo que se dé hoy",
  "what-if.chart.dose": "potasa dada hoy",
  "what-if.chart.given": "potasa dada esta temporada",
  "what-if.chart.need": "lo que necesita la temporada",
  "what-if.chart.most": "lo más en cualquier hoja publicada",
  "what-if.chart.tried": "lo probado",
  "what-if.chart.ph": "pH del suelo según la ceniza",
  "what-if.chart.ash": "ceniza",
  "what-if.chart.ph-axis": "pH",
  "what-if.chart.ph-low": "por la menor cal que la ceniza pueda tener",
  "what-if.chart.ph-high": "por la mayor",
  "what-if.chart.ceiling": "sin ceniza por encima de",

  "what-if.not.past": "El {day} ya pasó: escoja otro día.",
  "what-if.not.nothing": "No se prueba nada que no sea ya así.",

  "what-if.do.set-out": "Trasplante estas plantas el {day}, {cover}.",
  "what-if.do.cover": "Tenga la cama {cover} el día del trasplante.",
  "what-if.do.water": "Retenga {withheld} del agua: desde hoy dé {given} de lo que gastan las plantas.",
  "what-if.do.water-full": "Vuelva a dar toda el agua desde hoy.",
  "what-if.do.potash": "Dé hoy {dose} de potasa: {kg} de {material} en esta cama.",
  "what-if.do.ash": "Esparza hoy {dose} de ceniza de leña: {kg} en esta cama.",
  "what-if.do.depth": "Entierre {cm} de tallo al trasplantar estas plantas.",
  "what-if.do.depth-none": "No entierre tallo: trasplante al ras del cepellón.",
  "what-if.do.tips-none": "Deje las puntas de estas plantas.",
  "what-if.do.tips-half": "Quite la punta a una planta sí y otra no.",
  "what-if.do.tips-all": "Quite la punta a cada una de estas plantas.",

  "what-if.ends": "Pregunte de nuevo cuando algo cambie en la plantación.",
  "what-if.stakes": "Su asesor lo eligió después de probarlo con los números de esta plantación.",
  "what-if.limit.choice":
    "Es decisión de su asesor. Donde una regla dice otra cosa, su respuesta está al lado en el cuadro.",
  "what-if.change.numbers":
    "Un análisis de suelo, un conteo, un pronóstico o un registro nuevo puede cambiar lo que dicen las reglas.",

  "what-if.table.reckoned": "Lo que se calculó",
  "what-if.table.said": "Según las reglas de esta decisión",
  "what-if.table.rules": "Lo que dicen las reglas",
  "what-if.table.question": "Sobre",
  "what-if.table.as-is": "Como está",
  "what-if.table.tried": "Con esta decisión",
  "what-if.rule.set-out": "Trasplante",
  "what-if.rule.setting-depth": "Profundidad",
  "what-if.rule.topping": "Puntas",
  "what-if.rule.hotter": "Menos agua a propósito",
  "what-if.rule.irrigate": "Agua",
  "what-if.rule.feeding": "Alimento",
  "what-if.rule.wood-ash": "Ceniza de leña",
};
