### What is found at a visit. Read by the clinician.

visit-nothing = Nothing is noted yet.
visit-unreadable = { $n ->
        [one] { $n } entry cannot be read.
       *[other] { $n } entries cannot be read.
    }
# $score (Number)
visit-pain = pain { $score } of 10
# $place: "Lower back, left"; $line: the patient's words; $pain: "pain 6 of 10".
visit-complaint = { $place }: { $line }; { $pain }
# $score: "+2"; $word: "better".
visit-change = Change since last time: { $score }, { $word }
visit-change-words = { $change }. “{ $words }”
change-much-better = very much better
change-better = better
change-slightly-better = slightly better
change-none = no change
change-slightly-worse = slightly worse
change-worse = worse
change-much-worse = very much worse
visit-before = before treatment
visit-after = after treatment
visit-pain-in = pain, { $movement }
visit-grip = grip strength
visit-chair-rise = risings from a chair in 30 seconds
visit-stance = on one leg
# $n (Number)
visit-of-ten = { $n } of 10
# $n (Number)
visit-degrees = { $n }°
# $n (Number)
visit-seconds = { $n } s
# $n (Number)
visit-kilograms = { $n } kg
# $n (Number)
visit-unit = { $n } { $unit }
visit-at-least = { $amount } or more
# Several trials. $n (Number)
visit-of-trials = best { $best }, median { $median } of { $n }
# $line: the measure and its result; $change: "+10°"; $since: "since 3 March".
visit-measured-since = { $line }. { $change } { $since }
visit-since = since { $date }
visit-since-before = since before treatment
visit-not-comparable = Difference not known, because a time was not measured to its end,
visit-within = { $change }, within measurement error ({ $error })
visit-error-pain = 2 points; in neck pain up to 4
visit-error-stance = 24 s for a single time
visit-flags-and-falls = { $flags }. { $fell }
visit-no-flag = none of the conditions asked about
visit-fell = A fall in the last twelve months.
visit-did-not-fall = No fall in the last twelve months.
visit-overridden = { $item }: “{ $advice }” not followed. { $reason }
visit-corrected = { $line } (corrected)
visit-corrected-by = { $line } (corrected by { $who })
# $who: names of clinicians.
visit-noted-by = Noted by { $who }.
# $who: the name of a clinician, where several noted something at one visit.
visit-found-by = { $line } ({ $who })
# Opens the page of a visit.
visit-open = Visit
visit-of = Visit on { $date }
visit-today = Noted today
visit-earlier = Earlier visits
visit-findings = { $n ->
        [one] { $n } finding
       *[other] { $n } findings
    }
visit-where = Where it hurts today
visit-region = Region
visit-score = Pain, 0 to 10
visit-line = In the patient’s words
# A button that stores what was typed.
visit-note-it = Note
# The same button of the screening as long as nothing is ticked.
visit-none-applies = All asked, none applies
visit-since-last = Since last time
visit-change-label = Overall change
visit-change-said = What is different
visit-measured = Measured
visit-measured-what = What
visit-movement = Movement
visit-name-of-other = Name
visit-unit-label = Unit
visit-measured-side = Which side
# Options of it: before, after, or once without regard to it.
visit-moment-label = Treatment
visit-moment-before = before
visit-moment-after = after
visit-once = none
visit-surface = Standing on
visit-eyes = Eyes
visit-results = Results, up to three with spaces between
visit-kind-pain = pain in a movement, 0 to 10
visit-kind-motion = how far a movement goes, degrees
visit-kind-grip = grip strength, kg
visit-kind-chair-rise = risings from a chair in 30 s
visit-kind-stance = time on one leg, seconds
visit-kind-other = another measure
visit-watch-start = Start the stop-watch
visit-watch-stop = Stop
visit-screening-title = Screening
visit-screening-ask = Ask about each: what you do not tick is noted as not present. Red flags are not among them.
visit-fell-tick = Fell in the last twelve months
visit-not-screened = not done yet
visit-still-same = Still the same as on { $date }
visit-note-title = Note
visit-note-label = What else matters
visit-not-followed = A proposal not followed
visit-proposal = Proposal
visit-reason = Your reason
visit-correct = Correct
visit-take-back = Take back
visit-correcting = What you note next replaces what you chose to correct.
# The plan as PDF files to print.
on-paper = On paper
on-paper-what = The hand-out has figures, steps, precautions and the code. The diary has four weeks to tick, for a patient without a device.
paper-size = Paper
paper-a4 = A4
paper-letter = US Letter
save-hand-out = Save the hand-out (PDF)
save-diary = Save the diary (PDF)
# The review as a file for the medical record.
record-title = For the medical record
record-what = The file has the patient’s code and not the name. It is not encrypted: keep it where records are kept.
record-as = Save as
record-as-report = Report (PDF, A4)
record-as-report-letter = Report (PDF, US Letter)
record-as-csv = Table (CSV)
record-as-collection = HL7 FHIR R4, to hand over
record-as-transaction = HL7 FHIR R4, for a server
record-save = Save the review
# Which patients are shown; $n of them fit.
filter-patients = Which patients
# $n (Number)
filter-count = { $what }: { $n }
# The patients whose cases are open.
filter-all = Open
filter-alarm = Alarm
filter-visit-today = Visit today
filter-new-summary = New summary
filter-silent = Silent for two weeks
# Beside a patient: a summary came that tells of days since the last card.
new-summary = new summary
# The review for a server of medical records on this computer.
hand-over-title = Hand over to a server
hand-over-what = To a server of medical records (HL7 FHIR R4) that runs on this computer, and to no other. What it has already is replaced.
hand-over-address = Address of the server
hand-over-address-hint = Such as http://127.0.0.1:8080/fhir
hand-over-token = Token
hand-over-token-hint = If the server asks for one. It is kept encrypted and not shown again.
hand-over-set = Set the server
hand-over-do = Hand this review over
hand-over-under-way = Being handed over. This can take a minute; you can go on meanwhile.
hand-over-remove = Hand nothing over any more
