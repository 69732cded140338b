/** What topping says, in Spanish. */
export const topping: Record<string, string> = {
  "topping.not.ended": "Esta plantación terminó.",
  "topping.not.unsown": "Estas semillas todavía no se siembran.",
  "topping.not.overwintered":
    "Las plantas guardadas durante el invierno se recortan con otras reglas que la punta de una planta joven.",
  "topping.not.taken": "La punta se quitó el {day}, y se quita a lo más una vez.",
  "topping.not.buds": "Ya muestran botones o más, y quitar la punta ahora se lleva las primeras flores.",
  "topping.not.past": "Tienen más de {to} hojas verdaderas, así que la punta se queda.",
  "topping.not.no-start":
    "No se conoce el día en que asomaron las plántulas, así que no se pueden pronosticar sus hojas.",
  "topping.not.no-warmth": "No se conoce ningún día por venir que las lleve a seis hojas verdaderas.",
  "topping.not.early":
    "Es probable que tengan {from} hojas verdaderas el {day}; esto se contesta tres semanas antes.",
  "topping.decision.leave": "Deje las puntas.",
  "topping.decision.wait": "Ahora no: deje las puntas hasta que pase lo que se dice abajo.",
  "topping.decision.half-bed":
    "Pruébelo en la mitad: quite la punta a {plants, plural, one {# planta} other {# plantas}}, y deje el resto.",
  "topping.decision.take":
    "Quite la punta, una vez, a {plants, plural, one {# planta} other {las # plantas}}.",
  "topping.because.containers":
    "Están en macetas, donde el oficio le ve poco provecho y el único ensayo en macetas tuvo fruto más tarde.",
  "topping.because.sick":
    "Alguien anotó enfermedad, o señales que pueden ser de virus o bacterias. Un corte las llevaría de planta en planta.",
  "topping.because.no-time":
    "Con el retraso publicado, el fruto maduro llegaría antes de la helada en {chance} de los años, y se piden {wanted}. Dejando la punta son {left}.",
  "topping.because.season-unknown":
    "No se puede decir qué tan seguido la helada llegaría antes del fruto maduro, y los ensayos hallaron flores más tardías.",
  "topping.because.one-plant": "Una sola planta no muestra nada por sí misma.",
  "topping.because.before":
    "Tienen cerca de {leaves, plural, one {# hoja verdadera} other {# hojas verdaderas}}, y la punta se quita, si acaso, entre {from} y {to}.",
  "topping.because.count":
    "Por el calor hasta ahora tienen cerca de {leaves, plural, one {# hoja verdadera} other {# hojas verdaderas}}. Cuéntelas primero: entre {from} y {to}, sin contar las hojas de semilla.",
  "topping.because.checked":
    "El frío las frenó, o están paradas. Una planta que no crece no ramifica. Espere dos hojas nuevas.",
  "topping.because.unhardened":
    "Nadie las anotó como endurecidas, y no han pasado dos semanas en la cama al aire libre. Un esfuerzo a la vez.",
  "topping.because.wet":
    "Hoy llueve. Las hojas mojadas y los cortes frescos extienden bacterias. Espere un día seco.",
  "topping.because.time-enough":
    "Aun con el retraso publicado más largo, el fruto maduro llegaría antes de la helada en {chance} de los años, y se piden {wanted}. No se halló ningún ensayo en una temporada como esta, así que la mitad es un ensayo y todo sería una adivinanza.",
  "topping.because.practice":
    "Su oficina sigue el oficio, que quita la punta en el suelo para tener flores más tempranas y más ramas.",
  "topping.because.published":
    "Su oficina sigue las cosechas publicadas. Con el retraso publicado más largo, el fruto maduro todavía llegaría antes de la helada en {chance} de los años.",
  "topping.step.window":
    "Es probable que tengan de {from} a {to} hojas verdaderas del {opens} al {closes}. Si eso pasa antes de que lo demás esté bien, deje las puntas.",
  "topping.step.when":
    "Escoja una mañana seca, con hojas secas y un día seco por delante. Cuente en unas plantas: de {from} a {to} hojas verdaderas, sin contar las hojas de semilla.",
  "topping.step.how":
    "Quite solo el punto de crecimiento, la punta por encima de la hoja abierta más joven, y deje todas las hojas abiertas. {plants, plural, one {# planta} other {# plantas}}, una vez, y no otra vez esta temporada.",
  "topping.step.clean":
    "Lávese primero las manos con jabón, y entre cama y cama. Limpie la cuchilla después de cada planta con un desinfectante, como dice su etiqueta. Deje fuera toda planta con manchas, mosaico u hojas enroscadas.",
  "topping.step.expect":
    "Espere plantas más bajas con más ramas. Ensayos de chile en temporadas cálidas y largas tuvieron más fruto y flores más tardías; dos más dicen que las flores llegaron antes. Los únicos días publicados son {days} y {other}, para plantas en maceta cortadas más fuerte. El oficio espera flores más tempranas. No se promete ninguna cosecha.",
  "topping.half-bed.leave": "Si el productor quiere verlo por sí mismo, con seis a ocho hojas",
  "topping.half-bed.wait": "Para ver qué vale aquí, cuando estén sanas y tengan de seis a ocho hojas",
  "topping.half-bed.half-bed": "Para aprender de ello",
  "topping.half-bed.take": "Para aprender de ello, deje la mitad como está",
  "topping.step.half-bed":
    "{begins}: marque {pairs} pares de franjas lado a lado, {plantsPerStrip} plantas por franja, y lance una moneda en cada par para la franja a la que se quita la punta, {plantsEachWay} plantas de cada manera. Trátelas igual. Anote la primera flor y el primer fruto maduro, y pese la cosecha, franja por franja.",
  "topping.step.every-other":
    "{begins}: una planta sí y otra no, {each, plural, one {# planta} other {# plantas}} de cada manera. Tan pocas solo muestran una diferencia grande.",
  "topping.step.note": "Anote el día como punta quitada, para que nadie la quite dos veces.",
  "topping.ends": "Termina con más de {to} hojas verdaderas, o con el primer botón.",
  "topping.stakes.window": "Las hojas con las que se hace pasan. Dejar la punta no pierde nada más.",
  "topping.stakes.none": "Dejar la punta no pierde nada.",
  "topping.table.title": "El primer fruto maduro antes de la helada, con el retraso publicado",
  "topping.table.way": "Punta",
  "topping.table.early": "Temprano, uno de cada diez años",
  "topping.table.likely": "Probable",
  "topping.table.late": "Tarde, uno de cada diez años",
  "topping.table.chance": "Antes de la helada",
  "topping.table.left": "se deja",
  "topping.table.taken": "se quita",
  "topping.chart.title": "Hojas verdaderas por venir, y las hojas con las que se quita una punta",
  "topping.chart.day": "Día",
  "topping.chart.leaves": "Hojas verdaderas",
  "topping.chart.low": "Temprano",
  "topping.chart.likely": "Probable",
  "topping.chart.high": "Tarde",
  "topping.chart.from": "Seis hojas",
  "topping.chart.to": "Ocho hojas",
  "topping.limit.default-no-unless-time":
    "La práctica y los ensayos difieren. Se sigue la lectura prudente: no, salvo que haya tiempo para el retraso publicado más largo. Eso vale mientras nadie escoja: su oficina no ha escogido.",
  "topping.limit.office-no-unless-time":
    "La práctica y los ensayos difieren. Su oficina escogió la lectura prudente: no, salvo que haya tiempo para el retraso publicado más largo.",
  "topping.limit.office-practice":
    "La práctica y los ensayos difieren. Su oficina escogió seguir el oficio: sí en el suelo, no en macetas.",
  "topping.limit.office-published":
    "La práctica y los ensayos difieren. Su oficina escogió seguir las cosechas publicadas, donde hay tiempo para fruto más tardío.",
  "topping.limit.gap":
    "No se halló ningún ensayo de campo de despunte para temporadas cortas, y ninguno para pimientos dulces al aire libre en un clima fresco.",
  "topping.limit.warm-trials":
    "Las cosechas son de chile y pimiento en temporadas cálidas y largas, casi siempre despuntados dos veces, de 15 a 45 días después del trasplante. No se trasladan a una sola punta en una temporada corta.",
  "topping.limit.delay":
    "El retraso es de dos pimientos ornamentales en maceta cortados más que una punta. Los ensayos de campo no publicaron días. Se cuenta como calor, así que en un otoño fresco dura más.",
  "topping.limit.leaf-heat":
    "Las hojas se pronostican con el calor por hoja de otra especie, corregido con las notas de esta plantación. Una cuenta decide.",
  "topping.limit.no-years":
    "Aquí se conocen menos de ocho años de mínimas y máximas diarias, así que no se dice nada del otoño.",
  "topping.limit.green": "Maduro quiere decir aquí verde maduro, porque estas se cosechan verdes.",
  "topping.limit.cold-unknown":
    "No se conoce ninguna temperatura junto a las plantas de las últimas dos semanas. Mire si crecen antes de quitar una punta.",
  "topping.limit.odd-notes": "Algunas notas sobre etapas se contradicen y se dejaron fuera.",
  "topping.change.count": "Contar las hojas verdaderas en unas plantas.",
  "topping.change.hardened": "Decir que están endurecidas.",
  "topping.change.years": "Ocho años de mínimas y máximas diarias de una estación cercana.",
  "topping.change.days":
    "Los días a madurez de la lista de semillas, o las primeras cosechas anteriores de esta finca.",
  "topping.change.trial": "Media cama de cada manera en esta finca, y más de una temporada.",
};
