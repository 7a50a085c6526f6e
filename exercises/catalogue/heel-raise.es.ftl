### The texts of the exercise in heel-raise.toml, in Spanish.

name = Elevar los talones
purpose = Fortalece la pantorrilla y el tendón de Aquiles para caminar, subir escaleras y tomar impulso.
set-up = De pie frente a un mueble firme, los pies separados al ancho de las caderas, el peso repartido y las rodillas estiradas, pero sin bloquearlas.
step-1 = Suba sobre la parte delantera de los dos pies, tan alto como pueda sin que los tobillos se vayan hacia fuera.
step-2 = Quédese arriba 1 segundo.
step-3 = Baje despacio hasta que los talones toquen el suelo.
should-feel = La pantorrilla trabaja y se cansa; con las dos piernas, igual en los dos lados.
should-not-feel = Dolor agudo en el talón o en el tendón de Aquiles, o un calambre que no se pasa.

mistake-1 = Cargar el peso en el borde de fuera del pie.
mistake-2 = Apoyar el peso en los brazos.
mistake-3 = Bajar de golpe.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una rotura o una operación del tendón de Aquiles.
careful-2 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Un chasquido repentino o una sensación de pedrada en la pantorrilla: busque atención médica urgente.
stop-2 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-both-hands-name = Las dos manos en el mueble
level-both-hands-change = Apoye las manos planas. El trabajo lo hacen las piernas.
level-fingertips-name = Solo las puntas de los dedos
level-fingertips-change = Solo tocan el mueble las puntas de los dedos, para el equilibrio.
level-no-hands-name = Sin manos
level-no-hands-change = El mueble queda al alcance de la mano.
level-one-leg-both-hands-name = Una pierna, las dos manos en el mueble
level-one-leg-both-hands-change = Una sola pierna sube todo el peso. Las manos, planas, dan equilibrio.
level-one-leg-both-hands-set-up = De pie frente a un mueble firme, sobre la pierna indicada, el otro pie en el aire hacia atrás y la rodilla estirada, pero sin bloquearla. Apoye las dos manos planas.
level-one-leg-both-hands-step-1 = Suba sobre la parte delantera del pie indicado, tan alto como pueda sin que el tobillo se vaya hacia fuera.
level-one-leg-both-hands-step-2 = Quédese arriba 1 segundo.
level-one-leg-both-hands-step-3 = Baje despacio hasta que el talón toque el suelo, sin dejarse caer.
level-one-leg-fingertips-name = Una pierna, las puntas de los dedos
level-one-leg-fingertips-change = Una sola pierna sube todo el peso. Solo tocan las puntas de los dedos.
level-one-leg-fingertips-set-up = De pie frente a un mueble firme, sobre la pierna indicada, el otro pie en el aire hacia atrás y la rodilla estirada, pero sin bloquearla. Apoye solo las puntas de los dedos.
level-one-leg-fingertips-step-1 = Suba sobre la parte delantera del pie indicado, tan alto como pueda sin que el tobillo se vaya hacia fuera.
level-one-leg-fingertips-step-2 = Quédese arriba 1 segundo.
level-one-leg-fingertips-step-3 = Baje despacio hasta que el talón toque el suelo, sin dejarse caer.
