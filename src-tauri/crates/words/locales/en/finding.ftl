## Clinic: finding an exercise

region-elbow = Elbow and forearm
region-general = Whole body
# What an exercise is done for; in a list, and as a choice.
purpose-mobility = mobility
purpose-strength = strength
purpose-endurance = endurance
purpose-control = control
purpose-balance = balance
purpose-stretching = stretching
purpose-easing-pain = easing pain
purpose-calm = calm
purpose-activity = general activity
purpose-function = daily function
# How an exercise is timed.
kind-hold = holds
kind-balance = stance
kind-reps = repetitions
kind-stretch = stretch
kind-move = movement at one’s own pace
kind-go = minutes of activity
kind-breath = breathing
kind-care = warmth, cold, rest
kind-prompt = reminder without a dose
kind-limit = timed stand on both feet
kind-count = test by counting
kind-beat = movement on a beat
# Graded activity: an amount that the calendar raises, whatever the pain was.
kind-quota = graded activity in minutes
kind-quota-times = graded activity by number
posture-standing = standing
posture-sitting = sitting
posture-lying = lying
posture-kneeling = kneeling
# Parts of a line below an exercise's name: its region, its kind, what it needs. Also what a patient has, and lacks.
exercise-line = { $one }; { $other }
exercise-needs = needs { $things }
exercise-needs-nothing = needs nothing
# $n exercises were found.
exercises-found = { $n ->
        [one] { $n } exercise found
       *[other] { $n } exercises found
    }
exercises-none = No exercise fits the words and the filters.
# Clears both.
exercises-clear = Clear words and filters
exercises-more = Show more
# For screen readers, after an exercise was added with the keyboard.
exercise-added = { $name } is in the plan.
# Heading over the exercises that this clinic prescribes most.
exercises-most-used = Prescribed most here
exercises-all-figures = All figures
exercises-close-figures = Back to the plan
filters = Filters
# $n (Number)
filters-set = { $n } set
filter-any = any
filter-region = Part of the body
filter-purpose = Purpose
filter-kind = Way of doing it
filter-posture = Posture
filter-equipment = Needs no more than
filter-nothing = nothing
filter-flag = Leave out what is marked for
filter-suiting = Leave out what touches what is ticked for this patient

## Clinic: what to think of before an exercise is prescribed

# A folded section of the plan.
facts = To think of with this patient
facts-what = A line at each exercise says which of these it touches. No exercise is removed or refused. The ticks stay with this patient in this clinic's data, and are on no card.
facts-flags = Tick what the patient has
# In the heading of the folded section.
facts-without = not there at home: { $things }
facts-lacks = Tick what is not there at home
flag-blood-pressure = high blood pressure or heart condition
flag-pregnancy = pregnancy
flag-blood-thinners = medicine that thins the blood
flag-osteoporosis = osteoporosis
flag-joint-replacement = joint replacement
flag-unhealed-operation = operation that is not healed yet
flag-abdomen = hernia or operation of the abdomen
flag-hand-operation = operation of the hand or wrist
flag-dislocated-shoulder = shoulder that was dislocated
flag-cannot-get-up = cannot get up from the floor alone
# At an exercise: it has the flag, and the condition was ticked for the patient.
concern-flag = Think of: { $flag }
# At an exercise: it needs a thing that was ticked as missing.
concern-lacks = Not there at home: { $thing }
# What the usual dose is based on.
dose-basis-convention = Usual dose by convention
# $source: a publication.
dose-basis-source = Usual dose after figures read in { $source }
dose-basis-unknown = Basis of the usual dose not stated
