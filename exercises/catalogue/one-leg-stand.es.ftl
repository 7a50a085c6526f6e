### The texts of the exercise in one-leg-stand.toml, in Spanish.

name = De pie sobre una pierna
purpose = Entrena el tobillo, la cadera y el sentido de la posición, que mantienen el cuerpo en pie en un escalón o en un suelo irregular.
set-up = Póngase junto a un mueble firme, al alcance de la mano, o en un rincón, con el suelo despejado y seco y buena luz. El lado indicado es la pierna de apoyo.
step-1 = Fije la vista en un punto a la altura de los ojos.
step-2 = Lleve el peso al pie indicado y levante el otro un poco hacia atrás, sin tocar la pierna de apoyo.
step-3 = Cruce los brazos sobre el pecho si se siente con seguridad. Si no, deje la punta de los dedos justo encima del mueble.
step-4 = Mantenga el cuerpo recto y tranquilo. Los movimientos pequeños del tobillo están bien.
step-5 = Baje el pie o sujétese antes de perder el equilibrio. Así termina el intento.
should-feel = El pie y el tobillo trabajan todo el tiempo; el glúteo de la pierna de apoyo se va cansando.
should-not-feel = Dolor en el tobillo, la rodilla o la cadera, mareo o miedo a caerse.

mistake-1 = Enganchar el pie libre en la pierna de apoyo.
mistake-2 = Dejar que la cadera se vaya hacia fuera.
mistake-3 = Mirarse el pie o aguantar la respiración.

# Safety: precautions.
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Hágalo con calzado firme o sin calzado, según le indicaron; nunca con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.
careful-3 = Use superficies blandas o cierre los ojos solo si está en su plan.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Mareo, sensación de que todo gira, dolor en el pecho o debilidad repentina: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan, o un tobillo que falla.

# Levels, from easy to hard.
level-firm-open-name = Suelo firme, ojos abiertos
level-firm-open-change = Sin calzado en el suelo, la vista en un punto a la altura de los ojos.
level-towel-open-name = Toalla doblada, ojos abiertos
level-towel-open-change = Una toalla de baño doblada dos veces, plana, sobre un suelo que no resbale.
level-cushion-open-name = Cojín, ojos abiertos
level-cushion-open-change = Un cojín de asiento plano y firme, seco, sobre un suelo que no resbale.
level-foam-open-name = Espuma gruesa, ojos abiertos
level-foam-open-change = Un cojín grueso y blando o una plancha de espuma, sobre un suelo que no resbale.
level-firm-closed-name = Suelo firme, ojos cerrados
level-firm-closed-change = Busque primero el equilibrio y luego cierre los ojos. Ábralos antes de tambalearse mucho.
level-towel-closed-name = Toalla doblada, ojos cerrados
level-towel-closed-change = Como en el suelo firme, sobre una toalla de baño doblada dos veces.
level-cushion-closed-name = Cojín, ojos cerrados
level-cushion-closed-change = Como en el suelo firme, sobre un cojín de asiento plano y firme.
