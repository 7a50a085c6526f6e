### The texts of the exercise in side-lying-leg-lift.toml, in Spanish.

name = Elevar la pierna, de costado
purpose = Fortalece los músculos del lado de la cadera, que mantienen la pelvis recta al caminar.
set-up = Acuéstese sobre el lado contrario al indicado, con una almohada bajo la cabeza, la rodilla de abajo doblada y otra almohada entre las rodillas. La pierna indicada queda arriba, en línea con el tronco.
step-1 = Ponga la pelvis mirando al frente, con una cadera encima de la otra.
step-2 = Guiando con el talón, separe de la almohada la pierna de arriba y súbala hasta donde diga su nivel.
step-3 = Quédese ahí sin girar el cuerpo hacia atrás.
step-4 = Baje despacio hasta apoyar la pierna otra vez en la almohada, no más abajo que la cadera.
should-feel = Los músculos del lado y de atrás de la cadera de arriba trabajan y se cansan.
should-not-feel = Un pellizco en la ingle, dolor por fuera de la cadera sobre la que se apoya o dolor en la zona lumbar.

mistake-1 = Girar la pelvis hacia atrás.
mistake-2 = Girar la punta del pie hacia el techo.
mistake-3 = Lanzar la pierna, o dejar que baje más que la cadera.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-2 = Si le duele acostarse sobre el lado de abajo, use una colchoneta gruesa o dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-2 = Debilidad o pérdida de sensibilidad que baja por la pierna.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-to-level-name = Hasta la altura de la cadera
level-to-level-change = Separe la pierna de la almohada solo hasta que quede horizontal.
level-above-level-name = Por encima de la cadera
level-above-level-change = Suba tanto como pueda sin que se mueva la pelvis.
