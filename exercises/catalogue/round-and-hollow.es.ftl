### The texts of the exercise in round-and-hollow.toml, in Spanish.

name = Redondear y hundir la espalda
purpose = Mueve con suavidad toda la columna.
set-up = Póngase a cuatro apoyos, con las manos debajo de los hombros y las rodillas debajo de las caderas.
step-1 = Saque el aire y redondee la espalda hacia arriba; la cabeza y el cóccix bajan.
step-2 = Tome aire y deje que la espalda baje un poco; la cabeza y el cóccix suben.
step-3 = Pase de una posición a la otra a su ritmo.
should-feel = Movimiento a lo largo de toda la espalda.
should-not-feel = Dolor o un pellizco en la zona lumbar.

mistake-1 = Doblar los codos.
mistake-2 = Echar la cabeza hacia atrás.
mistake-3 = Ir deprisa.

# Safety: precautions.
careful-1 = Si le duele apoyar las rodillas, ponga un cojín debajo o dígalo en la consulta.
careful-2 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-3 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
