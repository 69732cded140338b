import type { ClaimWords } from "../../../evidence/types.ts";

export const topping: Record<string, ClaimWords> = {
  "topping.practice": {
    finding:
      "Quitada una vez, con seis a ocho hojas verdaderas, la punta trae flores más tempranas y más ramas en el suelo en una temporada fresca, y poco en macetas.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "No se halló ningún ensayo que lo muestre. Los productores no coinciden.",
    wouldChange: "Un ensayo en el suelo, en una temporada fresca y corta, que cuente los días a la flor.",
  },
  "topping.chitwan": {
    finding:
      "El chile despuntado 15 y 30 días después del trasplante rindió más, en plantas más bajas con más ramas, y floreció más tarde; despuntado dos veces, más tarde que una.",
    design: "Bloques al azar en una finca, siete tratamientos, tres repeticiones",
    size: "una finca, una temporada",
    effect:
      "Cosecha +118.65 %, frutos por planta +77.56 %, peso del fruto +27.57 %, largo del fruto +18.04 %; altura -32.70 %",
    limits:
      "Chile, una temporada cálida y larga, despuntado dos veces. Frutos por peso no dan la cosecha publicada, así que las cifras tienen bases distintas y no se promete ninguna.",
    wouldChange: "Lo mismo en otras fincas, y donde la helada de otoño termina la temporada.",
  },
  "topping.baitadi": {
    finding:
      "De chile despuntado 20, 30 o 40 días después del trasplante, 30 días rindió más; sin despuntar, menos.",
    design: "Bloques al azar, cuatro tratamientos, cinco repeticiones, una variedad",
    size: "un sitio, una temporada",
    effect: "Solo el orden: 30 días lo más, sin despuntar lo menos",
    limits: "Chile en una temporada cálida y larga. El resumen no publica cosechas ni días a la flor.",
    wouldChange: "Repeticiones en varias temporadas, con los días a la flor publicados.",
  },
  "topping.lamjung": {
    finding:
      "El chile despuntado 25 y 40 días después del trasplante rindió más; toda parcela despuntada floreció más tarde, la despuntada dos veces al último.",
    design: "Bloques al azar en fincas, siete tratamientos, tres repeticiones",
    size: "un distrito, una temporada",
    effect: "Solo el orden: despuntado dos veces lo más, sin despuntar lo menos",
    limits: "Chile en una temporada cálida y larga. El resumen no dice cuántos días más tarde llegó la flor.",
    wouldChange: "Días a la flor y al fruto maduro publicados por tratamiento.",
  },
  "topping.lalitpur": {
    finding:
      "El pimiento despuntado 30 y 45 días después del trasplante rindió más; despuntado una vez a los 40 o 45 días floreció antes que los otros.",
    design: "Bloques al azar, siete tratamientos, tres repeticiones, de marzo a junio",
    size: "un sitio, una temporada",
    effect: "Lo mejor, 6.93 t/ha",
    limits:
      "Una primavera cálida. Despuntado de 30 a 45 días, cuando otras plantas muestran botones; las cosechas enteras son bajas.",
    wouldChange: "Lo mismo con los días a la flor publicados contra plantas sin despuntar.",
  },
  "topping.shoot-pruned": {
    finding:
      "De dos chiles podados en brote o raíz, las plantas sin podar tardaron más en florecer: al revés que en los ensayos de despunte.",
    design: "Bloques al azar en una finca, cuatro maneras de podar, dos variedades, cuatro repeticiones",
    size: "una finca, una temporada",
    effect: "Sin podar 52.42 días a la primera flor; brote y raíz podados juntos rindieron 11.51 t/ha",
    limits:
      "Chile, de marzo a junio, en el mismo distrito que un ensayo de despunte. El resumen no separa la poda del brote de la de la raíz.",
    wouldChange: "La poda del brote publicada por sí sola, en varias temporadas.",
  },
  "topping.potted-delay": {
    finding:
      "Dos pimientos ornamentales en maceta, cortados por encima de las primeras hojas con cuatro a cinco pares de hojas verdaderas, llegaron 10 y 15 días más tarde al fruto maduro.",
    design: "Macetas de 900 mL en invernadero, cortados contra sin cortar, juzgados con 30 % de fruto maduro",
    size: "un estudio, dos genotipos",
    effect: "15 días más tarde en un genotipo, 10 en el otro",
    limits:
      "Cortados más que una punta y aclarados una segunda vez; plantas ornamentales en macetas chicas. Es el único número de días hallado.",
    wouldChange: "Días al fruto maduro con una sola punta quitada, en el suelo.",
  },
  "topping.stems": {
    finding:
      "Pimientos dulces de invernadero llevados con cuatro tallos rindieron más; con dos tallos su fruto fue el mejor.",
    design: "Factorial en bloques al azar, de dos a cuatro tallos, tres repeticiones",
    size: "un estudio, dos variedades",
    effect: "Solo el orden; por planta 2263 g en una variedad sobre todos los tratamientos",
    limits: "Tallos guiados con cuerdas bajo vidrio, que no es la punta quitada a una planta joven.",
    wouldChange: "El número de tallos comparado al aire libre.",
  },
  "topping.gap": {
    finding:
      "No se halló ningún ensayo de campo de despunte para temporadas cortas, y ninguno para pimientos dulces al aire libre en un clima fresco.",
    design: "Un hueco en lo publicado que se vio",
    size: null,
    effect: null,
    limits: "Que falte un ensayo no prueba nada en ningún sentido.",
    wouldChange: "Cualquier ensayo así; uno en media cama de esta finca es un comienzo.",
  },
  "topping.who-not": {
    finding:
      "Una planta parada por el frío, sin endurecer, mojada o con manchas o mosaico se deja en paz; un corte lleva virus y bacterias de planta en planta.",
    design: "Práctica del oficio",
    size: null,
    effect: null,
    limits: "No se halló ningún ensayo de despuntar plantas así.",
    wouldChange: "Un ensayo que cuente las plantas infectadas después de cortar con manos limpias y sucias.",
  },
};
