### The texts of the exercise in pelvis-tilt.toml, in English.

name = Pelvis tilt
purpose = Teaches you to move the lower back gently and with control.
set-up = Lie on your back, knees bent, feet flat.
step-1 = Breathe out and tip the pelvis, so that the lower back comes down to the mat.
step-2 = Breathe in and let it come up again a little.
step-3 = Move small and without force.
should-feel = The lower back moving easily.
should-not-feel = Pain in the lower back or down a leg.

mistake-1 = Lifting the buttocks.
mistake-2 = Pressing with the feet.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you are pregnant, or if lying flat makes you breathless or dizzy.
careful-2 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
