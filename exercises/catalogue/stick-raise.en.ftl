### The texts of the exercise in stick-raise.toml, in English.

name = Raising a stick
purpose = The better arm helps the stiff one up.
set-up = Stand tall and hold a stick in front of you with both hands, shoulder-width apart.
step-1 = Raise the stick forward and up; the better arm does most of the work.
step-2 = Stop where the stiff shoulder begins to pull.
step-3 = Stay there for one breath.
step-4 = Lower slowly.
should-feel = A pull in the stiff shoulder, little effort in it.
should-not-feel = A pinch at the top of the shoulder.

mistake-1 = Arching the back.
mistake-2 = Pulling the shoulder up to the ear.

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
