### The texts of the exercise in heel-raise.toml, in English.

name = Heel raise
purpose = Strengthens the calf and the Achilles tendon for walking, stairs and pushing off.
set-up = Stand at a worktop, feet hip-width apart, weight even, knees straight but not locked.
step-1 = Rise onto the balls of both feet, as high as you can without rolling outward.
step-2 = Stay there for 1 second.
step-3 = Lower slowly until the heels touch the floor.
should-feel = The calves working and getting tired, the same on both sides.
should-not-feel = Sharp pain at the heel or in the Achilles tendon, or a cramp that does not pass.

mistake-1 = Rolling onto the outer edge of the foot.
mistake-2 = Leaning on your arms.
mistake-3 = Dropping down quickly.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a tear or an operation of the Achilles tendon.
careful-2 = Some stiffness of the tendon the next morning is normal. Tell your clinician if it lasts.

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
