### The texts of the exercise in chair-rise-30s.toml, in English.

name = Rising from a chair, 30 seconds
purpose = A test of your legs, always done in the same way, so that its counts can be compared.
set-up = Put a firm chair of usual height and without arms against a wall, so that it cannot slide. Wear sturdy shoes. Always use the same chair.
step-1 = Sit in the middle of the seat, feet flat on the floor, hip-width apart. Cross your arms on your chest.
step-2 = At the rising tone, stand up until your legs are straight, and sit down again fully.
step-3 = Go on as often as you can, safely, until the last tone. Count each time you stand fully upright.
step-4 = Count aloud, or press for each one if somebody is with you. Afterwards you say the number. None is an answer too.
should-feel = Thighs and buttocks working hard, and being out of breath.
should-not-feel = Sharp pain in the knee, the hip or the back, or light-headedness.

mistake-1 = Pushing with the hands.
mistake-2 = Not standing fully upright, or not sitting down fully.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have heart trouble, chest pain, or high blood pressure that is not well controlled.
careful-2 = Ask your clinic first if you have a joint replacement, or an operation or fracture of the leg that is still healing.
careful-3 = Do not do this alone if you have fallen recently or feel dizzy. Stop before you lose your footing: a count that was stopped is kept, and nothing is lost.

# Safety: signs to stop at once.
stop-1 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-2 = Light-headedness: sit down, and stop for today. If it does not pass at once, or comes back, call your clinic before you do this again.
stop-3 = A fall, or a near fall.
stop-4 = A knee that locks or gives way, or pain above the limit in your plan.

# Levels, from easy to hard.
level-seat-usual-name = Usual seat
level-seat-usual-change = A chair of usual height, arms crossed on the chest.
