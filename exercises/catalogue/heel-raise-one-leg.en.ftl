### The texts of the exercise in heel-raise-one-leg.toml, in English.

name = Heel raise on one leg
purpose = Strengthens the calf and its tendon.
set-up = Stand on the named foot, one hand on a rail or a worktop, the other foot lifted.
step-1 = Stand tall, the knee straight.
step-2 = Rise onto the ball of the foot as high as you can.
step-3 = Stay there for a moment.
step-4 = Lower slowly until the heel rests.
should-feel = The calf working and getting tired.
should-not-feel = Sharp pain in the tendon or at the heel.

mistake-1 = Rolling onto the outer edge of the foot.
mistake-2 = Bending the knee.
mistake-3 = Letting the heel drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a tear or an operation of the Achilles tendon.
careful-2 = Never do this without a solid support within reach. Wear sturdy shoes; do not wear socks on a smooth floor.
careful-3 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = A sudden snap, or the feeling of being kicked, at the back of the leg: get medical help now.
stop-2 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-3 = A fall, or a near fall.
stop-4 = Pain above the limit in your plan, or an ankle that gives way.

# Levels, from easy to hard.
level-floor-name = On the floor
level-floor-change = The whole foot on the floor.
level-step-name = On a step
level-step-change = The ball of the foot on the edge of a step, so that the heel can sink below it.
level-step-set-up = Stand on a step that cannot tip, the ball of the named foot on its edge, the heel free, one hand on the rail. Lift the other foot.
level-step-step-1 = Stand tall, the knee straight.
level-step-step-2 = Rise onto the ball of the foot as high as you can.
level-step-step-3 = Stay there for a moment.
level-step-step-4 = Lower slowly, until the heel is a little below the step.
