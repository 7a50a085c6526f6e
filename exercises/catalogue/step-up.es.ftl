### The texts of the exercise in step-up.toml, in Spanish.

name = Subir un escalón
purpose = Fortalece el muslo y la cadera para subir escaleras.
set-up = Póngase de pie delante de un escalón que no se mueva, con una mano en la barandilla. Todo el pie indicado está en el escalón.
step-1 = Inclínese un poco hacia delante, con la rodilla por encima de los dedos del pie.
step-2 = Empuje con el pie indicado y suba al escalón. El otro pie acompaña sin empujar.
step-3 = Quédese un momento con la espalda recta.
step-4 = Baje despacio hacia atrás con el otro pie.
should-feel = El muslo y el glúteo de la pierna indicada trabajan.
should-not-feel = Que la rodilla falle, o dolor agudo en ella.

mistake-1 = Impulsarse con el otro pie.
mistake-2 = Dejar que la rodilla se vaya hacia dentro.
mistake-3 = Tirar de la barandilla para subir.

# Safety: precautions.
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Use calzado firme; no lo haga con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.
careful-3 = Consulte antes con su clínica si tiene una lesión reciente de rodilla o aún se recupera de una operación de rodilla.

# Safety: signs to stop at once.
stop-1 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-2 = Una caída, o haber estado a punto de caerse.
stop-3 = Una rodilla que se bloquea, falla o se hincha.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-low-step-name = Escalón bajo
level-low-step-change = Un escalón de unos 10 centímetros.
level-stair-name = Peldaño
level-stair-change = Un peldaño normal de escalera.
