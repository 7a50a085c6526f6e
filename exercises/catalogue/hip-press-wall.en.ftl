### The texts of the exercise in hip-press-wall.toml, in English.

name = Pressing the leg into the wall
purpose = Loads the tendon at the outer side of the hip without moving the joint.
set-up = Stand with the named side to a wall, a hand's width away, feet hip-width apart, one hand on the wall if you like.
step-1 = Stand tall, the pelvis level.
step-2 = Move the named leg sideways until the outer edge of the foot touches the wall.
step-3 = Press it outward into the wall, as hard as your level says.
step-4 = Stay there and breathe.
step-5 = Let go slowly.
should-feel = The muscles at the outer side of the hip working.
should-not-feel = Sharp pain at the outer hip, or a pinch in the groin.

mistake-1 = Leaning to the other side.
mistake-2 = Pressing with a jerk.
mistake-3 = Letting the pelvis drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-2 = Never do this without a solid support within reach. Wear sturdy shoes; do not wear socks on a smooth floor.
careful-3 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Numbness or weakness that runs down the leg.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pressure
level-light-change = About a quarter of your strength.
level-firm-name = Firm pressure
level-firm-change = About half of your strength.
