### The texts of the exercise in small-squat.toml, in English.

name = Small squat
purpose = Strengthens thighs and buttocks for sitting down, getting up and lifting.
set-up = Stand in front of a worktop, feet hip-width apart, hands lightly on it.
step-1 = Push the hips back and bend the knees, as far as your level says.
step-2 = Keep the knees over the feet and the heels on the floor.
step-3 = Stay there for a moment.
step-4 = Push up through the heels.
should-feel = Thighs and buttocks working.
should-not-feel = Sharp pain in a knee or in the groin.

mistake-1 = Letting the knees fall inward.
mistake-2 = Lifting the heels.
mistake-3 = Pulling on the worktop.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a joint replacement, or an operation or fracture of the leg that is still healing.
careful-2 = Never do this without a solid support within reach. Wear sturdy shoes; do not wear socks on a smooth floor.

# Safety: signs to stop at once.
stop-1 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-2 = A knee that locks, gives way or swells.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = A little
level-small-change = As if to sit on a high stool.
level-deeper-name = Deeper
level-deeper-change = As if to sit on a chair.
