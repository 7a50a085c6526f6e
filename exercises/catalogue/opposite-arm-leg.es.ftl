### The texts of the exercise in opposite-arm-leg.toml, in Spanish.

name = Brazo y pierna contrarios
purpose = Entrena el tronco para mantenerse estable más tiempo.
set-up = Póngase a cuatro apoyos, con las manos debajo de los hombros y las rodillas debajo de las caderas.
step-1 = Recoja un poco el abdomen.
step-2 = Estire un brazo hacia delante y la pierna contraria hacia atrás, no más altos que el tronco.
step-3 = Mantenga la pelvis nivelada y respire.
step-4 = Vuelva y cambie de lado.
should-feel = Los músculos a lo largo de la espalda y el glúteo trabajan.
should-not-feel = Dolor en la zona lumbar.

mistake-1 = Arquear la zona lumbar.
mistake-2 = Dejar que la pelvis gire.
mistake-3 = Levantar la cabeza.

# Safety: precautions.
careful-1 = Si le duele apoyar las rodillas, ponga un cojín debajo o dígalo en la consulta.
careful-2 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.
careful-3 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-leg-only-name = Solo la pierna
level-leg-only-change = Estire una pierna hacia atrás; las dos manos se quedan.
level-leg-only-set-up = Póngase a cuatro apoyos, con las manos debajo de los hombros y las rodillas debajo de las caderas.
level-leg-only-step-1 = Recoja un poco el abdomen.
level-leg-only-step-2 = Estire una pierna hacia atrás, no más alta que el tronco.
level-leg-only-step-3 = Mantenga la pelvis nivelada y respire.
level-leg-only-step-4 = Vuelva y cambie de lado.
level-arm-and-leg-name = Brazo y pierna
level-arm-and-leg-change = Estire también el brazo contrario hacia delante.
