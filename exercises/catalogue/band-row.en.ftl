### The texts of the exercise in band-row.toml, in English.

name = Rowing with a band
purpose = Strengthens the muscles between the shoulder blades and the back of the arms.
set-up = Fasten the band to a shut door at the height of your elbows. Stand facing the door, knees loose, one end in each hand, the band just taut with the arms forward.
step-1 = Draw the shoulder blades back, then pull the elbows back along your sides.
step-2 = Stop when the hands reach your body.
step-3 = Stay there for a moment.
step-4 = Let the arms go forward slowly, without letting the band snap.
should-feel = The muscles between the shoulder blades working.
should-not-feel = Pain at the front of a shoulder, or work in the neck.

mistake-1 = Pulling the shoulders up.
mistake-2 = Leaning back.
mistake-3 = Letting the band pull you forward.

# Safety: precautions.
careful-1 = Fasten the band only to a door that opens away from you, shut it firmly, and pull once gently to test it.
careful-2 = Look the band over for tears before each use, and never let it point at your eyes.
careful-3 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light band
level-light-change = A band with which you could do a few more.
level-firm-name = Firmer band
level-firm-change = The next stronger band.
