### The texts of the exercise in rest-lying.toml, in Spanish.

name = Descanso boca arriba, rodillas dobladas
purpose = Deja descansar una espalda baja cansada o dolorida.
set-up = Acuéstese boca arriba sobre una colchoneta, con una almohada bajo la cabeza, las rodillas dobladas y los pies apoyados, separados al ancho de las caderas.
step-1 = Deje los brazos a los lados y que la espalda pese.
step-2 = Respire con calma. No hay que hacer nada más.
step-3 = Cuando acabe el tiempo, gírese de lado antes de levantarse.
should-feel = La espalda se hunde en la colchoneta.
should-not-feel = Hormigueo en las piernas o presión en la cabeza.

mistake-1 = Apretar la espalda contra la colchoneta.
mistake-2 = Levantarse de golpe hacia delante.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si está en los últimos meses de un embarazo.
careful-2 = Hágalo solo si puede volver a levantarse del suelo.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad o debilidad en una pierna, o dificultad para orinar: busque atención médica urgente.
stop-2 = Falta de aire o mareo: incorpórese despacio. Si no se pasa en unos minutos, llame a su clínica.

# Levels, from easy to hard.
level-knees-bent-name = Rodillas dobladas
level-knees-bent-change = Los dos pies apoyados en la colchoneta.
