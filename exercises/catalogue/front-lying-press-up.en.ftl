### The texts of the exercise in front-lying-press-up.toml, in English.

name = Press-up, lying on the front
purpose = Moves the lower back into extension without effort of the back.
set-up = Lie on your front, hands flat beside the chest.
step-1 = Push with the arms and let the chest come up; the pelvis stays on the mat.
step-2 = Let the back and the buttocks stay loose.
step-3 = Breathe out at the top, then lower.
should-feel = A light pressure in the lower back, which passes when you lie down.
should-not-feel = Pain that spreads down the leg, or gets stronger there.

mistake-1 = Lifting the pelvis.
mistake-2 = Working with the back.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you are pregnant, or if an operation on your chest or abdomen is still healing: lying on your front may not be right for you.
careful-2 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-3 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Leg pain that spreads further down, or pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
