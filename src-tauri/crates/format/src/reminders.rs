//! A person's settings for reminders as text, in the settings of the data folder and on the command line.

use exercises::remind::{Meeting, Settings, Span};
use exercises::time::{MinuteOfDay, Stamp};
use serde::{Deserialize, Serialize};

/// The form in which the settings are stored. A part may be missing in older settings; unknown parts are ignored.
#[derive(Serialize, Deserialize)]
struct Kept {
    /// Quiet times as minutes of the day: from, to.
    #[serde(default)]
    quiet: Vec<(u16, u16)>,
    /// The meeting's beginning and end, each as milliseconds since 1970-01-01T00:00:00Z and seconds ahead of UTC.
    #[serde(default)]
    meeting: Option<[(i64, i32); 2]>,
}

/// The settings as one line of text.
pub fn write(settings: &Settings) -> String {
    let stamp = |at: Stamp| (at.utc_ms, at.offset_s);
    let kept = Kept {
        quiet: settings.quiet.iter().map(|span| (span.from, span.to)).collect(),
        meeting: settings.meeting.map(|meeting| [stamp(meeting.from), stamp(meeting.until)]),
    };
    serde_json::to_string(&kept).expect("numbers can be written")
}

/// Reads the settings from their text. Parts that cannot be read are left out, because a reminder too many is better than no
/// reminders at all.
pub fn read(text: &str) -> Settings {
    let Ok(Kept { quiet, meeting }) = serde_json::from_str(text) else { return Settings::default() };
    let stamp = |(utc_ms, offset_s)| Stamp { utc_ms, offset_s };
    let spans = quiet.into_iter().map(|(from, to)| Span { from, to });
    Settings {
        quiet: spans.filter(|span| span.fits()).collect(),
        meeting: meeting.map(|[from, until]| Meeting { from: stamp(from), until: stamp(until) }),
    }
}

/// Reads a quiet time as a person types it, such as `12:00-13:00`. Each end may have any spelling of a time of day; 24:00
/// means 00:00.
pub fn span(text: &str) -> Option<Span> {
    let (from, to) = text.split_once('-')?;
    let span = Span { from: minute(from)?, to: minute(to)? };
    Some(span).filter(|span| span.fits())
}

fn minute(text: &str) -> Option<u16> {
    match text.trim() {
        "24:00" => Some(0),
        time => time.parse().ok().map(MinuteOfDay::minutes),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_kept_is_read_again() {
        let at = |utc_ms| Stamp { utc_ms, offset_s: -12_600 };
        let meeting = Meeting { from: at(1_795_600_000_000), until: at(1_795_607_200_000) };
        let quiet = vec![Span { from: 720, to: 780 }, Span { from: 1320, to: 420 }];
        for settings in [
            Settings::default(),
            Settings { quiet: quiet.clone(), meeting: None },
            Settings { quiet, meeting: Some(meeting) },
        ] {
            assert_eq!(read(&write(&settings)), settings);
        }
    }

    #[test]
    fn what_is_kept_never_changes() {
        let at = |utc_ms| Stamp { utc_ms, offset_s: 3600 };
        let settings = Settings {
            quiet: vec![Span { from: 720, to: 780 }],
            meeting: Some(Meeting { from: at(1_795_600_000_000), until: at(1_795_607_200_000) }),
        };
        let frozen = r#"{"quiet":[[720,780]],"meeting":[[1795600000000,3600],[1795607200000,3600]]}"#;
        assert_eq!((write(&settings).as_str(), read(frozen)), (frozen, settings));
        assert_eq!(read(r#"{"quiet":[[720,780]],"later":1}"#).quiet.len(), 1, "a part of a later version is ignored");
    }

    #[test]
    fn the_readable_parts_of_damaged_settings_count() {
        for spoilt in ["", "no", "[]", "{\"quiet\":7}", "{\"quiet\":[[1440,3]]}", "{\"quiet\":[[3,3]]}"] {
            assert_eq!(read(spoilt), Settings::default(), "{spoilt}");
        }
    }

    #[test]
    fn spans_as_they_are_typed() {
        for (text, from, to) in [
            ("12:00-13:00", 720, 780),
            ("22:00-7:30", 1320, 450),
            ("0:00 - 06:15", 0, 375),
            ("20:00-24:00", 1200, 0),
            ("12-13", 720, 780),
            ("10 pm - 7 am", 1320, 420),
        ] {
            assert_eq!(span(text), Some(Span { from, to }), "{text}");
        }
        for wrong in [
            "",
            "12:00",
            "12:00-12:00",
            "0:00-24:00",
            "24:01-25:00",
            "12:60-13:00",
            "1e1:00-13:00",
            "+1:00-13:00",
            "12:0-13:00",
            "12:00-13:00-14:00",
        ] {
            assert_eq!(span(wrong), None, "{wrong}");
        }
    }
}
