//! An exercise while a clinician writes it: what it starts from, each change with undo, and what it still lacks.
//!
//! The exercise that is being written is an ordinary [`Exercise`](crate::catalogue::Exercise) whose texts may still be empty or too long; every choice and every
//! number in it is always one that it may have. [`lacks`] says what keeps it from being saved, [`tidied`] is what is saved.

mod edited;
mod lack;
mod levels;
mod movement;
mod names;
mod part;
mod start;
mod tidy;

pub use edited::{Edited, Touch};
pub use lack::{Lack, Place, lacks};
pub use levels::{add_level, has_one_level, level_places, move_level, remove_level};
pub use movement::{arrow_of_movement, figure_of, joints_of, put_pose_in, take_pose_out};
pub use names::{free_id, new_id};
pub use part::{LevelPart, TextPart};
pub use start::{blank, copy_of, of_kind, usual_dose};
pub use tidy::{add_language, is_written, tidied};
