import type { ClaimWords } from "../../../evidence/types.ts";

export const missing: Record<string, ClaimWords> = {
  "missing.variance": {
    finding:
      "Lo que se espera que saber un dato de entrada le quite a la varianza de una respuesta es su índice de primer orden, estimado con pares de sorteos.",
    design:
      "Método estadístico, leído en manuales de bibliotecas de programas; su función de prueba de memoria, sus índices calculados a mano.",
    size: null,
    effect: "Función de Ishigami, a 7, b 0.1: 0.314, 0.442 y 0",
    limits:
      "Un valor esperado sobre datos de entrada que se toman como independientes. Con 64 pares una parte tiene una incertidumbre de cerca de 0.1 a 0.2.",
    wouldChange:
      "Datos de entrada que se sabe que se mueven juntos, como el pH y el pH de la solución tampón de una misma muestra.",
  },
  "missing.retest": {
    finding:
      "Una segunda muestra de un campo, tomada y analizada de nuevo, difiere en 10 % en P, K y Mg y en 0.1 en pH, en desviaciones estándar.",
    design:
      "Muestreo repetido de campos de productores en los Países Bajos; se leyó el resumen de los autores.",
    size: "campos de productores muestreados dos veces; el resumen no los cuenta",
    effect: "10 % y 0.1 de pH",
    limits:
      "De muestras mezcladas, tomadas por gente con práctica y analizadas en un solo laboratorio. El cambio con los años que aquí se añade es práctica común.",
    wouldChange: "Las repeticiones del propio laboratorio, o dos muestras de la misma cama.",
  },
  "missing.texture": {
    finding:
      "Una clase de textura hallada al tacto coincide con la del laboratorio en la mitad de los casos, y cuando falla suele ser por poco.",
    design: "598 texturas de campo contra análisis de laboratorio, Maryland.",
    size: "598 muestras",
    effect: "50 % coinciden; 67 % a no más de 4 % de la clase",
    limits:
      "Al tacto de científicos del suelo. Que el resto esté en clases vecinas, y el valor más probable en el medio, es práctica común.",
    wouldChange: "Capacidad de campo y punto de marchitez de la propia cama.",
  },
  "missing.uniformity": {
    finding: "Los sistemas de riego en uso riegan menos parejo de lo que se ofrece al vender los nuevos.",
    design: "Evaluaciones de campo de sistemas en caña de azúcar, cinco regiones de Sudáfrica.",
    size: "sistemas en cinco regiones",
    effect:
      "uniformidad media del cuarto más bajo: microirrigación 73 %, aspersores 57 a 67 %, pivotes centrales 81 %",
    limits:
      "La uniformidad limita la eficiencia y no es lo mismo. El ancho que se toma, 10 puntos hacia cada lado, y 10 % para el caudal de una válvula son práctica común.",
    wouldChange: "Vasos y un medidor en la propia válvula de la finca.",
  },
  "missing.soil-temperature": {
    finding:
      "El suelo a 10 cm modelado solo con el aire falla por más de un grado; la humedad del suelo y la nieve le quitan 0.6 C al error.",
    design: "87 estaciones de las Grandes Llanuras, modelo ajustado antes de 2015, probado en 2015 a 2019.",
    size: "87 estaciones",
    effect: "0.6 C, que llaman la mitad del error",
    limits:
      "Otro modelo que el usado aquí, medias diarias bajo el pasto de las estaciones. Los 1.5 C que aquí se toman son práctica común.",
    wouldChange: "Las lecturas de esta misma cama: tres días de ellas ya sustituyen la cifra.",
  },
  "missing.water-nitrate": {
    finding:
      "El nitrato en pozos va de casi nada a más del límite del agua para beber, según el suelo y la agricultura de alrededor.",
    design: "Pozos de menos de 100 ft de hondo en los Estados Unidos, muestreados hasta 1992.",
    size: null,
    effect:
      "mediana 0.2 mg/L donde el riesgo es bajo, 4.8 mg/L donde es alto; por encima del límite en 3 y 25 % de los pozos",
    limits: "Pozos, no estanques ni red. La forma entre esas cifras es práctica común.",
    wouldChange: "Una tira de prueba en el agua de la propia finca.",
  },
};
