### The texts of the exercise in forearm-stretch.toml, in Spanish.

name = Estirar el antebrazo
purpose = Estira los músculos del antebrazo.
set-up = Póngase de pie o en una silla, con el brazo indicado estirado hacia delante y la palma hacia abajo.
step-1 = Sujete el dorso de la mano con la otra y lleve los dedos hacia abajo y hacia usted.
step-2 = Mantenga el codo estirado y el hombro bajo.
step-3 = Quédese ahí y respire.
step-4 = Suelte despacio.
should-feel = Una tirantez a lo largo del antebrazo.
should-not-feel = Hormigueo en los dedos o dolor en la muñeca.

mistake-1 = Doblar el codo.
mistake-2 = Tirar de golpe.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del codo, la muñeca o la mano.
careful-2 = El movimiento no debe provocar hormigueo. Si lo nota, hágalo más corto y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Una muñeca caliente, roja o hinchada.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-outer-name = Lado de fuera
level-outer-change = El dorso de la mano se acerca a usted, con los dedos hacia abajo.
level-front-name = Lado de dentro
level-front-change = La palma se abre, con los dedos hacia arriba.
level-front-set-up = Póngase de pie o en una silla, con el brazo indicado estirado hacia delante y la palma hacia fuera.
level-front-step-1 = Sujete los dedos con la otra mano y llévelos hacia arriba y hacia usted.
level-front-step-2 = Mantenga el codo estirado y el hombro bajo.
level-front-step-3 = Quédese ahí y respire.
level-front-step-4 = Suelte despacio.
