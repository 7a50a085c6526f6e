### The texts of the exercise in heel-slide-steady-back.toml, in English.

name = Heel slide with a steady back
purpose = Trains the trunk to stay quiet while a leg moves.
set-up = Lie on your back, knees bent, feet flat, the lower back in an easy position.
step-1 = Breathe out and draw the belly in a little.
step-2 = Slide one heel along the mat, away from you, as far as the pelvis stays still.
step-3 = Slide it back.
step-4 = Change sides.
should-feel = The lower belly working, the pelvis quiet.
should-not-feel = Pain in the lower back or in the groin.

mistake-1 = Letting the lower back arch.
mistake-2 = Lifting the heel.
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
level-full-name = All the way
level-full-change = Until the leg is straight.
