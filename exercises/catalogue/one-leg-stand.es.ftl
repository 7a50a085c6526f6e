### The texts of the exercise in one-leg-stand.toml, in Spanish.

name = De pie sobre una pierna
purpose = Entrena el tobillo, la cadera y el sentido de la posición, que mantienen el cuerpo en pie en un escalón o en un suelo irregular.
set-up = Póngase sin calzado junto a un mueble firme, al alcance de la mano, o en un rincón, con el suelo despejado y seco y buena luz. El lado indicado es la pierna de apoyo.
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
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Si no debe andar sin calzado, consulte antes con su clínica. No lo haga con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.
careful-3 = Use superficies blandas o cierre los ojos solo si está en su plan.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Dolor en el pecho, mucha falta de aire, debilidad repentina, o dificultad para ver o hablar: busque atención médica urgente.
stop-3 = Mareo o sensación de que todo gira: sujétese, siéntese y no siga por hoy. Llame a su clínica antes de repetir el ejercicio.
stop-4 = Dolor por encima del límite de su plan, o un tobillo que falla.

# Levels, from easy to hard.
level-firm-open-name = Suelo firme, ojos abiertos
level-firm-open-change = En el suelo, la vista en un punto a la altura de los ojos.
level-towel-open-name = Toalla doblada, ojos abiertos
level-towel-open-change = Una toalla de baño doblada dos veces, plana, sobre un suelo que no resbale.
level-cushion-open-name = Cojín, ojos abiertos
level-cushion-open-change = Un cojín de asiento plano y firme, seco, sobre un suelo que no resbale.
level-foam-open-name = Espuma gruesa, ojos abiertos
level-foam-open-change = Un cojín grueso y blando o una plancha de espuma, sobre un suelo que no resbale.
level-firm-closed-name = Suelo firme, ojos cerrados
level-firm-closed-change = Los ojos están cerrados antes de levantar el pie. Abrirlos termina el intento.
level-firm-closed-set-up = Póngase sin calzado junto a un mueble firme, al alcance de la mano, o en un rincón, con el suelo despejado y seco, y mejor con alguien a su lado. El lado indicado es la pierna de apoyo.
level-firm-closed-step-1 = Sujétese con los dos pies en el suelo y lleve el peso al pie indicado.
level-firm-closed-step-2 = Cierre los ojos y no los abra.
level-firm-closed-step-3 = Cuando suene la señal de inicio, levante el otro pie un poco hacia atrás, sin tocar la pierna de apoyo, y suéltese. Deje la punta de los dedos justo encima del apoyo.
level-firm-closed-step-4 = Mantenga el cuerpo recto y tranquilo. Los movimientos pequeños del tobillo están bien.
level-firm-closed-step-5 = Abra los ojos, sujétese o baje el pie antes de perder el equilibrio. Cualquiera de las tres cosas termina el intento.
level-towel-closed-name = Toalla doblada, ojos cerrados
level-towel-closed-change = Como en el suelo firme, sobre una toalla de baño doblada dos veces.
level-towel-closed-set-up = Póngase sin calzado junto a un mueble firme, al alcance de la mano, o en un rincón, con el suelo despejado y seco, y mejor con alguien a su lado. El lado indicado es la pierna de apoyo.
level-towel-closed-step-1 = Sujétese con los dos pies en el suelo y lleve el peso al pie indicado.
level-towel-closed-step-2 = Cierre los ojos y no los abra.
level-towel-closed-step-3 = Cuando suene la señal de inicio, levante el otro pie un poco hacia atrás, sin tocar la pierna de apoyo, y suéltese. Deje la punta de los dedos justo encima del apoyo.
level-towel-closed-step-4 = Mantenga el cuerpo recto y tranquilo. Los movimientos pequeños del tobillo están bien.
level-towel-closed-step-5 = Abra los ojos, sujétese o baje el pie antes de perder el equilibrio. Cualquiera de las tres cosas termina el intento.
level-cushion-closed-name = Cojín, ojos cerrados
level-cushion-closed-change = Como en el suelo firme, sobre un cojín de asiento plano y firme.
level-cushion-closed-set-up = Póngase sin calzado junto a un mueble firme, al alcance de la mano, o en un rincón, con el suelo despejado y seco, y mejor con alguien a su lado. El lado indicado es la pierna de apoyo.
level-cushion-closed-step-1 = Sujétese con los dos pies en el suelo y lleve el peso al pie indicado.
level-cushion-closed-step-2 = Cierre los ojos y no los abra.
level-cushion-closed-step-3 = Cuando suene la señal de inicio, levante el otro pie un poco hacia atrás, sin tocar la pierna de apoyo, y suéltese. Deje la punta de los dedos justo encima del apoyo.
level-cushion-closed-step-4 = Mantenga el cuerpo recto y tranquilo. Los movimientos pequeños del tobillo están bien.
level-cushion-closed-step-5 = Abra los ojos, sujétese o baje el pie antes de perder el equilibrio. Cualquiera de las tres cosas termina el intento.
