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
visit-screening = Screening: { $flags }. { $fell }
visit-no-flag = none of the conditions asked about
visit-fell = A fall in the last twelve months.
visit-did-not-fall = No fall in the last twelve months.
visit-overridden = { $item }: “{ $advice }” not followed. { $reason }
visit-corrected = { $line } (corrected)
