### The texts of the exercise in elbow-bend-straighten.toml, in Spanish.

name = Doblar y estirar el codo
purpose = Recupera el movimiento de un codo rígido.
set-up = Póngase de pie o en una silla, con el brazo indicado al lado y la palma hacia delante.
step-1 = Doble el codo hasta donde llegue sin forzar.
step-2 = Quédese ahí una respiración.
step-3 = Estírelo hasta donde llegue sin forzar.
should-feel = Una tirantez ligera en el codo.
should-not-feel = Dolor agudo u hormigueo en los dedos.

mistake-1 = Forzar el final con la otra mano.
mistake-2 = Mover también el hombro.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del codo, la muñeca o la mano.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
