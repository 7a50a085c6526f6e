## Clinic: own exercises and sets, listed

# The page with exercises that the clinic wrote itself, and with its sets; also the link to it.
own-title = Your exercises and sets
own-exercises = Exercises you wrote
own-what = They are offered beside the program's exercises when you make a plan. What an exercise says is your responsibility, within your licence and local rules.
own-none = None yet. A copy of an exercise is the quickest start.
own-new-blank = Start from nothing
own-new-copy = Start from a copy
own-copy-of = Copy an exercise
own-copy-find = Find an exercise to copy
# $name: the name of an exercise.
own-copy-this = Copy { $name }
own-import = Add from files
own-change = Change
own-save-file = Save as a file
own-remove = Remove
own-unfinished = Unfinished
own-go-on = Go on writing
own-discard = Delete
own-no-name = Without a name so far
own-unreadable = Cannot be read by this version of the program
# $language: the language that the texts are in, for example "English".
own-in-one-language = In { $language } only: everybody reads it in that language
# $n (Number): the revision of an exercise.
own-revision = Revision { $n }
# $codes: the codes of patients.
own-on-plans = On the newest card of { $codes }
own-not-offered = Removed, kept because a card has it
# $name: the name of an exercise.
own-remove-sure = Remove { $name }? Patients who have it on a card keep it. It is no longer offered for new plans.
own-removed = { $name } is removed.
own-removed-kept = { $name } is no longer offered. It is kept because a card has it.
own-saved = { $name } is saved. You find it when you make a plan.
sets = Sets of exercises
sets-what = What you prescribe often, under a name of your own. To save a set, make a plan and press “Save as a set” there.
sets-none = None yet.
# $n: the number of exercises in a set.
sets-exercises = { $n ->
        [one] { $n } exercise
       *[other] { $n } exercises
    }
set-remove-sure = Remove the set { $name }? Plans made from it stay.
# On the page of a plan: the folded section with the sets.
set-start = Sets of exercises
set-start-what = Adds the exercises of a set to this plan, with their doses and times.
# $name: what the clinic calls a set.
set-add = Add the set { $name }
set-save = Save as a set
set-save-name = Name of the set
set-save-what = Keeps these exercises with their doses and times. Nothing about the patient is in it.
# $name: what the clinic calls a set.
set-kept = The set { $name } is saved.
# $names: exercises of a set that were not put into a plan.
set-left-out = There was no room for these, or they are no longer there: { $names }
# In the catalogue beside a plan.
own-write-one = Write one of your own

## Clinic: an exercise while it is written

write-new = New exercise
write-undo = Undo
write-redo = Redo
write-save = Save exercise
write-kept = What you write is kept as unfinished until you save it.
write-ready = Nothing is missing.
write-missing = Before it can be saved:
# $fields: the names of empty fields, for example "Purpose and Steps".
write-empty = Still to write: { $fields }
# The same for a second language. $language: for example "Spanish".
write-empty-in = Still to write in { $language }: { $fields }
write-same-name = Another exercise has this name.
# $place: a field; $lack: what is wrong there.
write-lack-at = { $place }: { $lack }
# Numbers of characters.
# $found (Number), $most (Number)
write-too-long = { $found } characters; up to { $most } fit
# $line: the number of an entry in a list, from 1.
# $line (Number), $found (Number), $most (Number)
write-line-too-long = line { $line } has { $found } characters; up to { $most } fit
# $found (Number), $most (Number)
write-too-many = { $found } lines; up to { $most } are shown
# $found (Number), $first (Number)
write-unequal = { $found } lines, but { $first } in the other language
write-no-conditions = choose what is stood on, and whether the eyes are open
write-unlike-sides = all levels must be done on the same sides
# $level: the name of a level or its number; $part: a text of it.
write-level-part = { $level }, { $part }
# $place: a field; $language: the language of its text.
write-in-language = { $place } ({ $language })
write-lines-hint = One to a line.
write-name-hint = As patients read it.
write-steps-hint = One action to a line, up to eight.
write-stop-hint = One to a line. Name what is urgent first.
write-texts = What the patient reads
write-name = Name
write-purpose = What it is good for
write-set-up = Starting position
write-steps = Steps
write-should-feel = What it should feel like
write-should-not-feel = What it should not feel like
write-mistakes = Common mistakes
write-cautions = Be careful, or ask first
write-stop-signs = Stop at once
write-language = Language of the texts
# $language: a language in which nothing is written yet.
write-not-yet = { $language } (nothing yet)
write-one-language = A second language is not required. Without it, everybody reads the first.
write-what-it-is = What it is
write-region = Part of the body
write-kind = How it is timed
write-sides = Sides
write-side-none = No sides
write-side-each = One side after the other
write-side-alternating = Left and right in turn
write-posture = Posture
write-test = It is a test: always done in the same way, never made harder
write-dose = Usual dose
write-prescriber = For whoever prescribes it
write-purposes = What it is done for
write-flags = Think of these before prescribing it
write-equipment = What it needs
write-levels = Levels
write-levels-what = Versions from easy to hard. One thing changes from each to the next.
write-level-only = One level. Patients are told of levels only if there are several.
# $n (Number): the place of a level, from 1.
write-level-n = Level { $n }
write-level-name = Name of the level
write-level-change = What is different here
write-level-set-up = Its own starting position, if it differs
write-level-steps = Its own steps, if they differ
write-level-dose = A dose of its own
write-level-figure = A figure of its own
write-level-add = Add a level
write-level-remove = Remove this level
write-level-easier = Make easier
write-level-harder = Make harder
write-level-surface = Stands on
write-level-eyes = Eyes
write-factor = What changes from level to level
factor-surface = the surface
factor-base = how far apart the feet are
factor-support = what is held or leaned on
factor-lever = the length of the lever
factor-range = how far the movement goes
factor-load = the weight
factor-position = the position of the body

## Clinic: the figure of an exercise while it is written

draw-figure = Figure
draw-what = Drag a point of the figure, or move the sliders. The picture beside shows the whole movement.
draw-no-handles = In this view only the sliders move the figure.
draw-like = Begin with the figure of
draw-like-choose = Choose an exercise
draw-of = Figure of
draw-of-exercise = the exercise
draw-position = Position
draw-start = Start
draw-end = End
# $n (Number): the number of a position between start and end, from 1.
draw-middle = Between { $n }
draw-add = Add a position
draw-remove = Remove this position
draw-copy-start = As at the start
# Explains "near" and "far" in the names of joints and contacts.
draw-near-far = “Near” is the side of the body towards you, from the front its right side; “far” is the other.
draw-view = Seen from
draw-plumb = Show the plumb line
draw-angles = Joints
draw-more-joints = More joints
# $degrees (Number): an angle.
draw-degrees = { $degrees }°
draw-things = Things around it
draw-contacts = What touches something that does not move
draw-anchor = What stays in place
draw-arrow = Arrow
draw-arrow-along = Arrow along the movement
draw-arrow-none = No arrow
draw-arrow-right = To the right (cm)
draw-arrow-up = Upward (cm)
draw-arrow-toward = Direction (°)
draw-arrow-length = Length (cm)
draw-arrow-bend = Bend (°)
draw-arrow-at = Beside
draw-still = Nothing moves far enough for an arrow.
draw-ties = Band, strap or stick
draw-tie = What
draw-tie-from = From
draw-tie-to = To
draw-tie-add = Add one
draw-tie-remove = Remove
draw-preview = What the patient sees
draw-light = Light
draw-dark = Dark
view-side = the side
view-front = the front
view-hand = close: hand from the thumb's side
view-oblique = the front, lying on the side
view-palm = close: palm
view-fist = close: fist
view-head = close: head
view-feet = close: feet from above
view-foot = close: foot from the inner side
view-above = above, lying on the back
thing-chair = chair
thing-worktop = worktop
thing-wall = wall behind
thing-mat = mat
thing-pillow = pillow under the head
thing-folded-towel = folded towel
thing-cushion = cushion under the foot
thing-foam = foam under the foot
thing-table = table
thing-bag = bag in the hand
thing-wall-ahead = wall in front
thing-wall-beside = wall beside
thing-doorway = doorway
thing-door = door with a band
thing-step = step
thing-handrail = handrail
thing-weight = weight in the hand
thing-hammer = hammer in the hand
thing-towel-roll = rolled towel
thing-rubber-band = rubber band round the fingers
thing-mark = mark on the wall
# The figure's near side is the one that is seen first; its far side lies behind.
contact-seat = seat
contact-upper-back = upper back
contact-far-side = far side of the body
contact-near-sole = near sole
contact-far-sole = far sole
contact-near-toes = near ball of the foot
contact-far-toes = far ball of the foot
contact-near-heel = near heel
contact-far-heel = far heel
contact-near-hand = near hand
contact-far-hand = far hand
contact-near-hand-slides = near hand, sliding
contact-far-hand-slides = far hand, sliding
contact-near-heel-slides = near heel, sliding
contact-low-back = lower back
contact-front = front of the pelvis
contact-near-knee = near knee
contact-far-knee = far knee
contact-far-elbow = far elbow
end-near-hand = near hand
end-far-hand = far hand
end-near-thigh = near thigh
end-far-thigh = far thigh
end-near-ankle = near ankle
end-far-ankle = far ankle
end-near-foot = near foot
end-far-foot = far foot
end-head = back of the head
end-pelvis = pelvis
end-door = door
tie-band = band
tie-strap = strap
tie-stick = stick
mark-chin = chin
mark-crown = top of the head
mark-shoulder = shoulder
mark-elbow = elbow
mark-hand = hand
mark-pelvis = pelvis
mark-knee = knee
mark-heel = heel
mark-toes = toes
joint-trunk = Trunk, forward
joint-trunk-side = Trunk, sideways
joint-back = Back, rounded
joint-back-side = Back, bent sideways
joint-back-turn = Back, turned
joint-neck = Neck, forward
joint-head = Head, nodding
joint-neck-side = Neck, sideways
joint-head-turn = Head, turned
joint-jaw = Mouth open
joint-blades = Shoulder blades together
joint-shrug = Shoulders up
joint-shoulder-near = Near arm, forward
joint-shoulder-far = Far arm, forward
joint-shoulder-out-near = Near arm, outward
joint-shoulder-out-far = Far arm, outward
joint-shoulder-turn-near = Near arm, turned in
joint-shoulder-turn-far = Far arm, turned in
joint-elbow-near = Near elbow
joint-elbow-far = Far elbow
joint-wrist-near = Near wrist
joint-wrist-far = Far wrist
joint-forearm-turn = Forearm, turned
joint-hip-near = Near hip
joint-hip-far = Far hip
joint-hip-out-near = Near leg, outward
joint-hip-out-far = Far leg, outward
joint-hip-turn-near = Near thigh, turned out
joint-hip-turn-far = Far thigh, turned out
joint-knee-near = Near knee
joint-knee-far = Far knee
joint-ankle-near = Near foot, up
joint-ankle-far = Far foot, up
joint-forearm = Forearm, raised
joint-knuckles = Knuckles
joint-middle-joints = Middle finger joints
joint-end-joints = End finger joints
joint-thumb = Thumb
joint-spread = Fingers apart
joint-index = Index finger
joint-middle = Middle finger
joint-ring = Ring finger
joint-little = Little finger
joint-foot-out = Forefoot, outward
joint-arch = Arch, raised
