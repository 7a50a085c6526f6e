### The texts of the exercise in heel-raise-one-leg.toml, in Spanish.

name = Elevar el talón con una pierna
purpose = Fortalece la pantorrilla y su tendón.
set-up = Póngase sobre el pie indicado, con una mano en una barandilla o una encimera y el otro pie levantado.
step-1 = Póngase con la espalda recta y la rodilla estirada.
step-2 = Suba sobre la parte delantera del pie tanto como pueda.
step-3 = Quédese ahí un momento.
step-4 = Baje despacio hasta apoyar el talón.
should-feel = La pantorrilla trabaja y se cansa.
should-not-feel = Dolor agudo en el tendón o en el talón.

mistake-1 = Girar hacia el borde de fuera del pie.
mistake-2 = Doblar la rodilla.
mistake-3 = Dejar caer el talón.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una rotura o una operación del tendón de Aquiles.
careful-2 = No lo haga nunca sin un apoyo firme al alcance de la mano. Use calzado firme; no lo haga con calcetines en un suelo liso.
careful-3 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Un chasquido repentino o una sensación de pedrada en la pantorrilla: busque atención médica urgente.
stop-2 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-3 = Una caída, o haber estado a punto de caerse.
stop-4 = Dolor por encima del límite de su plan, o un tobillo que falla.

# Levels, from easy to hard.
level-floor-name = En el suelo
level-floor-change = Todo el pie en el suelo.
level-step-name = En un escalón
level-step-change = La parte delantera del pie en el borde de un escalón, para que el talón pueda bajar más.
level-step-set-up = Póngase sobre un escalón que no se mueva, con la parte delantera del pie indicado en el borde, el talón libre y una mano en la barandilla. Levante el otro pie.
level-step-step-1 = Póngase con la espalda recta y la rodilla estirada.
level-step-step-2 = Suba sobre la parte delantera del pie tanto como pueda.
level-step-step-3 = Quédese ahí un momento.
level-step-step-4 = Baje despacio, hasta que el talón quede un poco por debajo del escalón.
