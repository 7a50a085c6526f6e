//! Directions and frames in space: x to the figure's front, y up, z to its right, which is its near side.

use core::ops::{Add, Mul, Neg, Sub};

/// A place or a direction, in centimetres.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Vec3 {
    pub x: f64,
    pub y: f64,
    pub z: f64,
}

pub(super) const UP: Vec3 = Vec3 { x: 0.0, y: 1.0, z: 0.0 };
pub(super) const FRONT: Vec3 = Vec3 { x: 1.0, y: 0.0, z: 0.0 };
pub(super) const RIGHT: Vec3 = Vec3 { x: 0.0, y: 0.0, z: 1.0 };

impl Vec3 {
    pub fn dot(self, other: Vec3) -> f64 {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    pub fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// This direction with length 1; `otherwise` if its length is 0.
    pub fn unit_or(self, otherwise: Vec3) -> Vec3 {
        let length = self.length();
        if length < 1e-9 { otherwise } else { self * (1.0 / length) }
    }

    /// The direction perpendicular to both (cross product).
    pub fn cross(self, o: Vec3) -> Vec3 {
        Vec3 { x: self.y * o.z - self.z * o.y, y: self.z * o.x - self.x * o.z, z: self.x * o.y - self.y * o.x }
    }

    /// The same vector after the eyes that see it from the front have come up by this many degrees.
    pub fn looked_down_on(self, degrees: f64) -> Vec3 {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Vec3 { x: self.x * cos + self.y * sin, y: self.y * cos - self.x * sin, z: self.z }
    }

    /// The part of this vector that is perpendicular to the unit direction `to`.
    pub fn square_to(self, to: Vec3) -> Vec3 {
        self - to * self.dot(to)
    }
}

impl Add for Vec3 {
    type Output = Vec3;
    fn add(self, o: Vec3) -> Vec3 {
        Vec3 { x: self.x + o.x, y: self.y + o.y, z: self.z + o.z }
    }
}

impl Sub for Vec3 {
    type Output = Vec3;
    fn sub(self, o: Vec3) -> Vec3 {
        self + -o
    }
}

impl Neg for Vec3 {
    type Output = Vec3;
    fn neg(self) -> Vec3 {
        self * -1.0
    }
}

impl Mul<f64> for Vec3 {
    type Output = Vec3;
    fn mul(self, k: f64) -> Vec3 {
        Vec3 { x: self.x * k, y: self.y * k, z: self.z * k }
    }
}

/// Rotates the first direction toward the second by an angle in degrees, and the second along with it.
pub(super) fn turned(first: Vec3, second: Vec3, degrees: f64) -> (Vec3, Vec3) {
    let (sin, cos) = degrees.to_radians().sin_cos();
    (first * cos + second * sin, second * cos - first * sin)
}

/// The orientation of a part of the body: its front, up and right directions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Frame {
    pub front: Vec3,
    pub up: Vec3,
    pub right: Vec3,
}

impl Frame {
    pub const UPRIGHT: Frame = Frame { front: FRONT, up: UP, right: RIGHT };

    /// Bent forward by this many degrees.
    pub fn forward(self, degrees: f64) -> Frame {
        let (up, front) = turned(self.up, self.front, degrees);
        Frame { front, up, right: self.right }
    }

    /// Bent to the right by this many degrees.
    pub fn sideways(self, degrees: f64) -> Frame {
        let (up, right) = turned(self.up, self.right, degrees);
        Frame { up, right, front: self.front }
    }

    /// Turned to the right about its own upright by this many degrees.
    pub fn turned(self, degrees: f64) -> Frame {
        let (front, right) = turned(self.front, self.right, degrees);
        Frame { front, right, up: self.up }
    }

    /// The vector with these components along the frame's front, up and right directions.
    pub fn step(self, front: f64, up: f64, right: f64) -> Vec3 {
        self.front * front + self.up * up + self.right * right
    }
}
