### The texts of the exercise in toe-lift.toml, in Spanish.

name = Levantar las puntas de los pies
purpose = Entrena los músculos que levantan la parte delantera del pie, para que no tropiece con el suelo al caminar.
set-up = Siéntese en una silla con la espalda recta, las plantas de los pies apoyadas y un poco por delante de las rodillas.
step-1 = Deje los talones en el suelo y levante la parte delantera de los dos pies tanto como pueda.
step-2 = Quédese ahí.
step-3 = Baje despacio, sin golpear el suelo.
should-feel = El músculo del lado de la espinilla trabaja.
should-not-feel = Un calambre que no se pasa, dolor en la parte delantera del tobillo u hormigueo en el pie.

mistake-1 = Levantar solo los dedos y no el pie.
mistake-2 = Girar los pies hacia fuera.
mistake-3 = Dejar caer los pies.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del tobillo o el pie.
careful-2 = Dígalo en la consulta si un pie se levanta claramente menos que el otro.
careful-3 = De pie: solo sobre un suelo seco que no resbale, con calzado firme y con una silla u otro apoyo firme al lado para sujetarse.

# Safety: signs to stop at once.
stop-1 = Un pie que ha perdido fuerza o sensibilidad hace poco: busque atención médica urgente.
stop-2 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-sitting-name = En la silla
level-sitting-change = En una silla, con los talones en el suelo.
level-standing-name = De pie, con la espalda en la pared
level-standing-change = La espalda se apoya en la pared y una mano queda lista en el apoyo.
level-standing-set-up = Póngase de pie con calzado firme sobre un suelo seco que no resbale, la espalda contra una pared, los pies separados al ancho de las caderas y a un pie de distancia de ella. Tenga al lado una silla estable u otro apoyo firme.
level-standing-step-1 = Apoye la espalda en la pared y una mano en el apoyo.
level-standing-step-2 = Deje los talones en el suelo y levante la parte delantera de los dos pies solo hasta donde se sienta estable.
level-standing-step-3 = Quédese ahí.
level-standing-step-4 = Baje despacio, sin golpear el suelo.
