## Partes con las que el código forma textos más largos: fechas, horas, números, listas, nombres unidos.
## El código no une palabras por su cuenta; usa estas. Pone en mayúscula la primera letra donde empieza una línea.

## Datos del país, para el código que da formato a números y horas (../es-MX los cambia)

# El nombre del idioma, tal como lo muestra la elección de idioma.
language-name = Español

# 24 o 12: horas del reloj.
locale-clock = 24
# El signo decimal.
locale-decimal-mark = ,
# Delante de un número menor que cero.
locale-minus-sign = -

## Meses

month-january = enero
month-february = febrero
month-march = marzo
month-april = abril
month-may = mayo
month-june = junio
month-july = julio
month-august = agosto
month-september = septiembre
month-october = octubre
month-november = noviembre
month-december = diciembre

# Cortos, para el eje de un gráfico y tablas estrechas.
month-short-january = ene
month-short-february = feb
month-short-march = mar
month-short-april = abr
month-short-may = may
month-short-june = jun
month-short-july = jul
month-short-august = ago
month-short-september = sep
month-short-october = oct
month-short-november = nov
month-short-december = dic

## Días de la semana. Los nombres enteros están en common.ftl (monday ...)

monday-short = lun
tuesday-short = mar
wednesday-short = mié
thursday-short = jue
friday-short = vie
saturday-short = sáb
sunday-short = dom

## Fechas. $month: uno de month-...; $year: cifras como texto (sin separador de miles); $day: día del mes, número.

# 28 de octubre.
date-day-month = { $day } de { $month }
# 28 de octubre de 2026.
date-day-month-year = { $day } de { $month } de { $year }
# $month: uno de month-short-...
date-day-month-short = { $day } { $month }
# Solo, lleva coma: lunes, 2 de marzo. Dentro de una frase, no: "el lunes 2 de marzo a las 09:00"; el artículo está en la frase.
date-weekday = { $weekday }, { $date }
# Dentro de una frase.
date-weekday-inline = { $weekday } { $date }

## Horas. $hour y $minute son cifras como texto; $hour con dos cifras en el reloj de 24 horas, con 1 o 2 en el de 12.

time-24 = { $hour }:{ $minute }
time-am = { $hour }:{ $minute } a. m.
time-pm = { $hour }:{ $minute } p. m.
# Hora con artículo, para los argumentos $time y $times de otros mensajes: "la 01:00", "las 09:00", "la 1:00 p. m.".
# $hour: la hora tal como se muestra, como número (en el reloj de 12 horas, las 13:00 son 1); $time: uno de time-24, time-am, time-pm.
time-with-article = { $hour ->
        [one] la { $time }
       *[other] las { $time }
    }
# Un día y una hora en una línea: "miércoles, 14:02". Hora sin artículo.
day-at-time = { $day }, { $time }

## Listas. "y" y "o" valen: ninguna lista del programa sigue con un sonido "i" u "o" (ni con los números 8 u 11 tras "o").

# Dos cosas.
list-and-two = { $first } y { $second }
# Tres o más: $before es todo menos lo último, unido con list-comma.
list-and-last = { $before } y { $last }
list-comma = { $before }, { $next }
list-semicolon = { $before }; { $next }

## Duraciones dentro de una frase (about-seconds y about-minutes, en common.ftl, empiezan una línea)

about-seconds-inline = { $n ->
        [one] alrededor de un segundo
       *[other] unos { $n } segundos
    }
about-minutes-inline = { $n ->
        [one] alrededor de un minuto
       *[other] unos { $n } minutos
    }

## Nombres con lo que les corresponde

# Algo con nombre y un texto sobre ello: "Sentadilla isométrica en la pared: Elija un nivel."
named-text = { $name }: { $text }
# Un ejercicio, una molestia o una parte de una sesión, y después izquierda, derecha o ambos lados.
name-with-side = { $name }, { $side }
# Dosis con su lado: 3 repeticiones de 10 segundos, ambos lados.
dose-with-side = { $dose }, { $side }
# Días y horas: de lunes a viernes, cada hora, de 09:00 a 17:00.
days-and-times = { $days }, { $times }
load-weight = con { $kg } kg
band-light = con una banda suave
band-medium = con una banda media
band-strong = con una banda fuerte
band-extra-strong = con una banda extrafuerte
aimed-effort = esfuerzo de { $n } sobre 10, más o menos
helper-beside-you = con alguien a su lado
helper-beside-patient = con alguien al lado del paciente
phase-from = desde el { $first }
phase-until = hasta el { $last }
phase-from-to = del { $first } al { $last }
phase-ended = Terminó el { $last }
times-in-phase = { $times }, { $phase }
# Superficie y ojos: suelo firme, ojos abiertos.
surface-and-eyes = { $surface }, { $eyes }
# Pierna, superficie, ojos.
leg-surface-eyes = { $leg }, { $surface }, { $eyes }
# Una pierna y segundos: pierna izquierda, 12,3 s.
leg-and-seconds = { $leg }, { $seconds }
# Código de un paciente, con el nombre entre paréntesis.
code-with-name = { $code } ({ $name })
# Una línea de la lista de pacientes: la cita; el último resumen.
visit-and-summary = { $visit }; { $summary }
# En la tarjeta emitida: versión 3 del plan; cita el 28 de octubre.
revision-and-review = { $revision }; { $review }
# Un ejercicio que ya no está en el plan; $note es review-no-longer.
name-with-note = { $name } ({ $note })
# Dos frases enteras, una tras otra.
as-sentence = { $text }.
two-sentences = { $first } { $second }
# Un archivo que no se pudo recibir: su nombre, qué ocurre, qué hacer.
receipt-refused = { $file }: { $fault } { $advice }

## Revisión

# Tres partes: 28 días desde el 28 de octubre; 3 ejercicios; cita hoy.
review-head-line = { $since }; { $exercises }; { $visit }
# Un juicio y en qué se basa: "Mejor, de 6 a 3 ..."
review-finding = { $word }, { $figures }
# Lo mismo de una pierna. $word es uno de review-...-inline.
review-finding-of-leg = { $leg }: { $word }, { $figures }
review-rising-inline = sube
review-falling-inline = baja
review-no-clear-change-inline = sin cambio claro
review-at-maximum-inline = en el máximo
review-not-enough-data-inline = datos insuficientes
# Cuándo ocurrió la alarma y frases enteras sobre lo que está suspendido desde entonces.
review-alarm-and-circumstances = { $when }: { $circumstances }
review-alarm-figures = { $when }. { $since }
review-alarm-figures-mistaken = { $when }. { $since } { $mistaken }
# Una serie de equilibrio: ejercicio: superficie, ojos; dónde estaba el teléfono; objetivo.
review-stance-conditions = { $exercise }: { $surface }, { $eyes }; { $phone }; { $aim }
# Tiempos en una visita: fecha, superficie, ojos: una lista de review-visit-stance.
review-visit-stance-line = { $date }, { $surface }, { $eyes }: { $times }.
# Una valoración y su fecha: 6 (28 de octubre).
review-rating-on-date = { $score } ({ $date })
# Una propuesta y su cambio: "Progresar: a 15 segundos por repetición".
review-advice-and-step = { $advice }: { $step }
review-advice-and-less = { $advice }: { $less }

## Cifras del balanceo, con espacio de no separación entre número y unidad.

# $what: sway-side o sway-round.
sway-figure = { $what } { $value } cm/s²
# $what: sway-path.
sway-path-figure = { $what } { $value } cm/s³

## Terminal

# Un ejercicio del catálogo. $levels: identificadores unidos con comas.
catalogue-line = { $id } (edición { $edition }): { $name }. Niveles: { $levels }
# Un ejercicio de un plan que se acaba de añadir.
plan-line = { $number }. { $name }: { $dose }; { $schedule }
# $slot: número del ejercicio en el plan. $due, $opens, $closes: instantes como 2026-11-25T09:00:00+01:00.
slot-line = { $slot } prevista { $due }, abre { $opens }, cierra { $closes }
# Se pide en la terminal, sin mostrar lo que se escribe; sigue un espacio.
passphrase-prompt = Contraseña:
