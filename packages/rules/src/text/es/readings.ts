import { readings as english } from "../en/readings.ts";

/** A source is cited as it is printed; that there is none is said in the reader's language. */
const CITED = Object.entries(english).flatMap(([key, text]) =>
  /^reading\.[\w.-]+\.from$/.test(key) && key !== "reading.from.gap"
    ? [
        [
          key,
          text
            .replace(
              "Common practice of the trade; no published source is claimed.",
              "Práctica común del oficio; no se afirma ninguna fuente publicada.",
            )
            .replace("Recalled, not re-read.", "Recordado, no leído de nuevo.")
            .replaceAll("Abstract.", "Resumen."),
        ] as const,
      ]
    : [],
);

/** Claims that an answer sets side by side, in Spanish. */
export const readings: Record<string, string> = {
  ...Object.fromEntries(CITED),
  "reading.title": "Lo que está publicado, y lo que hace el oficio",
  "reading.column.side": "Lectura",
  "reading.column.finding": "Lo que dice",
  "reading.column.from": "De dónde",
  "reading.column.design": "Cómo se halló, y cuánto hay",
  "reading.column.effect": "Qué tan grande",
  "reading.column.limits": "Dónde no vale",
  "reading.side.practice": "Oficio ({grade})",
  "reading.side.practice-in-force": "Oficio ({grade}), se sigue aquí",
  "reading.side.published": "Publicado ({grade})",
  "reading.side.published-in-force": "Publicado ({grade}), se sigue aquí",
  "reading.side.gap": "Ningún estudio hallado",
  "reading.from.gap": "Se buscó, y no se halló ninguno.",
  "reading.effect.none": "No se dice.",
  "reading.grade.strong": "fuerte",
  "reading.grade.moderate": "moderado",
  "reading.grade.weak": "débil",
  "reading.grade.practice": "práctica",
  "reading.setting-depth.trade-rule.finding":
    "La regla del oficio es no enterrar los pimientos: echan pocas raíces en el tallo, y un tallo leñoso enterrado se pudre.",
  "reading.setting-depth.trade-rule.design":
    "Práctica del oficio; guías de memoria permiten las hojas de semilla o la primera hoja verdadera",
  "reading.setting-depth.trade-rule.limits":
    "No se halló ningún ensayo de pudrición del tallo enterrado en pimiento.",
  "reading.setting-depth.lodging.finding":
    "Puestos hasta las hojas de semilla o la primera hoja verdadera, los pimientos se acamaron menos que al nivel del cepellón; en Massachusetts la cosecha no cambió.",
  "reading.setting-depth.lodging.design":
    "Ensayos de campo de tres profundidades en Florida y Massachusetts, tres variedades (cinco ensayos)",
  "reading.setting-depth.lodging.effect":
    "Más fruto rojo en uno de dos años; el suelo junto a las raíces, más frío mientras más hondo estaban.",
  "reading.setting-depth.lodging.limits":
    "Plantas de tallo verde. En una primavera fresca el suelo más hondo es más frío.",
  "reading.setting-depth.georgia.finding":
    "'Jupiter' rindió más por planta puesta hasta las hojas de semilla o la primera hoja verdadera; 'Camelot' mostró solo una tendencia.",
  "reading.setting-depth.georgia.design":
    "Dos sitios, tres repeticiones, cinco plantas por parcela (una temporada)",
  "reading.setting-depth.georgia.limits": "Una primavera cálida; una temporada.",
  "reading.setting-depth.stem-roots.finding":
    "No se halló ningún estudio de raíces que crezcan de tallos de pimiento enterrados. No se prometen raíces de más.",
  "reading.setting-depth.stem-roots.design": "Un hueco en lo publicado que se vio",
  "reading.setting-depth.stem-roots.limits": "Que falte un estudio no prueba nada en ningún sentido.",
  "reading.setting-depth.cold-soil.finding":
    "Las guías piden de 16 a 18 °C a 10 cm; se toma el extremo cálido antes de que un tallo vaya más hondo.",
  "reading.setting-depth.cold-soil.design":
    "Guías de memoria; un ensayo midió suelo más frío a mayor profundidad",
  "reading.setting-depth.cold-soil.limits": "Ninguna fuente fija una temperatura para plantar hondo.",
  "reading.setting-depth.grafting.finding":
    "Los portainjertos 'Foc' y 'Charlot' aguantaron Phytophthora capsici tan bien como SCM-334, y las plantas injertadas en ellos dieron más fruto.",
  "reading.setting-depth.grafting.design":
    "Dos variedades en dos portainjertos, contra plantas sin injertar e injertadas en sí mismas; inoculaciones (un estudio, dos variedades)",
  "reading.setting-depth.grafting.effect": "Cosecha vendible mayor en una de dos variedades",
  "reading.setting-depth.grafting.limits":
    "Lo que da un portainjerto depende de la variedad injertada. Que una unión bajo el suelo eche raíces y lo pierda es práctica del oficio.",
  "reading.topping.practice.finding":
    "Quitada una vez, con seis a ocho hojas verdaderas, la punta trae flores más tempranas y más ramas en el suelo en una temporada fresca, y poco en macetas.",
  "reading.topping.practice.design": "Práctica del oficio",
  "reading.topping.practice.limits":
    "No se halló ningún ensayo que lo muestre. Los productores no coinciden.",
  "reading.topping.chitwan.finding":
    "El chile despuntado 15 y 30 días después del trasplante rindió más, en plantas más bajas con más ramas, y floreció más tarde; despuntado dos veces, más tarde que una.",
  "reading.topping.chitwan.design":
    "Bloques al azar en una finca, siete tratamientos, tres repeticiones (una finca, una temporada)",
  "reading.topping.chitwan.effect":
    "Cosecha +118.65 %, frutos por planta +77.56 %, peso del fruto +27.57 %, largo del fruto +18.04 %; altura -32.70 %",
  "reading.topping.chitwan.limits":
    "Chile, una temporada cálida y larga, despuntado dos veces. Frutos por peso no dan la cosecha publicada, así que las cifras tienen bases distintas y no se promete ninguna.",
  "reading.topping.baitadi.finding":
    "De chile despuntado 20, 30 o 40 días después del trasplante, 30 días rindió más; sin despuntar, menos.",
  "reading.topping.baitadi.design":
    "Bloques al azar, cuatro tratamientos, cinco repeticiones, una variedad (un sitio, una temporada)",
  "reading.topping.baitadi.effect": "Solo el orden: 30 días lo más, sin despuntar lo menos",
  "reading.topping.baitadi.limits":
    "Chile en una temporada cálida y larga. El resumen no publica cosechas ni días a la flor.",
  "reading.topping.lamjung.finding":
    "El chile despuntado 25 y 40 días después del trasplante rindió más; toda parcela despuntada floreció más tarde, la despuntada dos veces al último.",
  "reading.topping.lamjung.design":
    "Bloques al azar en fincas, siete tratamientos, tres repeticiones (un distrito, una temporada)",
  "reading.topping.lamjung.effect": "Solo el orden: despuntado dos veces lo más, sin despuntar lo menos",
  "reading.topping.lamjung.limits":
    "Chile en una temporada cálida y larga. El resumen no dice cuántos días más tarde llegó la flor.",
  "reading.topping.lalitpur.finding":
    "El pimiento despuntado 30 y 45 días después del trasplante rindió más; despuntado una vez a los 40 o 45 días floreció antes que los otros.",
  "reading.topping.lalitpur.design":
    "Bloques al azar, siete tratamientos, tres repeticiones, de marzo a junio (un sitio, una temporada)",
  "reading.topping.lalitpur.effect": "Lo mejor, 6.93 t/ha",
  "reading.topping.lalitpur.limits":
    "Una primavera cálida. Despuntado de 30 a 45 días, cuando otras plantas muestran botones; las cosechas enteras son bajas.",
  "reading.topping.shoot-pruned.finding":
    "De dos chiles podados en brote o raíz, las plantas sin podar tardaron más en florecer: al revés que en los ensayos de despunte.",
  "reading.topping.shoot-pruned.design":
    "Bloques al azar en una finca, cuatro maneras de podar, dos variedades, cuatro repeticiones (una finca, una temporada)",
  "reading.topping.shoot-pruned.effect":
    "Sin podar 52.42 días a la primera flor; brote y raíz podados juntos rindieron 11.51 t/ha",
  "reading.topping.shoot-pruned.limits":
    "Chile, de marzo a junio, en el mismo distrito que un ensayo de despunte. El resumen no separa la poda del brote de la de la raíz.",
  "reading.topping.potted-delay.finding":
    "Dos pimientos ornamentales en maceta, cortados por encima de las primeras hojas con cuatro a cinco pares de hojas verdaderas, llegaron 10 y 15 días más tarde al fruto maduro.",
  "reading.topping.potted-delay.design":
    "Macetas de 900 mL en invernadero, cortados contra sin cortar, juzgados con 30 % de fruto maduro (un estudio, dos genotipos)",
  "reading.topping.potted-delay.effect": "15 días más tarde en un genotipo, 10 en el otro",
  "reading.topping.potted-delay.limits":
    "Cortados más que una punta y aclarados una segunda vez; plantas ornamentales en macetas chicas. Es el único número de días hallado.",
  "reading.topping.stems.finding":
    "Pimientos dulces de invernadero llevados con cuatro tallos rindieron más; con dos tallos su fruto fue el mejor.",
  "reading.topping.stems.design":
    "Factorial en bloques al azar, de dos a cuatro tallos, tres repeticiones (un estudio, dos variedades)",
  "reading.topping.stems.effect":
    "Solo el orden; por planta 2263 g en una variedad sobre todos los tratamientos",
  "reading.topping.stems.limits":
    "Tallos guiados con cuerdas bajo vidrio, que no es la punta quitada a una planta joven.",
  "reading.topping.gap.finding":
    "No se halló ningún ensayo de campo de despunte para temporadas cortas, y ninguno para pimientos dulces al aire libre en un clima fresco.",
  "reading.topping.gap.design": "Un hueco en lo publicado que se vio",
  "reading.topping.gap.limits": "Que falte un ensayo no prueba nada en ningún sentido.",
  "reading.topping.who-not.finding":
    "Una planta parada por el frío, sin endurecer, mojada o con manchas o mosaico se deja en paz; un corte lleva virus y bacterias de planta en planta.",
  "reading.topping.who-not.design": "Práctica del oficio",
  "reading.topping.who-not.limits": "No se halló ningún ensayo de despuntar plantas así.",
};
