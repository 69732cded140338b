/** The working of cold, heat, covers and glasshouses, in Spanish. */
export const warmth: Record<string, string> = {
  "how old the plants are": "qué tan grandes son las plantas",
  "how far the plants are": "qué tan avanzadas están las plantas",
  "notes and days in the bed": "notas y días en la cama",
  "air below this counts as cold": "el aire por debajo de esto cuenta como frío",
  "air below this counts as cold for them": "el aire por debajo de esto cuenta como frío para ellas",
  "hours known since the record begins": "horas conocidas desde que empieza el registro",
  "{1} measured at the plants + {2} reconstructed, from {3}":
    "{1} medidas junto a las plantas + {2} reconstruidas, desde el {3}",
  "{1} measured at the plants + {2} reconstructed, from ":
    "{1} medidas junto a las plantas + {2} reconstruidas, desde ",
  "hours missing; not filled": "horas que faltan; no se llenan",
  "no reading and no daily extremes": "sin lectura y sin extremos del día",
  "degree-hours that the missing hours could hide, each down to freezing":
    "grados-hora que las horas que faltan podrían esconder, cada una hasta la congelación",
  "hours below the floor": "horas por debajo del piso",
  "count of T < floor": "conteo de T < piso",
  "degree-hours below the floor": "grados-hora por debajo del piso",
  "Σ max(0, floor - T)": "Σ max(0, piso - T)",
  "longest unbroken spell below the floor": "racha más larga sin interrupción por debajo del piso",
  "lowest minimum": "mínima más baja",
  "lowest reading or daily minimum": "lectura más baja o mínima del día",
  "days with frost": "días con helada",
  "days with a minimum at or below 0 C": "días con una mínima de 0 C o menos",
  "days with frost since a new leaf was noted": "días con helada desde que se anotó una hoja nueva",
  "the same": "lo mismo",
  "degree-hours in the last fortnight": "grados-hora en las últimas dos semanas",
  "nights below the floor in the last fortnight": "noches por debajo del piso en las últimas dos semanas",
  "noon to noon": "de mediodía a mediodía",
  "hours below the floor in the worst fortnight": "horas por debajo del piso en las peores dos semanas",
  "degree-hours in the worst fortnight": "grados-hora en las peores dos semanas",
  "nights below the floor in it": "noches por debajo del piso en ellas",
  "degree-hours allowed in a fortnight": "grados-hora permitidos en dos semanas",
  "nights allowed in a fortnight": "noches permitidas en dos semanas",
  "office or default": "oficina o lo habitual",
  "night floor for plants raised indoors": "piso nocturno para plantas criadas bajo techo",
  "20 to 7 h": "de 20 a 7 h",
  "night hours below it in the last fortnight": "horas de noche por debajo de él en las últimas dos semanas",
  "degree-hours of those nights below it": "grados-hora de esas noches por debajo de él",
  "Σ max(0, night floor - T), 20 to 7 h": "Σ max(0, piso nocturno - T), de 20 a 7 h",
  "warm days since the coldest day with no new leaf noted at their end":
    "días cálidos desde el día más frío sin hoja nueva anotada a su fin",
  "mean of at least 18 C; {1} decide": "media de al menos 18 C; {1} deciden",
  "days left between green fruit on plants sown today and the first autumn frost":
    "días que quedan entre el fruto verde de plantas sembradas hoy y la primera helada de otoño",
  "first frost of the earliest fifth of years less raising and the seed list's days":
    "primera helada del quinto de años más temprano, menos la cría y los días de la lista de semillas",
  "course of the day from its extremes": "curso del día a partir de sus extremos",
  "site taken as its station": "el sitio se toma como su estación",
  "site taken as its station, give or take 2 C": "el sitio se toma como su estación, 2 C más o menos",
  "site taken as its station, with 2 C either way in the interval":
    "el sitio se toma como su estación, con 2 C a cada lado en el intervalo",
  "site's nights less its station's": "noches del sitio menos las de su estación",
  "mean of paired nights": "media de noches pareadas",
  "mean of {1} paired nights": "media de {1} noches pareadas",
  "no paired nights: taken as 0": "sin noches pareadas: se toma 0",
  "{1} paired nights": "{1} noches pareadas",
  "night minimum under the cover less outside": "mínima de la noche bajo la cubierta menos la de afuera",
  "outside minimum plus the cover's published offset":
    "mínima de afuera más la diferencia publicada de la cubierta",
  sunset: "puesta del sol",
  sunrise: "salida del sol",
  "noon + N / 2": "mediodía + N / 2",
  "noon - N / 2": "mediodía - N / 2",
  "age of the forecast": "edad del pronóstico",
  "one night below this may hurt them": "una noche por debajo de esto puede dañarlas",
  "air that counts as frost": "aire que cuenta como helada",
  "upper end of 0 to -1 C": "extremo superior de 0 a -1 C",
  "lowest of the night in the open, at the station": "lo más bajo de la noche al aire libre, en la estación",
  "forecast, {by}": "pronóstico, por {by}",
  "mean cloud of the night": "nubes medias de la noche",
  "mean wind of the night at 2 m": "viento medio de la noche a 2 m",
  "dew point": "punto de rocío",
  forecast: "pronóstico",
  "night's minimum at the plants": "mínima de la noche junto a las plantas",
  "night's minimum at the plants, told this way": "mínima de la noche junto a las plantas, calculada así",
  "forecast {1} + site {2} + cover {3}": "pronóstico {1} + sitio {2} + cubierta {3}",
  "forecast {1} + mean of plants less station {2} over {3} nights":
    "pronóstico {1} + media de plantas menos estación {2} en {3} noches",
  "lowest reading at the plants since sunset": "lectura más baja junto a las plantas desde la puesta del sol",
  "two regressions over {1} clear, calm nights at the plants":
    "dos regresiones sobre {1} noches despejadas y quietas junto a las plantas",
  "calm night near the ground {1} + cover {2}": "noche quieta cerca del suelo {1} + cubierta {2}",
  "forecast at the plants {1} less {2} by which it is too warm now":
    "pronóstico junto a las plantas {1} menos {2}, lo que ahora sobra de cálido",
  "lowest inside {1} of {2} nights, less {3} by which tonight is colder outside than any of them":
    "lo más bajo adentro {1} de {2} noches, menos {3}, lo que esta noche es más fría afuera que cualquiera de ellas",
  "lowest inside {1} of {2} nights; how cold it was outside then is not known":
    "lo más bajo adentro {1} de {2} noches; no se sabe qué tanto frío hizo afuera entonces",
  "the coldest of these": "la más fría de estas",
  "the same, less what the site leaves open": "lo mismo, menos lo que el sitio deja abierto",
  "hours of the night below the floor": "horas de la noche por debajo del piso",
  "one an hour of the course": "una por hora del curso",
  "first below the floor, from now on": "primera vez por debajo del piso, de ahora en adelante",
  "minimum it would leave": "mínima que dejaría",
  "Tmin - standing cover + {1}": "Tmin - cubierta puesta + {1}",
  "how the hours were found": "cómo se hallaron las horas",
  "what its heat held on past nights": "lo que su calor mantuvo en noches pasadas",
  "day of setting out": "día del trasplante",
  "set-out's earliest within the accepted risk":
    "lo más temprano del consejo de trasplante dentro del riesgo aceptado",
  "earliest within set-out's accepted risk, by past years":
    "lo más temprano dentro del riesgo aceptado para el trasplante, según años pasados",
  "days of hardening": "días de endurecimiento",
  "at least {1}, planned": "al menos {1}, planeados",
  "first day outside": "primer día afuera",
  "t_out - D_harden, or today where that is past": "t_out - D_harden, u hoy donde eso ya pasó",
  "air to carry them out on the sheltered days": "aire para sacarlas en los días de resguardo",
  "a day's mean wind that keeps them in": "viento medio de un día con que se quedan adentro",
  "night after {1} at the plants; wind not forecast":
    "noche después del {1} junto a las plantas; viento sin pronóstico",
  "night after {1} at the plants; wind {2} m/s": "noche después del {1} junto a las plantas; viento {2} m/s",
  "forecast + Δsite": "pronóstico + Δsite",
  "hardened from": "endurecidas desde",
  "the day after {1} days outside": "el día después de {1} días afuera",
  "taken as advised from the planned first day on; nobody notes them":
    "se toman como se aconsejó desde el primer día planeado; nadie los anota",
  "cold below {1} C in the last fortnight, at the plants; up to {2} C h is allowed":
    "frío por debajo de {1} C en las últimas dos semanas, junto a las plantas; se permiten hasta {2} C h",
  "cold below {1} C in the last fortnight, in the bed; up to {2} C h is allowed":
    "frío por debajo de {1} C en las últimas dos semanas, en la cama; se permiten hasta {2} C h",
  "the handbook's for {glazing}": "el del manual para {glazing}",
  "the leaky end of the handbook's range for {glazing}":
    "el extremo con más fugas del rango del manual para {glazing}",
  "heat transfer of the cover": "transmisión de calor de la cubierta",
  stated: "como se dijo",
  "with the second layer drawn": "con la segunda capa corrida",
  "plants under fleece taken as {1} C warmer than the air, as measured outdoors":
    "se toma que bajo manta térmica las plantas están {1} C más cálidas que el aire, como se midió al aire libre",
  "temperature of the air that keeps the plants at theirs under fleece":
    "temperatura del aire que mantiene las plantas en la suya bajo manta térmica",
  "{1} - {2} (offset of a light fleece outdoors)":
    "{1} - {2} (diferencia de una manta térmica ligera al aire libre)",
  "heat lost by each degree": "calor que se pierde por cada grado",
  "not stated: {1} nights, to {2}": "no se dijo: {1} noches, hasta el {2}",
  "night temperature at the plants": "temperatura de la noche junto a las plantas",
  "design night": "noche de diseño",
  "one in a hundred of {1} nights of {2} years is colder":
    "una de cada cien de {1} noches de {2} años es más fría",
  "coldest of the forecast": "la más fría del pronóstico",
  "energy of the heated nights ahead, mean of the years":
    "energía de las noches con calefacción por venir, media de los años",
  "Σ H (Ti - T) over night hours": "Σ H (Ti - T) en las horas de noche",
  "no paired nights: the site's nights may differ by {1} C from its station's":
    "sin noches pareadas: las noches del sitio pueden diferir {1} C de las de su estación",
  "{1}, as is usual for {fuel}": "{1}, como es usual para {fuel}",
  "{fuel} for those nights": "{fuel} para esas noches",
  "seedling mats under all trays, at most": "esteras bajo todas las bandejas, a lo más",
  "days weighed": "días que se pesan",
  "earliest - wanted day": "más temprano - día deseado",
  "no date opens: weighed over a stretch": "ninguna fecha se abre: se pesa sobre un tramo",
  "base of heat units": "base de las unidades de calor",
  "heat units at the plants over those days, mean of the years":
    "unidades de calor junto a las plantas en esos días, media de los años",
  "Σ single sine above Tb, nights with site and standing cover":
    "Σ seno simple por encima de Tb, noches con el sitio y la cubierta puesta",
  "the same with the protection's nights; its warmer days have no published figure and are left out":
    "lo mismo con las noches de la protección; sus días más cálidos no tienen cifra publicada y se dejan fuera",
  "days of harvest, set out on the wanted day": "días de cosecha, con trasplante el día deseado",
  "mean of {1} years: first autumn frost - set out - days to maturity, not below 0":
    "media de {1} años: primera helada de otoño - trasplante - días a madurez, no menos de 0",
  "of these lost by waiting": "de estos, los que se pierden por esperar",
  "H - H after the wait": "H - H después de la espera",
  "worth of the harvest": "valor de la cosecha",
  "yield goal × length × bed spacing × price": "meta de cosecha × largo × distancia entre camas × precio",
  "money of waiting": "dinero de esperar",
  "materials, a season's share": "materiales, la parte de una temporada",
  "{1} a m2 × bed": "{1} por m2 × cama",
  "hours to put up, open and close, and take off": "horas para poner, abrir y cerrar, y quitar",
  "{hours} a 100 m2 + {other} a day, at least two weeks":
    "{hours} por 100 m2 + {other} al día, al menos dos semanas",
  "{1} h (median of {2} records of this farm)": "{1} h (mediana de {2} registros de esta finca)",
  "{1} h": "{1} h",
  "money of protecting": "dinero de proteger",
  "materials + hours × labour": "materiales + horas × trabajo",
  "materials of common practice": "materiales de práctica común",
  "materials and hours of common practice": "materiales y horas de práctica común",
  "as the office set it": "como lo fijó la oficina",
  "as the office chose": "como escogió la oficina",
  "how much cold the plant can take": "cuánto frío aguanta la planta",
  "{hard}, leaves not counted": "{hard}, hojas sin contar",
  "{hard}, {1} true leaves": "{hard}, {1} hojas verdaderas",
  hardened: "endurecidas",
  "not noted as hardened": "no anotadas como endurecidas",
  "nights below the floor that this stage is allowed":
    "noches por debajo del piso que se permiten a esta etapa",
  "degree-hours below the floor that this stage is allowed":
    "grados-hora por debajo del piso que se permiten a esta etapa",
  "nights after setting out that are weighed": "noches después del trasplante que se pesan",
  "accepted risk of more than that": "riesgo aceptado de más que eso",
  "accepted risk of frost": "riesgo aceptado de helada",
  "years with that window whole": "años con esa ventana completa",
  "latest {1} at most, {2} to {3}": "los últimos {1} a lo más, {2} a {3}",
  "skill of a forecast by lead k, blended as N + r (F - N) + √(1 - r²) (Ty - N)":
    "acierto de un pronóstico según los días k que faltan, mezclado como N + r (F - N) + √(1 - r²) (Ty - N)",
  "max(0, 0.95 - 0.07 k); {1} forecast days; at k = 5":
    "max(0, 0.95 - 0.07 k); {1} días de pronóstico; con k = 5",
  "how far that may be wrong over the window": "cuánto puede fallar eso en la ventana",
  "unknown site": "sitio desconocido",
  "night minimum under the cover that stands, less outside":
    "mínima de la noche bajo la cubierta puesta, menos la de afuera",
  "{covers}; the low end is taken": "{covers}; se toma el extremo bajo",
  "{covers}, published up to {1} C; the low end is taken":
    "{covers}, publicado hasta {1} C; se toma el extremo bajo",
  "night minimum with {cover} put up, less outside": "mínima de la noche con {cover}, menos la de afuera",
  "published offset": "diferencia publicada",
  "air inside at which a cover must be open": "aire adentro con que una cubierta debe estar abierta",
  "top of the range for growth by day": "lo más alto del rango para crecer de día",
  "published mark for cool crops, for comparison": "marca publicada para cultivos de fresco, para comparar",
  "soil at 10 cm in the morning on the wanted day": "suelo a 10 cm en la mañana del día deseado",
  "soil at 10 cm in the morning": "suelo a 10 cm en la mañana",
  "Ts += 0.202 (surface - Ts) each day, less the morning's dip, plus mulch":
    "Ts += 0.202 (superficie - Ts) cada día, menos lo que baja en la mañana, más el acolchado",
  "mean of {1} mornings measured": "media de {1} mañanas medidas",
  "soil below which roots stand still": "suelo por debajo del cual las raíces no avanzan",
  "from memory, 16 to 18 C": "de memoria, 16 a 18 C",
  "from memory, the warm end of 16 to 18 C": "de memoria, el extremo cálido de 16 a 18 C",
  "warming of the soil by {mulch} mulch": "calentamiento del suelo por acolchado {mulch}",
  "no published soil warming for {mulch} mulch: taken as bare soil":
    "ningún calentamiento del suelo publicado para acolchado {mulch}: se toma como suelo desnudo",
  "nights below the floor when set out on {1}, the middle year":
    "noches por debajo del piso con trasplante el {1}, año intermedio",
  "nights below the floor when set out on {1}, the coldest tenth of years":
    "noches por debajo del piso con trasplante el {1}, el décimo más frío de los años",
  "degree-hours when set out on {1}, the middle year": "grados-hora con trasplante el {1}, año intermedio",
  "degree-hours when set out on {1}, the coldest tenth of years":
    "grados-hora con trasplante el {1}, el décimo más frío de los años",
  "risk of a dose above the line when set out on {1}":
    "riesgo de más frío de lo permitido con trasplante el {1}",
  "risk of frost when set out on {1}": "riesgo de helada con trasplante el {1}",
  "one night below the floor when set out on {1}; shown, never decides":
    "una noche por debajo del piso con trasplante el {1}; se muestra, nunca decide",
  median: "mediana",
  "90th percentile": "percentil 90",
  "median of Σ max(0, floor - T)": "mediana de Σ max(0, piso - T)",
  "x = {1} of n = {2} years; (x + z²/2) / (n + z²), z 1.28; interval, site included, {3} to {4}":
    "x = {1} de n = {2} años; (x + z²/2) / (n + z²), z 1.28; intervalo, con el sitio, {3} a {4}",
  "the larger of {1} of {2} years and Student's t of the window's lowest minima":
    "lo mayor de {1} de {2} años y la t de Student de las mínimas más bajas de la ventana",
  "upper end of the risk if no year in the series had been too cold":
    "extremo superior del riesgo si ningún año de la serie hubiera sido demasiado frío",
  "no years: anything up to 1": "sin años: cualquier valor hasta 1",
  "earliest date within the accepted risk from the wanted day on":
    "fecha más temprana dentro del riesgo aceptado desde el día deseado",
  "first of {1} days in a row within both risks, soil at least {2} C":
    "primero de {1} días seguidos dentro de los dos riesgos, suelo de al menos {2} C",
  "first day with soil warm enough": "primer día con el suelo bastante tibio",
  "Ts at least {1} C": "Ts de al menos {1} C",
  "the same date at the warm end of the interval": "la misma fecha en el extremo cálido del intervalo",
  "the same date at the cold end of the interval": "la misma fecha en el extremo frío del intervalo",
  "low end of the risk": "extremo bajo del riesgo",
  "high end of the risk": "extremo alto del riesgo",
  "modelled from air temperature": "modelado con la temperatura del aire",
  "modelled from air temperature, moved by {1} readings and less so further ahead":
    "modelado con la temperatura del aire, movido por {1} lecturas, menos cuanto más adelante",
  "this bed's soil less the model's": "suelo de esta cama menos el del modelo",
  "mean of reading less model on {1} days of the last 60; forgotten at 0.202 a day ahead":
    "media de lectura menos modelo en {1} días de los últimos 60; se olvida a 0.202 por día por venir",
  "standard error of that": "error estándar de eso",
  "hours known {when}": "horas conocidas {when}",
  "hottest hour {when}": "hora más caliente {when}",
  "since a fortnight ago": "desde hace dos semanas",
  "by the forecast": "según el pronóstico",
  "hours above {1} C by {part} ({limit}), {when}": "horas por encima de {1} C de {part} ({limit}), {when}",
  "degree-hours above {1} C by {part} ({limit}), {when}":
    "grados-hora por encima de {1} C de {part} ({limit}), {when}",
  night: "noche",
  "fruit drops, extension texts": "cae fruto, textos de extensión",
  "pollen aborts; the default": "el polen aborta; lo habitual",
  "tolerated, but set falls; bell alike (TR-1)": "se tolera, pero baja el cuajado; igual en el dulce (TR-1)",
  "upper end of ideal nights; the default": "extremo superior de noches ideales; lo habitual",
  "none sets": "nada cuaja",
  "pollen and its germination fall": "bajan el polen y su germinación",
  "count of T > limit": "conteo de T > límite",
  "count of T <= limit": "conteo de T <= límite",
  "Σ max(0, T - limit)": "Σ max(0, T - límite)",
  "night hours at or below {1} C: {limit}": "horas de noche a {1} C o menos: {limit}",
  "nights at least half above {1} C, {when}": "noches al menos la mitad por encima de {1} C, {when}",
  "nights at least half so cold": "noches al menos la mitad así de frías",
  "largest vapour pressure deficit {when}": "mayor déficit de presión de vapor {when}",
  "longest pause between waterings or soaking rains in three weeks; {1} days are even":
    "pausa más larga entre riegos o lluvias que empapan en tres semanas; {1} días es parejo",
  "days between, the one still running included": "días de por medio, también la pausa que sigue corriendo",
  "largest watering over the smallest; twice is even":
    "riego más grande entre el más chico; el doble es parejo",
  "calcium in the soil: {how}": "calcio en el suelo: {how}",
  "extractant not said": "extractante sin decir",
  "calcium in the water": "calcio en el agua",
  "water test": "análisis de agua",
  "the open air stands in as a least: no published figure says how much hotter a cover is by day":
    "el aire libre vale como mínimo: ninguna cifra publicada dice cuánto más calor hace de día bajo una cubierta",
  "nobody noted buds: taken from six weeks in the bed":
    "nadie anotó botones: se toman desde las seis semanas en la cama",
  "what stands over the bed on that day": "lo que cubre la cama ese día",
  state: "estado",
  "the night's minimum under it, above the air outside":
    "la mínima de la noche debajo, por encima del aire de afuera",
  "the low end of what is published": "el extremo bajo de lo publicado",
  "chance of more than {1} nights or {2} degree-hours below {3} C in a fortnight":
    "probabilidad de más de {1} noches o {2} grados-hora por debajo de {3} C en dos semanas",
  "{1} of {2} years": "{1} de {2} años",
  "its interval, with the site's and the years' doubt": "su intervalo, con la duda del sitio y de los años",
  "low end": "extremo bajo",
  "high end": "extremo alto",
  "what is accepted": "lo que se acepta",
  "the office's, or the default": "lo de la oficina, o lo habitual",
  "chance of frost at the plants in that fortnight":
    "probabilidad de helada junto a las plantas en esas dos semanas",
  "degree-hours below the floor in the middle year": "grados-hora por debajo del piso en el año intermedio",
  "median of the years": "mediana de los años",
  "degree-hours below the floor in a cold year": "grados-hora por debajo del piso en un año frío",
  "ninth tenth of the years": "noveno décimo de los años",
};
