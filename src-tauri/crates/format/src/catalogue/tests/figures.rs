//! Rules that every shipped figure follows, on every rung.
use super::*;
use exercises::catalogue::{Contact, Figure, Furniture, Kind, View};
use exercises::figure::{Paint, Shape, Size, Stage};
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
    let up = ["heel-raise", "side-lying-leg-lift", "sit-to-stand", "toe-lift"];
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

#[test]
fn stand_on_the_floor_and_never_sink_below_it() {
    for (name, figure) in all().into_iter().filter(|(_, figure)| figure.view != View::Hand) {
        let stage = Stage::new(&figure, SIZE);
        let on_feet = matches!(
            figure.contacts.first(),
            Some(Contact::NearSole | Contact::FarSole | Contact::NearToes | Contact::NearHeel | Contact::Seat)
        );
        let soft = [Furniture::FoldedTowel, Furniture::Cushion, Furniture::Foam];
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
    for exercise in exercises.iter().filter(|exercise| exercise.kind == Kind::Balance) {
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
    let balance = exercises.iter().filter(|exercise| exercise.kind == Kind::Balance);
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
