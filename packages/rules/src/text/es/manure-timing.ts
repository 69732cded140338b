/** What manure-timing says, in Spanish. */
export const manureTiming: Record<string, string> = {
  "manure-timing.not.ended": "Las plantas se quitaron.",
  "manure-timing.not.none": "Aquí no se dio estiércol, y no hay en la bodega.",
  "manure-timing.not.composted":
    "Solo se dio o hay en la bodega estiércol compostado: ningún plazo antes de la cosecha vale para él. Guarde el registro de la pila: sus temperaturas día por día y cada volteo. Sin ese registro cuenta como crudo.",
  "manure-timing.not.passed":
    "Ya pasó el plazo después del estiércol crudo: desde el {day} se puede cosechar, en lo que toca al estiércol.",
  "manure-timing.not.standing":
    "Hay estiércol crudo en la bodega y las plantas están en la cama. Nunca lo dé a un cultivo en pie; guárdelo para el suelo del próximo año o compóstelo según la norma.",
  "manure-timing.decision.picked-too-early":
    "Se cosechó fruto el {pick}, antes de que se pudiera: no se debe cosechar nada antes del {from}.",
  "manure-timing.decision.hold-harvest":
    "No coseche antes del {from}: se dio estiércol crudo, y deben pasar {days} días.",
  "manure-timing.decision.clear-at-harvest":
    "El estiércol crudo se dio con tiempo suficiente: la primera cosecha se espera hacia el {pick}, y desde el {from} se puede cosechar.",
  "manure-timing.decision.spread-by":
    "Aquí se puede incorporar {what} en crudo hasta el {by}, no más tarde: la primera cosecha se espera hacia el {pick}.",
  "manure-timing.decision.too-late":
    "Aquí es demasiado tarde para {what} en crudo: había que incorporarlo a más tardar el {by} para una primera cosecha hacia el {pick}.",
  "manure-timing.step.counted":
    "Se dio estiércol crudo el {given}. Cuente {days} días desde el día en que se incorporó: el primer día de cosecha es el {from}. Si se incorporó más tarde de lo anotado, díganos ese día.",
  "manure-timing.step.assumed-raw":
    "Nadie dijo si se compostó ({what}), así que cuenta como crudo. Si se hizo, anótelo, y guarde el registro de la pila.",
  "manure-timing.step.assumed-raw-shed":
    "Nadie dijo si está compostado lo que hay en la bodega ({what}), así que cuenta como crudo.",
  "manure-timing.step.broken-us-certified":
    "Mantenga aparte lo cosechado desde el {pick}, no lo venda como certificado, y llame hoy a su certificador. No coseche nada antes del {from}.",
  "manure-timing.step.broken-office-days":
    "Mantenga aparte lo cosechado desde el {pick} y pregunte a la oficina de inocuidad antes de que algo se venda o se coma crudo. No coseche nada antes del {from}.",
  "manure-timing.step.on-crop":
    "Se dio el {given} a plantas que ya estaban aquí. El estiércol que tocó hojas o fruto no se hace seguro con esperar: no coma ni venda fruto que tocó.",
  "manure-timing.step.staked":
    "Las plantas están en estacas. Si su certificador acepta por escrito que ningún fruto cuelga ni se salpica cerca del suelo, bastan {days} días: desde el {from}. Contamos el plazo más largo, porque el fruto bajo de este tipo cuelga.",
  "manure-timing.step.low-fruit":
    "Contamos el fruto de este tipo en estacas como lejos del suelo. Si alguno cuelga bajo o se salpica de suelo, para él valen {days} días.",
  "manure-timing.step.early-fruit":
    "El fruto que madura antes del {from}: quítelo y déjelo como desecho, o déjelo colgar hasta entonces. No lo coma, venda, regale ni lo dé de comer.",
  "manure-timing.step.rule-us-certified":
    "Esta es la ley en suelo certificado en los Estados Unidos (7 CFR 205.203(c)): aquí {days} días. En la duda decide su certificador.",
  "manure-timing.step.rule-office-days":
    "Su propia norma de inocuidad y sus compradores van primero. Donde no fijan días, aquí se toman {days} días como valor por defecto prudente, lo mismo que en suelo certificado.",
  "manure-timing.step.not-on-crop": "Hay más {what} en crudo en la bodega: nunca lo dé a un cultivo en pie.",
  "manure-timing.step.spread-by":
    "Incorpore {what} en crudo a más tardar el {day}: eso deja {days} días hasta la primera cosecha, hacia el {pick}. Esparcirlo más tarde atrasa la primera cosecha, día por día.",
  "manure-timing.step.work-in":
    "Incorpórelo el mismo día. Si se queda encima pierde al aire un tercio de su amonio, y los días hasta la cosecha cuentan solo desde que se incorpora.",
  "manure-timing.step.rain":
    "Se pronostican {rain} de lluvia hasta el {day}. Espárzalo después y no antes: lava el estiércol a zanjas y pozos.",
  "manure-timing.step.compost-instead":
    "Incorporar hoy {what} en crudo atrasaría la primera cosecha de cerca del {pick} al {from}. Compóstelo según la norma, guárdelo para suelo que descansa, o dé otra cosa.",
  "manure-timing.step.compost-record":
    "El estiércol compostado no tiene plazo, si se hizo así: carbono a nitrógeno entre 25 y 40 a 1, y luego entre {low} y {high} durante 3 días en un recipiente o una pila estática aireada, o durante 15 días en una hilera volteada al menos cinco veces. Guarde el registro de temperaturas y volteos; el estiércol viejo o amontonado cuenta como crudo.",
  "manure-timing.step.nitrogen":
    "{tonne} de esto ({what}) dan cerca de {workedIn} de nitrógeno en el primer año si se incorpora, {lying} si se queda encima; {release} de lo que está ligado se libera el primer año, algo del resto en los dos siguientes. La fertilización lo cuenta: anótelo una vez como dado.",
  "manure-timing.step.analyse":
    "Haga analizar ({what}) la materia seca, el nitrógeno total y el de amonio: entonces se puede decir el nitrógeno que da.",
  "manure-timing.step.nitrate":
    "Su nitrato se lava con facilidad: {inch} de agua más de lo que guarda el suelo pueden llevarse de {low} a {high} de nitrógeno. No dé más de lo que absorbe el cultivo, y analice después de una lluvia fuerte.",
  "manure-timing.ends.harvest":
    "Termina con el primer día en que se puede cosechar, o con más estiércol crudo.",
  "manure-timing.ends.spread": "Termina con el trasplante, o con otro día de la primera cosecha.",
  "manure-timing.stakes.held": "Lo que madura antes de ese día no se puede vender ni comer.",
  "manure-timing.stakes.would-hold": "Esparcido ahora, detendría lo que madura en los próximos meses.",
  "manure-timing.stakes.spread": "Esparcido más tarde, la primera cosecha se atrasa con él.",
  "manure-timing.stakes.clear": "No se pierde nada: los días pasan antes de la primera cosecha.",
  "manure-timing.limit.us-certified":
    "El plazo es ley y no una prueba de seguridad: se hallaron gérmenes vivos en el suelo después de más tiempo.",
  "manure-timing.limit.office-days":
    "La norma de inocuidad de los Estados Unidos no nombra días donde el estiércol no toca el producto; en otros lugares valen otras reglas. Estos días son un valor por defecto y no una prueba de seguridad.",
  "manure-timing.limit.worked-in":
    "La ley cuenta desde el día en que se incorpora el estiércol. Se toma por tal el día anotado como dado.",
  "manure-timing.limit.maturity":
    "La primera cosecha se calcula de los días de la lista de semillas. Un año cálido la adelanta; entonces el día de cosecha sigue valiendo.",
  "manure-timing.limit.no-pick": "Aquí no se sabe cuándo madurará el primer fruto.",
  "manure-timing.limit.upright":
    "Que el fruto de este tipo esté lejos del suelo es práctica común y no palabra de la ley.",
  "manure-timing.change.composted": "Si el estiércol se compostó, con el registro de la pila.",
  "manure-timing.change.maturity": "Los días a madurez, como los da la lista de semillas.",
  "manure-timing.change.pick": "El día de la primera cosecha, cuando llegue.",
  "manure-timing.change.staked":
    "Estacas, y la palabra de su certificador de que ningún fruto toca el suelo.",
  "manure-timing.change.office": "La norma de inocuidad de su lugar y los días que piden sus compradores.",
  "manure-timing.missing.maturity": "Los días a madurez de esta variedad, como los da la lista de semillas.",
  "manure-timing.missing.set-out": "El día en que deben salir las plantas.",
  "manure-timing.missing.moves":
    "Entre un pimiento rápido y uno lento el último día para incorporar estiércol crudo se mueve del {early} al {late}.",
};
