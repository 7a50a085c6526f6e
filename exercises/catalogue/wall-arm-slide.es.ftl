### The texts of the exercise in wall-arm-slide.toml, in Spanish.

name = Subir los antebrazos por la pared
purpose = Entrena los músculos que giran los omóplatos hacia arriba al elevar los brazos.
set-up = Póngase de pie de cara a una pared, si quiere con un pie algo adelantado. Apoye los dos antebrazos en la pared, con los codos a la altura del pecho y los meñiques tocándola.
step-1 = Apriete un poco los antebrazos contra la pared.
step-2 = Deslícelos hacia arriba hasta donde diga su nivel y deje que el cuerpo acompañe.
step-3 = Quédese ahí un momento con los hombros lejos de las orejas.
step-4 = Baje despacio.
should-feel = Un trabajo alrededor de los omóplatos y a los lados del pecho.
should-not-feel = Un pellizco en lo alto del hombro u hormigueo en los brazos.

mistake-1 = Subir los hombros hacia las orejas.
mistake-2 = Arquear la zona lumbar.
mistake-3 = Separar los antebrazos de la pared.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-low-name = Hasta la frente
level-low-change = Las manos suben hasta la altura de la frente.
level-overhead-name = Por encima de la cabeza
level-overhead-change = Las manos suben mientras los hombros sigan bajos.
