## Paciente: navegación

# Nombre de la barra de navegación para lectores de pantalla.
places-label = Navegación
place-now = Ahora
place-plan = Plan
place-record = Historial
# Botón siempre visible: abre "¿Qué le pasa?".
something-wrong = Tengo un problema
role-is-remembered = Este dispositivo recuerda su elección.

## Paciente: ahora

start-session = Empezar
remind-in-ten-minutes = Recordarme en 10 minutos
skip-this-time = Omitir esta vez
how-to-do-it = Cómo se hace
how-to-of = Cómo se hace: { $name }
did-it-already = Ya lo hice
# $time: hora con artículo, "las 09:00".
due-soon = Está previsto a { $time }; ya puede empezar.
reminder-at = Recordatorio a { $time }.
nothing-now = Ahora no tiene nada que hacer
next-at = Siguiente: { $name }, a { $time }
ahead-minutes = { $n ->
       [one] Dentro de un minuto.
      *[other] Dentro de { $n } minutos.
    }
ahead-hours = { $n ->
       [one] Dentro de una hora, más o menos.
      *[other] Dentro de unas { $n } horas.
    }
next-tomorrow = Siguiente: mañana a { $time }.
# $day: "lunes 2 de marzo"; $time: "la 01:00".
next-on-day = Siguiente: el { $day } a { $time }.
all-done = Todo hecho por hoy
# El día terminó y quedaron sesiones sin hacer.
no-more-today = Por hoy ya no queda nada
sessions-done-of = { $of ->
       [one] { $done } de { $of } sesión hecha.
      *[other] { $done } de { $of } sesiones hechas.
    }
no-exercises-today = Hoy no hay ejercicios previstos
day-off-today = Hoy tiene el día libre
plan-ended = Este plan ha terminado
plan-ended-what = Duró hasta el { $date }. Lleve su resumen a la visita. El plan siguiente empieza con una tarjeta nueva.
plan-paused = Su plan está suspendido por seguridad
# $what: uno de los mensajes trouble-...
plan-paused-because = Usted indicó: { $what }
only-new-card-restarts = Solo una tarjeta nueva de su clínica puede reanudarlo.
what-to-do = Qué hacer
row-now = ahora
# Nombre de la lista del día para lectores de pantalla.
day-label = Hoy, por horas
after-the-visit = Después de la visita
not-now = Ahora no
# Un botón después de añadir una tarjeta, mientras no hay nada pendiente.
try-first = Probar ahora el primero
try-first-what = { $name }. Cuenta como sesión adicional.
do-one-now = Hacer un ejercicio ahora
new-today = Nuevo desde hoy: { $names }.
when-you-need-it = Cuando lo necesite
as-needed-plainly = { $n ->
        [one] Hecho una vez, cuando hizo falta.
       *[other] Hecho { $n } veces, cuando hizo falta.
    }
on-your-days = Los días que usted elija
week-so-far = { $done } de { $of } esta semana
which-one = ¿Qué ejercicio?
extra-what = Si ese ejercicio está pendiente, la sesión cuenta para él. Si no, cuenta como adicional.
exercise-paused-because = Suspendido por seguridad. Usted indicó: { $what }
skip-why = ¿Por qué la omite?
skip-more-reasons = Más motivos
# Título después de omitir una sesión por dolor o por no saber cómo se hace.
skipped-title = Sesión omitida
# Encima del botón how-to-do-it.
skipped-not-sure = ¿Quiere ver cómo se hace?
# Encima del botón something-wrong. Seguridad.
skipped-pain = Si tiene algún problema, indíquelo ahora y verá qué debe hacer.
take-days-off = Tomar días libres
take-days-off-what = Esos días no hay sesiones ni recordatorios. Su clínica verá que fueron días libres.
days-off-from = Primer día libre
days-off-until = Último día libre
# En lugar de una fecha, en las listas del primer y del último día libre.
days-off-today = Hoy
days-off-why = ¿Por qué?
days-off-why-saves = ¿Por qué? Se guarda al responder.

## Paciente: un cambio que puede hacer

# $step: "a 15 segundos por repetición", "a «Cojín, ojos abiertos»".
step-up-to = ¿Pasar { $step }?
step-back-to = ¿Volver { $step }?
start-as-before = Empezar como antes
start-with-step = Empezar con este cambio
step-allowed = Su clínica permite que lo decida usted.

## Paciente: preguntas

how-did-it-go = ¿Cómo fue?
ask-morning = Dolor esta mañana: { $name }
# $name: un ejercicio.
ask-during = Dolor al hacerlo: { $name }
pain-least = nada de dolor
pain-most = el peor dolor imaginable
ask-activity = ¿Con qué facilidad puede hacer esto: { $name }?
activity-least = no puedo
activity-most = como antes
# $score (Number): la última respuesta a la misma pregunta.
last-time = La última vez: { $score }
undo-answer = Deshacer
rather-not-answer = Prefiero no contestar

## Paciente: cómo se hace

before-you-begin = Antes de empezar
precautions = Precauciones
# $things: lo que hace falta, como lista: «una silla que no resbale y una almohada».
you-need = Necesita: { $things }.
equipment-chair = una silla que no resbale
equipment-table = una mesa
equipment-worktop = un mueble firme a la altura de la cadera
equipment-wall = una pared despejada
equipment-mat = una colchoneta
equipment-pillow = una almohada
equipment-towel = una toalla
equipment-cushion = un cojín de asiento plano y firme
equipment-foam = un cojín grueso y blando o una plancha de espuma
equipment-sturdy-shoes = calzado firme que no resbale
equipment-bag = una bolsa con algo ligero dentro
equipment-light-weight = un peso ligero
equipment-band = una banda elástica de ejercicio
equipment-stick = un palo, por ejemplo de escoba
equipment-step = un escalón que no se mueva
equipment-strap = una correa o una toalla larga
equipment-door = una puerta que se quede cerrada
equipment-doorway = el marco de una puerta abierta
equipment-handrail = una barandilla u otro apoyo firme
equipment-hammer = un martillo
equipment-rubber-band = una goma elástica ancha
# Título sobre una lista de señales.
signs-to-stop = Señales para parar de inmediato
if-in-doubt = Si tiene dudas sobre si este ejercicio es adecuado para usted, consulte antes con su clínica.
read-start = Lo he leído: empezar
# $change: una o más frases del catálogo.
at-this-level = En este nivel: { $change }
purpose = Para qué sirve
should-feel = Lo que debería notar
should-not-feel = Lo que no debería notar
mistakes = Errores frecuentes
read-aloud = Leer en voz alta
stop-reading = Dejar de leer
no-voice = Este dispositivo no tiene una voz con la que leer esto.
stop-above = Pare si el dolor supera { $n } de 10.

## Paciente: durante un ejercicio
# Se ven en grande y también se dicen en voz alta.

get-ready = Prepárese
hold = Mantenga
rest = Descanse
change-sides = Descanse y cambie de lado
paused = En pausa
paused-asleep = En pausa: el dispositivo entró en reposo
when-ready = Cuando quiera
# Una repetición: ida, pausa corta y vuelta.
beat-go = Ida
beat-hold = Mantenga
beat-return = Vuelta
# En lugar de beat-go y beat-return, si en el ejercicio el cuerpo o una parte de él sube.
beat-up = Suba
beat-down = Baje
ease-in = Entre poco a poco
keep-stretch = Mantenga el estiramiento
# Las cuatro partes de una respiración.
breathe-in = Inspire
breathe-out = Espire
breath-stay = Quédese así
own-pace = A su ritmo
time-runs = El tiempo corre
screen-may-be-off = Puede apagar la pantalla. El tiempo sigue contando.
# Cuánto debe costar, de 0 (nada) a 10 (lo máximo posible).
effort-aim = Esfuerzo buscado: { $n } de 10.
count-one = Contar uno
how-many-complete = ¿Cuántos completó?
how-many-what = Cuente solo los movimientos enteros. Ninguno también es una respuesta.
save-number = Guardar este número
move-on-beat = Al compás
round-of = Ronda { $n } de { $of }
next-round-of = Siguiente: ronda { $n } de { $of }
dizzier-than-before = ¿Tiene más mareo que antes de empezar?
stay-until-settled = Quédese donde está hasta que se le pase.
dizzy-not = No, no más que antes
dizzy-settles = Un poco, y se está pasando
dizzy-stays = Sí, y no se pasa
all-movements-done = Todos hechos
done-now = Ya lo hice
stretch-of = Estiramiento { $n } de { $of }
next-stretch-of = Siguiente: estiramiento { $n } de { $of }
hold-of = Repetición { $n } de { $of }
next-hold-of = Siguiente: repetición { $n } de { $of }
set-of = Serie { $n } de { $of }
next-set-of = Siguiente: serie { $n } de { $of }
attempt-of = intento { $n } de { $of }
part-of = { $n } de { $of }
of-count = de { $of }
halfway = Va por la mitad
pause = Pausa
resume = Reanudar
stop = Parar
more-rest = 30 segundos más
continue-now = Continuar ya
sound-on = Sonido: activado
sound-voice = Sonido: con voz
sound-off = Sonido: desactivado
# Se dice de una repetición.
repetition-failed = No pude hacerla
repetition-failed-undo = Deshacer
done = Hecho
stopped-here = Se detuvo aquí
done-holds = { $of ->
       [one] { $done } de { $of } repetición mantenida hasta el final.
      *[other] { $done } de { $of } repeticiones mantenidas hasta el final.
    }
done-stretches = { $of ->
       [one] { $done } de { $of } estiramiento completo.
      *[other] { $done } de { $of } estiramientos completos.
    }
done-minutes = { $of ->
       [one] { $done } de { $of } minuto.
      *[other] { $done } de { $of } minutos.
    }
done-once = Hecho una vez.
not-done = Sin hacer.
done-test = Prueba hecha entera.
stopped-test = Terminó antes de tiempo: se guarda, pero no cuenta como resultado.
done-rounds = { $of ->
        [one] { $done } de { $of } ronda completa.
       *[other] { $done } de { $of } rondas completas.
    }
done-unseen = { $n ->
       [one] La pantalla estuvo apagada { $n } minuto de ese tiempo, que se contó por el reloj. Si paró antes, dígalo aquí.
      *[other] La pantalla estuvo apagada { $n } minutos de ese tiempo, que se contaron por el reloj. Si paró antes, dígalo aquí.
    }
done-reps = { $of ->
       [one] { $done } de { $of } repetición.
      *[other] { $done } de { $of } repeticiones.
    }
done-attempts = { $of ->
       [one] { $done } de { $of } intento.
      *[other] { $done } de { $of } intentos.
    }
done-failed = { $n } sin completar.
parts-label = Parte por parte
part-held = hasta el final
part-held-partly = { $s } de { $of } s
minutes-done = Minutos hechos
save-minutes = Guardar estos minutos
part-minutes = { $n } de { $of } min
part-counted = { $n } de { $of }
part-tallied = { $n } en { $s } s
part-tallied-partly = { $n } en { $s } s, interrumpida
part-interrupted = se interrumpió, sin medir
part-not-done = sin hacer
save-again = Guardar otra vez
cannot-be-guided = No se puede guiar este ejercicio porque la dosis prescrita no le corresponde. Avise a su clínica.

## Paciente: equilibrio

stand-on-left = Pierna izquierda
stand-on-right = Pierna derecha
stand-on-both = Los dos pies en el suelo
support-near = Tenga al alcance de la mano un mueble firme o una silla estable. El suelo debe estar despejado y seco.
phone-on-support = Deje el teléfono sobre ese apoyo.
hand-over-phone = Mantenga una mano justo encima de la pantalla, sin tocarla. Tóquela cuando baje el pie.
# Las dos siguientes en lugar de las dos anteriores en un dispositivo sin sensor de movimiento, como un ordenador.
device-beside-support = Tenga este dispositivo al lado, al alcance de la mano.
hand-over-device = Mantenga una mano justo encima de las teclas o de la pantalla, sin tocarlas. Cuando baje el pie, pulse cualquier tecla o toque la pantalla.
hand-over-phone-both = Tenga una mano justo encima de la pantalla. Tóquela cuando dé un paso o se sujete.
hand-over-device-both = Tenga una mano justo encima de las teclas o de la pantalla. Pulse una tecla o toque la pantalla cuando dé un paso o se sujete.
start-count = Iniciar la cuenta atrás
when-ready-start = Nada empieza hasta que usted toque el botón.
# $s: segundos enteros.
rest-for = Descanso: { $s } s. También puede continuar ya.
lift-at-tone = Levante el pie con el tono que sube
touch-when-down = Toque la pantalla cuando baje el pie
# En lugar de touch-when-down en un dispositivo sin sensor de movimiento, como un ordenador.
press-when-down = Pulse una tecla o toque la pantalla cuando baje el pie
begins-at-tone = Póngase en posición. Empieza con el tono que sube.
touch-when-step = Toque la pantalla cuando dé un paso o se sujete
press-when-step = Pulse una tecla o toque la pantalla cuando dé un paso o se sujete
# Durante la cuenta atrás.
touch-goes-back = Tenga el apoyo al alcance. Toque la pantalla para volver atrás.
any-touch-ends-attempt = Sujétese si lo necesita y luego toque la pantalla: así termina el intento.
# Las dos siguientes en lugar de touch-goes-back y any-touch-ends-attempt en un dispositivo sin sensor de movimiento.
any-key-goes-back = Tenga el apoyo al alcance. Pulse una tecla o toque la pantalla para volver atrás.
any-key-ends-attempt = Sujétese si lo necesita y luego pulse cualquier tecla o toque la pantalla: así termina el intento.
attempt-over = Intento terminado
last-attempt = Último intento: { $s } s
seconds-short = { $s } s
seconds-target-reached = { $s } s, objetivo alcanzado
seconds-or-more = { $s } s o más
best-today = El mejor de hoy
# En lugar de best-today si se preguntó después cuándo tocó el pie: un recuerdo no es una marca medida.
longest-remembered = El más largo, de memoria
usual-today = Lo habitual en usted hoy
usual-week = Lo habitual en usted, últimos 7 días
usual-not-known = aún sin datos
one-attempt-varies = Un solo intento dice poco: los tiempos varían de un día a otro. En el historial se ve cómo evolucionan.
usual-and-target = lo habitual en usted esta semana: { $own } s; objetivo: { $aim } s
target-only = objetivo: { $aim } s

## Paciente: el teléfono durante el equilibrio

where-phone = ¿Dónde pondrá el teléfono?
on-the-support = Sobre el apoyo
on-the-support-what = Una mano queda justo encima, sin tocarlo. Un toque termina el intento.
at-the-breastbone = Contra el pecho
at-the-breastbone-what = Plano sobre el esternón, sujeto con una mano. Se mide el balanceo. Un toque termina el intento.
in-a-pocket = En un bolsillo a la cintura
in-a-pocket-what = Pegado al cuerpo. Se mide el balanceo. Al terminar se le hace una pregunta.
no-motion-sensor = Este dispositivo no tiene un sensor de movimiento que se pueda leer: se mide el tiempo, no el balanceo.
sensor-not-allowed = No se permitió usar el sensor de movimiento. Deje el teléfono sobre el apoyo, o permita el sensor en los ajustes del sistema.
sensor-silent = El sensor de movimiento no dio datos en el último intento. Vale el tiempo hasta el toque.
phone-at-breastbone = Sujete el teléfono plano contra el esternón, con la pantalla hacia fuera.
other-hand-near = Mantenga la otra mano justo encima del apoyo. Toque la pantalla cuando baje el pie.
phone-in-pocket = Después de empezar, meta el teléfono en vertical en un bolsillo ajustado a la cintura, con la pantalla hacia fuera.
hands-near = Los brazos como le enseñaron, el apoyo al alcance. Un sonido marca el principio y el final; después viene una pregunta.
stand-until-sound = Siga de pie hasta el sonido
hold-asked-after = Sujétese si lo necesita. Después se le hace una pregunta.
seems-touched = Parece que el pie tocó el suelo. Si fue así, toque la pantalla.
# $s: segundos con decimales, "14,2".
ask-touched-at = ¿Tocó el suelo con el pie después de { $s } s, más o menos?
ask-touched = ¿Tocó el suelo con el pie o se sujetó?
ask-touched-else = ¿Tocó el suelo en otro momento o se sujetó?
ask-touched-when = ¿Después de cuántos segundos, más o menos?
not-sure = No lo sé
not-certain = por confirmar: pudieron ser { $s } s
not-certain-least = por confirmar: pudieron ser { $s } s o más
sway-title = Balanceo
sway-figures = Lo que midió el sensor
# Cada uno va delante de su cifra: "de lado a lado 13,9 cm/s²".
sway-side = de lado a lado
sway-all-directions = en todas las direcciones
sway-path = recorrido por segundo
floor-touches = { $n ->
       [one] el pie tocó el suelo una vez
      *[other] el pie tocó el suelo { $n } veces
    }
sway-own-only = Compárelo solo con sus propios datos y con el teléfono en el mismo lugar. No indica si es probable una caída.
not-measured-because = Sin medir: { $why }
why-not-sensor = el sensor no dio datos
why-not-slow = el sensor es demasiado lento o dejó huecos
why-not-moved = el teléfono se desplazó o giró
why-not-short = el intento fue demasiado corto
why-not-quiet = el movimiento fue menor de lo que el sensor puede distinguir
why-not-impossible = el sensor dio valores imposibles

## Paciente: algo va mal

what-is-wrong = ¿Qué le pasa?
nothing-is-wrong = No me pasa nada, volver
urgent-anyway = Si es urgente, no siga aquí: llame al número de emergencias de su zona.
during-which = ¿Durante qué ejercicio?
not-during-one = No fue durante un ejercicio
paused-title = Lo que se suspende ahora
paused-plan = Se suspenden por seguridad todos los ejercicios y los recordatorios.
paused-standing = Se suspende por seguridad todo lo que hace de pie y todos los ejercicios de equilibrio. Sigue lo que hace sentado, de rodillas o tumbado.
paused-nothing = No se suspende nada.
paused-until-well = Todos los ejercicios y recordatorios quedan suspendidos hasta que usted indique que está bien otra vez.
paused-today = Este ejercicio queda suspendido por hoy. Los demás siguen.
# Después de casi caerse en el nivel más fácil.
hand-on-support = Mantenga una mano en el apoyo hasta su próxima tarjeta.
other-device-unaware = Si usa otro dispositivo, ese no lo sabe. Respételo también allí.
# Encima del teléfono de la clínica, en letra grande.
call-your-clinic = Teléfono de su clínica
well-again = Ya estoy bien
# Título de la página que dice qué se suspenderá antes de anotar nada.
before-recorded = Antes de anotarlo
# En esa página: lo que pasa si se anota. Antes no se suspende nada.
would-pause-plan = Si lo anota, todos los ejercicios y los recordatorios quedan suspendidos hasta que su clínica le dé una tarjeta nueva.
would-pause-until-well = Si lo anota, todos los ejercicios y los recordatorios quedan suspendidos hasta que usted indique que está bien otra vez.
would-pause-standing = Si lo anota, todo lo que hace de pie y todos los ejercicios de equilibrio quedan suspendidos hasta que su clínica le dé una tarjeta nueva. Sigue lo que hace sentado, de rodillas o tumbado.
would-pause-exercise = Si lo anota, este ejercicio queda suspendido hasta que su clínica le dé una tarjeta nueva. Los demás siguen.
would-ease = Si lo anota, no se suspende nada. Este ejercicio baja un nivel hasta su próxima tarjeta.
would-pause-nothing = Si lo anota, no se suspende nada.
record-it = Anotarlo
choose-what-applies = Marque todo lo que corresponda
# De una caída.
blow-to-the-head = Me golpeé la cabeza
thins-the-blood = Tomo un medicamento anticoagulante
could-not-get-up = No pude levantarme sin ayuda
# De sentirse enfermo.
sweats-or-weight-loss = Además sudo por la noche o he perdido peso sin motivo
# Seguridad: una hemorragia en la cabeza.
fell-check-today = Un golpe en la cabeza, o una caída si toma un anticoagulante, necesita una revisión médica hoy mismo, aunque se encuentre bien.
# Seguridad: una infección o un tumor de la columna.
unwell-call-clinic = Llame hoy a su clínica: sudar por la noche o perder peso sin motivo debe valorarse.
# Un botón de la página sobre el dolor por encima del límite.
change-answer = Fue un error: cambiar el número
eased-one-level = No se suspende nada. Este ejercicio baja un nivel hasta su próxima tarjeta. Ha hecho bien en decirlo.
paused-exercise = Se suspende por seguridad este ejercicio. Los demás siguen.
noted-for-visit = Queda anotado y su clínica lo verá en su próximo resumen. Un resumen no es un mensaje: nadie lo lee antes de la visita.
no-diagnosis = Este programa no hace diagnósticos. Lo que le diga su clínica o el servicio de emergencias tiene prioridad.
stop-sit-down = Pare y siéntese.
stop-now = Pare ahora.
call-emergency = Llame ahora mismo al número de emergencias de su zona, o pida a alguien que llame.
not-alone = No se quede sin compañía y no conduzca.
nerve-today = Llame hoy a su clínica o acuda hoy a un servicio de urgencias.
# Va antes que nerve-today.
nerve-sudden = Si empezó de repente, empeora o además le cuesta hablar o ver, llame ahora mismo al número de emergencias de su zona.
emergency-department-now = Vaya ahora mismo a urgencias, aunque no le duela.
cannot-get-there = Si no puede llegar, llame al número de emergencias de su zona.
stay-down = Si no es así, quédese en el suelo hasta que se sienta estable. Después levántese despacio, con una mano en el apoyo.
# Va antes que stay-down.
fell-stay-and-call = Si se golpeó la cabeza, no puede levantarse o puede tener algo roto, quédese donde está y llame ahora mismo al número de emergencias de su zona.
tell-clinic-fall = Llame a su clínica antes de volver a hacer ejercicios de equilibrio, aunque no le duela nada.
# Después de casi caerse, si no se suspende nada; el ejercicio ha bajado un nivel.
near-fall-easier = Practique el equilibrio solo cuando vuelva a sentirse estable: en el nivel más fácil y con una mano en el apoyo. Si se repite, pare y llame a su clínica.
# Después de casi caerse, si no se suspende nada y no fue durante un ejercicio del plan.
near-fall-support = Practique el equilibrio solo cuando vuelva a sentirse estable, con una mano en el apoyo. Si se repite, pare y llame a su clínica.
sit-and-rest = Siéntese y descanse hasta que se sienta estable.
stop-this-one = Deje de hacer este ejercicio. Descanse en una postura cómoda.
contact-clinic = Llame a su clínica antes de volver a hacerlo.
limb-urgent = Vaya ahora mismo a urgencias. No cargue esa pierna ni use ese brazo más de lo imprescindible.
dizzy-sit = Pare. Siéntese o túmbese hasta que se le pase del todo.
dizzy-urgent = Si no se le pasa, o además tiene dolor de cabeza o de pecho, o le cuesta hablar, ver o andar, llame ahora mismo al número de emergencias de su zona.
unwell-rest = Pare y descanse. No haga ejercicio mientras esté mal.
unwell-lasting = Si además suda por las noches o pierde peso sin motivo, llame hoy a su clínica.
unwell-again = Cuando esté bien otra vez, indíquelo aquí: sus ejercicios seguirán.
stop-for-today = Deje este ejercicio por hoy. Descanse en una postura cómoda.
above-limit-again = Si la próxima vez vuelve a superar el límite, el ejercicio se suspende hasta su próxima tarjeta.
above-the-limit = Usted valoró el dolor con { $score }. Su límite para este ejercicio es { $limit }.
severe-urgent = Si es muy fuerte, no cede o aparecen debilidad o pérdida de sensibilidad, llame al número de emergencias de su zona o acuda ahora mismo a urgencias.

## Paciente: tarjeta

add-card-title = Añada la tarjeta de su plan
add-card-what = Se la da su clínica: un código en papel o en pantalla, un archivo o un texto.
card-file = Foto o archivo de la tarjeta
card-file-what = Una foto nítida y de frente del código entero, o el archivo que le enviaron.
card-text = Texto de la tarjeta
open-card = Abrir la tarjeta
on-this-card = Qué hay en esta tarjeta
security-code-of-card = Código de verificación: { $code }
# Seguridad: otra persona puede usar el nombre de la clínica.
other-keys = Usted ya tiene una tarjeta de una clínica con este nombre, pero esta se ha firmado con otra clave. Añádala solo si la clínica le confirma que este es su código de seguridad.
renewed-keys = La clínica ha renovado sus claves, y su clave anterior confirma esta tarjeta: compare el nuevo código de verificación con el del papel o con el de la pantalla de la clínica.
new-clinic = Compárelo con el del papel o con el de la pantalla de la clínica. A partir de ahora solo esta clínica puede cambiar este plan.
known-clinic = Usted ya tiene una tarjeta anterior de esta clínica.
# $name: un ejercicio propio de la clínica.
older-exercise = Esta tarjeta tiene una versión anterior de «{ $name }» a la que usted tiene ahora. A partir de ahora se usa la de esta tarjeta. Si no sabe por qué, pregunte a su clínica.
# $old, $new: números de versión del plan.
replaces = La versión { $new } del plan sustituye a la versión { $old }. Lo que ha hecho hasta ahora se conserva.
visit-on = Próxima visita: { $date }
for-complaint = Para: { $name }
fit-your-day = Ajústelo a su día: { $name }
from = Desde
to = Hasta
time-number = Hora { $n }
times-a-day = { $n ->
       [one] una vez al día
      *[other] { $n } veces al día
    }
times-differ = Elija una hora distinta para cada sesión.
who-photographs = Cualquiera que fotografíe esta tarjeta puede usarla igual que usted. No la muestre a nadie más.
start-plan = Empezar este plan
use-another-card = Otra tarjeta
add-new-card = Añadir una tarjeta nueva
reminders-ahead = A estas horas recibirá un recordatorio breve que no dice nada médico. El sistema puede pedirle permiso para mostrarlo.
camera-open = Escanear el código con la cámara
camera-close = Cerrar la cámara
camera-how = Encuadre el código entero, de frente y de cerca. Se lee sin tocar nada.
camera-sees = Lo que ve la cámara
camera-refused = No se pudo abrir la cámara. Elija una foto del código o escriba el texto de la tarjeta.
camera-unknown = Este dispositivo no tiene una cámara para escanear. Elija una foto del código o escriba el texto de la tarjeta.
sample-look = Probar con un plan de ejemplo
sample-what = ¿Aún no tiene tarjeta? Vea cómo es un plan y pruebe un ejercicio. No se guarda nada.
sample-is = Plan de ejemplo: no se guarda nada.
sample-exit = Salir del ejemplo
sample-clinic = Clínica de ejemplo
# Una molestia, un motivo y una actividad inventados, como los diría un paciente.
sample-back = parte alta de la espalda
sample-ankle = el tobillo me falla
sample-meeting = aguantar una reunión larga en la silla

## Paciente: plan

# Un botón, y el título de la página que abre.
change-times = Cambiar las horas
# Para lectores de pantalla.
change-times-of = Cambiar las horas: { $name }
change-times-what = Ajuste las horas a su día. Las horas nuevas se aplican a partir de mañana.
save-times = Guardar las horas
times-over-midnight = Aquí no se pueden guardar horas después de medianoche. Pídalas a su clínica.
# $day: "lunes 2 de marzo". $times: un horario, "todos los días, a las 08:00 y a las 19:00".
times-from = A partir del { $day }: { $times }
being-treated = Sus molestias
my-activities = Actividades que usted eligió
baselines = Segundos sobre una pierna en la visita
pain-then = dolor { $n } de 10
of-ten = { $n } de 10
plan-version = Versión { $n } del plan.

## Paciente: registro

done-when = Qué hizo y a qué hora del día
done-count = { $n ->
       [one] { $k } de { $n } sesión hecha.
      *[other] { $k } de { $n } sesiones hechas.
    }
# $k (Number), $n (Number), $partly (Number)
done-count-partly = { $k } de { $n } hechas del todo, { $partly } en parte.
# Debajo de los ejercicios, si uno nunca se hizo en este dispositivo aunque otros sí.
record-other-device = Lo que hizo en otro dispositivo no se cuenta aquí.
balance-title = Equilibrio
pain-title = Dolor, de 0 a 10
activities-title = Actividades, de 0 a 10
# Se dice una sola vez para todas las gráficas sin datos suficientes.
record-few-data = Donde no se indica ningún cambio, todavía no hay datos suficientes. Hace falta una semana o más.
# La primera línea del registro.
# $k (Number)
record-last-14-days = { $n ->
       [one] En los últimos 14 días hizo { $k } de { $n } sesión, al menos en parte.
      *[other] En los últimos 14 días hizo { $k } de { $n } sesiones, al menos en parte.
    }
record-pain-lower = Su dolor por la mañana es menor que al principio ({ $name }).
record-pain-higher = Su dolor por la mañana es mayor que al principio ({ $name }). Háblelo en su visita.
# Un botón, y el título de la página que abre.
then-and-now = Antes y ahora
then-and-now-what = Su primera semana junto a los últimos siete días. La mitad de los valores fueron más altos y la mitad, más bajos.
# Los títulos de dos columnas.
first-week = Primera semana
this-week = Últimos 7 días
then-and-now-mornings = Dolor por la mañana: { $name }
# En Ahora, el día antes de la visita y el mismo día.
visit-is-today = Su visita es hoy
visit-is-tomorrow = Su visita es mañana
prepare-summary = Preparar el resumen
nothing-yet = Aún no hay nada registrado. El primer ejercicio que haga aparecerá aquí.

## Paciente: visita

for-the-visit = Para la visita
visit-what = Un archivo cifrado que solo su clínica puede abrir. Usted elige el periodo y ve lo que contiene.
shared-title = Qué contiene
not-shared = No contiene su nombre, su ubicación, qué dispositivo usa ni la hora exacta de lo que hizo (solo en qué hora fue cada sesión y, por semana, cuánto tiempo después de los recordatorios empezó).
shared-days = { $n ->
       [one] { $n } día, del { $from } al { $until }, contado desde el inicio del plan
      *[other] { $n } días, del { $from } al { $until }, contados desde el inicio del plan
    }
shared-sessions = { $n ->
       [one] { $item }: cómo fue { $n } sesión, con el motivo si se omitió
      *[other] { $item }: cómo fue cada una de las { $n } sesiones, con los motivos de las omitidas
    }
shared-exercises-done = { $n ->
       [one] { $n } ejercicio que hizo: cuánto de la dosis y en qué hora del día
      *[other] { $n } ejercicios que hizo: cuánto de la dosis y en qué hora del día
    }
shared-attempts = { $n ->
       [one] { $n } intento de equilibrio, con sus segundos
      *[other] { $n } intentos de equilibrio, con sus segundos
    }
shared-pain = { $n ->
       [one] { $n } valoración del dolor por la mañana
      *[other] { $n } valoraciones del dolor por la mañana
    }
shared-during = { $n ->
       [one] { $n } valoración del dolor al hacer ejercicio
      *[other] { $n } valoraciones del dolor al hacer ejercicio
    }
shared-well-again = { $n ->
       [one] Que volvía a estar bien
      *[other] Que volvía a estar bien, { $n } veces
    }
shared-timing = De cada vez: si empezó más de una hora tarde o en otro día
shared-settled = { $n ->
       [one] { $n } respuesta sobre la mañana siguiente
      *[other] { $n } respuestas sobre la mañana siguiente
    }
shared-ratings = { $n ->
       [one] { $n } valoración de sus actividades
      *[other] { $n } valoraciones de sus actividades
    }
# $day: "28 de octubre"; $what: uno de los mensajes trouble-...
shared-alarms = Un problema el { $day }: { $what }
shared-delays = Por semana: cuánto tiempo después del recordatorio empezó
shared-corrections = { $n ->
       [one] Una anotación que usted corrigió
      *[other] { $n } anotaciones que usted corrigió
    }
# Lo anotado entonces: sesiones y valoraciones.
shared-wrong-clock = { $n ->
       [one] Una anotación hecha cuando el reloj de este dispositivo iba mal
      *[other] { $n } anotaciones hechas cuando el reloj de este dispositivo iba mal
    }
shared-card = Qué día añadió una tarjeta y las horas que acordó
note-optional = Nota para la clínica (opcional)
save-encrypted = Guardar resumen cifrado
saved-title = Guardado
saved-what = Lleve este archivo a la visita o envíelo a su clínica. Nadie más puede leerlo.

## Paciente: el resumen como códigos

frames-show = Mostrarlo en códigos
frames-title = El resumen en códigos
frames-what = { $n ->
       [one] La clínica fotografía este código. Suba el brillo de la pantalla.
      *[other] La clínica fotografía todos los códigos, en cualquier orden. Suba el brillo de la pantalla.
    }
frame-of = Código { $n } de { $of }
frame-next = Código siguiente
frame-previous = Código anterior
frames-in-turn = Pasar los códigos solos
frames-stay = Quedarse en este código

## Paciente: corregir

correct-title = Corregir una anotación
correct-what = Toque la anotación que quiera corregir. Lo que anotó primero se conserva en este dispositivo. Su clínica ve el dato corregido y que hubo una corrección.
correct-none = { $n ->
       [one] No hay nada que corregir del último día.
      *[other] No hay nada que corregir de los últimos { $n } días.
    }
correct-open = ¿Anotó algo por error?
correct-delete = Fue un error: eliminarlo
correct-not-done = No lo hice
correct-change = Cambiarlo
correct-undo = Volver a lo que anoté primero
correct-alarm = Indicar que fue un error
correct-earlier = Ver días anteriores
correct-days = Guardar estos días
correct-alarm-noted = Anotado: fue un error. Lo suspendido sigue suspendido.
# $now: "2 de 10", un motivo o una de las frases said-...
corrected-to = Ahora: { $now }.
corrected-deleted = Eliminado.
corrected-not-done = No se hizo.
said-pain = Dolor, { $of }: { $score } de 10
said-pain-after = Dolor, { $of }, después de { $item }: { $score } de 10
said-morning = Dolor por la mañana, { $of }: { $score } de 10
said-during = Dolor al hacer { $item }: { $score } de 10
said-settled = { $of }: por la mañana se había calmado
said-not-settled = { $of }: por la mañana no se había calmado
said-rated = { $of }: { $score } de 10
# $day: "28 de octubre". Se dice de una sesión.
said-skipped = { $item }, { $day }: omitida ({ $reason })
said-days-off = Días libres, del { $from } al { $until }: { $why }
said-run = { $item }: hecho { $done } de { $of }
said-run-none-complete = { $item }: 0 de { $of } por completo
said-trouble = Un problema: { $what }
said-trouble-during = Un problema durante { $item }: { $what }

## Paciente: recordatorios

reminders-title = Recordatorios
reminders-what = Solo hay un recordatorio a la vez, y desaparece cuando pasa su hora. Si usted atendió el último, el siguiente no suena.
# Seguridad.
reminders-not-driving = No atienda un recordatorio mientras conduce, va en bicicleta, trabaja en altura o usa máquinas. Haga la sesión más tarde.
reminders-may-fail = Un recordatorio puede no llegar si el dispositivo está apagado, en reposo o ahorrando batería, o si las notificaciones están bloqueadas. No confíe solo en los recordatorios.
reminders-battery = Si los recordatorios llegan tarde o no llegan, permita que Carryover funcione en segundo plano en los ajustes de batería del sistema.
no-reminder-hours-title = Horas sin recordatorios, cada día
no-reminder-hours-what = A estas horas no llega ningún recordatorio. Si uno cae dentro, llega al final, siempre que no sea ya tarde para la sesión.
# Horas sin artículo.
no-reminder-hours-span = de { $from } a { $to }
no-reminder-hours-add = Añadir horas
no-reminder-hours-remove = Quitar
no-reminder-hours-save = Guardar estas horas
no-reminder-hours-none = Ninguna.
meeting-title = En una reunión
meeting-what = No hay recordatorios hasta que termine la reunión. Después vuelven automáticamente.
meeting-minutes = { $n ->
       [one] { $n } minuto
      *[other] { $n } minutos
    }
meeting-hours = { $n ->
       [one] { $n } hora
      *[other] { $n } horas
    }
meeting-until = En una reunión hasta { $time }.
meeting-end = Terminar la reunión
# Delante de tres botones con un tiempo, "30 minutos".
meeting-now = ¿En una reunión? Sin recordatorios durante:
no-reminder-until = Sin recordatorios hasta { $time }.
no-reminder-all-day = Las horas sin recordatorios ocupan todo el día: no llegará ninguno.
next-reminder-at = Próximo recordatorio: el { $day } a { $time }.
no-reminder = No hay recordatorios en las próximas dos semanas.

## Paciente: datos propios

mine-title = Sus datos
mine-save = Exportar mis datos
# $number: 16 letras y cifras.
mine-number = Número de este dispositivo: { $number }. Si usa varios dispositivos, su clínica puede preguntárselo para distinguirlos.
mine-what = Sus planes y todo lo que usted registró, como texto y como tablas, en una carpeta aparte. Cualquiera que tenga la carpeta puede leerla.
calendar-title = En un dispositivo sin Carryover
calendar-save = Guardar las horas para un calendario
calendar-what = Un archivo que puede abrir el calendario de un teléfono, para que le avise cuando no tenga este programa a mano. No menciona los ejercicios y no devuelve ningún dato. Pruebe antes con un recordatorio: algunos calendarios no los muestran.
# An optional code for the window.
screen-lock-title = Bloqueo de pantalla
screen-lock-what = Con un código, esta ventana no muestra nada hasta que usted lo escribe: al abrir Carryover, tras cinco minutos sin usarlo y cuando usted la bloquea. Un ejercicio en curso no se interrumpe. Los recordatorios siguen llegando.
screen-lock-limits = Evita que la lea quien pase por delante. No cifra su registro: quien pueda usar su cuenta en este dispositivo puede leer los archivos. Use también el bloqueo del dispositivo.
screen-lock-code = Código
screen-lock-code-again = Repita el código
screen-lock-code-hint = 4 caracteres o más.
screen-lock-differs = Los dos códigos no coinciden.
screen-lock-begin = Bloquear con este código
screen-lock-on = La ventana pide un código.
screen-lock-off = La ventana no pide ningún código.
screen-lock-now = Bloquear ahora
screen-lock-present = Su código actual
screen-lock-end = Quitar el bloqueo
screen-lock-forgotten = Si lo olvida, pregunte a la persona que se ocupa de este dispositivo; no se pierde nada.
screen-locked-title = Bloqueado
screen-locked-open = Abrir
screen-locked-emergency = En una emergencia, llame al número de emergencias de su zona. Para eso no necesita Carryover.
erase-title = Borrar todo
erase-what = Se borran de este dispositivo, para siempre, sus planes, todo lo que registró y sus ajustes. Los archivos que guardó no se borran, y tampoco lo que ya tiene su clínica.
erase-first = Si quiere conservarlo, expórtelo antes. Para empezar de nuevo necesita una tarjeta de su clínica.
erase-ask = ¿Borrar todo para siempre?
erase-sure = Sí, borrar todo
erase-keep = No, conservarlo
erased = Se ha borrado todo.

## Paciente: con la ventana cerrada

stay-title = Con la ventana cerrada
stay-at-login = Abrir al iniciar sesión en este equipo
stay-at-login-what = Sin mostrar la ventana, para que lleguen los recordatorios.
stay-in-tray = Mientras siga un plan, al cerrar la ventana Carryover continúa en la bandeja del sistema para que lleguen los recordatorios. Para cerrarlo del todo, elija Salir en la bandeja.
tray-meeting = { $n ->
       [one] En una reunión durante { $n } hora
      *[other] En una reunión durante { $n } horas
    }
tray-due = Pendiente hasta { $time }.
tray-next = Siguiente, a { $time }.

## Paciente: otros textos

left-side = lado izquierdo
right-side = lado derecho
# $time: hora con artículo, "las 09:00".
reminds-at = recordatorio a { $time }
extra-plainly = { $n ->
        [one] { $n } sesión adicional.
       *[other] { $n } sesiones adicionales.
    }
# Junto a una anotación.
entry-clock-ahead = El reloj de este dispositivo iba adelantado en ese momento.
entry-clock-behind = El reloj de este dispositivo iba atrasado en ese momento.
record-wrong-clock = { $n ->
        [one] Una anotación se hizo cuando el reloj de este dispositivo iba mal. Se conserva, pero no cuenta para ningún día.
       *[other] { $n } anotaciones se hicieron cuando el reloj de este dispositivo iba mal. Se conservan, pero no cuentan para ningún día.
    }
# $day, $today: fechas sin artículo, "28 de octubre" o "lunes 2 de marzo".
clock-behind = La última anotación es del { $day }, pero según este dispositivo hoy es { $today }. Compruebe la fecha del dispositivo. No se ha perdido nada.
# $span: quiet-span, "de 12:00 a 13:00".
quiet-added = Guardado: sin recordatorios { $span }.
quiet-taken-out = Quitado: { $span }.
stay-ends = Este escritorio no tiene bandeja del sistema. Al cerrar la ventana, Carryover pregunta si debe seguir en segundo plano para que lleguen los recordatorios.
closing-title = ¿Cerrar y dejar de recibir recordatorios?
closing-what = Este escritorio no tiene bandeja para Carryover. En segundo plano, con la ventana minimizada, sigue enviando recordatorios. Si lo cierra, no llega ninguno hasta que lo abra de nuevo.
closing-keep = Seguir en segundo plano
closing-end = Cerrar sin recordatorios
