### The texts of the exercise in warm-pack.toml, in English.

name = Warm pack
purpose = Lets tense muscles relax and eases an ache for a while.
set-up = Sit or lie comfortably. Wrap a warm pack or a hot-water bottle in a cloth and put it where it aches.
step-1 = It should feel pleasantly warm, never hot.
step-2 = Breathe calmly and let the part become heavy.
step-3 = Look at the skin after five minutes, and take the pack away when the time is over.
should-feel = Pleasant warmth, and muscles that become softer.
should-not-feel = Burning, stinging or throbbing.

mistake-1 = Putting the pack straight on the skin.
mistake-2 = Lying on the pack, or falling asleep with it.

# Safety: precautions.
careful-1 = Not where you feel warmth or pain less than elsewhere, on a fresh injury, or on skin that is inflamed, open or numb.
careful-2 = Ask your clinic first if you have diabetes, poor circulation or cancer, or if you are pregnant.

# Safety: signs to stop at once.
stop-1 = Skin that burns, blisters or stays red in spots: take the pack away, and cool the skin with water.
stop-2 = An ache that throbs more with warmth, or a place that is hot and swollen by itself: stop, and call your clinic today.

# Levels, from easy to hard.
level-over-cloth-name = Over a cloth
level-over-cloth-change = Always with a cloth between pack and skin.
