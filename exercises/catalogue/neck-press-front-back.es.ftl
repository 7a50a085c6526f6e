### The texts of the exercise in neck-press-front-back.toml, in Spanish.

name = La frente y la nuca contra la mano
purpose = Fortalece la parte de delante y de atrás del cuello sin moverlo.
set-up = Siéntese en una silla con la espalda recta y la mirada al frente. Ponga una palma en la frente.
step-1 = Estírese hacia arriba y deje bajar los dos hombros.
step-2 = Empuje la frente contra la mano. Nada se mueve, porque la mano empuja con la misma fuerza.
step-3 = Aumente la fuerza despacio, durante una respiración.
step-4 = Deje la barbilla donde está y siga respirando.
step-5 = Relaje tan despacio como aumentó la fuerza.
should-feel = Un trabajo ligero en la parte de delante o de atrás del cuello.
should-not-feel = Que la cabeza se mueva, dolor agudo, hormigueo en un brazo, mareo o dolor de cabeza.

mistake-1 = Empujar tanto que la cabeza se mueve.
mistake-2 = Empezar o dejar de empujar de golpe.
mistake-3 = Adelantar la barbilla.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-front-light-name = Hacia delante, presión ligera
level-front-light-change = La frente contra la palma, apenas más que el peso de la mano.
level-front-firm-name = Hacia delante, presión firme
level-front-firm-change = La frente contra la palma, con una cuarta parte de su fuerza. La cabeza sigue sin moverse.
level-back-light-name = Hacia atrás, presión ligera
level-back-light-change = La nuca contra la palma, apenas más que el peso de la mano.
level-back-light-set-up = Siéntese en una silla con la espalda recta y la mirada al frente. Ponga una palma detrás de la cabeza, justo por encima del cuello.
level-back-light-step-1 = Estírese hacia arriba y deje bajar los dos hombros.
level-back-light-step-2 = Empuje la cabeza hacia atrás contra la mano. Nada se mueve, porque la mano empuja hacia delante con la misma fuerza.
level-back-light-step-3 = Aumente la fuerza despacio, durante una respiración.
level-back-light-step-4 = Deje la barbilla donde está y siga respirando.
level-back-light-step-5 = Relaje tan despacio como aumentó la fuerza.
level-back-firm-name = Hacia atrás, presión firme
level-back-firm-change = La nuca contra la palma, con una cuarta parte de su fuerza.
level-back-firm-set-up = Siéntese en una silla con la espalda recta y la mirada al frente. Ponga una palma detrás de la cabeza, justo por encima del cuello.
level-back-firm-step-1 = Estírese hacia arriba y deje bajar los dos hombros.
level-back-firm-step-2 = Empuje la cabeza hacia atrás contra la mano. Nada se mueve, porque la mano empuja hacia delante con la misma fuerza.
level-back-firm-step-3 = Aumente la fuerza despacio, durante una respiración.
level-back-firm-step-4 = Deje la barbilla donde está y siga respirando.
level-back-firm-step-5 = Relaje tan despacio como aumentó la fuerza.
