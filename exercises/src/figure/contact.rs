//! Keeps the body in contact with what it touches: floor, seat, mat, worktop.

use super::body::*;
use super::motion::{Angles, between};
use super::skeleton::{BodySide, Skeleton, skeleton};
use super::space::Vec3;
use crate::catalogue::{Contact, Figure, Furniture, Pose};

/// A body that moves through its poses without losing its contacts.
pub(super) struct AnchoredBody {
    poses: Vec<Pose>,
    /// Each contact and its fixed position. The first contact positions the whole body.
    contacts: Vec<(Contact, Vec3)>,
    /// Whether hands slide up and down a wall, and not on a surface under them.
    on_wall: bool,
}

/// Height of the standing foot above the floor because of a soft object under it.
pub(super) fn surface(furniture: &[Furniture]) -> f64 {
    let lying = furniture.contains(&Furniture::Mat);
    let height = |piece: &Furniture| match piece {
        Furniture::FoldedTowel if !lying => 2.4,
        Furniture::Cushion => 5.0,
        Furniture::Foam => 9.0,
        Furniture::Step => STEP,
        _ => 0.0,
    };
    furniture.iter().map(height).fold(0.0, f64::max)
}

impl AnchoredBody {
    /// Finds the positions of the contacts in the first pose.
    pub fn new(figure: &Figure) -> AnchoredBody {
        let on_wall = figure.furniture.contains(&Furniture::WallAhead);
        let mut held = AnchoredBody { poses: figure.poses.clone(), contacts: Vec::new(), on_wall };
        let first = skeleton(&between(&held.poses, 0.0));
        let floor = if figure.furniture.contains(&Furniture::Mat) { MAT } else { 0.0 };
        let standing = floor + surface(&figure.furniture);
        let root = figure.contacts.first().copied().unwrap_or(Contact::NearSole);
        held.contacts.push((root, place_of_root(root, &first, &figure.contacts, standing)));
        let body = held.settle(first);
        for &contact in figure.contacts.iter().skip(1) {
            let mut place = point(contact, &body);
            if let Some(above) = above_floor(contact) {
                place.y = above + if is_near(contact) { standing } else { floor };
            }
            held.contacts.push((contact, place));
        }
        held
    }

    /// The body at a phase.
    pub fn at(&self, phase: f64) -> Skeleton {
        self.settle(skeleton(&self.angles(phase)))
    }

    /// The joint angles at a phase, as the poses give them.
    pub fn angles(&self, phase: f64) -> Angles {
        between(&self.poses, phase)
    }

    fn settle(&self, mut body: Skeleton) -> Skeleton {
        for (index, &(contact, place)) in self.contacts.iter().enumerate() {
            if index == 0 {
                flatten(contact, &mut body);
                let by = place - point(contact, &body);
                body = body.shifted(by);
            } else {
                self.keep(contact, place, &mut body);
            }
        }
        body
    }

    /// How far each contact is from what it rests on, in centimetres, at a phase: along the surface, and away from it. What slides
    /// is nowhere along a surface, so the first is 0.
    pub fn gaps(&self, phase: f64) -> Vec<(Contact, f64, f64)> {
        let body = self.at(phase);
        let gap = |&(contact, place): &(Contact, Vec3)| {
            let off = point(contact, &body) - place;
            let (along, away) = (off.x.hypot(off.z), off.y.abs());
            match contact {
                Contact::NearHandSlides | Contact::FarHandSlides if self.on_wall => (contact, 0.0, off.x.abs()),
                _ if slides(contact) => (contact, 0.0, away),
                _ => (contact, along, away),
            }
        };
        self.contacts.iter().map(gap).collect()
    }

    fn keep(&self, contact: Contact, place: Vec3, body: &mut Skeleton) {
        flatten(contact, body);
        let mut by = place - point(contact, body);
        if slides(contact) {
            by = if self.on_wall && contact != Contact::NearHeelSlides {
                Vec3 { x: by.x, ..Vec3::default() }
            } else {
                Vec3 { y: by.y, ..Vec3::default() }
            };
        }
        match contact {
            Contact::NearHand | Contact::NearHandSlides => body.near_arm.reach(body.near_arm.wrist + by),
            Contact::FarHand | Contact::FarHandSlides => body.far_arm.reach(body.far_arm.wrist + by),
            _ if foot(contact).is_none() => {}
            _ if is_near(contact) => body.near_leg.reach(body.near_leg.ankle + by),
            _ => body.far_leg.reach(body.far_leg.ankle + by),
        }
    }
}

fn slides(contact: Contact) -> bool {
    matches!(contact, Contact::NearHandSlides | Contact::FarHandSlides | Contact::NearHeelSlides)
}

/// The fixed position of the first contact: in the middle of the picture, at the height of what it touches.
fn place_of_root(root: Contact, first: &Skeleton, all: &[Contact], standing: f64) -> Vec3 {
    let on_soles = all.iter().any(|&contact| foot(contact).is_some());
    // A seat is as high as the legs need; if no foot is on the floor, it has the usual height of a chair.
    let seat = if on_soles { ANKLE - first.near_leg.ankle.y.max(first.far_leg.ankle.y) } else { 50.0 };
    match root {
        Contact::Seat => Vec3 { y: seat, ..Vec3::default() },
        Contact::UpperBack | Contact::FarSide | Contact::LowBack | Contact::Front => Vec3 { y: MAT, ..Vec3::default() },
        Contact::NearHand | Contact::FarHand | Contact::NearHandSlides | Contact::FarHandSlides => point(root, first),
        Contact::FarElbow => Vec3 { y: MAT + ELBOW, ..Vec3::default() },
        Contact::NearKnee | Contact::FarKnee => Vec3 { x: 0.0, y: standing + KNEE, z: point(root, first).z },
        _ => Vec3 { x: 0.0, y: standing, z: point(root, first).z },
    }
}

/// The body's point at a contact.
fn point(contact: Contact, body: &Skeleton) -> Vec3 {
    match contact {
        Contact::Seat => body.spine.pelvis,
        Contact::UpperBack => {
            let (middle, chest) = body.spine.at(SHOULDER_AT);
            middle - chest.front * BACK
        }
        Contact::FarSide => body.spine.pelvis - body.spine.frame.right * FLANK,
        Contact::LowBack => body.spine.pelvis - body.spine.frame.front * RUMP,
        Contact::Front => body.spine.pelvis + body.spine.frame.front * BELLY,
        Contact::NearKnee => body.near_leg.knee,
        Contact::FarKnee => body.far_leg.knee,
        Contact::FarElbow => body.far_arm.elbow,
        Contact::NearHand | Contact::NearHandSlides => body.near_arm.wrist,
        Contact::FarHand | Contact::FarHandSlides => body.far_arm.wrist,
        Contact::NearSole | Contact::NearToes | Contact::NearHeel | Contact::NearHeelSlides => {
            sole_point(contact, &body.near_leg)
        }
        Contact::FarSole | Contact::FarToes | Contact::FarHeel => sole_point(contact, &body.far_leg),
    }
}

fn sole_point(contact: Contact, leg: &BodySide) -> Vec3 {
    leg.foot_point(foot(contact).unwrap_or(0.0), 0.0)
}

/// Distance of a foot's contact along the sole from below the ankle; `None` if the contact is not on a foot.
fn foot(contact: Contact) -> Option<f64> {
    match contact {
        Contact::NearSole | Contact::FarSole => Some(0.0),
        Contact::NearToes | Contact::FarToes => Some(BALL),
        Contact::NearHeel | Contact::FarHeel | Contact::NearHeelSlides => Some(-HEEL),
        _ => None,
    }
}

/// Height of a contact's point above the floor if the contact rests on it, as feet and knees do; `None` for others.
fn above_floor(contact: Contact) -> Option<f64> {
    match contact {
        Contact::NearKnee | Contact::FarKnee => Some(KNEE),
        _ => foot(contact).map(|_| 0.0),
    }
}

fn is_near(contact: Contact) -> bool {
    matches!(
        contact,
        Contact::NearSole | Contact::NearToes | Contact::NearHeel | Contact::NearHeelSlides | Contact::NearKnee
    )
}

fn flatten(contact: Contact, body: &mut Skeleton) {
    match contact {
        Contact::NearSole => body.near_leg.flatten(),
        Contact::FarSole => body.far_leg.flatten(),
        Contact::NearKnee => body.near_leg.kneel(),
        Contact::FarKnee => body.far_leg.kneel(),
        _ => {}
    }
}
