### The texts of the exercise in forearm-turn.toml, in English.

name = Turning the forearm
purpose = Strengthens the muscles that turn the palm up and down.
set-up = Sit with the named forearm on a table, the hand beyond the edge, and hold a hammer with its head up.
step-1 = Turn the hand slowly until the palm is down, as far as is comfortable.
step-2 = Turn it slowly through upright until the palm is up. This is one movement.
step-3 = Keep the forearm on the table.
step-4 = Come back slowly.
should-feel = The muscles of the forearm working.
should-not-feel = Sharp pain at the elbow or in the wrist.

mistake-1 = Letting the hammer fall.
mistake-2 = Moving the elbow or the shoulder along.
mistake-3 = Gripping harder than needed.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the elbow, wrist or hand that is still healing.
careful-2 = Ask your clinic first if your fingers are numb at night or your grip has become weak.

# Safety: signs to stop at once.
stop-1 = New numbness or tingling in the fingers, or a hand that becomes weak.
stop-2 = A wrist that is hot, red or swollen.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-near-head-name = Hand near the head
level-near-head-change = Hold the hammer just below its head.
level-middle-name = Hand in the middle
level-middle-change = Hold the handle in its middle.
level-end-name = Hand at the end
level-end-change = Hold the handle at its end.
