### The texts of the exercise in hip-hinge.toml, in English.

name = Bending from the hips
purpose = Trains to bend and lift from the hips while the back keeps its shape.
set-up = Stand with the feet hip-width apart. Hold a stick along your back, one hand behind the neck, one behind the lower back: it touches the head, the upper back and the sacrum.
step-1 = Loosen the knees a little.
step-2 = Push the hips back and lean forward. The stick stays in contact at all three places.
step-3 = Stop when a contact is about to be lost.
step-4 = Push the hips forward again and come up.
should-feel = The buttocks and the back of the thighs at work, the back quiet.
should-not-feel = Pain in the lower back, or pain down a leg.

mistake-1 = Rounding the back.
mistake-2 = Bending the knees instead of the hips.
mistake-3 = Lifting the head.

# Safety: precautions.
careful-1 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-2 = Stand on a dry floor that does not slip, in sturdy shoes.
careful-3 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-half-name = Half way
level-half-change = Lean until the hands would reach the middle of the thighs.
level-full-name = Down to the knees
level-full-change = Lean until the hands would reach the knees.
