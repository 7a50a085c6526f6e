### The texts of the exercise in chair-rise-30s.toml, in Spanish.

name = Levantarse de la silla, 30 segundos
purpose = Una prueba de las piernas, siempre igual, para poder comparar los resultados.
set-up = Ponga una silla firme, de altura normal y sin brazos, contra la pared, para que no resbale. Use calzado firme. Utilice siempre la misma silla.
step-1 = Siéntese en el centro del asiento, con toda la planta de los pies en el suelo, separados al ancho de las caderas. Cruce los brazos sobre el pecho.
step-2 = Con el tono que sube, levántese hasta estirar las piernas y vuelva a sentarse del todo.
step-3 = Siga tantas veces como pueda, con seguridad, hasta el último tono. Cuente cada vez que esté de pie del todo.
step-4 = Cuente en voz alta, o pulse en cada una si hay alguien con usted. Después dice el número. Ninguna también es una respuesta.
should-feel = Los muslos y los glúteos trabajan mucho y falta un poco el aliento.
should-not-feel = Dolor agudo en la rodilla, la cadera o la espalda, o mareo.

mistake-1 = Empujar con las manos.
mistake-2 = No levantarse del todo o no sentarse del todo.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene problemas de corazón, dolor en el pecho o la tensión alta mal controlada.
careful-2 = Consulte antes con su clínica si tiene una prótesis o aún se recupera de una operación o fractura de la pierna.
careful-3 = No haga la prueba sin nadie cerca si se ha caído hace poco o tiene mareos. Pare antes de perder pie: lo que se interrumpe se guarda y no se pierde nada.

# Safety: signs to stop at once.
stop-1 = Dolor u opresión en el pecho, o mucha falta de aire: busque atención médica urgente.
stop-2 = Mareo: siéntese y no siga por hoy. Si no se pasa enseguida o vuelve, llame a su clínica antes de repetir la prueba.
stop-3 = Una caída, o haber estado a punto de caerse.
stop-4 = Una rodilla que se bloquea o falla, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-seat-usual-name = Asiento normal
level-seat-usual-change = Una silla de altura normal, con los brazos cruzados sobre el pecho.
