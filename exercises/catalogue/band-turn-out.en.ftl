### The texts of the exercise in band-turn-out.toml, in English.

name = Turning the arm out with a band
purpose = Strengthens the muscles that turn the shoulder outward and hold it in its socket.
set-up = Stand tall, elbows bent to a right angle at your sides, a rolled towel between the named elbow and your side. Hold the band in both hands, just taut.
step-1 = Keep the other hand still at your belly.
step-2 = Turn the named forearm outward, the elbow on the towel.
step-3 = Go only as far as it stays free of pain.
step-4 = Come back slowly.
should-feel = The muscles at the back of the shoulder working.
should-not-feel = A pinch at the front or the top of the shoulder.

mistake-1 = Bending the wrist back.
mistake-2 = Moving the elbow away from the body.
mistake-3 = Turning the trunk along.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-2 = Look the band over for tears before each use, and never let it point at your eyes.
careful-3 = If pain or stiffness is clearly worse the next morning than on other mornings, do less the next time and tell your clinician.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-light-name = Light band
level-light-change = A band with which you could do a few more.
level-firm-name = Firmer band
level-firm-change = The next stronger band.
