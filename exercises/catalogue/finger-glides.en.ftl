### The texts of the exercise in finger-glides.toml, in English.

name = Finger glides
purpose = Lets the tendons of the fingers slide their full way. Helps against stiffness after typing, rest or a splint.
set-up = Sit with your elbow on a table, hand up, wrist straight, fingers together and straight.
step-1 = Start with straight fingers.
step-2 = Bend the two outer joints of all fingers to make a hook. The knuckles stay straight.
step-3 = Continue into a full fist, without squeezing.
step-4 = Open the same way back, until the fingers are straight.
should-feel = Easy sliding, perhaps a mild stretch in the fingers and the palm.
should-not-feel = Sharp pain, a finger that catches or snaps, tingling or numbness.

mistake-1 = Bending the wrist along with the fingers.
mistake-2 = Squeezing hard.
mistake-3 = Hurrying from one position to the next.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a tendon repair or a fracture of the hand. Follow the instructions you were given for it, not this page.
careful-2 = Ask your clinic first if a finger is hot, red or swollen.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers.
stop-2 = A finger that locks, turns pale or blue, or swells.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-hook-name = Straight and hook
level-hook-change = Only from straight fingers to a hook. Do not go on into a fist.
level-hook-step-1 = Start with straight fingers.
level-hook-step-2 = Bend the two outer joints of all fingers to make a hook. The knuckles stay straight.
level-hook-step-3 = Stop there for a moment. Do not go on into a fist.
level-hook-step-4 = Open the same way back, until the fingers are straight.
level-hook-fist-name = Straight, hook and fist
level-hook-fist-change = From the hook on into a full, gentle fist.
