/** What set-out says, in Spanish. */
export const setOut: Record<string, string> = {
  "set-out.not.ended": "Esta plantación terminó.",
  "set-out.not.already-out": "Estas plantas ya están en la cama.",
  "set-out.not.unsown": "Estas semillas todavía no se siembran.",
  "set-out.not.too-far": "El día previsto está a más de 90 días. Pregunte de nuevo más cerca.",
  "set-out.decision.go": "Trasplántelas el {day}.",
  "set-out.decision.protect": "El {day} solo con {protection}; sin eso espere hasta el {open}.",
  "set-out.decision.protect-only":
    "El {day} solo con {protection}; sin eso ninguna fecha de los próximos 90 días está dentro del riesgo aceptado.",
  "set-out.decision.go-kept-out":
    "Por el frío podrían salir el {day}, pero no a esta cama: la rotación no admite pimientos en ella hasta {from}.",
  "set-out.decision.protect-kept-out":
    "Por el frío podrían salir el {day} con {protection}, sin eso desde el {open}, pero no a esta cama: la rotación no admite pimientos en ella hasta {from}.",
  "set-out.decision.protect-only-kept-out":
    "Por el frío podrían salir el {day} con {protection}, sin eso en ninguna fecha de los próximos 90 días, pero no a esta cama: la rotación no admite pimientos en ella hasta {from}.",
  "set-out.decision.wait": "Espere. La fecha más temprana dentro del riesgo aceptado es el {day}.",
  "set-out.decision.none": "Espere. Ninguna fecha de los próximos {days} está dentro del riesgo aceptado.",
  "set-out.protection.heavy-fleece": "una manta térmica gruesa",
  "set-out.protection.fleece-and-plastic": "una manta térmica con plástico en arcos encima",
  "set-out.ends.colder": "Termina con un pronóstico de helada, o de varias noches más frías de lo usual.",
  "set-out.ends.none": "Nada se abre antes de que pasen los 90 días; pregunte de nuevo cada semana.",
  "set-out.stakes.delay": "Cada día de espera cuesta un día de temporada, y ninguna planta.",
  "set-out.stakes.cold":
    "Salir sin cubierta el día previsto: {beyond} de probabilidad de más frío del que estas plantas deben pasar, {frost} de probabilidad de helada.",
  "set-out.stakes.cold-standing":
    "Salir el día previsto bajo la cubierta que ya está puesta: {beyond} de probabilidad de más frío del que estas plantas deben pasar, {frost} de probabilidad de helada.",
  "set-out.step.kept-out":
    "El consejo de rotación no admite pimientos en esta cama hasta {from}: aquí hubo {crop} en {last}. Dé a estas plantas una cama que haya descansado. Lo que se dice aquí trata solo del frío.",
  "set-out.step.keep-warm": "Mantenga las plantas adentro; al menos {c} de noche.",
  "set-out.step.harden":
    "Endurézcalas primero: {days} de aire más fresco y seco y algo de viento, afuera de día y adentro de noche. Estarán listas el {day}.",
  "set-out.step.leaves":
    "Tienen {leaves, plural, one {# hoja verdadera} other {# hojas verdaderas}}; espere a {ready}. Las plantas chicas aguantan menos frío.",
  "set-out.step.warm-soil":
    "El suelo a 10 cm (4 pulgadas) se calcula en {c} para el {day} y debe estar en {floor} o más. Un plástico negro o transparente puesto dos semanas antes lo calienta.",
  "set-out.step.soil-thermometer":
    "Meta un termómetro a 10 cm (4 pulgadas) en la cama a la hora del desayuno tres mañanas. Plante cuando el promedio sea {c} o más.",
  "set-out.step.earlier-with": "Con {protection} podrían salir desde el {day}.",
  "set-out.step.ask-again":
    "Mire de nuevo cuando el pronóstico sea nuevo: unos días cálidos pueden abrir una fecha antes.",
  "set-out.step.put-up":
    "Ponga {protection} el mismo día; guarda la noche unos {c} más tibia que el aire de afuera.",
  "set-out.step.evening": "Plante al final del día o con nubes, y riegue cada planta al ponerla.",
  "set-out.step.vent":
    "Destape o ventile cuando el aire adentro llegue a {c}; en un día de sol eso suele ser antes de las nueve. Cierre de nuevo antes de la puesta del sol.",
  "set-out.step.uncover":
    "Quite la cubierta del todo a más tardar el {day}, o cuando abra la primera flor, lo que llegue primero.",
  "set-out.step.uncover-flowers": "Quite la cubierta del todo cuando abra la primera flor.",
  "set-out.step.chance":
    "Trasplantadas el {day} {cover}, las plantas habrían pasado más de {nights, plural, one {# noche} other {# noches}} o {degreeHours} por debajo de {floor} en dos semanas en {hits} de {n} años, leído como una probabilidad de {beyond} (entre {low} y {high}). Helada: {frosts} de {n}.",
  "set-out.under.none": "sin cubierta",
  "set-out.under.standing": "bajo la cubierta que ya está puesta",
  "set-out.under.heavy-fleece": "bajo una manta térmica gruesa",
  "set-out.under.fleece-and-plastic": "bajo una manta térmica con plástico en arcos encima",
  "set-out.way.go": "salir sin cubierta",
  "set-out.way.heavy-fleece": "una manta térmica gruesa",
  "set-out.way.fleece-and-plastic": "una manta térmica con plástico en arcos encima",
  "set-out.step.wait-heat":
    "Esperar {days}, hasta el {until}, renuncia a unos {heat} de calor en la cama; adentro las plantas siguen creciendo mientras tanto.",
  "set-out.step.wait-heat-open":
    "Ninguna fecha se abre; {days} de espera, hasta el {until}, renuncian a unos {heat} de calor en la cama.",
  "set-out.step.wait-harvest":
    "Según otoños pasados, esperar quita {lost} de {days} de cosecha antes de la primera helada: {share}.",
  "set-out.step.wait-money": "Con la meta de cosecha y el precio dados, eso es cerca de {money} en dinero.",
  "set-out.step.protect-cheaper":
    "Con {way} desde el día deseado: {heat}; cerca de {money} en dinero ({materials} de material, y {hours}). Es menos de lo que cuesta esperar.",
  "set-out.step.protect-dearer":
    "Con {way} desde el día deseado: {heat}; cerca de {money} en dinero ({materials} de material, y {hours}). Esperar no cuesta más.",
  "set-out.step.protect-not-enough":
    "Salir el día deseado con {way} no está dentro del riesgo aceptado; traería {heat} y costaría cerca de {materials} en dinero de material y {hours}.",
  "set-out.step.protect-money":
    "Con {way} desde el día deseado: {heat}; cerca de {money} en dinero ({materials} de material, y {hours}).",
  "set-out.step.protect-hours":
    "Con {way} desde el día deseado: {heat}; cerca de {materials} en dinero de material, y {hours}.",
  "set-out.change.lacks-days-to-maturity":
    "Los días a madurez, como los da la lista de semillas, dirían cuántos días de cosecha quita esperar.",
  "set-out.change.lacks-autumns":
    "Los otoños de la estación tienen huecos, así que no se pueden contar los días de cosecha que quita esperar.",
  "set-out.change.lacks-yield-goal": "Falta una meta de cosecha, así que esperar no tiene precio.",
  "set-out.change.lacks-price": "Falta un precio esperado, así que esperar no tiene precio.",
  "set-out.change.lacks-labour": "La oficina no fijó un salario, así que las horas no tienen precio.",
  "set-out.change.lacks-own-hours":
    "Las horas para cubiertas son práctica común. Lo que aquí toma poner una y abrirla, una vez anotado, se cuenta en su lugar.",
  "set-out.step.fuel":
    "Lo que tomaría calentar en lugar de cubrir, lo dice el consejo de calor nocturno para el invernadero.",
  "set-out.limit.weighed":
    "Los costos de las cubiertas son práctica común, un día de espera se cuenta como un día de cosecha, y los días más cálidos bajo cubierta se dejan fuera. Decide el riesgo, no el dinero.",
  "set-out.chart.heat": "Calor que se gana por no esperar",
  "set-out.chart.wait-until": "Esperar hasta",
  "set-out.chart.heat-units": "Unidades de calor",
  "set-out.missing.years":
    "Mínimas y máximas diarias de una estación cercana de al menos {fewest} años; de esos {n, plural, =0 {no hay ninguno} one {hay # año completo} other {hay # años completos}}.",
  "set-out.missing.years-move":
    "Con {n, plural, =0 {ningún año} one {# año} other {# años}} el riesgo de cualquier fecha puede ser de hasta {high}, aunque ninguno haya sido frío; ocho lo bajarían a {enough}. La respuesta puede pasar de salir a esperar.",
  "set-out.missing.heat":
    "Temperaturas registradas en el invernadero con calefacción durante una semana, a la altura de las plantas.",
  "set-out.missing.heat-move":
    "Si el calefactor mantiene el piso pueden entrar hoy; si no, tienen las noches de afuera. Nada publicado está en medio.",
  "set-out.limit.line-is-practice":
    "El piso, las noches y los grados-hora permitidos y el riesgo aceptado son la línea de la propia oficina o práctica común. Ningún ensayo los fija.",
  "set-out.limit.few-years":
    "Solo {n} años están detrás de estas probabilidades. Menos de 20 dicen poco del frío raro, así que lea el intervalo y no el centro.",
  "set-out.limit.no-forecast":
    "No se dio ningún pronóstico: las próximas dos semanas se toman solo de años pasados.",
  "set-out.limit.blend":
    "Cuánto cuenta el pronóstico según los días que faltan es práctica común, y no se ajustó a su historial aquí.",
  "set-out.limit.no-offset":
    "Nadie comparó las noches de este sitio con las de la estación. Puede ser {c} más frío o más cálido, y el intervalo es así de más ancho.",
  "set-out.limit.cover":
    "El calor bajo una cubierta es una cifra publicada de algunas noches en otro lugar. En noches quietas, despejadas o con viento puede ser menos.",
  "set-out.limit.soil-memory":
    "El piso del suelo es la cifra usual de las guías para productores, y no se volvió a leer para este consejo.",
  "set-out.change.forecast": "Un pronóstico de no más de un día.",
  "set-out.change.offset":
    "Diez o más noches de mínimas en la cama al lado de las de la estación: hasta entonces la fecha más temprana está entre el {early} y el {late}.",
  "set-out.change.offset-open":
    "Diez o más noches de mínimas en la cama al lado de las de la estación: la fecha más temprana puede ser el {early}, o pasar de los 90 días.",
  "set-out.change.offset-none":
    "Diez o más noches de mínimas en la cama al lado de las de la estación; todavía no se abre ninguna fecha en ningún extremo del intervalo.",
  "set-out.change.soil": "Tres mañanas con un termómetro de suelo a 10 cm (4 pulgadas).",
  "set-out.change.years": "Una estación con más de {n} años de mínimas y máximas diarias.",
  "set-out.change.hardened": "Saber que las plantas están endurecidas.",
  "set-out.change.leaves": "Contar las hojas verdaderas.",
  "set-out.change.inside": "Una semana de mínimas bajo la cubierta al lado de las de afuera.",
  "set-out.case.done": "Si sí salieron el {day}",
  "set-out.case.done-decision":
    "Desde entonces pasaron las noches; lo que esas hicieron lo dice el registro de frío.",
  "set-out.case.done-step": "Anote el día en que salieron, cuente hojas y mire los puntos de crecimiento.",
  "set-out.case.not-done": "Si siguen adentro",
  "set-out.case.not-done-decision": "Vale la respuesta de hoy, arriba.",
  "set-out.chart.risk": "Probabilidad de demasiado frío, según la fecha de trasplante",
  "set-out.chart.dose": "Frío en las dos semanas después del trasplante, según la fecha",
  "set-out.chart.nights-by-date":
    "Noches por debajo del piso en las dos semanas después del trasplante, según la fecha",
  "set-out.chart.date": "Fecha de trasplante",
  "set-out.chart.chance": "Probabilidad",
  "set-out.chart.degree-hours": "Grados-hora por debajo del piso",
  "set-out.chart.low": "Extremo bajo del intervalo",
  "set-out.chart.high": "Extremo alto del intervalo",
  "set-out.chart.beyond": "Más frío de lo permitido",
  "set-out.chart.protected": "Lo mismo con la cubierta añadida",
  "set-out.chart.frost": "Helada",
  "set-out.chart.one-night": "Una noche por debajo del piso (no decide)",
  "set-out.chart.accepted": "Riesgo aceptado",
  "set-out.chart.p10": "El décimo más cálido de los años",
  "set-out.chart.p50": "Año intermedio",
  "set-out.chart.p90": "El décimo más frío de los años",
  "set-out.chart.nights": "Noches por debajo del piso",
  "set-out.chart.allowed": "Permitido",
};
