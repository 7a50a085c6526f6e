### The texts of the exercise in stand-turn-head.toml, in Spanish.

name = De pie, girar la cabeza
purpose = Entrena el equilibrio mientras mira a los lados, como en una tienda o al cruzar una calle.
set-up = Póngase junto a un mueble firme o en un rincón, con el suelo despejado y seco y buena luz.
step-1 = Sujétese y coloque los pies como diga su nivel.
step-2 = Suéltese. Deje una mano justo encima del mueble.
step-3 = Gire la cabeza despacio hacia un lado, hasta donde le resulte cómodo, y luego hacia el otro. Tarde unos dos segundos en cada giro.
step-4 = Los ojos van con la cabeza. El resto del cuerpo sigue quieto y erguido.
step-5 = Sujétese o dé un paso antes de perder el equilibrio. Así termina el intento.
should-feel = Los tobillos trabajan con muchos movimientos pequeños.
should-not-feel = Mareo que aumenta, dolor en el cuello, o miedo a caerse.

mistake-1 = Girar la cabeza deprisa o a tirones.
mistake-2 = Girar también los hombros.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = No lo haga nunca sin un apoyo firme al alcance de la mano. Hágalo con calzado firme o sin calzado, según le indicaron; nunca con calcetines en un suelo liso.
careful-2 = No haga este ejercicio sin nadie cerca si se ha caído hace poco, tiene mareos o poca sensibilidad en los pies, o si ha tomado alcohol o un medicamento que da sueño.
careful-3 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-4 = Consulte antes con su clínica si al mover el cuello se marea o le cambia la visión.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Dolor en el pecho, mucha falta de aire, debilidad repentina, o dificultad para ver o hablar: busque atención médica urgente.
stop-3 = Mareo o sensación de que todo gira: sujétese, siéntese y no siga por hoy. Llame a su clínica antes de repetir el ejercicio.
stop-4 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-5 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-feet-apart-name = Pies separados
level-feet-apart-change = Los pies separados el ancho de las caderas.
level-feet-together-name = Pies juntos
level-feet-together-change = Los dos pies uno al lado del otro, tocándose.
