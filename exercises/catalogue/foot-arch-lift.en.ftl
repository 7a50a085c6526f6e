### The texts of the exercise in foot-arch-lift.toml, in English.

name = Lifting the arch of the foot
purpose = Trains the small muscles that carry the arch of the foot.
set-up = Sit on a chair, the named foot bare and flat on the floor below the knee.
step-1 = Spread the weight evenly over heel, ball and toes.
step-2 = Draw the ball of the foot toward the heel, so that the arch rises. The toes stay long.
step-3 = Stay there and breathe.
step-4 = Let go slowly.
should-feel = Light work in the sole.
should-not-feel = A cramp that does not pass, or pain under the heel.

mistake-1 = Curling the toes.
mistake-2 = Rolling the foot outward.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the ankle or foot that is still healing.
careful-2 = If the foot cramps, stop, shake it out and press less the next time.

# Safety: signs to stop at once.
stop-1 = A foot that has newly become weak or numb: get medical help now.
stop-2 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-sitting-name = Sitting
level-sitting-change = On a chair, with little weight on the foot.
level-standing-name = Standing
level-standing-change = On both feet, with more weight on the arch.
level-standing-set-up = Stand barefoot on both feet, hip-width apart, beside a solid support.
level-standing-step-1 = Spread the weight evenly over heel, ball and toes.
level-standing-step-2 = Draw the ball of the named foot toward the heel, so that the arch rises. The toes stay long.
level-standing-step-3 = Stay there and breathe.
level-standing-step-4 = Let go slowly.
