### The texts of the exercise in wrist-lower-slowly.toml, in Spanish.

name = Bajar la muñeca despacio
purpose = Carga poco a poco el tendón de la parte de fuera del codo, para que aguante más.
set-up = Siéntese con el antebrazo indicado sobre una mesa, la palma hacia abajo y la mano fuera del borde. Cierre la mano sin apretar, o alrededor de las asas de la bolsa.
step-1 = Suba la mano con la ayuda de la otra.
step-2 = Suelte la otra mano y baje despacio, en cuatro segundos.
step-3 = Vuelva a subir la mano con la ayuda de la otra.
should-feel = Un trabajo en la parte de fuera del antebrazo. Se acepta un dolor leve, dentro del límite de su plan.
should-not-feel = Dolor agudo u hormigueo en los dedos.

mistake-1 = Dejar caer la mano.
mistake-2 = Subirla sin ayuda.
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
