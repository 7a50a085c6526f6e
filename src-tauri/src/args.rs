//! The window's command line. A phone has none and starts with the defaults.

use std::path::PathBuf;

use actions::Clock;
use exercises::sway::Sample;

/// What the window was started with.
#[derive(Debug, Default)]
#[cfg_attr(desktop, derive(clap::Parser))]
#[cfg_attr(
    desktop,
    command(name = "carryover-shell", version, about = "Carryover's window", disable_help_subcommand = true)
)]
pub struct Args {
    /// Keep everything in this folder instead of the usual one
    #[cfg_attr(desktop, arg(long, value_name = "DIR", value_parser = crate::home::ready))]
    pub home: Option<PathBuf>,
    /// Take this moment for now, such as 2027-03-01T14:02:00+01:00
    #[cfg_attr(desktop, arg(long, value_name = "INSTANT", value_parser = Clock::set_to))]
    pub at: Option<Clock>,
    /// For tests, so in no release: replay this recorded trial (CSV: t_s,ax,ay,az) as if it came from the motion sensor; its second 0 is the start tone.
    /// Several are replayed in turn
    #[cfg(debug_assertions)]
    #[cfg_attr(desktop, arg(long, value_name = "FILE", value_parser = recorded))]
    motion: Vec<Vec<Sample>>,
    /// Start without showing the window, for a start with the computer
    #[cfg_attr(desktop, arg(long))]
    pub hidden: bool,
}

impl Args {
    /// Reads the command line; says what is wrong and ends the program when it cannot.
    #[cfg(desktop)]
    pub fn from_command_line() -> Self {
        <Self as clap::Parser>::parse()
    }

    /// The clock: the system's, or one set on the command line.
    pub fn clock(&self) -> Clock {
        self.at.clone().unwrap_or_else(Clock::system)
    }

    /// The recorded trials to replay; none in a release.
    pub fn recorded_trials(&self) -> Vec<Vec<Sample>> {
        #[cfg(debug_assertions)]
        return self.motion.clone();
        #[cfg(not(debug_assertions))]
        Vec::new()
    }

    /// A phone's system starts the program without arguments.
    #[cfg(mobile)]
    pub fn from_command_line() -> Self {
        Self::default()
    }
}

/// Reads a recorded trial; the error is a sentence that says why it is not one.
#[cfg(all(desktop, debug_assertions))]
fn recorded(path: &str) -> Result<Vec<Sample>, String> {
    let words = words::Words::new(actions::platform::locale());
    actions::analysis::trial(std::path::Path::new(path), exercises::sway::Os::Other)
        .map_err(|failure| words.failure(&failure).fault)
}

#[cfg(all(test, desktop))]
mod tests {
    use super::*;
    use clap::Parser;

    fn read(line: &str) -> Result<Args, clap::Error> {
        Args::try_parse_from(std::iter::once("carryover-shell").chain(line.split_whitespace()))
    }

    #[test]
    fn without_arguments_home_and_time_are_the_usual_ones() {
        let args = read("").unwrap();
        assert!(args.home.is_none() && !args.hidden && !args.clock().is_set());
    }

    #[test]
    fn an_instant_sets_the_clock() {
        let clock = read("--at 2027-03-01T14:02:00+01:00").unwrap().clock();
        assert!(clock.is_set());
        assert!((0..60_000).contains(&(clock.now_ms() - 1_803_906_120_000)), "it continues from there");
    }

    #[cfg(not(debug_assertions))]
    #[test]
    fn a_release_knows_no_recorded_trials() {
        assert!(read("--motion a.csv").is_err());
    }

    #[cfg(debug_assertions)]
    #[test]
    fn a_recorded_trial_is_read_at_once_and_a_bad_one_refused() {
        let data = concat!(env!("CARGO_MANIFEST_DIR"), "/../exercises/tests/data/sway");
        let args = read(&format!("--motion {data}/a_stable_native100.csv --motion {data}/b_touchdowns_web60.csv")).unwrap();
        assert_eq!(args.recorded_trials().iter().map(Vec::len).collect::<Vec<_>>(), [3001, 1799]);
        let refused = read(&format!("--motion {data}/reference.json")).unwrap_err().to_string();
        assert!(refused.contains("reference.json, ") && refused.contains("t_s,ax,ay,az"), "{refused}");
    }

    #[test]
    fn an_instant_without_offset_is_refused() {
        assert!(read("--at 2027-03-01T14:02:00").is_err());
    }
}
