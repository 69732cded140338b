/** What feeding says, in Spanish. */
export const feeding: Record<string, string> = {
  "feeding.ended": "La plantación se quitó.",
  "feeding.containers": "Lo que reciben las macetas lo dice la regla de macetas: se fertilizan con su agua.",
  "feeding.season-over":
    "Ya pasó la temporada que cubren las cifras de absorción; nada que se dé ahora llegaría al fruto.",
  "feeding.decision.feed-this-week":
    "Esta semana dé {kg} de {material}{more, plural, =0 {} =1 { y un material más} other { y # materiales más}} en esta cama{weeks, plural, =1 {} other {, para # semanas de una vez}} ({n} de nitrógeno).{short, select, none {} other { Quedan sin cubrir {missing} de {nutrient}.}}",
  "feeding.decision.none-this-week":
    "Esta semana nada: lo dado todavía alcanza. La próxima dosis de {material} toca el {day}.{short, select, none {} other { Quedan sin cubrir {missing} de {nutrient}.}}",
  "feeding.decision.none-needed": "No hace falta nitrógeno: los créditos cubren lo que absorbe el cultivo.",
  "feeding.decision.enough-given": "No dé más: lo dado cubre el resto de la temporada.",
  "feeding.decision.choose-material":
    "Escoja un material: {due, select, none {} other {esta semana tocan {n} de nitrógeno, }}{season}{due, select, none { de nitrógeno} other {}} en el resto de la temporada.",
  "feeding.decision.not-yet":
    "No antes del trasplante. La primera dosis de {material} toca el {day}.{short, select, none {} other { Quedan sin cubrir {missing} de {nutrient}.}}",
  "feeding.decision.after-rain":
    "Espere: se pronostican {rain} de lluvia que lo lavarían. Dé {material} el {day}.{short, select, none {} other { Quedan sin cubrir {missing} de {nutrient}.}}",
  "feeding.decision.hold-back":
    "No fertilice hasta que salgan hojas nuevas: el registro del frío dice que se espere. Lo que toca esta semana no se da.",
  "feeding.decision.paused":
    "Nada de nitrógeno antes del {until}: el último análisis de nitrato halló suficiente en el suelo.",
  "feeding.decision.buy":
    "En la bodega ya no queda {material}.{due, select, none {} other { Esta semana tocan {n} de nitrógeno.}}",
  "feeding.decision.buy-any":
    "En la bodega no queda nada para esta plantación.{due, select, none {} other { Esta semana tocan {n} de nitrógeno.}}",
  "feeding.step.hold-back":
    "No fertilice hasta que salgan hojas nuevas, como dice el registro del frío (costumbre del oficio){due, select, none {} other {: de los {n} de nitrógeno que tocan esta semana no dé nada}}. Anote la primera hoja nueva; si ya las hay, anótelo ahora.",
  "feeding.step.unanswered":
    "Aconsejamos una fertilización que nadie contestó. Este consejo la toma como dada, para que nada se dé dos veces. Díganos si no fue así.",
  "feeding.step.unanswered-ash":
    "Aconsejamos ceniza o cal para el {ash} y nadie contestó. Este consejo la toma como esparcida, para que no le siga amonio ni urea en un mes. Díganos si no fue así.",
  "feeding.step.need":
    "La temporada: para la meta de cosecha el cultivo absorbe de {low} a {high} de nitrógeno, y se deben dar {season}. Se dieron {given}, faltan {left}.",
  "feeding.step.need-credited":
    "La temporada: para la meta de cosecha el cultivo absorbe de {low} a {high} de nitrógeno; menos créditos de {creditLow} a {creditHigh} (se cuentan {creditMid}) se deben dar {season}, entre {seasonLow} y {seasonHigh}. Se dieron {given}, faltan {left}.",
  "feeding.step.need-guide":
    "La temporada: {guide} da de {low} a {high} de nitrógeno, y se deben dar {season}. Se dieron {given}, faltan {left}.",
  "feeding.step.need-guide-credited":
    "La temporada: {guide} da de {low} a {high} de nitrógeno; menos créditos de {creditLow} a {creditHigh} (se cuentan {creditMid}) se deben dar {season}, entre {seasonLow} y {seasonHigh}. Se dieron {given}, faltan {left}.",
  "feeding.step.secondary":
    "Una guía que corresponde al análisis de suelo pide {rate} de {nutrient} en la temporada. Se da una vez, y más puede hacer daño.",
  "feeding.step.missed": "{missed} tocaban antes y no se dieron. No se recuperan ahora.",
  "feeding.step.ceiling":
    "Se detiene en {most}: por encima de eso ningún ensayo de aquí halló más cosecha, solo más nitrato perdido.",
  "feeding.step.dose-bed":
    "Dé {bed} de {material} en esta cama{weeks, plural, =1 {} other {; sirve # semanas, y en medio no se da nada}}. Son {plant}, o {row}, o {square}, o {area} de suelo cultivado.",
  "feeding.step.dose-bed-row":
    "Dé {bed} de {material} en esta cama{weeks, plural, =1 {} other {; sirve # semanas, y en medio no se da nada}}. Son {row}, o {square}, o {area} de suelo cultivado.",
  "feeding.step.scoop":
    "En volumen son {volume} de {material}, llenado flojo. Pese una medida de su propio saco antes de confiar en ella.",
  "feeding.step.wait":
    "Se pronostican {rain} de lluvia en los tres días desde el día en que tocaba, {excess} más de lo que el suelo puede guardar. Eso puede llevarse de {low} a {high} de nitrógeno de nitrato. Dé la dosis el {day}.",
  "feeding.step.split":
    "Se pronostican {rain} de lluvia, {excess} más de lo que el suelo puede guardar, y el pronóstico no ve el final. Dé la mitad ahora y la mitad después; todo de una vez podrían perderse de {low} a {high} de nitrógeno de nitrato.",
  "feeding.step.log-each":
    "Cuando esté hecho, cada material de la dosis aparece llenado de antemano: ponga lo que de verdad dio.",
  "feeding.step.dry":
    "O, como una sola aplicación en seco para las próximas {weeks} semanas: {bed} de {material} en esta cama, y nada en medio.",
  "feeding.step.next":
    "La próxima dosis de {material} toca el {day}: {bed} en esta cama{weeks, plural, =1 {} other {, para # semanas de una vez}}.",
  "feeding.step.season":
    "Hasta el {until} la cama toma {bed} de {material} en total ({area} de suelo cultivado).",
  "feeding.step.stock-unknown":
    "No se sabe cuánto {material} hay en la bodega: péselo antes de contar con él.",
  "feeding.step.stock-left": "Después de eso quedan {left} de {material} en la bodega.",
  "feeding.step.to-buy": "De {material} la bodega tiene {have} para esta cama. Compre {buy} para el resto.",
  "feeding.step.shortfall":
    "La bodega tiene {have} para esta cama y le faltan {short}. Compre eso, o escoja un segundo material para el resto.",
  "feeding.step.brings":
    "Eso trae {n} de nitrógeno, {p2o5} de P2O5 y {k2o} de K2O en el resto de la temporada.",
  "feeding.step.over-n":
    "Trae {over} más de nitrógeno de lo contado, todavía dentro de lo que el cultivo puede usar.",
  "feeding.step.over-p2o5":
    "Trae {over} más de P2O5 de lo que pide el análisis de suelo. Escoja un material con menos fosfato donde pueda.",
  "feeding.step.over-k2o":
    "Trae {over} más de K2O de lo que pide el análisis de suelo. Demasiado potasio mantiene el calcio fuera del fruto.",
  "feeding.step.short":
    "{short} de {nutrient} quedan sin cubrir: nada que se permita aquí los trae dentro de los límites.",
  "feeding.step.left-out": "{material} no se puede usar aquí: {why}.",
  "feeding.left-out.another-chosen": "se escogió otro material",
  "feeding.left-out.not-certified": "no está probado que se permita en suelo orgánico",
  "feeding.left-out.proof-expired": "venció la prueba de su uso en suelo orgánico",
  "feeding.left-out.no-proof": "nada dice hasta cuándo está probado su uso en suelo certificado",
  "feeding.left-out.not-soluble": "no se disuelve y taparía la línea de goteo",
  "feeding.left-out.raw-manure":
    "el estiércol crudo se esparce antes de las plantas; la regla de estiércol dice cuándo todavía se puede",
  "feeding.left-out.liming-material": "encala, y eso lo decide el pH del suelo",
  "feeding.left-out.no-food": "no tiene nada de lo que se pide aquí",
  "feeding.left-out.soil-ph": "acidifica el suelo, y eso lo decide el pH del suelo",
  "feeding.left-out.ash-with-ammonium":
    "lleva amonio o urea, y hace menos de un mes se esparció ceniza o cal, o se aconsejó y nadie contestó",
  "feeding.step.tank":
    "Tanque {tank}: disuelva {grams} de {material} en {litres} de solución madre{fills, plural, =1 {} other {, # llenados del tanque}}.",
  "feeding.step.next-turn":
    "Cuando haya pasado, enjuague tanques y líneas con agua limpia, y después dé lo siguiente; no debe encontrarse con lo primero en un tanque.",
  "feeding.step.tank-weaker":
    "A 1:{set} sería {times} veces lo que se disuelve a {tank}. Haga la solución madre más débil y ponga el inyector a 1:{ratio}.",
  "feeding.step.tank-too-cold":
    "No hay publicada ninguna solubilidad de {material} para un tanque tan frío como {tank}. Mantenga la solución madre a {coldest} o más, o delo a mano.",
  "feeding.step.tank-cannot-dissolve":
    "{material} no se disuelve en el agua de una semana a {tank}. Delo a mano, o escoja otro material.",
  "feeding.step.injector-season":
    "A 1:{ratio} (1 parte de solución madre en {ratio} partes de solución final) los {water} de agua a la semana llevan entonces {n} de nitrógeno y {k2o} de K2O.",
  "feeding.step.injector-pace":
    "A 1:{ratio} (1 parte de solución madre en {ratio} partes de solución final) los {water} de agua a la semana, al paso de hasta ahora, llevan entonces {n} de nitrógeno y {k2o} de K2O.",
  "feeding.step.tank-grams": "Tanque {tank}: {grams} de {material}.",
  "feeding.step.tank-no-water":
    "No se sabe cuánta agua recibe esta cama en una semana, así que no se puede decir la fuerza de la solución madre, las ppm ni la conductividad. Anote los riegos de su válvula: desde dos semanas después del trasplante lo dicen.",
  "feeding.step.ec-feed":
    "Por encima de la del agua limpia, un medidor de conductividad debe marcar de {low} a {high}. Mida el agua limpia y réstela; la etiqueta va primero.",
  "feeding.step.ec":
    "Un medidor de conductividad debe marcar de {low} a {high}, de los que {water} son del agua limpia. La etiqueta va primero.",
  "feeding.step.hard-water":
    "El agua del análisis del {day} es dura: con concentrado adentro la costra de carbonato tapa los goteros. Pregunte por el ácido antes de fertilizar por ellos.",
  "feeding.step.nitrate-enough":
    "El análisis de nitrato del {day} halló {found} en el suelo; desde {enough} los pimientos no necesitan más. El nitrógeno descansa hasta el {until}. Analice de nuevo entonces.",
  "feeding.step.nitrate-short":
    "El análisis de nitrato del {day} halló {found} en el suelo; {enough} es suficiente. Según esa regla se darían {sidedress} de nitrógeno al lado de la hilera; se muestra junto al plan y no lo cambia.",
  "feeding.step.retest":
    "Hacia el {day} llovieron {excess} más de lo que guarda el suelo: pueden haberse ido de {low} a {high} de nitrógeno de nitrato. Analice el nitrato antes de compensarlo.",
  "feeding.step.tests-disagree":
    "Análisis del mismo día no coinciden sobre {nutrient}. No se mueve nada: tome otra muestra.",
  "feeding.step.plant-moves-low":
    "{what} del {day}: {nutrient} está bajo ({value}; de {low} a {high} es suficiente, de memoria). El resto de la temporada sube {share} (costumbre del oficio), nunca por encima de su tope.",
  "feeding.step.plant-moves-enough":
    "{what} del {day}: {nutrient} es suficiente ({value}; de {low} a {high}, de memoria). El resto de la temporada queda como está.",
  "feeding.step.plant-moves-high":
    "{what} del {day}: {nutrient} está alto ({value}; de {low} a {high} es suficiente, de memoria). El resto de la temporada baja {share} (costumbre del oficio).",
  "feeding.step.plant-shown-low":
    "{what} del {day}: {nutrient} está bajo ({value}; de {low} a {high} es suficiente, de memoria). No mueve ninguna dosis: pregunte por qué antes de añadirlo.",
  "feeding.step.plant-shown-high":
    "{what} del {day}: {nutrient} está alto ({value}; de {low} a {high} es suficiente, de memoria). No mueve ninguna dosis.",
  "feeding.tested.petiole-sap": "Savia de pecíolo",
  "feeding.tested.leaf": "Hojas",
  "feeding.plant-nutrient.NO3-N": "nitrógeno de nitrato",
  "feeding.plant-nutrient.N": "nitrógeno",
  "feeding.plant-nutrient.P": "fósforo",
  "feeding.plant-nutrient.K": "potasio",
  "feeding.plant-nutrient.Ca": "calcio",
  "feeding.plant-nutrient.Mg": "magnesio",
  "feeding.plant-nutrient.S": "azufre",
  "feeding.plant-nutrient.Zn": "zinc",
  "feeding.plant-nutrient.B": "boro",
  "feeding.plant-nutrient.Mn": "manganeso",
  "feeding.plant-nutrient.Fe": "hierro",
  "feeding.plant-nutrient.Cu": "cobre",
  "feeding.step.slow":
    "El nitrógeno de {material} se libera solo al pudrirse, en semanas o años. Incorpórelo temprano, y no espere la dosis de esta semana esta semana.",
  "feeding.step.choose":
    "Ponga en la bodega un material que se pueda usar aquí: entonces salen las cantidades por cama y planta.",
  "feeding.step.fits-nothing":
    "El material escogido no tiene nada de lo que todavía falta aquí. Escoja otro.",
  "feeding.step.mineral-unknown": "{nutrient}: no se aconseja nada, porque {why}.",
  "feeding.step.mineral-responds":
    "{nutrient}: el análisis de suelo dice que el cultivo responde. {season} en la temporada, faltan {left}.",
  "feeding.step.mineral-responds-elsewhere":
    "{nutrient}: el análisis de suelo dice que el cultivo responde. {season} en la temporada, faltan {left}; {short} de eso debe venir de otro material.",
  "feeding.step.mineral-may-respond":
    "{nutrient}: el cultivo puede responder. Se devuelve lo que se lleva el fruto: {season} en la temporada, faltan {left}.",
  "feeding.step.mineral-may-respond-elsewhere":
    "{nutrient}: el cultivo puede responder. Se devuelve lo que se lleva el fruto: {season} en la temporada, faltan {left}; {short} de eso debe venir de otro material.",
  "feeding.step.mineral-guide": "{nutrient}: {guide} da {season} en la temporada, faltan {left}.",
  "feeding.step.mineral-guide-elsewhere":
    "{nutrient}: {guide} da {season} en la temporada, faltan {left}; {short} de eso debe venir de otro material.",
  "feeding.step.mineral-guide-unverified":
    "{nutrient}: {guide}, que nadie aquí leyó en su publicación, da {season} en la temporada, faltan {left}.",
  "feeding.step.mineral-guide-unverified-elsewhere":
    "{nutrient}: {guide}, que nadie aquí leyó en su publicación, da {season} en la temporada, faltan {left}; {short} de eso debe venir de otro material.",
  "feeding.step.mineral-unlikely":
    "{nutrient}: no dé nada. El análisis de suelo dice que el cultivo casi no respondería.",
  "feeding.step.ratio-before":
    "K2O esta semana {k2o}. Desde los botones a la vista, hacia el {buds}, el potasio sube frente al nitrógeno (costumbre del oficio).",
  "feeding.step.ratio-after":
    "K2O esta semana {k2o}. Desde los botones a la vista el potasio sube frente al nitrógeno, ahora {ratio} veces tan empinado como antes (costumbre del oficio). Demasiado mantiene el calcio fuera del fruto.",
  "feeding.because.no-test": "ningún análisis de suelo mineral lo tiene",
  "feeding.because.no-extractant": "el análisis de suelo no nombra su extractante",
  "feeding.because.no-guide": "ninguna guía verificada lee ese extractante",
  "feeding.because.needs-cec": "la guía necesita la capacidad de intercambio",
  "feeding.because.needs-ph": "la guía necesita el pH",
  "feeding.nutrient.n": "nitrógeno",
  "feeding.nutrient.p2o5": "P2O5",
  "feeding.nutrient.k2o": "K2O",
  "feeding.nutrient.ca": "calcio",
  "feeding.nutrient.mg": "magnesio",
  "feeding.nutrient.s": "azufre",
  "feeding.nutrient.b": "boro",
  "feeding.ends":
    "Termina con la semana, con una fertilización o lluvia fuerte, o cuando se vean botones o cuajado.",
  "feeding.stakes":
    "Lo que toca esta semana es {share} del nitrógeno de la temporada{more, select, some {; la dosis sirve también para semanas posteriores y es {dosed}} other {}}. En un ensayo los pimientos sin nada perdieron {loss} de la cosecha; una semana perdida cuesta poco, cada una más cuesta más.",
  "feeding.stakes.none": "Esta semana no toca nada, así que no se pierde nada por esperar.",
  "feeding.stakes.rain": "Esperar a que pase la lluvia no pierde nada; darlo antes, sí.",
  "feeding.stakes.cold":
    "A plantas que el frío pudo haber frenado no se les da fertilizante hasta que salgan hojas nuevas (costumbre del oficio). Lo que cuesta la semana que se espera nunca se midió.",
  "feeding.stakes.mineral":
    "El análisis de suelo pide potasa o fosfato. Lo que cuesta una semana sin ello nunca se midió; es poco.",
  "feeding.limit.basis":
    "Las dosis son por suelo cultivado, con los pasillos, al espaciamiento de esta cama. Solo sobre la cama parecen mayores.",
  "feeding.limit.hold-back":
    "Que después del frío no se fertilice es práctica común, y también lo es el frío que lo pide. Ningún ensayo los fija.",
  "feeding.limit.climate":
    "Las cifras de absorción vienen de temporadas largas y cálidas. En una fresca y corta la meta de cosecha debe ser honesta.",
  "feeding.limit.slow":
    "Del estiércol y la composta se cuenta lo que se libera este año, de las harinas todo; cuándo se libera lo deciden el calor y el agua.",
  "feeding.limit.old-test":
    "El análisis de suelo del {day} de {year} tiene más de tres años. El P2O5 y el K2O siguen según él; el calcio, el magnesio y el boro no se dan por él. Tome otra muestra.",
  "feeding.limit.ash-apart-perhaps":
    "Se aconsejó ceniza o cal para el {on}, y nadie dijo si se esparció. Se toma como esparcida: lo que lleva amonio o urea puede seguir desde el {from}, porque antes su nitrógeno se va como amoníaco.",
  "feeding.limit.ash-apart":
    "El {on} se esparció ceniza o cal. Lo que lleva amonio o urea puede seguir desde el {from}: antes su nitrógeno se va como amoníaco.",
  "feeding.limit.species": "Las cifras son de pimiento dulce y chile de Capsicum annuum.",
  "feeding.limit.strip":
    "La sal se juzga en la franja que se trata, tomada como 15 cm por hilera para una banda y 30 cm donde la lleva el agua (costumbre del oficio).",
  "feeding.limit.guide-memory":
    "Las dosis de esa guía son de memoria y sin verificar. Se usan porque su oficina las escogió.",
  "feeding.limit.organic-matter":
    "Lo que libera la materia orgánica se conoce aquí solo de memoria (de 10 a 40 lb de nitrógeno por acre por cada por ciento). El plan cuenta lo más bajo.",
  "feeding.limit.manure":
    "Lo que se libera del estiércol y la composta es un rango; se cuenta su centro. La parte de la composta es de memoria y sin verificar.",
  "feeding.limit.plant-tests":
    "Los rangos para hojas y savia son de memoria y sin verificar. Arizona halló inconsistentes los análisis de savia de chile.",
  "feeding.limit.forecast-old": "El pronóstico tiene más de un día: no movió ninguna dosis.",
  "feeding.limit.may-respond":
    "Donde las guías difieren o lo dejan abierto, se devuelve lo que se lleva el fruto y no más.",
  "feeding.change.hold-back":
    "Una mirada a los puntos de crecimiento, notas de hojas nuevas y días sin más frío: por ellos va lo que dice el registro del frío.",
  "feeding.change.goal": "La meta de cosecha: mueve la necesidad en proporción (ahora de {low} a {high}).",
  "feeding.change.leaching":
    "Lluvia fuerte o riego de más: 25 mm de más pueden llevarse de 20 a 35 kg/ha de nitrato. Analice de nuevo después.",
  "feeding.change.soil-test": "Un análisis de suelo con extractantes, para P2O5 y K2O.",
  "feeding.change.water-mm": "Cuánta agua da: cada 100 mm de la suya trae {n} de nitrógeno.",
  "feeding.change.water-nitrate":
    "El nitrato de su agua de riego: por encima de 3 a 5 mg/L vale la pena contarlo.",
  "feeding.change.buds": "El día en que se ven los botones: se toma el {day}.",
  "feeding.change.organic-matter":
    "Un crédito por materia orgánica: el suelo puede dar hasta 1 kg/ha de nitrógeno al día en semanas cálidas.",
  "feeding.change.plant-test":
    "Un análisis de hojas o savia de pecíolo en una etapa con nombre: mueve el resto de la temporada una quinta parte.",
  "feeding.case.done": "Si la fertilización del {day} se dio",
  "feeding.case.not-done": "Si la fertilización del {day} no se dio",
  "feeding.case.ash-spread": "Si la ceniza o cal aconsejada para el {ash} se esparció",
  "feeding.case.ash-not-spread": "Si la ceniza o cal aconsejada para el {ash} no se esparció",
  "feeding.case.done-ash-spread":
    "Si la fertilización del {day} se dio y la ceniza o cal aconsejada para el {ash} se esparció",
  "feeding.case.done-ash-not-spread":
    "Si la fertilización del {day} se dio y la ceniza o cal aconsejada para el {ash} no se esparció",
  "feeding.case.not-done-ash-spread":
    "Si la fertilización del {day} no se dio y la ceniza o cal aconsejada para el {ash} se esparció",
  "feeding.case.not-done-ash-not-spread":
    "Si ni la fertilización del {day} se dio ni la ceniza o cal aconsejada para el {ash} se esparció",
  "feeding.missing.goal": "Una meta de cosecha para esta plantación: lo que la cama dio en un buen año.",
  "feeding.missing.goal-moves":
    "Con {lowGoal} el cultivo absorbe {low} de nitrógeno, con {highGoal} hasta {high}.",
  "feeding.missing.set-out": "El día en que las plantas se trasplantaron o se trasplantarán.",
  "feeding.missing.set-out-moves":
    "Sin él queda la cantidad de la temporada, pero no se puede colocar ninguna semana.",
  "feeding.chart.title": "Nitrógeno y potasa por dar, por semana",
  "feeding.chart.week": "semana del",
  "feeding.chart.rate": "por hectárea de suelo cultivado",
  "feeding.chart.n": "nitrógeno",
  "feeding.chart.k2o": "K2O",
  "feeding.chart.supply-title": "Lo que absorbe el cultivo y lo que se le da, en la temporada",
  "feeding.chart.day": "día",
  "feeding.chart.uptake": "nitrógeno absorbido",
  "feeding.chart.supply": "nitrógeno dado y planeado",
  "feeding.stage.early": "hasta los botones",
  "feeding.stage.mid": "de los botones al cuajado",
  "feeding.stage.fruit-set": "fruto",
  "feeding.table.title": "Lo que queda de la temporada, semana por semana",
  "feeding.table.week": "semana del",
  "feeding.table.stage": "etapa",
  "feeding.table.n": "nitrógeno",
  "feeding.table.p2o5": "P2O5",
  "feeding.table.k2o": "K2O",
  "feeding.table.material": "{material}, en esta cama",
  "feeding.table.material-tank": "{material}, tanque {tank}",
  "feeding.table.ppm": "nitrógeno en el agua",
  "feeding.table.ec-feed-low": "por encima del agua limpia, desde",
  "feeding.table.ec-feed-high": "hasta",
  "feeding.table.ec-low": "el medidor marca desde",
  "feeding.table.ec-high": "hasta",
};
