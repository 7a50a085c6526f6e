### The texts of the exercise in head-lift-small.toml, in Spanish.

name = Elevar un poco la cabeza, boca arriba
purpose = Entrena los músculos de delante del cuello para que sostengan más tiempo la cabeza.
set-up = Acuéstese boca arriba con las rodillas dobladas, la cabeza sobre las almohadas de su nivel y los brazos a los lados.
step-1 = Primero asienta un poco, como con un «sí».
step-2 = Sin perder ese gesto, separe la cabeza de la almohada la altura de un dedo.
step-3 = Quédese ahí y respire.
step-4 = Baje primero la cabeza y después suelte el gesto.
should-feel = Un trabajo en la parte de delante del cuello, igual en los dos lados.
should-not-feel = Que la barbilla se adelante, dolor, mareo o dolor de cabeza.

mistake-1 = Dejar que la barbilla apunte hacia arriba.
mistake-2 = Subir más de un dedo.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = Si se marea al acostarse o al levantarse, hágalo despacio y póngase primero de lado.
careful-3 = Consulte antes con su clínica si está embarazada, o si al acostarse boca arriba le falta el aire o se marea.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-two-pillows-name = Desde dos almohadas
level-two-pillows-change = La cabeza empieza alta y el recorrido es corto.
level-one-name = Desde una almohada
level-one-change = La cabeza empieza más baja.
