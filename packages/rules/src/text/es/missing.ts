/** What missing says, in Spanish. */
export const missing: Record<string, string> = {
  "missing.settles": "Sin eso no se puede decir nada.",
  "missing.worth":
    "Saberlo quitaría cerca de {narrows} de la incertidumbre sobre {amount}.{decides, select, yes { En {changes} de los sorteos basta otro valor de esto para que la decisión sea otra.} other {}}",
  "missing.worth-decides":
    "En {changes} de los sorteos basta otro valor de esto para que la decisión sea otra; casi no mueve {amount}.",
  "missing.amount.set-out-day": "el primer día en que estas plantas pueden estar ahí sin protección",
  "missing.amount.next-stage": "el día probable de la siguiente etapa",
  "missing.amount.minutes": "los minutos de riego",
  "missing.amount.net-mm": "la lámina de agua que se debe dar",
  "missing.amount.next-watering": "el día del próximo riego",
  "missing.amount.season-n": "el nitrógeno que falta dar esta temporada",
  "missing.amount.season-k2o": "la potasa que falta dar esta temporada",
  "missing.amount.lime": "la cal que se debe dar",
  "missing.measure.paired-nights": "La temperatura más baja de cada noche donde estarán las plantas",
  "missing.how.paired-nights":
    "Cuelgue un termómetro de mínima a la altura de las plantas, tapado del cielo, y anótelo cada mañana por dos semanas. Incluya noches despejadas y quietas.",
  "missing.known.paired-nights":
    "Nadie comparó este sitio con su estación: sus noches pueden ser de {low} a {high} más tibias o más frías.",
  "missing.measure.more-paired-nights": "Más noches junto a las plantas al lado de las de la estación",
  "missing.how.more-paired-nights":
    "Siga anotando la mínima de la noche a la altura de las plantas. Las noches despejadas y quietas dicen más.",
  "missing.known.more-paired-nights":
    "Las noches del sitio difieren de las de su estación de {low} a {high}.",
  "missing.measure.soil-temperature": "La temperatura del suelo a 10 cm",
  "missing.how.soil-temperature":
    "Meta un termómetro de varilla a 10 cm en la cama cerca de las 8 de la mañana, tres mañanas.",
  "missing.known.soil-temperature": "Calculada del aire: de {low} a {high} esta mañana.",
  "missing.measure.leaves": "Cuántas hojas verdaderas tienen las plántulas",
  "missing.how.leaves": "Cuente en diez plantas, y anote la del medio. Las hojas de semilla no cuentan.",
  "missing.known.leaves": "Nadie contó hoy: por el calor hasta ahora, de {low} a {high}.",
  "missing.measure.stage-seen": "Si esto ya llegó: {stage}, y desde cuándo",
  "missing.how.stage-seen": "Mire diez plantas. Anote el día en que la mitad lo tiene.",
  "missing.known.stage-seen": "Por calor y días ya debería haber llegado; nadie lo anotó.",
  "missing.measure.base-temperature": "La temperatura por encima de la cual crece esta variedad",
  "missing.how.base-temperature":
    "Pregunte a quien vende la semilla. O anote cada año el trasplante y la primera cosecha: sus propias temporadas toman entonces su lugar.",
  "missing.known.base-temperature":
    "No se conoce de esta variedad: publicada para pimientos de {low} a {high}.",
  "missing.measure.growing-temperature": "Qué tan tibio está donde siguen creciendo las plántulas",
  "missing.how.growing-temperature":
    "Cuelgue un termómetro de mínima y máxima entre las plántulas, lea las dos por una semana, y saque el promedio.",
  "missing.known.growing-temperature": "Nadie midió: se toma de {low} a {high}.",
  "missing.measure.medium-temperature": "Qué tan tibia está la mezcla de la semilla",
  "missing.how.medium-temperature":
    "Meta un termómetro de varilla en una bandeja a la profundidad de la semilla, mañana y tarde por dos días. O anote el día en que asoman las plántulas.",
  "missing.known.medium-temperature": "Nadie midió: se toma de {low} a {high}.",
  "missing.measure.hardened": "Si las plántulas están endurecidas",
  "missing.how.hardened":
    "Anótelo cuando hayan estado afuera de día una semana, con menos agua, y lo hayan aguantado.",
  "missing.known.hardened": "Nadie lo anotó: las dos cosas se toman como probables.",
  "missing.measure.forecast": "Un pronóstico de la semana que viene",
  "missing.how.forecast": "Active el tiempo para este sitio, o escriba un pronóstico de hoy.",
  "missing.known.forecast":
    "Aquí no hay ninguno: la semana puede ser como la de cualquier año, de {low} a {high}.",
  "missing.measure.valve-flow": "Lo que la válvula da de verdad en una hora",
  "missing.how.valve-flow":
    "Lea un medidor de agua antes y después de diez minutos, o recoja diez goteros un minuto cada uno, saque el promedio y multiplique por cuántos hay.",
  "missing.known.valve-flow": "Se toma de {low} a {high}: nada dice cuándo se midió la última vez.",
  "missing.measure.valve-efficiency": "Qué tan parejo riega la válvula",
  "missing.how.valve-efficiency":
    "Ponga al menos 16 vasos iguales a lo largo de las líneas, cerca y lejos. Divida el promedio de la cuarta parte más vacía entre el promedio de todos.",
  "missing.known.valve-efficiency": "Se toma de {low} a {high} del agua que llega a las raíces.",
  "missing.measure.wetted-share": "La parte del suelo que mojan los goteros",
  "missing.how.wetted-share":
    "Unas horas después de regar, cave a través de la hilera y mida qué ancho está mojado el suelo a 15 cm de hondo. Divida entre la distancia entre centros de camas.",
  "missing.known.wetted-share": "Se toma de {low} a {high} de una tabla para goteo.",
  "missing.measure.rain-gauge": "La lluvia en este campo",
  "missing.how.rain-gauge":
    "Ponga un pluviómetro en lo abierto, lejos de árboles, y léalo después de cada lluvia.",
  "missing.known.rain-gauge": "La lluvia del propio campo puede ser de {low} a {high} de la de la estación.",
  "missing.measure.soil-water": "Cuánta agua guarda el suelo de la cama {bed}",
  "missing.how.soil-water":
    "Haga medir en un laboratorio la capacidad de campo y el punto de marchitez en muestras sin alterar. Un sensor entre las raíces dice mucho de eso por menos.",
  "missing.known.soil-water": "Se conoce solo por su textura: de {low} a {high} de su volumen.",
  "missing.measure.root-depth": "Qué tan hondo van las raíces en la cama {bed}",
  "missing.how.root-depth":
    "Cave junto a una planta a una mano del tallo, y mida hasta donde termina la mayoría de las raíces finas.",
  "missing.known.root-depth": "Calculado de los días desde el trasplante: de {low} a {high}.",
  "missing.measure.potassium-first": "El potasio del suelo",
  "missing.how.potassium-first":
    "Tome 15 muestras de la cama, mézclelas, y mande medio litro a un laboratorio de suelos. Pregunte qué extractante usa.",
  "missing.known.potassium-first": "Nadie lo analizó: cualquier cosa de {low} a {high}.",
  "missing.measure.potassium-again": "El potasio del suelo, con una muestra nueva",
  "missing.how.potassium-again":
    "Tome 15 muestras de la cama, mézclelas, y mande medio litro al mismo laboratorio.",
  "missing.known.potassium-again": "Una muestra nueva marcaría probablemente de {low} a {high}.",
  "missing.measure.soil-nitrogen": "Qué nitrógeno da el propio suelo",
  "missing.how.soil-nitrogen":
    "Deje dos metros de una hilera sin nitrógeno, marcados. Compare su crecimiento y el nitrato de su savia con el resto.",
  "missing.known.soil-nitrogen": "Calculado de su materia orgánica: de {low} a {high} en la temporada.",
  "missing.measure.organic-matter": "La materia orgánica del suelo",
  "missing.how.organic-matter": "Pídala con el próximo análisis de suelo.",
  "missing.known.organic-matter":
    "Nadie la analizó: puede dar de {low} a {high} de nitrógeno esta temporada.",
  "missing.measure.soil-nitrate": "El nitrato en el suelo",
  "missing.how.soil-nitrate":
    "Tome 15 muestras hasta 30 cm, mézclelas, y use tiras de prueba en un extracto el mismo día, o mándelas frías a un laboratorio.",
  "missing.known.soil-nitrate": "Nadie lo analizó: de {low} a {high} en los primeros 30 cm.",
  "missing.measure.water-nitrate": "El nitrato en el agua de riego",
  "missing.how.water-nitrate":
    "Meta una tira de prueba de nitrato en un vaso limpio de ella, o pídalo con el próximo análisis de agua.",
  "missing.known.water-nitrate": "Nadie lo analizó: de {low} a {high}.",
  "missing.measure.bulk-density": "Qué tan pesado es el suelo",
  "missing.how.bulk-density":
    "Presione una lata de volumen conocido en el suelo húmedo, seque en un horno lo que contiene, y péselo.",
  "missing.known.bulk-density": "Se toma como el de la capa de arriba de un suelo común.",
  "missing.measure.soil-ph": "El pH del suelo, con una muestra nueva",
  "missing.how.soil-ph":
    "Tome 15 muestras tan hondo como se labra, mézclelas, y mande medio litro al mismo laboratorio.",
  "missing.known.soil-ph": "Una muestra nueva marcaría probablemente de {low} a {high}.",
  "missing.measure.buffer-ph": "El pH de la solución tampón, con una muestra nueva",
  "missing.how.buffer-ph":
    "Mande una muestra mezclada nueva al mismo laboratorio y pida la misma solución tampón.",
  "missing.known.buffer-ph": "Una muestra nueva marcaría probablemente de {low} a {high}.",
  "missing.measure.acidity": "La acidez intercambiable, con una muestra nueva",
  "missing.how.acidity": "Mande una muestra mezclada nueva al mismo laboratorio.",
  "missing.known.acidity": "Una muestra nueva marcaría probablemente de {low} a {high} de la última.",
  "missing.measure.worked-depth": "Qué tan hondo se trabaja de verdad esta cama",
  "missing.how.worked-depth":
    "Después de labrar, meta una regla dura hasta el suelo firme en diez lugares, y saque el promedio.",
  "missing.known.worked-depth": "Tomado de la profundidad de la muestra: de {low} a {high}.",
  "missing.measure.lime-quality": "Lo que vale la cal",
  "missing.how.lime-quality":
    "Lea el valor neutralizante y la finura en la etiqueta, o pida a quien la vende la hoja del laboratorio.",
  "missing.known.lime-quality": "Nadie leyó su etiqueta: de {low} a {high} de la pura.",
};
