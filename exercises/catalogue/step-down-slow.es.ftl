### The texts of the exercise in step-down-slow.toml, in Spanish.

name = Bajar un escalón despacio
purpose = Entrena el muslo para controlar la bajada, como en una escalera.
set-up = Póngase de pie sobre un escalón que no se mueva, con una mano en la barandilla y el pie indicado cerca del borde.
step-1 = Doble despacio la rodilla indicada y baje el otro talón hasta el suelo, por delante.
step-2 = Toque el suelo ligeramente, sin cargar ese pie.
step-3 = Mantenga la rodilla por encima de los dedos del pie y la pelvis nivelada.
step-4 = Vuelva a subir con la pierna indicada.
should-feel = El muslo de la pierna indicada trabaja.
should-not-feel = Que la rodilla falle, o dolor agudo en ella.

mistake-1 = Dejarse caer sobre el pie de abajo.
mistake-2 = Dejar que la rodilla se vaya hacia dentro.
mistake-3 = Dejar que la pelvis se incline.

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
