/** What night-heat says, in Spanish. */
export const nightHeat: Record<string, string> = {
  "night-heat.not.over": "La calefacción terminó el {day}.",
  "night-heat.not.yet": "La calefacción empieza el {day}. Esto se calcula desde dos meses antes.",
  "night-heat.not.warm":
    "Ninguna noche por venir es más fría que {floor} afuera: nada que calentar, según los años registrados y el pronóstico.",
  "night-heat.decision.heat":
    "Para mantener {plants} junto a las plantas en una noche de {outside} afuera, el invernadero necesita {load}.",
  "night-heat.decision.unrated":
    "Para mantener {plants} junto a las plantas en una noche de {outside} afuera, el invernadero necesita {load}. Si sus calefactores lo dan, nadie lo ha anotado.",
  "night-heat.decision.short":
    "El calefactor da {rated}, y una noche de {outside} afuera necesita {load}: no puede mantener {plants}.",
  "night-heat.decision.no-heater":
    "Aquí no hay con qué calentar. Mantener {plants} en una noche de {outside} afuera pide {load}.",
  "night-heat.step.load":
    "Calcule para {load}: una noche de cada cien de las semanas con calefacción fue más fría que {outside}, según {n} años.",
  "night-heat.step.load-forecast":
    "Calcule para {load}: la noche más fría del pronóstico es de {outside}. Sin años registrados nadie conoce las más frías.",
  "night-heat.step.rating-unknown":
    "Lea la potencia en la placa del calefactor y compárela con eso: nadie la ha anotado.",
  "night-heat.step.colder-site":
    "Este lugar nunca se comparó con su estación. Si sus noches son {c} más frías, la misma noche pide {load}: deje eso de reserva.",
  "night-heat.step.short":
    "Busque los {missing} que faltan: un segundo calefactor, una segunda capa, o menos metros cuadrados que calentar en las noches más frías.",
  "night-heat.step.worst-night":
    "La noche más cara del pronóstico es la del {day}, {outside} en lo más frío: cerca de {kWh}.",
  "night-heat.step.season":
    "{nights, plural, one {La noche con calefacción por venir toma} other {Las # noches con calefacción por venir toman}} cerca de {mean}; según el año entre {low} y {high}.",
  "night-heat.step.fuel":
    "Con {fuel} eso es {amount} para {nights, plural, one {una noche} other {# noches}}. No se conoce su precio.",
  "night-heat.step.fuel-money":
    "Con {fuel} eso es {amount} para {nights, plural, one {una noche} other {# noches}}: {money} en dinero, {night} por noche.",
  "night-heat.step.with-inner-film":
    "Un segundo plástico corrido adentro por la noche ahorraría cerca de {saved} de eso ({share}).",
  "night-heat.step.with-fleece":
    "Una manta térmica sobre las plantas por la noche deja el aire más fresco y ahorraría cerca de {saved} ({share}).",
  "night-heat.step.waiting": "Empezar {days} más tarde ahorraría cerca de {saved} ({share}).",
  "night-heat.step.mats":
    "Esteras bajo las bandejas ({trays, plural, one {una bandeja} other {# bandejas}}) usan de {low} a {high}: las raíces y la semilla necesitan calor más que el aire.",
  "night-heat.step.thermometer":
    "Cuelgue un termómetro que guarde su mínima a la altura de las plantas, fuera del chorro del calefactor, y anote la mínima cada mañana.",
  "night-heat.fuel.electricity": "electricidad",
  "night-heat.fuel.natural-gas": "gas natural",
  "night-heat.fuel.propane": "propano",
  "night-heat.fuel.fuel-oil": "aceite de calefacción",
  "night-heat.fuel.firewood": "leña",
  "night-heat.fuel.wood-pellets": "pellets de madera",
  "night-heat.ends": "Termina con un pronóstico más cálido, otra capa o la última noche con calefacción.",
  "night-heat.stakes.heat":
    "El calefactor puede con todas menos una noche de cada cien; lo que está en juego es su combustible.",
  "night-heat.stakes.unrated": "Nadie sabe todavía si los calefactores pueden con las noches más frías.",
  "night-heat.stakes.short":
    "En las noches más frías las plántulas estarían demasiado frías, y las noches frías las atrasan.",
  "night-heat.limit.sun":
    "El sol, y el calor que el suelo, el agua y las mesas devuelven de noche, se dejan fuera: un invernadero real necesita un poco menos.",
  "night-heat.limit.wind":
    "Una noche con viento, un plástico roto o un frente abierto piden más de lo dicho. Los valores de la cubierta y de las fugas son de un manual, de memoria.",
  "night-heat.limit.hours":
    "Las horas entre los extremos del día las traza un modelo del curso diario, donde el pronóstico no las dice.",
  "night-heat.limit.labour":
    "Los precios son solo del combustible. Alimentar y cuidar un calefactor también es trabajo, el de leña el que más, y aquí nadie anota sus horas.",
  "night-heat.limit.years": "La energía descansa en {n} años de noches de la estación, llevadas al sitio.",
  "night-heat.limit.no-climate": "Aquí no hay años registrados: solo se calculan las noches del pronóstico.",
  "night-heat.change.meter":
    "El combustible realmente quemado en una semana, con la mínima de afuera: dice mejor que cualquier tabla lo que pierde este invernadero.",
  "night-heat.change.u": "La transmisión de calor de la cubierta, dada por su fabricante.",
  "night-heat.change.offset":
    "Mínimas de este lugar al lado de las de su estación: sin eso sus noches pueden ser {c} más frías o más tibias.",
  "night-heat.missing.nights": "Ocho años de extremos diarios de una estación cercana, o un pronóstico.",
  "night-heat.missing.nights-moves":
    "Sin noches no se puede calcular nada. Cada grado más frío afuera añade otra vez lo mismo al calor.",
  "night-heat.chart.nights": "Calor que toma cada noche",
  "night-heat.chart.night": "noche del",
  "night-heat.chart.heat": "calor",
  "night-heat.chart.years": "promedio de {n} años",
  "night-heat.chart.forecast": "según el pronóstico",
  "night-heat.chart.load": "Calor necesario según la temperatura de afuera",
  "night-heat.chart.outside": "afuera",
  "night-heat.chart.needed": "necesario",
  "night-heat.chart.rated": "lo que dan los calefactores",
};
