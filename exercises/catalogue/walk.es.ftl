### The texts of the exercise in walk.toml, in Spanish.

name = Caminar
purpose = Mantiene en marcha el corazón, los músculos y el ánimo, y le muestra al cuerpo que moverse es seguro.
set-up = Póngase calzado firme. Elija un camino que conozca, con sitios donde sentarse o dar la vuelta. Lleve el teléfono; la pantalla puede estar apagada.
step-1 = Camine a un paso que le permita hablar con frases enteras.
step-2 = Deje que los brazos se balanceen y mire al frente.
step-3 = Dé la vuelta a tiempo: el camino de vuelta también cuenta.
should-feel = Más calor y la respiración algo más rápida; músculos que han trabajado.
should-not-feel = Dolor que crece cada minuto, presión en el pecho o tanta falta de aire que no pueda hablar.

mistake-1 = Empezar más rápido de lo que puede mantener.
mistake-2 = Hacer el doble en un día bueno y nada al siguiente.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una enfermedad del corazón o de los pulmones, o si hace poco se ha mareado o caído al caminar.
careful-2 = Lleve bastón o compañía si es lo habitual en usted.

# Safety: signs to stop at once.
stop-1 = Presión o dolor en el pecho, falta de aire en reposo o un desmayo: llame al número de emergencias de su zona.
stop-2 = Un chasquido repentino o una sensación de pedrada en la pantorrilla: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese. Si no se pasa en unos minutos, llame a su clínica.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-level-ground-name = En llano
level-level-ground-change = Terreno llano, sin escaleras.
level-with-slopes-name = Con cuestas
level-with-slopes-change = Un camino con cuestas o escaleras, durante los mismos minutos.
