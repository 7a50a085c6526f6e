### The texts of the exercise in heel-slide.toml, in Spanish.

name = Deslizar el talón
purpose = Mantiene el movimiento de doblar y estirar la rodilla después de un reposo, una lesión o una operación.
set-up = Acuéstese boca arriba sobre una colchoneta, con las dos piernas estiradas y un calcetín en el pie de la pierna que va a mover.
step-1 = Deslice despacio el talón por la colchoneta hacia la nalga.
step-2 = Llegue hasta donde le resulte cómodo y quédese ahí durante una respiración.
step-3 = Deslice el talón de vuelta hasta que la pierna quede recta.
should-feel = Un tirón suave delante de la rodilla al doblarla y detrás al estirarla.
should-not-feel = Dolor agudo en la rodilla, enganche o bloqueo, o un tirón en la pantorrilla que no se pasa.

mistake-1 = Levantar el talón de la colchoneta.
mistake-2 = Dejar caer la rodilla hacia fuera.
mistake-3 = Apurar la última parte del movimiento.

# Safety: precautions.
careful-1 = Después de una operación, hágalo solo hasta donde le haya dicho su clínica.

# Safety: signs to stop at once.
stop-1 = Un chasquido repentino o una sensación de pedrada en la pantorrilla: busque atención médica urgente.
stop-2 = Una rodilla que se bloquea, se hincha rápido o se pone caliente y roja: pare y llame hoy a su clínica.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-half-bent-name = A medio camino
level-half-bent-change = Pare a medio camino, donde todavía es fácil.
level-as-far-as-it-goes-name = Hasta donde llegue
level-as-far-as-it-goes-change = Doble hasta donde llegue sin dolor agudo.
