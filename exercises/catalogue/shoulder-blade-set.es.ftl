### The texts of the exercise in shoulder-blade-set.toml, in Spanish.

name = Omóplatos atrás y abajo
purpose = Abre el pecho después de pasar mucho tiempo con el cuerpo inclinado hacia delante y entrena los músculos que sujetan los omóplatos a las costillas.
set-up = Siéntese o póngase de pie, con la espalda recta. Doble los codos en ángulo recto, con los brazos junto a las costillas y las palmas enfrentadas.
step-1 = Deje que los hombros bajen, lejos de las orejas.
step-2 = Acerque los omóplatos con suavidad entre sí y hacia abajo, como si fueran hacia los bolsillos de atrás.
step-3 = Deje que los codos vayan un poco hacia atrás.
step-4 = Manténgase así con alrededor de un tercio de su fuerza y respire con calma.
step-5 = Relaje despacio y del todo.
should-feel = Un trabajo ligero entre los omóplatos y por debajo, y el pecho que se abre por delante.
should-not-feel = Un pellizco encima del hombro, hormigueo que baja por el brazo o tensión en el cuello.

mistake-1 = Subir los hombros hacia las orejas.
mistake-2 = Sacar las costillas y arquear la espalda.
mistake-3 = Apretar con toda la fuerza o aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Si nota un pellizco, acorte el movimiento. No hace falta que sea grande para que sirva.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-elbows-bent-name = Codos doblados junto al cuerpo
level-elbows-bent-change = Los brazos se quedan junto a las costillas.
level-arms-ahead-name = Brazos estirados al frente
level-arms-ahead-change = Los brazos horizontales, delante de usted. Solo se mueven los omóplatos.
