### The texts of the exercise in change-position.toml, in English.

name = Change your position
purpose = No position is good for long. A change every hour relieves back, neck and legs.
set-up = Wherever you sit or stand at work.
step-1 = If you are sitting: stand up, stretch, and take a few steps.
step-2 = If you are standing: sit down, or put one foot up.
step-3 = Sit or stand differently afterwards than before.
should-feel = A short relief.
should-not-feel = Dizziness on getting up.

mistake-1 = Only shifting about in the chair.

# Safety: precautions.
careful-1 = Get up slowly if you tend to get dizzy, with something solid within reach.

# Safety: signs to stop at once.
stop-1 = Dizziness or light-headedness: sit down. If it does not pass within a few minutes, call your clinic.

# Levels, from easy to hard.
level-stand-up-name = Sit, stand, walk
level-stand-up-change = Any other position will do.
