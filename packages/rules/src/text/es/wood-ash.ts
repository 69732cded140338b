/** What wood-ash says, in Spanish. */
export const woodAsh: Record<string, string> = {
  "wood-ash.decision.spread":
    "Sí, un poco: a lo más {kg} de ceniza en los {area} de la cama, entre el {from} y el {to}.",
  "wood-ash.decision.wait":
    "Sí, un poco, pero todavía no: a lo más {kg} de ceniza en los {area} de la cama, entre el {from} y el {to}.",
  "wood-ash.decision.too-late": "Para este cultivo no: ya no queda tiempo en que la ceniza fuera segura.",
  "wood-ash.decision.after-crop":
    "No con plantas en pie. Mantenga seca la ceniza, y pregunte de nuevo cuando termine el cultivo, hacia el {from}.",
  "wood-ash.decision.no-potash-need": "Nada de ceniza: el suelo da la potasa que este cultivo necesita.",
  "wood-ash.decision.no-lime-need": "Nada de ceniza: el suelo no necesita cal ahora, y la ceniza es cal.",
  "wood-ash.decision.cap-reached": "No más ceniza este año: la cama ya recibió lo más que debe.",
  "wood-ash.decision.ph-too-high": "Nada de ceniza: el pH {ph} está por encima de {ceiling}.",
  "wood-ash.decision.not-this-ash": "No: esta ceniza no puede ir en esta cama.",
  "wood-ash.step.spread":
    "Esparza {kg} en los {area} de la cama: {perM2} ({perHa} de la cama; {over} contado sobre el suelo cultivado con sus pasillos).",
  "wood-ash.step.volume": "Eso es cerca de {litres} de ella, suelta.",
  "wood-ash.step.bound-cap": "El tope más estricto publicado para un año fija la cantidad.",
  "wood-ash.step.bound-lime": "Lo que el suelo necesita de cal fija la cantidad.",
  "wood-ash.step.bound-potash": "Lo que al cultivo todavía le falta de potasa fija la cantidad.",
  "wood-ash.step.bound-stock": "Lo que tiene la bodega fija la cantidad.",
  "wood-ash.step.bound-label": "Lo más que permite su etiqueta fija la cantidad.",
  "wood-ash.step.bounds":
    "Se toma lo menor de esto: el tope permite {cap}, la necesidad de cal {lime}, la necesidad de potasa {potash}.",
  "wood-ash.step.caps":
    "Los topes publicados difieren diez veces, de {least} a {most} al año. Se respeta el más estricto: {bed} en esta cama.",
  "wood-ash.step.window":
    "Entre el {from} y el {to}: a más tardar un mes antes de las plantas, porque la ceniza fresca es demasiado salada y cáustica para ellas, y lo que las alimenta ese día puede llevar amonio.",
  "wood-ash.step.after-ammonium":
    "El {day} se dio amonio, urea o estiércol: espere un mes, hasta el {from}, o el nitrógeno se va como amoníaco.",
  "wood-ash.step.after-ammonium-perhaps":
    "Se aconsejó amonio, urea o estiércol para el {day} y nadie dijo si se dio: espere hasta el {from}, o diga que no se dio.",
  "wood-ash.step.planned-ammonium":
    "El plan de fertilización lleva {material}: nada de eso en esta cama hasta un mes después de la ceniza.",
  "wood-ash.step.no-ammonium":
    "Ningún fertilizante de amonio o urea ni estiércol fresco en esta cama hasta un mes después de la ceniza.",
  "wood-ash.step.how":
    "En un día sin viento, sobre suelo húmedo, delgada y pareja, sin terrones ni montones: un montón de ceniza quema por la sal. Rastríllela enseguida, a {depth} de hondo, antes de poner acolchado.",
  "wood-ash.step.potash":
    "Trae {k2oOne, select, yes {{k2oHigh}} other {de {k2oLow} a {k2oHigh}}} de potasa (K2O): {shareOne, select, yes {{shareHigh}} other {de {shareLow} a {shareHigh}}} de los {need} que todavía faltan.",
  "wood-ash.step.phosphate":
    "Trae {p2o5One, select, yes {{p2o5High}} other {de {p2o5Low} a {p2o5High}}} de fosfato (P2O5): {shareOne, select, yes {{shareHigh}} other {de {shareLow} a {shareHigh}}} de lo que todavía falta.",
  "wood-ash.step.phosphate-unneeded":
    "Trae {p2o5One, select, yes {{p2o5High}} other {de {p2o5Low} a {p2o5High}}} de fosfato (P2O5), que ningún análisis pide.",
  "wood-ash.step.lime":
    "Hace el trabajo de {limeOne, select, yes {{limeHigh}} other {{limeLow} a {limeHigh}}} de cal: {shareOne, select, yes {{shareHigh}} other {de {shareLow} a {shareHigh}}} de los {need} que pide el suelo. El resto es de la caliza.",
  "wood-ash.step.ph":
    "El pH del suelo, {now}, pasaría a {one, select, yes {cerca de {high}} other {entre {low} y {high}}}, según la relación de {method}, si se mezcla parejo en {depth} de suelo y se ha disuelto toda.",
  "wood-ash.step.ph-unknown":
    "No se predice qué pH dejaría: la relación de este análisis de suelo no puede decirlo para tan poco.",
  "wood-ash.step.never-for":
    "Nunca sobre plántulas ni hojas jóvenes, nunca donde se siembra semilla, nunca donde habrá papas (sarna), nunca cerca de arándanos, azaleas o rododendros.",
  "wood-ash.step.clean":
    "Solo ceniza de leña limpia y sin tratar. Nada de basura, cartón, carbón mineral, ni de madera pintada, teñida, pegada o tratada a presión.",
  "wood-ash.step.keep-dry":
    "Manténgala seca: la lluvia lava dos tercios de la potasa (queda {leached}), y lo que queda sigue siendo cal.",
  "wood-ash.step.analyse":
    "Hágala analizar por potasa, valor de cal y metales pesados: hasta entonces la limita lo más que hay publicado y se cuenta con lo menos.",
  "wood-ash.step.store":
    "Guarde la ceniza en un bote de metal con tapa sobre suelo desnudo: sus brasas provocan incendios por días.",
  "wood-ash.step.dispose": "Que no llegue a ninguna cama. La autoridad de residuos dice adónde puede ir.",
  "wood-ash.step.ceiling":
    "El pH {ph} está por encima de {least}, el más estricto de los topes publicados, que es el que se respeta; otros llegan a {most}. Donde falta potasa tome otra fuente.",
  "wood-ash.step.at-target":
    "El pH {ph} llegó al {target} desde el que no toca encalar, y la ceniza es cal. Donde falta potasa tome otra fuente.",
  "wood-ash.step.after-crop":
    "La ceniza quema hojas y raíces jóvenes, y hay que rastrillarla. La próxima vez posible es cuando termine este cultivo, hacia el {from}; analice primero el suelo.",
  "wood-ash.step.too-late":
    "Desde el {from} se permitiría, pero el último día antes de estas plantas era el {to}. Manténgala seca para la próxima temporada.",
  "wood-ash.step.no-potash-need":
    "La ceniza se da solo donde también falta potasa. Más de ella estorba al calcio y alimenta la pudrición apical.",
  "wood-ash.step.no-lime-need":
    "Lo encalado antes sigue trabajando, o la solución tampón no halla acidez. Analice de nuevo antes de cualquier ceniza.",
  "wood-ash.step.cap-reached":
    "Un año después de la última ceniza, y con un análisis de suelo nuevo, pregunte otra vez.",
  "wood-ash.step.not-clean":
    "Una ceniza viene de material tratado o mezclado: los metales, el boro y los residuos se quedan en el suelo para siempre. En ninguna cama.",
  "wood-ash.step.manure-ash-certified":
    "Una ceniza es de estiércol quemado: está prohibida en suelo certificado (7 CFR 205.602(a)).",
  "wood-ash.step.manure-ash":
    "Una ceniza es de estiércol quemado: ningún valor publicado vale para ella. Hágala analizar primero.",
  "wood-ash.step.not-certified": "Una ceniza no se permite en el suelo de esta cama.",
  "wood-ash.step.no-proof":
    "De una ceniza nada prueba hasta cuándo se permite en el suelo de esta cama. Anote el último día de la prueba.",
  "wood-ash.step.proof-expired":
    "De una ceniza ya venció la prueba de que se permite en el suelo de esta cama.",
  "wood-ash.method.mehlich": "solución tampón Mehlich",
  "wood-ash.method.adams-evans": "solución tampón Adams-Evans",
  "wood-ash.method.smp": "solución tampón SMP",
  "wood-ash.method.exchangeable-acidity": "acidez intercambiable",
  "wood-ash.not.ended": "La plantación terminó.",
  "wood-ash.not.none": "En la bodega no hay ceniza de leña.",
  "wood-ash.not.containers": "Nada de ceniza en macetas: tan poco suelo no puede con su cal y su sal.",
  "wood-ash.missing.ph":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}Un análisis de suelo de esta cama con su pH. Sin él no se esparce ceniza.",
  "wood-ash.missing.origin":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}Qué se quemó: solo se puede usar ceniza de leña limpia y sin tratar.",
  "wood-ash.missing.goal":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}Una meta de cosecha: de ella sale lo que el cultivo necesita de potasa.",
  "wood-ash.missing.set-out":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}El día en que salen las plantas: la ceniza debe ir un mes antes.",
  "wood-ash.missing.potash":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}El potasio en el análisis de suelo, con su extractante: la ceniza se da solo donde falta potasa.",
  "wood-ash.missing.buffer":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}El pH de la solución tampón del laboratorio con su nombre, o la acidez intercambiable: cuánta cal admite el suelo.",
  "wood-ash.missing.other-buffer":
    "{first, select, yes {La ceniza de leña es cáustica: quema los ojos, la piel y los pulmones. Use gafas de protección, guantes y mascarilla, y nunca la esparza con viento. Solo de leña limpia y sin tratar. } other {}}La acidez intercambiable, o un pH de solución tampón Mehlich, Adams-Evans o SMP: no se hallaron publicados los coeficientes de la solución tampón de este análisis.",
  "wood-ash.missing.moves": "Entre nada y {most} en esta cama.",
  "wood-ash.ends":
    "Termina con un análisis de suelo nuevo, con ceniza, cal, amonio o urea dados, o con plantas trasplantadas.",
  "wood-ash.stakes.spread": "La potasa y la cal compradas harían lo mismo; la ceniza ahorra algo de las dos.",
  "wood-ash.stakes.none": "No se pierde nada por dejarla.",
  "wood-ash.limit.sources":
    "Lo que se sabe de la ceniza viene de columnas y guías de extensión que difieren mucho; no se halló ningún ensayo con pimientos.",
  "wood-ash.limit.cap": "El tope más estricto está publicado para céspedes.",
  "wood-ash.limit.records": "Para el tope del año cuenta solo la ceniza anotada en esta plantación.",
  "wood-ash.limit.shared-stock":
    "Los {stock} de ceniza en la bodega son unas solas existencias para todas las camas: lo que va a recibir otra plantación no se resta aquí. Planéelo una vez.",
  "wood-ash.limit.unanalysed":
    "Las cenizas difieren según la leña, el fuego y la lluvia: de dos a tres veces en potasa y en valor de cal.",
  "wood-ash.limit.predicted":
    "La relación está hecha para caliza, mezclada. La ceniza actúa más rápido y no dura tanto.",
  "wood-ash.limit.old": "La muestra del {day} de {year} tiene más de tres años.",
  "wood-ash.change.analysis": "Un análisis de esta ceniza: potasa, fosfato y valor de cal.",
  "wood-ash.change.test": "Un análisis de suelo más nuevo.",
  "wood-ash.change.potash": "Un análisis de suelo en que el potasio salga corto.",
  "wood-ash.change.ph-too-high": "Un análisis de suelo más nuevo con un pH de 6.0 o menos.",
  "wood-ash.change.no-lime-need":
    "Un análisis de suelo más nuevo con un pH más bajo, u otro pH de meta de su oficina.",
  "wood-ash.change.after-crop": "El día en que se quita esta plantación.",
  "wood-ash.change.not-this-ash": "Ceniza de leña limpia, con lo que se quemó y su análisis anotados.",
  "wood-ash.case.done": "Si la ceniza aconsejada para el {day} se esparció:",
  "wood-ash.case.not-done": "Si no:",
};
