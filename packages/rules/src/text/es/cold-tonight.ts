/** What cold-tonight says, in Spanish. */
export const coldTonight: Record<string, string> = {
  "cold-tonight.not.ended": "Esta plantación terminó.",
  "cold-tonight.not.unsown": "Estas semillas todavía no se siembran.",
  "cold-tonight.not.harmless":
    "Esta noche no hace daño: unos {minimum} junto a las plantas, y para {phase} una noche puede bajar a {floor}.",
  "cold-tonight.phase.indoors": "plantas criadas bajo techo",
  "cold-tonight.phase.hardening": "plántulas que se endurecen afuera",
  "cold-tonight.phase.young": "plantas recién trasplantadas",
  "cold-tonight.phase.established": "plantas establecidas",
  "cold-tonight.phase.flowering": "plantas en flor",
  "cold-tonight.phase.fruit": "plantas con fruto maduro",
  "cold-tonight.phase.overwintered": "plantas guardadas durante el invierno",
  "cold-tonight.decision.frost-tonight":
    "Helada esta noche: unos {minimum} junto a las plantas cerca del amanecer, a las {sunrise}. Cúbralas antes de las {time}.",
  "cold-tonight.decision.cover-tonight":
    "Cubra esta noche: unos {minimum} junto a las plantas cerca del amanecer, a las {sunrise}, por debajo de {floor} para {phase}. Termine antes de las {time}.",
  "cold-tonight.decision.cover-tonight-may-freeze":
    "Cubra esta noche: unos {minimum} junto a las plantas cerca del amanecer, a las {sunrise}, y puede helar. Termine antes de las {time}.",
  "cold-tonight.decision.bring-in":
    "Meta lo que está afuera antes de las {time}: unos {minimum} al aire libre esta noche, y para {phase} se quieren {floor}.",
  "cold-tonight.decision.heat-tonight":
    "Mantenga el calor esta noche: unos {minimum} donde están, al amanecer, por debajo de {floor} para {phase}. Ocúpese antes de las {time}.",
  "cold-tonight.step.cover":
    "Tenga las plantas cubiertas antes de las {time}, dentro de {ahead}: antes de la puesta del sol una cubierta todavía guarda el calor del suelo. Sujete los bordes todo alrededor.",
  "cold-tonight.step.cover-now":
    "Cubra las plantas ahora, con los bordes sujetos todo alrededor: cada hora destapadas cuesta calor.",
  "cold-tonight.step.close":
    "Cierre lo que está sobre ellas antes de las {time}, dentro de {ahead}: puertas, extremos y bordes, antes de que se ponga el sol.",
  "cold-tonight.step.close-now": "Cierre ahora lo que está sobre ellas: puertas, extremos y bordes.",
  "cold-tonight.step.holds-floor":
    "Basta: {cover}. Dejaría unos {inside}, contra los {floor} que se quieren.",
  "cold-tonight.step.holds-frost":
    "Evita la helada y nada más: {cover}. Dejaría unos {inside}, contra los {floor} que se quieren.",
  "cold-tonight.step.holds-nothing": "No basta: {cover}. Dejaría unos {inside}.",
  "cold-tonight.step.nothing-heavier":
    "Ninguna cifra publicada dice qué daría algo más encima de esto. Una segunda capa no daña; solo un termómetro lo dice.",
  "cold-tonight.step.none-enough":
    "Ninguna cubierta de la que tenemos cifras evita esta helada. Meta lo que se pueda mover, coseche lo que se pueda usar y cubra el resto de todos modos: el daño rara vez es parejo.",
  "cold-tonight.step.pots":
    "Meta las macetas, o júntelas contra una pared de la casa: las raíces en macetas se hielan primero.",
  "cold-tonight.step.pick":
    "Coseche los frutos maduros y los de tamaño completo antes de las {time}: el fruto helado se pierde, el enfriado se conserva mal.",
  "cold-tonight.step.uncover":
    "Mañana abra o quite la cubierta antes de las {time}, cuando el aire libre llegue a {mark}, y más temprano si le da el sol.",
  "cold-tonight.step.uncover-sun":
    "Mañana abra la cubierta en cuanto le dé el sol, y ciérrela otra vez si el día sigue frío.",
  "cold-tonight.step.look": "Al amanecer lea la temperatura más baja junto a las plantas y anótela.",
  "cold-tonight.step.look-frost":
    "Al amanecer lea la temperatura más baja junto a las plantas y anótela. Deje en paz las plantas heladas hasta que se descongelen.",
  "cold-tonight.step.bring-in":
    "Meta las bandejas antes de las {time}, dentro de {ahead}. Lo que no se pueda cargar va bajo una cubierta contra una pared de la casa.",
  "cold-tonight.step.bring-in-now": "Meta las bandejas ahora.",
  "cold-tonight.step.bring-out":
    "Sáquelas de nuevo cuando el aire libre esté por encima de {floor}, y no con viento frío.",
  "cold-tonight.step.heat":
    "Antes de las {time}, dentro de {ahead}, ponga el calor para que las plantas tengan {floor}: {lift} más de lo que dejaría la noche.",
  "cold-tonight.step.heat-now":
    "Ponga el calor ahora para que las plantas tengan {floor}: {lift} más de lo que dejaría la noche.",
  "cold-tonight.step.layer": "Ponga una segunda capa sobre la mesa, lejos de calefactores y lámparas.",
  "cold-tonight.step.alarm":
    "Ponga un termómetro con alarma entre las plantas y ajústelo un poco por debajo de {floor}.",
  "cold-tonight.cover.light-fleece": "una manta térmica ligera",
  "cold-tonight.cover.heavy-fleece": "una manta térmica más gruesa",
  "cold-tonight.cover.fleece-and-plastic": "una manta térmica con plástico encima",
  "cold-tonight.way.forecast": "el pronóstico llevado a las plantas",
  "cold-tonight.way.measured-lift": "el pronóstico y las lecturas de noches pasadas",
  "cold-tonight.way.own-clear-nights": "las noches despejadas y en calma de este mismo lugar",
  "cold-tonight.way.calm-cooling": "el cielo y el punto de rocío de una noche en calma",
  "cold-tonight.way.corrected": "el pronóstico, corregido con una lectura de ahora",
  "cold-tonight.way.read-tonight": "una lectura de esta noche",
  "cold-tonight.way.same-heat": "lo que el calor mantuvo en noches pasadas",
  "cold-tonight.case.covered": "Si se cubrieron con el último aviso:",
  "cold-tonight.case.covered-decision":
    "deje la cubierta puesta, vea que los bordes aguanten y abra en la mañana.",
  "cold-tonight.case.open": "Si están destapadas:",
  "cold-tonight.case.open-decision": "cúbralas antes de las {time}.",
  "cold-tonight.ends": "Termina con el amanecer, o con un pronóstico nuevo que diga otra cosa.",
  "cold-tonight.stakes.frost":
    "El pimiento muere entre {frost} y {killed}; lo que está muerto en la mañana sigue muerto.",
  "cold-tonight.stakes.may-freeze":
    "La helada cabe dentro de lo que el sitio deja abierto, y mata lo que alcanza.",
  "cold-tonight.stakes.chill":
    "Una noche demasiado fría frena a las plantas jóvenes y tira flores; no mata ninguna.",
  "cold-tonight.stakes.slow": "Las noches frescas atrasan a las plantas jóvenes y no matan ninguna.",
  "cold-tonight.missing.forecast":
    "Un pronóstico para esta noche. No ha llegado ninguno, y eso ya es una alarma: vea si su fuente todavía responde.",
  "cold-tonight.missing.stale":
    "Un pronóstico nuevo: este tiene {age}, y para esta noche puede tener {fresh}. Que no haya llegado otro ya es una alarma: vea si su fuente todavía responde.",
  "cold-tonight.missing.night":
    "Lo más bajo de esta noche: el pronóstico no tiene ni sus horas ni la mínima de mañana.",
  "cold-tonight.missing.inside":
    "Temperaturas donde están estas plantas, durante al menos una noche: el tiempo de afuera no dice nada de un lugar con calefacción.",
  "cold-tonight.missing.move":
    "Sin eso nadie sabe si hay que cubrir esta noche. Hasta tenerlo, cubra o meta todo siempre que la tarde esté despejada, en calma y fresca.",
  "cold-tonight.limit.no-chance":
    "No se da ninguna probabilidad. No se sabe cuánto falla aquí este pronóstico hasta que se evalúe su archivo, y una suposición parecería saber.",
  "cold-tonight.limit.ways":
    "Las maneras de calcularlo difieren: {coldest} según {way}, {warmest} según {other}. Se usa la más fría.",
  "cold-tonight.limit.heat":
    "Adentro, esta noche se juzga por lo que el calor mantuvo en la más fría de las noches leídas. Un calefactor que falla no está contado.",
  "cold-tonight.limit.site":
    "Lo que este lugar difiere de su estación deja abiertos {plusMinus} hacia cada lado en cuatro de cada cinco noches, según {nights, plural, one {# noche comparada} other {# noches comparadas}}. El error del propio pronóstico se suma.",
  "cold-tonight.limit.site-unknown":
    "No se compararon noches de aquí con las de la estación, así que este lugar puede estar {plusMinus} más tibio o más frío. El error del propio pronóstico se suma.",
  "cold-tonight.limit.sky-unknown":
    "El pronóstico no da nubes ni viento para la noche. Si se despeja y se calma, hará más frío que esto, y las hojas estarán más frías que el aire a su lado.",
  "cold-tonight.limit.cover":
    "Las cubiertas se calculan con una sola cifra publicada cada una. En una noche con viento o muy despejada guardan menos.",
  "cold-tonight.limit.course":
    "Las horas se calcularon a partir de lo más alto y lo más bajo del día; el curso real es otro.",
  "cold-tonight.limit.no-course": "No se conocen las horas antes del amanecer; solo lo más bajo.",
  "cold-tonight.limit.no-readings":
    "Nadie mide ahora junto a las plantas; todo esto descansa en el pronóstico.",
  "cold-tonight.limit.floor-indoors": "El piso de noche bajo techo es práctica común o de la propia oficina.",
  "cold-tonight.limit.floor-hardening":
    "El piso para plántulas afuera es práctica común o de la propia oficina.",
  "cold-tonight.limit.floor-young":
    "El daño por debajo de esto es un valor de libro para una exposición larga, que no se volvió a leer para este consejo; una noche hace menos.",
  "cold-tonight.limit.floor-established":
    "El piso para plantas establecidas en una sola noche es solo práctica común.",
  "cold-tonight.limit.floor-flowering":
    "El piso para las flores viene de semanas de noches así en dos variedades. Un estudio antiguo halló más cuajado de {low} a {high}, sin semilla.",
  "cold-tonight.limit.floor-fruit":
    "El piso para el fruto es un límite de almacenamiento, llevado al fruto en la planta por falta de otro.",
  "cold-tonight.limit.floor-overwintered":
    "El piso para plantas guardadas durante el invierno es solo práctica común.",
  "cold-tonight.change.fresh":
    "Un pronóstico más nuevo, y el cielo al anochecer: las nubes o el viento hacen la noche más suave.",
  "cold-tonight.change.measure": "Un termómetro junto a las plantas, leído después de la puesta del sol.",
  "cold-tonight.change.hours": "Un pronóstico por hora, con nubes, viento y punto de rocío.",
  "cold-tonight.change.pairs": "Unas semanas de mínimas de aquí al lado de las de la estación.",
  "cold-tonight.chart.title": "Esta noche, hora por hora",
  "cold-tonight.chart.hour": "Hora, según el reloj del sitio",
  "cold-tonight.chart.temperature": "Temperatura",
  "cold-tonight.chart.plants": "Junto a las plantas",
  "cold-tonight.chart.open": "Al aire libre, pronosticada",
  "cold-tonight.chart.floor": "Piso",
  "cold-tonight.chart.freezing": "Congelación",
};
