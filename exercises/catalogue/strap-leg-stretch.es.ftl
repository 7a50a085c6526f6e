### The texts of the exercise in strap-leg-stretch.toml, in Spanish.

name = Estirar la pierna con una correa
purpose = Estira la parte de atrás del muslo.
set-up = Acuéstese boca arriba, con la otra pierna estirada, una correa alrededor del pie indicado y un extremo en cada mano.
step-1 = Suba la pierna indicada con la correa, con la rodilla casi estirada, hasta notar tirantez detrás del muslo.
step-2 = Mantenga quieta la pelvis.
step-3 = Quédese ahí y respire.
step-4 = Baje despacio.
should-feel = Una tirantez en el medio de la parte de atrás del muslo.
should-not-feel = Hormigueo en el pie o dolor detrás de la rodilla.

mistake-1 = Levantar la cabeza.
mistake-2 = Tirar de golpe.
mistake-3 = Forzar la rodilla.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis o aún se recupera de una operación o fractura de la pierna.
careful-2 = El movimiento no debe provocar hormigueo. Si lo nota, hágalo más corto y dígalo en la consulta.
careful-3 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-2 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-3 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
