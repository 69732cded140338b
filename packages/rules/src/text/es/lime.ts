/** What lime says, in Spanish. */
export const lime: Record<string, string> = {
  "lime.decision.lime":
    "El pH {ph} está por debajo de {target}. Dé {kg} de {material} en los {area} de la cama ({perM2}, {perHa}) e incorpórelo.",
  "lime.decision.lime-after-crop":
    "El pH {ph} está por debajo de {target}. Cuando termine el cultivo que está ahí (hacia el {from}), dé {kg} de {material} en los {area} de la cama ({perM2}) e incorpórelo.",
  "lime.decision.lime-wait":
    "El pH {ph} está por debajo de {target}. No antes del {from}, un mes después de amonio o urea: dé {kg} de {material} en los {area} de la cama ({perM2}) e incorpórelo.",
  "lime.decision.lime-next-part":
    "El pH {ph} está por debajo de {target}. No antes del {from}, {months} meses después de la parte anterior: dé {kg} de {material} en los {area} de la cama ({perM2}) e incorpórelo.",
  "lime.decision.still-working":
    "El pH {ph} está por debajo de {target}, pero lo que se dio antes sigue trabajando. No dé nada ahora.",
  "lime.decision.sulfur":
    "El pH {ph} está por encima de lo que los pimientos aguantan bien. Incorpore {kg} de {material} en los {area} de la cama, y analice de nuevo antes de dar más.",
  "lime.decision.fizz-first":
    "El pH {ph} está por encima de lo que los pimientos aguantan bien. Primero vea si el suelo hace espuma con vinagre. Solo si no la hace: {kg} de {material} en los {area} de la cama.",
  "lime.decision.sulfur-after-crop":
    "El pH {ph} está por encima de lo que los pimientos aguantan bien. Cuando termine el cultivo que está ahí (hacia el {from}), incorpore {kg} de {material} en los {area} de la cama, y analice de nuevo antes de dar más.",
  "lime.decision.fizz-first-after-crop":
    "El pH {ph} está por encima de lo que los pimientos aguantan bien. Primero vea si el suelo hace espuma con vinagre. Solo si no la hace, y cuando termine el cultivo que está ahí (hacia el {from}): {kg} de {material} en los {area} de la cama.",
  "lime.decision.sulfur-at-work":
    "El pH {ph} está por encima de lo que los pimientos aguantan bien, pero desde la muestra se dio azufre. No dé más antes de un análisis nuevo.",
  "lime.decision.free-lime":
    "El pH {ph} viene de cal libre en este suelo. Ningún azufre lo compone: no lo intente.",
  "lime.decision.gypsum":
    "El pH {ph} no necesita cal, pero falta calcio. La fertilización dosifica yeso donde la bodega lo tiene.",
  "lime.decision.magnesium":
    "El pH {ph} no necesita cal, pero el magnesio está bajo. La fertilización lo dosifica donde la bodega lo tiene.",
  "lime.step.unanswered":
    "Nadie contestó lo que aconsejamos esparcir el {day}. Este consejo lo toma como esparcido, para que nada se dé dos veces. Díganos si no fue así.",
  "lime.step.spread":
    "Esparza {kg} de {material} parejo en los {area} de la cama: {perM2}, que son {perHa} del suelo encalado.",
  "lime.step.spread-first":
    "Esparza primero {kg} de {material} parejo en los {area} de la cama: {perM2}, que son {perHa} del suelo encalado.",
  "lime.step.split":
    "Tanta cal se da en {times} partes, con {months} meses entre ellas: {whole} en la cama en total ({perM2}, {perHa}). Analice de nuevo antes de la última.",
  "lime.step.alleys":
    "Eso es la cama sin sus pasillos; contado sobre todos los {cropped} de suelo cultivado son {over}. Donde también se encalan y labran los pasillos, el total es {kg}.",
  "lime.step.work-in":
    "Incorpórelo a {depth} de hondo, tan hondo como se tomó la muestra. La cal que queda arriba se queda arriba.",
  "lime.step.stock-enough": "La bodega tiene {stock}; quedarían {left}.",
  "lime.step.stock-unknown": "No se sabe cuánto tiene la bodega: péselo primero.",
  "lime.step.stock-short":
    "La bodega tiene {stock}: faltan {buy}, y no hay más en la lista de compra. Dé lo que hay; cuenta.",
  "lime.step.buy": "La bodega tiene {stock}; hacen falta {buy} más para el total.",
  "lime.step.buy-bags":
    "La bodega tiene {stock}; compre {bags, plural, one {# saco} other {# sacos}} para el total ({buy} más).",
  "lime.step.buy-cost":
    "La bodega tiene {stock}; hacen falta {buy} más para el total, cerca de {cost} a su precio.",
  "lime.step.buy-bags-cost":
    "La bodega tiene {stock}; compre {bags, plural, one {# saco} other {# sacos}} para el total ({buy} más), cerca de {cost} a su precio.",
  "lime.step.hours":
    "Esparcirlo pide {times, plural, one {# aplicación} other {# aplicaciones}}, cerca de {hours} según lo que tomó una aquí.",
  "lime.step.wages":
    "Esparcirlo pide {times, plural, one {# aplicación} other {# aplicaciones}}, cerca de {hours} según lo que tomó una aquí: {wages} con el salario de la oficina, {sum} con lo que se compra.",
  "lime.step.not-in-shed":
    "En la bodega no hay {material} que se pueda usar aquí: la cantidad es para una de toda su fuerza. Lea su etiqueta y dígalo.",
  "lime.step.untested":
    "No se conoce su valor neutralizante o su finura, y se toma como lo mejor que puede ser su clase. Si la etiqueta da ENV, ECCE o ENP, anótelo: de una cal gruesa hace falta más.",
  "lime.step.effective": "De su peso {effective} actúa como cal en pocos años.",
  "lime.step.dolomitic":
    "El magnesio marca {mg}, que es bajo: la cal dolomítica trae {brings} de él con la cal.",
  "lime.step.instead": "O de la bodega: {kg} de {material} en la cama en total ({perM2}; actúa {effective}).",
  "lime.step.instead-bought":
    "O comprado: {kg} de {material} en la cama en total ({perM2}; actúa {effective}).",
  "lime.step.not-certified": "No use {material}: no se permite en el suelo de esta cama.",
  "lime.step.no-proof":
    "No use {material}: nada en el registro de la bodega prueba hasta cuándo se permite en el suelo de esta cama. Anote el último día de la prueba.",
  "lime.step.proof-expired":
    "No use {material}: ya venció la prueba de que se permite en el suelo de esta cama.",
  "lime.step.credit":
    "Se resta la cal y la ceniza dadas antes que todavía van a actuar: {working} como carbonato de calcio.",
  "lime.step.ash-counted":
    "La ceniza de leña dada desde la muestra está contada: por su análisis, si no por el menor valor de cal publicado para ceniza, para que la cama no reciba muy poca cal.",
  "lime.step.still-working":
    "La cal y la ceniza de antes que todavía van a actuar valen {working} como carbonato de calcio; el suelo pide {call}.",
  "lime.step.in-time":
    "La caliza molida necesita de {least} a {most} meses. Las plantas salen el {out}: espárzala a más tardar el {by}, mejor más temprano.",
  "lime.step.late":
    "La caliza molida necesita de {least} a {most} meses, y las plantas salen el {out}. Es tarde para este cultivo, que aprovecha una parte; esparcida el {from}, actúa del todo entre el {acts} y el {done}.",
  "lime.step.after-crop":
    "La cal se incorpora, así que no con plantas en pie. Espárzala cuando termine el cultivo, desde cerca del {from}; necesita de {least} a {most} meses.",
  "lime.step.no-date":
    "La caliza molida necesita de {least} a {most} meses: esparcida el {from}, actúa entre el {acts} y el {done}. El otoño conviene para plantar en primavera.",
  "lime.step.ph-first":
    "Según la relación de {method} la primera parte deja cerca de pH {ph} en {depth} de suelo, cuando haya actuado.",
  "lime.step.ph-all":
    "Según la relación de {method} deja cerca de pH {ph} en {depth} de suelo, cuando haya actuado.",
  "lime.step.ph-by-method":
    "La cantidad está hecha para pH {ph} por {method}; esa relación no dice lo que deja una parte.",
  "lime.step.not-with-ammonium":
    "Mantenga los fertilizantes de amonio y urea, el estiércol fresco y la ceniza de leña fuera de ese suelo un mes antes y después: encalado el {from}, hasta el {until}.",
  "lime.step.after-ammonium":
    "El {day} se dio amonio, urea o estiércol: no esparza cal antes del {from}, un mes después, o el nitrógeno se va como amoníaco.",
  "lime.step.after-part":
    "El {day} se dio cal. Una cantidad tan grande se da en partes con {months} meses entre ellas: la siguiente desde el {from}.",
  "lime.step.retest": "Analice de nuevo un año después de la última parte, en el mismo laboratorio.",
  "lime.step.gypsum":
    "El calcio está por debajo de lo que quiere la hoja de Georgia con un pH que no pide cal: el yeso lo lleva ahí y no cambia el pH.",
  "lime.step.by-feeding":
    "La regla de fertilización lo dosifica para cada plantación, donde una guía para este análisis lo pide y la bodega lo tiene. No dé nada además.",
  "lime.step.magnesium":
    "El magnesio marca {mg}, que es bajo. Sin cal por dar, la cal dolomítica no es la manera de traerlo; la sal de Epsom sí.",
  "lime.step.epsom":
    "La sal de Epsom tiene {holds} de magnesio; {from} y más de ella se dan en dos partes con {months} meses entre ellas.",
  "lime.step.fizz":
    "Deje caer vinagre en una cucharada de suelo seco de cada profundidad. Si hace espuma hay cal libre: pare, ninguna cantidad de azufre alcanza. Anote lo que vio.",
  "lime.step.sulfur":
    "Esparza {kg} de {material} en los {area} de la cama ({perM2}, {perHa}) para pH {target}, e incorpórelo.",
  "lime.step.sulfur-split":
    "Esparza {first} de {material} en los {area} de la cama e incorpórelo. El total es {kg} ({perM2}, {perHa}) para pH {target}: delo en {times} partes con medio año entre ellas, con un análisis antes de cada una.",
  "lime.step.sulfur-alleys": "Con sus pasillos, {cropped} en total, la cama tomaría {kg}.",
  "lime.step.ferrous": "El sulfato ferroso hace lo mismo con ocho veces el peso: {kg} en total.",
  "lime.step.sulfur-rhs":
    "La Royal Horticultural Society da más para un suelo así: {perM2} ({perHa}). Aquí se da menos porque lo de más no se puede quitar.",
  "lime.step.sulfur-western-handbook": "La tabla de un manual, de memoria, da {perM2} ({perHa}).",
  "lime.step.sulfur-when":
    "Trabaja por seres vivos en suelo tibio y húmedo y tarda una temporada o más: espárzalo mucho antes de que salgan las plantas.",
  "lime.step.sulfur-after-crop":
    "Incorpórelo cuando termine el cultivo, desde cerca del {from}: no debe tocar raíces jóvenes.",
  "lime.step.sulfur-retest": "Analice de nuevo después de un año, y antes de dar más.",
  "lime.step.live-with-it":
    "No gaste nada en azufre: cada tonelada de cal en el suelo se come un tercio de tonelada de él.",
  "lime.step.watch-iron":
    "Vigile si las hojas jóvenes se ponen amarillas entre venas verdes (hierro, manganeso, zinc). Dé amonio en lugar de nitrato, y traiga composta.",
  "lime.step.containers":
    "Donde importe, cultive en macetas o en una cama alta de otro suelo. Aquí nada de cal ni de ceniza de leña.",
  "lime.case.done": "Si lo aconsejado para el {day} se esparció:",
  "lime.case.not-done": "Si no:",
  "lime.method.mehlich": "solución tampón Mehlich",
  "lime.method.adams-evans": "solución tampón Adams-Evans",
  "lime.method.smp": "solución tampón SMP",
  "lime.method.exchangeable-acidity": "acidez intercambiable",
  "lime.not.containers":
    "Las macetas se encalan con su mezcla, según la receta de su fabricante. Esto lee suelo de campo.",
  "lime.not.in-range": "El pH {ph} está entre {low} y {high}. Ni cal ni azufre.",
  "lime.not.above-range":
    "El pH {ph} está por encima de {low} a {high}, pero dentro de lo que los pimientos aguantan (hasta {most}). No añada cal ni ceniza de leña; no hace falta azufre.",
  "lime.not.at-target": "El pH {ph} llegó a la meta de la oficina, {target}. Nada de cal.",
  "lime.not.no-acidity":
    "El pH {ph} es bajo, pero la prueba de {method} no halla acidez que la cal tenga que neutralizar. Analice de nuevo antes de encalar.",
  "lime.missing.ph":
    "Un análisis de suelo de esta cama con su pH, y el pH de la solución tampón del laboratorio con su nombre.",
  "lime.missing.ph-moves": "Sin un pH la cama puede necesitar cal, azufre o nada.",
  "lime.missing.buffer":
    "El pH de la solución tampón del laboratorio con su nombre (Mehlich, Adams-Evans o SMP), o la acidez intercambiable. El pH solo no dice cuánta cal.",
  "lime.missing.buffer-sikora":
    "No se hallaron publicados los coeficientes de la solución tampón Sikora, así que no se lee. Serviría la acidez intercambiable, o un pH de solución tampón Mehlich, Adams-Evans o SMP; también la cifra de cal del propio laboratorio.",
  "lime.missing.buffer-modified-mehlich":
    "No se hallaron publicados los coeficientes de la solución tampón Mehlich modificada, así que no se lee. Serviría la acidez intercambiable, o un pH de solución tampón Mehlich, Adams-Evans o SMP; también la cifra de cal del propio laboratorio.",
  "lime.missing.buffer-woodruff":
    "No se hallaron publicados los coeficientes de la solución tampón Woodruff, así que no se lee. Serviría la acidez intercambiable, o un pH de solución tampón Mehlich, Adams-Evans o SMP; también la cifra de cal del propio laboratorio.",
  "lime.missing.buffer-moves":
    "De {low} de carbonato de calcio en un suelo ligero a {high} en uno pesado, con el mismo pH.",
  "lime.missing.texture": "La textura del suelo de esta cama, al tacto o del laboratorio.",
  "lime.missing.texture-moves": "La arcilla toma el doble de azufre que la arena.",
  "lime.ends": "Termina con un análisis más nuevo, cal dada, o plantas trasplantadas.",
  "lime.stakes.outside":
    "El pH está fuera de lo que los pimientos aguantan bien: hay alimento y no lo pueden tomar.",
  "lime.stakes.off": "El pH está un poco bajo, y la cal necesita {months} meses para actuar.",
  "lime.stakes.fine": "Nada urge.",
  "lime.limit.soil":
    "Para suelo mineral en el campo, mezclado hasta la profundidad dicha. La cal en la superficie y sin labrar actúa mucho más despacio.",
  "lime.limit.shared-stock":
    "Los {stock} de {material} en la bodega son unas solas existencias para todas las camas: lo que va a recibir otra cama no se resta aquí. Planéelo una vez.",
  "lime.limit.mehlich":
    "La página de la relación Mehlich no imprime profundidad; se toma una capa de 17 cm (6.67 pulgadas). Está hecha para los suelos de Carolina del Norte.",
  "lime.limit.adams-evans":
    "La relación Adams-Evans es de memoria, y hecha para suelos arenosos rojo-amarillos del sureste. Donde su laboratorio imprime su propia cifra, esa vale.",
  "lime.limit.smp":
    "La tabla SMP es de memoria, y hecha para suelos con mucha acidez: en suelos arenosos pide demasiado. Donde su laboratorio imprime su propia cifra, esa vale.",
  "lime.limit.exchangeable-acidity":
    "La relación de Pensilvania tiene cifras solo para pH 6.5 y 7.0, para 18 cm (7 pulgadas) de suelo.",
  "lime.limit.target-moved":
    "Calculado para pH {target}, no {wanted}: la relación de {method} no tiene cifra para eso.",
  "lime.limit.sulfur":
    "Las dosis publicadas de azufre para un mismo suelo difieren de dos a tres veces; se toma la menor que se leyó. El carbonato del agua de riego trae el pH de vuelta.",
  "lime.limit.georgia": "Calibrado en Georgia, y para magnesio también en Ohio y en la guía del extractante.",
  "lime.limit.old": "La muestra del {day} de {year} tiene más de tres años.",
  "lime.change.fineness": "La finura de la cal: si solo actúa 60 % de ella, el total sería {kg}.",
  "lime.change.depth": "Incorporada solo a {half} de hondo, basta la mitad: {kg}.",
  "lime.change.target": "Otro pH de meta, fijado por su oficina.",
  "lime.change.history": "La cal dada en el último año: lo que todavía no actuó se resta.",
  "lime.change.magnesium": "El magnesio en el análisis de suelo: decide entre cal calcítica y dolomítica.",
  "lime.change.set-out": "El próximo día en que salen plantas: la cal necesita medio año antes.",
  "lime.change.test": "Un análisis nuevo, o la cifra de cal del propio laboratorio.",
  "lime.chart.title": "Lo que hace la cal al pH de este suelo",
  "lime.chart.lime": "cal pura",
  "lime.chart.ph": "pH",
  "lime.chart.target": "meta",
};
