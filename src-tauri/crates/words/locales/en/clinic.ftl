## Clinic: setting up and unlocking

clinic-setup-title = Set up your clinic
clinic-setup-what = This clinic signs its plan cards, and only this clinic can open its patients' summaries. Its keys stay on this computer, protected by a passphrase.
clinic-name = Clinic's name
clinic-name-hint = Patients see it on their screen.
clinic-phone = Telephone number (optional)
clinic-phone-hint = Printed on each card and shown large wherever patients are told to contact you.
# A button beside the number, and where there is none yet.
clinic-phone-change = Change number
clinic-phone-add = Add a telephone number
clinic-phone-save = Save number
passphrase = Passphrase
passphrase-again = Passphrase again
passphrase-hint = 12 characters or more. Several words are good.
passphrase-show = Show the passphrase
passphrase-differs = The two passphrases are not the same.
passphrase-lost = A lost passphrase cannot be recovered. Without it, or keys that you have saved, nobody can open this clinic's plans and summaries again, not even us. Write it down and lock it away.
clinic-start = Set up the clinic
clinic-unlock-title = Unlock this clinic
clinic-unlock-what = Its patients, plans and summaries stay encrypted until you do.
clinic-unlock = Unlock
clinic-opening = This takes a moment.
security-code = Security code
security-code-what = The patient's screen shows the same code when the card is added.

## Clinic: patients

patients = Patients
patients-none = No patients yet. Add one with a code that you choose, such as the number in your records.
patients-find = Find by code or name
patient-add = Add patient
patient-code = Code
patient-code-hint = 1 to 12 letters, digits or hyphens.
patient-name = Name (optional)
patient-name-hint = Stays in this clinic's data. It is never on a card or in a summary.
receive-summaries = Receive summaries
receive-what = Choose the files that patients saved for the visit, or photos of the codes on their screens: as many as you like, or a whole folder.
receive-drop = You can also drop files or a folder on this window.
receive-drop-here = Drop them to receive them.
choose-files = Choose files
choose-folder = Choose a folder
# How far it is: the number of files that are done, and of all.
# $done (Number)
# $of (Number)
receive-progress = { $done } of { $of }
# How far it is, while files are read ahead of what is done with them: the number of files that are done, of all, and that were read.
# $done (Number)
# $of (Number)
# $read (Number)
receive-progress-read = { $done } of { $of } · read: { $read }
receive-stop = Stop receiving
# How many summaries were new, known already, and refused.
# $new (Number)
# $known (Number)
# $refused (Number)
receive-counts = New: { $new } · known already: { $known } · refused: { $refused }
receive-stopped = { $n ->
        [one] Stopped. { $n } file was not touched. What was received is kept.
       *[other] Stopped. { $n } files were not touched. What was received is kept.
    }
# What else is in a folder that was received.
receive-passed-over = { $n ->
        [one] { $n } other file or folder was left alone. From a folder, and four levels down in it, files that end in .age, .png, .jpg or .jpeg are received.
       *[other] { $n } other files or folders were left alone. From a folder, and four levels down in it, files that end in .age, .png, .jpg or .jpeg are received.
    }
receive-nothing = There is nothing to receive in it. From a folder, and four levels down in it, files that end in .age, .png, .jpg or .jpeg are received.
receive-more = Show more
# In the window, what was done with a summary. $code: the patient's code.
received-new = { $days ->
        [one] { $code }: new summary, { $days } new day.
       *[other] { $code }: new summary, { $days } new days.
    }
received-filled = { $days ->
        [one] { $code }: { $days } day completed.
       *[other] { $code }: { $days } days completed.
    }
received-filled-other = { $code }: no new day. A note or other details were added.
received-known = { $code }: nothing new. Nothing was changed.
# Files that were refused for the same reason, and the reason with what to do.
received-refused = { $n ->
        [one] { $n } file: { $refusal }
       *[other] { $n } files: { $refusal }
    }
# The next three: the date of the next visit, in a line of the list.
list-visit-on = visit on { $date }
list-visit-today = visit today
list-visit-was = visit was due on { $date }
plan-none = no plan yet
summary-until = summary up to { $date }
summary-none = no summary yet
alarms-open = { $n ->
        [one] { $n } alarm not cleared
       *[other] { $n } alarms not cleared
    }

record-damaged = record damaged
# What is wrong with the store: above the list of patients, and in the terminal.
store-damaged-records = { $n ->
        [one] { $n } patient's record is damaged and is not in the list: restore a backup, or ask whoever looks after this computer.
       *[other] { $n } patients' records are damaged and are not in the list: restore a backup, or ask whoever looks after this computer.
    }
store-changed-outside = { $rows ->
        [one] { $rows } row of the clinic's store was changed from outside. Restore a backup.
       *[other] { $rows } rows of the clinic's store were changed from outside. Restore a backup.
    }
# The same with the codes of the patients concerned.
store-changed-outside-of = { $rows ->
        [one] { $rows } row of the clinic's store was changed from outside. It concerns: { $codes }. Restore a backup.
       *[other] { $rows } rows of the clinic's store were changed from outside. They concern: { $codes }. Restore a backup.
    }
store-keys-older = This clinic is unlocked with keys that were saved before it renewed its keys on { $day }. Summaries made with newer cards do not open. Use the keys that were saved last: carryover clinic passphrase --from-keys FILE.
store-manifest-changed = The list of this store's rows was removed or changed from outside, so rows that are missing may go unnoticed. Restore a backup.
# After a patient was removed.
patient-removed = { $code } is removed: the name, every plan and every summary, also from the automatic backups. Files and backups that you saved elsewhere are unchanged.
patient-removed-here = { $code } is removed: the name, every plan and every summary. Backups that were made earlier still hold this patient.
patient-remove = Remove patient
patient-remove-title = Remove { $code }?
patient-remove-what = The name, every plan, draft and summary of { $code } are erased from this clinic's data. This cannot be undone. Card files that you saved stay where they are, and the patient's own device keeps its record.
patient-remove-law = Check first how long local rules require you to keep records.
patient-remove-type = Type { $code } to confirm
patient-remove-backups = Also erase the automatic backups and earlier copies of the data, which hold this patient
patient-remove-backups-hint = A new backup is made first. Backups that you saved elsewhere are not changed.
patient-remove-keep = Keep this patient
# $device: the name of a device, 16 characters.
receipt-new-device = It comes from a new device (number on the device: { $device }).

## Clinic: plan

plan-first = First plan
plan-next = Next plan
# Button that opens the review of a patient.
plan-review = Review
# Button on the review: the newest card once more, as when it was issued.
show-card-again = Show the card again
# $revision (Number)
plan-of = Plan { $revision } for { $who }
# $revision (Number)
plan-based-on = Based on plan { $revision }.
# $takes: about-minutes-inline.
full-day-line = { $n ->
        [one] A full day: { $n } session, { $takes }.
       *[other] A full day: { $n } sessions, { $takes }.
    }
plan-empty = The plan is empty. Tap an exercise to add it with its usual dose.
proposals-accept = Accept all proposals
proposed = proposed
stop-removes-it = removes it from this plan
remove = Remove
move-up = Up
move-down = Down
more-of-item = Times, limits, note
catalogue = Exercises
catalogue-find = Find an exercise
catalogue-add = Add { $name }
in-plan = in the plan
region-neck-upper-back = Neck and upper back
region-shoulder = Shoulder
region-wrist-hand = Wrist and hand
region-low-back = Lower back
region-hip = Hip
region-knee = Knee
region-ankle = Ankle and foot
level = Level
side-label = Side
dose-holds = Holds
dose-hold-seconds = Seconds each
dose-rest = Rest, seconds
dose-trials = Attempts
dose-target = Target, seconds
dose-cap = Up to, seconds
dose-count-seconds = Seconds to count in
dose-seconds-each = Seconds each
dose-beats = Beats a minute
dose-sets = Sets
dose-repetitions = Repetitions
dose-stretches = Stretches
dose-stretch-seconds = Seconds each
dose-movements = Movements
dose-minutes = Minutes
dose-effort = Effort, 0 to 10
dose-quota-minutes = Minutes at the start
dose-quota-times = Times at the start
dose-quota-step = Added at each step
dose-quota-days = Days between steps
dose-quota-goal = Goal, grows no further
dose-breath-in = Breathing in, seconds
dose-breath-full = Pause after it, seconds
dose-breath-out = Breathing out, seconds
dose-breath-empty = Pause after it, seconds
dose-tempo-concentric = Concentric, seconds
dose-tempo-hold = Hold, seconds
dose-tempo-eccentric = Eccentric, seconds
# The dose as one sentence in the plan editor; the numbers in it can be pressed. $holds, $seconds, $pause and their like are the
# numbers as shown; $n, $s, $rest, $of the same numbers, to choose the form by.
dose-sentence-hold = { $n ->
        [one] { $holds } hold
       *[other] { $holds } holds
    } of { $s ->
        [one] { $seconds } second
       *[other] { $seconds } seconds
    }, with { $rest ->
        [one] { $pause } second
       *[other] { $pause } seconds
    } of rest in between
dose-sentence-balance = { $n ->
        [one] { $attempts } attempt
       *[other] { $attempts } attempts
    } of up to { $s ->
        [one] { $seconds } second
       *[other] { $seconds } seconds
    }, with { $rest ->
        [one] { $pause } second
       *[other] { $pause } seconds
    } of rest in between
dose-sentence-reps = { $of ->
        [one] { $sets } set
       *[other] { $sets } sets
    } of { $n ->
        [one] { $repetitions } repetition
       *[other] { $repetitions } repetitions
    }, with { $rest ->
        [one] { $pause } second
       *[other] { $pause } seconds
    } of rest in between
dose-sentence-stretch = { $n ->
        [one] { $stretches } stretch
       *[other] { $stretches } stretches
    } of { $s ->
        [one] { $seconds } second
       *[other] { $seconds } seconds
    }, with { $rest ->
        [one] { $pause } second
       *[other] { $pause } seconds
    } of rest in between
dose-sentence-move = { $n ->
        [one] { $movements } movement
       *[other] { $movements } movements
    } at the patient’s own pace
# $effort: from 0 (not at all) to 10 (the hardest possible).
dose-sentence-go = { $n ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    } at effort { $effort } of 10
dose-sentence-minutes = { $n ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    }
# Graded activity: the amount grows by $step every $days days.
dose-sentence-quota = { $n ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    }, { $step } more every { $d ->
        [one] { $days } day
       *[other] { $days } days
    }, up to { $goal }, whatever the pain was
dose-sentence-quota-times = { $n ->
        [one] { $times } time
       *[other] { $times } times
    }, { $step } more every { $d ->
        [one] { $days } day
       *[other] { $days } days
    }, up to { $goal }, whatever the pain was
# Seconds of the four parts of a breath.
dose-sentence-pace = Each breath: { $inhale } s in, { $full } s pause, { $exhale } s out, { $empty } s pause
dose-sentence-prompt = Once, without a dose
dose-sentence-count = As many complete movements as possible in { $seconds } seconds
dose-sentence-beat = { $n ->
        [one] { $rounds } round
       *[other] { $rounds } rounds
    } of { $s ->
        [one] { $seconds } second
       *[other] { $seconds } seconds
    } at { $beats } beats a minute, with { $rest ->
        [one] { $pause } second
       *[other] { $pause } seconds
    } of rest in between
# The tempo of a repetition: muscles shorten, hold, lengthen.
dose-sentence-tempo = Each repetition: { $out ->
        [one] { $concentric } second concentric
       *[other] { $concentric } seconds concentric
    }, { $stay ->
        [one] { $hold } second hold
       *[other] { $hold } seconds hold
    }, { $back ->
        [one] { $eccentric } second eccentric
       *[other] { $eccentric } seconds eccentric
    }
# For screen readers: the sentence as a group.
dose-label = Dose
# For screen readers, on the minus and plus buttons of a number. $what: the number's label.
step-less = { $what }: less
step-more = { $what }: more
when = When
when-every = At regular intervals
when-at = At set times
when-needed = As needed, without reminders
every-label = Every
# $n (Number)
every-option = { $n } minutes
from-label = From
to-label = To
times-label = Times
times-hint = Such as 8:00, 13:00, 18:00.
times-bad = These times cannot be read. Write them like 8:00, 13:00, 18:00.
days-label = Days
# A choice: how the days are stated. The next three are what is chosen from.
days-how = On which days
days-on-weekdays = On days of the week
days-every-nth = Every so many days
# The patient chooses the days.
days-times-a-week = So many times a week
# A choice next to the one above: of every-days or times-in-a-week.
how-often = How often
# $n (Number)
times-in-a-week = { $n ->
        [one] once a week
       *[other] { $n } times a week
    }
# What it is done against: a choice.
load-label = Load
load-none = none
load-kilograms = a weight
# Below a choice of bands; no colours are told.
load-hint = Makers differ in what they call light or strong: try the band together.
kilograms-label = Kilograms
effort-label = Effort aimed at, 0 to 10
effort-none = none
helper-tick = Only with somebody beside the patient
# The days from which to which an exercise is to be done: two choices, each with a field for another day, which has
# the labels that end in "as a date".
phase-first = First day
phase-last = Last day
phase-first-date = First day, as a date
phase-last-date = Last day, as a date
phase-from-start = the beginning
phase-until-visit = the next visit
phase-other-day = another day
# A choice: the first day of a week of the plan, and the last one.
# $n (Number)
phase-week-from = week { $n }, { $date }
# $n (Number)
phase-week-until = end of week { $n }, { $date }
pain-limit = Pain limit
# Safety: says exactly what happens.
pain-limit-hint = The patient is asked to stop if pain rises above this. A rating above it is a reason under “What next”.
# A box to tick: the patient may take the next step alone.
may-step = The patient may take the next step alone
may-step-hint = The same rules apply, with at most one step a week. Otherwise only you change the plan.
for-complaint-label = For complaint
for-no-complaint = no particular complaint
note-label = Note to the patient
# $n (Number), $most (Number)
note-count = { $n } of { $most } characters
complaints = Complaints
complaint-add = Add complaint
complaint-name = What hurts
side-none = no side
pain-today = Pain today
not-asked = not asked
activities = Activities that the patient named
activity-add = Add activity
activity-name = Hard to do, in the patient's words
rating-today = Today, 0 to 10
balance-at-home = Balance at home
# The three parts below it: age, what the patient does not have, seconds on one leg.
balance-at-home-what = Unsupervised practice needs all three parts. Local rules and your own judgement come first.
age-band = Age group
age-under18 = under 18
# $from (Number), $to (Number)
age-between = { $from } to { $to }
age-from80 = 80 and over
age-none = choose
# Below the age group, where it is under 18.
age-under18-what = Agree with a parent or guardian who helps with the exercises and who answers the questions.
# Safety: a tick means that it was considered and is absent. Above the list of risk-…
absent-title = Tick only what the patient does NOT have
# A button below the list of risks on a follow-up, and the line beside it.
absent-still-true = Still true today
absent-confirmed-on = Last confirmed on { $day }
absent-confirmed-today = Confirmed today
stance-today = Seconds on one leg today, eyes open, firm floor
stance-stopped-by-clinician = I stopped it; the foot did not touch
# $s (Number)
stance-earlier = earlier: { $s } s
aftercare = For the first two days
aftercare-own = A line of your own
next-visit = Next visit
in-weeks = { $n ->
        [one] { $n } week
       *[other] { $n } weeks
    }
date-label = Date
alarms-to-clear = Alarms to clear
alarm-clear = Clear it with this card
alarm-clear-what = While an alarm is not cleared, what it paused stays paused on the patient's device.
# Beside the button that issues a card. $name: an exercise that is to be talked about.
nothing-chosen = { $name }: nothing is chosen, so it stays as it is.
alarms-stay = { $n ->
        [one] { $n } alarm is not cleared: what it paused or eased stays so with this card.
       *[other] { $n } alarms are not cleared: what they paused or eased stays so with this card.
    }
issue-card = Issue plan card
issue-shortcut = Ctrl and Enter
issue-missing = Still missing
issue-ready = Ready to issue.
# Under "Ready to issue", if the card does not fit into one code. $n (Number): 2 to 8.
issue-as-codes = This card does not fit into one code. The patient reads { $n } codes in turn, or you hand it over as a file or as text.
# The same, if it does not fit into several codes either.
issue-as-file = This card is too large for codes. You will hand it over as a file or as text.
issue-too-large = The exercises of your own in this plan are too large together for one card. Take one of them out, or shorten their texts.
# On a folded section that is empty.
fold-none = none
# Lines of aftercare in a folded section.
fold-lines = { $n ->
        [one] { $n } line
       *[other] { $n } lines
    }

## Clinic: what a plan lacks, shown at the exercise or after its name

problem-unknown = This program's catalogue does not have this version of the exercise.
problem-level = Choose a level.
problem-dose = The dose is out of range.
# $minutes (Number)
problem-too-much-work = More than { $minutes } minutes on one side at a time.
problem-side = Choose a side.
problem-schedule = Choose at least one day and one time.
problem-load = An exercise of this kind has no load, or says its effort in the dose.
problem-phase = Its days must lie within the plan, the last one not before the first.
problem-overlap = The same exercise is already in the plan on some of these days. Let one begin after the other has ended.
problem-once-a-day = On days that the patient chooses it is done once: give one time, 3:00 or later.
problem-complaint-gone = It is for a complaint that is no longer in the plan.
problem-stance = Enter today's seconds on one leg for each prescribed side.
problem-stance-short = Less than 5 seconds with eyes open: not for unsupervised practice.
problem-gate = A softer surface or closed eyes are not allowed until 30 s is reached with eyes open on a firm floor, today and at an earlier visit.
problem-soft-closed = From the age of 65, a soft surface with closed eyes is not allowed unsupervised.
problem-ticks = { $n ->
        [one] { $n } line of the list is not ticked yet.
       *[other] { $n } lines of the list are not ticked yet.
    }

## Clinic: the issued card

issued-title = Plan card for { $who }
# $revision (Number)
issued-revision = plan { $revision }
issued-what = The patient scans the code, or takes the picture, the text or the file.
# Safety of data.
issued-warning = Anyone who photographs this card can use it. Show it only to the patient.
issued-code = The card as a code
issued-text = The card as text
issued-copy = Copy text
issued-files = Files of this card
# Beside the codes of a card, which are shown one at a time. $n (Number): 2 to 8.
issued-codes = The card is shown as { $n } codes. The patient's device reads all of them, in any order.
issued-too-large = Too large for codes. Hand over the file or the text.

## Clinic: review

review-empty = At the visit, the patient opens Record, saves an encrypted summary and gives you the file, or shows it as codes. Receive it here.
review-figures = More figures
review-other = Other conditions, and times at the visits
# For screen readers.
chart-days = { $name }, day by day
chart-line = { $name }, 0 to 10, by day
chart-stance = Seconds by day, both legs
chart-at-visit = rated at the visit

no-day = no day chosen
receipt-filled-other = { $file }: { $code }, no new day. A note or other details were added.
# $most (Number)
plan-full = A plan holds up to { $most } exercises. Remove one to add another.
# $most (Number)
named-full = Up to { $most } can be listed.
over-midnight = This goes through the night: from { $from } to { $to } on the next day.
round-the-clock = This goes round the clock, day and night, from { $from }.
unread-times = The times “{ $typed }” cannot be read. Write them like 8:00, 13:00, 18:00.
unread-times-none = No time is given. Write times like 8:00, 13:00, 18:00.
unread-stance = “{ $typed }” is not a number of seconds from 0 to 600. Write it like 12.4.
unread-visit = The date of the next visit is missing.
unread-here = { $place }: { $what }
draft-resumed = Draft of { $date } resumed.
draft-resumed-anew = Draft of { $date } resumed. Enter again today what the patient does not have, and the seconds on one leg.
draft-discard = Discard draft
draft-discard-ask = Discard everything that you changed in this draft?
draft-discard-yes = Yes, discard it
draft-discard-no = No, keep it

## Clinic: a patient's case

# The page about a patient's case, and the button that leads there.
case-title = Case
case-of = Case of { $code }
# Beside the code of a patient whose case is closed.
case-closed = closed
case-closed-since = Closed on { $on }.
case-closed-on = Closed on { $on }: { $reason }.
# After the sentence about closing. $who: a clinician's name.
case-closed-by = Closed by { $who }.
case-closed-and-reopened = Closed on { $on }: { $reason }. Opened again on { $reopened }.
case-is-open = The case is open.
case-close = Close the case
case-close-what = A closed case leaves the list of patients and is found under “Closed”. Nothing is erased. It takes no new plan until it is opened again; a summary that arrives is received all the same. The patient’s device is not told: it reminds until the plan ends there.
case-close-why = Why
case-close-words = More about it (optional)
case-close-words-needed = In other words
case-reopen = Open the case again
case-letter = Closing letter
case-letter-what = One or two pages for whoever treats the patient from now on: the course, what was measured at the first and at the last visit, and what the patient goes on with. It names the patient by the code alone.
case-letter-own = What you add (optional)
# $most (Number): 2000.
case-letter-own-hint = A new line begins a paragraph. Up to { $most } characters.
# $n (Number): more than $most. $most (Number): 2000.
case-letter-too-long = These are { $n } characters. Up to { $most } fit.
case-letter-save = Save the letter (PDF)
close-finished = treatment is finished
close-sent-on = sent on to somebody else
close-stopped-coming = stopped coming
close-other = other
case-name-title = Code and name
case-name-what = Plans that were issued go on under another code, and their summaries arrive as before: no code is on a card. What was printed, or saved for a record, keeps the old code.
case-name-save = Save code and name
case-plans = Plans that were issued
case-plans-none = No plan was issued yet.
# $n (Number): the number of the plan. $issued and $visit are dates.
case-plan-line = Plan { $n }: issued on { $issued }, next visit on { $visit }
case-plan-newest = in force
# $who: a clinician's name.
case-plan-by = Issued by { $who }.
case-plan-show = Show or save
# The button's name for a screen reader. $n (Number): the number of the plan.
case-plan-show-n = Show or save plan { $n }
case-plan-changes = What is different from the plan before
case-plan-unchanged = No exercise is different from the plan before.
plan-item = { $name }: { $dose }; { $times }
exercise-at-level = { $exercise } (“{ $level }”)
change-new = New: { $item }
change-gone = No longer in the plan: { $name }
change-level = { $now } in place of { $before }
change-from = { $name }: { $now }. Before: { $before }
change-else = { $name }: a detail such as the note, the limit of pain or the permission to step up is different.
change-visit = The next visit is on { $date }.
removes-name = the code, the name and what was ticked
removes-plans = { $n ->
        [0] no plan
        [one] { $n } issued plan
       *[other] { $n } issued plans
    }
removes-summaries = { $n ->
        [0] no summary
        [one] { $n } received summary
       *[other] { $n } received summaries
    }
removes-findings = { $n ->
        [0] no entry of a visit
        [one] { $n } entry of visits
       *[other] { $n } entries of visits
    }
removes-draft = the plan that is being written
# Before the lines of what is erased.
patient-remove-list = These are erased:
filter-closed = Closed
receipt-case-closed = The case is closed since { $date }.
