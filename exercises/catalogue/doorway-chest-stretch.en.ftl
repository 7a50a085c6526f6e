### The texts of the exercise in doorway-chest-stretch.toml, in English.

name = Chest stretch in a doorway
purpose = Stretches the muscles at the front of chest and shoulders.
set-up = Stand in an open doorway, both forearms on its frame, elbows a little below the shoulders, one foot ahead.
step-1 = Shift your weight onto the front foot until the chest pulls.
step-2 = Keep the belly drawn in and the shoulders low.
step-3 = Stay there and breathe.
step-4 = Come back slowly.
should-feel = A pull across the chest.
should-not-feel = Tingling in the arms, or a shoulder that feels as if it slips.

mistake-1 = Arching the lower back.
mistake-2 = Pushing the head forward.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = The movement should stay free of tingling. If it tingles, make it smaller, and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
