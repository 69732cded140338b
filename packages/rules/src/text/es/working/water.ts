/** The working of water in soil, plants and containers, and of its salt, in Spanish. */
export const water: Record<string, string> = {
  "lime that comes with the water": "cal que viene con el agua",
  alkalinity: "alcalinidad",
  "of it, above what may stay": "de ella, por encima de la que puede quedar",
  "charge concentration": "concentración de carga",
  "use of one container a day": "uso de una maceta al día",
  "ETc x area = {1} x {2}": "ETc x área = {1} x {2}",
  "water it gives without holding plants back": "agua que da sin frenar las plantas",
  "p x available x volume = {1} x {2} x {3}": "p x disponible x volumen = {1} x {2} x {3}",
  "waterings a day": "riegos al día",
  "V_use / V_ready, rounded up": "V_use / V_ready, redondeado hacia arriba",
  "V_ready / V_use, rounded down": "V_ready / V_use, redondeado hacia abajo",
  "days from one watering to the next": "días de un riego al siguiente",
  "water to give at a time": "agua que dar cada vez",
  "0.15, the lower end of the printed 0.15 to 0.20": "0.15, el extremo bajo de los 0.15 a 0.20 impresos",
  "0.10 m, the lower end of the printed 0.10 to 0.15 m":
    "0.10 m, el extremo bajo de los 0.10 a 0.15 m impresos",
  "density coefficient": "coeficiente de densidad",
  "basal crop coefficient": "coeficiente basal del cultivo",
  "coefficient, not adjusted below 0.45": "coeficiente, sin ajustar por debajo de 0.45",
  "wind, limited to 1 to 6 m/s": "viento, limitado de 1 a 6 m/s",
  "humidity, limited to 20 to 80 %": "humedad, limitada de 20 a 80 %",
  "height, limited to 0.1 to 10 m": "altura, limitada de 0.1 a 10 m",
  "given {1}": "dado {1}",
  "coefficient for the climate": "coeficiente para el clima",
  "Kc(table)": "Kc(tabla)",
  "Kc(table) + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3, Kc(table) = {1}":
    "Kc(tabla) + [0.04 (u2 - 2) - 0.004 (RHmin - 45)] (h / 3)^0.3, Kc(tabla) = {1}",
  "taken as 0: all rain enters the soil": "se toma 0: toda la lluvia entra al suelo",
  "taken as 0: no water rises from below": "se toma 0: no sube agua de abajo",
  "upper limit of the crop coefficient": "límite superior del coeficiente del cultivo",
  "upper limit of Kc": "límite superior de Kc",
  "from Kcb: [(Kcb - Kcmin) / (Kcmax - Kcmin)]^(1 + 0.5 h)":
    "de Kcb: [(Kcb - Kcmin) / (Kcmax - Kcmin)]^(1 + 0.5 h)",
  "share of the ground that the crop shades": "parte del suelo que el cultivo sombrea",
  "share of the ground wetted and open to the sun": "parte del suelo mojada y abierta al sol",
  "taken as 1: all of the ground lies under the mulch": "se toma 1: todo el suelo está bajo el acolchado",
  "share by which the mulch lowers evaporation": "parte en que el acolchado baja la evaporación",
  "no mulch": "sin acolchado",
  "{1} × share covered {2}": "{1} × parte cubierta {2}",
  "crop coefficient": "coeficiente del cultivo",
  "crop evapotranspiration": "evapotranspiración del cultivo",
  "crop evapotranspiration without stress": "evapotranspiración del cultivo sin estrés",
  "total evaporable water": "agua evaporable total",
  "(P - RO) + I / fw - De,i-1, not below 0; P = {1}, RO = {2}, I = {3}, fw = {4}, De,i-1 = {5}":
    "(P - RO) + I / fw - De,i-1, no menos de 0; P = {1}, RO = {2}, I = {3}, fw = {4}, De,i-1 = {5}",
  "water that passes the drying top": "agua que pasa la capa que se seca",
  "how freely the top gives its water after the day's wetting":
    "con qué facilidad da su agua la capa de arriba después de mojarse ese día",
  "1 where De <= REW, else (TEW - De) / (TEW - REW); TEW = {1}, REW = {2}":
    "1 donde De <= REW, si no (TEW - De) / (TEW - REW); TEW = {1}, REW = {2}",
  "soil evaporation coefficient, not more than the top holds":
    "coeficiente de evaporación del suelo, no más de lo que guarda la capa de arriba",
  "soil evaporation over the whole area": "evaporación del suelo en toda el área",
  "water missing from the exposed, wetted soil at the end of the day":
    "agua que falta en el suelo mojado y descubierto al fin del día",
  "read in the saturated paste itself": "leído en la propia pasta saturada",
  "conductivity of the saturated paste extract": "conductividad del extracto de pasta saturada",
  "the same by another relation": "lo mismo por otra relación",
  "b EC + a, not below EC; b = {1}, a = {2}, EC = {3}":
    "b EC + a, no menos de EC; b = {1}, a = {2}, EC = {3}",
  "converted from {extraction} in {texture}, not measured":
    "convertido desde {extraction} en {texture}, no medido",
  "taken as 1: rain or sprinkler wets all of the ground":
    "se toma 1: la lluvia o la aspersión moja todo el suelo",
  "depth of a wetting on the ground it reaches": "lámina de una mojada en el suelo al que llega",
  "coefficient of the wetted ground": "coeficiente del suelo mojado",
  "light + (Iw - 10) / (40 - 10) (heavy - light), Iw from 10 to 40; light = {1}, heavy = {2}":
    "ligera + (Iw - 10) / (40 - 10) (fuerte - ligera), Iw de 10 a 40; ligera = {1}, fuerte = {2}",
  "coefficient over the whole area": "coeficiente en toda el área",
  "leaching requirement": "requerimiento de lavado",
  "none holds the threshold: ECw is at least 2.5 ECe": "ninguno sostiene el umbral: ECw es al menos 2.5 ECe",
  "crop coefficient of the bed": "coeficiente del cultivo de la cama",
  "10, the low end of the printed 10 to 30 %": "10, el extremo bajo de los 10 a 30 % impresos",
  "5, the low end of the printed 5 to 15 %": "5, el extremo bajo de los 5 a 15 % impresos",
  "single coefficient of the initial stage": "coeficiente único de la etapa inicial",
  "single coefficient of the mid stage": "coeficiente único de la etapa media",
  "single coefficient at the end": "coeficiente único al final",
  "basal coefficient of the initial stage": "coeficiente basal de la etapa inicial",
  "basal coefficient of the mid stage": "coeficiente basal de la etapa media",
  "basal coefficient at the end": "coeficiente basal al final",
  printed: "impreso",
  "30, as in the example": "30, como en el ejemplo",
  "rains in the month": "lluvias en el mes",
  "P / typical rain = {1} / {2}": "P / lluvia típica = {1} / {2}",
  "mean days between rains": "días entre lluvias, en promedio",
  "{1} / n, at least 1": "{1} / n, al menos 1",
  "relative yield, not below 0": "rendimiento relativo, no menos de 0",
  "relative yield, 0 to 100": "rendimiento relativo, de 0 a 100",
  "yield lost": "cosecha perdida",
  "p is left as tabulated, which is for 5 mm a day": "p se deja como en la tabla, que es para 5 mm al día",
  "total available water": "agua disponible total",
  "available water": "agua disponible",
  "depletion fraction": "fracción de agotamiento",
  "p(table) = {1}": "p(tabla) = {1}",
  "p(table) + 0.04 (5 - ETc), 0.1 to 0.8, p(table) = {1}, ETc = {2}":
    "p(tabla) + 0.04 (5 - ETc), de 0.1 a 0.8, p(tabla) = {1}, ETc = {2}",
  "{1} + 0.04 (5 - ETc), 0.1 to 0.8": "{1} + 0.04 (5 - ETc), de 0.1 a 0.8",
  "readily available water": "agua fácilmente disponible",
  "water stress coefficient": "coeficiente de estrés hídrico",
  "(TAW - Dr) / (TAW - RAW) where Dr > RAW": "(TAW - Dr) / (TAW - RAW) donde Dr > RAW",
  "(TAW - Dr) / (TAW - RAW) where Dr > RAW, else 1": "(TAW - Dr) / (TAW - RAW) donde Dr > RAW, si no 1",
  "(TAW - Dr) / (TAW - RAW) where Dr > RAW, else 1; TAW = {1}, RAW = {2}, Dr = {3}":
    "(TAW - Dr) / (TAW - RAW) donde Dr > RAW, si no 1; TAW = {1}, RAW = {2}, Dr = {3}",
  "gross depth": "lámina bruta",
  "net / efficiency = {1} / {2}": "neta / eficiencia = {1} / {2}",
  "net / efficiency, efficiency = {1}": "neta / eficiencia, eficiencia = {1}",
  "net / (efficiency × (1 - LR)), efficiency = {1}, LR taken = {2}":
    "neta / (eficiencia × (1 - LR)), eficiencia = {1}, LR tomado = {2}",
  "water through the valve": "agua por la válvula",
  "gross × area, 1 mm on 1 m2 = 1 L; area = {1}": "bruta × área, 1 mm en 1 m2 = 1 L; área = {1}",
  "gross × ground, ground = {1} m2": "bruta × suelo, suelo = {1} m2",
  "run time": "tiempo de riego",
  "60 V / flow, flow = {1}": "60 V / caudal, caudal = {1}",
  "60 V / flow, flow = {1} L/h": "60 V / caudal, caudal = {1} L/h",
  "of salt alone": "solo de la sal",
  "of dryness alone": "solo de la sequedad",
  "of both": "de las dos",
  "1 - b / (100 Ky) (ECe - threshold), b = {1}, Ky = {2}, ECe = {3}, threshold = {4}":
    "1 - b / (100 Ky) (ECe - umbral), b = {1}, Ky = {2}, ECe = {3}, umbral = {4}",
  "1 - b / (100 Ky) (ECe - threshold), b = {1}, threshold = {2}, Ky = {3}":
    "1 - b / (100 Ky) (ECe - umbral), b = {1}, umbral = {2}, Ky = {3}",
  "sodium adsorption ratio": "relación de adsorción de sodio",
  "from Dr,i-1 = {1}, TAW = {2}, RAW = {3}": "de Dr,i-1 = {1}, TAW = {2}, RAW = {3}",
  "evapotranspiration under stress": "evapotranspiración con estrés",
  "Ks ETc, not more than the water there; ETc = {1}": "Ks ETc, no más que el agua que hay; ETc = {1}",
  "deep percolation": "percolación profunda",
  "depletion at the end of the day": "agotamiento al fin del día",
  "root zone taken as full on the day it was set out":
    "la zona de raíces se toma como llena el día del trasplante",
  "root zone taken as full on {1}, the first day with weather":
    "la zona de raíces se toma como llena el {1}, el primer día con datos del tiempo",
  "sun, temperature and humidity in the open stand for those under the cover, and under fleece the wind too; shaded air usually uses less":
    "el sol, la temperatura y la humedad del aire libre valen por los de bajo la cubierta, y bajo manta térmica también el viento; a la sombra se suele usar menos",
  "outside 1 to 6 m/s, the nearer bound is used": "fuera de 1 a 6 m/s se usa el límite más cercano",
  "from the texture: {1} m3/m3, the middle of {2} to {3}":
    "según la textura: {1} m3/m3, el medio de {2} a {3}",
  "of the potting mix: {1} m3/m3 taken, mixes run from {2} to {3}":
    "de la mezcla de maceta: se toma {1} m3/m3, las mezclas van de {2} a {3}",
  "from days since setting out; nobody dug": "según los días desde el trasplante; nadie cavó",
  "from the water test: (1 + LF) / LF × ECw / 5 with LF = {1}; no saturated-paste test of this soil":
    "del análisis de agua: (1 + LF) / LF × ECw / 5 con LF = {1}; no hay análisis de este suelo en pasta saturada",
  "not had for a potting mix: one coefficient covers plant and medium together":
    "no lo hay para una mezcla de maceta: un solo coeficiente cubre planta y mezcla juntas",
  "TEW from field capacity and wilting point, REW of the texture whose middles lie nearest":
    "TEW de la capacidad de campo y el punto de marchitez, REW de la textura cuyos valores medios quedan más cerca",
  "middle of the texture's range": "medio del rango de la textura",
  "{1} by the way of watering, the end of the printed range that wets more":
    "{1} según la forma de regar, el extremo del rango impreso que moja más",
  "1: no share is printed for watering by hand, all of the ground is taken":
    "1: no hay ninguna parte impresa para regar a mano, se toma todo el suelo",
  "as seen; between looks in a line, after the last in proportion to the stages":
    "como se vio; entre dos miradas en línea recta, después de la última en proporción a las etapas",
  "from Kcb along the stages; nobody looked": "de Kcb a lo largo de las etapas; nadie miró",
  "the zone that is short first": "la zona a la que le falta primero",
  "first day with Dr above what may be missing": "primer día con Dr por encima de lo que puede faltar",
  "soil sensor at {1} cm, {2}": "sensor de suelo a {1} cm, {2}",
  shown: "se muestra",
  decides: "decide",
  "decides; of several depths the mean": "decide; de varias profundidades, el promedio",
  "not used: {why}": "no se usa: {why}",
  deficit: "sequía a propósito",
  stale: "lectura vieja",
  "out-of-range": "fuera de rango",
  stuck: "trabado",
  "below-roots": "por debajo de las raíces",
  "no-threshold": "sin umbral",
  "missing now by the book alone": "lo que falta ahora solo según las cuentas",
  "less what was watered since": "menos lo que se regó desde entonces",
  "missing now": "lo que falta ahora",
  "1000 (θFC - θ) Zr, 0 to TAW, less what was watered since":
    "1000 (θFC - θ) Zr, de 0 a TAW, menos lo que se regó desde entonces",
  "net depth advised": "lámina neta aconsejada",
  "Dr; where RAW is less than a day's use, that day's use too":
    "Dr; donde RAW es menos que el uso de un día, también el uso de ese día",
  "book opened, root zone taken as full": "se abren las cuentas, la zona de raíces se toma como llena",
  "setting out, or first weather day": "trasplante, o primer día con datos del tiempo",
  "days in the book": "días en las cuentas",
  "stages from setting out": "etapas desde el trasplante",
  "initial {1}, development {2}, mid {3}, late {4}": "inicial {1}, desarrollo {2}, media {3}, final {4}",
  "crop coefficient of the next day, mulch none, {stakes}":
    "coeficiente del cultivo del día siguiente, sin acolchado, {stakes}",
  "crop coefficient of the next day, mulch {mulch}, {stakes}":
    "coeficiente del cultivo del día siguiente, acolchado {mulch}, {stakes}",
  "basal coefficient of the next day, mulch none, {stakes}":
    "coeficiente basal del día siguiente, sin acolchado, {stakes}",
  "basal coefficient of the next day, mulch {mulch}, {stakes}":
    "coeficiente basal del día siguiente, acolchado {mulch}, {stakes}",
  staked: "con tutores",
  "not staked": "sin tutores",
  "curve of eq. 66 through the levels of Table 12 moved by eq. 62 and 65 (h = {1} m, RHmin = {2} %, u2 = {3} m/s)":
    "curva de la ec. 66 por los niveles de la Tabla 12, movidos por las ec. 62 y 65 (h = {1} m, RHmin = {2} %, u2 = {3} m/s)",
  "curve of eq. 66 through the levels of Table 17 moved by eq. 70 (h = {1} m, RHmin = {2} %, u2 = {3} m/s), and by the cover where somebody saw it":
    "curva de la ec. 66 por los niveles de la Tabla 17, movidos por la ec. 70 (h = {1} m, RHmin = {2} %, u2 = {3} m/s), y por el suelo cubierto donde alguien lo vio",
  "evaporable water of the top 0.10 m": "agua evaporable de los primeros 0.10 m",
  "1000 (θFC - 0.5 θWP) Ze, or Table 19": "1000 (θFC - 0.5 θWP) Ze, o Tabla 19",
  "easily evaporable water": "agua que se evapora con facilidad",
  "Table {1}": "Tabla {1}",
  "ground that the valve wets": "suelo que moja la válvula",
  "measured, or Table 20": "medido, o Tabla 20",
  "ground both wetted by the valve and open to the sun": "suelo mojado por la válvula y abierto al sol",
  "min(1 - fc, fw); drippers [1 - (2/3) fc] fw": "min(1 - fc, fw); goteros [1 - (2/3) fc] fw",
  "open ground that rain alone wets": "suelo abierto que solo moja la lluvia",
  "share of the evaporation that the mulch leaves": "parte de la evaporación que deja el acolchado",
  "1 - fall": "1 - baja",
  "missing from the top that the valve wets": "lo que falta en la capa de arriba que moja la válvula",
  "evaporation coefficient of the next day": "coeficiente de evaporación del día siguiente",
  "min[Kr (Kcmax - Kcb), few Kcmax], less the mulch's share":
    "min[Kr (Kcmax - Kcb), few Kcmax], menos la parte del acolchado",
  "expected on the next day": "lo que se espera al día siguiente",
  "forecast, else mean of the last 7 measured days":
    "pronóstico; si no, promedio de los últimos 7 días medidos",
  "mean of the last 7 measured days": "promedio de los últimos 7 días medidos",
  "expected crop evapotranspiration": "evapotranspiración del cultivo que se espera",
  "the plants' coefficient of {1} in still air": "el coeficiente de las plantas del {1} con aire quieto",
  "the plants' coefficient of {1} in the windiest week so far":
    "el coeficiente de las plantas del {1} en la semana más ventosa hasta ahora",
  "what the plants would have asked for on {1} in still air":
    "lo que habrían pedido las plantas el {1} con aire quieto",
  "what the plants would have asked for on {1} in the windiest week so far":
    "lo que habrían pedido las plantas el {1} en la semana más ventosa hasta ahora",
  "moved by eq. 70, u2 = {1} m/s": "movido por la ec. 70, u2 = {1} m/s",
  "Kc × ET0 with that wind, ET0 = {1} mm": "Kc × ET0 con ese viento, ET0 = {1} mm",
  "depth of the root zone": "profundidad de la zona de raíces",
  "grows from 0.15 m in a line to mid season": "crece en línea recta desde 0.15 m hasta media temporada",
  "grows from setting out to mid season, or as somebody dug":
    "crece desde el trasplante hasta media temporada, o como alguien cavó",
  "what the dry spell on purpose lets it go to": "hasta dónde la deja llegar la sequía a propósito",
  "root of D = share {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]}":
    "raíz de D = parte {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]}",
  "root of D / {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]} = share":
    "raíz de D / {RAW + (TAW - RAW) ln[(TAW - RAW) / (TAW - D)]} = parte",
  "salinity of the root zone": "salinidad de la zona de raíces",
  "stress by salt, multiplied with that by dryness": "estrés por sal, multiplicado por el de la sequedad",
  "sum of the days": "suma de los días",
  "rain that counts": "lluvia que cuenta",
  "rain of days with at least 0.2 ET0, where it reaches the bed":
    "lluvia de días con al menos 0.2 ET0, donde llega a la cama",
  "net irrigation": "riego neto",
  "litres × efficiency / ground of the valve": "litros × eficiencia / suelo de la válvula",
  "water risen from below": "agua que subió de abajo",
  "none unless stated": "ninguna si no se dice",
  "evaporated from the soil": "evaporado del suelo",
  "evapotranspiration, short of water where Ks < 1": "evapotranspiración, con falta de agua donde Ks < 1",
  "drained below the roots": "drenado por debajo de las raíces",
  "missing at the end of the book": "lo que falta al final de las cuentas",
  "stress by dryness on the last day": "estrés por sequedad el último día",
  "{1} m/s at 2 m, from a resistance of 150 s/m fitted in a plastic greenhouse; sun, temperature and humidity stay those of the open":
    "{1} m/s a 2 m, de una resistencia de 150 s/m ajustada en un invernadero de plástico; sol, temperatura y humedad siguen siendo los del aire libre",
  "not stated: wind taken as measured at 2 m": "no se dijo: se toma que el viento se midió a 2 m",
  "from the dew point or the minimum temperature": "del punto de rocío o de la temperatura mínima",
  "no temperatures on {days}: ET0 bridged from the neighbouring days, rain as none":
    "sin temperaturas el {days}: ET0 salvada con los días vecinos, lluvia como ninguna",
  "not measured on {1} days: counted as none, the drier reading":
    "no se midió en {1} días: se cuenta como ninguna, la lectura más seca",
  "may be missing before plants are held back": "puede faltar antes de que las plantas se frenen",
  "p TAW, p = 0.30 + 0.04 (5 - ETc)": "p TAW, p = 0.30 + 0.04 (5 - ETc)",
  "1000 θ Zr, θ = {1} ({how})": "1000 θ Zr, θ = {1} ({how})",
  "water allowed over each drying cycle": "agua que se permite en cada ciclo de secado",
  "as the watering of this valve reckons it for that day":
    "como lo calcula el riego de esta válvula para ese día",
  "as chosen": "como se escogió",
  "the mildest tabulated; nobody chose one": "la más suave de la tabla; nadie escogió ninguna",
  "missing when the stressed half is watered": "lo que falta cuando se riega la mitad con sequía",
  "days from a full root zone to that, without rain":
    "días desde la zona de raíces llena hasta eso, sin lluvia",
  "D / (share ETc)": "D / (parte ETc)",
  "share of the season's water use that falls in the days of stress":
    "parte del uso de agua de la temporada que cae en los días de sequía",
  "Σ Kc over {1} days / Σ Kc over the season, at one ET0":
    "Σ Kc en {1} días / Σ Kc en la temporada, con una misma ET0",
  "the same by the Ky that a trial of processing pepper measured":
    "lo mismo con la Ky que midió un ensayo de pimiento para industria",
  "100 × {1} s (1 - share)": "100 × {1} s (1 - parte)",
  "the last week's ET0 stands for the whole season; only its share is used":
    "la ET0 de la última semana vale por toda la temporada; solo se usa su parte",
  "extrapolated: 1.1 is of a whole season, and flowering suffers more than it says":
    "extrapolado: 1.1 es de toda una temporada, y la floración sufre más de lo que dice",
  "fruit lost if the whole block is stressed": "fruto que se pierde si toda la cama pasa sequía",
  "goal × ground × loss, goal × ground = {1} kg": "meta × suelo × pérdida, meta × suelo = {1} kg",
  "what that fruit would have brought": "lo que habría dado ese fruto",
  "price × kg, block worth {1}": "precio × kg, valor de la cama {1}",
  "water content at the line": "contenido de agua en ese punto",
  "tension at the line": "tensión en ese punto",
  "median of {1} pairs read in this bed": "mediana de {1} pares leídos en esta cama",
  "latest reading in the root zone, {1}": "última lectura en la zona de raíces, {1}",
  "hottest day from {1} days ago to {2} days ahead; {3} C is too hot (another source: {4} C)":
    "día más caliente desde hace {1} días hasta dentro de {2} días; {3} C es demasiado calor (otra fuente: {4} C)",
  "no day known": "no se conoce ningún día",
  "fruit set noted in every zone": "fruto cuajado anotado en todas las zonas",
  "pungency when short of water: {which}": "picor con falta de agua: {which}",
  "yield lost by the mildest that is published": "cosecha perdida según lo más suave publicado",
  "yield lost by the harshest that is published": "cosecha perdida según lo más duro publicado",
  "yield lost to salt, the larger of soil and water": "cosecha perdida por sal, lo mayor de suelo y agua",
  "fruit lost to salt on this planting": "fruto perdido por sal en esta plantación",
  "goal × area × loss, goal = {1} t/ha, area = {2} m2 with its alley":
    "meta × área × pérdida, meta = {1} t/ha, área = {2} m2 con su pasillo",
  "kg × price, price = {1}": "kg × precio, precio = {1}",
  "water that must drain through the top 30 cm to bring it to the threshold":
    "agua que debe drenar por los primeros 30 cm para llevarlo al umbral",
  "more than the plants use, so that enough drains":
    "más de lo que usan las plantas, para que drene lo suficiente",
  "restriction on use": "restricción de uso",
  "value against the printed classes": "valor frente a las clases impresas",
  "the same by the general classes of all crops, which disagree":
    "lo mismo según las clases generales de todos los cultivos, que no coinciden",
  "bicarbonate, taken as all of the alkalinity": "bicarbonato, se toma como toda la alcalinidad",
  "alkalinity / 50.04, alkalinity = {1} mg/L as CaCO3":
    "alcalinidad / 50.04, alcalinidad = {1} mg/L como CaCO3",
  "soil that this water makes where 15 to 20 % of it drains and no rain helps":
    "suelo que hace esta agua donde drena de 15 a 20 % de ella y ninguna lluvia ayuda",
  none: "ninguna",
  slight: "ligera a moderada",
  severe: "severa",
};
