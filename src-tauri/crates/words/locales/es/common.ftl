# Español de base: se lee con naturalidad en España y en América. "Usted" siempre. Lo que cambia por país está en ../es-ES y ../es-MX.
#
# Lo que el código prepara antes de llenar un mensaje:
# - $time: hora con su artículo, la que da time-with-article (phrases.ftl): "las 09:00", "la 01:00", "la 1:00 p. m.".
#   Los mensajes ponen delante la preposición: "a { $time }", "hasta { $time }". Excepciones, sin artículo: at-is-set,
#   reminder-title, day-at-time.
# - $times en at-times: lista de horas (list-...), cada una con su artículo: "las 09:00, las 13:00 y las 18:00".
# - $from y $to: cuando son horas, sin artículo: "09:00". Se usan en "de 9:00 a 17:00".
# - $date, y $from y $until cuando son días: "28 de octubre". $day: "lunes 2 de marzo" (weekday-date), en minúscula y sin artículo ni coma.
# - $s, $points y otras cifras: ya con la coma o el punto decimal del país.

## El programa

app-name = Carryover
yes = Sí
no = No
cancel = Cancelar
back = Atrás
continue-on = Continuar
close = Cerrar
save = Guardar
# La elección de idioma.
language-label = Idioma
language-as-system = El mismo que el sistema
# Primera pantalla, título.
choose-role = ¿Para qué va a usar Carryover?
role-patient = Hago ejercicios
role-patient-what = Añada la tarjeta de su clínica, reciba recordatorios, haga los ejercicios con guía y lleve un resumen cifrado a la próxima visita.
role-clinic = Prescribo ejercicios
role-clinic-what = Prepare planes, entréguelos en una tarjeta y consulte los resultados.
employer-can-read = En un equipo de la empresa, quien lo administra puede leer lo que usted anote aquí.
# Solo cuando la hora se fijó al iniciar el programa. $time: fecha y hora, "28 de octubre de 2026, 09:00", sin artículo.
time-set-to = Hora fijada: { $time }

## Lados, superficies, ojos

# Concuerdan con "pierna", "mano" y también con un lado de la molestia: "cuello, derecha".
left = izquierda
right = derecha
both-sides = ambos lados
# Primero el lado izquierdo, luego el derecho, y así sucesivamente.
sides-in-turn = izquierda y derecha por turnos
left-leg = pierna izquierda
right-leg = pierna derecha
eyes-open = ojos abiertos
eyes-closed = ojos cerrados
firm = suelo firme
folded-towel = toalla doblada
cushion = cojín
foam = espuma

## Dosis y tiempo

dose-hold = { $n ->
       [one] { $n } repetición de { $s } segundos
      *[other] { $n } repeticiones de { $s } segundos
    }
dose-reps = { $n ->
       [one] { $n } repetición
      *[other] { $n } repeticiones
    }
dose-reps-sets = { $sets ->
       [one] { $sets } serie
      *[other] { $sets } series
    } de { $n ->
       [one] { $n } repetición
      *[other] { $n } repeticiones
    }
dose-balance = { $n ->
       [one] { $n } intento de hasta { $s } segundos
      *[other] { $n } intentos de hasta { $s } segundos
    }
dose-stretch = { $n ->
       [one] { $n } estiramiento de { $s } segundos
      *[other] { $n } estiramientos de { $s } segundos
    }
dose-move = { $n ->
       [one] { $n } movimiento a su ritmo
      *[other] { $n } movimientos a su ritmo
    }
# Cuántas veces se hace algo de la vida diaria, como levantar una bolsa.
dose-times = { $n ->
       [one] { $n } vez
      *[other] { $n } veces
    }
# Actividad graduada: $amount es «10 minutos» o «3 veces», $step cuánto se añade.
# $step (Number), $goal (Number)
dose-grows = { $days ->
       [one] { $amount }, { $step } más cada día, hasta { $goal }
      *[other] { $amount }, { $step } más cada { $days } días, hasta { $goal }
    }
# $effort: cuánto debe costar, de 0 (nada) a 10 (lo máximo posible).
dose-go = { $n ->
       [one] { $n } minuto con esfuerzo { $effort } de 10
      *[other] { $n } minutos con esfuerzo { $effort } de 10
    }
dose-breath = { $n ->
       [one] { $n } minuto, { $inhale } s al inspirar y { $exhale } s al espirar
      *[other] { $n } minutos, { $inhale } s al inspirar y { $exhale } s al espirar
    }
dose-care = { $n ->
       [one] { $n } minuto
      *[other] { $n } minutos
    }
dose-prompt = una vez
dose-count = todos los que pueda en { $s } segundos
dose-beat = { $n ->
       [one] { $n } ronda de { $s } segundos a { $beats } golpes por minuto
      *[other] { $n } rondas de { $s } segundos a { $beats } golpes por minuto
    }
# $from y $to son horas sin artículo.
every-minutes = cada { $n } minutos, de { $from } a { $to }
every-hour = cada hora, de { $from } a { $to }
# $times: lista de horas con artículo, "la 01:00 y las 09:00".
at-times = a { $times }
workdays = de lunes a viernes
when-as-needed = cuando haga falta
every-days = { $n ->
        [2] un día sí y otro no
       *[other] cada { $n } días
    }
times-a-week = { $n ->
        [one] una vez a la semana, cualquier día
       *[other] { $n } veces a la semana, en los días que se prefiera
    }
every-day = todos los días
monday = lunes
tuesday = martes
wednesday = miércoles
thursday = jueves
friday = viernes
saturday = sábado
sunday = domingo
about-seconds = { $n ->
       [one] Alrededor de un segundo
      *[other] Unos { $n } segundos
    }
about-minutes = { $n ->
       [one] Alrededor de un minuto
      *[other] Unos { $n } minutos
    }

## Cómo fue una sesión
# Se dicen de una sesión, por eso en femenino.

mark-done = completa
mark-partly-alone = en parte
mark-partly = en parte: { $done } de { $of }
mark-skipped = omitida: { $reason }
mark-day-off = día libre: { $reason }
mark-paused = suspendida por seguridad
mark-not-done = no hecha
mark-due = pendiente ahora
mark-later = más tarde
mark-no-such-hour = hoy esta hora no existe por el cambio de hora

## Motivos

skip-reason-forgot = se me olvidó
skip-reason-no-time = no tuve tiempo o no pude dejar lo que hacía
skip-reason-no-place = no estaba en un lugar adecuado
skip-reason-pain = me dolía, o temía que me doliera
skip-reason-not-sure-how = no sé bien cómo se hace
skip-reason-felt-fine = me sentía bien y no me hacía falta
skip-reason-no-help = no notaba mejoría
skip-reason-unwell = tenía cansancio o malestar
skip-reason-no-support = no tenía cerca un apoyo o espacio
skip-reason-other = otro motivo
skip-reason-rather-not-say = prefiero no decirlo
day-off-ill = enfermedad
day-off-travelling = viaje
day-off-holiday = vacaciones
day-off-other = otro motivo

## Qué le pasa
# Respuestas a "¿Qué le pasa?"; también detrás de dos puntos: "Usted indicó: ...".

trouble-heart-or-breath = Dolor en el pecho, mucha falta de aire, desmayo o sensación de desmayo, o sudor frío
trouble-head-or-neck = De repente y fuera de lo habitual: dolor de cabeza o de cuello, visión doble, dificultad para hablar o tragar, cara dormida o caída, confusión, inestabilidad o desplome
trouble-nerve = Debilidad o pérdida de sensibilidad en un brazo o una pierna, nuevas o que van a más
trouble-bladder-or-bowel = Pérdida de sensibilidad en los genitales o alrededor del ano; un problema nuevo para orinar, para notar o controlar la orina o las heces, o en la función sexual; o dolor o debilidad en las dos piernas
trouble-limb = Una pantorrilla hinchada, caliente o dolorosa; un chasquido repentino; una mano o un pie pálidos, azulados o fríos; o una articulación hinchada y caliente
trouble-fell = Me caí
trouble-nearly-fell = Estuve a punto de caerme
trouble-dizzy = Mareo, o todo me da vueltas
trouble-too-much-pain = Demasiado dolor, o un dolor nuevo
trouble-pain-above-limit = Dolor por encima de su límite
trouble-unwell = Fiebre o malestar general
trouble-other = Otro problema

## Después de la visita

aftercare-soreness = Es normal tener una molestia leve durante uno o dos días.
aftercare-moving = Siga moviéndose como siempre, sin forzar.
aftercare-easy = No levante pesos ni haga deporte durante los dos días siguientes a la visita.
aftercare-warmth = Puede aplicarse calor si le alivia.
aftercare-contact = Si el dolor empeora o nota debilidad o pérdida de sensibilidad nuevas, llame a su clínica. Si es repentino o muy intenso, llame al número de emergencias de su zona.

## A data folder that is a copy, or was put back

data-moved-patient = Estos datos se han traído o copiado desde otro lugar. Lo que anote aquí a partir de ahora cuenta por separado; lo que está en los dos lugares cuenta una sola vez.
data-put-back-patient = Estos datos han vuelto a un estado anterior. Lo que se anotó después falta aquí. Lo que su clínica ya ha recibido sigue en la clínica.
data-moved-clinic = Estos datos se han traído o copiado desde otro lugar. Use solo uno de los dos: los pacientes, tarjetas y resúmenes que añada en uno faltarán en el otro.
data-put-back-clinic = Estos datos han vuelto a un estado anterior. Faltan los pacientes, tarjetas y resúmenes que se añadieron después.

## Backups

backup-title = Copia de seguridad
backup-what-patient = Una copia de seguridad es un archivo con todo lo que hay guardado aquí. Cualquiera que tenga el archivo puede leerlo.
backup-what-clinic = Una copia de seguridad es un archivo con todo lo que hay guardado aquí. Está cifrada y se abre con la frase de contraseña del día en que se hizo.
backup-last = Última copia automática: { $date }, { $place }.
backup-none = Todavía no hay ninguna copia automática. Se hace una cada día que usa el programa.
backup-not-today = No se ha podido hacer la copia automática de hoy.
backup-save = Guardar una copia ahora
# A button that unfolds the next.
backup-restore = Recuperar una copia de seguridad
backup-restore-what = La copia sustituye todo lo que hay guardado aquí. Lo que hay ahora se conserva en la carpeta de datos con otro nombre.
backup-restore-new = En un dispositivo nuevo, una copia de seguridad devuelve todo lo que estaba guardado en el anterior.
# A button.
backup-of-day = Copia automática del { $date }
backup-choose = Elegir un archivo de copia
backup-restore-ask = ¿Sustituir todo lo que hay guardado aquí por esta copia: { $name }?
backup-restore-sure = Recuperar esta copia
backup-restore-keep = Dejarlo todo como está
go-on = Continuar
# Where a damaged data folder is reported.
salvage-title = Salvar lo que se pueda leer
salvage-what = Se guarda todo lo que aún se puede leer y se indica lo que se ha perdido. El archivo dañado se conserva.
backup-restored = Se ha recuperado la copia de seguridad.
backup-restored-over = Se ha recuperado la copia de seguridad. Los datos que había antes se conservan como { $before }.
