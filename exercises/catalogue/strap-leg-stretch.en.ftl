### The texts of the exercise in strap-leg-stretch.toml, in English.

name = Leg stretch with a strap
purpose = Stretches the back of the thigh.
set-up = Lie on your back, the other leg straight, a strap round the named foot, one end in each hand.
step-1 = Raise the named leg with the strap, the knee almost straight, until the back of the thigh pulls.
step-2 = Keep the pelvis still.
step-3 = Stay there and breathe.
step-4 = Lower slowly.
should-feel = A pull in the middle of the back of the thigh.
should-not-feel = Tingling in the foot, or pain behind the knee.

mistake-1 = Lifting the head.
mistake-2 = Pulling with a jerk.
mistake-3 = Forcing the knee straight.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a joint replacement, or an operation or fracture of the leg that is still healing.
careful-2 = The movement should stay free of tingling. If it tingles, make it smaller, and tell your clinician.
careful-3 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-3 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
