### The texts of the exercise in arm-pendulum.toml, in Spanish.

name = Péndulo del brazo
purpose = Alivia pronto un hombro doloroso, sin esfuerzo.
set-up = Póngase de pie junto a una mesa, inclínese hacia delante y apoye en ella la otra mano. El brazo indicado cuelga suelto.
step-1 = Lleve el peso con suavidad hacia delante y hacia atrás, para que el brazo empiece a balancearse solo.
step-2 = Deje que el balanceo sea corto, con los músculos sueltos.
step-3 = Deje que se pare antes de enderezarse.
should-feel = Un brazo suelto y pesado.
should-not-feel = Que el hombro trabaje, o dolor agudo.

mistake-1 = Balancear el brazo con su propia fuerza.
mistake-2 = Balancear mucho.
mistake-3 = Enderezarse deprisa.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-2 = Si al inclinarse se marea, hágalo en una silla, apoyando un brazo en la mesa.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
