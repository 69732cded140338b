/** What shed says, in Spanish. */
export const shed: Record<string, string> = {
  "shed.not.no-demands":
    "Ninguna plantación de esta finca tiene calculada una necesidad que la bodega pueda atender.",
  "shed.not.nothing-asked": "Ninguna plantación pide nada más de la bodega.",
  "shed.missing.shed": "Qué tiene la bodega, y qué se puede comprar a qué precio y en qué saco.",
  "shed.missing.shed-moves":
    "{plantings, plural, one {Una plantación todavía necesita} other {# plantaciones todavía necesitan}} alimento, y no está anotado ningún material.",
  "shed.decision.buy":
    "Compre por {cost}: con lo que tiene la bodega eso alimenta todas las plantaciones al menor costo.",
  "shed.decision.buy-unpriced":
    "Compre por {cost}, y además lo que aquí no tiene precio: eso alimenta todas las plantaciones.",
  "shed.decision.in-hand": "No compre nada: la bodega tiene lo que todavía necesitan todas las plantaciones.",
  "shed.decision.in-hand-unpriced":
    "No compre nada: la bodega tiene lo que todavía necesitan todas las plantaciones.",
  "shed.decision.cannot-be-met":
    "No se puede cumplir con todo: a {short} de {plantings, plural, one {# plantación} other {# plantaciones}} {short, plural, one {le} other {les}} falta. El plan al que menos le falta cuesta {cost}.",
  "shed.decision.cannot-be-met-unpriced":
    "No se puede cumplir con todo: a {short} de {plantings, plural, one {# plantación} other {# plantaciones}} {short, plural, one {le} other {les}} falta. El plan al que menos le falta cuesta {cost}, y además lo que aquí no tiene precio.",
  "shed.step.buy-bags":
    "Compre {bags, plural, one {# saco} other {# sacos}} de {material} ({grade}), de {bag} cada uno: {cost}. Sobran {spare}.",
  "shed.step.buy-loose": "Compre {kg} de {material} ({grade}): {cost}.",
  "shed.step.hours":
    "Darlo pide al menos {givings, plural, one {# aplicación} other {# aplicaciones}}, cerca de {hours} según lo que tomó una aquí.",
  "shed.step.labour":
    "Darlo pide al menos {givings, plural, one {# aplicación} other {# aplicaciones}}, cerca de {hours} según lo que tomó una aquí: {wages} con el salario de la oficina, {sum} con los materiales.",
  "shed.change.lacks-hours":
    "Nadie anotó cuánto tarda aquí una aplicación, así que el trabajo no está en ningún costo: los minutos junto a una aplicación lo dirían.",
  "shed.change.lacks-wage": "La oficina no fijó un salario, así que las horas no tienen precio.",
  "shed.step.unpriced":
    "Hacen falta {kg} más de {material} ({grade}) de los que tiene la bodega. Lo que cuesta no está anotado: anote el precio.",
  "shed.step.uncounted":
    "Hacen falta {kg} de {material} ({grade}). Cuánto hay, y cuánto costaría más, no está anotado: anótelo.",
  "shed.step.take":
    "Tome {kg} de {material} ({grade}) de la bodega; quedan {left}. Ya está pagado y aquí no cuesta nada.",
  "shed.step.short": "A la plantación {planting} le faltan {rate} de {nutrient}.",
  "shed.step.conflicts":
    "Qué demandas no pueden valer todas, y el menor cambio con que todo cabe, está en las tablas de abajo.",
  "shed.condition.floor":
    "al menos {rate} de {nutrient} para la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.ceiling":
    "a lo más {rate} de {nutrient} para la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.label":
    "lo más que permite la etiqueta de {material} ({grade}), {rate}, en la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.stock":
    "{kg} de {material} ({grade}) en la bodega, y no hay más que comprar a un precio conocido",
  "shed.condition.chloride":
    "a lo más {value} de cloruro en la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.salt":
    "a lo más {value} de sal, como nitrato de sodio, en la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.ammonium":
    "a lo más {value} % del nitrógeno como amonio o urea en la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.ca-mg":
    "al menos {value} de calcio por uno de magnesio, en equivalentes, en la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.condition.ca-k":
    "al menos {value} de calcio por uno de potasio, en equivalentes, en la plantación {planting}{others, plural, =0 {} one { y una igual} other { y # iguales}}",
  "shed.why.in-stock": "Entra: está en la bodega y pagado.",
  "shed.why.in-bought":
    "Entra: {count, plural, =0 {afloja un límite al menor costo} other {con los otros trae {nutrients} al menor costo}}.",
  "shed.why.in-unpriced": "Entra: nada con precio conocido puede hacerlo sin él.",
  "shed.why.stock-used-up": "Se usa todo.",
  "shed.why.label-reached": "La etiqueta no permite más.",
  "shed.why.not-allowed": "Queda fuera: {why}.",
  "shed.why.not-listed": "Queda fuera: ninguna plantación lo tiene entre lo que ahí se puede usar.",
  "shed.why.no-stock-no-price": "Queda fuera: no hay en la bodega, ni precio para comprarlo.",
  "shed.why.no-price": "Queda fuera: no se conocen sus existencias o su precio, y otros pueden hacerlo.",
  "shed.why.unknown-chloride":
    "Queda fuera: una plantación limita el cloruro, y nada dice cuánto lleva este. Su etiqueta o su fabricante puede decirlo.",
  "shed.why.unknown-salt":
    "Queda fuera: una plantación limita la sal, y no se conoce su índice de sal. Su etiqueta o su fabricante puede decirlo.",
  "shed.why.brings-nothing": "Queda fuera: no trae nada de lo que se pide.",
  "shed.why.too-dear": "Queda fuera: un kilogramo cuesta {by} más de lo que ahorraría.",
  "shed.why.whole-bag": "Queda fuera: una parte de un saco convendría, un saco entero no.",
  "shed.why.bound": "Queda fuera: empujaría contra un límite que ya se alcanzó:",
  "shed.why.not-needed": "Queda fuera: lo que trae está cubierto.",
  "shed.left-out.another-chosen": "ahí se escogió otro material",
  "shed.left-out.not-certified": "no se permite en suelo certificado",
  "shed.left-out.proof-expired": "venció la prueba de su uso en suelo certificado",
  "shed.left-out.no-proof": "nada dice hasta cuándo está probado su uso en suelo certificado",
  "shed.left-out.not-soluble": "no se disuelve del todo y no puede pasar por líneas de goteo",
  "shed.left-out.raw-manure":
    "es estiércol crudo, que se esparce antes de las plantas; la regla de estiércol dice cuándo todavía se puede",
  "shed.left-out.liming-material": "encala el suelo y se juzga por el pH del suelo",
  "shed.left-out.no-food": "no tiene nada de lo que se pide",
  "shed.left-out.soil-ph": "el pH del suelo habla en contra",
  "shed.left-out.ash-with-ammonium":
    "lleva amonio o urea, y ahí se esparció ceniza o cal hace menos de un mes",
  "shed.ends":
    "Termina con un precio nuevo, una entrega, algo dado, o la necesidad cambiada de una plantación.",
  "shed.stakes":
    "De esto depende solo el dinero; lo que pierde una plantación a la que le falta lo dice su propia fertilización.",
  "shed.limit.prices":
    "Los precios son los anotados aquí. El flete, el almacenaje y lo demás que hace un material no están en ellos, y el menor costo es el de los materiales: el trabajo se calcula al lado.",
  "shed.limit.search":
    "Los sacos enteros se buscaron hasta una cuenta fijada: otro plan puede costar hasta {gap} menos. Ninguno cuesta menos de {least}.",
  "shed.limit.weights":
    "Lo que menos falta se cuenta como la parte de cada falta en lo pedido, por superficie; N, P2O5 y K2O pesan {main}, los otros {others} (práctica común).",
  "shed.change.prices": "Otro precio u otro saco puede hacer más barata otra mezcla.",
  "shed.change.stock":
    "Un kilogramo más de {material} ({grade}) en la bodega ahorraría {worth}, si los sacos se pudieran partir.",
  "shed.planting": "Plantación {planting}",
  "shed.material": "{material} ({grade})",
  "shed.nutrient": "{nutrient}",
  "shed.table.shares": "Lo que recibe cada plantación",
  "shed.table.planting": "plantación",
  "shed.table.material": "material",
  "shed.table.amount": "cantidad",
  "shed.table.rate": "en suelo cultivado",
  "shed.table.from-stock": "de la bodega",
  "shed.table.why-title": "Por qué cada material entra o queda fuera",
  "shed.table.why": "por qué",
  "shed.table.supplied": "Dado y pedido",
  "shed.table.nutrient": "nutriente",
  "shed.table.least": "al menos",
  "shed.table.most": "a lo más",
  "shed.table.given": "dado",
  "shed.table.binding": "Lo que mantiene el costo donde está",
  "shed.table.limit": "límite",
  "shed.table.by": "uno más",
  "shed.table.saves": "ahorra, con estos sacos",
  "shed.table.saves-split": "ahorra, si los sacos se pudieran partir",
  "shed.unit.kg": "kg",
  "shed.unit.pct": "% del nitrógeno",
  "shed.unit.ratio": "en la proporción",
  "shed.table.conflicts": "Lo que no puede valer todo",
  "shed.table.nth": "conflicto",
  "shed.table.together": "demandas y límites",
  "shed.table.conflict":
    "{nth}: {count, plural, one {nada de aquí puede cumplirla} other {estas # no pueden valer todas; sin cualquiera de ellas las otras sí}}",
  "shed.table.relaxation": "El menor cambio con que todo cabe",
  "shed.table.change": "cambio",
  "shed.table.change-less": "{by} menos",
  "shed.table.change-more": "{by} más",
  "shed.chart.materials": "De dónde viene cada material",
  "shed.chart.amount": "cantidad",
  "shed.chart.from-stock": "de la bodega",
  "shed.chart.bought": "comprado",
  "shed.chart.supplied": "{nutrient} dado y pedido",
  "shed.chart.rate": "en suelo cultivado",
  "shed.chart.given": "dado",
  "shed.chart.least": "pedido",
};
