### The texts of the exercise in neck-turn.toml, in Spanish.

name = Girar la cabeza
purpose = Mantiene la movilidad del cuello para mirar por encima del hombro.
set-up = Siéntese en una silla con la espalda recta, las manos sobre los muslos y la mirada al frente.
step-1 = Gire la cabeza despacio hacia un lado, primero los ojos.
step-2 = Quédese ahí una respiración.
step-3 = Vuelva al centro y gire hacia el otro lado.
should-feel = Una tirantez ligera en el lado del cuello.
should-not-feel = Mareo, dolor que baja a un brazo o dolor de cabeza.

mistake-1 = Inclinar la cabeza.
mistake-2 = Girar también los hombros.
mistake-3 = Forzar el final.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = Consulte antes con su clínica si al mover el cuello se marea o le cambia la visión.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
