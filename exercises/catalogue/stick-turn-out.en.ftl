### The texts of the exercise in stick-turn-out.toml, in English.

name = Turning the arm out with a stick
purpose = Stretches a shoulder that turns outward too little.
set-up = Stand tall, elbows bent to a right angle at your sides, a rolled towel between the named elbow and your side, a stick in both hands.
step-1 = Push the stick with the other hand, so that the named forearm turns outward.
step-2 = Keep the named elbow on the towel and the arm loose.
step-3 = Stay where it pulls, and breathe.
step-4 = Come back slowly.
should-feel = A pull at the front of the shoulder.
should-not-feel = Sharp pain, or a shoulder that feels as if it slips.

mistake-1 = Turning the trunk.
mistake-2 = Taking the elbow off the towel.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
