//! What a person does at the window, as a library for the tests: a [`Desktop`], a [`Window`] opened on it, and functions named after
//! a person's actions.
//!
//! Everything is real: the program as built, its web view controlled over WebDriver, a session bus and a notification service. Each
//! desktop has its own folders and bus, so tests can run side by side. See `tests/window` for how to run them.

mod axe;
mod bus;
mod closing;
mod demo;
mod desktop;
mod dialog;
mod display;
mod driver;
mod dropping;
mod eyes;
mod file_manager;
mod hands;
mod keyboard;
mod page;
mod panels;
mod prescribed;
mod program;
pub mod scenes;
mod sockets;
mod sound_card;
mod story;
mod tour;
mod tray;
mod wait;
mod welcome;
mod window;

pub use demo::Demo;
pub use desktop::Desktop;
pub use dialog::Dialog;
pub use dropping::Drag;
pub use file_manager::FileManager;
pub use keyboard::Focus;
pub use panels::{Panel, panels};
pub use prescribed::{Prescribed, write_secret};
pub use program::{Unattended, carryover, carryover_in};
pub use sockets::Sockets;
pub use sound_card::SoundCard;
pub use story::{Part, Story};
pub use tour::Tour;
pub use wait::until;
pub use window::{Opening, Window};

use std::path::PathBuf;

/// Another program built by cargo, next to the window's.
pub fn beside(name: &str) -> PathBuf {
    program::path().with_file_name(name)
}

/// The folder for screenshots, `tests/out`.
pub(crate) fn out() -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../out");
    std::fs::create_dir_all(&folder).expect("the checkout is writable");
    folder
}
