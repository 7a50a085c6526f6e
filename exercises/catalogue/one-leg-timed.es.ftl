### The texts of the exercise in one-leg-timed.toml, in Spanish.

name = Equilibrio cronometrado sobre una pierna
purpose = Se hace siempre de la misma manera, para poder comparar los tiempos.
set-up = Póngase sin calzado junto a un mueble firme, al alcance de la mano, o en un rincón, con el suelo firme, despejado y seco y buena luz. El lado indicado es la pierna de apoyo.
step-1 = Fije la vista en un punto a la altura de los ojos.
step-2 = Cruce los dos brazos sobre el pecho. Si el teléfono no está en un bolsillo, una mano se queda junto al teléfono.
step-3 = Levante un poco el otro pie, sin tocar la pierna de apoyo.
step-4 = Descruce los brazos y sujétese, o baje el pie, antes de perder el equilibrio. Así termina el intento.
should-feel = El pie y el tobillo trabajan todo el tiempo.
should-not-feel = Dolor en el tobillo, la rodilla o la cadera, mareo o miedo a caerse.

mistake-1 = Enganchar el pie libre en la pierna de apoyo.
mistake-2 = Mover el pie de apoyo.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Hágalo solo si se siente con seguridad con los brazos cruzados. No lo haga nunca sin un apoyo firme al alcance de la mano, ni con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.
careful-3 = Cierre los ojos solo si está en su plan.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Dolor en el pecho, mucha falta de aire, debilidad repentina, o dificultad para ver o hablar: busque atención médica urgente.
stop-3 = Mareo o sensación de que todo gira: sujétese, siéntese y no siga por hoy. Llame a su clínica antes de repetir el ejercicio.
stop-4 = Dolor por encima del límite de su plan, o un tobillo que falla.

# Levels, from easy to hard.
level-firm-open-name = Ojos abiertos
level-firm-open-change = Sin calzado en suelo firme, brazos cruzados sobre el pecho, la vista en un punto a la altura de los ojos.
level-firm-closed-name = Ojos cerrados
level-firm-closed-change = Los ojos están cerrados antes de levantar el pie. Abrirlos termina el intento.
level-firm-closed-step-1 = Sujétese con los dos pies en el suelo y lleve el peso al pie indicado.
level-firm-closed-step-2 = Cierre los ojos y no los abra.
level-firm-closed-step-3 = Cruce los dos brazos sobre el pecho. Si el teléfono no está en un bolsillo, una mano se queda junto al teléfono.
level-firm-closed-step-4 = Cuando suene la señal de inicio, levante un poco el otro pie, sin tocar la pierna de apoyo.
level-firm-closed-step-5 = Abra los ojos, sujétese o baje el pie antes de perder el equilibrio. Cualquiera de las tres cosas termina el intento.
