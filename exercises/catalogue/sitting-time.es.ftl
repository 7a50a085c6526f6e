### Los textos del ejercicio de sitting-time.toml, en español.

name = Estar sentado unos minutos fijos
purpose = Acostumbra de nuevo la espalda a estar sentado, un poco más cada pocos días.
set-up = Siéntese en una silla firme con los dos pies apoyados en el suelo. Tenga a mano lo que quiera hacer mientras, como leer o comer.
step-1 = Quédese sentado los minutos que dice su plan: ni menos en un mal día ni más en uno bueno.
step-2 = Cambie el peso de lado y muévase un poco cuando le apetezca.
step-3 = Cuando acabe el tiempo, levántese y dé unos pasos.
should-feel = Puede aparecer la molestia de siempre. No indica daño, y al principio no tiene por qué disminuir.
should-not-feel = Dolor que baja por la pierna, u hormigueo o entumecimiento que antes no tenía.

mistake-1 = Parar antes porque molesta, o seguir porque no molesta.
mistake-2 = Mantener una postura rígida todo el tiempo.

# Seguridad: precauciones.
careful-1 = Los minutos los fija su consulta. Si cada vez que se sienta queda claramente peor hasta el día siguiente, llame antes de seguir.

# Seguridad: señales para parar de inmediato.
stop-1 = Entumecimiento entre las piernas, dificultad para retener o expulsar la orina o las heces, o una pierna que de pronto no sostiene: busque ayuda médica ya.
stop-2 = Dolor por encima del límite de su plan.

# Niveles, de fácil a difícil.
level-with-back-rest-name = Con respaldo
level-with-back-rest-change = La espalda se apoya en el respaldo.
level-without-back-rest-name = Sin respaldo
level-without-back-rest-change = Siéntese separado del respaldo.
