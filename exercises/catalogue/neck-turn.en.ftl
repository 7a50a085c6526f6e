### The texts of the exercise in neck-turn.toml, in English.

name = Turning the head
purpose = Keeps the neck mobile for looking over the shoulder.
set-up = Sit tall on a chair, hands on your thighs, eyes ahead.
step-1 = Turn the head slowly to one side, the eyes first.
step-2 = Stay there for one breath.
step-3 = Come back to the middle, then turn to the other side.
should-feel = A light pull at the side of the neck.
should-not-feel = Dizziness, pain that shoots into an arm, or a headache.

mistake-1 = Tilting the head.
mistake-2 = Turning the shoulders along.
mistake-3 = Forcing the end.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = Ask your clinic first if moving your neck makes you dizzy or changes your sight.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
