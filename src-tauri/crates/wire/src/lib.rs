//! The interface between window and shell: each command's name, argument, result and error, declared once.
//!
//! Both sides compile against this crate, so that a command's types always agree. [`commands!`] is the single table from which
//! markers, handlers and permissions are generated. Values are sent as JSON.
#![forbid(unsafe_code)]

#[macro_use]
mod table;

pub mod app;
pub mod cases;
pub mod clinic;
mod clinicians;
pub mod device;
pub mod failure;
pub mod handing_over;
pub mod patient;
pub mod prescribing;
pub mod receiving;
pub mod saved;
mod secret;
pub mod visiting;

pub use failure::Failure;
pub use secret::Secret;

use app::*;
use cases::*;
use chrono::NaiveDate;
use clinic::*;
use device::*;
use exercises::catalogue::Exercise;
use exercises::id::LogId;
use exercises::questions::Question;
use exercises::summary::Summary;
use exercises::sway::Sample;
use exercises::today::Today;
use handing_over::*;
use patient::*;
use prescribing::*;
use receiving::*;
use saved::*;
use serde::Serialize;
use serde::de::DeserializeOwned;
use visiting::*;

/// A command that the window can call.
pub trait Command {
    /// The name under which the window calls it.
    const NAME: &'static str;
    /// The argument that the window sends, always under the single key `args`.
    type Args: Serialize + DeserializeOwned;
    /// The result on success.
    type Reply: Serialize + DeserializeOwned;
}

macro_rules! declare {
    ($($area:ident { $($(#[$doc:meta])* $marker:ident = $command:ident($args:ty) -> $reply:ty;)* })*) => {
        /// Every command's name.
        pub const COMMANDS: &[&str] = &[$($(stringify!($command),)*)*];

        /// A type for each command. The modules of the areas re-export them, next to the commands' arguments and results.
        mod markers {
            $(pub mod $area {
                $($(#[$doc])* pub struct $marker;)*
            })*
        }

        $($(
            impl Command for $area::$marker {
                const NAME: &'static str = stringify!($command);
                type Args = $args;
                type Reply = $reply;
            }
        )*)*
    };
}

commands!(declare);
