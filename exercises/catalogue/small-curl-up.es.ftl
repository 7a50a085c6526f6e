### The texts of the exercise in small-curl-up.toml, in Spanish.

name = Pequeña elevación del tronco
purpose = Fortalece la parte de delante del tronco sin doblar la zona lumbar.
set-up = Acuéstese boca arriba, con una rodilla doblada, la otra pierna estirada y las dos manos planas debajo de la zona lumbar.
step-1 = Saque el aire y meta un poco el abdomen.
step-2 = Separe a la vez la cabeza y los hombros de la colchoneta, en bloque y muy poco.
step-3 = Quédese ahí y respire poco a poco, sin cortar el aire.
step-4 = Baje despacio.
should-feel = La parte de delante del tronco trabaja.
should-not-feel = Dolor o presión en el cuello o en la zona lumbar.

mistake-1 = Apretar la barbilla contra el pecho.
mistake-2 = Subir mucho.
mistake-3 = Apretar la zona lumbar contra las manos.
mistake-4 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.
careful-2 = Consulte antes con su clínica si tiene una hernia o si aún se recupera de una operación del abdomen.
careful-3 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-4 = Consulte antes con su clínica si está embarazada, o si al acostarse boca arriba le falta el aire o se marea.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-3 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-elbows-down-name = Codos en la colchoneta
level-elbows-down-change = Las manos están debajo de la zona lumbar y los codos se quedan en la colchoneta.
level-elbows-up-name = Codos levantados
level-elbows-up-change = Las manos están debajo de la zona lumbar y los codos se levantan.
