### The texts of the exercise in nod-sitting.toml, in English.

name = Small nod, sitting
purpose = Trains the deep muscles at the front of the neck that hold the head while you sit.
set-up = Sit tall on a chair, feet flat, hands on your thighs.
step-1 = Grow tall and let the shoulders sink.
step-2 = Nod as if to say a small yes: the chin sinks a little, the back of the neck grows long.
step-3 = Stay there with little effort, and keep breathing.
step-4 = Let go slowly.
should-feel = Light work deep at the front of the neck.
should-not-feel = Hard work of the muscles at the sides of the throat, pain, or dizziness.

mistake-1 = Pressing the chin onto the chest.
mistake-2 = Pushing the head forward.
mistake-3 = Clenching the teeth.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-head-on-wall-name = Head on a wall
level-head-on-wall-change = The back of the head rests lightly on a wall.
level-head-on-wall-set-up = Sit on a chair with its back to a wall, so that the back of your head touches the wall lightly.
level-head-on-wall-step-1 = Grow tall and let the shoulders sink.
level-head-on-wall-step-2 = Nod as if to say a small yes: the head slides up the wall, and the chin sinks a little.
level-head-on-wall-step-3 = Stay there with little effort, and keep breathing.
level-head-on-wall-step-4 = Let go slowly.
level-free-name = Head free
level-free-change = Nothing behind the head.
