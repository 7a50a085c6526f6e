### The texts of the exercise in sitting-time.toml, in English.

name = Sitting for set minutes
purpose = Gets the back used to sitting again, a little longer every few days.
set-up = Sit on a firm chair with both feet flat on the floor. Have at hand what you want to do meanwhile, such as reading or a meal.
step-1 = Sit for the minutes that your plan says, no less on a bad day and no more on a good one.
step-2 = Shift your weight and move a little as you like.
step-3 = When the time is over, get up and walk a few steps.
should-feel = The usual ache may come. It is no sign of harm, and need not grow less at first.
should-not-feel = Pain that runs into the leg, or tingling or numbness that is new.

mistake-1 = Stopping earlier because it aches, or going on because it does not.
mistake-2 = Holding one stiff posture all the time.

# Safety: precautions.
careful-1 = The minutes are set by your clinic. If every sitting leaves you clearly worse until the next day, call before you go on.

# Safety: signs to stop at once.
stop-1 = Numbness between the legs, trouble holding or passing water or stool, or a leg that suddenly gives way: get medical help now.
stop-2 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-with-back-rest-name = With a back rest
level-with-back-rest-change = The back leans on the back rest.
level-without-back-rest-name = Without a back rest
level-without-back-rest-change = Sit away from the back rest.
