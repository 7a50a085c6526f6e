### The texts of the exercise in hip-hinge.toml, in Spanish.

name = Inclinarse desde las caderas
purpose = Entrena a inclinarse y levantar cosas desde las caderas mientras la espalda conserva su forma.
set-up = Póngase de pie con los pies separados al ancho de las caderas. Sujete un palo a lo largo de la espalda, una mano detrás del cuello y la otra detrás de la zona lumbar: toca la cabeza, la espalda alta y el sacro.
step-1 = Afloje un poco las rodillas.
step-2 = Lleve las caderas hacia atrás e inclínese. El palo sigue tocando los tres puntos.
step-3 = Pare cuando esté a punto de perder uno de los contactos.
step-4 = Lleve las caderas hacia delante y suba.
should-feel = Los glúteos y la parte de atrás de los muslos trabajan; la espalda está quieta.
should-not-feel = Dolor en la zona lumbar o dolor que baja por una pierna.

mistake-1 = Redondear la espalda.
mistake-2 = Doblar las rodillas en lugar de las caderas.
mistake-3 = Levantar la cabeza.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-2 = Póngase sobre un suelo seco que no resbale, con calzado firme.
careful-3 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-half-name = Hasta la mitad
level-half-change = Inclínese hasta donde las manos llegarían a la mitad de los muslos.
level-full-name = Hasta las rodillas
level-full-change = Inclínese hasta donde las manos llegarían a las rodillas.
