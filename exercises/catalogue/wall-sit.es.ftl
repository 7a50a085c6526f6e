### The texts of the exercise in wall-sit.toml, in Spanish.

name = Sentadilla isométrica en la pared
purpose = Fortalece los muslos sin mover la rodilla, para escaleras, cuestas y levantarse.
set-up = De pie, con la espalda contra una pared lisa, los pies separados al ancho de las caderas y a dos pies de distancia de la pared, con calzado que no resbale. Tenga una silla al alcance de la mano.
step-1 = Deslícese por la pared hasta donde diga su nivel.
step-2 = Mantenga las rodillas en línea con los dedos de los pies, sin pasar nunca de ellos.
step-3 = Apoye toda la planta de los dos pies y respire con calma.
step-4 = Empuje para subir antes de que las piernas ya no puedan.
should-feel = La parte delantera de los muslos trabaja mucho y se calienta igual en los dos lados.
should-not-feel = Dolor agudo detrás o debajo de la rótula, o mareo.

mistake-1 = Dejar que las rodillas se vayan hacia dentro o pasen de los dedos de los pies.
mistake-2 = Apoyar las manos en los muslos.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.
careful-2 = Consulte antes con su clínica si tiene una lesión reciente de rodilla o aún se recupera de una operación de rodilla.

# Safety: signs to stop at once.
stop-1 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-2 = Una rodilla que se bloquea o falla.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-knees-30-name = Poca flexión
level-knees-30-change = Deslícese unos tres dedos hacia abajo. Las rodillas quedan solo un poco dobladas, unos 30 grados.
level-knees-60-name = Flexión media
level-knees-60-change = Deslícese casi el largo de una mano. Las rodillas quedan dobladas unos 60 grados.
level-knees-90-name = Muslos horizontales
level-knees-90-change = Deslícese hasta que los muslos queden horizontales, como en una silla, con las rodillas encima de los tobillos.
