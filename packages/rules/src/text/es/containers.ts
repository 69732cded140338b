/** What containers says, in Spanish. */
export const containers: Record<string, string> = {
  "containers.not.ground": "Estas plantas están en el suelo, no en macetas.",
  "containers.not.ended": "Las plantas se quitaron.",
  "containers.not.not-out": "En estas macetas todavía no hay plantas.",
  "containers.decision.flush":
    "Lave las macetas con agua limpia, {litres} cada una, antes de fertilizar otra vez: se juntó sal.",
  "containers.decision.correct-ph": "Corrija el pH: el drenaje marcó {ph} el {day}.",
  "containers.decision.steady-daily":
    "Dé a cada planta {plant} {times, plural, one {una vez al día} other {# veces al día}}, con {ppm} de nitrógeno añadido.",
  "containers.decision.steady-days":
    "Dé a cada planta {plant} cada {days, plural, one {día} other {# días}}, con {ppm} de nitrógeno añadido.",
  "containers.step.water-daily":
    "{plant} por planta, {pot} por maceta, {times, plural, one {una vez al día} other {# veces al día, repartidas de la mañana al fin de la tarde}}. Todas las macetas juntas toman {all} al día.",
  "containers.step.water-days":
    "{plant} por planta, {pot} por maceta, cada {days, plural, one {día} other {# días}}. Todas las macetas juntas toman {all} al día.",
  "containers.step.range":
    "Una planta toma de {least} en el más suave de estos días a {most} en el más sediento. Levante una maceta antes de regar: una pesada puede esperar.",
  "containers.step.thirstiest":
    "El {day}, el más sediento de ellos, dé {plant} por planta {times, plural, one {una vez} other {# veces}}.",
  "containers.step.thirstiest-recent":
    "Un día como el {day} pide {plant} por planta {times, plural, one {una vez} other {# veces}}.",
  "containers.step.drain-unknown":
    "Recoja lo que escurre de unas macetas. De lo que da debe drenar {share}, cerca de {out} cada una, para que no se junte sal; de {low} a {high} está bien. Díganos lo que ve.",
  "containers.step.drain-dry":
    "El {day} drenó solo {seen}; de {low} a {high} está bien. De ahora en adelante debe drenar {share}, cerca de {out} por maceta.",
  "containers.step.drain-wasteful":
    "El {day} drenó {seen}, más que los {low} a {high} que están bien: el fertilizante y el agua se van. De ahora en adelante debe drenar {share}, cerca de {out} por maceta.",
  "containers.step.drain-right":
    "El {day} drenó {seen}, que está bien (de {low} a {high}). Manténgalo en {share}, cerca de {out} por maceta.",
  "containers.step.hot":
    "Llega a {c}: dé sombra a las macetas mismas, o júntelas para que se den sombra unas a otras. Las raíces en macetas oscuras dejan de crecer con el calor.",
  "containers.step.stale":
    "El drenaje se leyó por última vez el {day}. Hace demasiado para usarlo: léalo de nuevo.",
  "containers.step.salt-unjudged":
    "El drenaje marcó {ec} el {day}. Sin la conductividad de la propia agua limpia nadie puede decir si es mucho: mídala.",
  "containers.step.flush":
    "El drenaje marcó {ec} el {day}, más de {margin} por encima de lo que se da ({feed} a lo más). Dé a cada maceta {litres} de agua limpia en {portions} partes con media hora entre ellas, y lea el drenaje otra vez. Siga hasta que esté a {margin} de lo que se da.",
  "containers.step.hungry":
    "El drenaje marcó {ec} el {day}, menos que lo que se da ({feed}): las plantas toman todo lo que reciben. Si las hojas palidecen, fertilice un poco más.",
  "containers.step.salt-right":
    "El drenaje marcó {ec} el {day}; lo que se da tiene a lo más {feed}. No se junta sal. Lave cuando el drenaje esté más de {margin} por encima de lo que se da.",
  "containers.step.ph-sour":
    "El pH del drenaje fue {ph} el {day}, por debajo de {low}: el hierro y el manganeso pueden envenenar las hojas. Deje cualquier ácido, tome un fertilizante con menos amonio, y lea de nuevo en una semana.",
  "containers.step.ph-alkaline":
    "El pH del drenaje fue {ph} el {day}, por encima de {high}: falta hierro y palidecen las hojas jóvenes. Haga analizar la alcalinidad del agua, y tome un fertilizante cuya etiqueta diga que acidifica.",
  "containers.step.ph-alkaline-water":
    "El pH del drenaje fue {ph} el {day}, por encima de {high}: falta hierro y palidecen las hojas jóvenes. El agua trae la cal (abajo): tome un fertilizante cuya etiqueta diga que acidifica, o pregunte si hay que inyectar ácido.",
  "containers.step.ph-right": "El pH del drenaje fue {ph} el {day}, entre {low} y {high}: está bien.",
  "containers.step.ph-rises": "Subió {change} en cuatro semanas. Léalo cada semana.",
  "containers.step.ph-falls": "Bajó {change} en cuatro semanas. Léalo cada semana.",
  "containers.step.alkalinity":
    "La alcalinidad del agua, {alkalinity} como CaCO3, no pasa de los {most} deseables. Lleva {load} de cal a la semana a cada maceta.",
  "containers.step.alkalinity-high":
    "La alcalinidad del agua, {alkalinity} como CaCO3, pasa de los {most} deseables: cada semana lleva {load} de cal a cada maceta, y el pH sube poco a poco. {above} meq/L están por encima. Cuánto y de qué ácido hace falta, lo dice el laboratorio o el proveedor; mezclar agua de lluvia también la baja.",
  "containers.step.feed":
    "Fertilice con {target} de nitrógeno en cada riego: {week} de nitrógeno a la semana por maceta. No se conoce el nitrato del agua misma y no se resta.",
  "containers.step.feed-less-water":
    "Fertilice con {target} de nitrógeno en total en cada riego. El agua trae {water}, así que añada {add}: {week} de nitrógeno a la semana por maceta.",
  "containers.step.feed-none":
    "El agua sola trae {water} de nitrógeno, no menos que los {target} que se quieren. No añada nada.",
  "containers.step.meter":
    "El medidor debe marcar de {low} a {high} en lo que se da, con lo propio del agua limpia incluido. La cifra de la etiqueta va primero.",
  "containers.step.meter-above":
    "El medidor debe marcar de {low} a {high} más en lo que se da que en agua limpia. Mida el agua limpia y réstela; la cifra de la etiqueta va primero.",
  "containers.step.why-120":
    "Más es desperdicio: en un ensayo los pimientos con 175 ppm no dieron más para vender que con 120, tomaron 10 % más de agua y drenaron 250 % más de nitrato.",
  "containers.step.lean":
    "Más ligero por etapa: {ppm} mientras {stage}. Ahorra fertilizante; en ese ensayo el curso ligero (60, 90, 120 ppm) dio frutos más chicos y menos peso que 175.",
  "containers.stage.vegetative": "no ha cuajado ningún fruto",
  "containers.stage.early-fruit": "crece el primer fruto",
  "containers.stage.late-fruit": "se cosecha fruto",
  "containers.step.product":
    "De {what} son {inCan} en {can} de agua, {week} a la semana por maceta. Trae además {potash} de K2O.",
  "containers.step.injector":
    "Por el inyector a 1:{ratio} (1 parte en {ratio} partes de lo que se da ya mezclado): {grams} de {what} en {tank} de solución madre. Un tanque dura cerca de {days}.",
  "containers.step.too-strong":
    "A 1:{set} serían {strength} en {litre} de solución madre; una etiqueta publicada llega a {most}. Haga la solución madre más débil y ponga el inyector a 1:{ratio}.",
  "containers.step.does-not-dissolve":
    "A 1:{set} serían {strength} en {litre} de solución madre; a {tank} no se disuelven más de {most} de {what}. Haga la solución madre más débil y ponga el inyector a 1:{ratio}.",
  "containers.step.stock-too-cold":
    "No hay publicada ninguna solubilidad de {what} para un tanque tan frío como {tank}. Mantenga la solución madre a {coldest} o más, o fertilice a mano.",
  "containers.step.stock-cannot-dissolve":
    "{what} no se disuelve a {tank} en tanta agua como lleva lo que se da. Escoja otro material.",
  "containers.step.choose":
    "Varios materiales de la bodega podrían alimentar estas plantas. Escoja uno en el plan de fertilización, y aquí se dicen sus gramos.",
  "containers.step.no-material":
    "En la bodega no hay ningún material con nitrógeno que se disuelva y se pueda usar aquí. Fertilice según la etiqueta de uno que lo haga.",
  "containers.step.unfit": "Lo escogido ({what}) no se usa para macetas: {why}.",
  "containers.why.another-chosen": "se escogió otro",
  "containers.why.not-certified": "no se permite en este suelo",
  "containers.why.proof-expired": "venció la prueba de su uso certificado",
  "containers.why.no-proof": "nada dice hasta cuándo está probado su uso certificado",
  "containers.why.not-soluble": "no se disuelve",
  "containers.why.raw-manure": "el estiércol crudo nunca va en un cultivo en pie",
  "containers.why.liming-material": "encala la mezcla",
  "containers.why.no-food": "no alimenta nada de lo que se pide",
  "containers.why.no-nitrogen": "no tiene nitrógeno",
  "containers.why.soil-ph": "acidifica la mezcla",
  "containers.why.ash-with-ammonium": "la ceniza y el amonio no van juntos",
  "containers.step.slow":
    "En lugar de eso, no además: fertilizante de liberación controlada (14-14-14) mezclado, cerca de {spoons} cucharadas de EE. UU. ({granules}) por maceta, y después agua limpia. Dos páginas de jardinería coinciden; la dosis de la propia etiqueta va primero.",
  "containers.step.potting-test":
    "El análisis de mezcla del {day} no se lee aquí: no se hallaron publicados rangos para su extracción que valgan para pimientos. Lea en su lugar el drenaje.",
  "containers.step.soil-test":
    "El análisis de suelo del {day} es de terreno y no de esta mezcla. No dice nada de estas macetas.",
  "containers.step.size":
    "Cada planta tiene {own} para sus raíces. El único tamaño publicado que se leyó, {eggplant} para una berenjena, no es más.",
  "containers.step.size-small":
    "Cada planta tiene {own} para sus raíces; el único tamaño publicado que se leyó, para berenjena, es {eggplant}. Una maceta más chica sirve, pero se seca antes y se calienta más rápido.",
  "containers.ends": "Termina con otro pronóstico, una lectura del drenaje, o un cambio de etapa.",
  "containers.stakes.flush": "La sal quema raíces, y el fruto se pudre en la punta.",
  "containers.stakes.correct-ph": "Las hojas palidecen o se queman poco a poco mientras el pH está mal.",
  "containers.stakes.steady": "Nada urge; las macetas se riegan al secarse.",
  "containers.limit.ground":
    "La sed de las plantas se calcula para el suelo que ocupa la cama, cubierto todo con el tiempo. Macetas separadas, con viento o junto a una pared caliente, difieren: levántelas.",
  "containers.limit.mix":
    "Lo que puede dar una mezcla de maceta es práctica común, no una medición. Pese una maceta regada y una marchita para conocer la suya.",
  "containers.limit.mineral-soil":
    "El suelo de jardín en macetas drena mal y queda mojado abajo. Riegue menos y mire más.",
  "containers.limit.recent": "No hay pronóstico a la mano: se toma que sigue el tiempo de los últimos días.",
  "containers.limit.cover-seen":
    "Aquí la cubierta de las plantas se toma como se vio. El consejo para una válvula de estas macetas va solo por etapa y puede diferir.",
  "containers.limit.under-plastic":
    "Bajo un túnel o en un invernadero el sol, el calor y la humedad son los del aire libre. Ahí las plantas suelen usar menos de lo dicho, con calor a veces más.",
  "containers.limit.rockwool":
    "El ensayo de nitrógeno fue con un pimiento dulce en lana de roca en un invernadero de Florida. Una mezcla con composta alimenta por sí misma.",
  "containers.limit.thresholds":
    "Cuándo lavar y cuánto debe drenar es práctica común; no se halló ningún umbral publicado.",
  "containers.limit.nitrogen-only":
    "Aquí solo se dosifica el nitrógeno. La potasa, el calcio, el magnesio y los micronutrientes deben estar también en el fertilizante: una mezcla casi no los tiene.",
  "containers.change.drain": "El drenaje: su conductividad, su pH y cuánto de un riego escurre.",
  "containers.change.water": "Un análisis de agua: conductividad, alcalinidad, nitrato.",
  "containers.change.weigh":
    "La capacidad de campo y el punto de marchitez de la propia mezcla, pesando una maceta regada y una marchita.",
  "containers.change.cover": "La parte del suelo que cubren las plantas, vista desde arriba.",
  "containers.change.forecast": "Un pronóstico de los próximos días.",
  "containers.change.label": "La tabla de conductividad de la propia etiqueta del fertilizante.",
  "containers.missing.weather": "Un pronóstico con máximas y mínimas, o las de los últimos días.",
  "containers.missing.weather-moves":
    "Una planta grande toma aquí {low} en un día en que el pasto usa {cool}, y {high} en uno en que usa {hot}.",
  "containers.missing.texture": "La textura del suelo de jardín en las macetas, al tacto.",
  "containers.missing.texture-moves":
    "Del suelo que menos guarda al que más guarda, una maceta da de {low} a {high} antes de que las plantas se frenen.",
  "containers.chart.ahead": "Agua que usará una maceta, según el pronóstico",
  "containers.chart.recent": "Agua que una maceta habría usado en los últimos días",
  "containers.chart.day": "día",
  "containers.chart.litres": "agua de una maceta",
  "containers.chart.use": "usada en el día",
  "containers.chart.ready": "lo que da una llenada antes de que las plantas se frenen",
  "containers.chart.drain-title": "Sal en el drenaje",
  "containers.chart.ec": "conductividad",
  "containers.chart.drain": "en el drenaje",
  "containers.chart.feed": "en lo que se da, a lo más",
  "containers.chart.flush": "lave por encima de esto",
};
