### The texts of the exercise in hip-press-wall.toml, in Spanish.

name = Empujar la pared con la pierna
purpose = Carga el tendón de la parte de fuera de la cadera sin mover la articulación.
set-up = Póngase de pie con el lado indicado junto a una pared, a un palmo de distancia, los pies separados al ancho de las caderas y, si quiere, una mano en la pared.
step-1 = Póngase con la espalda recta y la pelvis nivelada.
step-2 = Lleve hacia un lado la pierna indicada hasta que el borde de fuera del pie toque la pared.
step-3 = Empuje la pared hacia fuera con la fuerza que diga su nivel.
step-4 = Quédese ahí y respire.
step-5 = Suelte despacio.
should-feel = Los músculos de la parte de fuera de la cadera trabajan.
should-not-feel = Dolor agudo en la parte de fuera de la cadera o un pellizco en la ingle.

mistake-1 = Inclinarse hacia el otro lado.
mistake-2 = Empujar de golpe.
mistake-3 = Dejar caer la pelvis.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-2 = No lo haga nunca sin un apoyo firme al alcance de la mano. Use calzado firme; no lo haga con calcetines en un suelo liso.
careful-3 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Debilidad o pérdida de sensibilidad que baja por la pierna.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Presión ligera
level-light-change = Alrededor de una cuarta parte de su fuerza.
level-firm-name = Presión firme
level-firm-change = Alrededor de la mitad de su fuerza.
