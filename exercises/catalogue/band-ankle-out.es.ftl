### The texts of the exercise in band-ankle-out.toml, in Spanish.

name = Girar el pie hacia fuera con una banda
purpose = Fortalece los músculos de la parte de fuera del tobillo, que evitan que se tuerza.
set-up = Siéntese en una silla, con los talones en el suelo y un puño de distancia entre ellos, y la banda alrededor de los dos pies, justo detrás de los dedos.
step-1 = Deje quietos el talón y la rodilla.
step-2 = Gire hacia fuera la parte delantera del pie indicado, contra la banda.
step-3 = Quédese ahí un momento.
step-4 = Vuelva despacio.
should-feel = Los músculos de la parte de fuera de la pierna trabajan.
should-not-feel = Dolor en la parte de fuera del tobillo u hormigueo en el pie.

mistake-1 = Girar toda la pierna.
mistake-2 = Mover también el otro pie.
mistake-3 = Dejar que la banda dé un tirón al volver.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del tobillo o el pie.
careful-2 = Antes de cada uso compruebe que la banda no tiene grietas, y no deje nunca que apunte a los ojos.

# Safety: signs to stop at once.
stop-1 = Un pie que ha perdido fuerza o sensibilidad hace poco: busque atención médica urgente.
stop-2 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan, o un tobillo que falla.

# Levels, from easy to hard.
level-light-name = Banda suave
level-light-change = Una banda con la que podría hacer algunas más.
level-firm-name = Banda más fuerte
level-firm-change = La siguiente banda, más fuerte.
