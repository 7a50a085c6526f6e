### The texts of the exercise in small-squat.toml, in Spanish.

name = Pequeña sentadilla
purpose = Fortalece los muslos y los glúteos para sentarse, levantarse y cargar cosas.
set-up = Póngase de pie delante de una encimera, con los pies separados al ancho de las caderas y las manos apoyadas en ella sin cargar.
step-1 = Lleve las caderas hacia atrás y doble las rodillas hasta donde diga su nivel.
step-2 = Mantenga las rodillas encima de los pies y los talones en el suelo.
step-3 = Quédese ahí un momento.
step-4 = Suba empujando con los talones.
should-feel = Los muslos y los glúteos trabajan.
should-not-feel = Dolor agudo en una rodilla o en la ingle.

mistake-1 = Dejar que las rodillas se vayan hacia dentro.
mistake-2 = Levantar los talones.
mistake-3 = Tirar de la encimera.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis o aún se recupera de una operación o fractura de la pierna.
careful-2 = No lo haga nunca sin un apoyo firme al alcance de la mano. Use calzado firme; no lo haga con calcetines en un suelo liso.

# Safety: signs to stop at once.
stop-1 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-2 = Una rodilla que se bloquea, falla o se hincha.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Un poco
level-small-change = Como para sentarse en un taburete alto.
level-deeper-name = Más
level-deeper-change = Como para sentarse en una silla.
