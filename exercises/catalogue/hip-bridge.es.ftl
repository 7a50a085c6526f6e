### The texts of the exercise in hip-bridge.toml, in Spanish.

name = Puente
purpose = Fortalece los glúteos y la parte de atrás de los muslos, y da estabilidad a la zona lumbar y la pelvis.
set-up = Acuéstese boca arriba en una colchoneta, con las rodillas dobladas, las plantas de los pies apoyadas y separadas al ancho de las caderas, y los brazos estirados a los lados.
step-1 = Saque el aire y meta un poco la parte baja del abdomen.
step-2 = Apriete los dos pies contra el suelo y suba la pelvis hasta que los hombros, las caderas y las rodillas queden en línea.
step-3 = Mantenga los dos lados de la pelvis a la misma altura.
step-4 = Quédese ahí y respire con calma.
step-5 = Baje despacio, hasta apoyarse en la colchoneta.
should-feel = Los glúteos y la parte de atrás de los muslos trabajan en los dos lados.
should-not-feel = Un pellizco en la zona lumbar, un calambre que no se pasa o presión en el cuello.

mistake-1 = Arquear la espalda para subir más.
mistake-2 = Dejar que las rodillas se separen o que baje un lado de la cadera.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.
careful-2 = Consulte antes con su clínica si está embarazada, o si al acostarse boca arriba le falta el aire o se marea.
careful-3 = Consulte antes con su clínica si tiene una hernia o si aún se recupera de una operación del abdomen.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-3 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-heels-close-name = Talones cerca
level-heels-close-change = Los talones a un palmo de los glúteos.
level-heels-away-name = Talones más lejos
level-heels-away-change = Los talones a un pie de distancia más. Trabaja más la parte de atrás del muslo.
