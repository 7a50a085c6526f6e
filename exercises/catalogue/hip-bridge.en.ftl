### The texts of the exercise in hip-bridge.toml, in English.

name = Bridge
purpose = Strengthens the buttocks and the back of the thighs, and steadies the lower back and pelvis.
set-up = Lie on your back on a mat, knees bent, feet flat and hip-width apart, arms straight beside you.
step-1 = Breathe out and draw in your lower belly a little.
step-2 = Press both feet into the floor and lift the pelvis until shoulders, hips and knees are in line.
step-3 = Keep both sides of the pelvis at the same height.
step-4 = Stay there and breathe calmly.
step-5 = Lower slowly, all the way to the mat.
should-feel = The buttocks and the back of the thighs working on both sides.
should-not-feel = Pinching in the lower back, a cramp that does not pass, or pressure in the neck.

mistake-1 = Arching your back to get higher.
mistake-2 = Letting the knees drift apart or one hip sink.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.
careful-2 = Ask your clinic first if you are pregnant, or if lying flat makes you breathless or dizzy.
careful-3 = Ask your clinic first if you have a hernia, or if an operation on your abdomen is still healing.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-3 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-heels-close-name = Heels close
level-heels-close-change = Heels a hand's length from the buttocks.
level-heels-away-name = Heels further away
level-heels-away-change = Heels a foot's length further away. The back of the thighs works more.
