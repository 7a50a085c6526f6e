## Clinic: finding an exercise

region-elbow = Codo y antebrazo
region-general = Todo el cuerpo
# What an exercise is done for; in a list, and as a choice.
purpose-mobility = movilidad
purpose-strength = fuerza
purpose-endurance = resistencia
purpose-control = control
purpose-balance = equilibrio
purpose-stretching = estiramiento
purpose-easing-pain = alivio del dolor
purpose-calm = calma
purpose-activity = actividad general
purpose-function = función diaria
# How an exercise is timed.
kind-hold = posición mantenida
kind-balance = equilibrio de pie
kind-reps = repeticiones
kind-stretch = estiramiento
kind-move = movimiento al propio ritmo
kind-go = minutos de actividad
kind-breath = respiración
kind-care = calor, frío, descanso
kind-prompt = recordatorio sin dosis
kind-limit = tiempo de pie sobre los dos pies
kind-count = prueba por conteo
kind-beat = movimiento con compás
# Actividad graduada: una cantidad que aumenta según el calendario, sin depender del dolor.
kind-quota = actividad graduada en minutos
kind-quota-times = actividad graduada por número de veces
posture-standing = de pie
posture-sitting = sentado
posture-lying = tumbado
posture-kneeling = de rodillas
# Parts of a line below an exercise's name: its region, its kind, what it needs. Also what a patient has, and lacks.
exercise-line = { $one }; { $other }
exercise-needs = requiere { $things }
exercise-needs-nothing = no requiere nada
# $n exercises were found.
exercises-found = { $n ->
        [one] { $n } ejercicio encontrado
       *[other] { $n } ejercicios encontrados
    }
exercises-none = Ningún ejercicio coincide con las palabras y los filtros.
# Clears both.
exercises-clear = Borrar palabras y filtros
exercises-more = Mostrar más
# For screen readers, after an exercise was added with the keyboard.
exercise-added = { $name } está en el plan.
# Heading over the exercises that this clinic prescribes most.
exercises-most-used = Los más prescritos aquí
exercises-all-figures = Todas las figuras
exercises-close-figures = Volver al plan
filters = Filtros
# $n (Number)
filters-set = { $n } en uso
filter-any = cualquiera
filter-region = Parte del cuerpo
filter-purpose = Finalidad
filter-kind = Forma de hacerlo
filter-posture = Postura
filter-equipment = No requiere más que
filter-nothing = nada
filter-flag = Sin los marcados para
filter-suiting = Omitir lo que afecta a lo marcado para este paciente

## Clinic: what to think of before an exercise is prescribed

# A folded section of the plan.
facts = A tener en cuenta con este paciente
facts-what = Una línea en cada ejercicio indica cuáles le afectan. No se quita ni se rechaza ningún ejercicio. Lo marcado queda con este paciente en los datos de esta clínica y no figura en ninguna tarjeta.
facts-flags = Marque lo que tiene el paciente
# In the heading of the folded section.
facts-without = no hay en casa: { $things }
facts-lacks = Marque lo que no hay en casa
flag-blood-pressure = tensión alta o una enfermedad del corazón
flag-pregnancy = embarazo
flag-blood-thinners = medicamento anticoagulante
flag-osteoporosis = osteoporosis
flag-joint-replacement = prótesis articular
flag-unhealed-operation = operación que aún no ha curado
flag-abdomen = hernia u operación del abdomen
flag-hand-operation = operación de la mano o la muñeca
flag-dislocated-shoulder = luxación de hombro previa
flag-cannot-get-up = no puede levantarse del suelo sin ayuda
# At an exercise: it has the flag, and the condition was ticked for the patient.
concern-flag = A tener en cuenta: { $flag }
# At an exercise: it needs a thing that was ticked as missing.
concern-lacks = No hay en casa: { $thing }
# What the usual dose is based on.
dose-basis-convention = Dosis habitual por convención
# $source: a publication.
dose-basis-source = Dosis habitual según cifras leídas en { $source }
dose-basis-unknown = No consta en qué se basa la dosis habitual
