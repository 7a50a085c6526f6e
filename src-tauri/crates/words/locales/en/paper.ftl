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
