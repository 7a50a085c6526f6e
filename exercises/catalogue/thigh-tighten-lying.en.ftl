### The texts of the exercise in thigh-tighten-lying.toml, in English.

name = Tightening the thigh, lying
purpose = Wakes up the front of the thigh early on, for instance after an operation.
set-up = Lie on your back, a rolled towel under the named knee, the other knee bent.
step-1 = Pull the toes toward you.
step-2 = Press the back of the knee into the roll and tighten the front of the thigh.
step-3 = Stay there and breathe.
step-4 = Let go slowly.
should-feel = The front of the thigh getting firm; the kneecap moves up a little.
should-not-feel = Sharp pain in the knee.

mistake-1 = Holding your breath.
mistake-2 = Lifting the pelvis.
mistake-3 = Letting go with a jerk.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a joint replacement, or an operation or fracture of the leg that is still healing.
careful-2 = If lying down or getting up makes you dizzy, take your time: roll onto your side first.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = A knee that locks, gives way or swells.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-flat-name = Heel stays down
level-flat-change = Press the knee into the roll; the heel stays on the mat.
level-heel-up-name = Heel lifts
level-heel-up-change = Press the knee into the roll until the heel lifts off the mat.
