### The texts of the exercise in band-ankle-out.toml, in English.

name = Turning the foot out with a band
purpose = Strengthens the muscles at the outer side of the ankle, which protect it from twisting.
set-up = Sit on a chair, heels on the floor a fist apart, the band round both feet just behind the toes.
step-1 = Keep the heel and the knee where they are.
step-2 = Turn the front of the named foot outward against the band.
step-3 = Stay there for a moment.
step-4 = Come back slowly.
should-feel = The muscles at the outer side of the lower leg working.
should-not-feel = Pain at the outer side of the ankle, or tingling in the foot.

mistake-1 = Turning the whole leg.
mistake-2 = Moving the other foot along.
mistake-3 = Letting the band snap back.

# Safety: precautions.
careful-1 = Ask your clinic first if you have a fracture or surgery of the ankle or foot that is still healing.
careful-2 = Look the band over for tears before each use, and never let it point at your eyes.

# Safety: signs to stop at once.
stop-1 = A foot that has newly become weak or numb: get medical help now.
stop-2 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-3 = Pain above the limit in your plan, or an ankle that gives way.

# Levels, from easy to hard.
level-light-name = Light band
level-light-change = A band with which you could do a few more.
level-firm-name = Firmer band
level-firm-change = The next stronger band.
