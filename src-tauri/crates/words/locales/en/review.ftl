## Review: what a clinician reads. A finding is a word (Better) and what it rests on, joined by ", ": such figures begin small.

## The questions, and lines around them

review-question-alarms = Alarms
review-question-done = Adherence, by time of day
review-question-pain = Pain, 0 to 10
review-question-balance = Balance: stance time (s)
review-question-counts = Tests by repetitions
review-question-activities = Activities, 0 (cannot do) to 10 (as before)
review-question-barriers = What got in the way
review-question-next = What next
review-notes = Patient's notes
review-no-alarm = The patient raised no alarm.
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
# $revision, $next: numbers of plans.
# $revision (Number), $next (Number)
review-store-behind = The patient's device follows plan { $revision }, which this store does not have: it was probably put back to an older copy. The next card will be plan { $next }.
review-changed-outside = Rows of this patient's record were changed from outside this program. What is shown may be incomplete or older than it was.
# The devices that summaries came from, in the order in which they were first seen. $number (Number). $used: device-used, device-used-on or
# device-not-used.
# $number (Number)
review-device-counted = Device { $number }: { $used }.
# $number (Number)
review-device-left-out = Device { $number } is left out of this review, as the clinic chose: { $used }.
device-used = { $n ->
        [0] used from { $from } to { $until }, no session
        [one] used from { $from } to { $until }, { $n } session
       *[other] used from { $from } to { $until }, { $n } sessions
    }
device-used-on = { $n ->
        [0] used on { $day }, no session
        [one] used on { $day }, { $n } session
       *[other] used on { $day }, { $n } sessions
    }
device-not-used = nothing recorded
device-first-seen = First summary received on { $date }.
device-seen-before = Its first summary came before devices were noted.
# The record was moved to another device, or put back from a copy. $number: that of the device now.
# $number (Number)
device-goes-on-as = Its record goes on as device { $number }.
# $number: 16 letters and digits, which the device shows on its page "Your data".
device-number = Number on the device: { $number }
# For screen readers, at a button.
# $number (Number)
device-of-number = Device { $number }
devices-title = Devices
devices-what = The summaries come from several devices. If the patient does not know one of them, somebody else may have made its summaries: leave it out. Each device shows its number under “Your data”.
device-leave-out = Leave out
device-take-in = Count again
# In the terminal's list of devices.
device-left-out = left out
device-counted = counted
review-device-renewed = On { $date }, one device's data were moved, copied or put back from a copy. What was recorded twice counts once.
review-clock-ahead = { $n ->
        [one] The clock of the patient's device was one day ahead of this computer's when the summary was made. What it recorded for days still to come counts for no day.
       *[other] The clock of the patient's device was { $n } days ahead of this computer's when the summary was made. What it recorded for days still to come counts for no day.
    }
wrong-clock-sessions = { $n ->
        [one] one session
       *[other] { $n } sessions
    }
wrong-clock-ratings = { $n ->
        [one] one rating
       *[other] { $n } ratings
    }
# $what: wrong-clock-sessions, wrong-clock-ratings, or both as a list.
review-wrong-clock = Recorded while the clock of the patient's device was wrong: { $what }. They are kept, but count for no day.
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
# $complaint: "Outer hip, right". $n is 2 or more.
review-steps-at-once = { $n ->
        [one] { $complaint }: { $n } exercise for it goes a step forward.
       *[other] { $complaint }: { $n } exercises for it go a step forward at once. Should it get worse, nobody can tell by which.
    }
review-proposals-only = Proposals follow fixed rules and use what was recorded. You decide.
# A button beside a proposal, and beside an alarm. Pressed means that it is in the draft of the next plan.
review-into-next-plan = Put it into the next plan
review-in-next-plan = In the next plan
review-talked-about-it = Talked about it: clear it with the next plan
review-cleared-in-next-plan = Talked about it: cleared in the next plan
# Before the choices for an answer that was not given yet.
review-not-answered = not answered
# Below an exercise: its dose, level and times in the plan in force.
review-in-force = Now: { $list }
# After it, where the level was changed at home.
review-level-at-home = At home lately: { $level }
# $list: dates.
review-plan-changes = Plan changed on { $list } (vertical lines in the charts).
# The headings of the line at the top of the review.
review-strip-done = Done
review-strip-pain = Pain
review-strip-activities = Activities
review-strip-balance = Balance
review-strip-alarms = Alarms
review-strip-next = Proposals
# $name: an exercise. $k (Number), $n (Number)
review-strip-last-14-days = { $name }: { $k } of { $n } in the last 14 days, at least in part
# $name: an exercise. $k (Number), $n (Number)
review-strip-of = { $name }: { $k } of { $n } in full
# $from (Number), $to (Number). $name: a complaint, an activity.
review-strip-change = { $name }: { $from } to { $to }
# After the figures of a complaint. $score (Number)
review-strip-last-morning = last { $score }
# $leg: such as "Left". $from (Number), $to (Number)
review-strip-seconds = { $leg }: { $from } to { $to } s
review-strip-open-alarms = { $n ->
        [one] { $n } not cleared
       *[other] { $n } not cleared
    }
review-strip-no-alarm = None
review-strip-cleared = All cleared
# $proposal: such as "Progress". $n (Number)
review-strip-count = { $proposal } { $n }

## Alarms, in the clinician's words. The parts match trouble-… in common.ftl.

review-heart-or-breath = Chest pain, severe breathlessness, faintness or cold sweat
review-head-or-neck = Sudden unusual headache or neck pain, diplopia, trouble speaking or swallowing, numb or drooping face, confusion, unsteadiness or collapse
review-nerve = New or worsening weakness or numbness in a limb
review-bladder-or-bowel = Saddle numbness, new bladder, bowel or sexual dysfunction, or pain or weakness in both legs
# Most urgent: a clot, a torn muscle or tendon, a blocked artery, an infected joint.
review-limb = Calf swollen, hot or painful; a sudden snap; hand or foot pale, blue or cold; or a hot swollen joint
review-fell = Fell
review-nearly-fell = Nearly fell
review-dizzy = Light-headed or spinning
review-too-much-pain = Too much pain
review-pain-above-limit = Pain above the limit
review-unwell = Fever or felt ill
review-other-trouble = Something else was wrong
review-alarm-on = on { $date }
review-alarm-during = on { $date }, during { $exercise }
review-alarm-between = on { $date }, not during an exercise
# $score (Number), $limit (Number)
review-alarm-above = { $score } of 10, limit { $limit }
review-alarm-blow-to-the-head = blow to the head
review-alarm-thins-the-blood = takes a blood thinner
review-alarm-could-not-get-up = could not get up alone
review-alarm-sweats-or-weight-loss = night sweats or unexplained weight loss
# $items: exercises.
review-alarm-suspends = Paused for safety since: { $items }.
review-alarm-suspends-plan = The whole plan has been paused for safety since.
review-alarm-suspends-nothing = It pauses nothing.
review-alarm-eased = Nothing is paused; since then it has been one level easier at home, or with a hand on the support.
review-alarm-cleared = Cleared by the newest card.
# One of the details of an alarm, after its date.
review-alarm-wrong-clock = the device's clock was wrong then
review-alarm-said-mistaken = The patient notes that it was raised by mistake.

## Adherence

review-as-agreed = As agreed
review-partly = Partly
review-little = Little
review-nothing-due = Nothing was due yet
# The verdict of what is done whenever the patient needs it: there is nothing to keep to.
review-as-needed = As needed
# $n (Number)
review-done-times = { $n ->
        [one] done once, on { $date }.
       *[other] done { $n } times, last on { $date }.
    }
# Of what was to be done as needed for a part of the time.
# $n (Number)
review-as-needed-besides = { $n ->
        [one] Done once while it was as needed.
       *[other] Done { $n } times while it was as needed.
    }
# $k (Number), $percent (Number)
review-sessions-in-full = { $n ->
        [one] { $k } of { $n } session in full, { $percent }%.
       *[other] { $k } of { $n } sessions in full, { $percent }%.
    }
# $k (Number), $partly (Number), $percent (Number)
review-sessions-with-parts = { $n ->
        [one] { $k } of { $n } session in full, { $partly } in part; together { $percent }%.
       *[other] { $k } of { $n } sessions in full, { $partly } in part; together { $percent }%.
    }
# $k (Number), $n (Number)
review-last-14-days = Last 14 days: { $k } of { $n }.
# Where some sessions were done in part. $k (Number), $n (Number)
review-last-14-days-with-parts = Last 14 days: { $k } of { $n }, at least in part.
review-sessions-late = { $n ->
        [one] { $n } session started more than an hour late.
       *[other] { $n } sessions started more than an hour late.
    }
review-sessions-moved = { $n ->
        [one] { $n } session done on another day.
       *[other] { $n } sessions done on another day.
    }
review-days-unrecorded = { $n ->
        [one] No record on { $n } day.
       *[other] No record on { $n } days.
    }
review-entered-afterwards = { $n ->
        [one] { $n } of the sessions was entered afterwards, not timed.
       *[other] { $n } of the sessions were entered afterwards, not timed.
    }
# $k (Number), $n (Number)
review-with-days-off = { $excused ->
        [one] { $excused } session was on a day off; counted as not done, it is { $k } of { $n }.
       *[other] { $excused } sessions were on days off; counted as not done, it is { $k } of { $n }.
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
review-dose-stretch = { $of ->
        [one] Stretched { $done } of { $of } second, { $percent }%.
       *[other] Stretched { $done } of { $of } seconds, { $percent }%.
    }
# $done (Number), $percent (Number)
review-dose-on-beat = { $of ->
        [one] On the beat { $done } of { $of } second, { $percent }%.
       *[other] On the beat { $done } of { $of } seconds, { $percent }%.
    }
# $done (Number), $percent (Number)
review-dose-minutes = { $of ->
        [one] { $done } of { $of } minute, { $percent }%.
       *[other] { $done } of { $of } minutes, { $percent }%.
    }
# $done (Number), $percent (Number)
review-dose-times = { $of ->
        [one] { $done } of { $of } time, { $percent }%.
       *[other] { $done } of { $of } times, { $percent }%.
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
# Sessions; one that was done in part counts as that part.
# $before_k (Number), $before_n (Number), $after_k (Number), $after_n (Number)
review-dropped-off = Much less from { $date } on: { $before_k } of { $before_n } before, { $after_k } of { $after_n } since.
# Only days on which the exercise was due are counted.
review-longest-pause = { $days ->
        [one] Longest pause: { $days } planned day, { $from } to { $until }.
       *[other] Longest pause: { $days } planned days in a row, { $from } to { $until }.
    }
# After the sentence of the longest pause. $n (Number)
review-pause-unrecorded = No record on { $n } of these days.
review-last-done = Last done on { $date }.
# After "As needed".
review-needed-never = not done so far.
review-never-done = Not done so far.
review-extra = { $n ->
        [one] { $n } extra session.
       *[other] { $n } extra sessions.
    }
# $done (Number), $of (Number)
review-stopped-once = Stopped early once, after { $done } of { $of }.
# $n (Number), $done (Number), $of (Number)
review-stopped-early = Stopped early { $n } times, most often after { $done } of { $of }.
# Where there is one part alone.
review-stopped-within-the-part = { $n ->
        [one] Stopped early once.
       *[other] Stopped early { $n } times.
    }
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
review-not-known-lately = Not known lately
# $date: a day. $score (Number)
review-pain-last-morning = The last morning, { $date }, was higher: { $score }.
# $base (Number), $now (Number), $points (Number), $percent (Number)
review-pain-better = { $base } to { $now } ({ $date }): { $points } points lower, { $percent }%. Minimum change: 2 points and 30%.
# $base (Number), $now (Number)
review-pain-no-change = { $base } to { $now } ({ $date }). Minimum change: 2 points and 30%.
# $base (Number), $now (Number), $points (Number)
review-pain-worse = { $base } to { $now } ({ $date }): { $points } points higher. Minimum change: 2 points.
review-pain-last-rated = last rated on { $date }.
review-pain-flare = Clearly higher from { $from } to { $until }: { $height }.
# $limit (Number)
review-pain-flare-over = Clearly higher from { $from } to { $until }: { $height }, over the limit of { $limit }.
# $least (Number), $peak (Number)
review-pain-flare-height = { $least } to { $peak }
review-pain-unsettled = { $n ->
        [one] Not settled by the morning on { $n } day.
       *[other] Not settled by the morning on { $n } days.
    }
# $list: the last ratings, newest first: 6 (28 October), 4 (25 November).
# $k (Number), $n (Number)
review-during = While doing { $exercise }: rated on { $k } of { $n } days. Newest first: { $list }.
review-during-none = While doing { $exercise }: not rated yet.
review-during-above-limit = { $n ->
        [one] Above the limit on { $n } day.
       *[other] Above the limit on { $n } days.
    }
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
review-count-within-error = Within measurement error
review-count-error-unknown = No measurement error known
# $exercise: its name. $seconds (Number)
review-count-conditions = { $exercise }: repetitions in { $seconds } s, at home
# $first (Number), $last (Number), $best (Number)
review-count-figures = first { $first }, last { $last }, best { $best }.
# $error (Number)
review-count-error = The error of testing oneself is { $error }; home and visit are not compared.
# $n (Number)
review-count-on = { $date }: { $n }
# $n is 5 days or more. $basis: one of review-from-…
# $from (Number), $to (Number), $n (Number), $least (Number)
review-stance-moved = { $from } to { $to } s over { $n } days; exceeds the minimum change of { $least } s ({ $basis }).
# $from (Number), $to (Number), $n (Number), $least (Number)
review-stance-below-minimum = { $from } to { $to } s over { $n } days; minimum change { $least } s ({ $basis }).
# The next two instead, where the minimum change is how much the patient's own days vary.
# $from (Number), $to (Number), $n (Number), $least (Number)
review-stance-beyond-own = { $from } to { $to } s over { $n } days; more than the patient's own day-to-day variation explains ({ $least } s).
# $from (Number), $to (Number), $n (Number), $least (Number)
review-stance-within-own = { $from } to { $to } s over { $n } days; within the patient's own day-to-day variation ({ $least } s).
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
review-from-older-adults = published for older adults
review-from-given = as given
review-both-feet = Both feet
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

## What next. The five ways: progress, keep, ease, do less, stop and talk.

review-progress = Progress
review-keep = Keep
review-ease = Ease
review-stop-and-talk = Stop and talk
# The same where nothing was done, so that there is nothing to stop.
review-talk-first = Talk about it first
review-ask-less = Do less
# The same before a smaller dose: "Reduce to 2 holds".
review-reduce = Reduce
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
review-to-sets = { $n ->
        [one] to { $n } set
       *[other] to { $n } sets
    }
review-to-stretch-seconds = { $n ->
        [one] to { $n } second per stretch
       *[other] to { $n } seconds per stretch
    }
review-to-stretches = { $n ->
        [one] to { $n } stretch
       *[other] to { $n } stretches
    }
review-to-movements = { $n ->
        [one] to { $n } movement
       *[other] to { $n } movements
    }
review-to-times = { $n ->
        [one] to { $n } time
       *[other] to { $n } times
    }
review-to-minutes = { $n ->
        [one] to { $n } minute
       *[other] to { $n } minutes
    }
# $n (Number)
review-to-target = to a target of { $n } seconds
# $n (Number)
review-to-cap = to { $n } seconds each
# $n (Number)
review-to-beats = to { $n } beats a minute
# $n (Number)
review-to-beat-seconds = to { $n } seconds each time
review-to-trials = { $n ->
        [one] to { $n } attempt
       *[other] to { $n } attempts
    }
review-to-level = to “{ $rung }”
# $dose: such as "3 holds of 10 seconds".
review-to-level-with-dose = to “{ $rung }”, { $dose }
# These follow "Do less" after a colon.
# $dose: for example "8 repetitions"; $load: "with 2.5 kg" or "with a medium band".
review-to-load = to { $dose } { $load }
review-only-before-noon = only the sessions before noon
review-only-after-noon = only the sessions from noon on
# $from (Number)
review-fewer-sessions = { $n ->
        [one] { $n } session a day instead of { $from }
       *[other] { $n } sessions a day instead of { $from }
    }
# $from (Number)
review-fewer-times = { $n ->
        [one] { $n } time a week instead of { $from }
       *[other] { $n } times a week instead of { $from }
    }
review-shorten-or-end = a shorter dose, or an end
# $trouble: one of the alarms above.
review-why-alarm = An alarm is not cleared: { $trouble }.
review-why-nothing-done = { $n ->
        [one] Nothing was done of { $n } session.
       *[other] Nothing was done of { $n } sessions.
    }
# $score (Number), $limit (Number)
review-why-above-limit = Pain while doing it was { $score } on { $date }, above the limit of { $limit }.
# $dates: days, joined by commas.
review-why-unsettled = Pain had not settled by the morning of { $dates }.
review-why-often-unsettled = { $n ->
        [one] Pain had not settled on { $n } morning, most recently { $dates }.
       *[other] Pain had not settled on { $n } mornings, most recently { $dates }.
    }
# $missed (Number)
review-why-target-missed = { $of ->
        [one] The target was missed in { $missed } of { $of } finished session.
       *[other] The target was missed in { $missed } of the last { $of } finished sessions.
    }
review-why-near-fall = Nearly fell during it on { $date }.
review-why-balance-falling = The stance time is falling.
# $done (Number)
review-why-little-done = { $n ->
        [one] { $done } of { $n } session done; what was done in part counts as a part.
       *[other] { $done } of { $n } sessions done; those done in part count as parts.
    }
review-why-given = { $n ->
        [one] Reason given once: { $reason }.
       *[other] Most frequent reason, given { $n } times: { $reason }.
    }
review-why-none-given = No reason was given.
# Of each day its last session counts.
review-why-target-met = The last session on { $first } and on { $second } met its target in full.
# $most (Number)
review-why-low-pain = { $n ->
        [one] Pain while doing it was { $most }, rated once.
       *[other] Pain while doing it was { $most } at most, in { $n } ratings.
    }
review-why-pain-unknown = Pain while doing it was not rated.
review-why-pain-known-once = Pain while doing it was rated only once.
review-why-changed-lately = Last changed on { $date }: at least seven days are needed before the next step.
review-why-few-sessions = { $n ->
        [one] Sessions on { $n } day since the last change; three days are needed.
       *[other] Sessions on { $n } days since the last change; three days are needed.
    }
review-why-not-met = A step needs the last session on each of the last two days to meet its target in full.
# $score (Number)
review-why-too-painful-for-a-step = Pain while doing it was { $score }: acceptable, but a step needs 3 or less.
review-why-pain-worse = The pain that it is meant to help has become worse.
review-why-flare-lately = Pain was clearly higher until { $date }, less than seven days ago.
# $alarm: such as "Light-headed or spinning".
review-why-alarm-lately = No step forward for a week after an alarm: { $alarm }, { $date }.
# What the clinician should ask before following a proposal.
review-ask-pain = Ask: how much does it hurt while doing it?
review-ask-reason = Ask: what gets in the way?
review-why-at-the-top = The target was met; there is no harder level.
# Safety.
review-why-gate-closed = The target was met, but a softer surface is not allowed until 30 s is reached with eyes open on a firm floor on two days.
review-why-soft-and-closed = The target was met, but a soft surface with closed eyes is not allowed unsupervised from the age of 65, or if the age is unknown.
review-why-closed-eyes-by-you = The target was met. Only you can switch to closed eyes.
# Heading of what was prescribed beside exercise, such as a warm pack.
review-care = Warmth, cold, rest: not counted as exercise
review-why-test = A test is always done in the same way.
review-why-not-stepped = Not an exercise to be raised: keep it, ask for less, or talk about it.
review-why-by-calendar = The calendar raises it, whatever the pain was.
review-why-goal-reached = The goal is reached: agree on a new one, or end it.
review-why-as-needed = It is done as needed: it is kept, or talked about.
# After a step of the dose, of an exercise with a weight or a band.
same-load = same load
review-why-to-come = It has not begun yet.
review-why-over = Its last day is over.
review-why-unknown = This program's catalogue does not know the exercise or the level.

review-visit-stance-earlier = { $last } (earlier: { $before })
