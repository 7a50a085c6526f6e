### The texts of the exercise in arm-raise-diagonal.toml, in English.

name = Arm raise, half to the side
purpose = Strengthens the muscles that raise the arm.
set-up = Stand tall, arms beside you, the thumb of the named hand pointing forward.
step-1 = Set the shoulder low.
step-2 = Raise the straight arm between forward and sideways, thumb up, as high as it stays free of pain and the shoulder stays low.
step-3 = Stay there for a moment.
step-4 = Lower slowly.
should-feel = The muscles around the shoulder and the shoulder blade working.
should-not-feel = A pinch at the top of the shoulder, or tingling in the arm.

mistake-1 = Pulling the shoulder up to the ear.
mistake-2 = Leaning to the other side.
mistake-3 = Swinging the arm.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

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
