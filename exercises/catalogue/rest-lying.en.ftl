### The texts of the exercise in rest-lying.toml, in English.

name = Rest on the back, knees bent
purpose = Lets a tired or painful lower back rest.
set-up = Lie on your back on a mat, a pillow under the head, knees bent, feet flat and hip-width apart.
step-1 = Lay the arms beside you and let the back become heavy.
step-2 = Breathe calmly. There is nothing else to do.
step-3 = When the time is over, roll onto one side before you get up.
should-feel = A back that sinks into the mat.
should-not-feel = Tingling in the legs, or pressure in the head.

mistake-1 = Pressing the back into the mat.
mistake-2 = Getting up straight to the front.

# Safety: precautions.
careful-1 = Ask your clinic first if you are in the last months of a pregnancy.
careful-2 = Do it only if you can get up from the floor again.

# Safety: signs to stop at once.
stop-1 = Numbness or weakness in a leg, or trouble passing urine: get medical help now.
stop-2 = Shortness of breath or dizziness: sit up slowly. If it does not pass within a few minutes, call your clinic.

# Levels, from easy to hard.
level-knees-bent-name = Knees bent
level-knees-bent-change = Both feet flat on the mat.
