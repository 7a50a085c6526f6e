### The texts of the exercise in sit-to-stand.toml, in English.

name = Sit to stand
purpose = Strengthens the thighs and hips for getting up from a chair, stairs and walking.
set-up = Use a steady chair that cannot slide, against a wall, and have a solid support in front of you within reach, such as a worktop. Feet hip-width apart, heels a little behind the knees.
step-1 = Lean forward until your nose is over your toes.
step-2 = Press both feet fully into the floor and stand up without hurry.
step-3 = Stand tall for 1 second. Hold on to the support if you need it.
step-4 = Move your hips back and sit down slowly, under control all the way.
should-feel = The front of the thighs and the buttocks working evenly on both sides. Getting a little out of breath is fine.
should-not-feel = Sharp pain in the knee, the hip or the back, a knee that gives way, or light-headedness on standing.

mistake-1 = Dropping onto the chair.
mistake-2 = Letting the knees fall inward.
mistake-3 = Putting more weight on one leg without noticing.

# Safety: precautions.
careful-1 = If you tend to feel light-headed when you get up, hold on to something steady and stand still for a moment.
careful-2 = Ask your clinic first if you have a joint replacement, or an operation or fracture of the leg that is still healing.

# Safety: signs to stop at once.
stop-1 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-2 = Light-headedness that does not pass at once.
stop-3 = A knee that locks or gives way, or pain above the limit in your plan.

# Levels, from easy to hard.
level-seat-high-name = High seat
level-seat-high-change = A firm cushion on the seat, or a higher chair: the hips are higher than the knees.
level-seat-usual-name = Usual seat
level-seat-usual-change = A chair of usual height: the hips are about as high as the knees.
level-seat-low-name = Low seat
level-seat-low-change = A firm seat about a hand's width lower than usual: the hips are a little lower than the knees.
level-hands-push-name = Hands help
level-hands-push-change = Push lightly with both hands on the thighs.
level-arms-forward-name = Arms held out in front
level-arms-forward-change = The arms stay horizontal in front of you all the way. This makes leaning forward easier.
level-arms-crossed-name = Arms crossed
level-arms-crossed-change = The legs do it alone. The arms rest on the chest.
