/** Each rule's question and what it needs, in Spanish, in the order of the rule's own. */
export const ruleWords: Record<string, { question: string; needs: string[] }> = {
  "set-out": {
    question: "¿Cuándo pueden salir estas plántulas?",
    needs: [
      "al menos ocho años de mínimas y máximas diarias",
      "pronóstico de no más de un día, donde lo hay",
      "noches pareadas en el sitio y en su estación",
      "temperatura del suelo a 10 cm",
      "cuenta de hojas y endurecimiento",
      "cubiertas y acolchados con fechas",
      "días a madurez, meta de cosecha, precio, salario y las horas propias de la finca para cubiertas, para pesar la espera contra la protección",
    ],
  },
  "cold-record": {
    question: "¿Qué les hizo el frío a estas plantas?",
    needs: [
      "temperaturas medidas junto a las plantas, si no mínimas y máximas diarias del sitio",
      "cubiertas con fechas",
      "notas sobre el punto de crecimiento y sobre hojas nuevas",
      "plantas de repuesto",
    ],
  },
  "cold-tonight": {
    question: "¿Hará daño esta noche?",
    needs: [
      "pronóstico de no más de seis horas, por hora donde lo hay",
      "nubes, viento y punto de rocío de la noche",
      "temperaturas medidas junto a las plantas",
      "noches pareadas en el sitio y en su estación",
      "cubiertas con fechas",
      "notas sobre botones, flores y fruto",
    ],
  },
  "night-heat": {
    question: "¿Qué hace falta para mantener la temperatura de la noche en este invernadero?",
    needs: [
      "material y superficie de la cubierta, piso y volumen del invernadero",
      "la primera y la última noche con calefacción",
      "ocho años de extremos diarios, o un pronóstico",
      "con qué se calienta, su potencia y el precio del combustible",
    ],
  },
  hardening: {
    question: "¿Cómo se endurecen estas plántulas?",
    needs: [
      "el día previsto para trasplantar, u ocho años de mínimas y máximas diarias",
      "pronóstico de no más de un día, con viento, donde lo hay",
      "notas sobre endurecimiento, puntos de crecimiento y hojas nuevas",
    ],
  },
  "sow-by": {
    question: "¿Cuándo hay que sembrar estas semillas, y cuántas?",
    needs: [
      "el día previsto para trasplantar, u ocho años de mínimas y máximas diarias",
      "temperatura del sustrato de la semilla",
      "germinación del sobre o de una prueba, y plántulas que suelen perderse",
      "plantas que se quieren",
    ],
  },
  irrigate: {
    question: "¿Cuánta agua tiene que dar esta válvula, y cuándo?",
    needs: [
      "temperaturas diarias desde el trasplante, con lluvia, humedad, viento y sol donde se conocen",
      "textura del suelo, o capacidad de campo y punto de marchitez",
      "día de trasplante, cubierta y acolchado de cada cama",
      "caudal y eficiencia de la válvula, y qué se regó",
      "donde los hay: sensores de suelo, cobertura del suelo vista, análisis de suelo y de agua, la probabilidad de lluvia",
    ],
  },
  hotter: {
    question: "El productor quiere más picor: ¿qué puede hacer el estrés, y a qué precio?",
    needs: [
      "un déficit pedido, con su primer día, y una válvula que no riega nada más",
      "cuajado anotado, y notas de marchitez, pudrición apical, golpe de sol y ácaros",
      "temperaturas diarias y un pronóstico",
      "textura del suelo, o capacidad de campo y punto de marchitez",
      "meta de cosecha y precio, para saber lo que vale",
    ],
  },
  salt: {
    question: "¿Qué cuestan esta agua y este suelo?",
    needs: [
      "conductividad del suelo, con su extracción, y la textura del suelo",
      "un análisis de agua: conductividad, pH, alcalinidad, Ca, Mg, Na, Cl, B, nitrato",
      "meta de cosecha y precio, para saber lo que vale",
    ],
  },
  "too-hot": {
    question: "¿Hace aquí demasiado calor para flores y fruto, y qué ayuda?",
    needs: [
      "temperaturas medidas junto a las plantas, si no mínimas y máximas diarias del sitio",
      "un pronóstico, con la humedad del aire donde la dice",
      "notas de flores caídas, golpe de sol, pudrición apical y marchitez al amanecer",
      "qué se regó y cuándo, lluvia, cubiertas y acolchado con fechas",
      "análisis de suelo y de agua con calcio",
    ],
  },
  "soil-reading": {
    question: "¿Qué dice este análisis de suelo?",
    needs: [
      "un análisis de suelo con el extractante de cada valor",
      "qué se muestreó, a qué profundidad, y cuándo",
      "análisis anteriores por el mismo extractante, para ponerlos al lado",
      "una guía de su propia región, donde la oficina tiene una",
    ],
  },
  lime: {
    question: "¿Necesita esta cama cal o azufre, cuánto, de qué, y para cuándo?",
    needs: [
      "un análisis de suelo con pH, y pH de la solución tampón con su método o acidez intercambiable",
      "valor neutralizante y finura de la cal en la bodega",
      "cal dada antes, y cuándo salen plantas la próxima vez",
      "para suelo alcalino: su textura, y si hace espuma con vinagre",
    ],
  },
  feeding: {
    question: "¿Qué se le debe dar a esta plantación, cuándo, y de qué materiales?",
    needs: [
      "una meta de cosecha",
      "día de trasplante, y cuándo se vieron botones y cuajado",
      "un análisis de suelo con extractantes; análisis de hoja, de savia y de nitrato",
      "créditos: leguminosas, estiércol, composta, materia orgánica, nitrato en el agua y el suelo",
      "qué se dio ya, y qué tiene la bodega",
      "el pronóstico; el inyector y sus tanques donde el fertilizante va por el agua",
      "lo que lee la regla cold-record: tras demasiado frío el fertilizante espera",
    ],
  },
  shed: {
    question: "¿Qué tomar de la bodega, y qué comprar, para todas las plantaciones juntas?",
    needs: [
      "lo que cada plantación todavía necesita y lo que se puede usar ahí",
      "lo que tiene la bodega, con etiquetas",
      "precios y tamaños de saco de lo que se puede comprar",
      "lo que tomaron las aplicaciones en esta finca, y el salario",
    ],
  },
  "wood-ash": {
    question: "¿Puede la ceniza de leña dar aquí potasa y cal, cuánta, y cuándo?",
    needs: [
      "ceniza de leña en la bodega: qué se quemó, su análisis, cuánta hay",
      "un análisis de suelo con pH, pH de la solución tampón y potasio con su extractante",
      "una meta de cosecha y el día en que salen las plantas",
      "amonio, urea, cal y ceniza dados hace poco",
    ],
  },
  "manure-timing": {
    question: "¿Cuánto antes de la cosecha se puede dar estiércol crudo?",
    needs: [
      "estiércol que se dio, con su día y si se compostó según la norma",
      "estiércol en la bodega, con su animal y su análisis",
      "días a madurez de la lista de semillas, o el día de la primera cosecha",
      "certificación de la cama; estacas",
    ],
  },
  containers: {
    question: "¿Cuánta agua y cuánto fertilizante piden estas macetas?",
    needs: [
      "cuántas macetas, de qué tamaño, y qué las llena",
      "el pronóstico, o los últimos días de tiempo",
      "el drenaje: su conductividad, su pH y cuánto de un riego escurre",
      "un análisis de agua: conductividad, alcalinidad, nitrato",
      "un fertilizante que se disuelve, y el inyector si lo hay",
    ],
  },
  stage: {
    question: "¿En qué etapa está esta plantación, y cuándo estará en la siguiente?",
    needs: [
      "el día de la siembra, y notas de las etapas vistas",
      "días de tiempo desde el trasplante; la temperatura donde siguen creciendo las plántulas",
      "años de mínimas y máximas diarias",
      "los días a madurez de la variedad, las primeras cosechas anteriores de esta finca, su temperatura base",
    ],
  },
  ripe: {
    question: "¿Cuándo se cosecha el fruto de esta plantación, y cómo se conserva?",
    needs: [
      "cuándo se cosecha su fruto: verde o con color",
      "notas de la primera flor, del verde maduro y del color; qué se cosechó",
      "días de tiempo desde el trasplante y años de mínimas y máximas diarias",
      "pronóstico de no más de un día; aplicaciones con los plazos de sus etiquetas",
    ],
  },
  "setting-depth": {
    question: "¿A qué profundidad se deben poner estas plantas?",
    needs: [
      "tallo verde o leñoso",
      "si las plantas están espigadas",
      "temperatura del suelo a 10 cm",
      "si están injertadas",
      "qué lectura sigue la oficina",
    ],
  },
  topping: {
    question: "¿Se debe quitar la punta a estas plantas?",
    needs: [
      "cuenta de hojas verdaderas",
      "si están endurecidas, frenadas por el frío o enfermas",
      "días a madurez, o las primeras cosechas anteriores de esta finca",
      "al menos ocho años de mínimas y máximas diarias",
      "qué lectura sigue la oficina",
    ],
  },
  "look-closer": {
    question: "¿Qué mal pueden tener estas plantas?",
    needs: [
      "señales con la parte de la planta, en qué lugar de la cama y qué tan rápido llegaron",
      "tiempo diario de las dos semanas anteriores a ellas",
      "qué se aplicó, fertilizó, encaló y regó",
      "análisis de suelo y de agua",
      "qué hubo en la cama y qué enfermó en ella",
      "fotos",
    ],
  },
  trial: {
    question: "¿Funciona aquí?",
    needs: [
      "qué se compara, y las camas en que está",
      "un valor de cada parcela, o por qué no lo hay",
      "los días en que empezó y terminó",
    ],
  },
  company: {
    question: "¿Quién está junto a quién, y se sostiene el plano?",
    needs: [
      "camas con largo, ancho e hileras; dónde está cada una, y qué válvula la riega",
      "qué hubo en cada cama en las últimas cinco temporadas",
      "plantaciones con plantas, distancia, hileras, altura y primera cosecha",
      "a cuáles se les va a dar menos agua, y de cuáles se guarda semilla",
    ],
  },
  rotation: {
    question: "¿Descansó esta cama lo suficiente para pimientos, y cuándo pueden volver?",
    needs: [
      "qué hubo en la cama en cada una de las últimas cinco temporadas",
      "enfermedades del suelo que se hallaron en ella",
      "la temporada en que se piensan poner en ella pimientos",
    ],
  },
  "what-if": {
    question: "¿Qué escogió el asesor, y qué dicen de eso las reglas?",
    needs: ["lo que el asesor probó en la plantación"],
  },
};
