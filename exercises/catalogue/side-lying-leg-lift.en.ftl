### The texts of the exercise in side-lying-leg-lift.toml, in English.

name = Leg lift, lying on the side
purpose = Strengthens the muscles at the side of the hip, which keep the pelvis level when you walk.
set-up = Lie on the side that is not named, a pillow under your head, the lower knee bent and a second pillow between the knees. The named leg is on top, in line with the trunk.
step-1 = Turn the pelvis straight to the front, one hip above the other.
step-2 = Lead with the heel and lift the upper leg off the pillow, as far as your level says.
step-3 = Stay there without rolling back.
step-4 = Lower slowly until the leg rests on the pillow again, no lower than the hip.
should-feel = The muscles at the side and back of the upper hip working and getting tired.
should-not-feel = A pinch in the groin, pain at the outer side of the hip on which you lie, or pain in the lower back.

mistake-1 = Rolling the pelvis backward.
mistake-2 = Turning the toes up to the ceiling.
mistake-3 = Swinging the leg, or letting it sink below the height of the hip.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-2 = If lying on the lower side hurts, use a thick mat or tell your clinician.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = Numbness or weakness that runs down the leg.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-to-level-name = Up to hip height
level-to-level-change = Lift the leg just off the pillow, until it is horizontal.
level-above-level-name = Above hip height
level-above-level-change = Lift as high as you can while the pelvis stays still.
