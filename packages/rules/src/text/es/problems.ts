/**
 * What is refused, and why, in Spanish: by the English text that the rules and the service say it in. A place in braces
 * stands for what the English holds there.
 */
export const problems: Record<string, string> = {
  // Any field.
  "must be {a} or more": "debe ser {a} o más",
  "must be at least {a}": "debe ser al menos {a}",
  "must be at most {a}": "debe ser {a} o menos",
  "must be more than {a}": "debe ser más de {a}",
  "must be less than {a}": "debe ser menos de {a}",
  "must be {a} to {b}": "debe ser de {a} a {b}",
  "must be between {a} and {b}": "debe estar entre {a} y {b}",
  "must be between {a} and {b} for this method": "debe estar entre {a} y {b} para este método",
  "must be above 0": "debe ser más de 0",
  "must be above 0 and at most 1": "debe ser más de 0 y no más de 1",
  "must be above {a}": "debe ser más de {a}",
  "must be a number": "debe ser un número",
  "must be a whole number": "debe ser un número entero",
  "must be {a}": "debe ser {a}",
  "must be one of {a}": "debe ser uno de {a}",
  "must be a calendar day": "debe ser un día del calendario",
  "must be an instant": "debe ser un momento con su hora",
  "must be a day of the years 1800 to 2200": "debe ser un día de los años 1800 a 2200",
  "must be an instant of the years 1800 to 2200": "debe ser un momento de los años 1800 a 2200",
  "must be an IANA time zone, e.g. America/Chicago": "debe ser una zona horaria IANA, p. ej. America/Chicago",
  "must be an address that begins with http:// or https://":
    "debe ser una dirección que empiece con http:// o https://",
  "is missing": "falta",
  "is not a field here": "no es un campo de aquí",
  "is missing: it {a}": "falta: {a}",
  "{a} is missing: it {b}.": "Falta {a}: {b}.",
  "stands twice": "está dos veces",
  "is there twice": "está dos veces",
  "is listed twice for the same day": "está dos veces para el mismo día",
  "lies in the future": "está en el futuro",
  "lies long before the advice": "está mucho antes del consejo",
  "is a day to come": "es un día que no ha llegado",
  "is after the day the advice is for": "es después del día del consejo",
  "is after the time the advice is for": "es después de la hora del consejo",
  "is older than a day": "tiene más de un día",
  "is missing: how many, and how large": "falta: cuántas, y de qué tamaño",
  "is missing: what was given": "falta: qué se dio",
  "is missing: how much was given": "falta: cuánto se dio",
  "is missing: on how much ground it was given": "falta: en cuánto terreno se dio",
  "must be given where litres are not": "hace falta donde no se dan litros",
  "must be given where nothing else was measured": "hace falta donde no se midió otra cosa",
  "must be given for what is counted or measured": "hace falta para lo que se cuenta o se mide",
  "minutes or litres must be given": "hay que dar minutos o litros",
  "either a value or why it is missing must be given": "hay que dar un valor o por qué falta",
  "must be empty beside a value": "debe quedar vacío junto a un valor",
  "belongs to an answer that says done": "va solo con una respuesta que dice hecho",

  // One field against another.
  "must not be below tMinC": "no debe ser menor que la mínima",
  "must not be below tMinC ({a})": "no debe ser menor que la mínima ({a})",
  "must not be above tMaxC ({a})": "no debe ser mayor que la máxima ({a})",
  "must lie between tMinC and tMaxC ({a})": "debe estar entre la mínima y la máxima ({a})",
  "must not be below rhMinPct ({a})": "no debe ser menor que la humedad mínima ({a})",
  "must not be above rhMaxPct ({a})": "no debe ser mayor que la humedad máxima ({a})",
  "must be below fieldCapacity": "debe ser menor que la capacidad de campo",
  "must be below fieldCapacity ({a})": "debe ser menor que la capacidad de campo ({a})",
  "must be a share of volume, 0 to 1 m3/m3, for water-content":
    "debe ser una parte del volumen, de 0 a 1 m3/m3, para el agua en el suelo",
  "must not be below nKgPerHaLow": "no debe ser menor que el nitrógeno bajo",
  "must not be before sownOn": "no debe ser antes de la siembra",
  "must not be before deficit.from": "no debe ser antes del primer día",
  "must not be before its first day": "no debe ser antes de su primer día",
  "must not be before heatedFrom": "no debe ser antes de que empiece la calefacción",
  "must not be before from": "no debe ser antes del primer día",
  "must not be before the trial began": "no debe ser antes de que empezara el ensayo",
  "is before the trial began": "es antes de que empezara el ensayo",
  "No column is the sampling date. Name it `sampled on`.":
    "Ninguna columna es la fecha del muestreo. Nómbrela `sampled on`.",
  "No column is the bed, and no bed was chosen for the whole file (bedId).":
    "Ninguna columna es la cama, y no se escogió ninguna para todo el archivo (bedId).",
  "No column is the sampling depth, and none was given for the whole file (depthCm).":
    "Ninguna columna es la profundidad del muestreo, y no se dio ninguna para todo el archivo (depthCm).",
  "No column is a result (pH, salts or a nutrient).":
    "Ninguna columna es un resultado (pH, sales o un nutriente).",
  '"{a}" is a limit, not a number; leave the cell empty or give the number':
    "«{a}» es un límite y no un número; deje la celda vacía o dé el número",
  '"{a}" is not a number': "«{a}» no es un número",
  '"{a}" does not begin at the surface': "«{a}» no empieza en la superficie",
  '"{a}" is not a day written as {b}': "«{a}» no es un día escrito como {b}",
  '"{a}" is not a day': "«{a}» no es un día",
  '"{a}" says neither that it fizzes nor that it does not':
    "«{a}» no dice ni que hace efervescencia ni que no",
  'There is no bed "{a}" on this farm; its beds are {b}':
    "En esta finca no hay cama «{a}»; sus camas son {b}",
  'There is no bed "{a}" on this farm; its beds are {b} and {0} more':
    "En esta finca no hay cama «{a}»; sus camas son {b} y {0} más",
  "{a} stands on line {0} already": "{a} ya está en la línea {0}",
  'More than one bed of this farm is called "{a}"': "Más de una cama de esta finca se llama «{a}»",
  "The row has no result": "La fila no tiene ningún resultado",
  "The day has no values": "El día no tiene ningún valor",
  "This sample is stored already with other values: {a}":
    "Esta muestra ya está guardada con otros valores: {a}",
  "extractant must be one of {a}": "el extractante debe ser uno de {a}",
  "What was sampled must be mineral soil, its texture or empty; organic soil, muck or peat soil; or a potting, container, soilless, peat, bark or coir mix or medium":
    "Lo que se muestreó debe ser suelo mineral, su textura o quedar vacío; suelo orgánico o de turba; o una mezcla o sustrato de maceta, sin suelo, de turba, corteza o fibra de coco",
  "{a} is in {b}, and the row states no depth": "{a} está en {b}, y la fila no dice la profundidad",
  "{a} is a share of exchange capacity, and the row states no exchange capacity":
    "{a} es una parte de la capacidad de intercambio, y la fila no la dice",
  "Two columns are read as {a}; leave one out.": "Dos columnas se leen como {a}; deje una fuera.",
  "No column is a date. Name it `date`.": "Ninguna columna es una fecha. Nómbrela `date`.",
  "No column besides the date is one of a day's weather.":
    "Aparte de la fecha, ninguna columna es del tiempo de un día.",
  "must not be more than kg": "no debe ser más que todo lo cosechado",
  "must not be above passing20Pct": "no debe ser más que lo que pasa la malla 20",
  "must not be above passing60Pct": "no debe ser más que lo que pasa la malla 60",
  "must not exceed the total nitrogen": "no debe ser más que el nitrógeno total",
  "must not be shorter than expectedEveryS": "no debe ser más corto que lo que se espera entre lecturas",
  "must be a valve of the site named": "debe ser una válvula del sitio nombrado",
  "is missing where no planting is named": "hace falta donde no se nombra una plantación",
  "is no reading of this choice": "no es una lectura de esta elección",
  "must be set for organic soil: the target held here is of mineral soil":
    "hay que fijarlo para suelo orgánico: la meta que hay aquí es de suelo mineral",
  "leaves less water than the least a deficit on purpose may leave here ({a})":
    "deja menos agua que lo mínimo que se permite aquí ({a})",
  "one valve can hold one deficit: share and first day must be the same":
    "una válvula lleva un solo déficit: la parte y el primer día deben ser iguales",
  "this planting shares the valve with one that is to be stressed, and nobody wants it stressed: {a}":
    "esta plantación comparte la válvula con una que va a pasar sed, y nadie quiere que esta la pase: {a}",
  "this type has no pungency to gain and shares the valve with one that has: {a}":
    "este tipo no tiene picor que ganar y comparte la válvula con uno que sí: {a}",

  // Temperatures and forecasts.
  "daily maxima are far above anything this site has: is this Fahrenheit?":
    "las máximas están muy por encima de lo que hay en este sitio: ¿son Fahrenheit?",
  "the thirty warmest days of the year average more than any place has: is this Fahrenheit?":
    "los treinta días más cálidos promedian más que en cualquier lugar: ¿son Fahrenheit?",
  "the soil is hotter than soil at 10 cm gets: is this Fahrenheit?":
    "el suelo está más caliente de lo que llega a estar a 10 cm: ¿son Fahrenheit?",
  "the readings at the plants are hotter than plants survive: is this Fahrenheit?":
    "las lecturas junto a las plantas son más calientes de lo que aguantan: ¿son Fahrenheit?",
  "every hour of the forecast is hotter than any place stays: is this Fahrenheit?":
    "cada hora del pronóstico es más caliente de lo que se mantiene en cualquier lugar: ¿son Fahrenheit?",
  "the forecast is older than a day: its source has stopped, which is itself an alarm":
    "el pronóstico tiene más de un día: su fuente se detuvo, y eso ya es una alarma",
  "the forecast is older than a day: fetch a fresh one or leave it out":
    "el pronóstico tiene más de un día: traiga uno nuevo o déjelo fuera",
  "the forecast was issued after the moment this advice is for":
    "el pronóstico es posterior al momento de este consejo",
  "the course of a day is only reconstructed where the sun sets each day of the year":
    "el curso de un día solo se reconstruye donde el sol se pone cada día del año",
  "is where some days have no sunset": "está donde algunos días no se pone el sol",
  "makes the house 0.3 m low or 12 m high on its floor":
    "deja la casa con 0.3 m de alto o 12 m sobre su piso",

  // Shed, guides, evidence.
  "names a material that is not in the shed": "nombra un material que no está en la bodega",
  "is not in the shed": "no está en la bodega",
  "is not a guide held here": "no es una guía que haya aquí",
  "is not a guide held here or by the office": "no es una guía que haya aquí ni en la oficina",
  "is not read by {a}": "{a} no lo lee",
  "{a} of a {b} test is read in {c}": "{a} de un análisis de {b} se lee en {c}",
  "is no unit of a {a} test": "no es una unidad de un análisis de {a}",
  "no published bound is held for this extraction": "no hay límite publicado para esta extracción",
  "names no rule": "no nombra ninguna regla",

  // Trials.
  "are more than this design compares": "son más de los que compara este diseño",
  "are too few for a factorial": "son muy pocos para un factorial",
  "must be two in paired strips": "deben ser dos en franjas pareadas",
  "must be two: a pair of strips compares two things": "deben ser dos: un par de franjas compara dos cosas",
  "must name one level of each factor": "debe nombrar un nivel de cada factor",
  "is no level of its factor": "no es un nivel de su factor",
  "is needed in this design": "hace falta en este diseño",
  "stands twice: a block holds each treatment once":
    "está dos veces: un bloque lleva cada tratamiento una sola vez",
  "has {a} plots: without repeats chance cannot be judged":
    "tiene {a} parcelas: sin repeticiones no se puede juzgar el azar",
  "gives the same plot a second value": "da a la misma parcela un segundo valor",
  "cannot be for {a}": "no puede ser para {a}",
  "make more than {a} plots": "dan más de {a} parcelas",
  "of {a} plots do not fit on these beds": "de {a} parcelas no caben en estas camas",
  "does not leave room for 2 blocks of {a} plots": "no deja lugar para 2 bloques de {a} parcelas",
  "is too small beside a cv of {a} %: more than {b} blocks":
    "es muy pequeña junto a una variación de {a} %: más de {b} bloques",
  "names no plot of this trial": "no nombra ninguna parcela de este ensayo",
  "names nothing measured here": "no nombra nada que se mida aquí",
  "do not yet let any response be judged": "todavía no dejan juzgar ninguna respuesta",

  // Bed plan and maps.
  "would move plants that stand": "movería plantas que ya están en su lugar",
  "no bed of this plan": "no es una cama de este plano",
  "no block of this plan": "no es un bloque de este plano",
  "not JSON": "no es JSON",
  "encloses no ground": "no encierra terreno",
  "no length of a bed": "no es el largo de una cama",
  "must end where it begins": "debe terminar donde empieza",
  "must be longitude -180 to 180, then latitude -90 to 90, in degrees":
    "debe ser longitud de -180 a 180, luego latitud de -90 a 90, en grados",

  // Records.
  "lies in the pre-harvest interval of what was sprayed on this bed":
    "cae en el plazo antes de la cosecha de lo que se aplicó en esta cama",
  "lies in the re-entry interval of what was sprayed on this bed":
    "cae en el plazo de reentrada de lo que se aplicó en esta cama",
  "holds too large a picture": "trae una foto demasiado grande",
  "is no {a} picture": "no es una foto {a}",

  // Sensors.
  "does not measure {a}": "no mide {a}",
  "a sensor of {a} stands in a bed": "un sensor de {a} va en una cama",
  "a sensor of {a} lies at a depth": "un sensor de {a} va a una profundidad",
  "a sensor above ground stands under a cover of a bed, or in the open for the whole site":
    "un sensor sobre el suelo va bajo la cubierta de una cama, o al aire libre para todo el sitio",
  "is not the site of that bed": "no es el sitio de esa cama",
  "never stood over that bed": "nunca estuvo sobre esa cama",

  // Sending, orders, webhooks, choices.
  "is not offered: no text messages are sent from here": "no se ofrece: de aquí no salen mensajes de texto",
  "must be given for text messages": "hace falta para los mensajes de texto",
  "must end at another time than it begins, or be left out":
    "debe terminar a otra hora que la que empieza, o quedar vacío",
  "must not begin and end at the same hour": "no debe empezar y terminar a la misma hora",
  "must lie within a season from today": "debe caer dentro de una temporada desde hoy",
  "is of choices that an agent makes by hand": "es de decisiones que un asesor toma a mano",
  "hold nothing that is not so already": "no traen nada que no sea ya así",
  "cannot be tried now: {a}": "no se puede probar ahora: {a}",
  "must not be before today": "no debe ser antes de hoy",
  "must be the person's name as it stands in the office":
    "debe ser el nombre de la persona como está en la oficina",

  // Files.
  "must be at most 5 MB of text; only a station's weather may be larger":
    "debe ser de 5 MB de texto o menos; solo el clima de una estación puede ser mayor",
  "has {a} days": "tiene {a} días",
  "The file still has open questions; answer them and read it again.":
    "El archivo todavía tiene preguntas abiertas; contéstelas y léalo otra vez.",
  "No row of the file can be stored.": "No se puede guardar ninguna fila del archivo.",
  "This import was {a} already.": "Esta importación ya terminó ({a}).",
  "A forecast has at most {a} days.": "Un pronóstico tiene {a} días o menos.",
  "With what is stored already, the maximum of {a} would be below its minimum; give both in one file.":
    "Con lo que ya está guardado, la máxima de {a} quedaría debajo de su mínima; dé las dos en un archivo.",
  "Since the file was read, line {a} was stored by another import. {b}. Read the file again.":
    "Después de leer el archivo, otra importación guardó la línea {a}. {b}. Lea el archivo otra vez.",

  // Whole requests.
  "Nothing here under that address.": "No hay nada en esa dirección.",
  "There is no such {a}.": "No existe.",
  "There is nothing at this address.": "No hay nada en esta dirección.",
  "You may read here and change nothing.": "Aquí puede leer y no cambiar nada.",
  "This office asks for a second step at sign-in. Set yours up first.":
    "Esta oficina pide un segundo paso al entrar. Prepare primero el suyo.",
  "Only an agent of the office may do this.": "Solo un asesor de la oficina puede hacer esto.",
  "Only a lead of the office may do this.": "Solo un jefe de la oficina puede hacer esto.",
  "Somebody has changed this since you read it. Look at it again.":
    "Alguien cambió esto desde que usted lo leyó. Véalo otra vez.",
  "This advice was withdrawn; there is nothing to answer any more.":
    "Este consejo se retiró; ya no hay nada que contestar.",
  "Only advice can be issued; this draft says what is missing or to be fixed.":
    "Solo se emite un consejo; este borrador dice qué falta o qué hay que arreglar.",
  "What is known has changed since you read this; read the draft again.":
    "Lo que se sabe cambió desde que usted leyó esto; lea el borrador otra vez.",
  "The office wants a second pair of eyes on this: send it to a second agent.":
    "La oficina quiere un segundo par de ojos en esto: mándelo a otro asesor.",
  "This waits for a second agent already.": "Esto ya espera a otro asesor.",
  "Who sent it to a second agent cannot be the second agent.":
    "Quien lo mandó a otro asesor no puede ser ese otro.",
  "Who asked for it is no agent of the office any more: issue it anew.":
    "Quien lo pidió ya no es asesor de la oficina: emítalo de nuevo.",
  "Say why it is sent back.": "Diga por qué se devuelve.",
  "Nobody has asked for a second agent here.": "Nadie pidió aquí otro asesor.",
  "This advice was withdrawn already.": "Este consejo ya se retiró.",
  "This advice was answered already, so it cannot be taken back.":
    "Este consejo ya se contestó, así que no se puede retirar.",
  "Later advice has taken the place of this one already.": "Un consejo posterior ya tomó el lugar de este.",
  "The plan breaks {a} rules that must hold ({b}); mend them first.":
    "El plano rompe {a} reglas que deben cumplirse ({b}); arréglelas primero.",
  "Somebody else changed this plan in the meantime; read it again before you keep yours.":
    "Otra persona cambió este plano mientras tanto; léalo otra vez antes de guardar el suyo.",
  "Nothing is pushed from here.": "De aquí no salen avisos.",
  "At most {a} browsers are told; take one away first.":
    "Se avisa a {a} navegadores como máximo; quite uno primero.",
  "Nobody erases themselves: another lead of the office does.":
    "Nadie se borra a sí mismo: lo hace otro jefe de la oficina.",
  "The name typed is not that person's.": "El nombre escrito no es el de esa persona.",
  "Evidence with the id {a} is in use; put it away first.":
    "La evidencia con el nombre {a} está en uso; retírela primero.",
  "An office keeps at most {a} sources of its own in use.":
    "Una oficina tiene {a} fuentes propias en uso como máximo.",
  "A guide with the id {a} is in use; put it away first.":
    "La guía con el nombre {a} está en uso; retírela primero.",
  "An office keeps at most {a} guides in use.": "Una oficina tiene {a} guías en uso como máximo.",
  "This office is not empty: it has rows in {a}.": "Esta oficina no está vacía: tiene datos en {a}.",
  "The export cannot be taken in: {a}.": "La copia no se puede traer: {a}.",
  "This farm is of this office already.": "Esta finca ya es de esta oficina.",
  "This farm was taken in already.": "Esta finca ya se trajo.",
  "An export of this office is being written. Wait for it to end.":
    "Se está escribiendo una copia de esta oficina. Espere a que termine.",
  "{a} exports are being written. Try again in a minute.":
    "Se están escribiendo {a} copias. Intente otra vez en un minuto.",
  "Only what failed for good can be done again.": "Solo lo que falló del todo se puede repetir.",
  "This server has no key to sign with.": "Este servidor no tiene clave para firmar.",
  "This server has no key to sign with (LEDGER_SIGNING_KEY).":
    "Este servidor no tiene clave para firmar (LEDGER_SIGNING_KEY).",
  "The ledger is broken {a}. It is not signed.": "El libro está roto {a}. No se firma.",
  "The checkpoint {a} does not hold: {b}.": "El sello {a} no se sostiene: {b}.",
  "Nothing was issued yet: there is nothing to sign.": "Todavía no se emitió nada: no hay nada que firmar.",
  "A lead of the office has asked this address in already.":
    "Un jefe de la oficina ya invitó a esta dirección.",
  "This is the office's only lead. Make somebody else a lead first.":
    "Es el único jefe de la oficina. Nombre primero a otro.",
  "{a} is written down for {b} already.": "Ya está anotado {a} para {b}.",
  "A sign keeps at most {a} photographs.": "Una señal guarda {a} fotos como máximo.",
  "Only who took this photograph, or an agent, may take it back.":
    "Solo quien tomó esta foto, o un asesor, puede quitarla.",
  "Only who wrote this {a}, or an agent, may take it back.":
    "Solo quien lo escribió, o un asesor, puede quitarlo.",
  "This {a} came with the answer to an advice; answer that advice again to correct it.":
    "Esto llegó con la respuesta a un consejo; conteste otra vez ese consejo para corregirlo.",
  "A reading of that kind, depth and time is stored for this bed already.":
    "Ya hay una lectura de ese tipo, hondura y hora para esta cama.",
  "This key was revoked already.": "Esta clave ya se anuló.",
  'The farm has a series "{a}" already.': "La finca ya tiene una serie «{a}».",
  "Other terms were signed since you read this; read the order again.":
    "Se firmaron otros términos desde que usted leyó esto; lea la orden otra vez.",
  "Who signed an order cannot be the second to sign it.":
    "Quien firmó una orden no puede ser el segundo en firmarla.",
  "This order has its second yes already.": "Esta orden ya tiene su segundo sí.",
  "This order has ended.": "Esta orden terminó.",
  "An order for this rule stands on this farm already.": "En esta finca ya hay una orden para esta regla.",
  "This order was revoked: sign a new one.": "Esta orden se anuló: firme una nueva.",
  "A trial that has begun is not laid out again.": "Un ensayo que ya empezó no se traza de nuevo.",
  "This trial has numbers; end it instead, and they stay.":
    "Este ensayo ya tiene números; mejor ciérrelo, y se quedan.",
  "This site is not switched on to a forecast service.":
    "Este sitio no está conectado a un servicio de pronóstico.",
  "At most {a} addresses are told; take one away first.":
    "Se avisa a {a} direcciones como máximo; quite una primero.",
  "This address is turned off; turn it on first.": "Esta dirección está apagada; enciéndala primero.",
  "{a} tests of this address wait already.": "Ya esperan {a} pruebas de esta dirección.",
  "This installation has no key to seal secrets with.":
    "Esta instalación no tiene clave para sellar secretos.",
  "The same choice was issued already and still stands.": "La misma decisión ya se emitió y sigue vigente.",

  // What a schema finds.
  "must be at least {a} characters": "debe tener al menos {a} letras",
  "must be at most {a} characters": "debe tener {a} letras o menos",
  "must be at least {a} entries": "debe tener al menos {a} entradas",
  "must be at most {a} entries": "debe tener {a} entradas o menos",
  "is missing ({a})": "falta",
  "must be a number with the country's code, e.g. +12185550100":
    "debe ser un número con el código del país, p. ej. +12185550100",
  "must be a {a}": "debe ser de tipo {a}",

  // The name of each kind of refusal.
  "The request could not be read": "No se pudo leer lo pedido",
  "Nobody is signed in": "Nadie ha entrado",
  "Not allowed": "No está permitido",
  "Not here": "No está aquí",
  "Not in that form": "No en esa forma",
  "Changed in the meantime": "Cambió mientras tanto",
  "Being done just now": "Se está haciendo ahora mismo",
  "Done, but the answer is lost": "Se hizo, pero se perdió la respuesta",
  "Not what you read": "Ya no es lo que leyó",
  "Too large": "Demasiado grande",
  "Not JSON": "No es JSON",
  "A field is outside what is accepted": "Un campo está fuera de lo que se acepta",
  "This key came with another request": "Esta clave llegó con otra petición",
  "Too many requests": "Demasiadas peticiones",
  "Something broke on our side": "Algo falló de nuestro lado",
};
