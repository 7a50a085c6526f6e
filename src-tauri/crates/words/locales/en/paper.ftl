## Paper: what a clinic prints for a patient

## The hand-out of a plan

paper-title = Your exercises
# The file's title. $who: the patient's code or name.
paper-title-for = Your exercises: { $who }
paper-for = For { $who }
paper-phone = Telephone: { $phone }
paper-issued = Issued on { $date }
paper-next-visit = Next visit: { $date }
# Below two drawings of an exercise.
paper-start = Start
paper-end = End
# For screen readers, in the place of a drawing. $name: an exercise.
paper-figure = Drawing: { $name }
paper-figure-start = Drawing: { $name }, start of the movement
paper-figure-end = Drawing: { $name }, end of the movement
# Between the holds, sets or rounds of an exercise.
paper-rest = { $n ->
        [one] Rest { $n } second in between.
       *[other] Rest { $n } seconds in between.
    }
# $beats: a list such as Up 2 s, Hold 1 s, Down 3 s.
paper-tempo = Each repetition: { $beats }.
# $what: one of beat-….
# $n (Number)
paper-beat = { $what } { $n } s
# What the clinician wrote beside an exercise.
paper-note = From your clinician: { $note }
# Safety: above a list of signs, each with what to do.
paper-urgent = Stop at once and get help
paper-urgent-what = If one of these happens, during the exercises or later, do what is written below it.
paper-no-diagnosis = This sheet does not diagnose. What your clinic or the emergency services tell you comes first.
paper-code = This plan on your phone or computer
# $n (Number)
paper-code-what = { $n ->
        [one] Let Carryover read this code. It then reminds you, guides you through each exercise and keeps your record.
       *[other] Let Carryover read all { $n } codes, in any order. It then reminds you, guides you through each exercise and keeps your record.
    }
# For screen readers, in the place of a code.
# $n (Number), $of (Number)
paper-code-drawing = QR code { $n } of { $of } with this plan

## The diary, for whoever has no device

diary-title = Exercise diary
diary-title-for = Exercise diary: { $who }
diary-what = Tick a box each time you have done an exercise. The boxes of a day are in the order of its times.
diary-pain-what = Each morning, write down your pain from 0 (no pain) to 10 (the worst you can think of).
diary-bring = Bring this diary to your next visit.
# Where the calendar raises the amount of an exercise from day to day.
diary-amount-what = A number beside the boxes of a day is what is planned that day for each box.
# At the head of such a column, after the exercise's name: what its numbers are.
diary-amount-minutes = in minutes
diary-amount-times = number of times
# Such a number where it is one of minutes.
# $n (Number)
diary-minutes = { $n } min
# Headings of columns.
diary-day = Day
diary-notes = Notes
# $name: a complaint.
diary-pain = Pain this morning, 0 to 10: { $name }
# Above the table of a page.
# $from (Number), $until (Number)
diary-weeks = Weeks { $from } and { $until }
# Beside an empty line: so many times a day.
# $n (Number)
diary-of = of { $n }
# For screen readers, in the place of boxes to tick.
diary-boxes = { $n ->
        [one] { $n } box to tick
       *[other] { $n } boxes to tick
    }
# For screen readers, instead of a dash in a cell of a day on which an exercise is not planned.
diary-not-planned = not planned

## The report on a patient, for a colleague or the patient's doctor

report-title = Report on home exercise
# The file's title. $who: the patient's code.
report-title-for = Report on home exercise: { $who }
# Of somebody who was treated and has no plan, and the file's title. $who: the patient's code.
report-visits-title = Report on visits
report-visits-title-for = Report on visits: { $who }
report-no-plan = No home exercise plan has been prescribed.
report-about = Patient: { $who }
# Before a line to write on, beside the code.
report-identity = Name, date of birth
# $n (Number)
report-plan = Plan { $n }, the first one of { $date }.
# Each answer of the review in a word and a figure.
report-in-short = In short
report-plan-and-done = Plan, and what was done
# Headings of the table's columns.
report-prescribed = Exercise and dose, since when
report-done = What was done, day by day
# $what: a dose and its times.
report-since = From { $date }: { $what }
report-not-prescribed = not in the plan
report-from-to = { $from } to { $to }
# For screen readers, in the place of a chart of days.
# $full (Number), $part (Number), $none (Number)
report-days = Chart of the days from { $from } to { $to }: done in full on { $full }, in part on { $part }, not at all on { $none }.
report-no-record = no record
report-pain = Pain and activities, 0 to 10
report-measured-at-home = Measured at home
# $what: a reason for skipping a session.
# $n (Number)
report-times = { $what } ({ $n })
report-found-on = Found at the visit on { $date }
# After the first findings of a visit.
report-more-found = { $n ->
        [one] { $n } more finding is in the clinic’s data.
       *[other] { $n } more findings are in the clinic’s data.
    }
# What changed with the plan that was issued on that day.
report-decided-on = Decided on { $date }, and in the plan since
report-proposed = Proposed by the program, and decided
# $advice: "Progress"; $reason: what the clinician wrote.
report-decided = The clinician did not follow “{ $advice }”: { $reason }
report-cautions = Cautions
report-with-helper = Only with somebody beside the patient: { $list }.
# $most (Number)
report-pain-limit = The patient was told to stop when pain is above { $most } of 10.
# $least (Number), $most (Number)
report-pain-limits = The patient was told to stop when pain is above { $least } to { $most } of 10, depending on the exercise.
report-rests-on = What is not from a visit was recorded by the patient at home, without supervision. Proposals follow fixed rules and are no diagnosis; decisions are the clinician’s, under the rules that hold where they practise.
# In place of the sentence before, where there is no plan.
report-rests-on-visits = What stands here was noted at visits. Decisions are the clinician’s, under the rules that hold where they practise.
report-signature = Name, signature, date

## The letter at the end of a treatment

letter-title = Letter at the end of treatment
letter-title-for = Letter at the end of treatment: { $who }
letter-course = Course
letter-from-to = { $n ->
        [one] One home exercise plan, from { $from } to { $to }.
       *[other] { $n } home exercise plans, from { $from } to { $to }.
    }
letter-complaints = For: { $list }.
letter-visits = { $n ->
        [one] { $n } visit with findings.
       *[other] { $n } visits with findings.
    }
letter-measures = Measured at the first and at the last visit
letter-measure = Measure
letter-first = First
letter-last = Last
letter-difference = Difference
letter-not-comparable = not known, a time was not measured to its end
# $what: what the program says to do when something is wrong.
letter-advised = The patient was told: { $what }
letter-goes-on = The patient goes on with
