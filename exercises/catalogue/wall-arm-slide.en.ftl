### The texts of the exercise in wall-arm-slide.toml, in English.

name = Forearms up the wall
purpose = Trains the muscles that turn the shoulder blades upward when you raise the arms.
set-up = Stand facing a wall, one foot a little ahead if you like. Lay both forearms on the wall, elbows at chest height, little fingers touching it.
step-1 = Press the forearms lightly into the wall.
step-2 = Slide them up the wall as far as your level says, and let the body come along.
step-3 = Stay there for a moment, shoulders away from the ears.
step-4 = Slide down slowly.
should-feel = Work around the shoulder blades and at the sides of the chest.
should-not-feel = A pinch at the top of the shoulder, or tingling in the arms.

mistake-1 = Pulling the shoulders up to the ears.
mistake-2 = Arching the lower back.
mistake-3 = Taking the forearms off the wall.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-low-name = Up to the forehead
level-low-change = The hands go up to the height of the forehead.
level-overhead-name = Above the head
level-overhead-change = The hands go up as far as the shoulders stay low.
