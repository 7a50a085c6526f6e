# American English: only the messages that differ from en.

locale-clock = 12
date-day-month = { $month } { $day }
date-weekday = { $weekday }, { $date }
date-weekday-inline = { $weekday }, { $date }
date-day-month-year = { $month } { $day }, { $year }
date-day-month-short = { $month } { $day }
time-am = { $hour }:{ $minute } AM
time-pm = { $hour }:{ $minute } PM
list-and-last = { $before }, and { $last }
language-name = English (United States)
