### The texts of the exercise in arms-lift-front-lying.toml, in English.

name = Arm lift, lying on the front
purpose = Strengthens the lower muscles of the shoulder blades.
set-up = Lie on your front on a mat, forehead on a folded towel, arms beside you with the palms down.
step-1 = Draw the shoulder blades down and a little together.
step-2 = Lift both arms off the mat. The forehead stays on the towel.
step-3 = Stay there and breathe.
step-4 = Lower slowly.
should-feel = The muscles between and below the shoulder blades working.
should-not-feel = Pressure in the lower back, a pinch in a shoulder, or tingling in the arms.

mistake-1 = Lifting the head.
mistake-2 = Pulling the shoulders up to the ears.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you are pregnant, or if an operation on your chest or abdomen is still healing: lying on your front may not be right for you.
careful-2 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-3 = If you cannot get up from the floor on your own, do this on a firm bed, or ask your clinic first.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-beside-name = Arms beside you
level-beside-change = The arms lie beside the body, palms down.
level-over-name = Arms beside the head
level-over-change = The arms lie stretched out beyond the head, thumbs up.
level-over-set-up = Lie on your front on a mat, forehead on a folded towel, arms stretched out beyond the head and a little apart, thumbs up.
level-over-step-1 = Draw the shoulder blades down, away from the ears.
level-over-step-2 = Lift both arms a hand's width off the mat. The forehead stays on the towel.
level-over-step-3 = Stay there and breathe.
level-over-step-4 = Lower slowly.
