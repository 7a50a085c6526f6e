### The texts of the exercise in stick-turn-out.toml, in Spanish.

name = Girar el brazo hacia fuera con un palo
purpose = Estira un hombro que gira poco hacia fuera.
set-up = Póngase de pie con la espalda recta, los codos en ángulo recto junto al cuerpo, una toalla enrollada entre el codo indicado y el costado, y un palo en las dos manos.
step-1 = Empuje el palo con la otra mano, para que el antebrazo indicado gire hacia fuera.
step-2 = Deje el codo indicado en la toalla y el brazo suelto.
step-3 = Quédese donde tire y respire.
step-4 = Vuelva despacio.
should-feel = Una tirantez en la parte de delante del hombro.
should-not-feel = Dolor agudo, o la sensación de que el hombro se sale.

mistake-1 = Girar el tronco.
mistake-2 = Separar el codo de la toalla.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
