### The texts of the exercise in knee-to-chest.toml, in Spanish.

name = Rodilla al pecho
purpose = Estira la zona lumbar y el glúteo.
set-up = Acuéstese boca arriba, con las piernas estiradas o una rodilla doblada.
step-1 = Suba la rodilla indicada y sujétela con las dos manos, por debajo de la rótula o por detrás del muslo.
step-2 = Acérquela al pecho hasta notar tirantez.
step-3 = Quédese ahí y respire con calma.
step-4 = Apoye el pie despacio.
should-feel = Una tirantez en el glúteo y la zona lumbar.
should-not-feel = Un pellizco en la ingle o dolor que baja por la pierna.

mistake-1 = Levantar la cabeza.
mistake-2 = Tirar de golpe.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-2 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-3 = Consulte antes con su clínica si está embarazada, o si al acostarse boca arriba le falta el aire o se marea.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
