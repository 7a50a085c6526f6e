### The texts of the exercise in chin-nod-lying.toml, in English.

name = Small nod, lying down
purpose = Activates the deep muscles at the front of the neck, which hold the head up without strain.
set-up = Lie on your back with your knees bent and your feet flat on the floor. Put a folded towel under your head, so that your forehead and chin are at the same height.
step-1 = Let your head rest heavily and relax your jaw, with the teeth a little apart.
step-2 = Nod as if to say a very small yes: the chin tips toward the throat, and the back of the head slides up the towel.
step-3 = Go only as far as the front of the throat stays soft. If it becomes hard, nod less.
step-4 = Stay there and breathe calmly.
step-5 = Slowly roll the head back.
should-feel = Light work deep at the front of the neck, and a stretch at the back of it. It should seem almost too easy.
should-not-feel = Tight, bulging muscles at the throat, shaking, pain, dizziness or pressure in the ears.

mistake-1 = Lifting the head off the towel.
mistake-2 = Pressing the head down into the towel.
mistake-3 = Clenching your teeth or holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = If lying down or getting up makes you dizzy, take your time: roll onto your side first.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-head-heavy-name = Head heavy on the towel
level-head-heavy-change = The head rests with its whole weight. It only rolls.
level-head-light-name = Head light on the towel
level-head-light-change = After the nod, rest a little less of the head's weight on the towel, without lifting it. If the front of the throat becomes hard, let the head rest heavily again.
