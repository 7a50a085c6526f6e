### The texts of the exercise in stick-raise.toml, in Spanish.

name = Subir un palo
purpose = El brazo bueno ayuda a subir al que está rígido.
set-up = Póngase de pie con la espalda recta y sujete un palo por delante con las dos manos, separadas como los hombros.
step-1 = Suba el palo hacia delante y hacia arriba; el brazo bueno hace casi todo el trabajo.
step-2 = Pare donde el hombro rígido empiece a tirar.
step-3 = Quédese ahí una respiración.
step-4 = Baje despacio.
should-feel = Una tirantez en el hombro rígido, con poco esfuerzo.
should-not-feel = Un pellizco en lo alto del hombro.

mistake-1 = Arquear la espalda.
mistake-2 = Subir el hombro hacia la oreja.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
