## Review: what a clinician reads. A finding is a word (Better) and what it rests on, joined by ", ": such figures begin small.

## The questions, and lines around them

review-question-alarms = Alarms
review-question-done = Adherence, by time of day
review-question-pain = Pain, 0 to 10
review-question-balance = Balance: single-leg stance time (s)
review-question-activities = Activities, 0 (cannot do) to 10 (as before)
review-question-barriers = What got in the way
review-question-next = What next
review-notes = Patient's notes
review-no-alarm = No alarm was raised.
review-no-barrier = No reason was given.
review-no-complaint = The plan names no complaint, so pain was not asked about.
review-no-balance = No balance was measured.
review-no-activity = The plan names no activity.
review-no-summary = No summary has been received yet.
review-no-plan = There is no plan yet.
review-days-since = { $n ->
        [one] { $n } day since { $date }
       *[other] { $n } days since { $date }
    }
review-exercises = { $n ->
        [one] { $n } exercise
       *[other] { $n } exercises
    }
review-visit-today = visit today
review-visit-on = visit on { $date }
review-visit-was = visit was due on { $date }
review-covered = Record from { $from } to { $until }.
# $n is 2 or more.
# $n (Number)
review-covered-devices = Record from { $from } to { $until }, from { $n } devices.
review-device-behind = One device's record ends on { $date }: later entries not received.
review-corrected = { $n ->
        [one] The patient corrected one entry. All figures use the correction.
       *[other] The patient corrected { $n } entries. All figures use the corrections.
    }
# $have, $newest: numbers of plans.
# $have (Number), $newest (Number)
review-older-plan-followed = The patient's device follows plan { $have }; the newest is plan { $newest }.
# Where a name is not known: the number in the plan.
# $n (Number)
review-some-item = exercise { $n }
# $n (Number)
review-some-complaint = complaint { $n }
# $n (Number)
review-some-activity = activity { $n }
review-no-longer = no longer in the plan
review-proposals-only = Proposals follow fixed rules and use what was recorded. You decide.

## Alarms, in the clinician's words. The parts match trouble-… in common.ftl.

review-heart-or-breath = Chest pain, severe breathlessness, faintness or cold sweat
review-head-or-neck = Sudden unusual headache or neck pain, diplopia, trouble speaking or swallowing, numb or drooping face, confusion, unsteadiness or collapse
review-nerve = New or worsening weakness or numbness in a limb
review-bladder-or-bowel = Saddle numbness, new bladder, bowel or sexual dysfunction, or pain or weakness in both legs
review-fell = Fell
review-nearly-fell = Nearly fell
review-too-much-pain = Too much pain
review-other-trouble = Something else was wrong
review-alarm-on = on { $date }
review-alarm-during = on { $date }, during { $exercise }
review-alarm-between = on { $date }, not during an exercise
review-paused-plan = The whole plan has been paused for safety since.
review-paused-balance = All balance exercises have been paused for safety since.
review-paused-exercise = That exercise has been paused for safety since.
review-alarm-cleared = Cleared by the newest card.
review-alarm-said-mistaken = The patient notes that it was raised by mistake.

## Adherence

review-as-agreed = As agreed
review-partly = Partly
review-little = Little
review-nothing-due = Nothing was due yet
# $k (Number), $percent (Number)
review-sessions-done = { $n ->
        [one] { $k } of { $n } session, { $percent }%.
       *[other] { $k } of { $n } sessions, { $percent }%.
    }
review-entered-afterwards = { $n ->
        [one] { $n } of these was entered afterwards, not timed.
       *[other] { $n } of these were entered afterwards, not timed.
    }
# $k (Number), $n (Number)
review-with-days-off = { $excused ->
        [one] { $excused } session was on a day off; counted as not done, it is { $k } of { $n }.
       *[other] { $excused } sessions were on days off; counted as not done, it is { $k } of { $n }.
    }
# $k (Number), $n (Number)
review-with-unrecorded = { $days ->
        [one] No record on { $days } day; counted as not done, it is { $k } of { $n }.
       *[other] No record on { $days } days; counted as not done, it is { $k } of { $n }.
    }
review-sessions-paused = { $n ->
        [one] { $n } session paused for safety, not counted.
       *[other] { $n } sessions paused for safety, not counted.
    }
# $done (Number), $percent (Number)
review-dose-seconds = { $of ->
        [one] Held { $done } of { $of } second, { $percent }%.
       *[other] Held { $done } of { $of } seconds, { $percent }%.
    }
# $done (Number), $percent (Number)
review-dose-repetitions = { $of ->
        [one] { $done } of { $of } repetition, { $percent }%.
       *[other] { $done } of { $of } repetitions, { $percent }%.
    }
# $done (Number), $percent (Number)
review-dose-trials = { $of ->
        [one] { $done } of { $of } attempt, { $percent }%.
       *[other] { $done } of { $of } attempts, { $percent }%.
    }
# $k (Number)
review-days-met = { $n ->
        [one] { $k } of { $n } day met (80% of the day's sessions or more).
       *[other] { $k } of { $n } days met (80% of the day's sessions or more).
    }
# $before_k (Number), $before_n (Number), $after_k (Number), $after_n (Number)
review-dropped-off = Much less from { $date } on: { $before_k } of { $before_n } before, { $after_k } of { $after_n } since.
review-longest-pause = { $days ->
        [one] Longest pause: { $days } day, { $from } to { $until }.
       *[other] Longest pause: { $days } days, { $from } to { $until }.
    }
review-last-done = Last done on { $date }.
review-never-done = Not done so far.
review-extra = { $n ->
        [one] { $n } extra session.
       *[other] { $n } extra sessions.
    }
# $done (Number), $of (Number)
review-stopped-once = Stopped early once, after { $done } of { $of }.
# $n (Number), $done (Number), $of (Number)
review-stopped-early = Stopped early { $n } times, most often after { $done } of { $of }.
review-interrupted = { $n ->
        [one] Interrupted once.
       *[other] Interrupted { $n } times.
    }
# $am_k (Number), $am_n (Number), $pm_k (Number), $pm_n (Number)
review-half-days = Before noon { $am_k } of { $am_n }, from noon on { $pm_k } of { $pm_n }.
# $lower (Number), $upper (Number)
review-delay = In the week of { $date }, half of the sessions started { $lower } to { $upper } minutes after the reminder.
# Legend of the chart of days.
review-legend-done = done
review-legend-partly = partly done
review-legend-not-done = not done
review-legend-skipped = skipped, with a reason
review-legend-day-off = day off
review-legend-paused = paused for safety
review-legend-no-record = no record

## Change

review-better = Better
review-worse = Worse
review-no-clear-change = No clear change
review-not-interpretable = Not interpretable
# $base (Number), $now (Number), $points (Number), $percent (Number)
review-pain-better = { $base } to { $now }: { $points } points lower, { $percent }%. Minimum change: 2 points and 30%.
# $base (Number), $now (Number)
review-pain-no-change = { $base } to { $now }. Minimum change: 2 points and 30%.
# $base (Number), $now (Number), $points (Number)
review-pain-worse = { $base } to { $now }: { $points } points higher. Minimum change: 2 points.
# $base (Number), $now (Number)
review-pain-low-base = { $base } to { $now }. It started too low to fall by the minimum change of 2 points.
review-pain-few = { $n ->
        [one] rated on { $n } day; three days at each end are needed.
       *[other] rated on { $n } days; three days at each end are needed.
    }
review-pain-none = not rated yet.
# $list: ratings with dates, 6 (28 October), 4 (25 November).
review-at-visits = At the visit: { $list }.
# $base (Number), $now (Number)
review-activity-changed = { $base } to { $now }. Minimum change: 3 points.
review-activity-not-again = not rated again yet.
# $n is 2 or more.
# $n (Number), $base (Number), $now (Number)
review-activity-together = the mean of { $n } activities, { $base } to { $now }. Minimum change of the mean: 2 points.

## Stance

review-on-support = phone on the support
review-at-breastbone = phone at the breastbone
review-in-pocket = phone in a pocket at the waist
# $s (Number)
review-up-to = up to { $s } s
review-rising = Rising
review-falling = Falling
review-at-maximum = At maximum
review-not-enough-data = Not enough data
# $n is 5 days or more. $basis: one of review-from-…
# $from (Number), $to (Number), $n (Number), $least (Number)
review-stance-moved = { $from } to { $to } s over { $n } days; exceeds the minimum change of { $least } s ({ $basis }).
# $from (Number), $to (Number), $n (Number), $least (Number)
review-stance-below-minimum = { $from } to { $to } s over { $n } days; minimum change { $least } s ({ $basis }).
# $from (Number), $to (Number), $n (Number)
review-stance-too-variable = { $from } to { $to } s over { $n } days; too variable to tell.
# $capped (Number), $s (Number)
review-stance-at-maximum = { $n ->
        [one] { $capped } of { $n } day reached { $s } s, where an attempt ends, so the time cannot show more.
       *[other] { $capped } of { $n } days reached { $s } s, where an attempt ends, so the time cannot show more.
    }
review-stance-few-days = { $n ->
        [one] { $n } day so far; five are needed.
       *[other] { $n } days so far; five are needed.
    }
# $n (Number)
review-stance-no-own-variation = { $n } days so far; eight are needed to tell a change from day-to-day variation.
review-from-own-variation = from the patient's own day-to-day variation
review-from-older-adults = published for older adults
review-from-given = as given
# $a (Number), $b (Number), $percent (Number)
review-sides-percent = { $involved } { $a } s, { $other } { $b } s: { $percent }% of the { $other }.
# $a (Number), $b (Number), $percent (Number)
review-sides-at-most = { $involved } { $a } s, { $other } { $b } s or more: at most { $percent }% of the { $other }.
# $a (Number), $b (Number), $percent (Number)
review-sides-at-least = { $involved } { $a } s or more, { $other } { $b } s: at least { $percent }% of the { $other }.
review-sides-at-maximum = Both legs at maximum: a comparison of the sides says nothing.
# $a (Number), $b (Number)
review-sides-not-computed = { $involved } { $a } s, { $other } { $b } s: less than 5 seconds, not compared.
review-within-error = The difference is within measurement error.
# $sway: the three figures.
review-sway-last = { $n ->
        [one] Sway, last measured day ({ $n } attempt): { $sway }.
       *[other] Sway, last measured day ({ $n } attempts): { $sway }.
    }
# $by has a plus or minus sign.
review-sway-changed = All directions { $by } cm/s² compared with the first day: more than these attempts vary.
review-sway-unclear = No clear change of sway.
review-sway-few = To compare sway, two days with three measured attempts each are needed.
review-sway-not-certain = { $n ->
        [one] { $n } time is not certain: the sensor suggested that the foot touched the floor, and the patient was not sure or not asked.
       *[other] { $n } times are not certain: the sensor suggested that the foot touched the floor, and the patient was not sure or not asked.
    }
review-sway-not-measured = { $n ->
        [one] { $n } attempt without sway figures.
       *[other] { $n } attempts without sway figures.
    }
# $s (Number)
review-visit-stance = { $leg } { $s } s
# $s (Number)
review-visit-stance-capped = { $leg } { $s } s or more

## Published times for comparison. No rank, no risk, no "normal".

review-norm-best-of = { $n ->
        [one] a single attempt
       *[other] best of { $n } attempts
    }
review-norm-mean-of = { $n ->
        [one] a single attempt
       *[other] mean of { $n } attempts
    }
review-norm-median-of = { $n ->
        [one] a single attempt
       *[other] median of { $n } attempts
    }
# $people: empty, or ", " and review-norm-people. $ages: review-norm-ages.
# $own (Number)
review-norm-comparison = On { $date }, { $how }: { $own } s. For comparison: { $published } ({ $ages }{ $people }). Source: { $source }.
# $s (Number)
review-norm-mean = a mean of { $s } s
# $s (Number), $sd (Number)
review-norm-mean-sd = a mean of { $s } s, standard deviation { $sd } s
# $s (Number)
review-norm-median = a median of { $s } s
review-norm-row-line = { $published }: { $conditions }
# $from (Number), $to (Number)
review-norm-ages = { $from } to { $to } years
# $from (Number)
review-norm-ages-from = { $from } years and over
review-norm-people = { $n ->
        [one] { $n } person
       *[other] { $n } people
    }
# $s (Number)
review-norm-cap = attempts end at { $s } s
review-norm-no-cap = attempts without a time limit
review-norm-bare = bare feet
review-norm-covered = socks or shoes
review-norm-crossed = arms crossed on the chest
review-norm-on-hips = hands on the hips
review-norm-free = arms free
review-norm-hand-in-use = one hand at the phone
review-norm-no-verdict = Measured in the same way. This gives no rank and no risk.
review-norm-skew = Such times are skewed: more than half of a healthy group are usually below the mean.
review-norm-near-cap = The published figure is close to the time at which attempts end, which cuts longer times.
review-norm-own-at-cap = The patient's own time ended with the attempt and may be longer.
review-norm-none = No published times for comparison: { $why }.
review-norm-soft = there are none for soft surfaces
review-norm-other = they are for standing on one leg
review-norm-unchecked = those that fit have not been checked against their paper
review-norm-not-a-time = the figure is not a time
review-norm-no-row = there is no table
# $what: several of the names below, joined by commas.
review-norm-not-known = not known of these attempts: { $what }
review-norm-not-stated = not stated by the closest source: { $what }
review-norm-differs = different in the closest source: { $what }
review-norm-age = age
review-norm-eyes = eyes
review-norm-surface = surface
review-norm-feet = feet
review-norm-arms = arms
review-norm-statistic = how the figure is made
review-norm-when-attempt-ends = when an attempt ends
review-norms-source = { $n ->
        [one] { $n } row. Source: { $source }
       *[other] { $n } rows. Source: { $source }
    }
review-norms-none = The clinic has no table of its own.
review-norms-removed = The clinic's table was removed.

## What next. The five ways: progress, keep, ease, ask less, stop and talk.

review-progress = Progress
review-keep = Keep
review-ease = Ease
review-stop-and-talk = Stop and talk
# These follow "Progress" or "Ease", and "Go up" or "Go back" on the patient's side.
review-to-hold-seconds = { $n ->
        [one] to { $n } second per hold
       *[other] to { $n } seconds per hold
    }
review-to-holds = { $n ->
        [one] to { $n } hold
       *[other] to { $n } holds
    }
review-to-repetitions = { $n ->
        [one] to { $n } repetition per set
       *[other] to { $n } repetitions per set
    }
# $n (Number)
review-to-target = to a target of { $n } seconds
review-to-trials = { $n ->
        [one] to { $n } attempt
       *[other] to { $n } attempts
    }
review-to-level = to “{ $rung }”
# $dose: such as "3 holds of 10 seconds".
review-to-level-with-dose = to “{ $rung }”, { $dose }
# $trouble: one of the alarms above.
review-why-alarm = An alarm is not cleared: { $trouble }.
# $score (Number), $limit (Number)
review-why-pain-too-high = Pain was { $score }, above the limit of { $limit }.
review-why-not-settled = Pain had not settled by the next morning.
# $base (Number), $before (Number), $last (Number)
review-why-pain-rising = Pain rose two weeks in a row: { $base }, then { $before }, then { $last }.
review-why-missed-twice = The target was missed in two sessions.
review-why-met-twice = The target was met in two sessions in a row, and pain allows it.
review-why-met-once = The target was met once so far; twice in a row is needed.
review-why-not-met = The target was not met in the last session.
# $score (Number)
review-why-pain-between = Pain was { $score }: acceptable, but too high for a step.
review-why-pain-unanswered = Pain was not rated after one of the last two sessions.
review-why-morning-unanswered = The patient did not answer whether pain had settled by the morning.
review-why-too-few-sessions = { $n ->
        [one] { $n } session at this level and dose; two are needed.
       *[other] { $n } sessions at this level and dose; two are needed.
    }
review-why-step-this-week = The last step was on { $date }, less than a week before.
review-why-at-the-top = The target was met; there is no harder level.
# Safety.
review-why-gate-closed = The target was met, but a softer surface is not allowed until 30 s is reached with eyes open on a firm floor on two days.
review-why-soft-and-closed = The target was met, but a soft surface with closed eyes is not allowed unsupervised from the age of 65, or if the age is unknown.
review-why-closed-eyes-by-you = The target was met. Only you can switch to closed eyes.
review-why-test = A test is always done in the same way.
review-why-unknown = This program's catalogue does not know the exercise or the level.

review-visit-stance-earlier = { $last } (earlier: { $before })
