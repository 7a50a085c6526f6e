//! The figure of an exercise that is being written: its positions, the joints that a view shows, and an arrow for its movement.

use crate::catalogue::{Arrow, Exercise, Figure, Joint, Pose, Quantity, RungId, View};
use crate::figure::{self, Way};

/// The figure that is being changed: a level's own, or the exercise's if the level has none.
pub fn figure_of<'a>(exercise: &'a mut Exercise, level: Option<&RungId>) -> &'a mut Figure {
    let mut rungs = exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs);
    let own = rungs.find(|rung| Some(&rung.id) == level).and_then(|rung| rung.figure.as_mut());
    own.unwrap_or(&mut exercise.poses)
}

/// Puts a position after the one at `place`, midway to the next; `false` if there is no room for one.
pub fn put_pose_in(figure: &mut Figure, place: usize) -> bool {
    let Some(before) = figure.poses.get(place).filter(|_| figure.poses.len() < most()) else { return false };
    let after = figure.poses.get(place + 1).unwrap_or(before);
    let middle = |joint: &Joint| (*joint, (before.angle(*joint) + after.angle(*joint)) / 2);
    let angles = Joint::ALL.iter().map(middle).filter(|(_, angle)| *angle != 0).collect();
    figure.poses.insert(place + 1, Pose { angles });
    true
}

/// Takes the position at `place` out, if more than two are left.
pub fn take_pose_out(figure: &mut Figure, place: usize) -> bool {
    let can = figure.poses.len() as i64 > Quantity::Poses.bound().min && place < figure.poses.len();
    can.then(|| figure.poses.remove(place)).is_some()
}

fn most() -> usize {
    usize::try_from(Quantity::Poses.bound().max).unwrap_or(usize::MAX)
}

/// An arrow along the longest way that a part of the body goes from the first position to the last, bent as the way is; `None` if
/// nothing moves far enough, and in the close views, where no part has a place of its own.
pub fn arrow_of_movement(figure: &Figure) -> Option<Arrow> {
    let Way { of, middle, end } = figure::longest_way(figure)?;
    let chord = end.x.hypot(end.y);
    // The arc of a circle through start, middle and end: how far the middle is to the left of the chord gives its angle.
    let left = (end.x * middle.y - end.y * middle.x) / chord;
    let turn = -4.0 * (2.0 * left / chord).atan();
    let length = if turn.abs() < 0.1 { chord } else { chord / 2.0 / (turn.abs() / 2.0).sin() * turn.abs() };
    let toward = end.y.atan2(end.x) - turn / 2.0;
    // Beside the way, on its outer side, so that it does not cover the limb.
    let side = if turn < 0.0 { 1.0 } else { -1.0 };
    let (right, up) = (-toward.sin() * side * BESIDE_CM, toward.cos() * side * BESIDE_CM);
    let whole = |value: f64, quantity: Quantity| {
        let bound = quantity.bound();
        (value.round() as i64).clamp(bound.min, bound.max) as i16
    };
    Some(Arrow {
        at: of,
        right_cm: whole(right, Quantity::ArrowOffset),
        up_cm: whole(up, Quantity::ArrowOffset),
        toward_deg: whole(half_turn(toward.to_degrees()), Quantity::ArrowToward),
        length_cm: whole(length, Quantity::ArrowLength),
        bend_deg: whole(turn.to_degrees(), Quantity::ArrowBend),
    })
}

/// The same direction between -180 and 180 degrees.
fn half_turn(degrees: f64) -> f64 {
    (degrees + 180.0).rem_euclid(360.0) - 180.0
}

/// How far an arrow is from the way that it shows, in centimetres.
const BESIDE_CM: f64 = 10.0;

/// The joints that can be seen to move in a view, those that are used most first.
pub fn joints_of(view: View) -> &'static [Joint] {
    use Joint::*;
    match view {
        View::Side => &[
            Trunk,
            Back,
            Neck,
            Head,
            ShoulderNear,
            ElbowNear,
            WristNear,
            HipNear,
            KneeNear,
            AnkleNear,
            ShoulderFar,
            ElbowFar,
            WristFar,
            HipFar,
            KneeFar,
            AnkleFar,
            Blades,
            Shrug,
            BackTurn,
            HeadTurn,
            ShoulderOutNear,
            ShoulderTurnNear,
            ShoulderOutFar,
            ShoulderTurnFar,
            HipOutNear,
            HipTurnNear,
            HipOutFar,
            HipTurnFar,
            TrunkSide,
            BackSide,
            NeckSide,
        ],
        View::Front | View::Above | View::Oblique => &[
            TrunkSide,
            BackSide,
            NeckSide,
            HeadTurn,
            ShoulderOutNear,
            ElbowNear,
            HipOutNear,
            KneeNear,
            ShoulderOutFar,
            ElbowFar,
            HipOutFar,
            KneeFar,
            Trunk,
            Back,
            BackTurn,
            Neck,
            Head,
            Shrug,
            ShoulderNear,
            ShoulderTurnNear,
            WristNear,
            HipNear,
            HipTurnNear,
            AnkleNear,
            ShoulderFar,
            ShoulderTurnFar,
            WristFar,
            HipFar,
            HipTurnFar,
            AnkleFar,
        ],
        View::Head => &[Neck, Head, Jaw, HeadTurn, NeckSide],
        View::Hand => &[Forearm, ForearmTurn, WristNear, Knuckles, MiddleJoints, EndJoints, Thumb],
        View::Palm => &[Spread, Index, Middle, Ring, Little, Thumb],
        View::Fist => &[ForearmTurn],
        View::Feet => &[FootOut],
        View::Foot => &[Arch],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::authoring::blank;
    use crate::catalogue::{Contact, Landmark, Lang};
    use crate::figure::{Size, draw};

    fn standing() -> Figure {
        blank(Lang::En).poses
    }

    fn raised() -> Figure {
        let mut figure = standing();
        figure.poses[1].angles.insert(Joint::ShoulderNear, 170);
        figure
    }

    const SIZE: Size = Size { width: 200.0, height: 200.0 };

    #[test]
    fn every_joint_of_a_view_is_seen_to_move_in_it() {
        for view in [View::Side, View::Front, View::Head, View::Hand, View::Palm, View::Fist, View::Feet, View::Foot] {
            let mut figure = Figure { view, ..standing() };
            // Bent everywhere, with nothing that holds a limb in place, so that turning a limb is seen as well.
            figure.contacts = vec![Contact::Seat];
            let bent = |joint: &Joint| (*joint, (joint.range().1 / 3).max(12).min(joint.range().1));
            figure.poses = vec![Pose { angles: Joint::ALL.iter().map(bent).collect() }; 2];
            let before = draw(&figure, 1.0, SIZE);
            for joint in joints_of(view) {
                let moves = |angle: i16| {
                    let mut moved = figure.clone();
                    moved.poses[1].angles.insert(*joint, angle);
                    draw(&moved, 1.0, SIZE) != before
                };
                assert!(moves(joint.range().0) || moves(joint.range().1), "{joint:?} in {view:?}");
            }
        }
    }

    #[test]
    fn no_joint_is_listed_twice() {
        for view in [View::Side, View::Front, View::Head, View::Hand, View::Palm, View::Fist, View::Feet, View::Foot] {
            let mut all = joints_of(view).to_vec();
            all.sort();
            all.dedup();
            assert_eq!(all.len(), joints_of(view).len(), "{view:?}");
        }
    }

    #[test]
    fn positions_are_put_midway_and_taken_out_down_to_two() {
        let mut figure = raised();
        assert!(put_pose_in(&mut figure, 0));
        assert_eq!(figure.poses[1].angle(Joint::ShoulderNear), (4 + 170) / 2);
        while put_pose_in(&mut figure, 0) {}
        assert_eq!(figure.poses.len(), most());
        assert!(!put_pose_in(&mut figure, 99));
        while take_pose_out(&mut figure, 1) {}
        assert_eq!((figure.poses.len(), figure.poses[0].angle(Joint::ShoulderNear)), (2, 4));
        assert!(!take_pose_out(&mut figure, 0));
    }

    #[test]
    fn the_arrow_follows_the_part_that_goes_furthest() {
        let arrow = arrow_of_movement(&raised()).expect("an arm that is raised");
        assert_eq!(arrow.at, Landmark::Hand);
        assert!((-30..=30).contains(&arrow.toward_deg), "forward at first: {arrow:?}");
        assert!((100..=180).contains(&arrow.bend_deg), "and then up: {arrow:?}");
        assert!(arrow.length_cm > 80, "{arrow:?}");
        assert_eq!(arrow_of_movement(&standing()), None, "nothing moves");
        assert_eq!(arrow_of_movement(&Figure { view: View::Palm, ..raised() }), None);
    }

    #[test]
    fn a_level_without_a_figure_of_its_own_changes_the_exercises() {
        let mut exercise = blank(Lang::En);
        let level = exercise.ladders[0].rungs[0].id.clone();
        figure_of(&mut exercise, Some(&level)).plumb = true;
        assert!(exercise.poses.plumb);
        exercise.ladders[0].rungs[0].figure = Some(standing());
        figure_of(&mut exercise, Some(&level)).plumb = true;
        figure_of(&mut exercise, None).plumb = false;
        assert!(exercise.ladders[0].rungs[0].figure.as_ref().is_some_and(|figure| figure.plumb));
    }
}
