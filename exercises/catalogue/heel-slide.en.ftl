### The texts of the exercise in heel-slide.toml, in English.

name = Heel slide
purpose = Keeps the knee bending and straightening after a rest, an injury or an operation.
set-up = Lie on your back on a mat, both legs straight, a sock on the foot of the leg to be moved.
step-1 = Slide the heel slowly along the mat toward the buttock.
step-2 = Go as far as it is comfortable, and wait there for a breath.
step-3 = Slide the heel back until the leg lies straight.
should-feel = A mild pull at the front of the knee when it is bent, and behind it when it is straight.
should-not-feel = Sharp pain in the knee, catching or locking, or a pull in the calf that stays.

mistake-1 = Lifting the heel off the mat.
mistake-2 = Letting the knee fall outward.
mistake-3 = Hurrying the last part of the bend.

# Safety: precautions.
careful-1 = After an operation: do it only as far as your clinic has told you.

# Safety: signs to stop at once.
stop-1 = Pain in the calf with swelling, warmth or redness: get medical help now.
stop-2 = A knee that locks, swells quickly, or gets hot and red: stop, and call your clinic today.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-half-bent-name = Half bent
level-half-bent-change = Stop half way, where it is still easy.
level-as-far-as-it-goes-name = As far as it goes
level-as-far-as-it-goes-change = Bend as far as it goes without sharp pain.
