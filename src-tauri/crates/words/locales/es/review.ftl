## Revisión
# Los porcentajes llevan espacio de no separación. Un juicio ("Mejor") y sus cifras se unen con coma: las cifras empiezan en minúscula.

## Las seis preguntas y los textos que las acompañan

review-question-alarms = Alarmas
review-question-done = Cumplimiento, por hora del día
review-question-pain = Dolor, de 0 a 10
review-question-balance = Equilibrio: tiempo de pie (s)
review-question-counts = Pruebas por repeticiones
review-question-activities = Actividades, de 0 (no puede) a 10 (como antes)
review-question-barriers = Qué lo impidió
review-question-next = Qué hacer ahora
review-notes = Notas del paciente
review-no-alarm = El paciente no dio ninguna alarma.
review-no-barrier = No se indicó ningún motivo.
review-no-complaint = El plan no incluye ninguna molestia, así que no se preguntó por el dolor.
review-no-balance = No se midió el equilibrio.
review-no-activity = El plan no incluye ninguna actividad.
review-no-summary = Aún no ha llegado ningún resumen.
review-no-plan = Aún no hay plan.
review-days-since = { $n ->
       [one] { $n } día desde el { $date }
      *[other] { $n } días desde el { $date }
    }
review-exercises = { $n ->
       [one] { $n } ejercicio
      *[other] { $n } ejercicios
    }
review-visit-today = cita hoy
review-visit-on = cita el { $date }
review-visit-was = la cita era el { $date }
review-covered = Registro del { $from } al { $until }.
review-covered-devices = { $n ->
       [one] Registro del { $from } al { $until }, de { $n } dispositivo.
      *[other] Registro del { $from } al { $until }, de { $n } dispositivos.
    }
review-device-behind = De un dispositivo no se han recibido las anotaciones posteriores al { $date }.
# $revision, $next: números de versión del plan.
review-store-behind = El dispositivo del paciente usa la versión { $revision } del plan, que no está en estos datos: probablemente se restauraron de una copia anterior. La próxima tarjeta será la versión { $next }.
review-changed-outside = Se han modificado filas de este paciente desde fuera del programa. Lo que se muestra puede estar incompleto o ser más antiguo.
# Los dispositivos de los que proceden los resúmenes, en el orden en que se vieron por primera vez. $used: device-used, device-used-on o
# device-not-used.
# $number (Number)
review-device-counted = Dispositivo { $number }: { $used }.
# $number (Number)
review-device-left-out = El dispositivo { $number } no se tiene en cuenta en esta revisión, porque así lo eligió la clínica: { $used }.
device-used = { $n ->
       [0] usado del { $from } al { $until }, ninguna sesión
       [one] usado del { $from } al { $until }, { $n } sesión
      *[other] usado del { $from } al { $until }, { $n } sesiones
    }
device-used-on = { $n ->
       [0] usado el { $day }, ninguna sesión
       [one] usado el { $day }, { $n } sesión
      *[other] usado el { $day }, { $n } sesiones
    }
device-not-used = nada registrado
device-first-seen = Primer resumen recibido el { $date }.
device-seen-before = Su primer resumen llegó antes de que se anotaran los dispositivos.
# $number (Number)
device-goes-on-as = Su registro continúa en el dispositivo { $number }.
# $number: 16 letras y cifras, que el dispositivo muestra en su página «Sus datos».
device-number = Número en el dispositivo: { $number }
# $number (Number)
device-of-number = Dispositivo { $number }
devices-title = Dispositivos
devices-what = Los resúmenes proceden de varios dispositivos. Si el paciente no conoce alguno, puede que sus resúmenes los haya hecho otra persona: déjelo fuera. Cada dispositivo muestra su número en «Sus datos».
device-leave-out = Dejar fuera
device-take-in = Volver a contar
# En la lista de dispositivos del terminal.
device-left-out = no se cuenta
device-counted = se cuenta
review-device-renewed = El { $date }, los datos de un dispositivo se trasladaron, se copiaron o se recuperaron de una copia. Lo anotado dos veces cuenta una sola vez.
review-clock-ahead = { $n ->
        [one] El reloj del dispositivo del paciente iba un día por delante del de este ordenador cuando se hizo el resumen. Lo que registró para días que aún no han llegado no cuenta para ningún día.
       *[other] El reloj del dispositivo del paciente iba { $n } días por delante del de este ordenador cuando se hizo el resumen. Lo que registró para días que aún no han llegado no cuenta para ningún día.
    }
wrong-clock-sessions = { $n ->
        [one] una sesión
       *[other] { $n } sesiones
    }
wrong-clock-ratings = { $n ->
        [one] una valoración
       *[other] { $n } valoraciones
    }
# $what: wrong-clock-sessions, wrong-clock-ratings, o ambas como lista.
review-wrong-clock = Registrado cuando el reloj del dispositivo del paciente iba mal: { $what }. Se conserva, pero no cuenta para ningún día.
review-corrected = { $n ->
       [one] El paciente ha corregido una anotación; todas las cifras la incluyen ya corregida.
      *[other] El paciente ha corregido { $n } anotaciones; todas las cifras las incluyen ya corregidas.
    }
# $have, $newest: números de versión del plan.
review-older-plan-followed = El paciente usa la versión { $have } del plan; la más reciente es la { $newest }.
# Cuando no se conoce el nombre.
review-some-item = ejercicio { $n }
review-some-complaint = molestia { $n }
review-some-activity = actividad { $n }
review-no-longer = ya no está en el plan
review-steps-at-once = { $n ->
       [one] { $complaint }: { $n } ejercicio para ello sube un paso.
      *[other] { $complaint }: { $n } ejercicios para ello suben un paso a la vez. Si empeora, no se sabrá por cuál.
    }
review-proposals-only = Las propuestas siguen reglas fijas y se basan en lo registrado. Usted decide.
# Un botón junto a una propuesta y junto a una alarma. Pulsado significa que está en el borrador del plan siguiente.
review-into-next-plan = Ponerla en el plan siguiente
review-in-next-plan = En el plan siguiente
review-talked-about-it = Hablado: darla por resuelta en el plan siguiente
review-cleared-in-next-plan = Hablado: resuelta en el plan siguiente
# Delante de las opciones para una respuesta que aún no se dio.
review-not-answered = sin respuesta
# Debajo de un ejercicio: su dosis, nivel y horas en el plan vigente.
review-in-force = Ahora: { $list }
review-level-at-home = En casa últimamente: { $level }
# $list: fechas.
review-plan-changes = Cambios de plan: { $list } (líneas verticales en los gráficos).
# Los títulos de la línea de arriba.
review-strip-done = Hecho
review-strip-pain = Dolor
review-strip-activities = Actividades
review-strip-balance = Equilibrio
review-strip-alarms = Alarmas
review-strip-next = Propuestas
# $name: un ejercicio.
review-strip-last-14-days = { $name }: { $k } de { $n } en los últimos 14 días, al menos en parte
# $name: an exercise. $k (Number), $n (Number)
review-strip-of = { $name }: { $k } de { $n } completas
# $from (Number), $to (Number). $name: una dolencia, una actividad.
review-strip-change = { $name }: de { $from } a { $to }
# $score (Number)
review-strip-last-morning = último { $score }
# $leg: como «Izquierda». $from (Number), $to (Number)
review-strip-seconds = { $leg }: de { $from } a { $to } s
review-strip-open-alarms = { $n ->
       [one] { $n } sin resolver
      *[other] { $n } sin resolver
    }
review-strip-no-alarm = Ninguna
review-strip-cleared = Todas resueltas
# $proposal: como «Avanzar». $n (Number)
review-strip-count = { $proposal }: { $n }

## Alarmas, en palabras del clínico

review-heart-or-breath = Dolor en el pecho, disnea intensa, síncope o presíncope, o sudor frío
review-head-or-neck = Repentino e inusual: cefalea o cervicalgia, diplopía, dificultad para hablar o tragar, cara dormida o caída, confusión, inestabilidad o desplome
review-nerve = Debilidad o pérdida de sensibilidad en una extremidad, nuevas o en aumento
review-bladder-or-bowel = Anestesia en silla de montar (genital o perianal), disfunción vesical, intestinal o sexual nueva, o dolor o debilidad en las dos piernas
review-limb = Pantorrilla hinchada, caliente o dolorosa; un chasquido repentino; mano o pie pálidos, azulados o fríos; o una articulación hinchada y caliente
review-fell = Se cayó
review-nearly-fell = Estuvo a punto de caerse
review-dizzy = Mareo o sensación de que todo gira
review-too-much-pain = Demasiado dolor
review-pain-above-limit = Dolor por encima del límite
review-unwell = Fiebre o malestar
review-other-trouble = Otro problema
review-alarm-on = el { $date }
review-alarm-during = el { $date }, durante { $exercise }
review-alarm-between = el { $date }, fuera de un ejercicio
review-alarm-above = { $score } de 10, límite { $limit }
review-alarm-blow-to-the-head = golpe en la cabeza
review-alarm-thins-the-blood = toma un anticoagulante
review-alarm-could-not-get-up = no pudo levantarse sin ayuda
review-alarm-sweats-or-weight-loss = sudores nocturnos o pérdida de peso sin motivo
review-alarm-suspends = Suspendido por seguridad desde entonces: { $items }.
review-alarm-suspends-plan = Todo el plan está suspendido por seguridad desde entonces.
review-alarm-suspends-nothing = No suspende nada.
review-alarm-eased = No suspende nada; desde entonces es un nivel más fácil en casa, o con una mano en el apoyo.
review-alarm-cleared = Resuelta en la última tarjeta.
# Uno de los detalles de una alarma, después de su fecha.
review-alarm-wrong-clock = el reloj del dispositivo iba mal en ese momento
review-alarm-said-mistaken = El paciente anotó que la indicó por error.

## Adherencia

review-as-agreed = Según lo acordado
review-partly = En parte
review-little = Poco
review-nothing-due = Aún no había nada previsto
review-as-needed = Cuando hace falta
review-done-times = { $n ->
        [one] hecho una vez, el { $date }.
       *[other] hecho { $n } veces, la última el { $date }.
    }
review-as-needed-besides = { $n ->
        [one] Hecho una vez mientras era cuando hiciera falta.
       *[other] Hecho { $n } veces mientras era cuando hiciera falta.
    }
review-sessions-in-full = { $n ->
       [one] { $k } de { $n } sesión completa, { $percent } %.
      *[other] { $k } de { $n } sesiones completas, { $percent } %.
    }
review-sessions-with-parts = { $n ->
       [one] { $k } de { $n } sesión completa, { $partly } en parte; en conjunto { $percent } %.
      *[other] { $k } de { $n } sesiones completas, { $partly } en parte; en conjunto { $percent } %.
    }
review-last-14-days = Últimos 14 días: { $k } de { $n }.
review-last-14-days-with-parts = Últimos 14 días: { $k } de { $n }, al menos en parte.
review-sessions-late = { $n ->
       [one] { $n } sesión empezó con más de una hora de retraso.
      *[other] { $n } sesiones empezaron con más de una hora de retraso.
    }
review-sessions-moved = { $n ->
       [one] { $n } sesión hecha otro día.
      *[other] { $n } sesiones hechas otro día.
    }
review-days-unrecorded = { $n ->
       [one] Sin registro { $n } día.
      *[other] Sin registro { $n } días.
    }
review-entered-afterwards = { $n ->
       [one] { $n } de las sesiones se anotó después, sin cronometrar.
      *[other] { $n } de las sesiones se anotaron después, sin cronometrar.
    }
review-with-days-off = En días libres: { $excused }. Si se cuentan como no hechas: { $k } de { $n }.
review-sessions-paused = { $n ->
       [one] { $n } sesión suspendida por seguridad, sin contar.
      *[other] { $n } sesiones suspendidas por seguridad, sin contar.
    }
review-dose-seconds = Mantuvo { $done } de { $of } segundos, { $percent } %.
review-dose-stretch = Estiró { $done } de { $of } segundos, { $percent } %.
review-dose-on-beat = { $of ->
        [one] Al compás { $done } de { $of } segundo, { $percent } %.
       *[other] Al compás { $done } de { $of } segundos, { $percent } %.
    }
review-dose-minutes = { $done } de { $of } minutos, { $percent } %.
review-dose-times = { $done } de { $of } veces, { $percent } %.
review-dose-repetitions = { $done } de { $of } repeticiones, { $percent } %.
review-dose-trials = { $done } de { $of } intentos, { $percent } %.
review-days-met = { $n ->
       [one] { $k } de { $n } día cumplido (80 % o más de las sesiones del día).
      *[other] { $k } de { $n } días cumplidos (80 % o más de las sesiones del día).
    }
review-dropped-off = Mucho menos desde el { $date }: antes, { $before_k } de { $before_n }; después, { $after_k } de { $after_n }.
review-longest-pause = { $days ->
       [one] Pausa más larga: { $days } día previsto, del { $from } al { $until }.
      *[other] Pausa más larga: { $days } días previstos seguidos, del { $from } al { $until }.
    }
review-pause-unrecorded = Sin registro en { $n } de esos días.
review-last-done = Hecho por última vez el { $date }.
review-needed-never = nunca hecho hasta ahora.
review-never-done = Nunca hecho hasta ahora.
review-extra = { $n ->
       [one] { $n } sesión adicional.
      *[other] { $n } sesiones adicionales.
    }
review-stopped-once = Paró antes de terminar una vez, después de { $done } de { $of }.
review-stopped-early = Paró antes de terminar { $n } veces, sobre todo después de { $done } de { $of }.
review-stopped-within-the-part = { $n ->
       [one] Paró antes de terminar una vez.
      *[other] Paró antes de terminar { $n } veces.
    }
review-interrupted = { $n ->
       [one] Se interrumpió una vez.
      *[other] Se interrumpió { $n } veces.
    }
review-half-days = Antes de mediodía, { $am_k } de { $am_n }; desde mediodía, { $pm_k } de { $pm_n }.
review-delay = En la semana del { $date }, la mitad de las sesiones empezó entre { $lower } y { $upper } minutos después del recordatorio.
# Leyenda del gráfico; se dice de una sesión.
review-legend-done = completa
review-legend-partly = en parte
review-legend-not-done = no hecha
review-legend-skipped = omitida, con motivo
review-legend-day-off = día libre
review-legend-paused = suspendida por seguridad
review-legend-no-record = sin registro

## Cambio

review-better = Mejor
review-worse = Peor
review-no-clear-change = Sin cambio claro
review-not-known-lately = No se sabe últimamente
# $score (Number)
review-pain-last-morning = La última mañana, { $date }, fue más alto: { $score }.
review-pain-better = de { $base } a { $now } ({ $date }): { $points } puntos menos, { $percent } %. Cambio mínimo: 2 puntos y 30 %.
review-pain-no-change = de { $base } a { $now } ({ $date }). Cambio mínimo: 2 puntos y 30 %.
review-pain-worse = de { $base } a { $now } ({ $date }): { $points } puntos más. Cambio mínimo: 2 puntos.
review-pain-last-rated = valorado por última vez el { $date }.
review-pain-flare = Claramente más alto del { $from } al { $until }: { $height }.
# $limit (Number)
review-pain-flare-over = Claramente más alto del { $from } al { $until }: { $height }, por encima del límite de { $limit }.
# $least (Number), $peak (Number)
review-pain-flare-height = de { $least } a { $peak }
review-pain-unsettled = { $n ->
       [one] Sin calmarse por la mañana { $n } día.
      *[other] Sin calmarse por la mañana { $n } días.
    }
review-during = Al hacer { $exercise }: valorado en { $k } de { $n } días. Primero los más recientes: { $list }.
review-during-none = Al hacer { $exercise }: aún sin valorar.
review-during-above-limit = { $n ->
       [one] Por encima del límite { $n } día.
      *[other] Por encima del límite { $n } días.
    }
review-pain-few = { $n ->
       [one] valorado { $n } día; hacen falta tres al principio y tres al final.
      *[other] valorado { $n } días; hacen falta tres al principio y tres al final.
    }
review-pain-none = aún sin valorar.
review-at-visits = En la visita: { $list }.
review-activity-changed = de { $base } a { $now }. Cambio mínimo: 3 puntos.
review-activity-not-again = aún no se ha vuelto a valorar.
review-activity-together = media de { $n } actividades: de { $base } a { $now }. Cambio mínimo de la media: 2 puntos.

## Equilibrio a una pierna

review-on-support = teléfono sobre el apoyo
review-at-breastbone = teléfono contra el pecho
review-in-pocket = teléfono en un bolsillo a la cintura
review-up-to = hasta { $s } s
review-rising = Sube
review-falling = Baja
review-at-maximum = En el máximo
review-not-enough-data = Datos insuficientes
review-count-within-error = Dentro del error de medición
review-count-error-unknown = Sin error de medición conocido
review-count-conditions = { $exercise }: repeticiones en { $seconds } s, en casa
review-count-figures = primera { $first }, última { $last }, mejor { $best }.
review-count-error = El error al hacerse la prueba uno mismo es { $error }; no se comparan casa y consulta.
review-count-on = { $date }: { $n }
# $basis: uno de los mensajes review-from-...
review-stance-moved = de { $from } a { $to } s en { $n } días; supera el cambio mínimo de { $least } s ({ $basis }).
review-stance-below-minimum = de { $from } a { $to } s en { $n } días; cambio mínimo: { $least } s ({ $basis }).
# Las dos siguientes, si el cambio mínimo es cuánto varían los propios días del paciente.
review-stance-beyond-own = de { $from } a { $to } s en { $n } días; más de lo que explica su propia variación diaria ({ $least } s).
review-stance-within-own = de { $from } a { $to } s en { $n } días; dentro de su propia variación diaria ({ $least } s).
review-stance-too-variable = de { $from } a { $to } s en { $n } días; varía demasiado para saberlo.
review-stance-at-maximum = En { $capped } de { $n } días se llegó a los { $s } s en que termina un intento, así que el tiempo no puede mostrar más.
review-stance-few-days = { $n ->
       [one] { $n } día hasta ahora; hacen falta cinco.
      *[other] { $n } días hasta ahora; hacen falta cinco.
    }
review-stance-no-own-variation = { $n } días hasta ahora; hacen falta ocho para distinguir un cambio de la variación diaria.
review-from-older-adults = publicado para personas mayores
review-from-given = según lo indicado
review-both-feet = Los dos pies
# $involved: "Izquierda" o "Derecha"; $other: "izquierda" o "derecha".
review-sides-percent = { $involved } { $a } s, { $other } { $b } s: { $percent } % de la { $other }.
review-sides-at-most = { $involved } { $a } s, { $other } { $b } s o más: como máximo { $percent } % de la { $other }.
review-sides-at-least = { $involved } { $a } s o más, { $other } { $b } s: como mínimo { $percent } % de la { $other }.
review-sides-at-maximum = Las dos piernas llegan al máximo: no se pueden comparar.
review-sides-not-computed = { $involved } { $a } s, { $other } { $b } s: menos de cinco segundos, no se comparan.
review-within-error = La diferencia está dentro del error de medida.
review-sway-last = { $n ->
       [one] Balanceo, último día medido ({ $n } intento): { $sway }.
      *[other] Balanceo, último día medido ({ $n } intentos): { $sway }.
    }
review-sway-changed = En todas las direcciones, { $by } cm/s² respecto al primer día: más de lo que varían estos intentos.
review-sway-unclear = Sin cambio claro del balanceo.
review-sway-few = Para comparar el balanceo hacen falta dos días con tres intentos medidos cada uno.
review-sway-not-certain = { $n ->
       [one] { $n } tiempo está por confirmar: el sensor detectó un posible apoyo del pie y el paciente no supo decirlo o no se le preguntó.
      *[other] { $n } tiempos están por confirmar: el sensor detectó un posible apoyo del pie y el paciente no supo decirlo o no se le preguntó.
    }
review-sway-not-measured = { $n ->
       [one] { $n } intento sin cifras de balanceo.
      *[other] { $n } intentos sin cifras de balanceo.
    }
review-visit-stance = { $leg } { $s } s
review-visit-stance-capped = { $leg } { $s } s o más

## Tiempos publicados para comparar

review-norm-best-of = { $n ->
       [one] un solo intento
      *[other] el mejor de { $n } intentos
    }
review-norm-mean-of = { $n ->
       [one] un solo intento
      *[other] media de { $n } intentos
    }
review-norm-median-of = { $n ->
       [one] un solo intento
      *[other] mediana de { $n } intentos
    }
# $how: "el mejor de 3 intentos"; $published: "una media de 27,5 s"; $people: vacío o ", 12 personas".
review-norm-comparison = El { $date }, { $how }: { $own } s. Para comparar: { $published } ({ $ages }{ $people }). Fuente: { $source }.
review-norm-mean = una media de { $s } s
review-norm-mean-sd = una media de { $s } s, desviación estándar { $sd } s
review-norm-median = una mediana de { $s } s
review-norm-row-line = { $published }: { $conditions }
review-norm-ages = de { $from } a { $to } años
review-norm-ages-from = { $from } años o más
review-norm-people = { $n ->
       [one] { $n } persona
      *[other] { $n } personas
    }
review-norm-cap = los intentos terminan a los { $s } s
review-norm-no-cap = intentos sin tiempo máximo
review-norm-bare = pies descalzos
review-norm-covered = calcetines o calzado
review-norm-crossed = brazos cruzados sobre el pecho
review-norm-on-hips = manos en las caderas
review-norm-free = brazos libres
review-norm-hand-in-use = una mano en el teléfono
review-norm-no-verdict = Medido de la misma manera. No indica ni una clasificación ni un riesgo.
review-norm-skew = Estos tiempos se reparten de forma asimétrica: más de la mitad de un grupo sano suele estar por debajo de la media.
review-norm-near-cap = La cifra publicada está cerca del tiempo máximo de los intentos, que recorta los tiempos más largos.
review-norm-own-at-cap = El tiempo del paciente terminó con el intento y podría ser mayor.
review-norm-none = No hay tiempos publicados con que comparar: { $why }.
review-norm-soft = no existen para superficies blandas
review-norm-other = son de estar de pie sobre una sola pierna
review-norm-unchecked = los que encajan aún no se han comprobado en su artículo original
review-norm-not-a-time = la cifra no es un tiempo
review-norm-no-row = no hay tabla
# $what: lista de los mensajes review-norm-age a review-norm-the-cap.
review-norm-not-known = no se sabe de estos intentos: { $what }
review-norm-not-stated = la fuente más parecida no lo indica: { $what }
review-norm-differs = la fuente más parecida difiere en: { $what }
review-norm-age = la edad
review-norm-eyes = los ojos
review-norm-surface = la superficie
review-norm-feet = los pies
review-norm-arms = los brazos
review-norm-statistic = cómo se obtiene la cifra
review-norm-when-attempt-ends = cuándo termina un intento
review-norms-source = { $n ->
       [one] { $n } fila. Fuente: { $source }
      *[other] { $n } filas. Fuente: { $source }
    }
review-norms-none = La clínica no tiene ninguna tabla propia.
review-norms-removed = Se ha quitado la tabla de la clínica.

## Qué sigue
# Después de "Progresar" o "Facilitar" viene uno de los mensajes review-to-...; mejor con dos puntos: "Facilitar: a 5 segundos por repetición".

review-progress = Progresar
review-keep = Mantener
review-ease = Facilitar
review-stop-and-talk = Suspender y hablar
review-talk-first = Hablarlo primero
review-ask-less = Hacer menos
review-reduce = Reducir
review-to-hold-seconds = { $n ->
       [one] a { $n } segundo por repetición
      *[other] a { $n } segundos por repetición
    }
review-to-holds = { $n ->
       [one] a { $n } repetición
      *[other] a { $n } repeticiones
    }
review-to-repetitions = { $n ->
       [one] a { $n } repetición por serie
      *[other] a { $n } repeticiones por serie
    }
review-to-sets = { $n ->
       [one] a { $n } serie
      *[other] a { $n } series
    }
review-to-stretch-seconds = { $n ->
       [one] a { $n } segundo por estiramiento
      *[other] a { $n } segundos por estiramiento
    }
review-to-stretches = { $n ->
       [one] a { $n } estiramiento
      *[other] a { $n } estiramientos
    }
review-to-movements = { $n ->
       [one] a { $n } movimiento
      *[other] a { $n } movimientos
    }
review-to-times = { $n ->
       [one] a { $n } vez
      *[other] a { $n } veces
    }
review-to-minutes = { $n ->
       [one] a { $n } minuto
      *[other] a { $n } minutos
    }
review-to-target = { $n ->
       [one] a un objetivo de { $n } segundo
      *[other] a un objetivo de { $n } segundos
    }
review-to-cap = a { $n } segundos cada uno
review-to-beats = a { $n } golpes por minuto
review-to-beat-seconds = a { $n } segundos cada vez
review-to-trials = { $n ->
       [one] a { $n } intento
      *[other] a { $n } intentos
    }
review-to-level = a «{ $rung }»
# $dose: por ejemplo, «3 repeticiones de 10 segundos».
review-to-level-with-dose = a «{ $rung }», { $dose }
# $dose: por ejemplo, «8 repeticiones»; $load: «con 2,5 kg» o «con una banda media».
review-to-load = a { $dose } { $load }
review-only-before-noon = solo las sesiones antes de mediodía
review-only-after-noon = solo las sesiones desde mediodía
review-fewer-sessions = { $n ->
       [one] { $n } sesión al día en vez de { $from }
      *[other] { $n } sesiones al día en vez de { $from }
    }
# $from (Number)
review-fewer-times = { $n ->
       [one] { $n } vez por semana en lugar de { $from }
      *[other] { $n } veces por semana en lugar de { $from }
    }
review-shorten-or-end = una dosis más corta, o terminarlo
# $trouble: uno de los mensajes anteriores sobre alarmas, en minúscula.
review-why-alarm = Hay una alarma sin resolver: { $trouble }.
review-why-nothing-done = { $n ->
       [one] No se hizo nada de { $n } sesión.
      *[other] No se hizo nada de { $n } sesiones.
    }
review-why-above-limit = El dolor al hacerlo fue { $score } el { $date }, por encima del límite de { $limit }.
review-why-unsettled = El dolor no se había calmado por la mañana: { $dates }.
review-why-often-unsettled = { $n ->
       [one] El dolor no se había calmado en { $n } mañana; las últimas veces: { $dates }.
      *[other] El dolor no se había calmado en { $n } mañanas; las últimas veces: { $dates }.
    }
review-why-target-missed = { $of ->
       [one] No se alcanzó el objetivo en { $missed } de { $of } sesión terminada.
      *[other] No se alcanzó el objetivo en { $missed } de las últimas { $of } sesiones terminadas.
    }
review-why-near-fall = Estuvo a punto de caerse al hacerlo el { $date }.
review-why-balance-falling = El tiempo de equilibrio baja.
review-why-little-done = { $n ->
       [one] { $done } de { $n } sesión hecha; lo hecho en parte cuenta como parte.
      *[other] { $done } de { $n } sesiones hechas; las hechas en parte cuentan como parte.
    }
review-why-given = { $n ->
       [one] Motivo indicado una vez: { $reason }.
      *[other] Motivo más frecuente, indicado { $n } veces: { $reason }.
    }
review-why-none-given = No se indicó ningún motivo.
review-why-target-met = Objetivo logrado en la última sesión del { $first } y del { $second }.
review-why-low-pain = { $n ->
       [one] El dolor al hacerlo fue { $most }, valorado una vez.
      *[other] El dolor al hacerlo fue { $most } como máximo, en { $n } valoraciones.
    }
review-why-pain-unknown = No se valoró el dolor al hacerlo.
review-why-pain-known-once = El dolor al hacerlo se valoró una sola vez.
review-why-changed-lately = Último cambio el { $date }: hacen falta al menos siete días antes del siguiente.
review-why-few-sessions = { $n ->
       [one] Sesiones en { $n } día desde el último cambio; hacen falta tres días.
      *[other] Sesiones en { $n } días desde el último cambio; hacen falta tres días.
    }
review-why-not-met = Para progresar, la última sesión de los dos últimos días debe lograr su objetivo.
review-why-too-painful-for-a-step = El dolor al hacerlo fue { $score }: aceptable, pero para progresar hace falta 3 o menos.
review-why-pain-worse = El dolor que debía aliviar ha empeorado.
review-why-flare-lately = El dolor fue claramente más alto hasta el { $date }, hace menos de siete días.
# $alarm: como «Mareo o vértigo».
review-why-alarm-lately = Ningún paso adelante durante una semana tras una alarma: { $alarm }, { $date }.
review-ask-pain = Pregunte: ¿cuánto duele al hacerlo?
review-ask-reason = Pregunte: ¿qué lo impide?
review-why-at-the-top = Se alcanzó el objetivo; no hay un nivel más difícil.
review-why-gate-closed = Se alcanzó el objetivo; no se permite una superficie más blanda hasta lograr 30 s con ojos abiertos en suelo firme en dos días.
review-why-soft-and-closed = Se alcanzó el objetivo; no se permite practicar sin supervisión en superficie blanda con ojos cerrados a partir de los 65 años o si no se conoce la edad.
review-why-closed-eyes-by-you = Se alcanzó el objetivo; cerrar los ojos solo puede activarlo usted.
# Heading of what was prescribed beside exercise, such as a warm pack.
review-care = Calor, frío, reposo: no cuenta como ejercicio
review-why-test = Una prueba se hace siempre igual.
review-why-not-stepped = No es un ejercicio que se aumente: manténgalo, pida menos o hable de ello.
review-why-by-calendar = Aumenta según el calendario, haya dolido o no.
review-why-goal-reached = Se alcanzó la meta: acuerde una nueva o dé la actividad por terminada.
review-why-as-needed = Se hace cuando hace falta: se mantiene o se habla de ello.
same-load = la misma carga
review-why-to-come = Aún no ha empezado.
review-why-over = Su último día ya pasó.
review-why-unknown = El catálogo de este programa no tiene el ejercicio o el nivel.

review-visit-stance-earlier = { $last } (antes: { $before })
