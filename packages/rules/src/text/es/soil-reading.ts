/** What soil-reading says, in Spanish. */
export const soilReading: Record<string, string> = {
  "soil-reading.decision":
    "{short, plural, =0 {Ningún nutriente sale corto} one {# nutriente sale corto} other {# nutrientes salen cortos}} de {read} leídos{refused, plural, =0 {} one {; # valor no se pudo leer} other {; # valores no se pudieron leer}}.",
  "soil-reading.decision.nothing-read":
    "{refused, plural, =0 {Ningún nutriente se pudo leer: el análisis no trae ninguno que se lea por clases} one {Ningún nutriente se pudo leer: # valor se rechazó, y los pasos dicen por qué} other {Ningún nutriente se pudo leer: # valores se rechazaron, y los pasos dicen por qué}}. Lo que el análisis dice {what} está en los pasos.",
  "soil-reading.said.ph": "del pH",
  "soil-reading.said.salts": "de las sales",
  "soil-reading.said.ph-and-salts": "del pH y de las sales",
  "soil-reading.value":
    "{nutrient}: {class}, con {content}{printed, select, yes { (el laboratorio imprimió {reported, number} {reportedUnit})} other {}} por {extractant} ({guide}: {compared, number} {unit}, en la clase {open, select, yes {de {low, number} en adelante} other {de {low, number} a {high, number}}}). {response}",
  "soil-reading.value-beside":
    "{nutrient} en {own, select, yes {la guía de su propia oficina} other {otra guía}} del mismo extractante, {guide}: {class}. {response}",
  "soil-reading.sample":
    "Muestra del {day} de {year}, a {depth} de hondo, {days, plural, =0 {hoy} one {ayer} other {hace # días}}.",
  "soil-reading.standing.memory":
    "Sin verificar: {guide} se escribió de memoria y no se leyó en su publicación. Su oficina la escogió.",
  "soil-reading.standing.secondary":
    "Sin verificar: {guide} se leyó en una copia y no en su publicación. Su oficina la escogió.",
  "soil-reading.standing.office":
    "{guide} es la guía de su propia oficina; de su fuente responde la oficina.",
  "soil-reading.shared-bound":
    "{nutrient} está en un número que {guide} imprime a la vez como el final de {class} y como el principio de {above}. Se lee como {class}.",
  "soil-reading.trend":
    "{nutrient} por {extractant} en {tests} análisis: {first}{classed, select, yes { ({class})} other {}} el {day} de {year}, ahora {now} ({nowClass}).",
  "soil-reading.trend-left-out":
    "{values, plural, one {# valor anterior no se pone} other {# valores anteriores no se ponen}} al lado de estos: otro extractante, u otra profundidad.",
  "soil-reading.ph-trend": "pH en {tests} análisis: {first} el {day} de {year}, ahora {now}.",
  "soil-reading.ph-other-medium":
    "pH {ph}. La meta para pimientos que se tiene aquí es para suelo mineral y no se le aplica a este.",
  "soil-reading.potassium-hinders":
    "El potasio sale alto y {nutrient} corto: mucho potasio impide que las plantas lo tomen. No dé potasio hasta que esté en orden.",
  "soil-reading.rate":
    "{guide} da {none, select, yes {nada de {form}} other {{range, select, yes {de {low} a {high}} other {{low}}} de {form}}} en esta clase, para {crop}. El consejo de fertilización lo pesa.",
  "soil-reading.rate-dolomitic":
    "{guide}: el magnesio está bajo y toca encalar, así que la cal debe ser dolomítica ({crop}).",
  "soil-reading.rate-magnesium":
    "{guide}: el magnesio está bajo y no toca encalar: {low} de magnesio ({crop}).",
  "soil-reading.rate-gypsum": "{guide}: el calcio está bajo y el pH no necesita cal: {low} de yeso ({crop}).",
  "soil-reading.ph.too-acid":
    "El pH {ph} es demasiado ácido para pimientos (aguantan de {least} a {most}; la meta es de {low} a {high}). Primero la cal.",
  "soil-reading.ph.acid": "El pH {ph} está por debajo de la meta de {low} a {high}.",
  "soil-reading.ph.fit": "El pH {ph} está en la meta de {low} a {high}.",
  "soil-reading.ph.high":
    "El pH {ph} está por encima de la meta de {low} a {high}. No añada cal ni ceniza de leña.",
  "soil-reading.ph.too-high":
    "El pH {ph} está por encima de los {most} que los pimientos aguantan bien. No añada cal ni ceniza de leña; vigile hierro y manganeso.",
  "soil-reading.buffer": "El pH de la solución tampón {ph} ({method}) se guarda para calcular la cal.",
  "soil-reading.salts.fine": "Sales {ec} por {extraction}: no por encima de {limit}.",
  "soil-reading.salts.high":
    "Sales {ec} por {extraction}: por encima de {limit}, donde los pimientos empiezan a perder cosecha o el laboratorio advierte.",
  "soil-reading.salts.comfort":
    "Las hortalizas en general están bien por debajo de {limit}; esa página no nombra su extracción.",
  "soil-reading.salts.no-extraction":
    "No se leyeron las sales {ec}: el informe no dice cómo se hizo el extracto. Pregunte al laboratorio.",
  "soil-reading.salts.no-bound":
    "No se leyeron las sales {ec}: no se tiene ningún límite publicado para {extraction}, y ninguno se convierte.",
  "soil-reading.cec.sum":
    "Capacidad de intercambio {cec} cmol/kg por suma: calcio {ca}, magnesio {mg}, potasio {k}.",
  "soil-reading.cec.minimum":
    "Capacidad de intercambio de al menos {cec} cmol/kg por suma, sin medir la acidez: calcio a lo más {ca}, magnesio a lo más {mg}, potasio a lo más {k}.",
  "soil-reading.cec.reported": "El laboratorio informa una capacidad de intercambio de {cec} cmol/kg.",
  "soil-reading.cec.unusual":
    "Una capacidad de intercambio de {cec} cmol/kg está {side, select, below {por debajo} other {por encima}} de los {low} a {high} usuales para esta textura. Revise la textura, o si con ella se disolvió cal del suelo.",
  "soil-reading.saturation":
    "Al lado de los rangos de un laboratorio (Massachusetts: calcio de 50 a 80 %, magnesio de 10 a 30 %, potasio de 2 a 7 % de la capacidad de intercambio) el calcio está {ca, select, below {por debajo} above {por encima} other {dentro}}, el magnesio {mg, select, below {por debajo} above {por encima} other {dentro}} y el potasio {k, select, below {por debajo} above {por encima} other {dentro}}.",
  "soil-reading.kept":
    "{nutrient} {content}: {sodium, select, yes {contado en la capacidad de intercambio donde un solo extractante dio todos los cationes} other {sin clases; la fertilización lo cuenta como nitrógeno que ya está}}.",
  "soil-reading.organic-matter":
    "Materia orgánica {share}. Da nitrógeno cuando el suelo se calienta: cuéntelo como crédito al fertilizar.",
  "soil-reading.refused.no-extractant":
    "No se leyó {nutrient} {content}: el informe no nombra el extractante, y el mismo suelo da otro número con cada uno.",
  "soil-reading.refused.no-guide":
    "No se leyó {nutrient} {content} por {extractant}: ninguna guía de aquí ni de su oficina lo cubre.",
  "soil-reading.refused.only-unverified":
    "No se leyó {nutrient} {content} por {extractant}: solo lo cubren guías sin verificar ({guides}), y esas se usan solo donde su oficina escoge una.",
  "soil-reading.refused.guide-does-not-fit":
    "No se leyó {nutrient} {content} por {extractant}: la guía que escogió su oficina es para otro extractante, y nada se convierte. {fits, plural, =0 {Ninguna otra guía de aquí lo lee.} one {Esta corresponde: {guides}.} other {Estas corresponden: {guides}.}}",
  "soil-reading.refused.needs-more": "No se leyó {nutrient} {content}: la guía {problem}.",
  "soil-reading.refused.wrong-medium": "No se leyó {nutrient} {content}: {problem}.",
  "soil-reading.response.responds": "Se puede esperar que los pimientos respondan.",
  "soil-reading.response.may-respond": "Los pimientos pueden responder.",
  "soil-reading.response.unlikely": "Es poco probable que más ayude.",
  "soil-reading.class.very-low": "muy bajo",
  "soil-reading.class.low": "bajo",
  "soil-reading.class.medium": "medio",
  "soil-reading.class.high": "alto",
  "soil-reading.class.very-high": "muy alto",
  "soil-reading.class.below-optimum": "por debajo del óptimo",
  "soil-reading.class.optimum": "óptimo",
  "soil-reading.class.above-optimum": "por encima del óptimo",
  "soil-reading.class.below-normal": "por debajo del rango normal",
  "soil-reading.class.normal": "en el rango normal",
  "soil-reading.class.above-normal": "por encima del rango normal",
  "soil-reading.class.deficient": "deficiente",
  "soil-reading.class.adequate": "adecuado",
  "soil-reading.class.warning": "tan alto como para advertir",
  "soil-reading.class.responds": "en el rango donde los cultivos responden",
  "soil-reading.class.may-respond": "en el rango donde los cultivos pueden responder",
  "soil-reading.class.unlikely-to-respond": "en el rango donde los cultivos casi no responden",
  "soil-reading.ph-band.too-acid": "demasiado ácido",
  "soil-reading.ph-band.acid": "ácido",
  "soil-reading.ph-band.fit": "en la meta",
  "soil-reading.ph-band.high": "alto",
  "soil-reading.ph-band.too-high": "demasiado alto",
  "soil-reading.range.ph": "pH",
  "soil-reading.chart.title": "{nutrient} por {extractant}, análisis por análisis",
  "soil-reading.chart.sampled": "Muestra",
  "soil-reading.chart.content": "Contenido",
  "soil-reading.chart.tests": "Análisis",
  "soil-reading.chart.responds": "Los pimientos responden hasta aquí",
  "soil-reading.nutrient.P": "Fósforo",
  "soil-reading.nutrient.K": "Potasio",
  "soil-reading.nutrient.Ca": "Calcio",
  "soil-reading.nutrient.Mg": "Magnesio",
  "soil-reading.nutrient.S": "Azufre",
  "soil-reading.nutrient.Zn": "Zinc",
  "soil-reading.nutrient.Cu": "Cobre",
  "soil-reading.nutrient.Mn": "Manganeso",
  "soil-reading.nutrient.Fe": "Hierro",
  "soil-reading.nutrient.B": "Boro",
  "soil-reading.nutrient.Na": "Sodio",
  "soil-reading.nutrient.NO3-N": "Nitrógeno de nitrato",
  "soil-reading.extractant.mehlich-1": "Mehlich-1",
  "soil-reading.extractant.mehlich-3": "Mehlich-3",
  "soil-reading.extractant.olsen": "Olsen",
  "soil-reading.extractant.bray-1": "Bray P1",
  "soil-reading.extractant.ammonium-acetate": "acetato de amonio",
  "soil-reading.extractant.modified-morgan": "Morgan modificado",
  "soil-reading.extractant.dtpa": "DTPA",
  "soil-reading.extractant.hot-water": "agua caliente",
  "soil-reading.extractant.kcl": "cloruro de potasio",
  "soil-reading.extraction.saturated-paste": "pasta saturada",
  "soil-reading.extraction.1:2": "el extracto 1:2",
  "soil-reading.ends": "Termina con un análisis más nuevo, o a los tres años.",
  "soil-reading.stakes.short":
    "Un nutriente que sale corto puede frenar el cultivo; la fertilización y la cal dicen para cuándo.",
  "soil-reading.stakes.nothing-read":
    "No se sabe si algún nutriente sale corto ni lo que costaría: de este análisis no se pudo leer ninguno.",
  "soil-reading.stakes.enough": "Nada sale corto.",
  "soil-reading.limit.guide":
    "{guide}: calibrada en {region}. En otro lugar el mismo número puede decir otra cosa.",
  "soil-reading.limit.unverified":
    "{guide}: esta guía no se leyó en su publicación y está sin verificar ({region}).",
  "soil-reading.limit.office":
    "{guide}: la guía de su propia oficina para {region}, de {source}. No se leyó aquí.",
  "soil-reading.limit.note": "{guide}: {note}",
  "soil-reading.limit.old": "La muestra del {day} de {year} tiene más de tres años.",
  "soil-reading.limit.depth": "La muestra se tomó a {depth} de hondo; las guías son para 15 a 20 cm.",
  "soil-reading.change.new-test": "Un análisis nuevo.",
  "soil-reading.change.extractant": "El extractante de cada valor que no se leyó: el laboratorio lo sabe.",
  "soil-reading.change.depth": "Una muestra de la capa labrada, de 15 a 20 cm de hondo.",
  "soil-reading.change.fitting-guide":
    "Una guía para el extractante que usó el laboratorio, escogida por su oficina.",
  "soil-reading.change.acidity":
    "La acidez intercambiable: convertiría la capacidad de intercambio mínima en la real.",
  "soil-reading.change.guide": "Una guía de su propia región, escogida por su oficina.",
  "soil-reading.missing.test": "Un análisis de suelo de esta cama, cada valor con su extractante.",
  "soil-reading.missing.test-moves": "Sin él cualquier nutriente puede ir de muy bajo a muy alto.",
};
