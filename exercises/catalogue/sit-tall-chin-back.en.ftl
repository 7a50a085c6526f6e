### The texts of the exercise in sit-tall-chin-back.toml, in English.

name = Sit tall, chin back
purpose = Relieves the neck and upper back after leaning toward a screen, and trains the small muscles that hold the head up.
set-up = Sit toward the front of a steady chair, both feet flat on the floor, hands on the thighs. Look straight ahead.
step-1 = Sit tall, as if a string pulled the top of your head up.
step-2 = Slide the chin straight back, as if closing a drawer. Do not tip the head.
step-3 = Keep the shoulders low and wide.
step-4 = Hold this with about a third of your strength and breathe calmly.
step-5 = Relax slowly and look around before the next hold.
should-feel = Light work at the front and the back of the neck and between the shoulder blades, perhaps a mild stretch below the skull.
should-not-feel = Sharp pain, a pinch in the throat, tingling in the arms, dizziness, or a headache that gets worse.

mistake-1 = Nodding down or looking up instead of sliding straight back.
mistake-2 = Pushing with full force, so that the neck shakes.
mistake-3 = Pulling up the shoulders, or holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have had a recent neck injury or neck surgery, or if you have rheumatoid arthritis.
careful-2 = Ask your clinic first if moving your neck makes you dizzy or changes your sight.

# Safety: signs to stop at once.
stop-1 = New tingling, numbness or weakness in an arm or a hand.
stop-2 = Double vision, trouble speaking or swallowing, a numb or drooping face, a sudden severe headache, suddenly being unsteady on your feet, or fainting: get medical help now.
stop-3 = Dizziness or light-headedness: stop, and sit or lie down. If it does not pass within a few minutes, or comes back, call your clinic before you do this again. With any of the signs above: get medical help now.
stop-4 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-wall-name = Standing, back against a wall
level-wall-change = The wall shows you when the back of the head has gone straight back.
level-wall-set-up = Stand with your back against a wall, heels a hand's width in front of it, feet hip-width apart. Look straight ahead.
level-wall-step-1 = Stand tall, as if a string pulled the top of your head up.
level-wall-step-2 = Slide the chin straight back, so that the back of the head comes closer to the wall. It need not touch. Do not tip the head or press it into the wall.
level-wall-step-3 = Keep the shoulders low and wide.
level-wall-step-4 = Hold this with about a third of your strength and breathe calmly.
level-wall-step-5 = Relax slowly and look around before the next hold.
level-chair-name = Sitting, no back support
level-chair-change = With nothing behind you, you find the upright position by yourself.
level-standing-name = Standing, no support
level-standing-change = Weight even on both feet, nothing behind you.
level-standing-set-up = Stand with your weight even on both feet, hip-width apart, something solid within reach. Look straight ahead.
level-standing-step-1 = Stand tall, as if a string pulled the top of your head up.
level-standing-step-2 = Slide the chin straight back, as if closing a drawer. Do not tip the head.
level-standing-step-3 = Keep the shoulders low and wide.
level-standing-step-4 = Hold this with about a third of your strength and breathe calmly.
level-standing-step-5 = Relax slowly and look around before the next hold.
