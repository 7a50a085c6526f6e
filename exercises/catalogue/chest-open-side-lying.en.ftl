### The texts of the exercise in chest-open-side-lying.toml, in English.

name = Opening the chest, lying on the side
purpose = Loosens the turning of the upper back.
set-up = Lie on the side that is not named, a pillow under your head, hips and knees bent, both arms straight ahead, one on the other.
step-1 = Lift the upper arm and lead it over to the other side, the eyes with it.
step-2 = Let the chest turn; the knees stay together on the mat.
step-3 = Stay there for one breath.
step-4 = Come back slowly.
should-feel = A stretch across the chest and the upper back.
should-not-feel = A pinch in the shoulder, or tingling in the arm.

mistake-1 = Letting the knees come apart.
mistake-2 = Forcing the arm down to the floor.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-2 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-3 = If lying on the lower side hurts, use a thick mat or tell your clinician.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
