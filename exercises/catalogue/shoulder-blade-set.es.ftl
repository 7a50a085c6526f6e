### The texts of the exercise in shoulder-blade-set.toml, in Spanish.

name = Juntar los omóplatos
purpose = Abre el pecho después de pasar mucho tiempo con el cuerpo inclinado hacia delante y entrena los músculos que sujetan los omóplatos a las costillas.
set-up = Siéntese en una silla con la espalda recta y las plantas de los pies apoyadas. Doble los codos en ángulo recto, con los brazos junto a las costillas y las palmas enfrentadas.
step-1 = Alargue el cuello. Los hombros se quedan donde están: ni subidos ni empujados hacia abajo.
step-2 = Lleve los omóplatos con suavidad hacia atrás, acercándolos entre sí.
step-3 = Deje que los codos vayan un poco hacia atrás.
step-4 = Manténgase así con alrededor de un tercio de su fuerza y respire con calma.
step-5 = Relaje despacio y del todo.
should-feel = Un trabajo ligero entre los omóplatos, y el pecho que se abre por delante.
should-not-feel = Un pellizco encima del hombro, hormigueo que baja por el brazo o tensión en el cuello.

mistake-1 = Subir los hombros hacia las orejas o empujarlos hacia abajo.
mistake-2 = Sacar las costillas y arquear la espalda.
mistake-3 = Apretar con toda la fuerza o aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Si nota un pellizco, acorte el movimiento. No hace falta que sea grande para que sirva.
careful-3 = Si tiene los hombros caídos o siente hormigueo en los brazos, consulte antes en la clínica: puede que le convenga más otro ejercicio.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-elbows-bent-name = Codos doblados junto al cuerpo
level-elbows-bent-change = Los brazos se quedan junto a las costillas.
level-arms-ahead-name = Brazos estirados al frente
level-arms-ahead-change = Los brazos estirados delante de usted. Solo se mueven los omóplatos.
level-arms-ahead-set-up = Siéntese en una silla con la espalda recta y las plantas de los pies apoyadas. Estire los dos brazos al frente a la altura de los hombros, o más abajo si le resulta más cómodo, con los codos rectos y las palmas enfrentadas.
level-arms-ahead-step-1 = Alargue el cuello. Los hombros se quedan donde están: ni subidos ni empujados hacia abajo.
level-arms-ahead-step-2 = Lleve los omóplatos con suavidad hacia atrás, acercándolos entre sí. Las manos se acercan un poco a usted.
level-arms-ahead-step-3 = Mantenga los codos rectos.
level-arms-ahead-step-4 = Manténgase así con alrededor de un tercio de su fuerza y respire con calma.
level-arms-ahead-step-5 = Relaje despacio y baje los brazos hasta la siguiente repetición.
