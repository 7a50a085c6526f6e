//! Points of a figure that can be dragged, and the joint that each of them turns.

use super::Stage;
use super::contact::AnchoredBody;
use super::shape::Point;
use super::side::on_head;
use super::skeleton::Skeleton;
use super::space::Vec3;
use super::surroundings::{flat, landmark, seen};
use crate::catalogue::{Figure, Joint, Landmark, View};
use strum::VariantArray;

/// A point of the figure that can be dragged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Handle {
    /// The joint that dragging it turns.
    pub joint: Joint,
    /// Where it is in the picture.
    pub place: Point,
}

/// The joints that are turned by dragging in each view, those of the far side first, so that the near ones lie above them.
fn turned(view: View) -> &'static [Joint] {
    use Joint::*;
    match view {
        View::Side => &[
            HipFar,
            KneeFar,
            AnkleFar,
            ShoulderFar,
            ElbowFar,
            WristFar,
            Trunk,
            Neck,
            Head,
            HipNear,
            KneeNear,
            AnkleNear,
            ShoulderNear,
            ElbowNear,
            WristNear,
        ],
        View::Front | View::Above | View::Oblique => {
            &[HipOutFar, ShoulderOutFar, ElbowFar, TrunkSide, NeckSide, HipOutNear, ShoulderOutNear, ElbowNear]
        }
        View::Head => &[Neck, Head],
        View::Hand | View::Palm | View::Fist | View::Feet | View::Foot => &[],
    }
}

/// Where a joint is held to turn it: the far end of what it moves.
fn grip(joint: Joint, body: &Skeleton) -> Option<Vec3> {
    let place = match joint {
        Joint::Trunk | Joint::TrunkSide => body.neck,
        Joint::Neck | Joint::NeckSide => body.ear,
        Joint::ShoulderNear | Joint::ShoulderOutNear => body.near_arm.elbow,
        Joint::ShoulderFar | Joint::ShoulderOutFar => body.far_arm.elbow,
        Joint::ElbowNear => body.near_arm.wrist,
        Joint::ElbowFar => body.far_arm.wrist,
        Joint::WristNear => body.near_arm.wrist + body.near_arm.hand * HAND_CM,
        Joint::WristFar => body.far_arm.wrist + body.far_arm.hand * HAND_CM,
        Joint::HipNear | Joint::HipOutNear => body.near_leg.knee,
        Joint::HipFar | Joint::HipOutFar => body.far_leg.knee,
        Joint::KneeNear => body.near_leg.ankle,
        Joint::KneeFar => body.far_leg.ankle,
        Joint::AnkleNear => body.near_leg.foot_point(FOOT_CM, 2.0),
        Joint::AnkleFar => body.far_leg.foot_point(FOOT_CM, 2.0),
        Joint::Head => on_head(body, (0.0, 13.5)),
        _ => return None,
    };
    Some(place)
}

/// How far from the wrist a hand is held, and from below the ankle a foot, in centimetres.
const HAND_CM: f64 = 14.0;
const FOOT_CM: f64 = 16.0;

/// Degrees between the angles that are looked at first, when a joint is dragged.
const COARSE: i16 = 8;

/// What a joint does with the picture's point, where lying people are seen from above.
fn shown(view: View, place: Vec3) -> Point {
    let point = flat(view, place);
    if view == View::Above { Point { x: -point.y, y: point.x } } else { point }
}

impl Stage {
    /// The points that can be dragged in the position at `pose`.
    pub fn handles(&self, pose: usize) -> Vec<Handle> {
        let body = seen(self.figure().view, self.body(phase_of(self.figure(), pose)));
        let of = |joint: &Joint| {
            let place = self.place(shown(self.figure().view, grip(*joint, &body)?));
            Some(Handle { joint: *joint, place })
        };
        turned(self.figure().view).iter().filter_map(of).collect()
    }

    /// The angle to which `joint` turns in the position at `pose` if its handle is dragged to a point of the picture: the one within
    /// what a body can do that brings it nearest. The picture's frame stays as it is while something is dragged.
    pub fn dragged(&self, pose: usize, joint: Joint, to: Point) -> Option<i16> {
        let figure = self.figure();
        let now = figure.poses.get(pose)?.angle(joint);
        let (least, most) = joint.range();
        let distance = |angle: i16| {
            let mut turned = figure.clone();
            turned.poses[pose].angles.insert(joint, angle);
            let body = seen(figure.view, AnchoredBody::new(&turned).at(phase_of(figure, pose)));
            let place = self.place(shown(figure.view, grip(joint, &body)?));
            Some((place.x - to.x).hypot(place.y - to.y))
        };
        // Of angles that are as near as each other, the one that changes least.
        let best = |angles: &mut dyn Iterator<Item = i16>| {
            let rated = angles.filter_map(|angle| Some((distance(angle)?, (angle - now).abs(), angle)));
            rated.min_by(|one, other| one.0.total_cmp(&other.0).then(one.1.cmp(&other.1))).map(|(_, _, angle)| angle)
        };
        let about = best(&mut (least..=most).step_by(COARSE as usize).chain([now, most]))?;
        best(&mut ((about - COARSE).max(least)..=(about + COARSE).min(most)).chain([now]))
    }
}

/// The moment of the movement at which a figure is in one of its positions.
pub fn phase_of(figure: &Figure, pose: usize) -> f64 {
    let last = figure.poses.len().saturating_sub(1);
    if last == 0 { 0.0 } else { pose.min(last) as f64 / last as f64 }
}

/// The shortest way for which an arrow is drawn, in centimetres.
const SHORTEST_CM: f64 = 3.0;

/// The way of a part of the body, in centimetres to the right and up of where it is in the first position.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Way {
    /// The part of the body.
    pub of: Landmark,
    /// Where it is in the middle of the movement.
    pub middle: Point,
    /// Where it is in the last position.
    pub end: Point,
}

/// The part of the body that goes furthest from the first position to the last, and its way; `None` if nothing moves that far, and in
/// the close views. Of somebody who lies and is seen from above, it is that of somebody standing, as it is for arrows.
pub fn longest_way(figure: &Figure) -> Option<Way> {
    if turned(figure.view).is_empty() {
        return None;
    }
    let held = AnchoredBody::new(figure);
    let [first, middle, last] = [0.0, 0.5, 1.0].map(|phase| seen(figure.view, held.at(phase)));
    let way = |mark: &Landmark| {
        let from = landmark(figure.view, &first, *mark);
        let [middle, end] = [&middle, &last].map(|body| {
            let to = landmark(figure.view, body, *mark);
            Point { x: to.x - from.x, y: to.y - from.y }
        });
        Way { of: *mark, middle, end }
    };
    let far = |way: &Way| way.end.x.hypot(way.end.y);
    let longest = Landmark::VARIANTS.iter().map(way).max_by(|one, other| far(one).total_cmp(&far(other)));
    longest.filter(|way| far(way) >= SHORTEST_CM)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{Contact, Pose};
    use crate::figure::Size;

    const SIZE: Size = Size { width: 300.0, height: 300.0 };

    fn figure(view: View) -> Figure {
        let arms =
            Pose::from([(Joint::ShoulderNear, 4), (Joint::ElbowNear, 10), (Joint::ShoulderFar, 8), (Joint::ElbowFar, 10)]);
        Figure {
            view,
            furniture: Vec::new(),
            links: Vec::new(),
            plumb: false,
            contacts: vec![Contact::NearSole, Contact::FarSole],
            poses: vec![arms.clone(), arms],
            arrows: Vec::new(),
            eyes: None,
        }
    }

    fn handle(stage: &Stage, pose: usize, joint: Joint) -> Point {
        stage.handles(pose).into_iter().find(|handle| handle.joint == joint).expect("a handle").place
    }

    #[test]
    fn a_handle_that_is_not_moved_turns_nothing() {
        for view in [View::Side, View::Front, View::Oblique, View::Above, View::Head] {
            let stage = Stage::new(&figure(view), SIZE);
            for Handle { joint, place } in stage.handles(1) {
                assert_eq!(
                    stage.dragged(1, joint, place),
                    Some(figure(view).poses[1].angle(joint)),
                    "{joint:?} in {view:?}"
                );
            }
        }
    }

    #[test]
    fn dragging_a_limb_to_where_it_would_be_at_an_angle_gives_that_angle() {
        let cases = [
            (View::Side, Joint::ShoulderNear, 120),
            (View::Side, Joint::ElbowFar, 75),
            (View::Front, Joint::ShoulderOutNear, 90),
        ];
        for (view, joint, angle) in cases {
            let stage = Stage::new(&figure(view), SIZE);
            let mut turned = figure(view);
            turned.poses[1].angles.insert(joint, angle);
            // The same frame: only the position at the end differs, so the point is found by the first stage.
            let body = seen(view, AnchoredBody::new(&turned).at(1.0));
            let place = stage.place(shown(view, grip(joint, &body).expect("a grip")));
            assert_eq!(stage.dragged(1, joint, place), Some(angle), "{joint:?}");
        }
    }

    #[test]
    fn no_joint_is_dragged_beyond_what_a_body_can_do() {
        let stage = Stage::new(&figure(View::Side), SIZE);
        let knee = stage.dragged(1, Joint::KneeNear, Point { x: 9_000.0, y: -9_000.0 }).expect("an angle");
        let (least, most) = Joint::KneeNear.range();
        assert!((least..=most).contains(&knee));
    }

    #[test]
    fn a_leg_that_stands_moves_the_body_over_it() {
        // The near foot is fixed: dragging the hip's handle, the knee, forward leans the body.
        let stage = Stage::new(&figure(View::Side), SIZE);
        let from = handle(&stage, 1, Joint::HipNear);
        let dragged = stage.dragged(1, Joint::HipNear, Point { x: from.x + 40.0, y: from.y });
        assert!(dragged.is_some());
        assert_eq!(stage.dragged(9, Joint::HipNear, from), None, "no such position");
    }

    #[test]
    fn close_views_have_no_handles() {
        for view in [View::Hand, View::Palm, View::Fist, View::Feet, View::Foot] {
            assert!(Stage::new(&figure(view), SIZE).handles(0).is_empty(), "{view:?}");
        }
    }
}
