### The texts of the exercise in knees-roll.toml, in Spanish.

name = Balancear las rodillas
purpose = Suelta el giro de la zona lumbar.
set-up = Acuéstese boca arriba, con las rodillas dobladas y juntas, las plantas de los pies apoyadas y los brazos hacia los lados.
step-1 = Deje bajar las dos rodillas hacia un lado; los hombros se quedan en la colchoneta.
step-2 = Vuelva al centro.
step-3 = Déjelas bajar hacia el otro lado.
should-feel = Una tirantez ligera en el lado del tronco.
should-not-feel = Dolor en la zona lumbar o que baja por una pierna.

mistake-1 = Dejar caer las rodillas.
mistake-2 = Levantar un hombro.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-2 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-3 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
