/** What hardening says, in Spanish. */
export const hardening: Record<string, string> = {
  "hardening.not.ended": "Esta plantación terminó.",
  "hardening.not.out": "Estas plantas ya están en la cama.",
  "hardening.not.unsown": "Estas semillas todavía no han brotado.",
  "hardening.not.done": "Estas plantas se anotaron como endurecidas el {day}.",
  "hardening.not.no-date":
    "No se abre ninguna fecha de trasplante en los próximos 90 días, así que todavía no hay para qué endurecer.",
  "hardening.not.no-plan":
    "Nadie planeó un día de trasplante, y hay muy pocos años de tiempo a la mano para buscar uno.",
  "hardening.not.too-early": "El endurecimiento empieza el {day}, diez días antes del {out}.",
  "hardening.decision.begin":
    "Empiece a endurecer el {day}; listas desde el {ready}, para trasplantar el {out}.",
  "hardening.decision.go-on":
    "Siga endureciendo: el {day} es el día {nth}. Listas desde el {ready}, para trasplantar el {out}.",
  "hardening.decision.hold":
    "No endurezca estas plantas ahora: se anotó que están frenadas. Déjelas primero crecer en lo tibio.",
  "hardening.ends":
    "Termina con el trasplante, y también con señales de que se detuvieron: ninguna hoja nueva, una punta muerta.",
  "hardening.ends.hold": "Termina con una hoja nueva o un punto de crecimiento vivo, anotados.",
  "hardening.stakes.soft":
    "Las plantas tiernas que salen sin cubierta se queman, se rompen y se quedan paradas por semanas.",
  "hardening.stakes.hold": "Un aire más fresco y seco encima de un freno puede detenerlas del todo.",
  "hardening.step.day-sheltered":
    "{day}: afuera {hours}, a la sombra y sin viento, cuando el aire llegue a {c}. Después, adentro otra vez.",
  "hardening.step.day":
    "{day}: afuera {hours}, con sol y un poco de viento, cuando el aire llegue a {c}. Adentro por la noche.",
  "hardening.step.day-night":
    "{day}: afuera todo el día, y también la noche; se esperan {night} junto a las plantas.",
  "hardening.step.day-night-if":
    "{day}: afuera todo el día; también la noche si se mantiene por encima de {floor}, si no adentro antes de la puesta del sol.",
  "hardening.step.day-bring-in":
    "{day}: afuera todo el día, pero adentro antes de la puesta del sol: se esperan {night}, por debajo de {floor}.",
  "hardening.step.in-cold": "{day}: déjelas adentro; el día no llega a {c}. No cuenta.",
  "hardening.step.in-wind": "{day}: déjelas adentro; demasiado viento para hojas tiernas. No cuenta.",
  "hardening.step.water":
    "Riegue menos seguido que adentro, y deje secar la parte de arriba de la mezcla entre riegos: más seco, pero nunca tanto que se marchite una hoja. Mire dos veces al día; el viento y el sol secan una bandeja en una o dos horas.",
  "hardening.step.no-nitrogen": "Nada de nitrógeno extra mientras se endurecen.",
  "hardening.step.wind-first":
    "Más sol y más viento por pasos, nunca los dos a la vez; el frío no es la meta.",
  "hardening.step.done":
    "Terminado desde el {ready} si las hojas están más oscuras y firmes, los tallos duros, las puntas vivas, y siguen saliendo hojas nuevas. Entonces anótelas como endurecidas.",
  "hardening.step.set-out-later":
    "Siete días afuera terminan el {ready}, después del {out}: trasplante más tarde, o bajo una cubierta.",
  "hardening.step.hold": "Manténgalas a {c} o más de noche, con buena luz y humedad pareja.",
  "hardening.step.hold-until":
    "Espere una hoja nueva. Anótela, o un punto de crecimiento vivo, y pregunte de nuevo; después endurezca con suavidad, los diez días completos.",
  "hardening.limit.memory":
    "De siete a diez días de aire más fresco y seco y más viento es la cifra usual de las guías para productores, y no se volvió a leer. Las horas de cada día son práctica común.",
  "hardening.limit.pepper-cold":
    "Los pimientos no aprenden a aguantar el frío: por debajo de 10 a 13 °C (50 a 55 °F) casi dejan de crecer, endurecidos o no. Lo que aprenden es el sol y el viento.",
  "hardening.limit.no-forecast":
    "No se dio ningún pronóstico, así que ningún día ni noche se guarda adentro por él. Mire el cielo.",
  "hardening.limit.by-set-out":
    "El día es el más temprano que da el consejo de trasplante, el {day}. Se mueve con el tiempo, y el plan con él.",
  "hardening.case.not-begun": "Si todavía no han estado afuera",
  "hardening.case.later":
    "Empiece hoy con las horas del primer día. Estarán listas desde el {ready}, después del {out}.",
  "hardening.case.begin":
    "Empiece hoy con las horas del primer día; estarán listas desde el {ready}, a tiempo para el {out}.",
  "hardening.case.begun": "Si llevan saliendo una semana o más",
  "hardening.case.ready": "Anótelas como endurecidas; entonces decide solo el consejo de trasplante.",
  "hardening.change.note": "Saber que están endurecidas, o cuánto llevan saliendo.",
  "hardening.change.forecast": "Un pronóstico con viento, de no más de un día.",
  "hardening.change.look": "Mirar los puntos de crecimiento y las hojas nuevas.",
  "hardening.chart.hours": "Horas afuera, por día",
  "hardening.chart.nights": "Noches junto a las plantas, según el pronóstico",
  "hardening.chart.day": "Día",
  "hardening.chart.hours-axis": "Horas afuera",
  "hardening.chart.minimum": "Mínima de la noche",
  "hardening.chart.floor": "Piso",
};
