### The texts of the exercise in buttock-stretch.toml, in English.

name = Buttock stretch
purpose = Stretches the back of the hip.
set-up = Lie on your back, knees bent. Lay the named ankle on the other thigh, just above the knee.
step-1 = Take the other thigh with both hands and draw it toward you until the named buttock pulls.
step-2 = Let the named knee point away from you.
step-3 = Stay there and breathe.
step-4 = Put the foot down slowly.
should-feel = A pull in the buttock.
should-not-feel = A pinch in the groin, pain in the knee, or pain down the leg.

mistake-1 = Lifting the head.
mistake-2 = Pushing the named knee with force.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a hip replacement or a fracture of the hip: some movements may not be allowed yet.
careful-2 = Ask your clinic first if you have a recent knee injury, or a knee operation that is still healing.
careful-3 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = Numbness around the genitals or anus, a new problem with passing or holding urine or stool, or pain or weakness in both legs: get medical help now.
stop-2 = Pain that runs down the leg, or pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light pull
level-light-change = A pull that you could bear for a long time.
level-clear-name = Clear pull
level-clear-change = A clear pull that does not hurt.
