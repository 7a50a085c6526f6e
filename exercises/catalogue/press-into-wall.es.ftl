### The texts of the exercise in press-into-wall.toml, in Spanish.

name = Empujar la pared
purpose = Hace trabajar los músculos del hombro sin moverlo.
set-up = Póngase de pie con el lado indicado junto a una pared y una toalla enrollada entre ese codo y el costado. El codo está doblado en ángulo recto y el dorso de la mano toca la pared.
step-1 = Ponga el hombro bajo y hacia atrás.
step-2 = Empuje la pared hacia fuera con el dorso de la mano. Nada se mueve.
step-3 = Aumente la fuerza despacio, hasta un tercio de su fuerza.
step-4 = Siga respirando.
step-5 = Suelte despacio.
should-feel = Un trabajo en el hombro, sin movimiento.
should-not-feel = Dolor agudo en el hombro, o dolor que sigue después de soltar.

mistake-1 = Empujar de golpe.
mistake-2 = Separar el codo de la toalla.
mistake-3 = Subir el hombro.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.
careful-3 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-outward-name = Hacia fuera
level-outward-change = El dorso de la mano empuja la pared hacia fuera.
level-fwd-name = Hacia delante
level-fwd-change = La palma empuja la pared hacia delante.
level-fwd-set-up = Póngase de pie de cara a una pared y cerca de ella, con una toalla enrollada entre el codo indicado y el costado. El codo está doblado en ángulo recto y la palma apoyada en la pared.
level-fwd-step-1 = Ponga el hombro bajo y hacia atrás.
level-fwd-step-2 = Empuje la pared hacia delante con la palma. Nada se mueve.
level-fwd-step-3 = Aumente la fuerza despacio, hasta un tercio de su fuerza.
level-fwd-step-4 = Siga respirando.
level-fwd-step-5 = Suelte despacio.
level-bk-name = Hacia atrás
level-bk-change = El codo empuja la pared hacia atrás.
level-bk-set-up = Póngase de pie de espaldas a una pared y cerca de ella. El codo indicado está doblado en ángulo recto junto al cuerpo y toca la pared.
level-bk-step-1 = Ponga el hombro bajo y hacia atrás.
level-bk-step-2 = Empuje la pared hacia atrás con el codo. Nada se mueve.
level-bk-step-3 = Aumente la fuerza despacio, hasta un tercio de su fuerza.
level-bk-step-4 = Siga respirando.
level-bk-step-5 = Suelte despacio.
