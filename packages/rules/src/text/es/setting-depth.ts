/** What setting-depth says, in Spanish. */
export const settingDepth: Record<string, string> = {
  "setting-depth.not.ended": "Esta plantación terminó.",
  "setting-depth.not.already-out": "Estas plantas ya están en la cama.",
  "setting-depth.not.unsown": "Estas semillas todavía no se siembran.",
  "setting-depth.decision.root-ball": "Póngalas con la parte de arriba del cepellón a nivel del suelo.",
  "setting-depth.decision.seed-leaves":
    "Póngalas hasta las hojas de semilla, a lo más hasta la primera hoja verdadera: cerca de {cm} de tallo.",
  "setting-depth.step.root-ball": "Eche cerca de {cm} de suelo sobre el cepellón, no más, y apriételo.",
  "setting-depth.step.seed-leaves":
    "Entierre el tallo hasta las hojas de semilla; donde ya se cayeron, hasta su cicatriz. Deténgase debajo de la primera hoja verdadera, nunca más de {cm}.",
  "setting-depth.step.stake": "Átelas a una estaca: sostiene un tallo débil mejor que el suelo alrededor.",
  "setting-depth.step.half-bed":
    "Para ver qué vale aquí, marque {pairs} pares de franjas lado a lado, {plantsPerStrip} plantas por franja, y lance una moneda en cada par: una franja hasta las hojas de semilla, la otra al nivel del cepellón, {plantsEachWay} plantas de cada manera. Trátelas igual. Después de cada tormenta cuente las que se inclinan, y pese los primeros frutos rojos, franja por franja.",
  "setting-depth.step.early":
    "Hágalo al plantar. El suelo que se amontona después alrededor del tallo no lo compensa.",
  "setting-depth.because.grafted":
    "Están injertadas: la unión queda al menos {union} por encima del suelo, o la parte de arriba echa raíces más allá del portainjerto.",
  "setting-depth.because.woody": "El tallo es leñoso: la madera enterrada no echa raíces y puede pudrirse.",
  "setting-depth.because.not-leggy":
    "Nadie las anotó como espigadas, así que no se gana nada con ir más hondo.",
  "setting-depth.because.stem-unknown":
    "Nadie anotó si el tallo es verde o leñoso, así que no se entierra tallo.",
  "setting-depth.because.soil-unknown":
    "No se conoce la temperatura del suelo, y más hondo el suelo es más frío.",
  "setting-depth.because.soil-cold":
    "El suelo está a {soil}, por debajo de {warm}, y más hondo es todavía más frío.",
  "setting-depth.because.trade-rule":
    "Están espigadas, el tallo es verde y el suelo está a {soil}: los ensayos enterrarían el tallo hasta las hojas de semilla, y la regla del oficio, que sigue su oficina, no.",
  "setting-depth.because.leggy-green-warm":
    "Están espigadas, el tallo es verde, y el suelo está a {soil}, {warm} o más: en ensayos las plantas puestas así se acamaron menos.",
  "setting-depth.ends": "Termina al plantar; también con una nota nueva sobre el tallo o el suelo.",
  "setting-depth.stakes.union":
    "Una unión de injerto enterrada echa a perder aquello por lo que se compró el injerto.",
  "setting-depth.stakes.depth":
    "La profundidad decide un poco sobre el acame y lo temprano que llega el fruto rojo.",
  "setting-depth.limit.differ":
    "El oficio dice que no se entierren los pimientos; en ensayos las plantas puestas hasta las hojas de semilla o la primera hoja se acamaron menos. Esta respuesta siguió {way}.",
  "setting-depth.way.root-ball": "la regla del oficio",
  "setting-depth.way.seed-leaves": "los ensayos",
  "setting-depth.limit.default-trials":
    "Donde los dos difieren, plantas espigadas de tallo verde en suelo tibio, se siguen los ensayos. Eso vale mientras nadie escoja: su oficina no ha escogido.",
  "setting-depth.limit.office-trials":
    "Donde los dos difieren, plantas espigadas de tallo verde en suelo tibio, su oficina escogió seguir los ensayos.",
  "setting-depth.limit.office-trade-rule":
    "Donde los dos difieren, plantas espigadas de tallo verde en suelo tibio, su oficina escogió seguir la regla del oficio.",
  "setting-depth.limit.trials":
    "Los ensayos fueron en Florida, Massachusetts y Georgia. En Massachusetts la cosecha no cambió, hubo más fruto rojo en uno de dos años, y el suelo junto a las raíces era más frío mientras más hondo estaban.",
  "setting-depth.limit.contradicted-green":
    "Las notas llaman al tallo leñoso y verde a la vez. Cuenta la última, verde.",
  "setting-depth.limit.contradicted-woody":
    "Las notas llaman al tallo verde y leñoso a la vez. Cuenta la última, leñoso.",
  "setting-depth.change.stem": "Mirar el tallo a nivel del suelo: verde, o café y duro.",
  "setting-depth.change.leggy": "Decir que las plantas están espigadas.",
  "setting-depth.change.soil": "Tres mañanas con un termómetro de suelo a 10 cm (4 pulgadas).",
  "setting-depth.change.trial": "Media cama puesta de cada manera en esta finca.",
};
