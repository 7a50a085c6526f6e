### The texts of the exercise in wall-push.toml, in English.

name = Pushing away from the wall
purpose = Trains the muscles that hold the shoulder blades against the chest.
set-up = Stand an arm's length from a wall, hands flat on it at chest height, shoulder-width apart.
step-1 = Keep the body in one line.
step-2 = Bend the elbows and bring the chest toward the wall.
step-3 = Push away until the arms are straight.
step-4 = At the end push a little further, so that the shoulder blades move apart.
should-feel = Work at the sides of the chest, in the arms and around the shoulder blades.
should-not-feel = Pain at the front of a shoulder or in the wrists.

mistake-1 = Letting the lower back sag.
mistake-2 = Pulling the shoulders up.
mistake-3 = Letting the shoulder blades stick out.

# Safety: precautions.
careful-1 = Stand on a dry floor that does not slip, in sturdy shoes.
careful-2 = Ask your clinic first if you have had a dislocated shoulder, or shoulder surgery that is still healing.
careful-3 = Ask your clinic first if you have a fracture or surgery of the wrist or hand that is still healing.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = A shoulder that slips out of place: get medical help now.
stop-3 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-wall-name = At a wall
level-wall-change = Hands on a wall at chest height.
level-worktop-name = At a worktop
level-worktop-change = Hands on a worktop that cannot move, so that more weight is on the arms.
level-worktop-set-up = Stand in front of a worktop that cannot move, hands on its edge, shoulder-width apart. Walk the feet back until the body is in one line.
level-worktop-step-1 = Keep the body in one line.
level-worktop-step-2 = Bend the elbows and lower the chest toward the worktop, as far as you are sure to come back.
level-worktop-step-3 = Push away until the arms are straight.
level-worktop-step-4 = At the end push a little further, so that the shoulder blades move apart.
