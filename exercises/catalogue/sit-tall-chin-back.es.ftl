### The texts of the exercise in sit-tall-chin-back.toml, in Spanish.

name = Espalda recta, barbilla atrás
purpose = Alivia el cuello y la parte alta de la espalda después de inclinarse hacia la pantalla, y entrena los músculos pequeños que sostienen la cabeza.
set-up = Siéntese hacia el borde de una silla estable, con las plantas de los pies apoyadas y las manos en los muslos. Mire al frente.
step-1 = Siéntese con la espalda recta, como si un hilo tirara de la coronilla.
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
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-wall-name = De pie, con la espalda en la pared
level-wall-change = La pared le ayuda a notar cuándo la cabeza ha ido recta hacia atrás.
level-wall-set-up = Póngase de pie con la espalda contra una pared, los talones a unos diez centímetros de ella y los pies separados al ancho de las caderas. Mire al frente.
level-wall-step-1 = Estírese hacia arriba, como si un hilo tirara de la coronilla.
level-wall-step-2 = Deslice la barbilla recta hacia atrás, de modo que la cabeza se acerque a la pared. No hace falta que la toque. No incline la cabeza ni la apriete contra la pared.
level-wall-step-3 = Deje los hombros bajos y separados de las orejas.
level-wall-step-4 = Manténgase así con alrededor de un tercio de su fuerza y respire con calma.
level-wall-step-5 = Relaje despacio y mire alrededor antes de la siguiente repetición.
level-chair-name = En la silla, sin respaldo
level-chair-change = Sin apoyo detrás, usted busca la posición recta.
level-standing-name = De pie, sin apoyo
level-standing-change = El peso repartido en los dos pies, sin apoyo detrás.
level-standing-set-up = Póngase de pie con el peso repartido en los dos pies, separados al ancho de las caderas, y con algo firme al alcance de la mano. Mire al frente.
level-standing-step-1 = Estírese hacia arriba, como si un hilo tirara de la coronilla.
level-standing-step-2 = Deslice la barbilla recta hacia atrás, como quien cierra un cajón. No incline la cabeza.
level-standing-step-3 = Deje los hombros bajos y separados de las orejas.
level-standing-step-4 = Manténgase así con alrededor de un tercio de su fuerza y respire con calma.
level-standing-step-5 = Relaje despacio y mire alrededor antes de la siguiente repetición.
