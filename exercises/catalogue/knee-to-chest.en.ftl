### The texts of the exercise in knee-to-chest.toml, in English.

name = Knee to chest
purpose = Stretches the lower back and the buttock.
set-up = Lie on your back, legs straight or one knee bent.
step-1 = Draw the named knee up and take it with both hands, below the kneecap or behind the thigh.
step-2 = Draw it toward the chest until it pulls.
step-3 = Stay there and breathe calmly.
step-4 = Put the foot down slowly.
should-feel = A pull in the buttock and the lower back.
should-not-feel = A pinch in the groin, or pain down the leg.

mistake-1 = Lifting the head.
mistake-2 = Pulling with a jerk.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-2 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-3 = Ask your clinic first if you are pregnant, or if lying flat makes you breathless or dizzy.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
