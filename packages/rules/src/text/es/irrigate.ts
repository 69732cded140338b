/** What irrigate says, in Spanish. */
export const irrigate: Record<string, string> = {
  "irrigate.no-plants": "En esta válvula todavía no hay plantas, o ya se quitaron.",
  "irrigate.decision.water-now":
    "Riegue hoy: abra la válvula {minutes} ({litres}, {net} a la zona de raíces).",
  "irrigate.decision.wait": "No riegue todavía. El próximo riego toca hacia el {day}.",
  "irrigate.decision.wait-long":
    "No riegue todavía. Con este tiempo no toca ninguno en las próximas tres semanas.",
  "irrigate.decision.hold":
    "Espere: la lluvia pronosticada debería sostener la cama. Mire de nuevo el {day}.",
  "irrigate.step.unanswered":
    "Aconsejamos un riego que nadie contestó. Este consejo lo toma como no hecho, porque una cama seca cuesta más que un riego de más. Díganos si se hizo.",
  "irrigate.step.wilting":
    "Se vieron plantas marchitas al amanecer. Según las cuentas faltan {missing}: si el suelo está húmedo, son las raíces y no el agua, y más agua lo empeora.",
  "irrigate.step.look-first":
    "Primero cave una mano de hondo junto a una planta. Si ese suelo todavía se mantiene junto al apretarlo, espere un día y díganos.",
  "irrigate.step.run":
    "Abra la válvula {minutes}. Son {litres} ({gross} sobre las camas), de los que {net} quedan en la zona de raíces con una eficiencia de {efficiency}.",
  "irrigate.step.too-slow":
    "Con este caudal tarda {hours}, más de un día. Repártalo en los días, y revise el caudal y el filtro.",
  "irrigate.step.rounds":
    "La zona de raíces guarda menos que el uso de un día: dé el agua en {rounds, plural, one {# vuelta} other {# vueltas}} durante el día, para que no pase de largo por debajo de las raíces.",
  "irrigate.step.bed": "Cama {bed}: {litres}, cerca de {each} para cada planta.",
  "irrigate.step.container": "Macetas {bed}: {litres}, cerca de {each} para cada maceta.",
  "irrigate.step.container-overfilled":
    "Macetas {bed}: no más de {most} para cada maceta a la vez, {all} en total. Este riego les llevaría {litres}, cerca de {each} a cada una, y un llenado de una maceta guarda {holds} para sus plantas: lo demás se escurre. Necesitan un tiempo propio, o goteros o una válvula propios; el consejo de estas macetas dice cuánto y cada cuánto. Lo que se dice para las otras camas no cambia.",
  "irrigate.step.thirstiest":
    "A la cama {bed} le falta primero y fija el tiempo. Las otras camas reciben hasta {surplus} más de lo que pueden guardar.",
  "irrigate.step.next": "Después de eso el próximo riego toca hacia el {day}.",
  "irrigate.step.next-interval":
    "Después de eso el próximo riego toca hacia el {day}: desde el {early} con tiempo como el más sediento de las últimas dos semanas, hasta el {late} con el más suave.",
  "irrigate.step.interval":
    "El próximo riego llega hacia el {day}: desde el {early} con tiempo como el más sediento de las últimas dos semanas, hasta el {late} con el más suave. Tomará entonces cerca de {net}.",
  "irrigate.step.with-rain": "Si cae la lluvia pronosticada, puede esperar hasta cerca del {day}.",
  "irrigate.step.left":
    "Faltan {missing} en la zona de raíces; pueden faltar {ready} antes de que las plantas se frenen.",
  "irrigate.step.look-anyway":
    "De todos modos cave una mano de hondo dos veces por semana. El suelo seco ahí pesa más que estas cuentas.",
  "irrigate.step.first-zone": "A la cama {bed} le faltará primero.",
  "irrigate.step.forecast":
    "El pronóstico tiene {rain} de lluvia hasta el {day}. Cuenta solo cuando haya caído.",
  "irrigate.step.forecast-not-enough":
    "El pronóstico tiene {rain} de lluvia hasta el {day}: muy poca, muy tarde o no para estas camas, así que no se espera.",
  "irrigate.step.rain-hold":
    "Se pronostican {rain} de lluvia hasta el {day}. La probabilidad de que no caiga es de {stays}, y se acepta {accepted}. Si no cae, las plantas reciben hasta entonces {got} de lo que pueden usar: un riesgo de {risk} del valor de la cosecha.",
  "irrigate.step.rain-too-unsure":
    "Se pronostican {rain} de lluvia hasta el {day}, pero la probabilidad de que no caiga es de {stays} y solo se acepta {accepted}. No se espera.",
  "irrigate.step.rain-wilts":
    "Se pronostican {rain} de lluvia hasta el {day}, pero sin ella las plantas se marchitarían antes. No se espera, aunque la probabilidad de que no caiga es de solo {stays}.",
  "irrigate.step.rain-no-chance":
    "Se pronostican {rain} de lluvia hasta el {day}, y el pronóstico no da la probabilidad. Se espera solo porque a las plantas todavía no les falta esta mañana.",
  "irrigate.step.rain-no-chance-water":
    "Se pronostican {rain} de lluvia hasta el {day}, pero el pronóstico no da la probabilidad, y a las plantas les faltaría para entonces. No se espera.",
  "irrigate.step.leach":
    "{share} del agua debe pasar por debajo de las raíces, para llevarse la sal: esta agua ({ec}) pide {required}, y hasta ahora drenó {drained} de lo que llegó.",
  "irrigate.step.deficit-alone":
    "Aquí se mantiene a propósito un tiempo seco: riegue cuando falten {trigger} en lugar de {ready}, lo que deja a las plantas cerca de {share} de lo que pueden usar.",
  "irrigate.step.deficit-shared":
    "Se quiere un tiempo seco en la cama {bed}, pero otras plantas dependen de la misma válvula. Riega para las sedientas; un bloque que se tiene seco necesita su propia válvula.",
  "irrigate.step.deficit-off":
    "Aquí está anotado un tiempo seco, pero ahora no se debe mantener: todavía sin fruto cuajado, calor o frío, una señal en las plantas, o una fuerza que aquí no se acepta. La cama se riega completa. El consejo sobre fruto más picante dice cuál.",
  "irrigate.step.sensor-content":
    "Cama {bed}: el sensor a {depth} marca {value} de agua, lo que hace que falten {missing} en la zona de raíces. Las cuentas dicen {book}. Decide el sensor.",
  "irrigate.step.sensor-content-too":
    "Cama {bed}: el sensor a {depth} marca {value} de agua, lo que hace que falten {missing} en la zona de raíces.",
  "irrigate.step.sensor-mean":
    "Cama {bed}: el promedio de sus sensores hace que falten {missing}. Las cuentas dicen {book}. Deciden los sensores.",
  "irrigate.step.sensor-water":
    "Cama {bed}: el sensor a {depth} marca {value}; en este suelo los pimientos se riegan de {low} a {high}. Según las cuentas faltan {book}, de {ready} que pueden faltar. El sensor decide que toca regar; cuánto, lo dicen las cuentas, al menos el uso de un día. Léalo de nuevo mañana.",
  "irrigate.step.sensor-wait":
    "Cama {bed}: el sensor a {depth} marca {value}; en este suelo los pimientos se riegan de {low} a {high}. Según las cuentas faltan {book}, de {ready} que pueden faltar. Decide el sensor: hoy no. Léalo de nuevo mañana.",
  "irrigate.step.sensor-tension-too":
    "Cama {bed}: otro sensor, a {depth}, marca {value}; en este suelo los pimientos se riegan de {low} a {high}. Se muestra y no decide.",
  "irrigate.sensor.stale":
    "Cama {bed}: el sensor a {depth} marcó por última vez {value} el {day}, hace más de un día. No se usa.",
  "irrigate.sensor.out-of-range":
    "Cama {bed}: el sensor a {depth} marca {value}, que no puede ser. No se usa: revise su cable y su contacto con el suelo.",
  "irrigate.sensor.stuck":
    "Cama {bed}: el sensor a {depth} lleva días en {value} mientras las plantas bebían. No se usa: vea si está trabado.",
  "irrigate.sensor.below-roots":
    "Cama {bed}: el sensor a {depth} está más hondo de lo que llegan las raíces. Su {value} no se usa.",
  "irrigate.sensor.no-threshold":
    "Cama {bed}: el sensor a {depth} marca {value}, pero sin la textura o la capacidad de campo del suelo eso no dice nada de esta cama.",
  "irrigate.sensor.deficit":
    "Cama {bed}: el sensor a {depth} marca {value}. Sus límites son para agua completa y no para un tiempo seco a propósito, así que no decide.",
  "irrigate.step.season":
    "Desde el trasplante las plantas usaron {used}. Se regaron {given} a la zona de raíces, contaron {rain} de lluvia, y {drained} drenaron por debajo de las raíces.",
  "irrigate.step.season-ahead":
    "Hasta el {end} usarán cerca de {use} más (de {useLow} a {useHigh} en {years, plural, one {# año} other {# años}}). Si no lloviera, eso tomaría {water} a la zona de raíces (de {waterLow} a {waterHigh}); la lluvia se resta.",
  "irrigate.ends.water": "Termina con un riego, o con lluvia que llene la cama.",
  "irrigate.ends.wait":
    "Termina cuando la zona de raíces haya dado lo que da con facilidad, o con lluvia o un riego.",
  "irrigate.stakes":
    "Si se dejan secas {days} días después de que toca regar, las plantas recibirían {share} de lo que pueden usar.",
  "irrigate.stakes.wilting":
    "Si se deja seca {days} días después de que toca regar, la zona de raíces quedaría casi vacía: las plantas se marchitan, tiran sus flores y pueden no recuperarse.",
  "irrigate.stakes.none": "No toca ningún riego en las próximas tres semanas.",
  "irrigate.limit.single":
    "Lo que se evapora de una mezcla de maceta no está publicado en la forma necesaria: en macetas un solo coeficiente al día cubre planta y mezcla juntas.",
  "irrigate.limit.bed-only":
    "El agua se calcula para la cama misma, {width} de cada {spacing}. Las hojas que pasan sobre el pasillo usan más de lo dicho: donde lo hacen, cave y mire, y anote el ancho que cubren como el de la cama.",
  "irrigate.limit.no-runoff":
    "Se toma que toda la lluvia entra al suelo. En una ladera o con costra una parte escurre.",
  "irrigate.limit.no-rise":
    "Se toma que no sube agua de abajo. Donde el agua subterránea está cerca, la cama necesita menos de lo que se dice aquí.",
  "irrigate.limit.top":
    "La zona de raíces cuenta como llena cuando lo está su promedio, aunque el suelo entre goteros puede estar seco.",
  "irrigate.limit.sensor": "Un solo sensor vale por toda la zona de raíces de su cama.",
  "irrigate.limit.rain-chance":
    "La probabilidad de un pronóstico es de cualquier lluvia, no de esta cantidad.",
  "irrigate.limit.salt-containers":
    "Cómo frena la sal a las plantas está publicado para suelo, no para macetas: ahí no se cuenta.",
  "irrigate.limit.salt-from-water":
    "La sal del suelo es la que dejaría esta agua después de temporadas de riego parejo. Un análisis en pasta saturada diría cómo está.",
  "irrigate.limit.salt-beyond":
    "Los {ece} del suelo pasan de los {bound} hasta donde vale la relación publicada. Ahí el estrés por sal es una adivinanza.",
  "irrigate.limit.no-leaching":
    "Con agua de {ec} ningún lavado mantiene el suelo donde los pimientos conservan toda su cosecha. Hace falta otra agua, o un cultivo más resistente.",
  "irrigate.limit.hot-peppers":
    "Los coeficientes son los del pimiento dulce. No hay publicados para los picantes; aquí comparten estos.",
  "irrigate.limit.mulch":
    "El pimiento no está en la tabla publicada de cultivos con acolchado. De su rango para otros cultivos se toma el extremo que riega más.",
  "irrigate.limit.cover":
    "Bajo un túnel o en un invernadero el viento es el de un invernadero de plástico; el sol, el calor y la humedad son los del aire libre, porque no se halló publicada ninguna parte para esta cubierta. Ahí las plantas suelen usar menos de lo dicho, con calor a veces más.",
  "irrigate.limit.container":
    "El agua que puede dar una mezcla de maceta es práctica común, no una medición. Pese una maceta regada y una marchita para conocer la suya.",
  "irrigate.limit.sprinkler-plastic":
    "El agua de arriba no pasa por el plástico. La eficiencia dada puede ser demasiado alta.",
  "irrigate.change.dig": "Qué tan hondo van de verdad las raíces: cave una vez y díganos.",
  "irrigate.change.rain": "Un pluviómetro junto a la cama. Los aguaceros cambian de campo a campo.",
  "irrigate.change.soil":
    "La capacidad de campo y el punto de marchitez del propio suelo: podrían faltar de {low} a {high} antes de que las plantas se frenen.",
  "irrigate.change.flow":
    "El caudal real de la válvula: recoja un gotero diez minutos en cada extremo de la línea.",
  "irrigate.change.cover":
    "La parte del suelo que cubren las plantas, vista desde arriba: anótela de vez en cuando.",
  "irrigate.change.wind":
    "El viento: el último día medido las plantas habrían pedido {still} con aire quieto y {windy} con viento como el de la semana más ventosa. Un rompevientos está en medio.",
  "irrigate.change.climatology":
    "Años de máximas y mínimas diarias de una estación cercana: entonces se puede decir con su rango el agua que falta hasta el final.",
  "irrigate.case.done": "Si el riego del {day} se hizo",
  "irrigate.case.not-done": "Si el riego del {day} no se hizo",
  "irrigate.missing.weather": "Máximas y mínimas diarias, y lluvia, desde el trasplante.",
  "irrigate.missing.weather-none":
    "Sin ningún día de tiempo desde el trasplante no se puede calcular ningún riego.",
  "irrigate.missing.weather-gap":
    "{days} días seguidos no tienen temperaturas (se salvan a lo más {limit}). En ese tiempo pueden haber pasado de {low} a {high} de evapotranspiración de referencia.",
  "irrigate.missing.soil":
    "La textura del suelo de la cama {bed}, al tacto o del laboratorio; o su capacidad de campo y su punto de marchitez.",
  "irrigate.missing.soil-moves":
    "En el suelo que menos guarda el próximo riego toca el {early} con {earlyNet}; en el que más guarda, el {late} con {lateNet}.",
  "irrigate.chart.title": "Agua que falta en la zona de raíces, cama {bed}",
  "irrigate.chart.day": "día",
  "irrigate.chart.mm": "lámina de agua",
  "irrigate.chart.depletion": "falta al final del día",
  "irrigate.chart.raw": "puede faltar antes de que las plantas se frenen",
  "irrigate.chart.taw": "todo lo que puede dar la zona de raíces",
  "irrigate.chart.rain": "lluvia que cuenta",
  "irrigate.chart.irrigation": "regado, neto",
  "irrigate.chart.top": "falta en la parte de arriba del suelo donde se riega",
  "irrigate.chart.demand": "Agua pedida y dada, cama {bed}",
  "irrigate.chart.et0": "pedida por el pasto (referencia)",
  "irrigate.chart.etc": "pedida por esta cama",
  "irrigate.chart.stress": "Qué tan libremente bebieron las plantas, cama {bed}",
  "irrigate.chart.ks": "parte de lo que podrían usar (Ks)",
};
