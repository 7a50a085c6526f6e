### The texts of the exercise in arms-lift-front-lying.toml, in Spanish.

name = Elevar los brazos, boca abajo
purpose = Fortalece los músculos de la parte baja de los omóplatos.
set-up = Acuéstese boca abajo en una colchoneta, con la frente sobre una toalla doblada y los brazos a los lados, con las palmas hacia abajo.
step-1 = Lleve los omóplatos hacia abajo y un poco hacia el centro.
step-2 = Separe los dos brazos de la colchoneta. La frente se queda en la toalla.
step-3 = Quédese ahí y respire.
step-4 = Baje despacio.
should-feel = Los músculos que están entre los omóplatos y debajo de ellos trabajan.
should-not-feel = Presión en la zona lumbar, un pellizco en un hombro u hormigueo en los brazos.

mistake-1 = Levantar la cabeza.
mistake-2 = Subir los hombros hacia las orejas.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si está embarazada o si aún se recupera de una operación del pecho o del abdomen: puede que no deba acostarse boca abajo.
careful-2 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-3 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-beside-name = Brazos a los lados
level-beside-change = Los brazos están junto al cuerpo, con las palmas hacia abajo.
level-over-name = Brazos junto a la cabeza
level-over-change = Los brazos están estirados más allá de la cabeza, con los pulgares hacia arriba.
level-over-set-up = Acuéstese boca abajo en una colchoneta, con la frente sobre una toalla doblada y los brazos estirados más allá de la cabeza, algo separados y con los pulgares hacia arriba.
level-over-step-1 = Lleve los omóplatos hacia abajo, lejos de las orejas.
level-over-step-2 = Separe los dos brazos un palmo de la colchoneta. La frente se queda en la toalla.
level-over-step-3 = Quédese ahí y respire.
level-over-step-4 = Baje despacio.
