## Parts from which code builds longer texts: dates, times, numbers, lists, joined names.
## Code must not join words by itself; it calls these. A word's first letter is made a capital by code where a line begins with it.

## Facts about the locale, for code that formats numbers and times

# The name of the language, in the language, as the choice of languages shows it.
language-name = English

# 24 or 12: hours of the clock.
locale-clock = 24
# The decimal mark.
locale-decimal-mark = .
# Before a number below zero.
locale-minus-sign = -

## Months

month-january = January
month-february = February
month-march = March
month-april = April
month-may = May
month-june = June
month-july = July
month-august = August
month-september = September
month-october = October
month-november = November
month-december = December

# Short, for the axis of a chart and narrow tables.
month-short-january = Jan
month-short-february = Feb
month-short-march = Mar
month-short-april = Apr
month-short-may = May
month-short-june = Jun
month-short-july = Jul
month-short-august = Aug
month-short-september = Sep
month-short-october = Oct
month-short-november = Nov
month-short-december = Dec

## Days of the week. Full names are in common.ftl (monday …)

monday-short = Mon
tuesday-short = Tue
wednesday-short = Wed
thursday-short = Thu
friday-short = Fri
saturday-short = Sat
sunday-short = Sun

## Dates. $month is one of month-…, $year is digits as text (no thousands mark), $day the day of the month as a number.

# Such as 28 October.
# $day (Number)
date-day-month = { $day } { $month }
# Such as 28 October 2026.
# $day (Number)
date-day-month-year = { $day } { $month } { $year }
# $month is one of month-short-…
# $day (Number)
date-day-month-short = { $day } { $month }
# $weekday is one of monday …, $date the message date-day-month. By itself, with a capital.
date-weekday = { $weekday } { $date }
# The same within a sentence.
date-weekday-inline = { $weekday } { $date }

## Times of day. $hour and $minute are digits as text; $hour has two digits on the 24-hour clock, 1 or 2 on the 12-hour clock.

time-24 = { $hour }:{ $minute }
time-am = { $hour }:{ $minute } am
time-pm = { $hour }:{ $minute } pm
# A time with its article, where the language has one (Spanish: la 01:00, las 09:00); for times within sentences, such as $time of
# next-at. English has no article. $time: one of time-24, time-am, time-pm. $hour: the hour as shown, a number; not used in English.
# $hour (Number, optional)
time-with-article = { $time }
# A day and a time within one line, such as Wednesday, 14:02.
day-at-time = { $day }, { $time }

## Lists

# Two things.
list-and-two = { $first } and { $second }
# Three or more: $before is everything up to the last but one, joined by list-comma.
list-and-last = { $before } and { $last }
list-comma = { $before }, { $next }
list-semicolon = { $before }; { $next }

## Durations within a sentence (about-seconds and about-minutes in common.ftl begin a line)

about-seconds-inline = { $n ->
        [one] about { $n } second
       *[other] about { $n } seconds
    }
about-minutes-inline = { $n ->
        [one] about a minute
       *[other] about { $n } minutes
    }

## Names with what belongs to them

# Something named, then text about it, such as Wall sit: Choose a side.
named-text = { $name }: { $text }
# An exercise, a complaint or a part of a session, with left, right or both sides after it.
name-with-side = { $name }, { $side }
# A dose, with its side: 3 holds of 10 seconds, both sides.
dose-with-side = { $dose }, { $side }
# Days, then times: Monday to Friday, every hour from 09:00 to 17:00.
days-and-times = { $days }, { $times }
# What an exercise is done with, after its dose: 3 holds of 10 seconds, with 2.5 kg, effort about 4 of 10.
# $kg (Number)
load-weight = with { $kg } kg
band-light = with a light band
band-medium = with a medium band
band-strong = with a strong band
band-extra-strong = with an extra strong band
# $n (Number)
aimed-effort = effort about { $n } of 10
helper-beside-you = with somebody beside you
# The same, said to the clinician.
helper-beside-patient = with somebody beside the patient
# The days from which to which an exercise is to be done, within a line.
phase-from = from { $first }
phase-until = until { $last }
phase-from-to = from { $first } to { $last }
# By itself: it is over.
phase-ended = Ended on { $last }
# Days and times, then one of the three above: every day, at 18:00, from 1 December to 20 December.
times-in-phase = { $times }, { $phase }
# Surface, then eyes: firm floor, eyes open.
surface-and-eyes = { $surface }, { $eyes }
# Leg, surface, eyes: left leg, firm floor, eyes open.
leg-surface-eyes = { $leg }, { $surface }, { $eyes }
# A leg, then seconds: left leg, 12.3 s.
leg-and-seconds = { $leg }, { $seconds }
# A patient's code, with the name in brackets.
code-with-name = { $code } ({ $name })
# A line in a list of patients: the visit; the last summary.
visit-and-summary = { $visit }; { $summary }
# On the issued card: plan 3; review on 28 October.
revision-and-review = { $revision }; { $review }
# An exercise that is no longer in the plan; $note is review-no-longer.
name-with-note = { $name } ({ $note })
# A line that becomes a sentence among others.
as-sentence = { $text }.
# Two whole sentences, one after the other.
two-sentences = { $first } { $second }
# A file that could not be received: its name, what is wrong, what to do.
receipt-refused = { $file }: { $fault } { $advice }

## Review

# Three parts: 28 days since 28 October; 3 exercises; visit today.
review-head-line = { $since }; { $exercises }; { $visit }
# A verdict and what it rests on: Better, 6 to 3 …
review-finding = { $word }, { $figures }
# The same for one leg. $word is one of review-…-inline.
review-finding-of-leg = { $leg }: { $word }, { $figures }
review-rising-inline = rising
review-falling-inline = falling
review-no-clear-change-inline = no clear change
review-at-maximum-inline = at maximum
review-not-enough-data-inline = not enough data
# When an alarm was raised, then whole sentences on what has been paused since.
# Of an alarm: when, and what was answered about it.
review-alarm-and-circumstances = { $when }: { $circumstances }
review-alarm-figures = { $when }. { $since }
review-alarm-figures-mistaken = { $when }. { $since } { $mistaken }
# One series of balance: exercise: surface, eyes; where the phone was; aim.
review-stance-conditions = { $exercise }: { $surface }, { $eyes }; { $phone }; { $aim }
# Times at a visit: date, surface, eyes: a list of review-visit-stance.
review-visit-stance-line = { $date }, { $surface }, { $eyes }: { $times }.
# A rating and its date: 6 (28 October).
# $score (Number)
review-rating-on-date = { $score } ({ $date })
# A proposal and its step, joined by one space: Progress to 15 seconds a hold.
review-advice-and-step = { $advice } { $step }
# What is done less: Do less: only the sessions before noon.
review-advice-and-less = { $advice }: { $less }

## Sway figures, with a no-break space between number and unit.

# $what: sway-side or sway-round.
# $value (Number)
sway-figure = { $what } { $value } cm/s²
# $what: sway-path.
# $value (Number)
sway-path-figure = { $what } { $value } cm/s³

## Terminal

# One exercise of the catalogue. $levels: identifiers joined by commas.
# $edition (Number)
catalogue-line = { $id } (edition { $edition }): { $name }. Levels: { $levels }
# An exercise of a plan that was just added.
# $number (Number)
plan-line = { $number }. { $name }: { $dose }; { $schedule }
# $slot: number of the exercise in the plan. $due, $opens, $closes: instants such as 2026-11-25T09:00:00+01:00.
slot-line = { $slot } due { $due }, opens { $opens }, closes { $closes }
# Asked for at the terminal, without showing what is typed; a space follows.
passphrase-prompt = Passphrase:
