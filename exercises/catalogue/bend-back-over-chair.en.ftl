### The texts of the exercise in bend-back-over-chair.toml, in English.

name = Bending back over the chair
purpose = Loosens the upper back, which stiffens with long sitting.
set-up = Sit far back on a chair whose back ends below the shoulder blades, a folded towel over its edge, hands behind the neck.
step-1 = Breathe in, and bend the upper back over the edge of the chair.
step-2 = Let the elbows point up a little; the hands carry the head.
step-3 = Breathe out and come back.
should-feel = A stretch across the upper back and the chest.
should-not-feel = Pain in the neck or in the lower back, or dizziness.

mistake-1 = Letting the head fall back.
mistake-2 = Arching the lower back.
mistake-3 = Tipping the chair.

# Safety: precautions.
careful-1 = Ask your clinic first if you have osteoporosis, or if you have had a fracture of the spine.
careful-2 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-3 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.

# Safety: signs to stop at once.
stop-1 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-2 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
