### The texts of the exercise in knees-open-side-lying.toml, in English.

name = Opening the knees, lying on the side
purpose = Strengthens the muscles at the outer and back side of the hip.
set-up = Lie on the side that is not named, a pillow under your head, hips and knees bent, feet on each other and in line with the back.
step-1 = Turn the pelvis straight to the front, one hip above the other.
step-2 = Keep the feet together and lift the upper knee, as far as the pelvis stays still.
step-3 = Stay there for a moment.
step-4 = Lower slowly.
should-feel = The muscles at the side and back of the upper hip working.
should-not-feel = A pinch in the groin, or pain in the lower back.

mistake-1 = Rolling the pelvis backward.
mistake-2 = Lifting the feet.
mistake-3 = Letting the knee drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-2 = If lying on the lower side hurts, use a thick mat or tell your clinician.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = Numbness or weakness that runs down the leg.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-free-name = No band
level-free-change = Only the weight of the leg.
level-band-name = With a band
level-band-change = A light band round both thighs, just above the knees.
