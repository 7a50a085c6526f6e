### The texts of the exercise in bend-back-over-chair.toml, in Spanish.

name = Extender la espalda sobre la silla
purpose = Suelta la parte alta de la espalda, que se pone rígida en la silla.
set-up = Siéntese bien atrás en una silla con respaldo bajo, hasta debajo de los omóplatos, con una toalla doblada sobre el borde y las manos detrás del cuello.
step-1 = Tome aire y extienda la espalda alta sobre el borde del respaldo.
step-2 = Deje que los codos suban un poco; las manos llevan la cabeza.
step-3 = Saque el aire y vuelva.
should-feel = Un estiramiento en la espalda alta y el pecho.
should-not-feel = Dolor en el cuello o en la zona lumbar, o mareo.

mistake-1 = Dejar caer la cabeza hacia atrás.
mistake-2 = Arquear la zona lumbar.
mistake-3 = Volcar la silla.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-2 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-3 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.

# Safety: signs to stop at once.
stop-1 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-2 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
