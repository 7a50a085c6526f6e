### The texts of the exercise in arm-pendulum.toml, in English.

name = Arm pendulum
purpose = Eases a painful shoulder early on, without effort.
set-up = Stand at a table, lean forward and rest the other hand on it. The named arm hangs down loosely.
step-1 = Shift your weight gently forward and backward, so that the arm begins to swing by itself.
step-2 = Let it swing small, with the muscles loose.
step-3 = Let it come to rest before you stand up.
should-feel = A loose, heavy arm.
should-not-feel = A shoulder that works, or sharp pain.

mistake-1 = Swinging the arm by its own muscles.
mistake-2 = Swinging far.
mistake-3 = Standing up quickly.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = If bending forward makes you dizzy, do this sitting, leaning beside a table.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
