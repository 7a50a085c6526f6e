### The texts of the exercise in band-side-step.toml, in Spanish.

name = Pasos laterales con una banda
purpose = Fortalece los músculos de fuera de la cadera para caminar.
set-up = Póngase de pie junto a una encimera a la que pueda sujetarse, con los pies separados al ancho de las caderas y las rodillas y caderas algo dobladas.
step-1 = Dé un paso hacia un lado, con la punta de los pies hacia delante.
step-2 = Deje que el otro pie siga despacio, para que la banda no se afloje.
step-3 = Después de cada serie, vuelva hacia el otro lado.
should-feel = Los músculos de fuera de las dos caderas trabajan.
should-not-feel = Un pellizco en la ingle o dolor en la zona lumbar.

mistake-1 = Inclinarse hacia un lado.
mistake-2 = Dejar que las rodillas se vayan hacia dentro.
mistake-3 = Arrastrar el pie.

# Safety: precautions.
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Use calzado firme; no lo haga con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.
careful-3 = Antes de cada uso compruebe que la banda no tiene grietas, y no deje nunca que apunte a los ojos.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Debilidad o pérdida de sensibilidad que baja por la pierna.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-free-name = Sin banda
level-free-change = Solo el peso de la pierna.
level-band-name = Banda en los tobillos
level-band-change = Una banda suave alrededor de los dos tobillos.
