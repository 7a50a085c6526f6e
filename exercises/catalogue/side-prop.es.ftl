### The texts of the exercise in side-prop.toml, in Spanish.

name = Apoyo lateral en el antebrazo
purpose = Fortalece el lado del tronco y da estabilidad a la zona lumbar.
set-up = Acuéstese sobre el lado indicado, con las rodillas dobladas, el codo justo debajo del hombro y la otra mano en la cadera.
step-1 = Apriete el antebrazo contra la colchoneta, con el hombro lejos de la oreja.
step-2 = Suba la pelvis hasta que el hombro, la cadera y la rodilla queden en línea.
step-3 = Quédese ahí y respire con calma.
step-4 = Baje despacio.
should-feel = El lado de abajo del tronco y el hombro trabajan.
should-not-feel = Dolor en el hombro o en la zona lumbar.

mistake-1 = Dejar que la pelvis baje o gire hacia atrás.
mistake-2 = Hundirse en el hombro.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.
careful-2 = Consulte antes con su clínica si tiene una hernia o si aún se recupera de una operación del abdomen.
careful-3 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-4 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-3 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-knees-name = Sobre las rodillas
level-knees-change = Con las rodillas dobladas; el antebrazo y la rodilla de abajo llevan el peso.
level-feet-name = Sobre los pies
level-feet-change = Con las piernas estiradas; el antebrazo y los pies llevan el peso.
level-feet-set-up = Acuéstese sobre el lado indicado, con las piernas estiradas, un pie encima del otro o justo delante, el codo justo debajo del hombro y la otra mano en la cadera.
level-feet-step-1 = Apriete el antebrazo contra la colchoneta, con el hombro lejos de la oreja.
level-feet-step-2 = Suba la pelvis hasta que el hombro, la cadera y los pies queden en línea.
level-feet-step-3 = Quédese ahí y respire con calma.
level-feet-step-4 = Baje despacio.
