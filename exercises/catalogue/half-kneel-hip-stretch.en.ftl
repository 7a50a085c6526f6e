### The texts of the exercise in half-kneel-hip-stretch.toml, in English.

name = Hip stretch, half-kneeling
purpose = Stretches the front of the hip.
set-up = Kneel on the named knee, a cushion under it, the other foot flat in front of you, one hand on a chair beside you.
step-1 = Draw the tailbone down, so that the lower back does not arch.
step-2 = Shift the pelvis forward until the front of the named hip pulls.
step-3 = Stay there and breathe.
step-4 = Come back slowly.
should-feel = A pull at the front of the hip and thigh.
should-not-feel = Pain in the lower back or in the kneecap.

mistake-1 = Arching the lower back.
mistake-2 = Leaning forward.
mistake-3 = Turning the pelvis.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-2 = If kneeling hurts, put a cushion under the knees or tell your clinician.
careful-3 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
