### The texts of the exercise in knees-open-side-lying.toml, in Spanish.

name = Abrir las rodillas, de costado
purpose = Fortalece los músculos de fuera y de atrás de la cadera.
set-up = Acuéstese sobre el lado contrario al indicado, con una almohada bajo la cabeza, las caderas y las rodillas dobladas y los pies juntos, en línea con la espalda.
step-1 = Ponga la pelvis mirando al frente, con una cadera encima de la otra.
step-2 = Sin separar los pies, suba la rodilla de arriba mientras la pelvis no se mueva.
step-3 = Quédese ahí un momento.
step-4 = Baje despacio.
should-feel = Los músculos del lado y de atrás de la cadera de arriba trabajan.
should-not-feel = Un pellizco en la ingle o dolor en la zona lumbar.

mistake-1 = Girar la pelvis hacia atrás.
mistake-2 = Levantar los pies.
mistake-3 = Dejar caer la rodilla.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-2 = Si le duele acostarse sobre el lado de abajo, use una colchoneta gruesa o dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-2 = Debilidad o pérdida de sensibilidad que baja por la pierna.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-free-name = Sin banda
level-free-change = Solo el peso de la pierna.
level-band-name = Con una banda
level-band-change = Una banda suave alrededor de los muslos, justo por encima de las rodillas.
