### The texts of the exercise in wall-sit.toml, in English.

name = Wall sit
purpose = Strengthens the thighs while the knee stays still, for stairs, hills and getting up.
set-up = Stand with your back against a smooth wall, feet hip-width apart and two foot-lengths in front of it, in shoes that do not slip. Keep a chair within reach.
step-1 = Slide down the wall as far as your level says.
step-2 = Keep the knees in line with the toes and never in front of them.
step-3 = Press both feet fully into the floor and breathe calmly.
step-4 = Push yourself up again before your legs become too tired.
should-feel = The front of the thighs working hard and getting warm, the same on both sides.
should-not-feel = Sharp pain behind or below the kneecap, or light-headedness.

mistake-1 = Letting the knees fall inward or go beyond the toes.
mistake-2 = Resting your hands on the thighs.
mistake-3 = Holding your breath.

# Safety: precautions.
careful-1 = Ask your clinic first if you have high blood pressure that is not under control, a heart condition, a disease of the retina, or recent eye surgery.
careful-2 = Ask your clinic first if you have a recent knee injury, or a knee operation that is still healing.

# Safety: signs to stop at once.
stop-1 = Chest pain or pressure, or severe breathlessness: get medical help now.
stop-2 = A knee that locks or gives way.
stop-3 = Pain above the limit in your plan.

# Levels, from easy to hard.
level-knees-30-name = A small bend
level-knees-30-change = Slide down about three fingers' width. The knees are only a little bent, about 30 degrees.
level-knees-60-name = A medium bend
level-knees-60-change = Slide down almost the length of your hand. The knees are bent about 60 degrees.
level-knees-90-name = Thighs horizontal
level-knees-90-change = Slide down until the thighs are horizontal, as on a chair, with the knees above the ankles.
