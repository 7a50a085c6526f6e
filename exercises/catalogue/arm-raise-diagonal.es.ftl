### The texts of the exercise in arm-raise-diagonal.toml, in Spanish.

name = Elevar el brazo en diagonal
purpose = Fortalece los músculos que suben el brazo.
set-up = Póngase de pie con la espalda recta y los brazos a los lados; el pulgar de la mano indicada apunta hacia delante.
step-1 = Baje el hombro.
step-2 = Suba el brazo estirado entre delante y el lado, con el pulgar hacia arriba, tan alto como pueda sin dolor y sin subir el hombro.
step-3 = Quédese ahí un momento.
step-4 = Baje despacio.
should-feel = Los músculos de alrededor del hombro y del omóplato trabajan.
should-not-feel = Un pellizco en lo alto del hombro u hormigueo en el brazo.

mistake-1 = Subir el hombro hacia la oreja.
mistake-2 = Inclinarse hacia el otro lado.
mistake-3 = Lanzar el brazo.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-empty-name = Mano vacía
level-empty-change = Sin peso.
level-bottle-name = Botella pequeña
level-bottle-change = Una botella con medio litro de agua.
level-bottle-bigger-name = Botella más grande
level-bottle-bigger-change = Una botella con un litro de agua.
