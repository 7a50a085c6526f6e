### The texts of the exercise in one-leg-timed.toml, in English.

name = Timed stand on one leg
purpose = Always done in the same way, so that its times can be compared.
set-up = Stand barefoot within reach of a worktop or in a corner, with a firm, clear, dry floor and good light. The side named is the leg you stand on.
step-1 = Fix your eyes on a spot at eye level.
step-2 = Cross both arms on your chest. If the phone is not in a pocket, one hand stays at the phone.
step-3 = Lift the other foot a little, without touching the standing leg.
step-4 = Uncross your arms and hold on to the support, or put the foot down, before you lose your balance. That ends the attempt.
should-feel = The foot and the ankle working all the time.
should-not-feel = Pain in the ankle, the knee or the hip, dizziness, or fear of falling.

mistake-1 = Hooking the free foot around the standing leg.
mistake-2 = Moving the standing foot.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Do this only if you feel safe with your arms crossed. Never do it without a solid support within reach. Do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.
careful-3 = Close your eyes only if that is in your plan.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Chest pain, severe breathlessness, sudden weakness, or trouble seeing or speaking: get medical help now.
stop-3 = Dizziness or a spinning feeling: hold on, sit down and stop for today. Call your clinic before you do this again.
stop-4 = Pain above the limit in your plan, or an ankle that gives way.

# Levels, from easy to hard.
level-firm-open-name = Eyes open
level-firm-open-change = Bare feet on the firm floor, arms crossed on the chest, eyes on a spot at eye level.
level-firm-closed-name = Eyes closed
level-firm-closed-change = Your eyes are closed before you lift the foot. Opening them ends the attempt.
level-firm-closed-step-1 = Hold on to the support with both feet down, and move your weight over the named foot.
level-firm-closed-step-2 = Close your eyes and keep them closed.
level-firm-closed-step-3 = Cross both arms on your chest. If the phone is not in a pocket, one hand stays at the phone.
level-firm-closed-step-4 = At the starting tone, lift the other foot a little, without touching the standing leg.
level-firm-closed-step-5 = Open your eyes, hold on to the support or put the foot down before you lose your balance. Any of these ends the attempt.
