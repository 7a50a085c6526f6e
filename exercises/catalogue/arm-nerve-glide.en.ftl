### The texts of the exercise in arm-nerve-glide.toml, in English.

name = Arm nerve glide
purpose = Lets the nerve of the arm slide without stretching it.
set-up = Stand or sit, the named upper arm out to the side, the elbow bent, the hand up. Tilt the head a little to the other side.
step-1 = Straighten the elbow, and tilt the head toward that arm at the same time.
step-2 = Bend the elbow again, and tilt the head away.
step-3 = Move slowly and without a stop.
should-feel = An easy movement.
should-not-feel = Tingling, numbness or pain down the arm.

mistake-1 = Straightening the elbow with the head tilted away.
mistake-2 = Holding the end position.

# Safety: precautions.
careful-1 = The movement should stay free of tingling. If it tingles, make it smaller, and tell your clinician.
careful-2 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
