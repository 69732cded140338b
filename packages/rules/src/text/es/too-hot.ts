/** What too-hot says, in Spanish. */
export const tooHot: Record<string, string> = {
  "too-hot.not.ended": "Esta plantación se quitó.",
  "too-hot.not.indoors": "Estas plantas todavía no están en la cama.",
  "too-hot.not.no-flowers":
    "Todavía no hay botones, flores ni fruto en estas plantas que el calor pueda llevarse.",
  "too-hot.not.cool":
    "No hizo demasiado calor ni se pronostica: a lo más {maxDay} de día y {maxNight} de noche. Cualquier hora por encima de {day} de día, o media noche por encima de {night}, lo sería.",
  "too-hot.not.cool-so-far":
    "No hizo demasiado calor: a lo más {maxDay} de día y {maxNight} de noche. Cualquier hora por encima de {day} de día, o media noche por encima de {night}, lo sería. Ningún pronóstico dice lo que viene.",
  "too-hot.decision.end-rot":
    "Pudrición apical en el fruto: mantenga el agua pareja. Rara vez se cura con un frasco.",
  "too-hot.decision.sunscald":
    "El sol quemó fruto: dé sombra a lo que cuelga descubierto, y conserve cada hoja.",
  "too-hot.decision.flowers-heat":
    "El calor pudo tirar estas flores: {hours} de día por encima de {limit}, o noches casi todas por encima de {nightLimit}. Cuajan nuevas cuando refresca.",
  "too-hot.decision.flowers-warm":
    "Se caen flores aunque ningún día pasó de {limit}: calor para algunos, no para otros. No culpe solo al calor.",
  "too-hot.decision.flowers-cold":
    "Se caen flores después de noches frías y no después de calor: aquí no ha hecho demasiado calor.",
  "too-hot.decision.flowers-other":
    "Se caen flores, y ninguna temperatura conocida aquí lo explica. Busque primero otras causas.",
  "too-hot.decision.hot-ahead":
    "Viene calor, desde el {day}, hasta {max}: dé sombra, ventile y riegue antes de que llegue.",
  "too-hot.decision.wilting":
    "La marchitez al amanecer no es calor: las raíces están secas, ahogadas o enfermas. Cave hoy junto a una planta.",
  "too-hot.decision.hot-past":
    "Hizo demasiado calor para las flores: {hours} de día por encima de {limit} en dos semanas, o noches casi todas por encima de {nightLimit}. Ahora no se pronostica ninguno.",
  "too-hot.step.past":
    "Ya pasaron: {hours} de día por encima de {limit} ({degreeHours}), {nightHours} de noche por encima de {nightLimit} ({nightDegreeHours}).",
  "too-hot.step.ahead":
    "Por venir: {hours} de día por encima de {limit} ({degreeHours}), {nightHours} de noche por encima de {nightLimit} ({nightDegreeHours}), hasta {max}.",
  "too-hot.step.morning":
    "Riegue temprano en la mañana antes del primer día de calor, tan hondo como dice el plan de riego, y no más porque haga calor.",
  "too-hot.step.shade":
    "Ponga malla de sombra ligera (cerca de 30 %) sobre el fruto descubierto desde el fin de la mañana hasta el fin de la tarde, sin tocar las hojas. Quítela cuando pase el calor.",
  "too-hot.step.leaves": "No corte ni ate nada que descubra el fruto. Las hojas son su sombra.",
  "too-hot.step.pick-early":
    "Coseche lo que esté maduro o de buen tamaño antes del calor, en el fresco de la mañana.",
  "too-hot.step.vent":
    "Abra la cubierta por los dos lados antes de que le dé el sol y déjela abierta; cuelgue adentro un termómetro a la sombra.",
  "too-hot.step.scald-pick":
    "Coseche el fruto quemado: no se compone y se pudre. Lo que esté firme se puede usar enseguida.",
  "too-hot.step.dawn-wilt":
    "Cave junto a una planta que cuelga al amanecer: el suelo seco pide agua; con suelo mojado, raíces cafés o base del tallo oscura, mire de cerca antes de cualquier riego.",
  "too-hot.step.count":
    "Cuente flores abiertas y fruto joven en diez plantas ahora y dentro de una semana: eso dice del cuajado más que un termómetro.",
  "too-hot.step.water-unknown": "Anote cada riego: aquí no se sabe si llegó parejo.",
  "too-hot.step.water-even":
    "Siga regando igual: la pausa más larga fue de {gap}, y las cantidades fueron parecidas.",
  "too-hot.step.water-gap":
    "Riegue parejo: la pausa más larga fue de {gap}, y aquí {allowed} es parejo. Cantidades más chicas, más seguido; nunca empape después de una sequía.",
  "too-hot.step.water-swing":
    "Riegue parejo: el riego más grande fue {times} veces el más chico. Dé más o menos lo mismo cada vez.",
  "too-hot.step.rot-pick": "Quite el fruto con pudrición apical: no se compone y le cuesta agua a la planta.",
  "too-hot.step.hold-feed":
    "No dé amonio ni más potasa de la que pide el plan de fertilización: los dos mantienen el calcio fuera del fruto.",
  "too-hot.step.calcium-short":
    "El análisis de suelo marca poco calcio ({ca}): ocúpese de la cal o el yeso antes de la próxima plantación. Al fruto de este año le ayuda primero el agua.",
  "too-hot.step.calcium-enough":
    "El suelo tiene suficiente calcio ({ca}): no llega al fruto cuando el agua viene dispareja. No culpe al suelo.",
  "too-hot.step.calcium-unread":
    "No se puede leer el calcio del suelo ({ca}): ninguna guía que se tenga aquí corresponde a cómo se extrajo.",
  "too-hot.step.calcium-untested":
    "No se conoce el calcio del suelo. Analícelo una vez, después de la temporada; casi toda la pudrición apical viene del agua.",
  "too-hot.step.sprays":
    "Aplicaciones de calcio: un ensayo de campo halló menos pudrición apical con ellas, la práctica les ve poco. Pruébelas a lo más en media cama, según la etiqueta, nunca en el calor del día.",
  "too-hot.step.flowers-wait":
    "Deje en paz las plantas: nada de fertilizante extra, ninguna punta quitada. Las flores que cayeron ya no están, y en semanas abren nuevas.",
  "too-hot.step.cold-nights":
    "No culpe solo al calor: de estas noches, {nights} estuvieron casi todo el tiempo en {limit} o menos ({hours} tan frías en total), y ahí también sufre el polen.",
  "too-hot.step.flowers-unknown":
    "Díganos las mínimas y máximas del sitio: sin ellas nadie sabe si fue calor o frío.",
  "too-hot.ends": "Termina con un pronóstico nuevo, días más frescos, o una nota nueva sobre flores o fruto.",
  "too-hot.stakes.ahead":
    "Están en juego el fruto que se quema y las flores que cuajarían en los días de calor.",
  "too-hot.stakes.fruit": "Lo que se pudrió o quemó ya no está; está en juego el fruto joven de al lado.",
  "too-hot.stakes.past": "Lo que cayó, cayó. Mirar y contar no pierde nada.",
  "too-hot.missing.inside":
    "Temperaturas donde están las plantas, de un termómetro a la sombra bajo la cubierta: nada de afuera dice cuánto calor hace ahí.",
  "too-hot.missing.outside":
    "Mínimas y máximas diarias del sitio de las últimas dos semanas, y un pronóstico.",
  "too-hot.missing.move": "La respuesta podría pasar de nada que hacer a dar sombra, ventilar y regar antes.",
  "too-hot.limit.sources":
    "Las fuentes no coinciden en qué es demasiado calor, de día desde {dayLow} a {dayHigh}, de noche desde {nightLow} a {nightHigh}; el cálculo muestra cada una. Las variedades difieren más.",
  "too-hot.limit.dose":
    "Ninguna fuente dice cuántas horas por encima de un límite cuestan cuántas flores. Las horas se cuentan, la pérdida no.",
  "too-hot.limit.cover":
    "El aire bajo la cubierta no se midió. En su lugar está el aire libre: adentro hizo al menos ese calor.",
  "too-hot.limit.blind": "No se conoce ninguna temperatura: esto descansa solo en lo que se vio.",
  "too-hot.limit.air":
    "Esta es la temperatura del aire en la estación. El fruto al sol está mucho más caliente, las flores bajo las hojas un poco más frescas.",
  "too-hot.limit.no-vpd": "Aquí no se conoce la humedad del aire, así que no se dice qué tan seco está.",
  "too-hot.limit.vpd":
    "Qué tan seco estuvo el aire se muestra y no decide nada: no se halló publicado ningún límite para pimientos.",
  "too-hot.change.measure": "Un termómetro junto a las plantas, a la sombra, leído por hora.",
  "too-hot.change.count":
    "Cuentas de flores y fruto cuajado antes y después del calor, en las mismas plantas.",
  "too-hot.change.water": "Qué se regó, y cuándo.",
  "too-hot.chart.title": "Calor junto a las plantas, hora por hora",
  "too-hot.chart.hour": "Hora, según el reloj del sitio",
  "too-hot.chart.temperature": "Temperatura",
  "too-hot.chart.measured": "Medida junto a las plantas",
  "too-hot.chart.reconstructed": "Calculada de los extremos del día",
  "too-hot.chart.forecast": "Pronóstico",
  "too-hot.chart.day-limit": "Límite de día",
  "too-hot.chart.night-limit": "Límite de noche",
  "too-hot.chart.vpd-title": "Qué tan seco está el aire, hora por hora",
  "too-hot.chart.vpd": "Déficit de presión de vapor",
};
