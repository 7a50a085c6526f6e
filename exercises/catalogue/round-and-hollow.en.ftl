### The texts of the exercise in round-and-hollow.toml, in English.

name = Round and hollow back
purpose = Moves the whole spine gently.
set-up = Kneel on hands and knees, hands below the shoulders, knees below the hips.
step-1 = Breathe out and round the back up; head and tailbone sink.
step-2 = Breathe in and let the back sink into a light hollow; head and tailbone rise.
step-3 = Move from one to the other at your own pace.
should-feel = Movement along the whole back.
should-not-feel = Pain, or a pinch in the lower back.

mistake-1 = Bending the elbows.
mistake-2 = Throwing the head back.
mistake-3 = Hurrying.

# Safety: precautions.
careful-1 = If kneeling hurts, put a cushion under the knees or tell your clinician.
careful-2 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-3 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
