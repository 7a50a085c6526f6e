## What is wrong in a file that a person wrote: an exercise, a plan file, a runs file, a clinic's table of norms, a table of numbers.
## Each comes after "{ $file }, line { $line }:" and before a full stop: it begins small, has no full stop at its end, and may name
## fields and words of the file, which are English identifiers and stay as they are. $allowed: such words, joined by commas.

## Any file

file-fault-not-utf8 = UTF-8 text is expected here
# $most: one of the messages size-…
file-fault-too-large = the file is larger than the limit of { $most }
# $detail: the parser's own message, in English.
file-fault-not-toml = this is not valid TOML: { $detail }
# $column: a number from 1; $detail: the parser's own message, in English.
# $column (Number)
file-fault-not-json = this is not a valid JSON object, at character { $column }: { $detail }
# $field: the field's name in the file. $fault: another message of this file.
file-fault-in-field = { $field }: { $fault }
# $found: what the file says, shortened. $allowed: as above.
file-fault-unknown-field = there is no field “{ $found }” here; allowed: { $allowed }
file-fault-missing-field = the field “{ $field }” is missing
file-fault-unknown-word = “{ $found }” is not allowed here; allowed: { $allowed }
# $expected, $found: messages file-kind-…
file-fault-wrong-kind = { $expected } is expected here, but this is { $found }
# $least (Number), $most (Number)
file-fault-number-range = a number from { $least } to { $most } is expected here
# $least (Number), $most (Number), $found (Number): characters.
file-fault-text-length = a text of { $least } to { $most } characters is expected here, but this one has { $found }
# $least (Number), $most (Number): entries of a list.
file-fault-list-length = { $found ->
        [one] a list of { $least } to { $most } entries is expected here, but there is { $found }
       *[other] a list of { $least } to { $most } entries is expected here, but there are { $found }
    }
# A choice that needs exactly one of several fields. $fields: joined by commas.
file-fault-one-of-fields = exactly one of these fields is needed here: { $fields }
# $example: a date such as 2026-11-25.
file-fault-date = a date such as { $example } is expected here
# $today: a date such as 2026-11-25.
file-fault-date-after-today = the date cannot be after today, { $today }
file-fault-time = a time such as "09:00" is expected here
# $example: an instant such as 2026-11-25T09:02:00+01:00.
file-fault-instant = a date and time such as { $example } is expected here, between 2020 and 2199
file-fault-duplicate = “{ $id }” appears twice; use it once
file-fault-id-empty = an identifier is expected here, but this is empty
# $most (Number)
file-fault-id-too-long = an identifier has up to { $most } characters
file-fault-id-form = an identifier has lower-case letters, digits and single hyphens between them

## Kinds of value, for file-fault-wrong-kind

file-kind-text = text
file-kind-whole-number = a whole number
# Where any number is expected.
file-kind-any-number = a number
# What is there where a whole number is expected.
file-kind-number = a number with a decimal point
file-kind-truth = true or false
file-kind-date-or-time = a date or time
file-kind-list = a list
file-kind-table = a table
file-kind-nothing = nothing
file-kind-list-of-numbers = { $n ->
        [one] a list of { $n } number
       *[other] a list of { $n } numbers
    }

## The files of an exercise: a TOML file, and a language file (Fluent) beside it for each language

# $detail: the parser's own message, in English.
file-fault-not-fluent = this is not valid Fluent: { $detail }
file-fault-placeable = plain text is expected here; between braces, only text in quotation marks is allowed
file-fault-attribute = attributes are not allowed here; a message is plain text
file-fault-term = terms are not allowed here; write a message instead
file-fault-missing-message = this message is missing
# $allowed: ids of messages, joined by commas.
file-fault-unknown-message = there is no such message; allowed: { $allowed }, where N is a number from 1 and RUNG the id of a level
# $levels: the ids of levels, joined by commas.
file-fault-no-such-level = the exercise has no level “{ $found }”; its levels: { $levels }
# $missing: the id of a message, such as step-2.
file-fault-gap = “{ $missing }” is missing before it; number a list from 1 without gaps
# $first (Number): lines of the same list in the first language.
file-fault-lists-differ = { $here ->
        [one] there is { $here } line here, but { $first } in the first language; both must say the same
       *[other] there are { $here } lines here, but { $first } in the first language; both must say the same
    }
# $lang: a code such as es. $all: the codes of all languages, joined by commas.
file-fault-missing-language = the texts in “{ $lang }” are missing; every exercise needs texts in: { $all }
file-fault-texts-twice = there are texts here and in the language files beside this file; keep them in one place
# $expected: the name of a file.
file-fault-no-exercise = it belongs to { $expected }, which is not in this folder
# $endings: such as .en.ftl, .es.ftl
file-fault-no-language = a language file has the name of its exercise file with another ending in place of .toml: { $endings }
# $character: such as U+202E.
file-fault-unprintable = the character { $character } cannot be shown; plain text on one line is expected here
file-fault-balance-needs = every level of a balance exercise needs “surface” and “eyes”
file-fault-sides-of-ladder = all levels of one “ladder” are done on the same sides; a level with other sides belongs in a “ladder” of its own
file-fault-sides-of-kind = an exercise of this “kind” has other sides: trials on one leg are done “each-side”, and what is done on both feet or as a whole has “none”
file-fault-error-of-count = only an exercise of the “kind” “count” has this field
file-fault-step-of-test = a test is always done in the same way, so it has no “step”
file-fault-same-id = another file in this folder has the same id, “{ $id }”
file-fault-reserved-id = an id that begins with “own-” is given by the program; choose another id
# $most (Number)
file-fault-own-id-too-long = the id of an exercise of your own has up to { $most } characters
file-fault-shipped-id = “{ $id }” is an exercise of this program; an exercise of your own needs another id
# $found (Number): revisions of the exercise.
# $have (Number)
file-fault-old-revision = this differs from revision { $have }, which you have or have put on a card, but its revision is only { $found }; give it a higher one

## A plan file

file-fault-weight = a weight from 0.25 to 100 in quarters of a kilogram is expected here, such as 2.25
file-fault-days = "workdays", "every-day", a list from mon, tue, wed, thu, fri, sat, sun, or a table with every = 2 or times_a_week = 3 is expected here
file-fault-alarm-name = an alarm's name such as "0123456789abcdef:42" is expected here

## A runs file

# $most (Number)
file-fault-too-many-parts = a session has up to { $most } holds, sets or attempts
file-fault-failed-count = “failed” must have as many numbers as “done”
file-fault-phone-without-trials = “phone” can only be used together with “trials”
file-fault-no-such-item = the plan has no such exercise, complaint or activity, or the exercise is of another kind
file-fault-no-open-slot = no session of this exercise is open at that time, or it is already done
file-fault-paused = this exercise is paused for safety at that time
file-fault-days-outside-plan = the days must be between the start of the plan and its review, the first day before the last

## A clinic's table of published times

# $most (Number)
file-fault-row-count = the table needs from 1 to { $most } rows, each under [[row]]
# $most (Number): characters.
file-fault-source = “source” must say where the figures come from, in 1 to { $most } characters on one line
file-fault-sd-without-mean = “sd” can only be used together with “mean”
file-fault-ages = whole years such as "60-69" or "80-plus" are expected here
file-fault-ages-reversed = the ages in this row are reversed; write the youngest first, such as "60-69"
# $most (Number): attempts.
file-fault-statistic = best-of-3, mean-of-3, median-of-3 or the same with another number from 1 to { $most } is expected here
# $least (Number), $most (Number)
file-fault-cap = whole seconds from { $least } to { $most }, or "none", are expected here
file-fault-above-cap = the mean or median in this row is longer than its cap
file-fault-firm-only = only "firm" is allowed here, because soft surfaces differ too much for a table

## A table of numbers (comma-separated values)

# $header: the first line, such as day,value.
file-fault-csv-empty = the file is empty; its first line must be { $header }
file-fault-csv-header = the first line must be { $header }, but it is “{ $found }”
file-fault-csv-byte-order-mark = the file begins with a byte order mark; save it as UTF-8 without one
# $most (Number)
file-fault-csv-rows = the file has more than { $most } rows
file-fault-csv-separator = commas are expected between the columns, but there is “{ $found }”
file-fault-csv-tab = commas are expected between the columns, but there is a tab
# $most (Number): bytes.
file-fault-csv-line-length = this line is longer than { $most } bytes
file-fault-csv-empty-line = { $columns ->
        [one] this line is empty; { $columns } column is expected
       *[other] this line is empty; { $columns } columns are expected
    }
# $found (Number)
file-fault-csv-columns = { $columns ->
        [one] { $columns } column is expected, but there are { $found }
       *[other] { $columns } columns are expected, but there are { $found }
    }
# $column: the column's name in the header.
file-fault-csv-number = column { $column }: a number with a decimal point is expected, but there is “{ $found }”
file-fault-csv-finite = column { $column }: a finite number is expected
file-fault-csv-day = column { $column }: a whole number or a date such as 2026-03-01 is expected, but there is “{ $found }”
file-fault-csv-mixed-days = column { $column }: use either numbers or dates, not both
file-fault-csv-day-order = column { $column }: the day must be later than in the line before, with one value a day

## A folder of exercise files

file-fault-no-exercise-file = there is no exercise file in it; their names end in .toml

## A limit of a file's size

# $n (Number)
size-megabytes = { $n } MB
# $n (Number)
size-kilobytes = { $n } kB
size-bytes = { $n ->
        [one] { $n } byte
       *[other] { $n } bytes
    }
