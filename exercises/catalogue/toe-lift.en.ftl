### The texts of the exercise in toe-lift.toml, in English.

name = Toe lift
purpose = Trains the muscles that lift the front of the foot, so that it does not catch on the floor when you walk.
set-up = Sit tall on a chair, feet flat and a little in front of the knees.
step-1 = Keep the heels on the floor and lift the front of both feet as high as you can.
step-2 = Stay there.
step-3 = Lower slowly, without slapping the floor.
should-feel = The muscle beside the shin working.
should-not-feel = A cramp that does not pass, pain at the front of the ankle, or tingling in the foot.

mistake-1 = Lifting only the toes and not the foot.
mistake-2 = Rolling the feet outward.
mistake-3 = Letting the feet drop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the ankle or foot that is still healing.
careful-2 = Tell your clinician if one foot lifts clearly less than the other.
careful-3 = Standing: only on a dry floor that does not slip, in sturdy shoes, and with a chair or another solid support beside you to hold on to.

# Safety: signs to stop at once.
stop-1 = A foot that has newly become weak or numb: get medical help now.
stop-2 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-sitting-name = Sitting
level-sitting-change = On a chair, heels on the floor.
level-standing-name = Standing, back against a wall
level-standing-change = The back rests against the wall, and a hand is ready on the support.
level-standing-set-up = Stand in sturdy shoes on a dry floor that does not slip, your back against a wall, feet hip-width apart and a foot's length in front of it. Have a steady chair or another solid support beside you, within reach.
level-standing-step-1 = Lean your back against the wall and put one hand on the support.
level-standing-step-2 = Keep the heels on the floor and lift the front of both feet only as high as you stay steady.
level-standing-step-3 = Stay there.
level-standing-step-4 = Lower slowly, without slapping the floor.
