### The texts of the exercise in knees-roll.toml, in English.

name = Rolling the knees
purpose = Loosens the turning of the lower back.
set-up = Lie on your back, knees bent and together, feet flat, arms out to the sides.
step-1 = Let both knees sink to one side; the shoulders stay on the mat.
step-2 = Come back to the middle.
step-3 = Let them sink to the other side.
should-feel = A light pull at the side of the trunk.
should-not-feel = Pain in the lower back or down a leg.

mistake-1 = Letting the knees drop.
mistake-2 = Lifting a shoulder.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-2 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-3 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
