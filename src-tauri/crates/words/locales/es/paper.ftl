## Papel: lo que una clínica imprime para un paciente

## La hoja del plan

paper-title = Sus ejercicios
paper-title-for = Sus ejercicios: { $who }
paper-for = Para { $who }
paper-phone = Teléfono: { $phone }
paper-issued = Entregada el { $date }
paper-next-visit = Próxima visita: { $date }
paper-start = Inicio
paper-end = Final
paper-figure = Dibujo: { $name }
paper-figure-start = Dibujo: { $name }, inicio del movimiento
paper-figure-end = Dibujo: { $name }, final del movimiento
paper-rest = { $n ->
        [one] Descanse { $n } segundo entre una y otra.
       *[other] Descanse { $n } segundos entre una y otra.
    }
paper-tempo = Cada repetición: { $beats }.
paper-beat = { $what } { $n } s
paper-note = De su profesional: { $note }
paper-urgent = Pare de inmediato y pida ayuda
paper-urgent-what = Si le ocurre algo de esto, durante los ejercicios o después, haga lo que se indica debajo.
paper-no-diagnosis = Esta hoja no da diagnósticos. Lo que le digan su clínica o los servicios de emergencias está por encima.
paper-code = Este plan en su dispositivo
paper-code-what = { $n ->
        [one] Lea este código con Carryover. Le avisará, le guiará en cada ejercicio y guardará su registro.
       *[other] Lea los { $n } códigos con Carryover, en cualquier orden. Le avisará, le guiará en cada ejercicio y guardará su registro.
    }
paper-code-drawing = Código QR { $n } de { $of } con este plan

## El diario, para quien no tiene dispositivo

diary-title = Diario de ejercicios
diary-title-for = Diario de ejercicios: { $who }
diary-what = Marque una casilla cada vez que haya hecho un ejercicio. Las casillas de un día siguen el orden de sus horas.
diary-pain-what = Cada mañana, anote su dolor de 0 (ningún dolor) a 10 (el peor que pueda imaginar).
diary-bring = Traiga este diario a su próxima visita.
diary-amount-what = El número junto a las casillas de un día es lo previsto ese día para cada casilla.
diary-amount-minutes = en minutos
diary-amount-times = número de veces
# $n (Number)
diary-minutes = { $n } min
diary-day = Día
diary-notes = Notas
diary-pain = Dolor esta mañana, de 0 a 10: { $name }
diary-weeks = Semanas { $from } y { $until }
diary-of = de { $n }
diary-boxes = { $n ->
        [one] { $n } casilla para marcar
       *[other] { $n } casillas para marcar
    }
diary-not-planned = no previsto

## El informe sobre un paciente, para un colega o su médico

report-title = Informe sobre el ejercicio en casa
report-title-for = Informe sobre el ejercicio en casa: { $who }
report-visits-title = Informe sobre las visitas
report-visits-title-for = Informe sobre las visitas: { $who }
report-no-plan = No se ha prescrito ningún plan de ejercicios en casa.
report-about = Paciente: { $who }
report-identity = Nombre, fecha de nacimiento
report-plan = Plan { $n }, el primero del { $date }.
report-in-short = En resumen
report-plan-and-done = El plan y lo que se hizo
report-prescribed = Ejercicio y dosis, desde cuándo
report-done = Lo que se hizo, día a día
report-since = Desde el { $date }: { $what }
report-not-prescribed = fuera del plan
report-from-to = Del { $from } al { $to }
report-days = Gráfico de los días del { $from } al { $to }: completo en { $full }, en parte en { $part }, nada en { $none }.
report-no-record = sin registro
report-pain = Dolor y actividades, de 0 a 10
report-measured-at-home = Medido en casa
report-times = { $what } ({ $n })
report-found-on = Hallazgos de la visita del { $date }
report-more-found = { $n ->
       [one] Hay { $n } hallazgo más en los datos de la clínica.
      *[other] Hay { $n } hallazgos más en los datos de la clínica.
    }
report-decided-on = Decidido el { $date }, y en el plan desde entonces
report-proposed = Propuesto por el programa, y decidido
report-decided = El profesional no siguió «{ $advice }»: { $reason }
report-cautions = Precauciones
report-with-helper = Solo con alguien al lado del paciente: { $list }.
report-pain-limit = Se indicó al paciente que parara si el dolor pasa de { $most } sobre 10.
report-pain-limits = Se indicó al paciente que parara si el dolor pasa de { $least } a { $most } sobre 10, según el ejercicio.
report-rests-on = Lo que no procede de una visita lo registró el paciente en casa, sin supervisión. Las propuestas siguen reglas fijas y no son un diagnóstico; decide el profesional, según las normas del lugar donde ejerce.
report-rests-on-visits = Lo que aquí consta se anotó en las visitas. Decide el profesional, según las normas del lugar donde ejerce.
report-signature = Nombre, firma, fecha

## La carta al final de un tratamiento

letter-title = Carta de fin de tratamiento
letter-title-for = Carta de fin de tratamiento: { $who }
letter-course = Evolución
letter-from-to = { $n ->
        [one] Un plan de ejercicios en casa, del { $from } al { $to }.
       *[other] { $n } planes de ejercicios en casa, del { $from } al { $to }.
    }
letter-complaints = Por: { $list }.
letter-visits = { $n ->
        [one] { $n } visita con hallazgos.
       *[other] { $n } visitas con hallazgos.
    }
letter-measures = Medido en la primera visita y en la última
letter-measure = Medida
letter-first = Primera
letter-last = Última
letter-difference = Diferencia
letter-not-comparable = no se conoce, un tiempo no se midió hasta el final
letter-advised = Se indicó al paciente: { $what }
letter-goes-on = El paciente sigue con
