### The texts of the exercise in wrist-up-down.toml, in Spanish.

name = Muñeca arriba y abajo
purpose = Mantiene la movilidad de la muñeca.
set-up = Siéntese con el antebrazo indicado sobre una mesa, la palma hacia abajo y la mano fuera del borde.
step-1 = Deje caer la mano.
step-2 = Súbala hasta donde llegue sin forzar, con los dedos sueltos.
step-3 = Pase de una posición a la otra a su ritmo.
should-feel = Una tirantez ligera en la muñeca.
should-not-feel = Dolor agudo u hormigueo en los dedos.

mistake-1 = Levantar el antebrazo.
mistake-2 = Cerrar el puño.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Una muñeca caliente, roja o hinchada.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
