### The texts of the exercise in wrist-lower-slowly.toml, in English.

name = Lowering the wrist slowly
purpose = Loads the tendon at the outer side of the elbow little by little, so that it bears more.
set-up = Sit with the named forearm on a table, palm down, the hand beyond the edge. Close the hand loosely, or around the handles of the bag.
step-1 = Lift the hand with the help of the other hand.
step-2 = Let go with the other hand and lower slowly, over four seconds.
step-3 = Help the hand up again with the other hand.
should-feel = Work at the outer side of the forearm. Slight pain within the limit in your plan is acceptable.
should-not-feel = Sharp pain, or tingling in the fingers.

mistake-1 = Letting the hand drop.
mistake-2 = Lifting it without help.
mistake-3 = Gripping hard.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the elbow, wrist or hand that is still healing.
careful-2 = Ask your clinic first if your fingers are numb at night or your grip has become weak.
careful-3 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A wrist that is hot, red or swollen.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-empty-name = Empty hand
level-empty-change = A loose fist, nothing in it.
level-light-bag-name = Light bag
level-light-bag-change = A bag with about half a kilogram, such as a small carton of milk.
level-heavier-bag-name = Heavier bag
level-heavier-bag-change = A bag with about one kilogram.
