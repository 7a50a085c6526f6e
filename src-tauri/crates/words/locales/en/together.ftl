### What patient and clinician look at together at the visit. Read by both, so the patient is spoken to.

# Opens the page.
together-open = Look at it together
together-of = For { $name }: what was done, and what next
together-so-far = So far
together-next = What next?
# $alarm: "numbness or weakness in an arm or leg: on 3 March".
together-alarm = Talk about this first: { $alarm }
# What was done. $n (Number), $k (Number)
together-done-lately = In the last 14 days you did { $k } of { $n } sessions in full.
# $n (Number), $k (Number)
together-done-in-all = So far you did { $k } of { $n } sessions in full.
together-done-in-part = { $n ->
        [one] One more was done in part.
       *[other] { $n } more were done in part.
    }
together-as-agreed = That is as agreed.
together-partly = That is a part of what was agreed.
together-little = Most of it did not get done.
together-since = It became much less on { $date }.
together-nothing-due = No session was due yet.
# Pain in the morning. $name: a complaint; $base (Number), $now (Number)
together-pain-better = { $name }: pain { $base } of 10 in the morning at first, { $now } lately. That is clearly better.
# $base (Number), $now (Number)
together-pain-worse = { $name }: pain { $base } of 10 in the morning at first, { $now } lately. That is clearly worse.
# $base (Number), $now (Number)
together-pain-same = { $name }: pain { $base } of 10 in the morning at first, { $now } lately. That is no clear change.
together-pain-last = { $name }: pain was last recorded on { $date }, so how it is now is not known.
together-pain-few = { $name }: too few mornings are recorded to compare.
# An activity of the patient's own. $base (Number), $now (Number)
together-activity-better = { $name }: { $base } of 10 at first, { $now } now, where 10 is as before. That is clearly better.
# $base (Number), $now (Number)
together-activity-worse = { $name }: { $base } of 10 at first, { $now } now, where 10 is as before. That is clearly worse.
# $base (Number), $now (Number)
together-activity-same = { $name }: { $base } of 10 at first, { $now } now, where 10 is as before. That is no clear change.
# $name: an exercise, and the leg. $from (Number), $to (Number)
together-seconds-rising = { $name }: about { $from } s at first, about { $to } s now. You stand clearly longer.
# $from (Number), $to (Number)
together-seconds-falling = { $name }: about { $from } s at first, about { $to } s now. That is clearly shorter.
# $from (Number), $to (Number)
together-seconds-same = { $name }: about { $from } s at first, about { $to } s now. That is no clear change.
together-seconds-full = { $name }: you stand until the time is over.
# $name: an exercise. $from (Number), $to (Number)
together-count-rising = { $name }: { $from } repetitions at first, { $to } now. That is clearly more.
# $from (Number), $to (Number)
together-count-falling = { $name }: { $from } repetitions at first, { $to } now. That is clearly fewer.
# $from (Number), $to (Number)
together-count-same = { $name }: { $from } repetitions at first, { $to } now. That is no clear change.
together-too-early = It is too early to say whether it is working.
together-nothing-else = Nothing else can be compared yet.
together-barriers = What got in the way
# $barrier: a reason for leaving a session out.
together-barrier = { $n ->
        [one] “{ $barrier }”, { $n } time
       *[other] “{ $barrier }”, { $n } times
    }
together-no-barrier = No reason was given for a session that was left out. What got in the way?
together-would-help = What would help?
# The picture of a full day. $day: "A full day: 3 sessions, about 9 minutes."
together-day-now = Until now. { $day }
together-day-next = From today on. { $day }
together-day-unchanged = As until now. { $day }
together-day-empty = Nothing at set times.
# Leads to the page on which everything of the plan can be changed.
together-all-of-plan = Change anything else
# An option for an exercise.
option-leave-out = Leave it out
# Below the options of an exercise that is not done as proposed: a question that need not be answered, and usual reasons, each kept in the
# record as it stands here.
together-why = Why not as proposed? (optional)
# $name: an exercise.
together-why-of = { $name }: why not as proposed?
together-why-wish = The patient’s wish
together-why-time = Too little time
together-why-pain = Pain
together-why-unsure = Not sure of the movement yet
together-why-one-change = One change at a time
together-why-other = In other words
