### The texts of the exercise in worktop-heel-to-toe-walk.toml, in Spanish.

name = Caminar punta-talón junto a la encimera
purpose = Entrena el equilibrio al caminar con los pies en línea.
set-up = Póngase de pie junto a una encimera larga, con una mano en ella y calzado firme.
step-1 = Ponga un talón justo delante de los dedos del otro pie.
step-2 = Lleve el peso hacia delante y pase el otro pie al frente del mismo modo. Cada paso es un movimiento.
step-3 = Mire al frente. Al final sujétese, dese la vuelta y vuelva.
should-feel = Pequeños movimientos de los pies y los tobillos para mantenerse derecho.
should-not-feel = Una inestabilidad que no consigue controlar.

mistake-1 = Mirarse los pies.
mistake-2 = Ir deprisa.
mistake-3 = Cruzar los pies.

# Safety: precautions.
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Use calzado firme; no lo haga con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Mareo o sensación de que todo gira: sujétese, siéntese y no siga por hoy. Llame a su clínica antes de repetir el ejercicio.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-hand-name = Una mano en la encimera
level-hand-change = Una mano se desliza por la encimera.
level-no-hand-name = La mano encima, sin apoyar
level-no-hand-change = La mano va por encima de la encimera, lista para sujetarse.
