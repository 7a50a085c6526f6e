### The texts of the exercise in thumb-to-fingers.toml, in Spanish.

name = El pulgar a cada dedo
purpose = Mantiene la movilidad del pulgar para sujetar y coger cosas.
set-up = Siéntese con la mano indicada abierta delante de usted.
step-1 = Toque la punta del índice con la del pulgar.
step-2 = Abra la mano y toque después, por orden, el medio, el anular y el meñique.
step-3 = Forme cada vez un anillo redondo. Una ronda es un movimiento.
should-feel = Un trabajo ligero en la base del pulgar.
should-not-feel = Dolor agudo en la base del pulgar.

mistake-1 = Doblar la muñeca.
mistake-2 = Apretar las puntas.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Un dedo que se bloquea, se pone pálido o azul, o se hincha.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
