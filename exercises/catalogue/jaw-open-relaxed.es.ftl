### The texts of the exercise in jaw-open-relaxed.toml, in Spanish.

name = Abrir la boca sin esfuerzo
purpose = Entrena la mandíbula para que se abra recta y sin esfuerzo.
set-up = Siéntese con la espalda recta delante de un espejo, con los labios juntos, los dientes separados y la lengua apoyada detrás de los dientes de arriba.
step-1 = Deje la lengua donde está y suelte la mandíbula hacia abajo.
step-2 = Mire en el espejo que baja recta.
step-3 = Cierre despacio, sin que los dientes se toquen.
should-feel = Un movimiento fácil e igual en los dos lados.
should-not-feel = Dolor delante de la oreja, o una mandíbula que se engancha.

mistake-1 = Abrir tanto que la lengua se separe.
mistake-2 = Dejar que la mandíbula se vaya a un lado.
mistake-3 = Adelantar la barbilla.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si alguna vez se le ha quedado la boca abierta, o si aún se recupera de una operación o fractura de la mandíbula.

# Safety: signs to stop at once.
stop-1 = Una boca que ya no puede cerrar o abrir: busque atención médica urgente.
stop-2 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
