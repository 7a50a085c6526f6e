### The texts of the exercise in side-lying-turn-out.toml, in English.

name = Turning the arm out, lying on the side
purpose = Strengthens the muscles that turn the shoulder outward.
set-up = Lie on the side that is not named, a pillow under your head, knees bent. The named arm is on top, a rolled towel between its elbow and your side, the elbow bent to a right angle, the hand in front of your belly.
step-1 = Set the shoulder low and back.
step-2 = Lift the hand: the forearm turns up, the elbow stays on the towel.
step-3 = Go only as far as it stays free of pain.
step-4 = Lower slowly.
should-feel = The muscles at the back of the shoulder working.
should-not-feel = A pinch at the front or the top of the shoulder.

mistake-1 = Rolling the body backward.
mistake-2 = Taking the elbow off the towel.
mistake-3 = Letting the hand drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = If lying on the lower side hurts, use a thick mat or tell your clinician.
careful-3 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-empty-name = Empty hand
level-empty-change = No weight.
level-bottle-name = Small bottle
level-bottle-change = A bottle with half a litre of water.
level-bottle-bigger-name = Bigger bottle
level-bottle-bigger-change = A bottle with one litre of water.
