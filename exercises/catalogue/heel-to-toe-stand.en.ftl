### The texts of the exercise in heel-to-toe-stand.toml, in English.

name = Stand heel to toe
purpose = Trains balance on a narrow base, as on a path or when you turn in a tight place.
set-up = Stand beside a worktop or in a corner, with a clear, dry floor and good light. The side named is the foot in front.
step-1 = Fix your eyes on a spot at eye level.
step-2 = Hold on to the support and put the named foot in front, as your level says.
step-3 = Share the weight between both feet and stand tall.
step-4 = Let go. Keep one hand just above the worktop.
step-5 = Hold on to the support, or step out, before you lose your balance. That ends the attempt.
should-feel = The ankles working with many small movements, and the thighs working too.
should-not-feel = Dizziness, pain in the foot or the knee, or fear of falling.

mistake-1 = Looking down at your feet.
mistake-2 = Locking your knees.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Never do this without a solid support within reach. Wear sturdy shoes or go barefoot, as your clinician told you. Do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Chest pain, severe breathlessness, sudden weakness, or trouble seeing or speaking: get medical help now.
stop-3 = Dizziness or a spinning feeling: hold on, sit down and stop for today. Call your clinic before you do this again.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-feet-together-name = Feet together
level-feet-together-change = Both feet side by side, touching.
level-feet-together-set-up = Stand beside a worktop or in a corner, with a clear, dry floor and good light. Both feet do the same at this level, so the side named makes no difference.
level-feet-together-step-1 = Fix your eyes on a spot at eye level.
level-feet-together-step-2 = Hold on to the support and put your feet side by side, so that they touch.
level-feet-together-step-3 = Share the weight between both feet and stand tall.
level-feet-together-step-4 = Let go. Keep one hand just above the worktop.
level-feet-together-step-5 = Hold on to the support, or step out, before you lose your balance. That ends the attempt.
level-half-step-name = Half a step
level-half-step-change = The heel of the named foot beside the big toe of the other.
level-heel-to-toe-name = Heel to toe
level-heel-to-toe-change = One foot straight in front of the other, heel touching toes.
