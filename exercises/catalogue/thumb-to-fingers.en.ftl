### The texts of the exercise in thumb-to-fingers.toml, in English.

name = Thumb to each finger
purpose = Keeps the thumb mobile for holding and picking up.
set-up = Sit with the named hand open in front of you.
step-1 = Touch the tip of the index finger with the tip of the thumb.
step-2 = Open the hand, then touch the middle, the ring and the little finger in turn.
step-3 = Make a round ring each time. One round is one movement.
should-feel = Light work at the ball of the thumb.
should-not-feel = Sharp pain at the base of the thumb.

mistake-1 = Bending the wrist.
mistake-2 = Pressing the tips together.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A finger that locks, turns pale or blue, or swells.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
