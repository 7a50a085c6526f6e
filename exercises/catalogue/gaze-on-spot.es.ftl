### The texts of the exercise in gaze-on-spot.toml, in Spanish.

name = Mirada fija en un punto
purpose = Entrena los ojos para seguir en un punto mientras se mueve la cabeza, como al caminar y leer un letrero.
set-up = Siéntese en una silla estable, a unos dos brazos de distancia de una pared. Ponga una marca pequeña en la pared, a la altura de los ojos. Use las gafas si las necesita a esa distancia.
step-1 = Mire la marca y véala nítida.
step-2 = Gire un poco la cabeza hacia un lado y, pasando por el centro, hacia el otro, como un palmo en cada sentido. Un lado en cada golpe.
step-3 = Los ojos siguen en la marca todo el tiempo. Si se ve borrosa o salta, haga el movimiento más pequeño.
step-4 = Siga respirando, con los hombros y el tronco quietos. Descanse cuando lo indique el sonido.
should-feel = Concentración y quizá una ligera inestabilidad que se pasa en un minuto.
should-not-feel = Mareo que aumenta, náuseas o dolor en el cuello.

mistake-1 = Dejar que los ojos vayan con la cabeza.
mistake-2 = Girar más de lo que la marca se ve nítida.
mistake-3 = Mover todo el tronco.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación de cuello, o si tiene artritis reumatoide.
careful-2 = Consulte antes con su clínica si al mover el cuello se desmaya o le cambia la vista.
careful-3 = Hágalo sentado y siga sentado después hasta que se pase el mareo. No conduzca justo después si se siente mareado.

# Safety: signs to stop at once.
stop-1 = Hormigueo, entumecimiento o debilidad nuevos en un brazo o una mano.
stop-2 = Ver doble, dificultad para hablar o tragar, la cara dormida o caída, un dolor de cabeza repentino y fuerte, inestabilidad repentina al estar de pie, o desmayo: busque atención médica urgente.
stop-3 = Mareo o náuseas que aumentan al hacerlo: pare y siga sentado. Si no se pasa en unos minutos, llame a su clínica antes de repetir el ejercicio.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-side-to-side-name = De lado a lado
level-side-to-side-change = La cabeza gira a izquierda y derecha, como en un «no» pequeño.
level-up-and-down-name = Arriba y abajo
level-up-and-down-change = La cabeza sube y baja, como en un «sí» pequeño.
level-up-and-down-set-up = Siéntese en una silla estable, a unos dos brazos de distancia de una pared. Ponga una marca pequeña en la pared, a la altura de los ojos. Use las gafas si las necesita a esa distancia.
level-up-and-down-step-1 = Mire la marca y véala nítida.
level-up-and-down-step-2 = Mueva un poco la cabeza arriba y abajo, como un palmo en cada sentido. Una dirección en cada golpe.
level-up-and-down-step-3 = Los ojos siguen en la marca todo el tiempo. Si se ve borrosa o salta, haga el movimiento más pequeño.
level-up-and-down-step-4 = Siga respirando, con los hombros y el tronco quietos. Descanse cuando lo indique el sonido.
