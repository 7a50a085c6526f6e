### The texts of the exercise in press-into-wall.toml, in English.

name = Pressing into the wall
purpose = Works the muscles of the shoulder without moving it.
set-up = Stand with the named side to a wall, a rolled towel between that elbow and your side. The elbow is bent to a right angle, the back of the hand touches the wall.
step-1 = Set the shoulder low and back.
step-2 = Press the back of the hand outward into the wall. Nothing moves.
step-3 = Build up the force slowly, to about a third of your strength.
step-4 = Keep breathing.
step-5 = Let go slowly.
should-feel = Work in the shoulder, without movement.
should-not-feel = Sharp pain in the shoulder, or pain that goes on after you let go.

mistake-1 = Pressing with a jerk.
mistake-2 = Taking the elbow off the towel.
mistake-3 = Pulling up the shoulder.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.
careful-3 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-outward-name = Outward
level-outward-change = The back of the hand presses outward into the wall.
level-fwd-name = Forward
level-fwd-change = The palm presses forward into the wall.
level-fwd-set-up = Stand facing a wall, close to it, a rolled towel between the named elbow and your side. The elbow is bent to a right angle, the palm flat on the wall.
level-fwd-step-1 = Set the shoulder low and back.
level-fwd-step-2 = Press the palm forward into the wall. Nothing moves.
level-fwd-step-3 = Build up the force slowly, to about a third of your strength.
level-fwd-step-4 = Keep breathing.
level-fwd-step-5 = Let go slowly.
level-bk-name = Backward
level-bk-change = The elbow presses backward into the wall.
level-bk-set-up = Stand with your back to a wall, close to it. The named elbow is bent to a right angle beside you and touches the wall.
level-bk-step-1 = Set the shoulder low and back.
level-bk-step-2 = Press the elbow backward into the wall. Nothing moves.
level-bk-step-3 = Build up the force slowly, to about a third of your strength.
level-bk-step-4 = Keep breathing.
level-bk-step-5 = Let go slowly.
