### The texts of the exercise in wrist-up-down.toml, in English.

name = Wrist up and down
purpose = Keeps the wrist mobile.
set-up = Sit with the named forearm on a table, palm down, the hand beyond the edge.
step-1 = Let the hand sink.
step-2 = Raise it as far as it goes without force, the fingers loose.
step-3 = Move from one to the other at your own pace.
should-feel = A light pull at the wrist.
should-not-feel = Sharp pain, or tingling in the fingers.

mistake-1 = Lifting the forearm.
mistake-2 = Making a fist.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A wrist that is hot, red or swollen.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
