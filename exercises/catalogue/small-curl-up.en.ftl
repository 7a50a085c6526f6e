### The texts of the exercise in small-curl-up.toml, in English.

name = Small curl-up
purpose = Strengthens the front of the trunk without bending the lower back.
set-up = Lie on your back, one knee bent, the other leg straight, both hands flat under the lower back.
step-1 = Breathe out and draw in the belly a little.
step-2 = Lift head and shoulders together just off the mat, as one piece.
step-3 = Stay there and breathe shallowly but freely.
step-4 = Lower slowly.
should-feel = The front of the trunk working.
should-not-feel = Pain or pressure in the neck or in the lower back.

mistake-1 = Pushing the chin to the chest.
mistake-2 = Rising high.
mistake-3 = Pressing the lower back into the hands.
mistake-4 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.
careful-2 = Ask your clinic first if you have a hernia, or if an operation on your abdomen is still healing.
careful-3 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-4 = Ask your clinic first if you are pregnant, or if lying flat makes you breathless or dizzy.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-3 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-elbows-down-name = Elbows on the mat
level-elbows-down-change = The hands lie under the lower back, the elbows stay on the mat.
level-elbows-up-name = Elbows off the mat
level-elbows-up-change = The hands lie under the lower back, the elbows are lifted.
