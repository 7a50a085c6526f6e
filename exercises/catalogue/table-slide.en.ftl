### The texts of the exercise in table-slide.toml, in English.

name = Sliding along the table
purpose = Raises the arm with the table carrying its weight.
set-up = Sit at a table, the named hand on a cloth on its top.
step-1 = Slide the hand forward and lean the trunk after it.
step-2 = Stop where the shoulder begins to pull, and stay for one breath.
step-3 = Slide back.
should-feel = A pull in the shoulder, the arm heavy on the table.
should-not-feel = A pinch at the top of the shoulder.

mistake-1 = Pulling the shoulder up to the ear.
mistake-2 = Pressing on the hand.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
