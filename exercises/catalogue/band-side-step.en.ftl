### The texts of the exercise in band-side-step.toml, in English.

name = Side steps with a band
purpose = Strengthens the outer muscles of the hip for walking.
set-up = Stand at a worktop that you can hold on to, feet hip-width apart, knees and hips a little bent.
step-1 = Take a step to the side, toes forward.
step-2 = Let the other foot follow slowly, so that the band stays taut.
step-3 = After each set, go back the other way.
should-feel = The muscles at the outer side of both hips working.
should-not-feel = A pinch in the groin, or pain in the lower back.

mistake-1 = Leaning to the side.
mistake-2 = Letting the knees fall inward.
mistake-3 = Dragging the foot.

# Safety: precautions.
careful-1 = Never do this without a solid support within reach. Wear sturdy shoes; do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.
careful-3 = Look the band over for tears before each use, and never let it point at your eyes.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Numbness or weakness that runs down the leg.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-free-name = No band
level-free-change = Only the weight of the leg.
level-band-name = Band round the ankles
level-band-change = A light band round both ankles.
