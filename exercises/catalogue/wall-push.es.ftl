### The texts of the exercise in wall-push.toml, in Spanish.

name = Empujar para separarse de la pared
purpose = Entrena los músculos que mantienen los omóplatos pegados al tórax.
set-up = Póngase de pie a un brazo de distancia de una pared, con las manos apoyadas en ella a la altura del pecho y separadas como los hombros.
step-1 = Mantenga el cuerpo en línea.
step-2 = Doble los codos y acerque el pecho a la pared.
step-3 = Empuje hasta estirar los brazos.
step-4 = Al final empuje un poco más, para que los omóplatos se separen.
should-feel = Un trabajo a los lados del pecho, en los brazos y alrededor de los omóplatos.
should-not-feel = Dolor en la parte de delante de un hombro o en las muñecas.

mistake-1 = Dejar caer la zona lumbar.
mistake-2 = Subir los hombros.
mistake-3 = Dejar que los omóplatos sobresalgan.

# Safety: precautions.
careful-1 = Póngase sobre un suelo seco que no resbale, con calzado firme.
careful-2 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-3 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-wall-name = En una pared
level-wall-change = Las manos en una pared a la altura del pecho.
level-worktop-name = En una encimera
level-worktop-change = Las manos en una encimera que no se mueva, para que los brazos lleven más peso.
level-worktop-set-up = Póngase de pie delante de una encimera que no se mueva, con las manos en el borde, separadas como los hombros. Lleve los pies hacia atrás hasta que el cuerpo quede en línea.
level-worktop-step-1 = Mantenga el cuerpo en línea.
level-worktop-step-2 = Doble los codos y acerque el pecho a la encimera, hasta donde pueda volver sin duda.
level-worktop-step-3 = Empuje hasta estirar los brazos.
level-worktop-step-4 = Al final empuje un poco más, para que los omóplatos se separen.
