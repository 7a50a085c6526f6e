### The texts of the exercise in back-shoulder-stretch.toml, in English.

name = Stretching the back of the shoulder
purpose = Stretches the back of the shoulder.
set-up = Stand or sit tall.
step-1 = Lead the named arm across the chest, below the height of the shoulder.
step-2 = Take its elbow with the other hand and draw it toward the other side.
step-3 = Let the shoulder stay low. Stay there and breathe.
step-4 = Let go slowly.
should-feel = A pull at the back of the shoulder.
should-not-feel = A pinch at the front or the top of the shoulder.

mistake-1 = Pulling the shoulder up.
mistake-2 = Turning the trunk along.

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
