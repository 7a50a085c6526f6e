//! The proportions of the figure, in centimetres of a body 170 cm tall.
//!
//! Lengths of the segments are shares of the body's height: Drillis and Contini 1966 (Body segment parameters), as drawn in Winter,
//! Biomechanics and Motor Control of Human Movement; quoted from memory, rounded, and used for drawing only.

/// Hip to knee.
pub(super) const THIGH: f64 = 41.0;
/// Knee to ankle.
pub(super) const SHANK: f64 = 40.5;
/// Ankle above the sole.
pub(super) const ANKLE: f64 = 7.0;
/// Ankle to the ball of the foot, along the foot.
pub(super) const BALL: f64 = 12.0;
/// Ankle to the back of the heel, along the foot.
pub(super) const HEEL: f64 = 5.4;
/// Ball of the foot to the tip of the toes.
pub(super) const TOES: f64 = 7.2;
/// Middle of the body to a hip.
pub(super) const HIP_HALF: f64 = 8.6;
/// Hips to the base of the neck.
pub(super) const SPINE: f64 = 55.0;
/// Hips to the line of the shoulders.
pub(super) const SHOULDER_AT: f64 = 49.5;
/// Middle of the body to a shoulder.
pub(super) const SHOULDER_HALF: f64 = 17.0;
/// Shoulder to elbow.
pub(super) const UPPER_ARM: f64 = 30.0;
/// Elbow to wrist.
pub(super) const FOREARM: f64 = 25.5;
/// Wrist to the knuckles.
pub(super) const PALM: f64 = 8.5;
/// Base of the neck to the ear.
pub(super) const NECK: f64 = 14.5;
/// Forward lean of the neck relative to the chest in good posture, in degrees.
pub(super) const NECK_LEAN: f64 = 12.0;
/// Distance from the middle of the trunk back to the base of the neck.
pub(super) const NECK_BACK: f64 = 3.0;
/// Distance from the hips down to the seat's surface.
pub(super) const SEAT: f64 = 9.4;
/// Thickness of the chest from its middle to the back.
pub(super) const BACK: f64 = 10.0;
/// Half the width of the pelvis including soft tissue.
pub(super) const FLANK: f64 = 16.4;
/// Thickness of a mat.
pub(super) const MAT: f64 = 2.6;
/// Thickness of the pelvis from its middle to the front, for somebody lying on the front.
pub(super) const BELLY: f64 = 9.4;
/// Thickness of the pelvis from its middle to the back, for somebody lying on the back.
pub(super) const RUMP: f64 = 11.2;
/// Middle of a knee above the floor on which it kneels.
pub(super) const KNEE: f64 = 5.4;
/// Middle of an elbow above the floor on which it leans.
pub(super) const ELBOW: f64 = 3.9;
/// Wrist above or before a surface on which the hand lies.
pub(super) const WRIST: f64 = 2.6;
/// Height of a step.
pub(super) const STEP: f64 = 15.0;
