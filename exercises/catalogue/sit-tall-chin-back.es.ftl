### The texts of the exercise in sit-tall-chin-back.toml, in Spanish.

name = Espalda recta, barbilla atrás
purpose = Alivia el cuello y la parte alta de la espalda después de inclinarse hacia la pantalla, y entrena los músculos pequeños que sostienen la cabeza.
set-up = Siéntese hacia el borde de una silla estable, con las plantas de los pies apoyadas y las manos en los muslos. Mire al frente.
step-1 = Estírese hacia arriba, como si un hilo tirara de la coronilla.
step-2 = Deslice la barbilla recta hacia atrás, como quien cierra un cajón. No incline la cabeza.
step-3 = Deje los hombros bajos y separados de las orejas.
step-4 = Manténgase así con alrededor de un tercio de su fuerza y respire con calma.
step-5 = Relaje despacio y mire alrededor antes de la siguiente repetición.
should-feel = Un trabajo ligero en la parte delantera y trasera del cuello y entre los omóplatos, quizá un estiramiento suave en la nuca.
should-not-feel = Dolor agudo, un pellizco en la garganta, hormigueo en los brazos, mareo o un dolor de cabeza que empeora.

mistake-1 = Bajar la cabeza o mirar hacia arriba en lugar de deslizar la barbilla recta.
mistake-2 = Empujar con toda la fuerza, hasta que el cuello tiembla.
mistake-3 = Subir los hombros o aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = Consulte antes con su clínica si al mover el cuello se marea o le cambia la visión.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Mareo, visión doble, dificultad para hablar o tragar, cara dormida o caída, o un dolor de cabeza repentino e intenso: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-wall-name = De pie, con la espalda en la pared
level-wall-change = La pared le ayuda a notar cuándo la cabeza ha ido recta hacia atrás.
level-chair-name = En la silla, sin respaldo
level-chair-change = Sin apoyo detrás, usted busca la posición recta.
level-standing-name = De pie, sin apoyo
level-standing-change = El peso repartido en los dos pies, sin apoyo detrás.
