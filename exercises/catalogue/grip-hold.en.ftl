### The texts of the exercise in grip-hold.toml, in English.

name = Gripping a rolled towel
purpose = Strengthens the grip without moving the wrist.
set-up = Sit with the named forearm on a table, and hold a rolled towel as thick as a broom handle.
step-1 = Keep the wrist straight.
step-2 = Squeeze the roll slowly, as hard as your level says.
step-3 = Stay there and breathe.
step-4 = Open the hand slowly.
should-feel = The muscles of the hand and the forearm working.
should-not-feel = Sharp pain in a joint, or tingling in the fingers.

mistake-1 = Bending the wrist.
mistake-2 = Squeezing with a jerk.
mistake-3 = Pulling up the shoulder.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.
careful-2 = Ask your clinic first if your fingers are numb at night or your grip has become weak.
careful-3 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A wrist that is hot, red or swollen.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light grip
level-light-change = About a quarter of your strength.
level-firm-name = Firm grip
level-firm-change = About half of your strength.
