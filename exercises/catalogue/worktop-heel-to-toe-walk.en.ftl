### The texts of the exercise in worktop-heel-to-toe-walk.toml, in English.

name = Heel-to-toe walk at the worktop
purpose = Trains balance in narrow walking.
set-up = Stand beside a long worktop, one hand on it, in sturdy shoes.
step-1 = Set one heel right in front of the toes of the other foot.
step-2 = Shift your weight forward and bring the other foot to the front in the same way. Each step is one movement.
step-3 = Look ahead. At the end, hold on, turn and come back.
should-feel = Small movements of the feet and ankles that keep you upright.
should-not-feel = Unsteadiness that you cannot catch.

mistake-1 = Looking at the feet.
mistake-2 = Hurrying.
mistake-3 = Crossing the feet.

# Safety: precautions.
careful-1 = Never do this without a solid support within reach. Wear sturdy shoes; do not wear socks on a smooth floor.
careful-2 = Do not do this alone if you have fallen recently, feel dizzy, have numb feet, or have had alcohol or a medicine that makes you drowsy.

# Safety: signs to stop at once.
stop-1 = A fall, or a near fall.
stop-2 = Dizziness or a spinning feeling: hold on, sit down and stop for today. Call your clinic before you do this again.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-hand-name = Hand on the worktop
level-hand-change = One hand slides along the worktop.
level-no-hand-name = Hand above the worktop
level-no-hand-change = The hand hovers above the worktop, ready to take hold.
