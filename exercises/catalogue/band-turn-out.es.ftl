### The texts of the exercise in band-turn-out.toml, in Spanish.

name = Girar el brazo hacia fuera con una banda
purpose = Fortalece los músculos que giran el hombro hacia fuera y lo mantienen en su sitio.
set-up = Póngase de pie con la espalda recta, los codos doblados en ángulo recto junto al cuerpo y una toalla enrollada entre el codo indicado y el costado. Sujete la banda con las dos manos, apenas tensa.
step-1 = Deje la otra mano quieta junto al abdomen.
step-2 = Gire el antebrazo indicado hacia fuera, sin separar el codo de la toalla.
step-3 = Llegue solo hasta donde no duela.
step-4 = Vuelva despacio.
should-feel = Los músculos de detrás del hombro trabajan.
should-not-feel = Un pellizco en la parte de delante o de arriba del hombro.

mistake-1 = Doblar la muñeca hacia atrás.
mistake-2 = Separar el codo del cuerpo.
mistake-3 = Girar también el tronco.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Antes de cada uso compruebe que la banda no tiene grietas, y no deje nunca que apunte a los ojos.
careful-3 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Banda suave
level-light-change = Una banda con la que podría hacer algunas más.
level-firm-name = Banda más fuerte
level-firm-change = La siguiente banda, más fuerte.
