### The texts of the exercise in sit-to-stand.toml, in Spanish.

name = Levantarse de la silla
purpose = Fortalece los muslos y las caderas para levantarse, subir escaleras y caminar.
set-up = Use una silla estable que no resbale, contra la pared, y tenga delante un mueble firme al alcance de la mano. Los pies separados al ancho de las caderas, con los talones un poco por detrás de las rodillas.
step-1 = Inclínese hacia delante hasta que la nariz quede sobre los dedos de los pies.
step-2 = Apoye toda la planta de los dos pies y levántese sin prisa.
step-3 = Quédese de pie, con el cuerpo recto, 1 segundo. Sujétese al mueble si lo necesita.
step-4 = Lleve la cadera hacia atrás y siéntese despacio, con control hasta el final.
should-feel = La parte delantera de los muslos y los glúteos trabajan igual en los dos lados. Es normal que se le acelere un poco la respiración.
should-not-feel = Dolor agudo en la rodilla, la cadera o la espalda, una rodilla que falla, o mareo al ponerse de pie.

mistake-1 = Dejarse caer en la silla.
mistake-2 = Dejar que las rodillas se vayan hacia dentro.
mistake-3 = Cargar más una pierna sin darse cuenta.

# Safety: precautions.
careful-1 = Si suele marearse al levantarse, sujétese a algo firme y quédese un momento sin moverse.
careful-2 = Consulte antes con su clínica si tiene una prótesis o aún se recupera de una operación o fractura de la pierna.

# Safety: signs to stop at once.
stop-1 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-2 = Mareo que no se pasa enseguida.
stop-3 = Una rodilla que se bloquea o falla, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-seat-high-name = Asiento alto
level-seat-high-change = Un cojín firme sobre el asiento o una silla más alta: las caderas quedan más altas que las rodillas.
level-seat-usual-name = Asiento normal
level-seat-usual-change = Una silla de altura normal: las caderas quedan más o menos a la altura de las rodillas.
level-seat-low-name = Asiento bajo
level-seat-low-change = Un asiento firme, unos diez centímetros más bajo de lo normal: las caderas quedan un poco más bajas que las rodillas.
level-hands-push-name = Con ayuda de las manos
level-hands-push-change = Empuje un poco con las dos manos sobre los muslos.
level-arms-forward-name = Brazos estirados al frente
level-arms-forward-change = Los brazos siguen horizontales, delante de usted, todo el tiempo. Así es más fácil inclinarse hacia delante.
level-arms-crossed-name = Brazos cruzados
level-arms-crossed-change = Lo hacen solo las piernas. Los brazos descansan en el pecho.
