### The texts of the exercise in back-shoulder-stretch.toml, in Spanish.

name = Estirar la parte de atrás del hombro
purpose = Estira la parte de atrás del hombro.
set-up = Póngase con la espalda recta, de pie o en una silla.
step-1 = Cruce el brazo indicado por delante del pecho, por debajo de la altura del hombro.
step-2 = Sujete el codo con la otra mano y llévelo hacia el otro lado.
step-3 = Deje el hombro bajo. Quédese ahí y respire.
step-4 = Suelte despacio.
should-feel = Una tirantez en la parte de atrás del hombro.
should-not-feel = Un pellizco en la parte de delante o de arriba del hombro.

mistake-1 = Subir el hombro.
mistake-2 = Girar también el tronco.

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
