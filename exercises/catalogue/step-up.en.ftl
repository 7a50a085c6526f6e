### The texts of the exercise in step-up.toml, in English.

name = Step up
purpose = Strengthens thigh and hip for climbing stairs.
set-up = Stand in front of a step that cannot tip, one hand on the rail. The whole named foot is on the step.
step-1 = Lean forward a little, the knee above the toes.
step-2 = Push through the named foot and stand up on the step. Let the other foot come along without pushing.
step-3 = Stand tall for a moment.
step-4 = Step back down slowly with the other foot.
should-feel = The thigh and the buttock of the named leg working.
should-not-feel = A knee that gives way, or sharp pain in it.

mistake-1 = Pushing off with the other foot.
mistake-2 = Letting the knee fall inward.
mistake-3 = Pulling yourself up by the rail.

# Safety: precautions.
careful-1 = Never do this without a solid support within reach. Wear sturdy shoes; do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.
careful-3 = Ask your clinic first if you have a recent knee injury, or a knee operation that is still healing.

# Safety: signs to stop at once.
stop-1 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-2 = A fall, or a near fall.
stop-3 = A knee that locks, gives way or swells.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-low-step-name = Low step
level-low-step-change = A step about 10 centimetres high.
level-stair-name = Stair
level-stair-change = A usual stair.
