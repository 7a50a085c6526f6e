### The texts of the exercise in side-prop.toml, in English.

name = Side prop
purpose = Strengthens the side of the trunk and steadies the lower back.
set-up = Lie on the named side, knees bent, the elbow right below the shoulder, the other hand on your hip.
step-1 = Push the forearm into the mat, the shoulder away from the ear.
step-2 = Lift the pelvis until shoulder, hip and knee are in line.
step-3 = Stay there and breathe calmly.
step-4 = Lower slowly.
should-feel = The lower side of the trunk and the shoulder working.
should-not-feel = Pain in the shoulder or in the lower back.

mistake-1 = Letting the pelvis sink or roll backward.
mistake-2 = Sinking into the shoulder.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.
careful-2 = Ask your clinic first if you have a hernia, or if an operation on your abdomen is still healing.
careful-3 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-4 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-3 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-knees-name = On the knees
level-knees-change = Knees bent; forearm and lower knee carry the body.
level-feet-name = On the feet
level-feet-change = Legs straight; forearm and feet carry the body.
level-feet-set-up = Lie on the named side, legs straight, one foot on or just in front of the other, the elbow right below the shoulder, the other hand on your hip.
level-feet-step-1 = Push the forearm into the mat, the shoulder away from the ear.
level-feet-step-2 = Lift the pelvis until shoulder, hip and feet are in line.
level-feet-step-3 = Stay there and breathe calmly.
level-feet-step-4 = Lower slowly.
