//! What both sides of the program share.

pub mod anew;
pub mod camera;
pub mod chart;
pub mod clock;
pub mod fault;
pub mod figure;
pub mod file;
pub mod focus;
pub mod house;
pub mod kept;
pub mod line;
pub mod paint;
mod refused;
pub mod tick;
pub mod width;

pub use fault::Fault;
pub use house::House;
pub use refused::Refused;
