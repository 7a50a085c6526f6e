### The texts of the exercise in elbow-bend-straighten.toml, in English.

name = Bending and straightening the elbow
purpose = Wins back the movement of a stiff elbow.
set-up = Stand or sit, the named arm beside you, palm forward.
step-1 = Bend the elbow as far as it goes without force.
step-2 = Stay there for one breath.
step-3 = Straighten it as far as it goes without force.
should-feel = A light pull at the elbow.
should-not-feel = Sharp pain, or tingling in the fingers.

mistake-1 = Forcing the end with the other hand.
mistake-2 = Moving the shoulder along.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the elbow, wrist or hand that is still healing.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
