### The texts of the exercise in finger-glides.toml, in Spanish.

name = Deslizamiento de los dedos
purpose = Hace que los tendones de los dedos se deslicen en todo su recorrido. Ayuda contra la rigidez después de teclear, del reposo o de llevar una férula.
set-up = Siéntese con el codo apoyado en una mesa, la mano hacia arriba, la muñeca recta y los dedos juntos y estirados.
step-1 = Empiece con los dedos estirados.
step-2 = Doble las dos últimas articulaciones de todos los dedos hasta formar un gancho. Los nudillos siguen rectos.
step-3 = Siga hasta cerrar el puño por completo, sin apretar.
step-4 = Abra por el mismo camino hasta que los dedos queden estirados.
should-feel = Un deslizamiento fácil, quizá un estiramiento suave en los dedos y la palma.
should-not-feel = Dolor agudo, un dedo que se engancha o salta, hormigueo o pérdida de sensibilidad.

mistake-1 = Doblar la muñeca junto con los dedos.
mistake-2 = Apretar con fuerza.
mistake-3 = Pasar deprisa de una posición a otra.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una sutura de tendón o una fractura de la mano. Siga las instrucciones que le dieron para eso, no esta página.
careful-2 = Consulte antes con su clínica si tiene un dedo caliente, rojo o hinchado.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos.
stop-2 = Un dedo que se bloquea, se pone pálido o azul, o se hincha.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-hook-name = Estirados y gancho
level-hook-change = Solo de los dedos estirados al gancho. No siga hasta cerrar el puño.
level-hook-step-1 = Empiece con los dedos estirados.
level-hook-step-2 = Doble las dos últimas articulaciones de todos los dedos hasta formar un gancho. Los nudillos siguen rectos.
level-hook-step-3 = Deténgase ahí un momento. No siga hasta cerrar el puño.
level-hook-step-4 = Abra por el mismo camino hasta que los dedos queden estirados.
level-hook-fist-name = Estirados, gancho y puño
level-hook-fist-change = Del gancho al puño completo, sin apretar.
