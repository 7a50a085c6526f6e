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
