## Patient: places

# For screen readers: the row of Now, Plan, Record.
places-label = Main menu
place-now = Now
place-plan = Plan
place-record = Record
# The safety button, within reach on every screen.
something-wrong = Something is wrong
role-is-remembered = This device remembers your choice.

## Patient: now

start-session = Start
remind-in-ten-minutes = Remind me in 10 minutes
skip-this-time = Skip this time
how-to-do-it = How to do it
how-to-of = How to do it: { $name }
did-it-already = I already did it
due-soon = Due at { $time }. You can start now.
# Also a line of the tray's menu.
reminder-at = Reminder at { $time }.
nothing-now = Nothing to do now
next-at = Next: { $name }, at { $time }
ahead-minutes = { $n ->
        [one] In a minute.
       *[other] In { $n } minutes.
    }
ahead-hours = { $n ->
        [one] In about an hour.
       *[other] In about { $n } hours.
    }
next-tomorrow = Next: tomorrow at { $time }.
# $day: weekday-date.
next-on-day = Next: { $day } at { $time }.
# Title when every session of the day is done.
all-done = All done for today
# Title when the day's last session is over but not all were done.
no-more-today = No more today
# Sessions of this day; also a line of the tray's menu.
# $done (Number), $of (Number)
sessions-done-of = { $done } of { $of } done.
# Title on a day without sessions in the plan.
no-exercises-today = No exercises planned today
# Title on a day that the patient took off.
day-off-today = Day off today
plan-ended = This plan has ended
plan-ended-what = It ended on { $date }. Take your summary to the visit. The next plan starts with a new card.
# Safety: the whole plan. Title.
plan-paused = Your plan is paused for safety
# $what: one of trouble-…
plan-paused-because = You reported: { $what }
only-new-card-restarts = Only a new card from your clinic can restart it.
what-to-do = What to do
row-now = now
# For screen readers: the list of the day's sessions.
day-label = Today, by time
after-the-visit = After the visit
not-now = Not now
# A button after a card was added, while nothing is due.
try-first = Try the first one now
try-first-what = { $name }. It counts as an extra session.
do-one-now = Do one now
# On the day on which exercises of the plan begin. $names: a list of exercises.
new-today = New from today: { $names }.
# Heading of the exercises that are done whenever the patient needs them.
when-you-need-it = When you need it
# $n (Number)
as-needed-plainly = { $n ->
        [one] Done once, as needed.
       *[other] Done { $n } times, as needed.
    }
# Heading of the exercises that are to be done some times a week; the patient chooses the days.
on-your-days = On days you choose
# How far an exercise has come in the week from Monday to Sunday.
# $done (Number), $of (Number)
week-so-far = { $done } of { $of } this week
which-one = Which exercise?
extra-what = If a session is due, this counts for it. Otherwise it is extra.
# $what: one of trouble-…
exercise-paused-because = Paused for safety. You reported: { $what }
skip-why = Why skip it?
skip-more-reasons = More reasons
# Title after a session was skipped because of pain, or because the person was not sure how to do it.
skipped-title = Skipped
# Above the button how-to-do-it.
skipped-not-sure = Would you like to see how it is done?
# Above the button something-wrong. Safety.
skipped-pain = If something is wrong, say so now, and you see what to do.
take-days-off = Take days off
take-days-off-what = On these days you are asked for nothing and get no reminder. Your clinic sees that they were days off.
days-off-from = First day off
days-off-until = Last day off
# Instead of a date, in the lists of the first and the last day off.
days-off-today = Today
days-off-why = Why?
days-off-why-saves = Why? Your answer saves the days off.

## Patient: a step that may be taken

# $step: one of review-to-…, such as "to 15 seconds a hold".
step-up-to = Go up { $step }?
step-back-to = Go back { $step }?
start-as-before = Start as before
start-with-step = Start with this step
step-allowed = Your clinician lets you decide.

## Patient: questions

how-did-it-go = How did it go?
ask-morning = Pain this morning: { $name }
# $name: an exercise.
ask-during = Pain while doing it: { $name }
# The two ends of 0 to 10.
pain-least = no pain
pain-most = the worst you can think of
ask-activity = How well can you do this: { $name }?
activity-least = cannot do it
activity-most = as before
# $score (Number): the last answer to the same question.
last-time = Last time: { $score }
undo-answer = Undo
rather-not-answer = I'd rather not answer

## Patient: how

before-you-begin = Before you start
precautions = Precautions
# $things: what an exercise needs, as a list: "a chair that does not slide and a pillow".
you-need = You need: { $things }.
equipment-chair = a chair that does not slide
equipment-table = a table
equipment-worktop = a worktop or another solid support at hip height
equipment-wall = a free stretch of wall
equipment-mat = a mat
equipment-pillow = a pillow
equipment-towel = a towel
equipment-cushion = a flat, firm seat cushion
equipment-foam = a thick soft cushion or a foam mat
equipment-sturdy-shoes = sturdy shoes that do not slip
equipment-bag = a bag with something light in it
equipment-light-weight = a light weight
equipment-band = an elastic exercise band
equipment-stick = a stick or a broom handle
equipment-step = a step that cannot tip
equipment-strap = a strap or a long towel
equipment-door = a door that stays shut
equipment-doorway = an open doorway
equipment-handrail = a handrail or another firm hold
equipment-hammer = a hammer
equipment-rubber-band = a wide rubber band
# Safety: above a list of signs.
signs-to-stop = Signs to stop at once
if-in-doubt = If you are not sure whether this is right for you, ask your clinic first.
read-start = I have read this. Start
# $change: what is different at this level, a sentence of the catalogue.
at-this-level = At this level: { $change }
purpose = What it is for
should-feel = What you should feel
should-not-feel = What you should not feel
mistakes = Common mistakes
# Buttons: the starting position and the steps are read aloud.
read-aloud = Read aloud
stop-reading = Stop reading
no-voice = This device has no voice to read this aloud with.
# $n (Number)
stop-above = Stop if pain goes above { $n } of 10.

## Patient: during an exercise. Read at arm's length: short.

get-ready = Get ready
hold = Hold
rest = Rest
change-sides = Rest, then change sides
paused = Paused
paused-asleep = Paused: the device went to sleep
when-ready = When you are ready
# The three parts of one repetition, shown and spoken in time with it.
beat-go = Go
beat-hold = Hold
beat-return = Return
# Instead of beat-go and beat-return, for an exercise in which the body or a part of it goes up.
beat-up = Up
beat-down = Down
ease-in = Ease into it
keep-stretch = Keep the stretch
# The four parts of one breath, shown in time with it. breath-stay stands after breathing in and after breathing out.
breathe-in = Breathe in
breathe-out = Breathe out
breath-stay = Stay
# Title while somebody moves at their own pace, without a tempo.
own-pace = At your own pace
# Title while minutes of walking, warmth or rest pass.
time-runs = The time is running
# The device may sleep while the minutes pass.
screen-may-be-off = You can switch the screen off. The time goes on.
# How hard it should feel, from 0 (not at all) to 10 (the hardest possible).
# $n (Number)
effort-aim = Effort aimed at: { $n } of 10.
# A button: one movement is done.
count-one = Count one
# Asked after a test: the number of movements that were completed, and the button that saves it.
how-many-complete = How many were complete?
how-many-what = Count only whole movements. None is an answer too.
save-number = Save this number
# Title while somebody moves on a beat that is heard.
move-on-beat = On the beat
# $n (Number), $of (Number)
round-of = Round { $n } of { $of }
# $n (Number), $of (Number)
next-round-of = Next: round { $n } of { $of }
# Asked once after movements of the head, with three answers. The last one opens the advice for dizziness.
dizzier-than-before = Are you dizzier than before you began?
stay-until-settled = Stay where you are until it has settled.
dizzy-not = No, not more than before
dizzy-settles = A little, and it is settling
dizzy-stays = Yes, and it stays
# A button: all movements asked for are done.
all-movements-done = All done
# A button for something done at once, such as a change of position.
done-now = I’ve done it
# $n (Number), $of (Number)
stretch-of = Stretch { $n } of { $of }
# $n (Number), $of (Number)
next-stretch-of = Next: stretch { $n } of { $of }
# $n (Number), $of (Number)
hold-of = Hold { $n } of { $of }
# $n (Number), $of (Number)
next-hold-of = Next: hold { $n } of { $of }
# $n (Number), $of (Number)
set-of = Set { $n } of { $of }
# $n (Number), $of (Number)
next-set-of = Next: set { $n } of { $of }
# $n (Number), $of (Number)
attempt-of = attempt { $n } of { $of }
# $n (Number), $of (Number)
part-of = { $n } of { $of }
# Below a large number.
# $of (Number)
of-count = of { $of }
halfway = Halfway
pause = Pause
resume = Resume
stop = Stop
more-rest = 30 more seconds
# Ends the rest early.
continue-now = Continue now
sound-on = Sound: on
sound-voice = Sound: with voice
sound-off = Sound: off
# A button: one repetition did not succeed. The next message is the button that undoes this.
repetition-failed = Couldn't do that one
repetition-failed-undo = Undo
done = Done
# Title when the person stopped before the end.
stopped-here = Stopped here
# $done (Number)
done-holds = { $of ->
        [one] { $done } of { $of } hold completed.
       *[other] { $done } of { $of } holds completed.
    }
# $done (Number)
done-stretches = { $of ->
        [one] { $done } of { $of } stretch completed.
       *[other] { $done } of { $of } stretches completed.
    }
# $done (Number)
done-minutes = { $of ->
        [one] { $done } of { $of } minute.
       *[other] { $done } of { $of } minutes.
    }
done-once = Done once.
not-done = Not done.
# A test in which repetitions are counted in a set time.
done-test = The whole test is done.
stopped-test = Stopped before the end: kept, but not as a result.
# $done (Number)
done-rounds = { $of ->
        [one] { $done } of { $of } round completed.
       *[other] { $done } of { $of } rounds completed.
    }
# The device slept during a walk or a rest; its minutes were counted by the clock.
done-unseen = { $n ->
        [one] The screen was off for { $n } minute of it, counted by the clock. If you stopped earlier, say so here.
       *[other] The screen was off for { $n } minutes of it, counted by the clock. If you stopped earlier, say so here.
    }
# $done (Number)
done-reps = { $of ->
        [one] { $done } of { $of } repetition done.
       *[other] { $done } of { $of } repetitions done.
    }
# $done (Number)
done-attempts = { $of ->
        [one] { $done } of { $of } attempt done.
       *[other] { $done } of { $of } attempts done.
    }
# Repetitions marked with that-failed; follows done-reps.
# $n (Number)
done-failed = { $n } could not be done.
# For screen readers: the list of holds, sets or attempts.
parts-label = Each part
part-held = held in full
# $s (Number), $of (Number)
part-held-partly = held { $s } of { $of } s
# The label of a number that can be made smaller; the button that saves it.
minutes-done = Minutes done
save-minutes = Save these minutes
# $n (Number), $of (Number)
part-minutes = { $n } of { $of } min
# $n (Number), $of (Number)
part-counted = { $n } of { $of }
# $n (Number), $s (Number)
part-tallied = { $n } in { $s } s
# $n (Number), $s (Number)
part-tallied-partly = { $n } by { $s } s, stopped early
part-interrupted = interrupted, not measured
part-not-done = not done
save-again = Save again
cannot-be-guided = This exercise cannot be guided because its dose does not fit it. Please tell your clinic.

## Patient: balance. Safety: support within reach, and what a touch of the screen does.

stand-on-left = Left leg
stand-on-right = Right leg
# Instead of a leg, for a stand on both feet.
stand-on-both = Both feet on the floor
support-near = A worktop or a sturdy chair is within reach. The floor is clear and dry.
phone-on-support = Lay the phone on it.
hand-over-phone = Keep one hand just above the screen. Touch the screen when your foot comes down.
# The next two instead of the last two on a device without a motion sensor, such as a computer.
device-beside-support = Have this device beside it, within reach.
hand-over-device = Keep one hand just above the keys or the screen. Press any key or touch the screen when your foot comes down.
# Instead of hand-over-phone and hand-over-device for a stand on both feet.
hand-over-phone-both = Keep one hand just above the screen. Touch the screen when you take a step or hold on.
hand-over-device-both = Keep one hand just above the keys or the screen. Press any key or touch the screen when you take a step or hold on.
start-count = Start countdown
when-ready-start = Nothing starts until you tap.
# $s (Number)
rest-for = Rest: { $s } s. You can continue earlier.
lift-at-tone = Lift your foot at the rising tone
touch-when-down = Touch anywhere when your foot comes down
# Instead of touch-when-down on a device without a motion sensor, such as a computer.
press-when-down = Press any key or touch the screen when your foot comes down
# Instead of lift-at-tone, touch-when-down and press-when-down for a stand on both feet.
begins-at-tone = Take your position. It begins at the rising tone.
touch-when-step = Touch anywhere when you take a step or hold on
press-when-step = Press any key or touch the screen when you take a step or hold on
# During the countdown.
touch-goes-back = Keep the support within reach. A touch goes back.
any-touch-ends-attempt = Hold on to the support if you need to, then touch the screen. That ends the attempt.
# The next two instead of touch-goes-back and any-touch-ends-attempt on a device without a motion sensor.
any-key-goes-back = Keep the support within reach. Any key or a touch goes back.
any-key-ends-attempt = Hold on to the support if you need to, then press any key or touch the screen. That ends the attempt.
attempt-over = Attempt over
# $s (Number)
last-attempt = Last attempt: { $s } s
# $s (Number)
seconds-short = { $s } s
# $s (Number)
seconds-target-reached = { $s } s, target reached
# $s (Number)
seconds-or-more = { $s } s or more
# Three figures for each leg. "Your usual" is the median.
best-today = Best today
# Instead of best-today where the person was asked afterwards when the foot touched: a memory is not a measured best.
longest-remembered = Longest, from memory
usual-today = Your usual today
usual-week = Your usual, last 7 days
usual-not-known = not known yet
one-attempt-varies = One attempt says little, because times vary from day to day. Your record shows how they change.
# $own (Number), $aim (Number)
usual-and-target = your usual this week: { $own } s; target { $aim } s
# $aim (Number)
target-only = target { $aim } s

## Patient: the phone during balance

where-phone = Where is the phone?
on-the-support = On the support
on-the-support-what = Keep one hand just above it. A touch ends the attempt.
at-the-breastbone = At the breastbone
at-the-breastbone-what = Held flat with one hand. Sway is measured. A touch ends the attempt.
in-a-pocket = In a pocket at the waist
in-a-pocket-what = Close to the body. Sway is measured. Questions come afterwards.
no-motion-sensor = This device has no motion sensor that can be read: the time is measured, sway is not.
sensor-not-allowed = The motion sensor is not allowed. Lay the phone on the support, or allow the sensor in the system's settings.
sensor-silent = The motion sensor gave no values in the last attempt. Its time comes from your touch alone.
phone-at-breastbone = Hold the phone flat against your breastbone, with the screen facing away from you.
other-hand-near = Keep the other hand just above the support. Touch the screen when your foot comes down.
phone-in-pocket = After you start, put the phone upright in a tight pocket at the waist, screen facing out.
hands-near = Arms as you were shown, support within reach. A sound starts and ends the attempt; then a question comes.
stand-until-sound = Stand until the sound
hold-asked-after = Hold on to the support if you need to. A question comes afterwards.
seems-touched = Your foot seems to have touched the floor. Touch the screen if it did.
# $s (Number)
ask-touched-at = Did your foot touch the floor after about { $s } s?
ask-touched = Did your foot touch the floor, or did you hold on?
ask-touched-else = Did it touch at another moment, or did you hold on?
ask-touched-when = After about how many seconds?
not-sure = Not sure
# $s (Number)
not-certain = not certain: it may have been { $s } s
# $s (Number)
not-certain-least = not certain: it may have been { $s } s or more
sway-title = Sway
sway-figures = What the sensor measured
# Names of the three figures, each before its number.
sway-side = side to side
sway-all-directions = all directions
sway-path = path per second
floor-touches = { $n ->
        [one] the foot touched the floor once
       *[other] the foot touched the floor { $n } times
    }
# Safety: no score of risk.
sway-own-only = Compare this only with your own figures, with the phone in the same place. It does not say how likely a fall is.
# $why: one of why-not-…
not-measured-because = Not measured: { $why }
why-not-sensor = the sensor gave no values
why-not-slow = the sensor is too slow, or left gaps
why-not-moved = the phone slipped or turned
why-not-short = the attempt was too short
why-not-quiet = the movement was smaller than the sensor can show
why-not-impossible = the sensor gave impossible values

## Patient: trouble. Safety: whole sentences with verbs, in this order.

what-is-wrong = What is wrong?
nothing-is-wrong = Nothing is wrong, go back
# Above the choices.
urgent-anyway = In an emergency, do not answer questions here. Call your local emergency number now.
during-which = During which exercise?
not-during-one = Not during an exercise
paused-title = What is paused
paused-plan = All exercises and reminders are paused for safety.
paused-standing = Everything that you do standing, and all balance exercises, are paused for safety. What you do sitting, kneeling or lying continues.
paused-nothing = Nothing is paused.
paused-until-well = All exercises and reminders are paused until you say that you are well again.
paused-today = This exercise is paused for today. The others continue.
# After a near fall at the easiest level.
hand-on-support = Keep one hand on the support until your next card.
other-device-unaware = Another device of yours does not know of this. Keep to it there as well.
# Above the clinic's telephone number, in large type.
call-your-clinic = Your clinic’s number
well-again = I am well again
# Title of the page that says what will be paused before anything is recorded.
before-recorded = Before this is recorded
# On that page: what recording it does. Nothing is paused before.
would-pause-plan = If you record it, all exercises and reminders are paused until your clinic gives you a new card.
would-pause-until-well = If you record it, all exercises and reminders are paused until you say that you are well again.
would-pause-standing = If you record it, everything that you do standing, and all balance exercises, are paused until your clinic gives you a new card. What you do sitting, kneeling or lying continues.
would-pause-exercise = If you record it, this exercise is paused until your clinic gives you a new card. The others continue.
would-ease = If you record it, nothing is paused. This exercise becomes one level easier until your next card.
would-pause-nothing = If you record it, nothing is paused.
record-it = Record it
choose-what-applies = Choose everything that applies
# Of a fall.
blow-to-the-head = I hit my head
thins-the-blood = I take a medicine that thins the blood
could-not-get-up = I could not get up again on my own
# Of feeling ill.
sweats-or-weight-loss = I also sweat at night, or have lost weight without a reason
# Safety: a bleed in the head.
fell-check-today = A blow to the head, or a fall while you take a medicine that thins the blood, needs a medical check today, even if you feel well.
# Safety: an infection or a tumour of the spine.
unwell-call-clinic = Call your clinic today: sweating at night or losing weight without a reason must be looked into.
# A button on the page about pain above the limit.
change-answer = That was a mistake: change the number
eased-one-level = Nothing is paused. This exercise becomes one level easier until your next card. It is good that you said so.
paused-exercise = This exercise is paused for safety. The others continue.
noted-for-visit = This is recorded, and your clinic will see it in your next summary. A summary is not a message: nobody reads it before the visit.
no-diagnosis = This program does not diagnose. What your clinic or the emergency services tell you comes first.
stop-sit-down = Stop and sit down.
stop-now = Stop now.
call-emergency = Call your local emergency number now, or ask somebody to call.
not-alone = Do not stay alone, and do not drive yourself.
nerve-today = Contact your clinic or an urgent care service today.
# Shown before nerve-today.
nerve-sudden = If it came suddenly, is getting worse, or you also have trouble speaking or seeing, call your local emergency number now.
emergency-department-now = Go to an emergency department now, even if it does not hurt.
cannot-get-there = If you cannot get there, call your local emergency number.
stay-down = Stay down until you feel steady. Then get up slowly, holding on to the support.
# Shown before stay-down.
fell-stay-and-call = If you hit your head, cannot get up, or something may be broken, stay where you are and call your local emergency number now.
tell-clinic-fall = Contact your clinic before you practise balance again, even if nothing hurts.
# After a near fall that pauses nothing; the exercise has become one level easier.
near-fall-easier = Practise balance only when you feel steady again: at the easier level, with a hand on the support. If it happens again, stop and call your clinic.
# After a near fall that pauses nothing, and was not during an exercise of the plan.
near-fall-support = Practise balance only when you feel steady again, with a hand on the support. If it happens again, stop and call your clinic.
sit-and-rest = Sit down and rest until you feel steady.
stop-this-one = Stop this exercise. Rest in a comfortable position.
contact-clinic = Contact your clinic before you do it again.
limb-urgent = Go to an emergency department or an urgent care service now. Do not walk on that leg or use that arm more than you must.
dizzy-sit = Stop. Sit or lie down until it has passed completely.
dizzy-urgent = If it does not pass, or you also have a headache, chest pain, or trouble speaking, seeing or walking, call your local emergency number now.
unwell-rest = Stop and rest. Do not exercise while you are ill.
unwell-lasting = If you also sweat at night or lose weight without a reason, call your clinic today.
unwell-again = When you are well again, say so here: your exercises then go on.
stop-for-today = Stop this exercise for today. Rest in a comfortable position.
above-limit-again = If it is above the limit again next time, the exercise is paused until your next card.
# $score (Number), $limit (Number)
above-the-limit = You rated the pain { $score }. Your limit for this exercise is { $limit }.
severe-urgent = If it is severe, does not ease, or comes with new weakness or numbness, call your local emergency number or go to an urgent care service now.

## Patient: card

add-card-title = Add your plan card
add-card-what = Your clinic gives it to you: a code on paper or on a screen, a file, or a text.
card-file = Card picture or file
card-file-what = A sharp, straight photo of the whole code, or the file that you were sent.
card-text = Card text
open-card = Open card
on-this-card = What is on this card
security-code-of-card = Security code: { $code }
# Safety of data: the first card of a clinic.
# Safety: somebody else may use the clinic's name.
other-keys = You already have a card from a clinic of this name, but this one was signed with another key. Add it only if the clinic tells you that this is its security code.
# Safety: the security code has changed.
renewed-keys = The clinic has renewed its keys, and its earlier key confirms this card: compare the new security code with the one on the paper or on the clinic's screen.
new-clinic = Compare it with the code on the paper or on the clinic's screen. From now on only this clinic can change this plan.
known-clinic = You know this clinic from an earlier card.
# $name: an exercise that the clinic wrote itself.
older-exercise = This card has an earlier version of “{ $name }” than you have now. From now on the one on this card is used. If you are not sure why, ask your clinic.
# $old (Number), $new (Number)
replaces = It replaces version { $old } with version { $new }. What you have done so far is kept.
visit-on = Next visit: { $date }
for-complaint = For: { $name }
fit-your-day = Fit it to your day: { $name }
from = From
to = To
# $n (Number)
time-number = Time { $n }
times-a-day = { $n ->
        [one] once a day
       *[other] { $n } times a day
    }
times-differ = Choose a different time for each.
who-photographs = Anyone who photographs this card can use it as you can. Keep it to yourself.
start-plan = Start this plan
use-another-card = Use another card
add-new-card = Add a new card
reminders-ahead = At these times you get a short reminder that says nothing medical. Your system may ask whether you allow notifications.
camera-open = Scan the code with the camera
camera-close = Close the camera
camera-how = Hold the camera straight and close, with the whole code in the picture. It scans by itself.
# For screen readers.
camera-sees = What the camera sees
camera-refused = The camera could not be opened. Choose a picture of the code, or type its text.
camera-unknown = There is no camera here to scan with. Choose a picture of the code, or type its text.
sample-look = Look around with a sample plan
sample-what = No card yet? See how a plan works and try an exercise. Nothing in the sample is saved.
# A line at the top while the sample is open.
sample-is = Sample plan: nothing is saved.
sample-exit = Exit sample
sample-clinic = Sample clinic
# What the sample plan says of an invented patient: two complaints, one activity.
sample-back = upper back
sample-ankle = ankle gives way
sample-meeting = sit through a long meeting

## Patient: plan

# A button, and the title of the page that it opens.
change-times = Change times
# For screen readers.
change-times-of = Change times: { $name }
change-times-what = Move the times so that they suit your day. The new times start tomorrow.
save-times = Save times
times-over-midnight = Times after midnight cannot be saved here. Ask your clinic for them.
# $day: weekday-date-inline. $times: a schedule, such as "every day, at 08:00 and 19:00".
times-from = From { $day }: { $times }
being-treated = What is being treated
my-activities = Activities you named
baselines = Seconds on one leg at the visit
# $n (Number)
pain-then = pain { $n } of 10
# $n (Number)
of-ten = { $n } of 10
# Of the plan.
# $n (Number)
plan-version = Version { $n }.

## Patient: record

done-when = Sessions done, by time of day
# $k (Number), $n (Number)
done-count = { $k } of { $n } done.
# The same with sessions that were done in part. $k (Number), $n (Number), $partly (Number)
done-count-partly = { $k } of { $n } done in full, { $partly } in part.
# Below the exercises, where one was never done on this device although others were.
record-other-device = What you did on another device is not counted here.
balance-title = Balance
pain-title = Pain, 0 to 10
activities-title = Activities, 0 to 10
# Said once for all charts that do not have enough data.
record-few-data = Where no change is stated, there is not enough data yet. That takes a week or more.
# The first line of the record.
# $k (Number)
record-last-14-days = { $n ->
        [one] In the last 14 days you did { $k } of { $n } session, at least in part.
       *[other] In the last 14 days you did { $k } of { $n } sessions, at least in part.
    }
record-pain-lower = Your pain in the morning is lower than at first ({ $name }).
record-pain-higher = Your pain in the morning is higher than at first ({ $name }). Talk about it at your visit.
# A button, and the title of the page that it opens.
then-and-now = Then and now
then-and-now-what = Your first week beside the last seven days. Half of the values were higher, half lower.
# The heads of two columns.
first-week = First week
this-week = Last 7 days
then-and-now-mornings = Pain in the morning: { $name }
# On Now, the day before the visit and on its day.
visit-is-today = Your visit is today
visit-is-tomorrow = Your visit is tomorrow
prepare-summary = Prepare the summary
nothing-yet = Nothing is recorded yet. The first exercise you do will show here.

## Patient: visit

for-the-visit = For the visit
visit-what = An encrypted file that only your clinic can open. You choose the period, and you see what is in it.
shared-title = What you share
not-shared = Not shared: your name, your location, which device you use, and the exact time of what you did (only the hour of each session, and for each week how long after reminders you started).
shared-days = { $n ->
        [one] { $n } day: from { $from } to { $until }, counted from the plan's start
       *[other] { $n } days: from { $from } to { $until }, counted from the plan's start
    }
shared-sessions = { $n ->
        [one] { $item }: how { $n } session went, with the reason if you skipped it
       *[other] { $item }: how each of { $n } sessions went, with the reasons for those you skipped
    }
shared-exercises-done = { $n ->
        [one] { $n } exercise that you did: how much of the dose, and the hour of the day
       *[other] { $n } exercises that you did: how much of the dose, and the hour of the day
    }
shared-attempts = { $n ->
        [one] { $n } balance attempt with its seconds
       *[other] { $n } balance attempts with their seconds
    }
shared-pain = { $n ->
        [one] { $n } rating of pain in the morning
       *[other] { $n } ratings of pain in the morning
    }
shared-during = { $n ->
        [one] { $n } rating of pain while exercising
       *[other] { $n } ratings of pain while exercising
    }
shared-well-again = { $n ->
        [one] That you were well again
       *[other] That you were well again, { $n } times
    }
shared-timing = For each time: whether you began more than an hour late, or on another day
shared-settled = { $n ->
        [one] { $n } answer about the morning after
       *[other] { $n } answers about the morning after
    }
shared-ratings = { $n ->
        [one] { $n } rating of your activities
       *[other] { $n } ratings of your activities
    }
shared-alarms = Something was wrong on { $day }: { $what }
shared-delays = For each week: how long after the reminder you started
shared-corrections = { $n ->
        [one] One entry that you corrected
       *[other] { $n } entries that you corrected
    }
# What was recorded then, sessions and ratings.
shared-wrong-clock = { $n ->
        [one] One entry made while the clock of this device was wrong
       *[other] { $n } entries made while the clock of this device was wrong
    }
shared-card = The day on which you added a card, and the times you agreed on
note-optional = Note for the clinic (optional)
save-encrypted = Save encrypted summary
# Title after saving.
saved-title = Saved
saved-what = Take this file to the visit or send it to your clinic. Nobody else can read it.

## Patient: the summary as codes

frames-show = Show it as codes
frames-title = The summary as a code
frames-what = { $n ->
        [one] The clinic photographs this code. Turn up the brightness of your screen.
       *[other] The clinic photographs each code, in any order. Turn up the brightness of your screen.
    }
# $n (Number), $of (Number)
frame-of = Code { $n } of { $of }
frame-next = Next code
frame-previous = Previous code
# A button: changes the code every few seconds. The next message stops that.
frames-in-turn = Show them in turn
frames-stay = Stay on this code

## Patient: correcting

correct-title = Correct an entry
correct-what = Tap the entry to correct. What you entered first stays in the record on this device. Your clinic sees the corrected entry, and that it was corrected.
correct-none = { $n ->
        [one] There is nothing from the last day that can be corrected.
       *[other] There is nothing from the last { $n } days that can be corrected.
    }
correct-open = Was something entered by mistake?
correct-delete = Delete: it was a mistake
correct-not-done = I did not do this
correct-change = Change it
correct-undo = Back to what I entered first
correct-alarm = Note that it was a mistake
correct-earlier = Show earlier days
correct-days = Save these days
# Safety: a correction never restarts anything.
correct-alarm-noted = Noted as a mistake. Anything paused stays paused.
corrected-to = Now: { $now }.
corrected-deleted = Deleted.
corrected-not-done = Not done.
# Entries in a list. $of: a complaint or an activity. $item: an exercise.
# $score (Number)
said-pain = Pain, { $of }: { $score } of 10
# $score (Number)
said-pain-after = Pain, { $of }, after { $item }: { $score } of 10
# $score (Number)
said-morning = Pain this morning, { $of }: { $score } of 10
# $score (Number)
said-during = Pain while doing { $item }: { $score } of 10
said-settled = { $of }: settled by the morning
said-not-settled = { $of }: not settled by the morning
# $score (Number)
said-rated = { $of }: { $score } of 10
said-skipped = { $item }, { $day }: skipped ({ $reason })
said-days-off = Days off from { $from } to { $until }: { $why }
# $done (Number), $of (Number)
said-run = { $item }: { $done } of { $of } done
# No part is complete, though some may have been begun. $of (Number)
said-run-none-complete = { $item }: 0 of { $of } done in full
said-trouble = Something was wrong: { $what }
said-trouble-during = Something was wrong during { $item }: { $what }

## Patient: reminders

reminders-title = Reminders
reminders-what = Only one reminder waits at a time, and it goes away when its time has passed. If you acted on the last one, the next makes no sound.
# Safety.
reminders-not-driving = Do not follow a reminder while you drive, ride, climb or use machines. Do the session later.
reminders-may-fail = A reminder may not come if the device is off, asleep or saving battery, or if notifications are blocked. Do not rely on reminders alone.
reminders-battery = If reminders come late or not at all, allow Carryover to run in the background in the system's battery settings.
no-reminder-hours-title = Hours without reminders, every day
no-reminder-hours-what = No reminder comes during these hours. A reminder that falls into them comes at their end, if it is not too late by then.
no-reminder-hours-span = { $from } to { $to }
no-reminder-hours-add = Add hours
# Also before a span, for screen readers: Remove: 12:00 to 13:00.
no-reminder-hours-remove = Remove
no-reminder-hours-save = Save these hours
no-reminder-hours-none = None.
meeting-title = In a meeting
meeting-what = No reminder comes until the meeting is over. It ends by itself.
meeting-minutes = { $n ->
        [one] { $n } minute
       *[other] { $n } minutes
    }
meeting-hours = { $n ->
        [one] { $n } hour
       *[other] { $n } hours
    }
meeting-until = In a meeting until { $time }.
meeting-end = End meeting
# Before three buttons with a time, such as "30 minutes".
meeting-now = In a meeting? No reminders for:
no-reminder-until = No reminder until { $time }.
no-reminder-all-day = Your hours without reminders fill the whole day: no reminder comes.
# $day: weekday-date.
next-reminder-at = Next reminder: { $day }, { $time }.
no-reminder = No reminder in the next two weeks.

## Patient: own data

mine-title = Your data
mine-save = Export my data
# $number: 16 letters and digits.
mine-number = Number of this device: { $number }. If you use several devices, your clinic may ask for it to tell them apart.
mine-what = Your plans and everything you recorded, as text and as tables, in a new folder. Anyone who gets the folder can read it.
calendar-title = Another calendar
calendar-save = Save the times for a calendar
calendar-what = A file for a phone's calendar, to remind you on a device without Carryover. It says nothing about exercises, and nothing comes back from it. Try one reminder first: some calendars ignore reminders from files.
# An optional code for the window.
screen-lock-title = Screen lock
screen-lock-what = With a code, this window shows nothing until you enter it: when Carryover starts, after five minutes without use, and when you lock it. An exercise in progress is not interrupted. Reminders still come.
screen-lock-limits = It keeps people away who pass by. It does not encrypt your record: anyone who can use your account on this device can still read the files. Use the lock of the device as well.
screen-lock-code = Code
screen-lock-code-again = Code again
screen-lock-code-hint = 4 characters or more.
screen-lock-differs = The two codes are not the same.
screen-lock-begin = Lock with this code
screen-lock-on = The window asks for a code.
screen-lock-off = The window asks for no code.
screen-lock-now = Lock now
screen-lock-present = Your present code
screen-lock-end = Remove the lock
screen-lock-forgotten = If you forget it, ask the person who looks after this device; nothing is lost.
screen-locked-title = Locked
screen-locked-open = Open
screen-locked-emergency = In an emergency, call your local emergency number. You do not need Carryover for that.
erase-title = Erase everything
erase-what = This erases your plans, everything you recorded and your settings from this device for good. Files that you saved stay, and so does what your clinic already has.
erase-first = If you want to keep your data, export it first. To start again, you need a card from your clinic.
erase-ask = Erase everything, for good?
erase-sure = Yes, erase everything
erase-keep = No, keep it
erased = Everything is erased.

## Patient: while the window is closed

stay-title = While the window is closed
stay-at-login = Open when I log in to this computer
stay-at-login-what = The window stays hidden, so that reminders come.
stay-in-tray = While you have a plan, Carryover stays in the tray when you close the window, so that reminders come. To end it, choose Quit there.
# Lines of the tray's menu: others may see them, nothing medical.
tray-meeting = { $n ->
        [one] In a meeting for { $n } hour
       *[other] In a meeting for { $n } hours
    }
tray-due = Due now, until { $time }.
tray-next = Next at { $time }.

left-side = left side
right-side = right side
reminds-at = reminder at { $time }
extra-plainly = { $n ->
        [one] { $n } extra session.
       *[other] { $n } extra sessions.
    }
# Beside an entry.
entry-clock-ahead = The clock of this device was ahead then.
entry-clock-behind = The clock of this device was behind then.
record-wrong-clock = { $n ->
        [one] One entry was made while the clock of this device was wrong. It is kept, but counts for no day.
       *[other] { $n } entries were made while the clock of this device was wrong. They are kept, but count for no day.
    }
clock-behind = The last entry here is from { $day }, but this device says that today is { $today }. Check the device's date. Nothing is lost.
quiet-added = Saved: no reminders from { $span }.
quiet-taken-out = Removed: { $span }.
stay-ends = This desktop has no tray. When you close the window, Carryover asks whether to go on in the background, so that reminders come.
closing-title = Close and stop reminders?
closing-what = This desktop has no tray for Carryover. In the background, with its window minimised, it still reminds you. If you close it, no reminder comes until you open it again.
closing-keep = Keep it in the background
closing-end = Close and stop reminders
