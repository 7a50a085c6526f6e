### Lo que paciente y clínico miran juntos en la visita. Lo leen ambos, por eso se habla al paciente.

# Abre la página.
together-open = Verlo juntos
together-of = Para { $name }: lo hecho y cómo seguir
together-so-far = Hasta ahora
together-next = ¿Cómo seguir?
# $alarm: una alarma con su fecha.
together-alarm = Primero hay que hablar de esto: { $alarm }
# Lo hecho. $n (Number), $k (Number)
together-done-lately = En los últimos 14 días hizo completas { $k } de { $n } sesiones.
# $n (Number), $k (Number)
together-done-in-all = Hasta ahora hizo completas { $k } de { $n } sesiones.
together-done-in-part = { $n ->
        [one] Otra quedó hecha en parte.
       *[other] Otras { $n } quedaron hechas en parte.
    }
together-as-agreed = Es lo acordado.
together-partly = Es una parte de lo acordado.
together-little = La mayor parte quedó sin hacer.
together-since = Pasó a ser mucho menos el { $date }.
together-nothing-due = Aún no tocaba ninguna sesión.
# Dolor por la mañana. $name: una molestia; $base (Number), $now (Number)
together-pain-better = { $name }: dolor { $base } de 10 por la mañana al principio, { $now } últimamente. Está claramente mejor.
# $base (Number), $now (Number)
together-pain-worse = { $name }: dolor { $base } de 10 por la mañana al principio, { $now } últimamente. Está claramente peor.
# $base (Number), $now (Number)
together-pain-same = { $name }: dolor { $base } de 10 por la mañana al principio, { $now } últimamente. No hay un cambio claro.
together-pain-last = { $name }: el dolor se anotó por última vez el { $date }, así que no se sabe cómo está ahora.
together-pain-few = { $name }: hay muy pocas mañanas anotadas para comparar.
# Una actividad propia. $base (Number), $now (Number)
together-activity-better = { $name }: { $base } de 10 al principio, { $now } ahora; 10 es como antes. Va claramente mejor.
# $base (Number), $now (Number)
together-activity-worse = { $name }: { $base } de 10 al principio, { $now } ahora; 10 es como antes. Va claramente peor.
# $base (Number), $now (Number)
together-activity-same = { $name }: { $base } de 10 al principio, { $now } ahora; 10 es como antes. No hay un cambio claro.
# $name: un ejercicio, y la pierna. $from (Number), $to (Number)
together-seconds-rising = { $name }: unos { $from } s al principio, unos { $to } s ahora. Aguanta claramente más.
# $from (Number), $to (Number)
together-seconds-falling = { $name }: unos { $from } s al principio, unos { $to } s ahora. Es claramente menos.
# $from (Number), $to (Number)
together-seconds-same = { $name }: unos { $from } s al principio, unos { $to } s ahora. No hay un cambio claro.
together-seconds-full = { $name }: aguanta hasta que se acaba el tiempo.
# $name: un ejercicio. $from (Number), $to (Number)
together-count-rising = { $name }: { $from } repeticiones al principio, { $to } ahora. Son claramente más.
# $from (Number), $to (Number)
together-count-falling = { $name }: { $from } repeticiones al principio, { $to } ahora. Son claramente menos.
# $from (Number), $to (Number)
together-count-same = { $name }: { $from } repeticiones al principio, { $to } ahora. No hay un cambio claro.
together-too-early = Es pronto para decir si funciona.
together-nothing-else = Aún no se puede comparar nada más.
together-barriers = Lo que lo impidió
# $barrier: un motivo para dejar una sesión.
together-barrier = { $n ->
       [one] «{ $barrier }», { $n } vez
      *[other] «{ $barrier }», { $n } veces
    }
together-no-barrier = No se dio ningún motivo para las sesiones que se dejaron. ¿Qué lo impidió?
together-would-help = ¿Qué ayudaría?
# El dibujo de un día completo. $day: «Un día completo: 3 sesiones, unos 9 minutos.»
together-day-now = Hasta ahora. { $day }
together-day-next = Desde hoy. { $day }
together-day-unchanged = Como hasta ahora. { $day }
together-day-empty = Nada a horas fijas.
# Lleva a la página donde se cambia todo lo del plan.
together-all-of-plan = Cambiar otra cosa
# Una opción para un ejercicio.
option-leave-out = Dejarlo
# Bajo las opciones de un ejercicio que no se hace como se propone: una pregunta que puede quedar sin respuesta, y motivos habituales, que se
# guardan en la historia tal como están aquí.
together-why = ¿Por qué no como se propone? (puede dejarlo vacío)
# $name: un ejercicio.
together-why-of = { $name }: ¿por qué no como se propone?
together-why-wish = El paciente lo prefiere así
together-why-time = Falta de tiempo
together-why-pain = Dolor
together-why-unsure = Movimiento aún inseguro
together-why-one-change = Un solo cambio a la vez
together-why-other = Con otras palabras
