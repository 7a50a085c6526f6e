## Lo que se escribe para historias clínicas, para quien las lee allí

record-plan-title = Plan de ejercicios en casa
# $dose y $due empiezan con mayúscula.
record-instruction = { $dose }. { $due }.
# $measure: uno de los textos de abajo. $name: un ejercicio, una molestia o una actividad.
record-of = { $measure }: { $name }
record-adherence = Sesiones hechas enteras de las previstas
record-longest-gap = Racha más larga de días previstos sin sesión
record-as-needed = Veces hecho cuando hizo falta
record-one-leg = Apoyo sobre una pierna en casa, mejor tiempo del día
record-stance = Posición de equilibrio en casa, mejor tiempo del día
record-morning-pain = Dolor por la mañana, de 0 a 10
record-during-pain = Dolor más alto al hacer el ejercicio, de 0 a 10
record-repetitions = Repeticiones en un tiempo fijado
record-activity = Actividad, de 0 (no puede) a 10 (como antes)
record-alarm = Señal de alarma en casa
record-reasons = Motivos dados para saltarse sesiones
# What was found at a visit; before and after treatment, trials and the patient's words stand beside it.
record-visit-pain = Dolor en una visita, de 0 a 10
record-visit-change = Cambio desde la última visita, de -5 (muchísimo peor) a 5 (muchísimo mejor)
record-visit-movement-pain = Dolor en un movimiento durante una visita, de 0 a 10
record-visit-motion = Amplitud de un movimiento en una visita
record-visit-grip = Fuerza de agarre en una visita, el mejor intento
record-visit-chair-rise = Veces que se levantó de una silla en 30 s en una visita, el mejor intento
record-visit-stance = Apoyo en una pierna en una visita, el mejor intento
record-visit-other = Otra medida en una visita
record-visit-screening = Cribado en una visita
record-visit-note = Nota del profesional en una visita
record-visit-overridden = Propuesta no seguida
