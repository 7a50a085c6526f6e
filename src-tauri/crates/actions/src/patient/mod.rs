//! What the person doing exercises can do.

pub mod answering;
pub mod deeds;
pub mod plans;
pub mod recording;
pub mod reminding;
pub mod running;
pub mod sealing;
pub mod taking;
pub mod today;
