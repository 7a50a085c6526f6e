//! What crosses between window and shell: each command's name, argument, result and error, declared once.
//!
//! Both sides compile against this crate, so that a command's types cannot drift apart; [`commands!`] is the one table of them,
//! of which markers, handlers and permissions are made. Values cross as JSON.
#![forbid(unsafe_code)]

#[macro_use]
mod table;

pub mod app;
pub mod clinic;
pub mod device;
pub mod failure;
pub mod patient;

pub use failure::Failure;

use app::*;
use clinic::*;
use device::*;
use exercises::catalogue::Exercise;
use exercises::plan::check::Problem;
use exercises::questions::Question;
use exercises::summary::Summary;
use exercises::sway::Sample;
use exercises::today::Today;
use patient::*;
use serde::Serialize;
use serde::de::DeserializeOwned;

/// One thing that the window may ask of the shell.
pub trait Command {
    /// The name under which the window calls it.
    const NAME: &'static str;
    /// What the window sends; always under the single key `args`.
    type Args: Serialize + DeserializeOwned;
    /// What comes back when it worked.
    type Reply: Serialize + DeserializeOwned;
}

macro_rules! declare {
    ($($area:ident { $($(#[$doc:meta])* $marker:ident = $command:ident($args:ty) -> $reply:ty;)* })*) => {
        /// Every command's name.
        pub const COMMANDS: &[&str] = &[$($(stringify!($command),)*)*];

        /// A type for each command. The areas give them out, beside what the commands are asked.
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
