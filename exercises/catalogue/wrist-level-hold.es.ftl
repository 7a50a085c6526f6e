### The texts of the exercise in wrist-level-hold.toml, in Spanish.

name = Muñeca recta
purpose = Fortalece los músculos del dorso del antebrazo, que dan estabilidad a la muñeca para agarrar, teclear y levantar cosas.
set-up = Siéntese con el antebrazo sobre una mesa, la palma hacia abajo y la mano fuera del borde. Cierre la mano sin apretar, o alrededor de las asas de la bolsa.
step-1 = Suba la mano hasta que el dorso quede en línea con el antebrazo.
step-2 = Manténgala ahí, quieta, sin apretar el puño.
step-3 = Respire con calma y deje el hombro bajo.
step-4 = Baje la mano despacio.
should-feel = Los músculos del dorso del antebrazo trabajan y se calientan un poco hacia el final.
should-not-feel = Un dolor agudo en la parte de fuera del codo o en la muñeca, u hormigueo en los dedos.

mistake-1 = Doblar la muñeca hacia atrás, más allá de la posición recta.
mistake-2 = Agarrar con fuerza.
mistake-3 = Separar el antebrazo de la mesa.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.
careful-2 = Consulte antes con su clínica si se le duermen los dedos por la noche o ha perdido fuerza al agarrar.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Una muñeca caliente, roja o hinchada.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-empty-hand-name = Mano vacía
level-empty-hand-change = El puño suelto, sin nada dentro.
level-light-bag-name = Bolsa ligera
level-light-bag-change = Una bolsa con alrededor de medio kilo, como un cartón pequeño de leche.
level-heavier-bag-name = Bolsa más pesada
level-heavier-bag-change = Una bolsa con alrededor de un kilo.
