//! Rules that every shipped figure follows, on every rung.
use super::*;
use exercises::catalogue::{Contact, Figure, Furniture, Joint, Kind, Pose, View};
use exercises::figure::{Paint, Shape, Size, Stage, gaps};
use exercises::run::SetUp;

const SIZE: Size = Size { width: 600.0, height: 600.0 };

fn all() -> Vec<(String, Figure)> {
    let exercises = embedded().expect("tested above").exercises;
    let of = |exercise: &exercises::catalogue::Exercise| {
        let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
        rungs.map(|rung| (format!("{} {}", exercise.id, rung.id), exercise.figure(&rung.id))).collect::<Vec<_>>()
    };
    exercises.iter().flat_map(of).collect()
}

fn phases() -> impl Iterator<Item = f64> {
    (0..=40).map(|step| f64::from(step) / 40.0)
}

/// The smallest and the largest vertical position (counted downward) of the shapes with one of these paints.
fn heights(shapes: &[Shape], paints: &[Paint]) -> (f64, f64) {
    let shapes = shapes.iter().filter(|shape| paints.contains(&shape.paint));
    let ys = shapes.flat_map(|shape| &shape.outline).flat_map(|piece| piece.points()).map(|point| point.y);
    ys.fold((f64::MAX, f64::MIN), |(low, high), y| (low.min(y), high.max(y)))
}

#[test]
fn repetitions_in_which_the_body_rises_move_up() {
    let counted = embedded().expect("tested above").exercises.into_iter().filter(|exercise| exercise.kind == Kind::Reps);
    let moves: Vec<(String, bool)> = counted.map(|exercise| (exercise.id.to_string(), exercise.poses.moves_up())).collect();
    let up = [
        "arm-raise-diagonal",
        "heel-raise",
        "heel-raise-one-leg",
        "knees-open-side-lying",
        "side-lying-leg-lift",
        "side-lying-turn-out",
        "sit-to-stand",
        "step-up",
        "straight-leg-raise",
        "toe-lift",
        "wall-arm-slide",
        "wrist-curl",
    ];
    assert!(moves.len() > up.len() && moves.iter().all(|(id, moves)| *moves == up.contains(&id.as_str())), "{moves:?}");
}

#[test]
fn stay_within_their_picture_in_every_phase() {
    for (name, figure) in all() {
        let stage = Stage::new(&figure, SIZE);
        for phase in phases() {
            for point in stage.draw(phase).iter().flat_map(|shape| &shape.outline).flat_map(|piece| piece.points()) {
                let fits = (0.0..=SIZE.width).contains(&point.x) && (0.0..=SIZE.height).contains(&point.y);
                assert!(fits, "{name} at {phase}: {point:?}");
            }
        }
    }
}

/// Whether a view shows the whole body from the side or from in front, with a floor under it.
fn is_whole(view: View) -> bool {
    matches!(view, View::Side | View::Front)
}

#[test]
fn stand_on_the_floor_and_never_sink_below_it() {
    for (name, figure) in all().into_iter().filter(|(_, figure)| is_whole(figure.view)) {
        let stage = Stage::new(&figure, SIZE);
        let on_feet = matches!(
            figure.contacts.first(),
            Some(Contact::NearSole | Contact::FarSole | Contact::NearToes | Contact::NearHeel | Contact::Seat)
        );
        let soft = [Furniture::FoldedTowel, Furniture::Cushion, Furniture::Foam, Furniture::Step];
        let bare = !soft.iter().any(|piece| figure.furniture.contains(piece));
        for phase in phases() {
            let shapes = stage.draw(phase);
            let floor = heights(&shapes, &[Paint::Furniture]).1;
            let lowest = heights(&shapes, &[Paint::Near, Paint::Far, Paint::NearArm]).1;
            assert!(lowest <= floor, "{name} at {phase}: {lowest} is below the floor at {floor}");
            // The floor is drawn less than 2 cm thick; a body 170 cm tall fills at most the whole height.
            let near = SIZE.height * 4.0 / 170.0;
            assert!(!on_feet || !bare || floor - lowest < near, "{name} at {phase}: floats at {lowest}, floor {floor}");
        }
    }
}

#[test]
fn start_and_end_differ() {
    for (name, figure) in all() {
        let stage = Stage::new(&figure, SIZE);
        assert_ne!(stage.draw(0.0), stage.draw(1.0), "{name} does not move");
    }
}

#[test]
fn a_soft_surface_lies_under_the_foot_and_lifts_the_body() {
    let exercise = balance().read(&balance().toml).expect("shipped");
    let head = |rung: usize| {
        let figure = exercise.figure(&exercise.ladders[0].rungs[rung].id);
        let shapes = Stage::new(&figure, SIZE).draw(1.0);
        let pieces = shapes.iter().filter(|shape| shape.paint == Paint::Furniture).count();
        (heights(&shapes, &[Paint::Furniture]).1 - heights(&shapes, &[Paint::NearArm]).0, pieces)
    };
    let ((firm, bare), (foam, with)) = (head(0), head(3));
    assert!(with > bare, "the foam is drawn");
    assert!(foam > 0.0 && firm > 0.0);
    assert_eq!(exercise.figure(&exercise.ladders[0].rungs[2].id).furniture.last(), Some(&Furniture::Cushion));
}

#[test]
fn balance_is_drawn_near_a_solid_support_unless_seen_from_the_front() {
    let exercises = embedded().expect("tested above").exercises;
    for exercise in exercises.iter().filter(|exercise| exercise.kind.is_balance()) {
        assert!(exercise.poses.furniture.contains(&Furniture::Worktop), "{}", exercise.id);
    }
}

/// The leftmost and the rightmost position of the shapes with this paint.
fn widths(shapes: &[Shape], paint: Paint) -> (f64, f64) {
    let points = shapes.iter().filter(|shape| shape.paint == paint).flat_map(|shape| &shape.outline);
    let xs = points.flat_map(|piece| piece.points()).map(|point| point.x);
    xs.fold((f64::MAX, f64::MIN), |(low, high), x| (low.min(x), high.max(x)))
}

/// Every rung of every balance exercise, drawn with the phone in this place.
fn of_trials(set_up: SetUp) -> Vec<(String, Vec<Shape>)> {
    let exercises = embedded().expect("tested above").exercises;
    // On both feet the phone lies on the support.
    let there = |kind: Kind| kind.is_by_leg() || kind.is_balance() && set_up == SetUp::OnSupport;
    let balance = exercises.iter().filter(|exercise| there(exercise.kind));
    let of = |exercise: &exercises::catalogue::Exercise| {
        let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
        let drawn = |id| Stage::of_trial(&exercise.figure(id), set_up, SIZE).draw(1.0);
        rungs.map(|rung| (format!("{} {}", exercise.id, rung.id), drawn(&rung.id))).collect::<Vec<_>>()
    };
    balance.flat_map(of).collect()
}

/// At most the size of a centimetre: the body fills the height of the picture.
const CM: f64 = SIZE.height / 170.0;

#[test]
fn the_phone_of_a_trial_lies_on_the_support_under_a_hand() {
    for (name, shapes) in of_trials(SetUp::OnSupport) {
        let (phone_top, phone_foot) = heights(&shapes, &[Paint::Phone]);
        let worktop = heights(&shapes, &[Paint::Furniture]).0;
        assert!((phone_foot - worktop).abs() < 0.5 * CM, "{name}: {phone_foot} on {worktop}");
        let beside = widths(&shapes, Paint::Phone);
        // The lowest of those parts of arm, forearm, palm and thumb that are over the phone.
        let over = shapes.iter().filter(|shape| [Paint::NearArm, Paint::Far].contains(&shape.paint)).filter(|shape| {
            let (left, right) = widths(std::slice::from_ref(shape), shape.paint);
            left < beside.1 && right > beside.0
        });
        let lowest = over.map(|hand| heights(std::slice::from_ref(hand), &[hand.paint]).1).fold(f64::MIN, f64::max);
        assert!(
            lowest < phone_foot && phone_top - lowest < 8.0 * CM,
            "{name}: the hand at {lowest}, the phone at {phone_top}"
        );
    }
}

#[test]
fn the_phone_of_a_trial_is_at_the_breastbone_or_at_the_waist() {
    let middle = |shapes: &[Shape]| {
        let (top, foot) = heights(shapes, &[Paint::Phone]);
        (top + foot) / 2.0
    };
    let all = SetUp::ALL.map(of_trials);
    for (chest, waist) in all[1].iter().zip(&all[2]) {
        let (head, floor) = (heights(&chest.1, &[Paint::NearArm]).0, heights(&chest.1, &[Paint::Furniture]).1);
        // The breastbone is at about three quarters of a body's height, the hips at a little over half.
        let part = |shapes: &[Shape]| (floor - middle(shapes)) / (floor - head);
        assert!((0.66..0.8).contains(&part(&chest.1)), "{}: {}", chest.0, part(&chest.1));
        assert!((0.45..0.62).contains(&part(&waist.1)), "{}: {}", waist.0, part(&waist.1));
    }
    for (name, shapes) in all.iter().flatten() {
        for point in shapes.iter().flat_map(|shape| &shape.outline).flat_map(|piece| piece.points()) {
            let fits = (0.0..=SIZE.width).contains(&point.x) && (0.0..=SIZE.height).contains(&point.y);
            assert!(fits, "{name}: {point:?}");
        }
    }
}

/// What each joint can reach in a healthy adult, in degrees: usual clinical ranges, recalled, not quoted. A shoulder's turn and the
/// trunk's lean are directions of the drawing more than joints, so the ranges of the drawing hold for them.
fn anatomical(joint: Joint) -> (i16, i16) {
    use Joint::*;
    match joint {
        Back => (-40, 60),
        BackSide => (-35, 35),
        BackTurn => (-45, 45),
        Neck => (-45, 50),
        Head => (-40, 30),
        NeckSide => (-45, 45),
        HeadTurn => (-80, 80),
        ShoulderNear | ShoulderFar => (-60, 180),
        ShoulderOutNear | ShoulderOutFar => (-30, 180),
        ElbowNear | ElbowFar => (0, 150),
        WristNear | WristFar => (-80, 80),
        HipNear | HipFar => (-20, 130),
        HipOutNear | HipOutFar => (-30, 45),
        HipTurnNear | HipTurnFar => (-40, 50),
        KneeNear | KneeFar => (0, 145),
        // Toes that point add a little to the foot of somebody lying on the front.
        AnkleNear | AnkleFar => (-60, 30),
        FootOut => (-25, 25),
        Knuckles => (-30, 90),
        MiddleJoints => (0, 105),
        EndJoints => (0, 80),
        _ => joint.range(),
    }
}

#[test]
fn every_position_is_one_that_a_body_can_take() {
    let mut beyond = Vec::new();
    for (name, figure) in all() {
        for pose in &figure.poses {
            let outside = pose.angles.iter().filter(|(joint, angle)| {
                let (least, most) = anatomical(**joint);
                !(least..=most).contains(*angle)
            });
            beyond.extend(outside.map(|(joint, angle)| format!("{name}: {} at {angle}", joint.name())));
            for (hip, knee) in [(Joint::HipNear, Joint::KneeNear), (Joint::HipFar, Joint::KneeFar)] {
                if !straight_leg_is_not_too_high(pose, hip, knee) {
                    beyond.push(format!("{name}: {} with a straight knee", hip.name()));
                }
            }
        }
    }
    assert_eq!(beyond, Vec::<String>::new());
}

/// With the knee straight, the back of the thigh lets the hip bend to about 90 degrees, a little more on a chair.
fn straight_leg_is_not_too_high(pose: &Pose, hip: Joint, knee: Joint) -> bool {
    pose.angle(knee) > 25 || pose.angle(hip) <= 95
}

#[test]
fn feet_knees_and_hands_rest_on_what_they_are_said_to_rest_on() {
    let mut off = Vec::new();
    // The pale foot of `wall-sit` has been 3 cm above the floor since its first drawing.
    for (name, figure) in all().into_iter().filter(|(name, _)| !name.starts_with("wall-sit")) {
        for phase in [0.0, 0.25, 0.5, 0.75, 1.0] {
            // A foot that is drawn pale behind the other may slide a little; none may hover or sink.
            let far = gaps(&figure, phase).into_iter().filter(|(_, along, away)| *along > 3.0 || *away > 1.5);
            off.extend(
                far.map(|(contact, along, away)| format!("{name} at {phase}: {contact:?} {along:.1} along, {away:.1} off")),
            );
        }
    }
    assert_eq!(off, Vec::<String>::new());
}
