## What is written for medical records, for people who read them there

record-plan-title = Home exercise plan
# $dose and $due begin with a capital letter: "3 holds of 10 seconds", "Monday to Friday, at 09:00".
record-instruction = { $dose }. { $due }.
# $measure: one of the texts below. $name: an exercise, a complaint or an activity.
record-of = { $measure }: { $name }
record-adherence = Sessions done in full of those planned
record-longest-gap = Longest stretch of planned days without a session
record-as-needed = Times done as needed
record-one-leg = Single-leg stance at home, longest time of the day
record-stance = Balance position at home, longest time of the day
record-morning-pain = Pain in the morning, 0 to 10
record-during-pain = Highest pain while exercising, 0 to 10
record-repetitions = Repetitions in a set time
record-activity = Activity, 0 (cannot do) to 10 (as before)
record-alarm = Warning sign at home
record-reasons = Reasons given for skipping sessions
# What was found at a visit; before and after treatment, trials and the patient's words stand beside it.
record-visit-pain = Pain at a visit, 0 to 10
record-visit-change = Change since the last visit, -5 (very much worse) to 5 (very much better)
record-visit-movement-pain = Pain in a movement at a visit, 0 to 10
record-visit-motion = Range of a movement at a visit
record-visit-grip = Grip strength at a visit, best of the trials
record-visit-chair-rise = Risings from a chair in 30 s at a visit, best of the trials
record-visit-stance = Single-leg stance at a visit, best of the trials
record-visit-other = Another measure at a visit
record-visit-screening = Screening at a visit
record-visit-note = Note of the clinician at a visit
record-visit-overridden = Proposal not followed
