### The texts of the exercise in knee-straighten.toml, in English.

name = Straighten the knee, sitting
purpose = Strengthens the front of the thigh, so that the knee straightens fully and is steady on stairs.
set-up = Sit well back on a steady chair, hands beside you on the chair, thighs supported.
step-1 = Pull up the toes of the named foot.
step-2 = Straighten the knee as far as it goes without pain.
step-3 = Tighten the front of the thigh and stay there.
step-4 = Lower the foot slowly.
should-feel = The muscle above the kneecap working, perhaps a mild pull at the back of the knee.
should-not-feel = Painful grinding under the kneecap, or pain that shoots down the back of the leg.

mistake-1 = Leaning back to help.
mistake-2 = Swinging the leg up.
mistake-3 = Letting the foot drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had surgery on the ligaments of the knee: straightening it against resistance may not be allowed yet.
careful-2 = If the leg tingles while straight, do not raise it as far, and tell your clinician.

# Safety: signs to stop at once.
stop-1 = A knee that locks, gives way or swells.
stop-2 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-bare-leg-name = The leg alone
level-bare-leg-change = Nothing on the foot.
level-shoe-name = With a sturdy shoe
level-shoe-change = The shoe adds a little weight.
level-ankle-weight-name = With a light weight
level-ankle-weight-change = About one kilogram around the ankle.
