### The texts of the exercise in nod-sitting.toml, in Spanish.

name = Asentir un poco, en la silla
purpose = Entrena los músculos profundos de delante del cuello, que sostienen la cabeza cuando usted está en una silla.
set-up = Siéntese en una silla con la espalda recta, los pies apoyados y las manos sobre los muslos.
step-1 = Estírese hacia arriba y deje bajar los hombros.
step-2 = Asienta como con un «sí» pequeño: la barbilla baja un poco y la nuca se alarga.
step-3 = Quédese ahí con poco esfuerzo y siga respirando.
step-4 = Suelte despacio.
should-feel = Un trabajo ligero en lo profundo de la parte de delante del cuello.
should-not-feel = Que trabajen mucho los músculos de los lados de la garganta, dolor o mareo.

mistake-1 = Apretar la barbilla contra el pecho.
mistake-2 = Adelantar la cabeza.
mistake-3 = Apretar los dientes.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-head-on-wall-name = La cabeza en la pared
level-head-on-wall-change = La parte de atrás de la cabeza se apoya ligeramente en una pared.
level-head-on-wall-set-up = Siéntese en una silla con el respaldo junto a una pared, de modo que la cabeza la toque ligeramente por detrás.
level-head-on-wall-step-1 = Estírese hacia arriba y deje bajar los hombros.
level-head-on-wall-step-2 = Asienta como con un «sí» pequeño: la cabeza sube resbalando por la pared y la barbilla baja un poco.
level-head-on-wall-step-3 = Quédese ahí con poco esfuerzo y siga respirando.
level-head-on-wall-step-4 = Suelte despacio.
level-free-name = La cabeza libre
level-free-change = Nada detrás de la cabeza.
