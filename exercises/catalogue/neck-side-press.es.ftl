### The texts of the exercise in neck-side-press.toml, in Spanish.

name = La cabeza contra la mano
purpose = Fortalece el lado del cuello sin moverlo, para que sostenga mejor la cabeza.
set-up = Siéntese o póngase de pie, con la espalda recta y la mirada al frente. Ponga la palma de la mano del lado indicado contra ese lado de la cabeza. Si no puede subir tanto ese brazo sin dolor, póngase con ese lado junto a una pared y una toalla doblada en lugar de la mano.
step-1 = Estírese hacia arriba y deje bajar los dos hombros.
step-2 = Empuje la cabeza contra la mano o la toalla. Nada se mueve, porque la mano empuja con la misma fuerza.
step-3 = Aumente la fuerza despacio, durante una respiración.
step-4 = Siga respirando.
step-5 = Relaje tan despacio como aumentó la fuerza.
should-feel = Un trabajo ligero a lo largo del lado indicado del cuello.
should-not-feel = Que la cabeza se mueva, dolor agudo, hormigueo en el brazo, mareo o dolor de cabeza.

mistake-1 = Empujar tanto que la cabeza se inclina.
mistake-2 = Empezar o dejar de empujar de golpe.
mistake-3 = Subir el hombro.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-touch-name = Presión ligera
level-light-touch-change = Apenas más que el peso de la mano.
level-firm-touch-name = Presión firme
level-firm-touch-change = Alrededor de una cuarta parte de su fuerza. La cabeza sigue sin moverse.
