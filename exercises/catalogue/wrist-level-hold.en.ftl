### The texts of the exercise in wrist-level-hold.toml, in English.

name = Straight wrist
purpose = Strengthens the muscles on the back of the forearm, which steady the wrist for gripping, typing and lifting.
set-up = Sit with the forearm on a table, palm down, the hand beyond the edge. Close the hand loosely, or around the handles of the bag.
step-1 = Raise the hand until its back is in line with the forearm.
step-2 = Keep it there, steady, without squeezing the fist.
step-3 = Breathe calmly and keep the shoulder low.
step-4 = Let the hand sink slowly.
should-feel = The muscles on the back of the forearm working, a little warm toward the end.
should-not-feel = Sharp pain at the outer side of the elbow or in the wrist, or tingling in the fingers.

mistake-1 = Bending the wrist back beyond straight.
mistake-2 = Gripping hard.
mistake-3 = Letting the forearm leave the table.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.
careful-2 = Ask your clinic first if your fingers are numb at night or your grip has become weak.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A wrist that is hot, red or swollen.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-empty-hand-name = Empty hand
level-empty-hand-change = A loose fist, nothing in it.
level-light-bag-name = Light bag
level-light-bag-change = A bag with about half a kilogram, such as a small carton of milk.
level-heavier-bag-name = Heavier bag
level-heavier-bag-change = A bag with about one kilogram.
