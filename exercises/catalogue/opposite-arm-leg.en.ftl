### The texts of the exercise in opposite-arm-leg.toml, in English.

name = Opposite arm and leg
purpose = Trains the trunk to stay steady for longer.
set-up = Kneel on hands and knees, hands below the shoulders, knees below the hips.
step-1 = Draw the belly in a little.
step-2 = Stretch one arm forward and the opposite leg back, no higher than the trunk.
step-3 = Keep the pelvis level, and breathe.
step-4 = Come back and change sides.
should-feel = The muscles along the back and in the buttock working.
should-not-feel = Pain in the lower back.

mistake-1 = Arching the lower back.
mistake-2 = Letting the pelvis turn.
mistake-3 = Lifting the head.

# Safety: precautions.
careful-1 = If kneeling hurts, put a cushion under the knees or tell your clinician.
careful-2 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.
careful-3 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-leg-only-name = Leg only
level-leg-only-change = Stretch one leg back; both hands stay down.
level-leg-only-set-up = Kneel on hands and knees, hands below the shoulders, knees below the hips.
level-leg-only-step-1 = Draw the belly in a little.
level-leg-only-step-2 = Stretch one leg back, no higher than the trunk.
level-leg-only-step-3 = Keep the pelvis level, and breathe.
level-leg-only-step-4 = Come back and change sides.
level-arm-and-leg-name = Arm and leg
level-arm-and-leg-change = Stretch the opposite arm forward as well.
