### The texts of the exercise in side-lying-turn-out.toml, in Spanish.

name = Girar el brazo hacia fuera, de costado
purpose = Fortalece los músculos que giran el hombro hacia fuera.
set-up = Acuéstese sobre el lado contrario al indicado, con una almohada bajo la cabeza y las rodillas dobladas. El brazo indicado queda arriba, con una toalla enrollada entre el codo y el costado, el codo en ángulo recto y la mano delante del abdomen.
step-1 = Ponga el hombro bajo y hacia atrás.
step-2 = Suba la mano: el antebrazo gira hacia arriba y el codo se queda en la toalla.
step-3 = Llegue solo hasta donde no duela.
step-4 = Baje despacio.
should-feel = Los músculos de detrás del hombro trabajan.
should-not-feel = Un pellizco en la parte de delante o de arriba del hombro.

mistake-1 = Girar el cuerpo hacia atrás.
mistake-2 = Separar el codo de la toalla.
mistake-3 = Dejar caer la mano.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Si le duele acostarse sobre el lado de abajo, use una colchoneta gruesa o dígalo en la consulta.
careful-3 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

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
