### A diary that a patient kept on paper, entered at the clinic.

# Opens the page.
paper-diary-open = Enter a diary from paper
# $who: the patient's code and name.
paper-diary-of = Diary on paper: { $who }
paper-diary-what = How many sessions were ticked on each day, and the pain in the morning. Leave a day empty of which the diary says nothing; 0 is a day on which nothing was done. What is entered here is marked in the review as entered afterwards.
paper-diary-earlier = Earlier days
paper-diary-later = Later days
paper-diary-from-until = { $from } to { $until }
# The head of a column. $name: an exercise.
paper-diary-sessions = { $name }, sessions
# The head of a column. $name: a complaint.
paper-diary-pain = Pain in the morning: { $name }
# Beside a field: how many sessions were due that day. $n (Number)
paper-diary-due = of { $n }
# The name of a field. $column: the head of its column; $day: a date.
paper-diary-field = { $column }, { $day }
paper-diary-save = Save these days
paper-diary-saved = Saved. The review counts these days.
# $most (Number)
paper-diary-unfit = { $field }: a whole number from 0 to { $most }. Correct it, then save.
paper-diary-nothing = Nothing was changed.
paper-diary-none = Nothing is entered yet.
# $day: a date; $list: what was entered.
paper-diary-line = { $day }: { $list }
paper-diary-nothing-done = nothing done
# $name: an exercise. $n (Number), $due (Number)
paper-diary-done = { $name } { $n } of { $due }
# $name: an exercise without set times. $n (Number)
paper-diary-done-free = { $name } { $n }
# $name: a complaint. $score (Number)
paper-diary-morning = { $name } { $score } of 10 in the morning
# In the list of devices.
paper-diary-device = Entered at the clinic from a diary on paper, up to { $until }.
# $who: the name of the clinician who entered days last.
paper-diary-device-by = Entered at the clinic from a diary on paper, up to { $until }, last by { $who }.
paper-diary-left-out = The diary on paper is left out of this review, as the clinic chose.
