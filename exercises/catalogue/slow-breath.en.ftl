### The texts of the exercise in slow-breath.toml, in English.

name = Slow breathing
purpose = Calms the body, and loosens neck and shoulders that tense up with stress or pain.
set-up = Sit comfortably in a chair, feet flat on the floor, hands resting on the belly.
step-1 = Breathe in through the nose. Feel the belly move toward your hands.
step-2 = Breathe out slowly through loosely closed lips, longer than you breathed in.
step-3 = Follow the bob or the tones. If the pace does not suit you, breathe as you like and join in again.
should-feel = Calmer with every breath; shoulders that become heavy.
should-not-feel = Dizziness, tingling around the mouth, or a feeling of too little air.

mistake-1 = Breathing in as deeply as possible.
mistake-2 = Pulling up the shoulders.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a lung or heart disease.
careful-2 = Do not do it while driving or in water.

# Safety: signs to stop at once.
stop-1 = Pressure or pain in the chest, or shortness of breath that does not pass: call your local emergency number.
stop-2 = Dizziness or tingling: breathe as usual. If it does not pass within a few minutes, call your clinic.

# Levels, from easy to hard.
level-sitting-name = Sitting
level-sitting-change = Sit as you like, back supported if you want.
