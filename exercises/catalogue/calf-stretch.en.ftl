### The texts of the exercise in calf-stretch.toml, in English.

name = Calf stretch
purpose = Lets the ankle bend further when you walk, squat or go down stairs.
set-up = Stand facing a steady worktop with both hands on it. Put the leg to be stretched a long step back, toes pointing straight ahead, heel flat on the floor.
step-1 = Keep the back knee straight and the heel down.
step-2 = Bend the front knee slowly and let the hips move forward until you feel a pull in the back calf.
step-3 = Stay there and breathe calmly. Let the pull fade by itself; do not bounce.
step-4 = Come back slowly by pushing gently with the hands.
should-feel = A steady, mild pull in the calf that you could bear for a long time.
should-not-feel = Pain in the tendon above the heel or in the front of the ankle, cramp, or tingling in the foot.

mistake-1 = Letting the back foot turn out or its inner edge sink down.
mistake-2 = Letting the heel rise.
mistake-3 = Bouncing, or going on into pain.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a torn calf muscle, an operation or a blood clot in this leg.
careful-2 = Do it where you can hold on with both hands.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = New numbness or tingling in the foot.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-knee-straight-name = Knee straight
level-knee-straight-change = With the knee straight, the upper part of the calf is stretched.
level-knee-bent-name = Knee bent
level-knee-bent-change = With the knee bent, the lower part of the calf is stretched.
level-knee-bent-set-up = Stand facing a steady worktop with both hands on it. Put the leg to be stretched half a step back, toes pointing straight ahead, heel flat on the floor.
level-knee-bent-step-1 = Bend both knees slowly, heels down, until you feel a pull low in the back calf.
level-knee-bent-step-2 = Let the knee move straight over the toes.
level-knee-bent-step-3 = Stay there and breathe calmly. Do not bounce.
level-knee-bent-step-4 = Straighten slowly, pushing gently with the hands.
