### The texts of the exercise in wrist-curl.toml, in Spanish.

name = Doblar la muñeca, palma arriba
purpose = Fortalece los músculos de la parte de dentro del codo, que doblan la muñeca.
set-up = Siéntese con el antebrazo indicado sobre una mesa, la palma hacia arriba y la mano fuera del borde. Cierre la mano sin apretar, o alrededor de las asas de la bolsa.
step-1 = Doble la muñeca y suba la mano.
step-2 = Quédese ahí un momento.
step-3 = Baje despacio, hasta un poco por debajo de la línea recta.
should-feel = Los músculos del antebrazo del lado de la palma trabajan.
should-not-feel = Dolor agudo en la parte de dentro del codo u hormigueo en los dedos.

mistake-1 = Separar el antebrazo de la mesa.
mistake-2 = Dejar caer la mano.
mistake-3 = Agarrar con fuerza.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del codo, la muñeca o la mano.
careful-2 = Consulte antes con su clínica si se le duermen los dedos por la noche o ha perdido fuerza al agarrar.
careful-3 = Si a la mañana siguiente el dolor o la rigidez son claramente peores que otras mañanas, haga menos la próxima vez y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Una muñeca caliente, roja o hinchada.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-empty-name = Mano vacía
level-empty-change = El puño suelto, sin nada dentro.
level-light-bag-name = Bolsa ligera
level-light-bag-change = Una bolsa con alrededor de medio kilo, como un cartón pequeño de leche.
level-heavier-bag-name = Bolsa más pesada
level-heavier-bag-change = Una bolsa con alrededor de un kilo.
