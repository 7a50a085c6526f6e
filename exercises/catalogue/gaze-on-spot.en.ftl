### The texts of the exercise in gaze-on-spot.toml, in English.

name = Gaze on a spot
purpose = Trains the eyes to stay on one spot while the head moves, as when you walk and read a sign.
set-up = Sit on a steady chair, about two arm's lengths from a wall. Put a small mark on the wall, level with your eyes. Wear your glasses if you need them for that distance.
step-1 = Look at the mark and keep it sharp.
step-2 = Turn your head a little to one side and back past the middle to the other, about a hand's width each way. One side for each beat.
step-3 = Your eyes stay on the mark all the time. If it blurs or jumps, make the movement smaller.
step-4 = Breathe on, and keep shoulders and trunk still. Rest when the sound says so.
should-feel = Concentration, and perhaps a slight unsteadiness that goes within a minute.
should-not-feel = Dizziness that grows, nausea, or pain in the neck.

mistake-1 = Letting the eyes go with the head.
mistake-2 = Turning further than the mark stays sharp.
mistake-3 = Moving the whole trunk.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = Ask your clinic first if moving your neck makes you faint or changes your sight.
careful-3 = Do it sitting, and stay seated afterwards until any dizziness has settled. Do not drive straight afterwards if you feel dizzy.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or nausea that grows while you do it: stop and stay seated. If it does not settle within a few minutes, call your clinic before you do this again.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-side-to-side-name = Side to side
level-side-to-side-change = The head turns left and right, as in a small “no”.
level-up-and-down-name = Up and down
level-up-and-down-change = The head nods up and down, as in a small “yes”.
level-up-and-down-set-up = Sit on a steady chair, about two arm's lengths from a wall. Put a small mark on the wall, level with your eyes. Wear your glasses if you need them for that distance.
level-up-and-down-step-1 = Look at the mark and keep it sharp.
level-up-and-down-step-2 = Nod your head a little up and down, about a hand's width each way. One direction for each beat.
level-up-and-down-step-3 = Your eyes stay on the mark all the time. If it blurs or jumps, make the movement smaller.
level-up-and-down-step-4 = Breathe on, and keep shoulders and trunk still. Rest when the sound says so.
