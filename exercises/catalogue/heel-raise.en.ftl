### The texts of the exercise in heel-raise.toml, in English.

name = Heel raise
purpose = Strengthens the calf and the Achilles tendon for walking, stairs and pushing off.
set-up = Stand at a worktop, feet hip-width apart, weight even, knees straight but not locked.
step-1 = Rise onto the balls of both feet, as high as you can without rolling outward.
step-2 = Stay there for 1 second.
step-3 = Lower slowly until the heels touch the floor.
should-feel = The calf working and getting tired; on both legs, the same on both sides.
should-not-feel = Sharp pain at the heel or in the Achilles tendon, or a cramp that does not pass.

mistake-1 = Rolling onto the outer edge of the foot.
mistake-2 = Leaning on your arms.
mistake-3 = Dropping down quickly.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a tear or an operation of the Achilles tendon.
careful-2 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = A sudden snap, or the feeling of being kicked, at the back of the leg: get medical help now.
stop-2 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-both-hands-name = Both hands on the worktop
level-both-hands-change = Rest your hands flat. The legs still do the work.
level-fingertips-name = Fingertips on the worktop
level-fingertips-change = Only the fingertips touch, for balance.
level-no-hands-name = Without hands
level-no-hands-change = The worktop stays within reach.
level-one-leg-both-hands-name = One leg, both hands on the worktop
level-one-leg-both-hands-change = One leg lifts the whole weight. The hands rest flat, for balance.
level-one-leg-both-hands-set-up = Stand at a worktop on the named leg, the other foot off the floor behind you, knee straight but not locked. Rest both hands flat on it.
level-one-leg-both-hands-step-1 = Rise onto the ball of the named foot, as high as you can without rolling outward.
level-one-leg-both-hands-step-2 = Stay there for 1 second.
level-one-leg-both-hands-step-3 = Lower slowly until the heel touches the floor. Do not drop.
level-one-leg-fingertips-name = One leg, fingertips on the worktop
level-one-leg-fingertips-change = One leg lifts the whole weight. Only the fingertips touch.
level-one-leg-fingertips-set-up = Stand at a worktop on the named leg, the other foot off the floor behind you, knee straight but not locked. Rest only your fingertips on it.
level-one-leg-fingertips-step-1 = Rise onto the ball of the named foot, as high as you can without rolling outward.
level-one-leg-fingertips-step-2 = Stay there for 1 second.
level-one-leg-fingertips-step-3 = Lower slowly until the heel touches the floor. Do not drop.
