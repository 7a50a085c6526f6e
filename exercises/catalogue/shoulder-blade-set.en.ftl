### The texts of the exercise in shoulder-blade-set.toml, in English.

name = Shoulder blades back
purpose = Opens the chest after sitting bent forward, and trains the muscles that hold the shoulder blades against the ribs.
set-up = Sit tall on a chair, both feet flat on the floor. Bend the elbows to a right angle, upper arms beside the ribs, palms facing each other.
step-1 = Let your neck grow long. The shoulders stay where they are: not pulled up and not pressed down.
step-2 = Draw the shoulder blades gently back, toward each other.
step-3 = Let the elbows move a little backward with them.
step-4 = Hold this with about a third of your strength and breathe calmly.
step-5 = Relax slowly and completely.
should-feel = Light work between the shoulder blades, and the front of the chest opening.
should-not-feel = A pinch on top of the shoulder, tingling down the arm, or strain in the neck.

mistake-1 = Lifting the shoulders toward the ears, or pressing them down.
mistake-2 = Pushing the ribs forward and hollowing the back.
mistake-3 = Squeezing with full force, or holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = If it pinches, make the movement smaller. It does not have to be large to work.
careful-3 = If your shoulders hang low or your arms tingle, ask your clinician first: another exercise may suit you better.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Pain or pressure in the chest, or severe breathlessness: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-elbows-bent-name = Elbows bent at your sides
level-elbows-bent-change = The upper arms stay beside the ribs.
level-arms-ahead-name = Arms held out in front
level-arms-ahead-change = Arms held out in front of you. Only the shoulder blades move.
level-arms-ahead-set-up = Sit tall on a chair, both feet flat on the floor. Hold both arms out in front of you at shoulder height, or lower if that is more comfortable, elbows straight, palms facing each other.
level-arms-ahead-step-1 = Let your neck grow long. The shoulders stay where they are: not pulled up and not pressed down.
level-arms-ahead-step-2 = Draw the shoulder blades gently back, toward each other. The hands come a little closer to you.
level-arms-ahead-step-3 = Keep the elbows straight.
level-arms-ahead-step-4 = Hold this with about a third of your strength and breathe calmly.
level-arms-ahead-step-5 = Relax slowly and lower the arms until the next hold.
