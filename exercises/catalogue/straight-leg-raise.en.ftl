### The texts of the exercise in straight-leg-raise.toml, in English.

name = Straight leg raise
purpose = Strengthens the front of the thigh while the knee stays straight.
set-up = Lie on your back, the named leg straight, the other knee bent, arms beside you.
step-1 = Pull the toes toward you and tighten the thigh, so that the knee is straight.
step-2 = Lift the straight leg as far as your level says.
step-3 = Stay there.
step-4 = Lower slowly. The knee stays straight until the heel rests.
should-feel = The front of the thigh working.
should-not-feel = Pain in the lower back, or in the knee or groin.

mistake-1 = Letting the knee bend.
mistake-2 = Arching the lower back.
mistake-3 = Letting the leg drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a joint replacement, or an operation or fracture of the leg that is still healing.
careful-2 = If lying down or getting up makes you dizzy, take your time: roll onto your side first.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = Numbness or weakness that runs down the leg.
stop-3 = A knee that locks, gives way or swells.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-low-name = A little
level-low-change = The heel rises about 20 centimetres.
level-knee-high-name = Up to the other knee
level-knee-high-change = The thigh rises as high as the other thigh.
