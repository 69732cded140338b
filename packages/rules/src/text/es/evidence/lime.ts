import type { ClaimWords } from "../../../evidence/types.ts";

export const lime: Record<string, ClaimWords> = {
  "lime.target": {
    finding: "Los pimientos se encalan a pH 6.3 a 6.8; se toma 6.5 si la oficina no fija otro.",
    design: "Metas de extensión.",
    size: null,
    effect: null,
    limits:
      "Suelo mineral. Los suelos orgánicos se mantienen mucho más bajos, y su meta la debe fijar la oficina.",
    wouldChange: "Una calibración local de la cosecha de pimiento frente al pH.",
  },
  "lime.mehlich": {
    finding:
      "La acidez es 4 (6.6 - pH tampón); la cal es eso por (meta - pH) / (6.6 - pH), menos lo que todavía trabaja.",
    design:
      "Relación de laboratorio; su renglón de ejemplo imprime 0.76 ton donde sus propios números dan 0.75.",
    size: null,
    effect: "pH 5.0, pH tampón 6.3, meta 6.0: 0.75 ton/A",
    limits:
      "Suelos de Carolina del Norte, a lo más hasta pH 6.6. La página no imprime profundidad; se toman 6.67 in.",
    wouldChange: "La profundidad detrás de la página, o un ensayo de dosis de cal en el propio suelo.",
  },
  "lime.adams-evans": {
    finding:
      "La acidez es 8 (8.00 - pH tampón); la parte de ella a cada pH sigue una sola curva, y de cal agrícola se da la mitad más.",
    design: "Relación de laboratorio; la acidez se leyó, la curva es de memoria.",
    size: null,
    effect: "pH 5.5, pH tampón 7.70, meta 6.5: 1212 lb/A pura, 1819 lb/A de cal agrícola",
    limits: "Suelos arenosos del sureste con poca capacidad de intercambio. De memoria.",
    wouldChange: "El artículo mismo, o la cifra de cal del propio laboratorio.",
  },
  "lime.smp": {
    finding:
      "La cal por la solución tampón SMP se lee de una tabla para pH 6.0, 6.5 y 7.0; las ecuaciones Tri-State van al lado.",
    design: "Tabla y ecuaciones de laboratorio, las dos de memoria; coinciden dentro de 0.1 ton/A.",
    size: null,
    effect: "pH tampón 6.0: 6.6, 8.1 y 9.6 ton/A",
    limits: "Suelos con mucho aluminio intercambiable; en arenas pide demasiado. De memoria.",
    wouldChange: "La tabla impresa, o la cifra de cal del propio laboratorio.",
  },
  "lime.exchangeable-acidity": {
    finding:
      "Para pH 7.0, 1000 lb/A por cada meq de acidez intercambiable; para 6.5, 840 lb/A por cada uno cuando la acidez pasa de 4 meq, si no 2000 lb/A.",
    design: "Guía de agronomía.",
    size: null,
    effect: "6 meq: 6000 y 5040 lb/A",
    limits:
      "7 pulgadas, dos metas. Por debajo de 2 meq su dosis para 6.5 es mayor que su dosis para 7.0; para 7.0 se da la mayor.",
    wouldChange: "Un pH tampón de la misma muestra.",
  },
  "lime.no-coefficients": {
    finding:
      "Las soluciones tampón Sikora, Mehlich modificada y Woodruff están en uso, pero no se hallaron publicados sus coeficientes.",
    design: "Páginas de laboratorios y un resumen.",
    size: null,
    effect: null,
    limits:
      "Un pH tampón así no se lee, y se pide otra medición; no se toma nada prestado de otra solución tampón.",
    wouldChange: "Los coeficientes publicados.",
  },
  "lime.depth": {
    finding: "La cal crece en proporción a la profundidad a la que se incorpora.",
    design: "Aritmética.",
    size: null,
    effect: "8.1 ton/A para 8 in son 6.08 para 6 in",
    limits: "La capa de la muestra se toma como la capa encalada, entre 10 y 25 cm (práctica común).",
    wouldChange: "La profundidad a la que de verdad labra el productor.",
  },
  "lime.quality": {
    finding:
      "Las dosis son de carbonato de calcio puro y fino; la de un material es esa dividida entre su valor neutralizante y su finura.",
    design: "Aritmética de valores de laboratorio; los valores de las clases puras son de memoria.",
    size: null,
    effect: "4 ton con ENP 1600 son 5.0; una necesidad de 5 con 70 % es 7.14 (impreso 7)",
    limits:
      "Una cal sin analizar se toma como su clase pura y fina, y pocas lo son. De memoria: dolomita 109, cal hidratada 136, cal viva 179, yeso 0.",
    wouldChange: "El ENV, ECCE o ENP de la etiqueta.",
  },
  "lime.fineness": {
    finding:
      "Lo que pasa la malla 100 cuenta entero; entre las mallas 60 y 100, 0.8; entre las mallas 20 y 60, 0.4; lo más grueso, nada.",
    design:
      "Esquema de Nueva York. Minnesota tamiza con mallas 8, 20 y 60; de los pesos de Ohio se vieron dos.",
    size: null,
    effect: "98, 75, 55 % pasa las mallas 20, 60, 100: 80.2 % efectiva",
    limits: "Lo que actúa en pocos años. Cada estado da sus propios pesos a sus tamices.",
    wouldChange: "El esquema del propio estado.",
  },
  "lime.still-working": {
    finding:
      "De la cal dada antes se gasta 8 % al mes en suelo mineral, 16 % en orgánico; el resto se resta de la necesidad.",
    design: "Práctica de laboratorio.",
    size: null,
    effect: "después de seis meses 52 % de ella todavía va a actuar",
    limits: "De Carolina del Norte, usada aquí para todos los métodos.",
    wouldChange: "Un análisis un año después de encalar.",
  },
  "lime.splitting": {
    finding: "De 11 a 20 lb/100 pies² de cal se dan en dos partes con medio año entre ellas, más en tres.",
    design: "Informe de laboratorio.",
    size: null,
    effect: null,
    limits:
      "La página imprime libras por superficie del informe; los 100 pies² se toman de sus otras cifras.",
    wouldChange: "Una cifra para labranza de finca.",
  },
  "lime.dolomitic": {
    finding:
      "Donde el magnesio está bajo y toca encalar la cal es dolomítica; donde no toca encalar se dan 25 lb/A de magnesio.",
    design: "Reglas de extensión.",
    size: null,
    effect: null,
    limits:
      "Bajo según la guía de su extractante; los 50 ppm de Ohio se leen para Mehlich-3 y acetato de amonio, y su página no nombra ninguno.",
    wouldChange: "Una guía de la propia región.",
  },
  "lime.gypsum": {
    finding: "Calcio por debajo de 800 lb/A con pH 6.5 o más: 1000 lb/A de yeso.",
    design: "Regla de extensión.",
    size: null,
    effect: null,
    limits: "Georgia, solo Mehlich-1. El yeso no cambia el pH.",
    wouldChange: "Un límite para el calcio por otro extractante.",
  },
  "lime.months": {
    finding: "La caliza molida necesita de 6 a 12 meses.",
    design: "Guía de extensión.",
    size: null,
    effect: null,
    limits:
      "Suelo húmedo y cal bien mezclada. La cal viva y la hidratada actúan más rápido; cuánto más, no se halló.",
    wouldChange: "Una lectura de pH medio año después de esparcirla.",
  },
  "lime.sulfur": {
    finding:
      "Una unidad de pH toma 10, 15 y 20 lb de azufre por 1000 pies² en franco arenoso, franco y franco arcilloso.",
    design:
      "Página de jardinería, de segunda mano; lo menor publicado, y el valor por defecto, porque el azufre no se puede quitar.",
    size: null,
    effect: "49, 73 y 98 g/m2",
    limits: "No se imprime profundidad; se toman 15 cm. No en suelo con cal libre.",
    wouldChange: "Una prueba en frasco del propio suelo, o una cifra de azufre de un laboratorio.",
  },
  "lime.sulfur-rhs": {
    finding:
      "De pH 7.0-7.5 a 6.0-6.5 en 15 cm: 135 g/m2 de azufre en arena, 270 en arcilla; de sulfato ferroso, ocho veces el peso.",
    design: "Consejo de una sociedad a jardineros.",
    size: null,
    effect: "de dos a tres veces las otras cifras",
    limits: "Un solo paso; el franco se toma a la mitad entre los dos.",
    wouldChange: "Una prueba en frasco del propio suelo.",
  },
  "lime.sulfur-handbook": {
    finding:
      "A pH 6.5 desde 7.5: 500, 800 y 1000 lb/A de azufre en arena, franco y arcilla; desde 8.5, de 2000 a 3000.",
    design: "Tabla de manual, de memoria.",
    size: null,
    effect: null,
    limits: "De memoria; se muestra junto al valor por defecto y nunca en su lugar.",
    wouldChange: "La tabla impresa.",
  },
  "lime.free-lime": {
    finding: "El suelo que hace espuma con vinagre tiene cal libre, y no se debe acidificar.",
    design: "Consejo de una sociedad, y aritmética; los pesos son de memoria.",
    size: null,
    effect: "disolver 1 % de cal en 15 cm de suelo toma 6 t/ha de azufre",
    limits: "La prueba de la espuma no ve un poco de cal, ni la dolomita en frío.",
    wouldChange: "Una cifra de carbonato de un laboratorio.",
  },
};
