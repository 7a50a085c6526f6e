### The texts of the exercise in step-down-slow.toml, in English.

name = Slow step down
purpose = Trains the thigh to control the way down, as on stairs.
set-up = Stand on a step that cannot tip, one hand on the rail, the named foot near its edge.
step-1 = Bend the named knee slowly and bring the other heel down to the floor in front.
step-2 = Touch the floor lightly, without putting weight on that foot.
step-3 = Keep the knee above the toes and the pelvis level.
step-4 = Push up again with the named leg.
should-feel = The thigh of the named leg working.
should-not-feel = A knee that gives way, or sharp pain in it.

mistake-1 = Dropping onto the lower foot.
mistake-2 = Letting the knee fall inward.
mistake-3 = Letting the pelvis tip.

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
