### The texts of the exercise in straight-leg-raise.toml, in Spanish.

name = Elevar la pierna estirada
purpose = Fortalece la parte de delante del muslo con la rodilla estirada.
set-up = Acuéstese boca arriba, con la pierna indicada estirada, la otra rodilla doblada y los brazos a los lados.
step-1 = Lleve la punta del pie hacia usted y tense el muslo para estirar la rodilla.
step-2 = Suba la pierna estirada hasta donde diga su nivel.
step-3 = Quédese ahí.
step-4 = Baje despacio. La rodilla sigue estirada hasta apoyar el talón.
should-feel = La parte de delante del muslo trabaja.
should-not-feel = Dolor en la zona lumbar, en la rodilla o en la ingle.

mistake-1 = Dejar que la rodilla se doble.
mistake-2 = Arquear la zona lumbar.
mistake-3 = Dejar caer la pierna.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis o aún se recupera de una operación o fractura de la pierna.
careful-2 = Si se marea al acostarse o al levantarse, hágalo despacio y póngase primero de lado.

# Safety: signs to stop at once.
stop-1 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-2 = Debilidad o pérdida de sensibilidad que baja por la pierna.
stop-3 = Una rodilla que se bloquea, falla o se hincha.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-low-name = Un poco
level-low-change = El talón sube unos 20 centímetros.
level-knee-high-name = Hasta la otra rodilla
level-knee-high-change = El muslo sube hasta la altura del otro.
