import type { ClaimWords } from "../../../evidence/types.ts";

export const soilReading: Record<string, ClaimWords> = {
  "soil-reading.extractant": {
    finding:
      "El mismo suelo da otra lectura con cada extractante; un valor sin su extractante no se puede interpretar.",
    design: "Comparación de laboratorio.",
    size: null,
    effect: "El P por Mehlich-3 es más alto que por Mehlich-1, Bray-1 u Olsen (HS1229)",
    limits: "Hay conversiones entre extractantes para suelos y laboratorios determinados; no se usa ninguna.",
    wouldChange: "Nada menos que un análisis por otro extractante.",
  },
  "soil-reading.guides": {
    finding:
      "Las clases se leen en la primera guía verificada de cada extractante: Nueva Jersey para Mehlich-3, Massachusetts para Morgan modificado, la Planicie Costera de Georgia para Mehlich-1, California para Olsen, el Medio Oeste para Bray P1 y acetato de amonio, Arizona para zinc por DTPA.",
    design: "Tablas publicadas de calibración regional.",
    size: null,
    effect: null,
    limits:
      "Cada una está calibrada en su propia región. Georgia no nombra su extractante en la hoja. Las guías conocidas de memoria nunca son el valor por defecto.",
    wouldChange: "Una guía de la propia región, escogida por la oficina, o la de la misma oficina.",
  },
  "soil-reading.olsen-california": {
    finding:
      "P por Olsen en pimiento de California: por debajo de 20 mg/kg siempre responde, de 20 a 40 es probable, más en suelo frío, por encima de 40 es poco probable. Un suelo 10 F más cálido da cerca de 20 % más de fósforo. Más de 120 a 150 lb P2O5/A es dudoso con cualquier nivel.",
    design: "Base de datos de extensión con ensayos y práctica.",
    size: null,
    effect: "la respuesta termina en 40 mg/kg",
    limits: "California. Arizona pone el final de la respuesta en la mitad.",
    wouldChange: "Una calibración local por Olsen.",
  },
  "soil-reading.olsen-arizona": {
    finding: "P por Olsen en chile de Arizona: responde hasta 20 mg/kg y no por encima.",
    design: "Guía de extensión para chile y jalapeño con riego.",
    size: null,
    effect: "la respuesta termina en 20 mg/kg",
    limits: "Suelos cálidos de desierto. California todavía ve una respuesta probable hasta 40.",
    wouldChange: "Una calibración local por Olsen.",
  },
  "soil-reading.midwest": {
    finding:
      "Hortalizas del Medio Oeste: el fósforo sirve más por debajo de 35 a 40 mg/kg Bray P1, y no se recomienda nada por encima de 80; el potasio, por debajo de 85 mg/kg con una capacidad de intercambio de 4 y por debajo de 115 con 16 cmol/kg.",
    design: "Guía regional de producción.",
    size: null,
    effect: "a lo más 300 lb K2O/A al año para la mayoría de las hortalizas",
    limits:
      "Hortalizas en general. La página no nombra el extractante del potasio, y la unidad de las 300 lb está cortada en la copia; se toma K2O.",
    wouldChange: "Una calibración para pimientos en la propia región.",
  },
  "soil-reading.zinc": {
    finding:
      "Zinc por DTPA en hortalizas de Arizona: ninguna respuesta por encima de 1.5 mg/kg, una ocasional de 0.5 a 1.5; las dosis van de 0 a 15 lb Zn/A.",
    design: "Guía de extensión.",
    size: null,
    effect: null,
    limits: "Suelos de desierto de pH alto. Aquí no se aconseja ninguna dosis según ella.",
    wouldChange: "Un análisis de hojas que muestre el zinc corto o en orden.",
  },
  "soil-reading.boron": {
    finding:
      "Medio Oeste: el grupo del tomate responde al boro en grado medio y recibe de 1 a 2 lb B/A; frijol, chícharo y pepino no reciben nada. El bórax tiene 10.6 % B, el borato soluble 20.5 %.",
    design: "Guía regional de producción.",
    size: null,
    effect: null,
    limits:
      "No va por clase del análisis de suelo. El boro daña desde poco más de lo que ayuda: aquí no se aconseja ninguna dosis según ella.",
    wouldChange: "Un análisis de hojas que muestre el boro corto.",
  },
  "soil-reading.georgia": {
    finding:
      "La hoja de Georgia para plantas de pimiento para trasplante en almácigos: magnesio bajo y toca encalar, cal dolomítica; bajo y no toca encalar, 25 lb Mg/A; calcio por debajo de 800 lb/A con pH 6.5 o más, 1000 lb de yeso/A; N 40 lb/A en la Planicie Costera, 50 en otros lugares, y después al lado de la hilera de 30 a 40.",
    design: "Hoja de recomendación de un laboratorio.",
    size: null,
    effect: null,
    limits:
      "Almácigos para trasplante, no el cultivo en el campo. La hoja no nombra su extractante, e imprime 275 y 400 lb K/A, y 100 y 75 lb P/A, cada uno en dos clases.",
    wouldChange: "La hoja del estado para el cultivo en el campo.",
  },
  "soil-reading.unverified": {
    finding:
      "Las clases y dosis Mehlich de Florida, las dosis del Atlántico Medio y las clases de Wisconsin se tienen de memoria o de una copia; la guía propia de una oficina se apoya en la fuente que dice.",
    design: "De memoria, de una copia, o dicho por la oficina; no leído de nuevo en una publicación.",
    size: null,
    effect: null,
    limits:
      "Nunca son el valor por defecto; se usan solo donde la oficina las escoge, y junto a cada valor se dice que están sin verificar.",
    wouldChange: "Leer la publicación.",
  },
  "soil-reading.response-chance": {
    finding:
      "En la clase muy baja la probabilidad de que suba la cosecha pasa de 90 %. Para otras clases, y para cuánto se pierde, no se halló ninguna cifra de pimiento.",
    design: "Tabla de extensión; el resto es práctica común.",
    size: null,
    effect: "probabilidad 0.9 en muy bajo; 0.5 en lo demás y una pérdida de 0.2 son práctica común",
    limits: "Ordena el trabajo de un día. No es pronóstico de una cosecha.",
    wouldChange: "Ensayos de dosis de fosfato y potasa en pimientos, con testigo.",
  },
  "soil-reading.potassium-hinders-magnesium": {
    finding:
      "Demasiado potasio impide que las plantas tomen calcio y magnesio, y puede dejar corto el magnesio donde el suelo tiene poco.",
    design: "Orientación de extensión.",
    size: null,
    effect: null,
    limits:
      "No hay umbral impreso; se dice solo donde el potasio sale por encima de su óptimo y el otro sale corto.",
    wouldChange: "Un análisis de hojas con los dos en rango.",
  },
  "soil-reading.potassium-raises": {
    finding:
      "Más potasio de lo usual dio pimientos dulces más firmes y con más vitamina C en solución (lo mejor con 400 a 500 mg/L), una cosecha que subió en línea recta hasta 90 kg K2O/ha en un suelo bajo en potasio, y el fruto más firme después de almacenado con las dosis más altas.",
    design: "Un ensayo de cada uno: cultivo en solución, campo en el trópico, almacenamiento.",
    size: "una temporada, dos años, un ensayo",
    effect: "14.24 y 14.94 t/ha con 90 kg K2O/ha, sin llegar a una meseta; la mejor ganancia con 60",
    limits: "Solución, o un suelo que saldría corto. Ninguno dice que un suelo en orden necesite más.",
    wouldChange:
      "Un ensayo de dosis en un suelo que sale suficiente. No se halló ninguna revisión que pese estos ensayos.",
  },
  "soil-reading.potassium-no-more": {
    finding:
      "En otros lugares más potasio no hizo nada o hizo daño: el peso bajó al subir el potasio dado con el riego y la vitamina C fue mejor con la mitad de la dosis; los habaneros en macetas no respondieron; los jalapeños en arena no necesitaron más de 6 mM, y bastaban 3 mM, y su picor no cambió.",
    design: "Un ensayo de cada uno: campo, macetas, cultivo en arena.",
    size: "dos temporadas en una finca; macetas; invernadero",
    effect: "lo mejor con media dosis (66); óptimo 6 mM",
    limits: "Lugares y variedades sueltos; macetas y arena tienen poco potasio propio.",
    wouldChange: "Un ensayo de dosis en un suelo que sale suficiente.",
  },
  "soil-reading.ph": {
    finding: "Los pimientos se cultivan con una meta de pH de 6.3 a 6.8; aguantan de 5.5 a 7.0.",
    design: "Meta de extensión y rango de manual.",
    size: null,
    effect: null,
    limits: "Suelo mineral.",
    wouldChange: "Una calibración local.",
  },
  "soil-reading.salts": {
    finding:
      "El pimiento pierde cosecha por encima de 1.5 dS/m en la pasta saturada; un laboratorio de Massachusetts advierte por encima de 0.6 dS/m en un extracto 1:2.",
    design: "Ensayos de tolerancia a la sal; práctica de laboratorio.",
    size: null,
    effect: "umbral 1.5 dS/m",
    limits: "Solo esas extracciones. Los 2.0 dS/m generales para hortalizas no nombran su extracción.",
    wouldChange: "Un análisis en pasta saturada.",
  },
  "soil-reading.cec": {
    finding: "La capacidad de intercambio es la suma de calcio, magnesio, potasio, sodio y acidez.",
    design: "Método de laboratorio.",
    size: null,
    effect: null,
    limits: "Sin la acidez es un mínimo. En suelo encalado o calcáreo la suma es demasiado alta.",
    wouldChange: "La acidez medida, o un método por desplazamiento.",
  },
  "soil-reading.saturation": {
    finding:
      "De la capacidad de intercambio el calcio ocupa de 50 a 80 %, el magnesio de 10 a 30 % y el potasio de 2.0 a 7.0 % en los rangos que imprime un laboratorio.",
    design: "Formato de informe de un laboratorio.",
    size: null,
    effect: null,
    limits:
      "Solo donde se conoce la acidez. Aquí de las partes no sale ninguna dosis: deciden los contenidos.",
    wouldChange: "Un ensayo en que las partes y no los contenidos movieran la cosecha.",
  },
  "soil-reading.usual-cec": {
    finding:
      "Capacidad de intercambio usual: arenas de 3 a 5, francos de 10 a 15, franco limosos de 15 a 25, arcillas y franco arcillosos de 20 a 50, suelos orgánicos de 50 a 100 meq/100 g.",
    design: "Tabla de extensión.",
    size: null,
    effect: null,
    limits: "Una revisión del informe frente a la textura, para las texturas que nombra la tabla.",
    wouldChange: "Un análisis granulométrico.",
  },
};
