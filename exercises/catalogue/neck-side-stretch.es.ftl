### The texts of the exercise in neck-side-stretch.toml, in Spanish.

name = Estirar el lado del cuello
purpose = Estira los músculos que van del cuello al hombro.
set-up = Siéntese en una silla con la espalda recta. La mano del lado indicado sujeta el borde del asiento.
step-1 = Deje bajar el hombro indicado.
step-2 = Incline la cabeza hacia el otro lado hasta notar tirantez en el lado indicado.
step-3 = Quédese ahí y respire con calma.
step-4 = Vuelva despacio.
should-feel = Una tirantez en el lado del cuello, hasta el hombro.
should-not-feel = Hormigueo en el brazo, mareo o un pellizco en el lado hacia el que se inclina.

mistake-1 = Girar la cabeza.
mistake-2 = Subir el hombro.
mistake-3 = Tirar de la cabeza con la mano.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = El movimiento no debe provocar hormigueo. Si lo nota, hágalo más corto y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
