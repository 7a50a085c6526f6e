### Los textos del ejercicio de bag-lift.toml, en español.

name = Levantar una bolsa
purpose = Acostumbra de nuevo la espalda a levantar peso, algunas veces más cada pocos días.
set-up = Ponga en el suelo, junto al pie, una bolsa con pocas cosas ligeras. De pie, con los pies separados a la anchura de las caderas.
step-1 = Doble las caderas y las rodillas y tome el asa.
step-2 = Levántese con la bolsa y vuelva a dejarla del mismo modo. Eso es una vez.
step-3 = Hágalo tantas veces como dice su plan: ni menos en un mal día ni más en uno bueno. Cambie de mano cuando quiera.
should-feel = El trabajo de las piernas y la espalda; puede aparecer la molestia de siempre. No indica daño.
should-not-feel = Dolor que baja por la pierna, u hormigueo o entumecimiento que antes no tenía.

mistake-1 = Parar antes porque molesta, o seguir porque no molesta.
mistake-2 = Contener la respiración al levantar.
mistake-3 = Tomar una bolsa más pesada de lo acordado.

# Seguridad: precauciones.
careful-1 = El número y el peso los fija su consulta. Empiece con una bolsa que llevaría sin pensarlo.
careful-2 = Si cada vez queda claramente peor hasta el día siguiente, llame antes de seguir.

# Seguridad: señales para parar de inmediato.
stop-1 = Entumecimiento entre las piernas, dificultad para retener o expulsar la orina o las heces, o una pierna que de pronto no sostiene: busque ayuda médica ya.
stop-2 = Presión o dolor en el pecho: llame a su número de emergencias.
stop-3 = Dolor por encima del límite de su plan.

# Niveles, de fácil a difícil.
level-light-bag-name = Bolsa ligera
level-light-bag-change = Una bolsa de uno o dos kilos.
level-fuller-bag-name = Bolsa más llena
level-fuller-bag-change = Una bolsa de tres a cinco kilos, según lo acordado con su consulta.
