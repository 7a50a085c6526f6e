use super::body::{FOREARM, SEAT, SHANK, THIGH, UPPER_ARM};
use super::contact::AnchoredBody;
use super::skeleton::{Arm, BodySide};
use super::space::Vec3;
use super::*;
use crate::catalogue::{Contact, Eyes, Furniture, Joint, Pose, View};
use proptest::prelude::*;

fn figure(view: View, contacts: &[Contact], poses: Vec<Pose>) -> Figure {
    let contacts = contacts.to_vec();
    Figure { view, furniture: Vec::new(), links: Vec::new(), plumb: false, contacts, poses, arrows: Vec::new(), eyes: None }
}

/// A figure that rises from sitting to standing by leaning forward.
fn rising() -> Figure {
    use Joint::*;
    let sitting = Pose::from([(HipNear, 92), (KneeNear, 98), (HipFar, 92), (KneeFar, 98)]);
    let leaning = Pose::from([(Trunk, 38), (HipNear, 118), (KneeNear, 98), (HipFar, 118), (KneeFar, 98)]);
    let mut rising = figure(View::Side, &[Contact::NearSole, Contact::FarSole], vec![sitting, leaning, Pose::default()]);
    rising.furniture = vec![Furniture::Chair];
    rising
}

/// A figure that raises both heels with the hands on a worktop.
fn on_toes() -> Figure {
    use Joint::*;
    let arms = [(ShoulderNear, 14), (ElbowNear, 66), (ShoulderFar, 20), (ElbowFar, 60)];
    let mut raised = Pose::from(arms);
    raised.angles.extend([(AnkleNear, -32), (AnkleFar, -32)]);
    let contacts = [Contact::NearToes, Contact::FarToes, Contact::NearHand, Contact::FarHand];
    figure(View::Side, &contacts, vec![Pose::from(arms), raised])
}

fn phases() -> impl Iterator<Item = f64> {
    (0..=100).map(|percent| f64::from(percent) / 100.0)
}

#[track_caller]
fn close(a: f64, b: f64, what: &str) {
    assert!((a - b).abs() < 0.05, "{what}: {a} and {b}");
}

#[track_caller]
fn inside(figure: &Figure, size: Size) {
    let stage = Stage::new(figure, size);
    for phase in phases() {
        for point in stage.draw(phase).iter().flat_map(|shape| &shape.outline).flat_map(|piece| piece.points()) {
            let fits = (0.0..=size.width).contains(&point.x) && (0.0..=size.height).contains(&point.y);
            assert!(fits, "{point:?} at phase {phase} leaves {size:?}");
        }
    }
}

#[test]
fn every_moment_stays_within_the_picture() {
    for size in [(300.0, 300.0), (390.0, 210.0), (96.0, 200.0)].map(|(width, height)| Size { width, height }) {
        inside(&rising(), size);
        inside(&on_toes(), size);
    }
}

#[test]
fn soles_stay_flat_on_the_floor_where_they_are() {
    let figure = rising();
    let held = AnchoredBody::new(&figure);
    let start = held.at(0.0);
    for body in phases().map(|phase| held.at(phase)) {
        for (leg, first) in [(&body.near_leg, &start.near_leg), (&body.far_leg, &start.far_leg)] {
            close(leg.foot_point(0.0, 0.0).y, 0.0, "sole above the floor");
            close(leg.foot.y, 0.0, "tilt of the sole");
            close((leg.ankle - first.ankle).length(), 0.0, "way of the ankle");
        }
    }
}

#[test]
fn the_ball_stays_while_the_heel_rises_and_the_hands_stay_on_the_worktop() {
    let figure = on_toes();
    let held = AnchoredBody::new(&figure);
    let (start, end) = (held.at(0.0), held.at(1.0));
    for body in phases().map(|phase| held.at(phase)) {
        close(body.near_leg.foot_point(super::body::BALL, 0.0).y, 0.0, "ball of the foot");
        close((body.near_arm.wrist - start.near_arm.wrist).length(), 0.0, "near hand");
        close((body.far_arm.wrist - start.far_arm.wrist).length(), 0.0, "far hand");
    }
    assert!(end.near_leg.ankle.y > start.near_leg.ankle.y + 4.0, "the ankle rises");
    assert!(end.ear.y > start.ear.y + 4.0, "and the head with it");
}

fn bones(leg: &BodySide, arm: &Arm) -> [(f64, f64, &'static str); 4] {
    let length = |a: Vec3, b: Vec3| (b - a).length();
    [
        (length(leg.hip, leg.knee), THIGH, "thigh"),
        (length(leg.knee, leg.ankle), SHANK, "shank"),
        (length(arm.shoulder, arm.elbow), UPPER_ARM, "upper arm"),
        (length(arm.elbow, arm.wrist), FOREARM, "forearm"),
    ]
}

#[test]
fn bones_keep_their_length_and_joints_bend_their_own_way() {
    for figure in [rising(), on_toes()] {
        let held = AnchoredBody::new(&figure);
        for body in phases().map(|phase| held.at(phase)) {
            for (measured, length, bone) in
                bones(&body.near_leg, &body.near_arm).into_iter().chain(bones(&body.far_leg, &body.far_arm))
            {
                close(measured, length, bone);
            }
            let leg = body.near_leg;
            let halfway = (leg.hip + leg.ankle) * 0.5;
            assert!((leg.knee - halfway).dot(leg.thigh_front) > -0.3, "a knee bends forward");
        }
    }
}

#[test]
fn the_chair_is_under_the_pelvis() {
    let figure = rising();
    let pelvis = AnchoredBody::new(&figure).at(0.0).spine.pelvis;
    // In a picture of this size one centimetre is ten units. The lower edge of the chair is at the upper edge of the floor.
    let shapes = draw(&figure, 0.0, Size { width: 4000.0, height: 2000.0 });
    let furniture = || shapes.iter().filter(|shape| shape.paint == Paint::Furniture);
    let ys = |shape: &Shape| {
        let ys = shape.outline.iter().flat_map(|piece| piece.points()).map(|point| point.y);
        ys.fold((f64::MAX, f64::MIN), |(low, high), y| (low.min(y), high.max(y)))
    };
    let floor = furniture().map(ys).max_by(|a, b| a.1.total_cmp(&b.1)).expect("a floor").0;
    let body = shapes.iter().filter(|shape| shape.paint == Paint::Near).map(|shape| ys(shape).1).fold(f64::MIN, f64::max);
    assert!((body - floor).abs() < 8.0, "feet at {body}, floor at {floor}");
    assert!(pelvis.y - SEAT > 30.0 && pelvis.y - SEAT < 50.0, "a seat of usual height");
}

#[test]
fn the_frame_is_the_same_for_all_phases() {
    let size = Size { width: 300.0, height: 300.0 };
    let figure = rising();
    let floors: Vec<_> = [0.0, 0.3, 1.0]
        .map(|phase| draw(&figure, phase, size).into_iter().find(|shape| shape.paint == Paint::Furniture))
        .into();
    assert!(floors[0].is_some());
    assert!(floors.windows(2).all(|pair| pair[0] == pair[1]), "furniture does not move");
}

#[test]
fn front_side_and_hand_views_differ_and_so_do_closed_and_open_eyes() {
    let size = Size { width: 200.0, height: 200.0 };
    let poses = || vec![Pose::default(), Pose::from([(Joint::KneeNear, 20)])];
    let [side, front, hand] = [View::Side, View::Front, View::Hand].map(|view| draw(&figure(view, &[], poses()), 0.0, size));
    assert!(side != front && front != hand && hand != side);
    for view in [View::Side, View::Front] {
        let mut figure = figure(view, &[], poses());
        let open = draw(&figure, 0.0, size);
        figure.eyes = Some(Eyes::Closed);
        assert_ne!(draw(&figure, 0.0, size), open);
    }
}

#[test]
fn a_mirror_turns_left_and_right_and_nothing_else() {
    let size = Size { width: 300.0, height: 200.0 };
    let shapes = draw(&rising(), 0.5, size);
    let turned = mirrored(&shapes, size);
    assert_ne!(turned, shapes);
    let back = mirrored(&turned, size);
    for (there, here) in back.iter().zip(&shapes) {
        let ends = there.outline.iter().zip(&here.outline).flat_map(|(a, b)| a.points().zip(b.points()).collect::<Vec<_>>());
        ends.for_each(|(a, b)| assert!((a.x - b.x).abs() < 1e-9 && a.y == b.y));
    }
}

#[test]
fn a_shape_gives_an_svg_path() {
    let at = |x: f64, y: f64| Point { x, y };
    let outline = vec![
        Piece::Move(at(0.0, 1.0)),
        Piece::Line(at(2.0, 3.25)),
        Piece::Curve(at(0.0, 0.0), at(1.0, 1.0), at(2.0, 2.0)),
        Piece::Close,
    ];
    let shape = Shape { paint: Paint::Near, outline, stroke: None };
    assert_eq!(shape.svg_path(), "M0.0 1.0L2.0 3.2C0.0 0.0 1.0 1.0 2.0 2.0Z");
}

#[test]
fn a_wide_figure_has_a_wide_aspect() {
    let lying = Pose::from([(Joint::Trunk, -90)]);
    let mut flat = figure(View::Side, &[Contact::UpperBack], vec![lying.clone(), lying]);
    flat.furniture = vec![Furniture::Mat];
    assert!(Stage::aspect(&flat) > 2.0);
    assert!(Stage::aspect(&on_toes()) < 1.0);
}

fn any_pose() -> impl Strategy<Value = Pose> {
    let angles = Joint::ALL.iter().map(|joint| joint.range().0..=joint.range().1).collect::<Vec<_>>();
    angles.prop_map(|angles| Pose { angles: Joint::ALL.iter().copied().zip(angles).collect() })
}

fn any_figure() -> impl Strategy<Value = Figure> {
    use Contact::*;
    let contacts =
        vec![Seat, UpperBack, FarSide, NearSole, FarSole, NearToes, FarToes, NearHeel, FarHeel, NearHand, FarHand];
    let view = prop_oneof![Just(View::Side), Just(View::Front), Just(View::Hand)];
    let furniture = prop::sample::subsequence(
        vec![Furniture::Chair, Furniture::Worktop, Furniture::Wall, Furniture::Mat, Furniture::Pillow, Furniture::Cushion],
        0..4,
    );
    let contacts = prop::sample::subsequence(contacts, 0..5).prop_shuffle();
    (view, furniture, any::<bool>(), contacts, prop::collection::vec(any_pose(), 2..4)).prop_map(
        |(view, furniture, plumb, contacts, poses)| Figure {
            view,
            furniture,
            links: Vec::new(),
            plumb,
            contacts,
            poses,
            arrows: Vec::new(),
            eyes: None,
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn whatever_the_angles_the_figure_is_drawn_with_finite_numbers_and_fits(figure in any_figure(), phase in 0.0..=1.0f64) {
        let size = Size { width: 320.0, height: 240.0 };
        for point in draw(&figure, phase, size).iter().flat_map(|shape| &shape.outline).flat_map(|piece| piece.points()) {
            prop_assert!(point.x.is_finite() && point.y.is_finite());
            // Extreme movements may go slightly beyond the frame, which is computed from samples only.
            prop_assert!((-8.0..=328.0).contains(&point.x) && (-8.0..=248.0).contains(&point.y), "{point:?}");
        }
    }
}
