### The texts of the exercise in doorway-chest-stretch.toml, in Spanish.

name = Estirar el pecho en una puerta
purpose = Estira los músculos de delante del pecho y de los hombros.
set-up = Póngase de pie en el marco de una puerta abierta, con los dos antebrazos en él, los codos un poco por debajo de los hombros y un pie adelantado.
step-1 = Lleve el peso al pie de delante hasta notar tirantez en el pecho.
step-2 = Mantenga el abdomen recogido y los hombros bajos.
step-3 = Quédese ahí y respire.
step-4 = Vuelva despacio.
should-feel = Una tirantez en el pecho.
should-not-feel = Hormigueo en los brazos, o la sensación de que un hombro se sale.

mistake-1 = Arquear la zona lumbar.
mistake-2 = Adelantar la cabeza.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = El movimiento no debe provocar hormigueo. Si lo nota, hágalo más corto y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
