### The texts of the exercise in head-lift-small.toml, in English.

name = Small head lift, lying
purpose = Trains the muscles at the front of the neck to carry the head for longer.
set-up = Lie on your back with the knees bent, your head on the pillows of your level, arms beside you.
step-1 = Nod a little first, as if to say yes.
step-2 = Keep the nod and lift the head just off the pillow, the height of a finger.
step-3 = Stay there and breathe.
step-4 = Lower the head first, then let go of the nod.
should-feel = Work at the front of the neck, the same on both sides.
should-not-feel = A chin that pushes forward, pain, dizziness or a headache.

mistake-1 = Letting the chin point up.
mistake-2 = Lifting higher than a finger.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = If lying down or getting up makes you dizzy, take your time: roll onto your side first.
careful-3 = Ask your clinic first if you are pregnant, or if lying flat makes you breathless or dizzy.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-two-pillows-name = From two pillows
level-two-pillows-change = The head starts high, so the way is short.
level-one-name = From one pillow
level-one-change = The head starts lower.
