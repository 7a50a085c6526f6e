## Clínica: configurar y desbloquear

clinic-setup-title = Configure su clínica
clinic-setup-what = Esta clínica firma las tarjetas de los planes, y los resúmenes se cifran para ella. Sus claves se quedan en este equipo, protegidas con una contraseña.
clinic-name = Nombre de la clínica
clinic-name-hint = Los pacientes lo ven en su pantalla.
clinic-phone = Teléfono (opcional)
clinic-phone-hint = Va en cada tarjeta y se muestra en grande donde se pide al paciente que contacte con ustedes.
# Un botón junto al número, y donde aún no hay ninguno.
clinic-phone-change = Cambiar el número
clinic-phone-add = Añadir un teléfono
clinic-phone-save = Guardar el número
passphrase = Contraseña
passphrase-again = Repita la contraseña
passphrase-hint = 12 caracteres o más. Varias palabras juntas sirven bien.
passphrase-show = Mostrar la contraseña
passphrase-differs = Las dos contraseñas no coinciden.
passphrase-lost = Si pierde la contraseña, no se puede recuperar. Sin ella, o sin unas claves que haya guardado, nadie podrá volver a abrir los planes y los resúmenes de esta clínica, ni siquiera quienes hacen este programa. Anótela y guárdela bajo llave.
clinic-start = Configurar la clínica
clinic-unlock-title = Abrir los datos de la clínica
clinic-unlock-what = Hasta entonces, los pacientes, los planes y los resúmenes están cifrados.
clinic-unlock = Abrir
clinic-opening = Tarda un momento.
security-code = Código de verificación
security-code-what = La pantalla del paciente muestra el mismo código cuando añade la tarjeta.

## Clínica: pacientes

patients = Pacientes
patients-none = Aún no hay pacientes. Añada uno con un código que usted elija, como el número de la historia clínica.
patients-find = Buscar por código o nombre
patient-add = Añadir paciente
patient-code = Código
patient-code-hint = De 1 a 12 letras, cifras o guiones.
patient-name = Nombre (puede dejarlo vacío)
patient-name-hint = Se queda en los datos de la clínica; nunca va en una tarjeta ni en un resumen.
receive-summaries = Recibir resúmenes
receive-what = Elija los archivos que los pacientes guardaron para la visita, o las fotos de los códigos que mostraron: todos los que quiera, o una carpeta entera.
receive-drop = También puede soltar archivos o una carpeta sobre esta ventana.
receive-drop-here = Suéltelos para recibirlos.
choose-files = Elegir archivos
choose-folder = Elegir una carpeta
# $done (Number)
# $of (Number)
receive-progress = { $done } de { $of }
# $done (Number)
# $of (Number)
# $read (Number)
receive-progress-read = { $done } de { $of } · leídos: { $read }
receive-stop = Dejar de recibir
# $new (Number)
# $known (Number)
# $refused (Number)
receive-counts = Nuevos: { $new } · ya conocidos: { $known } · rechazados: { $refused }
receive-stopped = { $n ->
        [one] Interrumpido. { $n } archivo no se ha tocado. Lo recibido se conserva.
       *[other] Interrumpido. { $n } archivos no se han tocado. Lo recibido se conserva.
    }
receive-passed-over = { $n ->
        [one] { $n } archivo o carpeta más se ha dejado como estaba. De una carpeta, y hasta cuatro niveles por debajo, se reciben los archivos que terminan en .age, .png, .jpg o .jpeg.
       *[other] { $n } archivos o carpetas más se han dejado como estaban. De una carpeta, y hasta cuatro niveles por debajo, se reciben los archivos que terminan en .age, .png, .jpg o .jpeg.
    }
receive-nothing = No contiene nada que recibir. De una carpeta, y hasta cuatro niveles por debajo, se reciben los archivos que terminan en .age, .png, .jpg o .jpeg.
receive-more = Mostrar más
# En la ventana, qué se hizo con un resumen. $code: el código del paciente.
received-new = { $days ->
        [one] { $code }: resumen nuevo, { $days } día nuevo.
       *[other] { $code }: resumen nuevo, { $days } días nuevos.
    }
received-filled = { $days ->
        [one] { $code }: { $days } día completado.
       *[other] { $code }: { $days } días completados.
    }
received-filled-other = { $code }: ningún día nuevo. Se añadió una nota u otros detalles.
received-known = { $code }: nada nuevo. No se cambió nada.
# Archivos rechazados por el mismo motivo, y el motivo con lo que hay que hacer.
received-refused = { $n ->
        [one] { $n } archivo: { $refusal }
       *[other] { $n } archivos: { $refusal }
    }
list-visit-on = cita el { $date }
list-visit-today = cita hoy
list-visit-was = la cita era el { $date }
plan-none = aún sin plan
summary-until = resumen hasta el { $date }
summary-none = aún sin resumen
record-damaged = datos dañados
# Lo que les pasa a los datos: encima de la lista de pacientes y en el terminal.
store-damaged-records = { $n ->
        [one] Los datos de { $n } paciente están dañados y no aparecen en la lista: restaure una copia de seguridad o consulte a quien se ocupe de este equipo.
       *[other] Los datos de { $n } pacientes están dañados y no aparecen en la lista: restaure una copia de seguridad o consulte a quien se ocupe de este equipo.
    }
store-changed-outside = { $rows ->
        [one] { $rows } fila de los datos de la clínica se ha modificado desde fuera. Restaure una copia de seguridad.
       *[other] { $rows } filas de los datos de la clínica se han modificado desde fuera. Restaure una copia de seguridad.
    }
# Lo mismo con los códigos de los pacientes afectados.
store-changed-outside-of = { $rows ->
        [one] { $rows } fila de los datos de la clínica se ha modificado desde fuera. Afecta a: { $codes }. Restaure una copia de seguridad.
       *[other] { $rows } filas de los datos de la clínica se han modificado desde fuera. Afectan a: { $codes }. Restaure una copia de seguridad.
    }
store-keys-older = Esta clínica está abierta con claves guardadas antes de que renovara sus claves el { $day }. Los resúmenes hechos con tarjetas más nuevas no se abren. Use las claves que se guardaron por última vez: carryover clinic passphrase --from-keys ARCHIVO.
store-manifest-changed = La lista de filas de estos datos se ha borrado o modificado desde fuera, así que podría faltar alguna sin que se note. Restaure una copia de seguridad.
# Después de eliminar a un paciente.
patient-removed = Se ha eliminado a { $code }: el nombre, todos los planes y todos los resúmenes, también de las copias automáticas. Los archivos y copias que guardó en otro lugar no cambian.
patient-removed-here = Se ha eliminado a { $code }: el nombre, todos los planes y todos los resúmenes. Las copias de seguridad anteriores siguen conteniendo a este paciente.
patient-remove = Eliminar paciente
patient-remove-title = ¿Eliminar a { $code }?
patient-remove-what = El nombre y todos los planes, borradores y resúmenes de { $code } se borran de los datos de esta clínica. No se puede deshacer. Los archivos de tarjetas que guardó se quedan donde están, y el dispositivo del paciente conserva su registro.
patient-remove-law = Compruebe antes durante cuánto tiempo obligan las normas locales a conservar los datos.
patient-remove-type = Escriba { $code } para confirmar
patient-remove-backups = Borrar también las copias automáticas y las copias anteriores de los datos, que contienen a este paciente
patient-remove-backups-hint = Antes se hace una copia nueva. Las copias que guardó en otro lugar no cambian.
patient-remove-keep = Conservar paciente
# $device: el nombre de un dispositivo, 16 caracteres.
receipt-new-device = Procede de un dispositivo nuevo (número en el dispositivo: { $device }).
alarms-open = { $n ->
       [one] { $n } alarma sin resolver
      *[other] { $n } alarmas sin resolver
    }

## Clínica: plan

plan-first = Primer plan
plan-next = Plan siguiente
plan-review = Revisión
# Botón en la revisión: la tarjeta más reciente, como cuando se emitió.
show-card-again = Mostrar la tarjeta otra vez
# $revision: número de versión; $who: código o nombre del paciente.
plan-of = Plan para { $who }, versión { $revision }
plan-based-on = Parte de la versión { $revision } del plan.
# $takes: "unos 14 minutos", en minúscula.
full-day-line = { $n ->
       [one] Un día completo: { $n } sesión, { $takes }.
      *[other] Un día completo: { $n } sesiones, { $takes }.
    }
plan-empty = El plan aún está vacío. Toque un ejercicio para añadirlo con su dosis habitual.
proposals-accept = Aceptar todas las propuestas
proposed = propuesto
stop-removes-it = lo quita de este plan
remove = Quitar
move-up = Subir
move-down = Bajar
more-of-item = Horas, límites, nota
catalogue = Ejercicios
catalogue-find = Buscar un ejercicio
catalogue-add = Añadir { $name }
in-plan = en el plan
region-neck-upper-back = Cuello y parte alta de la espalda
region-shoulder = Hombro
region-wrist-hand = Muñeca y mano
region-low-back = Zona lumbar
region-hip = Cadera
region-knee = Rodilla
region-ankle = Tobillo y pie
level = Nivel
side-label = Lado
dose-holds = Repeticiones
dose-hold-seconds = Segundos cada una
dose-rest = Descanso, s
dose-trials = Intentos
dose-target = Objetivo, s
dose-cap = Hasta, s
dose-count-seconds = Segundos para contar
dose-seconds-each = Segundos cada una
dose-beats = Golpes por minuto
dose-sets = Series
dose-repetitions = Repeticiones
dose-stretches = Estiramientos
dose-stretch-seconds = Segundos cada uno
dose-movements = Movimientos
dose-minutes = Minutos
dose-effort = Esfuerzo, de 0 a 10
dose-quota-minutes = Minutos al empezar
dose-quota-times = Veces al empezar
dose-quota-step = Se añade en cada paso
dose-quota-days = Días entre pasos
dose-quota-goal = Meta, no crece más
dose-breath-in = Inspirar, s
dose-breath-full = Pausa después, s
dose-breath-out = Espirar, s
dose-breath-empty = Pausa después, s
dose-tempo-concentric = Fase concéntrica, s
dose-tempo-hold = Mantener, s
dose-tempo-eccentric = Fase excéntrica, s
# La dosis en una frase, en el editor del plan; los números se pueden tocar. $holds, $seconds, $pause y similares son los números
# Actividad graduada: la cantidad crece en $step cada $days días.
dose-sentence-quota = { $n ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    }, { $step } más cada { $d ->
        [one] { $days } día
       *[other] { $days } días
    }, hasta { $goal }, haya dolido o no
dose-sentence-quota-times = { $n ->
        [one] { $times } vez
       *[other] { $times } veces
    }, { $step } más cada { $d ->
        [one] { $days } día
       *[other] { $days } días
    }, hasta { $goal }, haya dolido o no
# como se muestran; $n, $s, $rest, $of son los mismos números, para elegir la forma.
dose-sentence-hold = { $n ->
        [one] { $holds } repetición
       *[other] { $holds } repeticiones
    } de { $s ->
        [one] { $seconds } segundo
       *[other] { $seconds } segundos
    }, con { $rest ->
        [one] { $pause } segundo
       *[other] { $pause } segundos
    } de descanso entre una y otra
dose-sentence-balance = { $n ->
        [one] { $attempts } intento
       *[other] { $attempts } intentos
    } de hasta { $s ->
        [one] { $seconds } segundo
       *[other] { $seconds } segundos
    }, con { $rest ->
        [one] { $pause } segundo
       *[other] { $pause } segundos
    } de descanso entre uno y otro
dose-sentence-reps = { $of ->
        [one] { $sets } serie
       *[other] { $sets } series
    } de { $n ->
        [one] { $repetitions } repetición
       *[other] { $repetitions } repeticiones
    }, con { $rest ->
        [one] { $pause } segundo
       *[other] { $pause } segundos
    } de descanso entre una y otra
dose-sentence-stretch = { $n ->
        [one] { $stretches } estiramiento
       *[other] { $stretches } estiramientos
    } de { $s ->
        [one] { $seconds } segundo
       *[other] { $seconds } segundos
    }, con { $rest ->
        [one] { $pause } segundo
       *[other] { $pause } segundos
    } de descanso entre uno y otro
dose-sentence-move = { $n ->
        [one] { $movements } movimiento
       *[other] { $movements } movimientos
    } al ritmo del paciente
dose-sentence-go = { $n ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    } con esfuerzo { $effort } de 10
dose-sentence-minutes = { $n ->
        [one] { $minutes } minuto
       *[other] { $minutes } minutos
    }
dose-sentence-pace = Cada respiración: { $inhale } s al inspirar, { $full } s de pausa, { $exhale } s al espirar, { $empty } s de pausa
dose-sentence-prompt = Una vez, sin dosis
dose-sentence-count = Tantos movimientos completos como se pueda en { $seconds } segundos
dose-sentence-beat = { $n ->
        [one] { $rounds } ronda
       *[other] { $rounds } rondas
    } de { $s ->
        [one] { $seconds } segundo
       *[other] { $seconds } segundos
    } a { $beats } golpes por minuto, con { $rest ->
        [one] { $pause } segundo
       *[other] { $pause } segundos
    } de descanso entre una y otra
# El ritmo de una repetición: el músculo se acorta, aguanta, se alarga.
dose-sentence-tempo = Cada repetición: fase concéntrica de { $out ->
        [one] { $concentric } segundo
       *[other] { $concentric } segundos
    }, pausa de { $stay ->
        [one] { $hold } segundo
       *[other] { $hold } segundos
    }, fase excéntrica de { $back ->
        [one] { $eccentric } segundo
       *[other] { $eccentric } segundos
    }
dose-label = Dosis
# Nombres de los botones menos y más para lectores de pantalla.
step-less = { $what }: menos
step-more = { $what }: más
when = Cuándo
when-every = A intervalos regulares
when-at = A horas fijas
when-needed = Cuando haga falta, sin recordatorios
every-label = Cada
every-option = { $n ->
       [one] { $n } minuto
      *[other] { $n } minutos
    }
from-label = De
to-label = A
times-label = Horas
times-hint = Por ejemplo: 8:00, 13:00, 18:00.
times-bad = Estas horas no se entienden. Escríbalas así: 8:00, 13:00, 18:00.
days-label = Días
days-how = Qué días
days-on-weekdays = Días de la semana
days-every-nth = Cada cierto número de días
# The patient chooses the days.
days-times-a-week = Varias veces por semana
how-often = Con qué frecuencia
times-in-a-week = { $n ->
        [one] una vez a la semana
       *[other] { $n } veces a la semana
    }
load-label = Carga
load-none = ninguna
load-kilograms = un peso
load-hint = Cada fabricante llama suave o fuerte a otra cosa: pruebe la banda con el paciente.
kilograms-label = Kilogramos
effort-label = Esfuerzo buscado, de 0 a 10
effort-none = ninguno
helper-tick = Solo con alguien al lado del paciente
phase-first = Primer día
phase-last = Último día
phase-first-date = Primer día, como fecha
phase-last-date = Último día, como fecha
phase-from-start = el principio
phase-until-visit = la próxima visita
phase-other-day = otro día
phase-week-from = semana { $n }, { $date }
phase-week-until = final de la semana { $n }, { $date }
pain-limit = Límite de dolor
pain-limit-hint = Se pide al paciente que pare si el dolor lo supera. Una valoración por encima es un motivo en «Qué hacer ahora».
may-step = El paciente puede progresar por su cuenta
may-step-hint = Con las mismas reglas y como mucho una vez por semana. De lo contrario, solo lo cambia usted.
for-complaint-label = Para la molestia
for-no-complaint = ninguna en particular
note-label = Nota para el paciente
note-count = { $n } de { $most } caracteres
complaints = Molestias
complaint-add = Añadir molestia
complaint-name = Qué le duele
side-none = sin lado
pain-today = Dolor hoy
not-asked = sin preguntar
activities = Actividades que elige el paciente
activity-add = Añadir actividad
activity-name = Qué le cuesta hacer, con sus palabras
rating-today = Hoy, de 0 a 10
balance-at-home = Equilibrio en casa
balance-at-home-what = Para practicar sin supervisión hacen falta estos tres datos. Las normas locales y su propio criterio tienen prioridad.
age-band = Edad
age-under18 = menos de 18
age-between = de { $from } a { $to }
age-from80 = 80 o más
age-none = elija
# Debajo del grupo de edad, si es menor de 18 años.
age-under18-what = Acuerde con la madre, el padre o quien tenga la tutela quién ayuda con los ejercicios y quién contesta las preguntas.
# Lista de riesgos: se marca lo que se ha descartado.
absent-title = Marque solo lo que el paciente NO tiene
# Un botón debajo de la lista de riesgos en una visita posterior, y la línea a su lado.
absent-still-true = Sigue siendo cierto hoy
absent-confirmed-on = Confirmado por última vez el { $day }
absent-confirmed-today = Confirmado hoy
stance-today = Segundos sobre una pierna hoy, ojos abiertos, suelo firme
# Casilla junto a los segundos; habla quien cronometra.
stance-stopped-by-clinician = lo detuve yo; el pie no tocó el suelo
stance-earlier = antes: { $s } s
aftercare = Para los dos primeros días
aftercare-own = Una indicación propia
next-visit = Próxima visita
in-weeks = { $n ->
       [one] { $n } semana
      *[other] { $n } semanas
    }
date-label = Fecha
alarms-to-clear = Alarmas sin resolver
alarm-clear = Darla por resuelta con esta tarjeta
alarm-clear-what = Lo que no se dé por resuelto sigue suspendido en el dispositivo del paciente.
# Junto al botón que emite una tarjeta. $name: un ejercicio del que hay que hablar.
nothing-chosen = { $name }: no se ha elegido nada, así que sigue igual.
alarms-stay = { $n ->
       [one] { $n } alarma sin resolver: lo que suspendió o hizo más fácil sigue así con esta tarjeta.
      *[other] { $n } alarmas sin resolver: lo que suspendieron o hicieron más fácil sigue así con esta tarjeta.
    }
issue-card = Emitir la tarjeta
issue-shortcut = Ctrl e Intro
issue-missing = Aún falta
issue-ready = Lista para emitir.
# Debajo de «Lista para emitir», si la tarjeta no cabe en un código. $n (Number): de 2 a 8.
issue-as-codes = Esta tarjeta no cabe en un código. El paciente lee { $n } códigos uno tras otro, o usted la entrega como archivo o como texto.
# Lo mismo, si tampoco cabe en varios códigos.
issue-as-file = Esta tarjeta es demasiado grande para los códigos. La entregará como archivo o como texto.
issue-too-large = Los ejercicios propios de este plan son demasiado grandes en conjunto para una tarjeta. Quite uno de ellos o acorte sus textos.
# Vale para indicaciones, actividades y molestias, todas femeninas.
fold-none = ninguna
fold-lines = { $n ->
       [one] { $n } indicación
      *[other] { $n } indicaciones
    }

## Clínica: lo que le falta a un plan
# Al lado del ejercicio o del campo que hay que corregir.

problem-unknown = El catálogo de este programa no tiene este ejercicio, o lo tiene en otra versión.
problem-level = Elija un nivel.
problem-dose = La dosis está fuera de los límites.
problem-too-much-work = Más de { $minutes } minutos por lado cada vez.
problem-side = Elija un lado.
problem-schedule = Elija al menos un día y una hora.
problem-load = Un ejercicio de este tipo no lleva carga, o indica el esfuerzo en la dosis.
problem-phase = Sus días deben estar dentro del plan, y el último no antes que el primero.
problem-overlap = El mismo ejercicio ya está en el plan en algunos de estos días. Haga que uno empiece cuando el otro haya terminado.
problem-once-a-day = Los días que elige el paciente se hace una vez: indique una sola hora, a partir de las 3:00.
problem-complaint-gone = Es para una molestia que ya no está en el plan.
problem-stance = Faltan los segundos de hoy sobre una pierna de un lado prescrito.
problem-stance-short = Menos de cinco segundos con ojos abiertos: no debe practicarlo sin supervisión.
problem-gate = No se permiten superficies más blandas ni ojos cerrados hasta lograr 30 s con ojos abiertos en suelo firme, hoy y en una visita anterior.
problem-soft-closed = A partir de los 65 años no se permite practicar sin supervisión en una superficie blanda con los ojos cerrados.
problem-ticks = { $n ->
       [one] Falta por marcar { $n } punto de la lista.
      *[other] Faltan por marcar { $n } puntos de la lista.
    }

## Clínica: la tarjeta emitida

issued-title = Tarjeta del plan para { $who }
issued-revision = versión { $revision } del plan
issued-what = El paciente escanea el código, o se lleva la imagen, el texto o el archivo.
issued-warning = Cualquiera que fotografíe esta tarjeta puede usarla. Muéstrela solo al paciente.
issued-code = La tarjeta como código
issued-text = La tarjeta como texto
issued-copy = Copiar el texto
issued-files = Archivos de esta tarjeta
# Junto a los códigos de una tarjeta, que se muestran de uno en uno. $n (Number): de 2 a 8.
issued-codes = La tarjeta se muestra en { $n } códigos. El dispositivo del paciente los lee todos, en cualquier orden.
issued-too-large = Es demasiado grande para códigos. Entregue el archivo o el texto.

## Clínica: revisión

review-empty = En la visita, el paciente abre Historial, guarda un resumen cifrado y le da el archivo, o lo muestra en códigos. Recíbalo aquí.
review-figures = Más cifras
review-other = Otras condiciones y tiempos en las visitas
chart-days = { $name }, día por día
chart-line = { $name }, de 0 a 10 por día
chart-stance = Segundos por día, ambas piernas
chart-at-visit = valorado en la visita

no-day = ningún día elegido
receipt-filled-other = { $file }: { $code }, ningún día nuevo. Se añadió una nota u otros detalles.
plan-full = Un plan admite hasta { $most } ejercicios. Quite uno para añadir otro.
named-full = Se pueden anotar hasta { $most }.
# Horas sin artículo.
over-midnight = Continúa durante la noche: de { $from } a { $to } del día siguiente.
round-the-clock = Continúa todo el día y toda la noche, desde { $from }.
unread-times = Las horas «{ $typed }» no se entienden. Escríbalas así: 8:00, 13:00, 18:00.
unread-times-none = No hay ninguna hora. Escriba horas como 8:00, 13:00, 18:00.
unread-stance = «{ $typed }» no es un número de segundos entre 0 y 600. Escríbalo así: 12,4.
unread-visit = Falta la fecha de la próxima visita.
unread-here = { $place }: { $what }
draft-resumed = Borrador del { $date } recuperado.
draft-resumed-anew = Borrador del { $date } recuperado. Vuelva a indicar hoy lo que el paciente no tiene y los segundos sobre una pierna.
draft-discard = Descartar el borrador
draft-discard-ask = ¿Descartar todos los cambios de este borrador?
draft-discard-yes = Sí, descartarlo
draft-discard-no = No, conservarlo

## Clínica: el caso de un paciente

# La página sobre el caso de un paciente, y el botón que lleva a ella.
case-title = Caso
case-of = Caso de { $code }
# Junto al código de un paciente cuyo caso está cerrado.
case-closed = cerrado
case-closed-since = Cerrado el { $on }.
case-closed-on = Cerrado el { $on }: { $reason }.
case-closed-by = Lo cerró { $who }.
case-closed-and-reopened = Cerrado el { $on }: { $reason }. Abierto de nuevo el { $reopened }.
case-is-open = El caso está abierto.
case-close = Cerrar el caso
case-close-what = Un caso cerrado sale de la lista de pacientes y se encuentra en «Cerrados». No se borra nada. No admite un plan nuevo hasta que se abra de nuevo; si llega un resumen, se recibe igualmente. El dispositivo del paciente no se entera: recuerda los ejercicios hasta que allí acabe el plan.
case-close-why = Motivo
case-close-words = Más detalles (puede dejarlo vacío)
case-close-words-needed = Con otras palabras
case-reopen = Abrir el caso de nuevo
case-letter = Carta de fin de tratamiento
case-letter-what = Una o dos páginas para quien trate al paciente a partir de ahora: la evolución, lo que se midió en la primera visita y en la última, y con qué sigue el paciente. Solo nombra al paciente por su código.
case-letter-own = Lo que usted añade (opcional)
# $most (Number): 2000.
case-letter-own-hint = Cada línea nueva empieza un párrafo. Hasta { $most } caracteres.
# $n (Number): más que $most. $most (Number): 2000.
case-letter-too-long = Son { $n } caracteres. Caben hasta { $most }.
case-letter-save = Guardar la carta (PDF)
close-finished = tratamiento terminado
close-sent-on = derivado a otra persona
close-stopped-coming = dejó de venir
close-other = otro
case-name-title = Código y nombre
case-name-what = Los planes entregados siguen con otro código y sus resúmenes llegan como antes: ninguna tarjeta lleva el código. Lo que se imprimió, o se guardó para una historia clínica, conserva el código anterior.
case-name-save = Guardar código y nombre
case-plans = Planes entregados
case-plans-none = Aún no se ha entregado ningún plan.
# $n es el número del plan. $issued y $visit son fechas.
case-plan-line = Plan { $n }: entregado el { $issued }, próxima cita el { $visit }
case-plan-newest = vigente
case-plan-by = Lo emitió { $who }.
case-plan-show = Ver o guardar
# El nombre del botón para un lector de pantalla. $n es el número del plan.
case-plan-show-n = Ver o guardar el plan { $n }
case-plan-changes = Qué cambia respecto al plan anterior
case-plan-unchanged = Ningún ejercicio cambia respecto al plan anterior.
plan-item = { $name }: { $dose }; { $times }
exercise-at-level = { $exercise } («{ $level }»)
change-new = Nuevo: { $item }
change-gone = Ya no está en el plan: { $name }
change-level = { $now } en lugar de { $before }
change-from = { $name }: { $now }. Antes: { $before }
change-else = { $name }: cambia un detalle, como la nota, el límite de dolor o el permiso para avanzar.
change-visit = La próxima cita es el { $date }.
removes-name = el código, el nombre y lo que se marcó
removes-plans = { $n ->
        [0] ningún plan
        [one] { $n } plan entregado
       *[other] { $n } planes entregados
    }
removes-summaries = { $n ->
        [0] ningún resumen
        [one] { $n } resumen recibido
       *[other] { $n } resúmenes recibidos
    }
removes-findings = { $n ->
        [0] ninguna anotación de visitas
        [one] { $n } anotación de visitas
       *[other] { $n } anotaciones de visitas
    }
removes-draft = el plan que se está escribiendo
# Antes de las líneas de lo que se borra.
patient-remove-list = Se borran:
filter-closed = Cerrados
receipt-case-closed = El caso está cerrado desde el { $date }.
