/** What cold-record says, in Spanish. */
export const coldRecord: Record<string, string> = {
  "cold-record.not.ended": "Esta plantación terminó.",
  "cold-record.not.unsown": "Estas semillas todavía no se siembran.",
  "cold-record.decision.carry-on":
    "Siga igual: {hours} por debajo de {floor} en las últimas dos semanas, no más de lo que aguantan.",
  "cold-record.decision.warmer-nights": "Mantenga las noches más tibias: bajan de {floor}.",
  "cold-record.decision.hold-back-and-look":
    "Espere y mire: {hours} por debajo de {floor} del {from} al {to} pueden haber frenado estas plantas.",
  "cold-record.decision.hold-back-and-look-frost":
    "Espere y mire: {frosts, plural, one {# día con helada} other {# días con helada}}. Lo más bajo del registro fue {minimum}.",
  "cold-record.decision.hold-back-and-look-spoiled":
    "Espere: {sign}. Si conviene empezar de nuevo depende de si hay plantas de repuesto o tiempo para sembrar, y eso todavía no se sabe.",
  "cold-record.decision.keep-what-lives":
    "Conserve lo que vive: {sign}, y ya no quedan plantas de repuesto ni tiempo para sembrar.",
  "cold-record.decision.start-again": "Empiece de nuevo: {sign}.",
  "cold-record.sign.dead": "los puntos de crecimiento están muertos",
  "cold-record.sign.no-leaf": "dos semanas de días cálidos no trajeron ninguna hoja nueva",
  "cold-record.step.carry-on": "No hay nada que hacer por el frío.",
  "cold-record.step.heat":
    "Suba la noche a {floor}: estuvo por debajo {hours} de las noches de las últimas dos semanas. Una segunda capa sobre la mesa puede bastar.",
  "cold-record.step.look":
    "Mire la punta de diez plantas del rincón más frío: ¿está el punto de crecimiento verde y firme, o café y blando? Anótelo.",
  "cold-record.step.count-spares":
    "Cuente sus plantas de repuesto y díganos, también si no hay: con plantas de repuesto puede empezar de nuevo.",
  "cold-record.step.lacks-seed-list":
    "Busque en la lista de semillas los días hasta el fruto verde y díganos: así podemos decir si hay tiempo de sembrar otra vez.",
  "cold-record.step.lacks-climatology":
    "No se puede decir si hay tiempo de sembrar otra vez: hacen falta al menos ocho años de mínimas diarias de una estación cercana.",
  "cold-record.step.frost":
    "Hubo helada. Las hojas vidriosas o negras están perdidas; las yemas laterales más abajo pueden vivir.",
  "cold-record.step.hold-back":
    "No fertilice ni despunte hasta que salgan hojas nuevas; riegue con agua que haya estado en lo tibio.",
  "cold-record.step.new-leaf":
    "El {day} se anotó una hoja nueva, y el frío desde entonces no es más de lo que aguantan: ya no hace falta esperar con el fertilizante.",
  "cold-record.step.wood":
    "Raspe la corteza cerca de la base: la madera verde volverá a brotar. No corte nada antes de que lo haga.",
  "cold-record.step.again": "Mire de nuevo el {day}: anote una hoja nueva, o ninguna.",
  "cold-record.step.keep":
    "Conserve las plantas que muestran yemas laterales verdes, y dé el lugar de las otras a algo más.",
  "cold-record.step.replace":
    "Ponga plantas de repuesto donde el punto de crecimiento está muerto; {spare, plural, one {hay # anotada} other {hay # anotadas}}.",
  "cold-record.step.sow":
    "Siembre de nuevo hoy: según los días de la lista de semillas el primer fruto llega unos {days} antes de la primera helada, en cuatro de cada cinco años.",
  "cold-record.step.leave-some":
    "Deje en pie algunas de las plantas viejas: si se recuperan, eso le enseña algo para la próxima vez.",
  "cold-record.step.record":
    "El registro entero, desde el {from}: {hours} y {degreeHours} por debajo de {floor}, el tramo más largo {spell}, lo más bajo {minimum}, {frosts, plural, =0 {ninguna helada} one {# día con helada} other {# días con helada}}. {missing, plural, =0 {No falta ninguna hora.} one {Falta # hora y no se rellenó.} other {Faltan # horas y no se rellenaron.}}",
  "cold-record.ends":
    "Termina con la próxima noche fría, o con una nota sobre los puntos de crecimiento o las hojas nuevas.",
  "cold-record.stakes.none": "No se pierde nada por seguir igual.",
  "cold-record.stakes.slow": "Las noches frescas atrasan a las plantas jóvenes y no matan ninguna.",
  "cold-record.stakes.look":
    "Las plantas frenadas por el frío pueden no recuperarse, y cada semana sin saberlo es una semana de temporada.",
  "cold-record.stakes.kept": "Lo que el frío se llevó ya no está; solo se puede conservar lo que aún vive.",
  "cold-record.stakes.grown":
    "Las plantas grandes se recuperan de casi todo el frío; una semana de cuidado salva algunas flores.",
  "cold-record.stakes.season": "Una cama de plantas sin puntos de crecimiento da poco esta temporada.",
  "cold-record.missing.indoors":
    "Temperaturas donde están las plántulas: un registrador, o un termómetro de mínima y máxima leído cada mañana.",
  "cold-record.missing.outdoors":
    "Mínimas y máximas diarias del sitio de las últimas dos semanas, o lecturas junto a las plantas.",
  "cold-record.missing.house":
    "Lecturas de adentro del invernadero con calefacción: el tiempo de afuera no dice nada de él.",
  "cold-record.missing.move":
    "Las {hours} que no se conocen podrían tener hasta {degreeHours} por debajo del piso, contra {allowed} permitidos. La respuesta podría pasar de seguir igual a esperar y mirar.",
  "cold-record.limit.practice":
    "El piso, el frío permitido y los catorce días cálidos son práctica común o de la propia oficina. Ningún ensayo los fija.",
  "cold-record.limit.reconstructed":
    "Algunas horas se calcularon a partir de lo más alto y lo más bajo del día; en noches sueltas el curso real es otro.",
  "cold-record.limit.cover":
    "El aire bajo la cubierta no se midió. En su lugar está el de afuera más una cifra publicada.",
  "cold-record.limit.gaps": "Faltan {hours} del registro. No se rellenaron, así que cada cifra es lo mínimo.",
  "cold-record.limit.established":
    "Las plantas grandes se juzgan desde un piso más bajo, un valor de libro que no se volvió a leer para este consejo.",
  "cold-record.limit.overwintered":
    "Las plantas guardadas durante el invierno descansan; el piso para ellas es solo práctica común.",
  "cold-record.change.measure": "Un termómetro junto a las plantas.",
  "cold-record.change.signs":
    "Mirar los puntos de crecimiento ahora, y las hojas nuevas después de {days} de tiempo cálido. La temperatura sola nunca dice empezar de nuevo.",
  "cold-record.change.spare": "Cuántas plantas de repuesto hay, y si hay tiempo de sembrar.",
  "cold-record.chart.title": "Temperatura junto a las plantas, hora por hora",
  "cold-record.chart.hour": "Hora, según el reloj del sitio",
  "cold-record.chart.temperature": "Temperatura",
  "cold-record.chart.measured": "Medida junto a las plantas",
  "cold-record.chart.reconstructed": "Calculada de los extremos del día",
  "cold-record.chart.floor": "Piso",
  "cold-record.chart.night-floor": "Piso de noche",
  "cold-record.chart.freezing": "Congelación",
};
