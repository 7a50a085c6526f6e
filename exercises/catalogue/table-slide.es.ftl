### The texts of the exercise in table-slide.toml, in Spanish.

name = Deslizar el brazo por la mesa
purpose = Sube el brazo mientras la mesa lleva su peso.
set-up = Siéntese junto a una mesa con la mano indicada sobre un paño.
step-1 = Deslice la mano hacia delante y deje que el tronco la siga.
step-2 = Pare donde el hombro empiece a tirar y quédese una respiración.
step-3 = Vuelva.
should-feel = Una tirantez en el hombro, con el brazo pesado sobre la mesa.
should-not-feel = Un pellizco en lo alto del hombro.

mistake-1 = Subir el hombro hacia la oreja.
mistake-2 = Cargar peso en la mano.

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
