### The texts of the exercise in pelvis-tilt.toml, in Spanish.

name = Inclinar la pelvis
purpose = Enseña a mover la zona lumbar con suavidad y control.
set-up = Acuéstese boca arriba, con las rodillas dobladas y las plantas de los pies apoyadas.
step-1 = Saque el aire e incline la pelvis para que la zona lumbar baje a la colchoneta.
step-2 = Tome aire y deje que suba otra vez un poco.
step-3 = Muévase poco y sin fuerza.
should-feel = La zona lumbar se mueve con facilidad.
should-not-feel = Dolor en la zona lumbar o que baja por una pierna.

mistake-1 = Levantar los glúteos.
mistake-2 = Empujar con los pies.
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
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
