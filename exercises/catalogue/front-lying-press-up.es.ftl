### The texts of the exercise in front-lying-press-up.toml, in Spanish.

name = Subir el pecho, boca abajo
purpose = Lleva la zona lumbar hacia la extensión sin esfuerzo de la espalda.
set-up = Acuéstese boca abajo, con las manos apoyadas a los lados del pecho.
step-1 = Empuje con los brazos y deje subir el pecho; la pelvis se queda en la colchoneta.
step-2 = Deje sueltos la espalda y los glúteos.
step-3 = Saque el aire arriba y baje.
should-feel = Una presión ligera en la zona lumbar, que pasa al acostarse.
should-not-feel = Dolor que se extiende por la pierna o aumenta en ella.

mistake-1 = Levantar la pelvis.
mistake-2 = Trabajar con la espalda.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si está embarazada o si aún se recupera de una operación del pecho o del abdomen: puede que no deba acostarse boca abajo.
careful-2 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-3 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor de la pierna que baja más, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
