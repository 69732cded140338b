/** What season-record says, in Spanish. */
export const seasonRecord: Record<string, string> = {
  "season-record.missing.no-certifier": "La cama está certificada o en transición, y nadie anotó por quién.",
  "season-record.missing.no-soil-test": "Ningún análisis de suelo de esta cama en {season}.",
  "season-record.missing.no-water-test": "Ningún análisis del agua en {season}.",
  "season-record.missing.no-nitrate":
    "No se midió el nitrato del agua para cada riego: falta en el balance el nitrógeno que trajo.",
  "season-record.missing.no-lot": "Se dio {material} sin lote.",
  "season-record.missing.no-labour": "Nadie anotó cuánto tomó dar {material}.",
  "season-record.missing.use-unknown":
    "Se dio {material} en suelo certificado, y no está anotado si ahí se puede usar.",
  "season-record.missing.use-prohibited": "Se dio {material} en suelo certificado, donde está prohibido.",
  "season-record.missing.use-restricted":
    "Se dio {material} en suelo certificado, donde está restringido: tenga a la mano las condiciones del certificador.",
  "season-record.missing.no-proof":
    "{material} está permitido en suelo certificado, y su prueba no está anotada.",
  "season-record.missing.proof-ended": "La prueba de {material} terminó el {until}, antes de darlo.",
  "season-record.missing.compost-unknown":
    "No está anotado si {material} se compostó según la norma: cuenta como crudo.",
  "season-record.missing.no-registration": "Se aplicó {product} sin anotar su número de registro.",
  "season-record.missing.no-amount": "No se sabe cuánta agua dio {valve}.",
  "season-record.missing.no-harvest-lot": "Se cosechó {planting} sin lote.",
  "season-record.missing.no-marketable":
    "No está anotado cuánto de lo cosechado de {planting} se podía vender.",
  "season-record.missing.no-hours": "Nadie anotó cuánto tomó cosechar {planting}.",
  "season-record.missing.more-than-picked":
    "Lo vendible y el descarte de {planting} son más de lo cosechado.",
  "season-record.missing.not-set-out": "Se cosechó {planting}, y no está anotado el día del trasplante.",
  "season-record.missing.interval-not-kept":
    "Se cosechó antes de que pasara el plazo: {what} del {given} permite cosechar desde el {from}.",
  "season-record.missing.unanswered":
    "No se sabe si se hizo, porque nadie contestó el consejo para {subject}: {decision}",
  "season-record.missing.no-records":
    "Algo hubo en esta cama, y no está anotado nada de lo que se le hizo en {season}.",
  "season-record.note.rates":
    "Las dosis son por hectárea de suelo cultivado, con los pasillos. Lo que cayó en más suelo que la cama cuenta con la parte de la cama.",
  "season-record.note.water":
    "El agua es lo que dijo un medidor, si no los minutos por el caudal de la válvula, repartida entre las camas de la válvula según su suelo cultivado como está hoy.",
  "season-record.note.removal":
    "Lo que salió con el fruto se calcula de los contenidos publicados del fruto de pimiento dulce (UC, con 50,000 lb por acre); los otros tipos se toman como parecidos. Lo que se lavó, escurrió o se fue al aire no está en el balance.",
  "season-record.note.culls":
    "Todo lo cosechado cuenta como salido del campo. El descarte que quedó en la cama no se llevó nada.",
  "season-record.note.labour":
    "Las horas son las anotadas. Donde faltan algunas la suma es lo mínimo, y al lado dice cuántas faltan.",
  "season-record.note.people": "El nombre es de quien lo anotó.",
  "season-record.note.trace":
    "Lo que cayó en una cama cuenta para todo lo que se cosechó de ella después, para cualquiera de las plantaciones.",
};
