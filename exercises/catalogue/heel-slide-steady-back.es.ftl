### The texts of the exercise in heel-slide-steady-back.toml, in Spanish.

name = Deslizar el talón, espalda quieta
purpose = Entrena el tronco para estar quieto mientras se mueve una pierna.
set-up = Acuéstese boca arriba, con las rodillas dobladas, las plantas de los pies apoyadas y la zona lumbar en una posición cómoda.
step-1 = Saque el aire y recoja un poco el abdomen.
step-2 = Deslice un talón por la colchoneta, alejándolo, mientras la pelvis no se mueva.
step-3 = Vuelva a acercarlo.
step-4 = Cambie de lado.
should-feel = La parte baja del abdomen trabaja y la pelvis está quieta.
should-not-feel = Dolor en la zona lumbar o en la ingle.

mistake-1 = Dejar que la zona lumbar se arquee.
mistake-2 = Levantar el talón.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si está embarazada, o si al acostarse boca arriba le falta el aire o se marea.
careful-2 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta el final
level-full-change = Hasta estirar la pierna.
