### Lo que se encuentra en una visita. Lo lee el clínico.

visit-nothing = Todavía no hay nada anotado.
visit-unreadable = { $n ->
       [one] { $n } entrada no se puede leer.
      *[other] { $n } entradas no se pueden leer.
    }
# $score (Number)
visit-pain = dolor { $score } de 10
# $place: «Zona lumbar, izquierda»; $line: las palabras del paciente; $pain: «dolor 6 de 10».
visit-complaint = { $place }: { $line }; { $pain }
# $score: «+2»; $word: «mejor».
visit-change = Cambio desde la última vez: { $score }, { $word }
visit-change-words = { $change }. «{ $words }»
change-much-better = muchísimo mejor
change-better = mejor
change-slightly-better = un poco mejor
change-none = sin cambio
change-slightly-worse = un poco peor
change-worse = peor
change-much-worse = muchísimo peor
visit-before = antes del tratamiento
visit-after = después del tratamiento
visit-pain-in = dolor, { $movement }
visit-grip = fuerza de la mano
visit-chair-rise = levantarse de la silla en 30 segundos
visit-stance = sobre una pierna
# $n (Number)
visit-of-ten = { $n } de 10
# $n (Number)
visit-degrees = { $n }°
# $n (Number)
visit-seconds = { $n } s
# $n (Number)
visit-kilograms = { $n } kg
# $n (Number)
visit-unit = { $n } { $unit }
visit-at-least = { $amount } o más
# Varios intentos. $n (Number)
visit-of-trials = mejor { $best }, mediana { $median } de { $n }
# $line: la medida y su resultado; $change: «+10°»; $since: «desde el 3 de marzo».
visit-measured-since = { $line }. { $change } { $since }
visit-since = desde el { $date }
visit-since-before = desde antes del tratamiento
visit-not-comparable = Diferencia desconocida, porque un tiempo no se midió hasta el final,
visit-within = { $change }, dentro del error de medida ({ $error })
visit-error-pain = 2 puntos; en dolor de cuello hasta 4
visit-error-stance = 24 s para un solo tiempo
visit-flags-and-falls = { $flags }. { $fell }
visit-no-flag = ninguna de las condiciones preguntadas
visit-fell = Una caída en los últimos doce meses.
visit-did-not-fall = Ninguna caída en los últimos doce meses.
visit-overridden = { $item }: no se siguió «{ $advice }». { $reason }
visit-corrected = { $line } (corregido)
visit-corrected-by = { $line } (corregido por { $who })
visit-noted-by = Anotado por { $who }.
visit-found-by = { $line } ({ $who })
# Abre la página de una visita.
visit-open = Visita
visit-of = Visita del { $date }
visit-today = Anotado hoy
visit-earlier = Visitas anteriores
visit-findings = { $n ->
       [one] { $n } hallazgo
      *[other] { $n } hallazgos
    }
visit-where = Dónde duele hoy
visit-region = Zona
visit-score = Dolor, de 0 a 10
visit-line = En palabras del paciente
# Un botón que guarda lo escrito.
visit-note-it = Anotar
visit-none-applies = Todo preguntado, nada se cumple
visit-since-last = Desde la última vez
visit-change-label = Cambio general
visit-change-said = Qué ha cambiado
visit-measured = Medido
visit-measured-what = Qué
visit-movement = Movimiento
visit-name-of-other = Nombre
visit-unit-label = Unidad
visit-measured-side = Qué lado
# Options of it: before, after, or once without regard to it.
visit-moment-label = Tratamiento
visit-moment-before = antes
visit-moment-after = después
visit-once = ninguno
visit-surface = De pie sobre
visit-eyes = Ojos
visit-results = Resultados, hasta tres separados por espacios
visit-kind-pain = dolor en un movimiento, de 0 a 10
visit-kind-motion = amplitud de un movimiento, grados
visit-kind-grip = fuerza de la mano, kg
visit-kind-chair-rise = levantarse de la silla en 30 s
visit-kind-stance = tiempo sobre una pierna, segundos
visit-kind-other = otra medida
visit-watch-start = Iniciar el cronómetro
visit-watch-stop = Parar
visit-screening-title = Cribado
visit-screening-ask = Pregunte por cada una: lo que no marque se anota como no presente. Las banderas rojas no están entre ellas.
visit-fell-tick = Se cayó en los últimos doce meses
visit-not-screened = todavía sin hacer
visit-still-same = Igual que el { $date }
visit-note-title = Nota
visit-note-label = Qué más importa
visit-not-followed = Una propuesta que no se sigue
visit-proposal = Propuesta
visit-reason = Su motivo
visit-correct = Corregir
visit-take-back = Retirar
visit-correcting = Lo próximo que anote sustituye a lo que eligió corregir.
# El plan en archivos PDF para imprimir.
on-paper = En papel
on-paper-what = La hoja tiene figuras, pasos, precauciones y el código. El diario tiene cuatro semanas para marcar, para pacientes sin dispositivo.
paper-size = Papel
paper-a4 = A4
paper-letter = Carta
save-hand-out = Guardar la hoja (PDF)
save-diary = Guardar el diario (PDF)
# La revisión como archivo para la historia clínica.
record-title = Para la historia clínica
record-what = El archivo lleva el código del paciente y no el nombre. No está cifrado: guárdelo donde se guardan las historias.
record-as = Guardar como
record-as-report = Informe (PDF, A4)
record-as-report-letter = Informe (PDF, carta)
record-as-csv = Tabla (CSV)
record-as-collection = HL7 FHIR R4, para entregar
record-as-transaction = HL7 FHIR R4, para un servidor
record-save = Guardar la revisión
# Qué pacientes se muestran; $n cumplen.
filter-patients = Qué pacientes
# $n (Number)
filter-count = { $what }: { $n }
filter-all = Abiertos
filter-alarm = Alarma
filter-visit-today = Visita hoy
filter-new-summary = Resumen nuevo
filter-silent = Sin noticias en dos semanas
# Junto a un paciente: llegó un resumen con días desde la última tarjeta.
new-summary = resumen nuevo
# The review for a server of medical records on this computer.
hand-over-title = Entregar a un servidor
hand-over-what = A un servidor de historias clínicas (HL7 FHIR R4) que funciona en este ordenador, y a ningún otro. Lo que ya tenga se sustituye.
hand-over-address = Dirección del servidor
hand-over-address-hint = Por ejemplo, http://127.0.0.1:8080/fhir
hand-over-token = Clave de acceso
hand-over-token-hint = Si el servidor la pide. Se guarda cifrada y no se vuelve a mostrar.
hand-over-set = Configurar el servidor
hand-over-do = Entregar esta revisión
hand-over-under-way = Se está entregando. Puede tardar un minuto; mientras tanto puede seguir.
hand-over-remove = No entregar nada más
