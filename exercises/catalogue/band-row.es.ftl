### The texts of the exercise in band-row.toml, in Spanish.

name = Remar con una banda
purpose = Fortalece los músculos que están entre los omóplatos y los de atrás de los brazos.
set-up = Fije la banda en una puerta cerrada a la altura de los codos. Póngase de pie de cara a la puerta, con las rodillas sueltas, un extremo en cada mano y la banda apenas tensa con los brazos hacia delante.
step-1 = Lleve los omóplatos hacia atrás y después los codos, pegados a los costados.
step-2 = Pare cuando las manos lleguen al cuerpo.
step-3 = Quédese ahí un momento.
step-4 = Deje ir los brazos hacia delante despacio, sin que la banda dé un tirón.
should-feel = Los músculos que están entre los omóplatos trabajan.
should-not-feel = Dolor en la parte de delante de un hombro o trabajo en el cuello.

mistake-1 = Subir los hombros.
mistake-2 = Echarse hacia atrás.
mistake-3 = Dejar que la banda tire de usted hacia delante.

# Safety: precautions.
careful-1 = Fije la banda solo en una puerta que se abra hacia el otro lado, ciérrela bien y pruebe con un tirón suave.
careful-2 = Antes de cada uso compruebe que la banda no tiene grietas, y no deje nunca que apunte a los ojos.
careful-3 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Banda suave
level-light-change = Una banda con la que podría hacer algunas más.
level-firm-name = Banda más fuerte
level-firm-change = La siguiente banda, más fuerte.
