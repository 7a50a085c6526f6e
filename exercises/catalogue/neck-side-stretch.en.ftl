### The texts of the exercise in neck-side-stretch.toml, in English.

name = Stretching the side of the neck
purpose = Stretches the muscles between neck and shoulder.
set-up = Sit tall on a chair. The hand of the named side holds the edge of the seat.
step-1 = Let the named shoulder sink.
step-2 = Tilt the head to the other side until the named side pulls.
step-3 = Stay there and breathe calmly.
step-4 = Come back slowly.
should-feel = A pull at the side of the neck, down to the shoulder.
should-not-feel = Tingling in the arm, dizziness, or a pinch on the side to which you tilt.

mistake-1 = Turning the head.
mistake-2 = Pulling up the shoulder.
mistake-3 = Pulling at the head with the hand.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = The movement should stay free of tingling. If it tingles, make it smaller, and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
