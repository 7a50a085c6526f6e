### The texts of the exercise in neck-side-press.toml, in English.

name = Head against the hand
purpose = Strengthens the side of the neck without moving it, so that it holds the head up better.
set-up = Sit or stand tall and look straight ahead. Lay the palm of the named side against that side of the head, above the ear. If that arm does not go up so far without pain, stand with that side to a wall and put a folded towel between wall and head, in place of the hand.
step-1 = Sit or stand tall and let both shoulders sink.
step-2 = Press the head into the hand, or the towel. Nothing moves, because the hand presses back with the same force.
step-3 = Build up the force slowly, over one breath.
step-4 = Keep breathing.
step-5 = Relax as slowly as you built up the force.
should-feel = Light work along the named side of the neck.
should-not-feel = Movement of the head, sharp pain, tingling in the arm, dizziness or a headache.

mistake-1 = Pushing so hard that the head tilts.
mistake-2 = Starting or letting go with a jerk.
mistake-3 = Pulling up the shoulder.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-touch-name = Light pressure
level-light-touch-change = Hardly more than the weight of the hand.
level-firm-touch-name = Firm pressure
level-firm-touch-change = About a quarter of your strength. The head still does not move.
