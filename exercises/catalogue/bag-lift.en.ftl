### The texts of the exercise in bag-lift.toml, in English.

name = Lift a bag
purpose = Gets the back used to lifting again, a little more often every few days.
set-up = Put a bag with a few light things in it on the floor beside your foot. Stand with your feet hip-width apart.
step-1 = Bend your hips and knees and take the handle.
step-2 = Stand up with the bag, then set it down again in the same way. That is one time.
step-3 = Do as many as your plan says, no less on a bad day and no more on a good one. Change hands as you like.
should-feel = Your legs and back at work; the usual ache may come. It is no sign of harm.
should-not-feel = Pain that runs into the leg, or tingling or numbness that is new.

mistake-1 = Stopping earlier because it aches, or going on because it does not.
mistake-2 = Holding your breath while lifting.
mistake-3 = Taking a heavier bag than agreed.

# Safety: precautions.
careful-1 = The number and the weight are set by your clinic. Begin with a bag that you would carry without a thought.
careful-2 = If every time leaves you clearly worse until the next day, call before you go on.

# Safety: signs to stop at once.
stop-1 = Numbness between the legs, trouble holding or passing water or stool, or a leg that suddenly gives way: get medical help now.
stop-2 = Pressure or pain in the chest: call your local emergency number.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-bag-name = Light bag
level-light-bag-change = A bag of one or two kilograms.
level-fuller-bag-name = Fuller bag
level-fuller-bag-change = A bag of three to five kilograms, as agreed with your clinic.
