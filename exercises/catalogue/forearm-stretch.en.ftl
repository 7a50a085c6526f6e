### The texts of the exercise in forearm-stretch.toml, in English.

name = Forearm stretch
purpose = Stretches the muscles of the forearm.
set-up = Stand or sit, the named arm straight ahead, palm down.
step-1 = Take the back of the hand with the other hand and draw the fingers down and toward you.
step-2 = Keep the elbow straight, the shoulder low.
step-3 = Stay there and breathe.
step-4 = Let go slowly.
should-feel = A pull along the forearm.
should-not-feel = Tingling in the fingers, or pain in the wrist.

mistake-1 = Bending the elbow.
mistake-2 = Pulling with a jerk.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the elbow, wrist or hand that is still healing.
careful-2 = The movement should stay free of tingling. If it tingles, make it smaller, and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A wrist that is hot, red or swollen.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-outer-name = Outer side
level-outer-change = The back of the hand comes toward you, fingers down.
level-front-name = Inner side
level-front-change = The palm opens, fingers up.
level-front-set-up = Stand or sit, the named arm straight ahead, palm away from you.
level-front-step-1 = Take the fingers with the other hand and draw them up and toward you.
level-front-step-2 = Keep the elbow straight, the shoulder low.
level-front-step-3 = Stay there and breathe.
level-front-step-4 = Let go slowly.
