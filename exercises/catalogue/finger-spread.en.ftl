### The texts of the exercise in finger-spread.toml, in English.

name = Spreading the fingers
purpose = Strengthens the muscles that open the hand.
set-up = Sit with the named elbow bent, the fingers and the thumb together. Put the rubber band round them just below the nails, if your level has one.
step-1 = Spread the fingers and the thumb as far as you can.
step-2 = Stay there for a moment.
step-3 = Come together slowly.
should-feel = Light work in the hand and on the back of the forearm.
should-not-feel = Pain in a joint, or a band that cuts into the skin.

mistake-1 = Bending the wrist back.
mistake-2 = Letting the band slip off toward your face.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.
careful-2 = Ask your clinic first if your fingers are numb at night or your grip has become weak.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A finger that locks, turns pale or blue, or swells.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-bare-name = No band
level-bare-change = Only against the air.
level-band-name = Rubber band
level-band-change = A wide rubber band round the fingertips and the thumb.
