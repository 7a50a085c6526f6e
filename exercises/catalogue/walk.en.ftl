### The texts of the exercise in walk.toml, in English.

name = Walk
purpose = Keeps heart, muscles and mood going, and shows the body that moving is safe.
set-up = Put on sturdy shoes. Choose a way that you know, with places to sit down or turn back. Take the phone along; its screen may be off.
step-1 = Walk at a pace at which you can still talk in whole sentences.
step-2 = Let the arms swing and look ahead.
step-3 = Turn back in time: the way home belongs to the minutes.
should-feel = Warmer and a little out of breath; muscles that have worked.
should-not-feel = Pain that grows with every minute, pressure in the chest, or being so out of breath that you cannot talk.

mistake-1 = Beginning faster than you can go on.
mistake-2 = Doing twice as much on a good day, and nothing on the next.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a heart or lung disease, or if walking has made you dizzy or fall lately.
careful-2 = Take a stick or a companion if you usually do.

# Safety: signs to stop at once.
stop-1 = Pressure or pain in the chest, shortness of breath at rest, or fainting: call your local emergency number.
stop-2 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit down. If it does not pass within a few minutes, call your clinic.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-level-ground-name = On level ground
level-level-ground-change = Level ground, no stairs.
level-with-slopes-name = With slopes
level-with-slopes-change = A way with slopes or stairs, for the same minutes.
