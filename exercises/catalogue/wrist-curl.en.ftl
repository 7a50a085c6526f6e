### The texts of the exercise in wrist-curl.toml, in English.

name = Wrist curl, palm up
purpose = Strengthens the muscles at the inner side of the elbow that bend the wrist.
set-up = Sit with the named forearm on a table, palm up, the hand beyond the edge. Close the hand loosely, or around the handles of the bag.
step-1 = Bend the wrist and lift the hand.
step-2 = Stay there for a moment.
step-3 = Lower slowly, a little below level.
should-feel = The muscles on the palm's side of the forearm working.
should-not-feel = Sharp pain at the inner side of the elbow, or tingling in the fingers.

mistake-1 = Lifting the forearm off the table.
mistake-2 = Letting the hand drop.
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
