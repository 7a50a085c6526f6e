### The texts of the exercise in stand-turn-head.toml, in English.

name = Stand and turn the head
purpose = Trains balance while you look around, as in a shop or when you cross a road.
set-up = Stand beside a worktop or in a corner, with a clear, dry floor and good light.
step-1 = Hold on to the support and place your feet as your level says.
step-2 = Let go. Keep one hand just above the worktop.
step-3 = Turn your head slowly to one side, as far as is comfortable, then to the other. Take about two seconds each way.
step-4 = Your eyes go with your head. The rest of the body stays still and tall.
step-5 = Hold on to the support, or take a step, before you lose your balance. That ends the attempt.
should-feel = The ankles working with many small movements.
should-not-feel = Dizziness that grows, pain in the neck, or fear of falling.

mistake-1 = Turning the head fast or jerkily.
mistake-2 = Turning the shoulders as well.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Never do this without a solid support within reach. Wear sturdy shoes or go barefoot, as your clinician told you. Do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.
careful-3 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-4 = Ask your clinic first if moving your neck makes you dizzy or changes your sight.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Chest pain, severe breathlessness, sudden weakness, or trouble seeing or speaking: get medical help now.
stop-3 = Dizziness or a spinning feeling: hold on, sit down and stop for today. Call your clinic before you do this again.
stop-4 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-5 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-feet-apart-name = Feet apart
level-feet-apart-change = Feet as wide as your hips.
level-feet-together-name = Feet together
level-feet-together-change = Both feet side by side, touching.
