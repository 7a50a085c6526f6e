### The texts of the exercise in one-leg-stand.toml, in English.

name = Stand on one leg
purpose = Trains the ankle, the hip and the sense of position that keep you upright on a step or on uneven ground.
set-up = Stand barefoot within reach of a worktop or in a corner, with a clear, dry floor and good light. The side named is the leg you stand on.
step-1 = Fix your eyes on a spot at eye level.
step-2 = Move your weight over the named foot, then lift the other foot a little behind you, without touching the standing leg.
step-3 = Cross your arms on your chest if you feel safe. Otherwise keep your fingertips just above the worktop.
step-4 = Stay tall and calm. Small movements of the ankle are fine.
step-5 = Put the foot down or hold on to the support before you lose your balance. That ends the attempt.
should-feel = The foot and the ankle working all the time, and the buttock of the standing leg getting tired.
should-not-feel = Pain in the ankle, the knee or the hip, dizziness, or fear of falling.

mistake-1 = Hooking the free foot around the standing leg.
mistake-2 = Letting the hip sink out to the side.
mistake-3 = Staring down at the foot, or holding your breath.

# Safety: precautions.
careful-1 = Never do this without a solid support within reach. If you must not go barefoot, ask your clinic first. Do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.
careful-3 = Use soft surfaces and closed eyes only if they are in your plan.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Chest pain, severe breathlessness, sudden weakness, or trouble seeing or speaking: get medical help now.
stop-3 = Dizziness or a spinning feeling: hold on, sit down and stop for today. Call your clinic before you do this again.
stop-4 = Pain above the limit in your plan, or an ankle that gives way.

# Levels, from easy to hard.
level-firm-open-name = Firm floor, eyes open
level-firm-open-change = On the floor, eyes on a spot at eye level.
level-towel-open-name = Folded towel, eyes open
level-towel-open-change = A bath towel folded twice, flat, on a floor that does not slip.
level-cushion-open-name = Cushion, eyes open
level-cushion-open-change = A flat, firm seat cushion, dry, on a floor that does not slip.
level-foam-open-name = Thick foam, eyes open
level-foam-open-change = A thick soft cushion or a foam mat, on a floor that does not slip.
level-firm-closed-name = Firm floor, eyes closed
level-firm-closed-change = Your eyes are closed before you lift the foot. Opening them ends the attempt.
level-firm-closed-set-up = Stand barefoot within reach of a worktop or in a corner, with a clear, dry floor, and better with somebody beside you. The side named is the leg you stand on.
level-firm-closed-step-1 = Hold on to the support with both feet down, and move your weight over the named foot.
level-firm-closed-step-2 = Close your eyes and keep them closed.
level-firm-closed-step-3 = At the starting tone, lift the other foot a little behind you, without touching the standing leg, and let go. Keep your fingertips just above the support.
level-firm-closed-step-4 = Stay tall and calm. Small movements of the ankle are fine.
level-firm-closed-step-5 = Open your eyes, hold on to the support or put the foot down before you lose your balance. Any of these ends the attempt.
level-towel-closed-name = Folded towel, eyes closed
level-towel-closed-change = As on the firm floor, on a bath towel folded twice.
level-towel-closed-set-up = Stand barefoot within reach of a worktop or in a corner, with a clear, dry floor, and better with somebody beside you. The side named is the leg you stand on.
level-towel-closed-step-1 = Hold on to the support with both feet down, and move your weight over the named foot.
level-towel-closed-step-2 = Close your eyes and keep them closed.
level-towel-closed-step-3 = At the starting tone, lift the other foot a little behind you, without touching the standing leg, and let go. Keep your fingertips just above the support.
level-towel-closed-step-4 = Stay tall and calm. Small movements of the ankle are fine.
level-towel-closed-step-5 = Open your eyes, hold on to the support or put the foot down before you lose your balance. Any of these ends the attempt.
level-cushion-closed-name = Cushion, eyes closed
level-cushion-closed-change = As on the firm floor, on a flat, firm seat cushion.
level-cushion-closed-set-up = Stand barefoot within reach of a worktop or in a corner, with a clear, dry floor, and better with somebody beside you. The side named is the leg you stand on.
level-cushion-closed-step-1 = Hold on to the support with both feet down, and move your weight over the named foot.
level-cushion-closed-step-2 = Close your eyes and keep them closed.
level-cushion-closed-step-3 = At the starting tone, lift the other foot a little behind you, without touching the standing leg, and let go. Keep your fingertips just above the support.
level-cushion-closed-step-4 = Stay tall and calm. Small movements of the ankle are fine.
level-cushion-closed-step-5 = Open your eyes, hold on to the support or put the foot down before you lose your balance. Any of these ends the attempt.
