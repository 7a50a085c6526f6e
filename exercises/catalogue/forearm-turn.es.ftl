### The texts of the exercise in forearm-turn.toml, in Spanish.

name = Girar el antebrazo
purpose = Fortalece los músculos que giran la palma hacia arriba y hacia abajo.
set-up = Siéntese con el antebrazo indicado sobre una mesa y la mano fuera del borde, y sujete un martillo con la cabeza hacia arriba.
step-1 = Gire la mano despacio hasta que la palma mire hacia abajo, mientras sea cómodo.
step-2 = Gírela despacio, pasando por la vertical, hasta que la palma mire hacia arriba. Eso es un movimiento.
step-3 = Deje el antebrazo en la mesa.
step-4 = Vuelva despacio.
should-feel = Los músculos del antebrazo trabajan.
should-not-feel = Dolor agudo en el codo o en la muñeca.

mistake-1 = Dejar caer el martillo.
mistake-2 = Mover también el codo o el hombro.
mistake-3 = Apretar más de lo necesario.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del codo, la muñeca o la mano.
careful-2 = Consulte antes con su clínica si se le duermen los dedos por la noche o ha perdido fuerza al agarrar.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Una muñeca caliente, roja o hinchada.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-near-head-name = Mano cerca de la cabeza
level-near-head-change = Sujete el martillo justo debajo de la cabeza.
level-middle-name = Mano en el medio
level-middle-change = Sujete el mango por el medio.
level-end-name = Mano en el extremo
level-end-change = Sujete el mango por el extremo.
