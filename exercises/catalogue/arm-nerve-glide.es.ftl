### The texts of the exercise in arm-nerve-glide.toml, in Spanish.

name = Deslizar el nervio del brazo
purpose = Deja que el nervio del brazo se deslice sin estirarlo.
set-up = Póngase de pie o en una silla, con el brazo indicado hacia un lado, el codo doblado y la mano arriba. Incline un poco la cabeza hacia el otro lado.
step-1 = Estire el codo y a la vez incline la cabeza hacia ese brazo.
step-2 = Vuelva a doblar el codo e incline la cabeza hacia el otro lado.
step-3 = Muévase despacio y sin pararse.
should-feel = Un movimiento fácil.
should-not-feel = Hormigueo, pérdida de sensibilidad o dolor por el brazo.

mistake-1 = Estirar el codo con la cabeza hacia el otro lado.
mistake-2 = Quedarse en la posición final.

# Safety: precautions.
careful-1 = El movimiento no debe provocar hormigueo. Si lo nota, hágalo más corto y dígalo en la consulta.
careful-2 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
