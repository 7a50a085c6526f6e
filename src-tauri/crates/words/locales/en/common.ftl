## The program

app-name = Carryover
yes = Yes
no = No
cancel = Cancel
back = Back
continue-on = Continue
close = Close
save = Save
# The choice of language.
language-label = Language
language-as-system = Same as the system
# First start: a question above two large buttons.
choose-role = How will you use Carryover?
role-patient = I do exercises
role-patient-what = Get a plan from your clinic, be reminded and guided, and take an encrypted summary to your next visit.
role-clinic = I prescribe exercises
role-clinic-what = Make plans, hand them over as a card, and review results.
employer-can-read = On an employer's computer, the people who manage it can read what you record here.
# Shown while the program runs at a set time, for demonstrations. $time: a date and a time.
time-set-to = Time set to { $time }

## Sides, surfaces, eyes

left = left
right = right
both-sides = both sides
# The left side, then the right, and so on.
sides-in-turn = left and right in turn
left-leg = left leg
right-leg = right leg
eyes-open = eyes open
eyes-closed = eyes closed
firm = firm floor
folded-towel = folded towel
cushion = cushion
foam = foam

## Dose and time

dose-hold = { $n ->
        [one] { $s ->
            [one] { $n } hold of { $s } second
           *[other] { $n } hold of { $s } seconds
        }
       *[other] { $s ->
            [one] { $n } holds of { $s } second
           *[other] { $n } holds of { $s } seconds
        }
    }
dose-reps = { $n ->
        [one] { $n } repetition
       *[other] { $n } repetitions
    }
# $sets is 2 or more.
# $sets (Number)
dose-reps-sets = { $n ->
        [one] { $sets } sets of { $n } repetition
       *[other] { $sets } sets of { $n } repetitions
    }
# $s is 5 or more.
# $s (Number)
dose-balance = { $n ->
        [one] { $n } attempt of up to { $s } seconds
       *[other] { $n } attempts of up to { $s } seconds
    }
# $s is 5 or more.
# $s (Number)
dose-stretch = { $n ->
        [one] { $n } stretch of { $s } seconds
       *[other] { $n } stretches of { $s } seconds
    }
dose-move = { $n ->
        [one] { $n } movement at your own pace
       *[other] { $n } movements at your own pace
    }
# How many times something of daily life is done, such as lifting a bag.
dose-times = { $n ->
        [one] { $n } time
       *[other] { $n } times
    }
# Graded activity: $amount is "10 minutes" or "3 times", $step how many of them are added.
# $step (Number), $goal (Number)
dose-grows = { $days ->
        [one] { $amount }, { $step } more every day, up to { $goal }
       *[other] { $amount }, { $step } more every { $days } days, up to { $goal }
    }
# $effort: how hard it should feel, from 0 (not at all) to 10 (the hardest possible).
# $effort (Number)
dose-go = { $n ->
        [one] { $n } minute at effort { $effort } of 10
       *[other] { $n } minutes at effort { $effort } of 10
    }
# $inhale and $exhale are seconds, 2 or more.
# $inhale (Number), $exhale (Number)
dose-breath = { $n ->
        [one] { $n } minute, { $inhale } s in and { $exhale } s out
       *[other] { $n } minutes, { $inhale } s in and { $exhale } s out
    }
dose-care = { $n ->
        [one] { $n } minute
       *[other] { $n } minutes
    }
# What stands in the place of a dose for something that is done at once, such as a change of position.
dose-prompt = once
# $s is 10 or more.
# $s (Number)
dose-count = as many as you can in { $s } seconds
# $s is 5 or more, $beats 30 or more.
# $s (Number), $beats (Number)
dose-beat = { $n ->
        [one] { $n } round of { $s } seconds at { $beats } beats a minute
       *[other] { $n } rounds of { $s } seconds at { $beats } beats a minute
    }
# $n (Number)
every-minutes = every { $n } minutes from { $from } to { $to }
every-hour = every hour from { $from } to { $to }
# $times: a list such as 08:00, 13:00.
at-times = at { $times }
workdays = Monday to Friday
# Instead of days and times.
when-as-needed = as needed
# A rhythm of days, 2 to 28.
# $n (Number)
every-days = { $n ->
        [2] every other day
       *[other] every { $n } days
    }
# $n (Number)
times-a-week = { $n ->
        [one] once a week, on any day
       *[other] { $n } times a week, on any days
    }
every-day = every day
monday = Monday
tuesday = Tuesday
wednesday = Wednesday
thursday = Thursday
friday = Friday
saturday = Saturday
sunday = Sunday
# $n (Number)
about-seconds = About { $n } seconds
about-minutes = { $n ->
        [one] About a minute
       *[other] About { $n } minutes
    }

## How a session went. Short, after its time; begins small.

mark-done = done
# Where a share says nothing.
mark-partly-alone = partly done
# Shares of the dose, such as seconds held. $done (Number), $of (Number)
mark-partly = partly done: { $done } of { $of }
mark-skipped = skipped: { $reason }
mark-day-off = day off: { $reason }
mark-paused = paused for safety
mark-not-done = not done
mark-due = due now
mark-later = later
mark-no-such-hour = this hour does not exist today because the clocks change

## Why a session was skipped: buttons for the patient (with a capital), words in the clinician's list (without).

skip-reason-forgot = forgot
skip-reason-no-time = no time, or could not get away
skip-reason-no-place = no suitable place
skip-reason-pain = it hurt, or I was afraid it would hurt
skip-reason-not-sure-how = not sure how to do it
skip-reason-felt-fine = felt fine, no need
skip-reason-no-help = did not seem to help
skip-reason-unwell = tired or unwell
skip-reason-no-support = no support or space nearby
skip-reason-other = something else
skip-reason-rather-not-say = rather not say

## Why days are taken off

day-off-ill = ill
day-off-travelling = travelling
day-off-holiday = on holiday
day-off-other = something else

## What is wrong: buttons on the page "Something is wrong". Safety: keep the meaning of every part.

# Leads to "call your local emergency number now".
trouble-heart-or-breath = Chest pain, severe breathlessness, feeling faint, or a cold sweat
# Leads to "call your local emergency number now".
trouble-head-or-neck = Sudden and unusual: headache or neck pain, double vision, trouble speaking or swallowing, a numb or drooping face, confusion, unsteadiness or collapse
trouble-nerve = New or worsening weakness or numbness in an arm or leg
# Leads to "go to an emergency department now". Plain words for saddle numbness and cauda equina.
trouble-bladder-or-bowel = Numbness around the genitals or anus; a new problem with passing, holding or feeling urine or stool, or with sexual function; or pain or weakness in both legs
# Safety: a clot, a torn muscle or tendon, a blocked artery, an infected joint.
trouble-limb = A calf that is swollen, hot or painful; a sudden snap; a hand or foot that is pale, blue or cold; or a hot swollen joint
trouble-fell = I fell
trouble-nearly-fell = I nearly fell
trouble-dizzy = Light-headed, or everything spins
trouble-too-much-pain = Too much pain, or a new pain
trouble-pain-above-limit = Pain above your limit
trouble-unwell = Fever, or feeling ill
trouble-other = Something else is wrong

## Aftercare: lines that the clinician ticks; the patient reads them for two days after the visit.

aftercare-soreness = Mild soreness for a day or two after the visit is usual.
aftercare-moving = Keep moving as usual, as far as it is comfortable.
aftercare-easy = No heavy lifting or sport for two days after the visit.
aftercare-warmth = You may use gentle warmth if it feels good.
# Safety.
aftercare-contact = If pain gets worse, or you notice new numbness or weakness, contact your clinic. If it is sudden or severe, call your local emergency number.

## A data folder that is a copy, or was put back

data-moved-patient = These data were moved or copied here from another place. What you record here from now on counts separately; what both places have counts once.
data-put-back-patient = These data were put back to an earlier state. What was recorded after that is missing here. What your clinic has already received stays with the clinic.
data-moved-clinic = These data were moved or copied here from another place. Use only one of the two: patients, cards and summaries added in one are missing in the other.
data-put-back-clinic = These data were put back to an earlier state. Patients, cards and summaries added after that are missing here.

## Backups

backup-title = Backup
backup-what-patient = A backup is one file with everything that is saved here. Anyone who has the file can read it.
backup-what-clinic = A backup is one file with everything that is saved here. It is encrypted, and opens with the passphrase of the day on which it was made.
backup-last = Last automatic backup: { $date }, { $place }.
backup-none = No automatic backup yet. One is made each day on which you use the program.
backup-not-today = Today's automatic backup could not be written.
backup-save = Save a backup now
# A button that unfolds the next.
backup-restore = Restore a backup
backup-restore-what = A backup takes the place of everything that is saved here. What is here now is kept in the data folder under another name.
backup-restore-new = On a new device, a backup brings back everything that was saved on the old one.
# A button.
backup-of-day = Automatic backup of { $date }
backup-choose = Choose a backup file
backup-restore-ask = Put this backup in the place of everything that is saved here: { $name }?
backup-restore-sure = Restore this backup
backup-restore-keep = Leave everything as it is
go-on = Go on
# Where a damaged data folder is reported.
salvage-title = Save what can be read
salvage-what = Everything that can still be read is saved, and you are told what is lost. The damaged file is kept.
backup-restored = The backup was restored.
backup-restored-over = The backup was restored. The data that were here before are kept as { $before }.
