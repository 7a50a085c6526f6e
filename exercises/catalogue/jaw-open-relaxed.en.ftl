### The texts of the exercise in jaw-open-relaxed.toml, in English.

name = Opening the mouth at ease
purpose = Trains the jaw to open evenly and without effort.
set-up = Sit tall in front of a mirror, lips together, teeth apart, the tongue resting behind the upper front teeth.
step-1 = Keep the tongue where it is and let the jaw sink.
step-2 = Watch in the mirror that it opens straight down.
step-3 = Close slowly, without letting the teeth meet.
should-feel = An easy, even movement on both sides.
should-not-feel = Pain in front of the ear, or a jaw that catches.

mistake-1 = Opening so far that the tongue comes off.
mistake-2 = Letting the jaw move to one side.
mistake-3 = Pushing the chin forward.

# Safety: precautions.
careful-1 = Ask your clinic first if your jaw has ever locked open, or if an operation or fracture of it is still healing.

# Safety: signs to stop at once.
stop-1 = A mouth that you cannot close or open any more: get medical help now.
stop-2 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-small-name = Small
level-small-change = About half as far as you could go.
level-full-name = As far as is comfortable
level-full-change = To where it begins to pull, and no further.
