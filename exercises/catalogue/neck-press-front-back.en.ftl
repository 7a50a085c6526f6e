### The texts of the exercise in neck-press-front-back.toml, in English.

name = Head against the hand, front and back
purpose = Strengthens the front and the back of the neck without moving it.
set-up = Sit tall on a chair and look straight ahead. Lay one palm on the forehead.
step-1 = Sit tall and let both shoulders sink.
step-2 = Press the forehead into the hand. Nothing moves, because the hand presses back with the same force.
step-3 = Build up the force slowly, over one breath.
step-4 = Keep the chin where it is, and keep breathing.
step-5 = Relax as slowly as you built up the force.
should-feel = Light work at the front or at the back of the neck.
should-not-feel = Movement of the head, sharp pain, tingling in an arm, dizziness or a headache.

mistake-1 = Pushing so hard that the head moves.
mistake-2 = Starting or letting go with a jerk.
mistake-3 = Pushing the chin forward.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-front-light-name = Forward, light pressure
level-front-light-change = Forehead into the palm, hardly more than the weight of the hand.
level-front-firm-name = Forward, firm pressure
level-front-firm-change = Forehead into the palm, about a quarter of your strength. The head still does not move.
level-back-light-name = Backward, light pressure
level-back-light-change = The back of the head into the palm, hardly more than the weight of the hand.
level-back-light-set-up = Sit tall on a chair and look straight ahead. Lay one palm on the back of the head, just above the neck.
level-back-light-step-1 = Sit tall and let both shoulders sink.
level-back-light-step-2 = Press the head back into the hand. Nothing moves, because the hand presses forward with the same force.
level-back-light-step-3 = Build up the force slowly, over one breath.
level-back-light-step-4 = Keep the chin where it is, and keep breathing.
level-back-light-step-5 = Relax as slowly as you built up the force.
level-back-firm-name = Backward, firm pressure
level-back-firm-change = The back of the head into the palm, about a quarter of your strength.
level-back-firm-set-up = Sit tall on a chair and look straight ahead. Lay one palm on the back of the head, just above the neck.
level-back-firm-step-1 = Sit tall and let both shoulders sink.
level-back-firm-step-2 = Press the head back into the hand. Nothing moves, because the hand presses forward with the same force.
level-back-firm-step-3 = Build up the force slowly, over one breath.
level-back-firm-step-4 = Keep the chin where it is, and keep breathing.
level-back-firm-step-5 = Relax as slowly as you built up the force.
