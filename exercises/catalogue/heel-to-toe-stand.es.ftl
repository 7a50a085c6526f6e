### The texts of the exercise in heel-to-toe-stand.toml, in Spanish.

name = Un pie delante del otro (tándem)
purpose = Entrena el equilibrio con los pies en línea, como en un camino estrecho o al girar en poco espacio.
set-up = Póngase junto a un mueble firme o en un rincón, con el suelo despejado y seco y buena luz. El lado indicado es el pie de delante.
step-1 = Fije la vista en un punto a la altura de los ojos.
step-2 = Sujétese y ponga el pie indicado delante, como diga su nivel.
step-3 = Reparta el peso entre los dos pies y estírese hacia arriba.
step-4 = Suéltese. Deje una mano justo encima del mueble.
step-5 = Sujétese o dé un paso antes de perder el equilibrio. Así termina el intento.
should-feel = Los tobillos trabajan con muchos movimientos pequeños y los muslos están activos.
should-not-feel = Mareo, dolor en el pie o la rodilla, o miedo a caerse.

mistake-1 = Mirarse los pies.
mistake-2 = Bloquear las rodillas.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Hágalo con calzado firme o sin calzado, según le indicaron; nunca con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Dolor en el pecho, mucha falta de aire, debilidad repentina, o dificultad para ver o hablar: busque atención médica urgente.
stop-3 = Mareo o sensación de que todo gira: sujétese, siéntese y no siga por hoy. Llame a su clínica antes de repetir el ejercicio.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-feet-together-name = Pies juntos
level-feet-together-change = Los dos pies uno al lado del otro, tocándose.
level-feet-together-set-up = Póngase junto a un mueble firme o en un rincón, con el suelo despejado y seco y buena luz. En este nivel los dos pies hacen lo mismo, así que el lado indicado no cambia nada.
level-feet-together-step-1 = Fije la vista en un punto a la altura de los ojos.
level-feet-together-step-2 = Sujétese y ponga los pies uno al lado del otro, de modo que se toquen.
level-feet-together-step-3 = Reparta el peso entre los dos pies y estírese hacia arriba.
level-feet-together-step-4 = Suéltese. Deje una mano justo encima del mueble.
level-feet-together-step-5 = Sujétese o dé un paso antes de perder el equilibrio. Así termina el intento.
level-half-step-name = Medio paso (semitándem)
level-half-step-change = El talón del pie indicado junto al dedo gordo del otro.
level-heel-to-toe-name = Talón y punta (tándem)
level-heel-to-toe-change = Un pie justo delante del otro, con el talón tocando los dedos.
