//! When a patient's case was closed and opened again, and which of several clinicians did what, as the clinic stores it, encrypted. It
//! never leaves the clinic in this form.
//!
//! ```text
//! 1 | line break | each closing, a line: day | tab | day of reopening, or - | tab | reason's name | tab | words
//! ```
//!
//! As soon as a clinician is named, a line begins with what it is:
//!
//! ```text
//! 2 | line break | each, a line: closed | tab | as above | tab | name, or nothing
//!                                issued | tab | revision of the plan | tab | name
//!                                diary | tab | name of whoever entered days from paper last
//! ```

use crate::names;
use exercises::closing::{Closing, MAX_CLOSINGS, MAX_WORDS};
use exercises::plan::MAX_NAME;
use std::collections::BTreeMap;

/// Without names of clinicians.
const NAMELESS: &str = "1";
const NAMED: &str = "2";
const NOT_REOPENED: &str = "-";
const CLOSED: &str = "closed";
const ISSUED: &str = "issued";
const DIARY: &str = "diary";

/// What is stored of a patient's case.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Case {
    /// The closings, the first one first.
    pub closings: Vec<Closing>,
    /// The names of the clinicians who issued plans, by the plan's revision, where they are known.
    pub issued_by: BTreeMap<u16, String>,
    /// The name of the clinician who entered days from a diary on paper last, where it is known.
    pub diary_by: Option<String>,
}

impl Case {
    fn is_nameless(&self) -> bool {
        self.issued_by.is_empty() && self.diary_by.is_none() && self.closings.iter().all(|closing| closing.by.is_none())
    }
}

/// Writes a case. Words and names are one line without tabs.
pub fn write(case: &Case) -> Vec<u8> {
    let nameless = case.is_nameless();
    let mut lines = vec![if nameless { NAMELESS } else { NAMED }.to_owned()];
    for Closing { on, reason, words, reopened, by } in &case.closings {
        let reopened = reopened.map_or_else(|| NOT_REOPENED.to_owned(), |day| day.to_string());
        let closing = format!("{on}\t{reopened}\t{}\t{words}", names::name(reason));
        let by = by.as_deref().unwrap_or_default();
        lines.push(if nameless { closing } else { format!("{CLOSED}\t{closing}\t{by}") });
    }
    lines.extend(case.issued_by.iter().map(|(revision, name)| format!("{ISSUED}\t{revision}\t{name}")));
    lines.extend(case.diary_by.iter().map(|name| format!("{DIARY}\t{name}")));
    lines.join("\n").into_bytes()
}

/// Reads what [`write()`] wrote; `None` for anything else.
pub fn read(bytes: &[u8]) -> Option<Case> {
    let mut lines = std::str::from_utf8(bytes).ok()?.split('\n');
    let nameless = match lines.next()? {
        NAMELESS => true,
        NAMED => false,
        _ => return None,
    };
    let mut case = Case::default();
    for line in lines {
        let parts: Vec<&str> = line.split('\t').collect();
        match parts.as_slice() {
            [on, reopened, reason, words] if nameless => case.closings.push(closing([on, reopened, reason, words], "")?),
            [CLOSED, on, reopened, reason, words, by] if !nameless => {
                case.closings.push(closing([on, reopened, reason, words], by)?);
            }
            [ISSUED, revision, by] if !nameless => {
                case.issued_by.insert(revision.parse().ok()?, name(by)??);
            }
            [DIARY, by] if !nameless => case.diary_by = Some(name(by)??),
            _ => return None,
        }
    }
    (case.closings.len() <= MAX_CLOSINGS).then_some(case)
}

fn closing([on, reopened, reason, words]: [&str; 4], by: &str) -> Option<Closing> {
    let reopened = if reopened == NOT_REOPENED { None } else { Some(reopened.parse().ok()?) };
    let fits = words.chars().count() <= MAX_WORDS;
    let (on, reason, by) = (on.parse().ok()?, names::find(reason)?, name(by)?);
    fits.then(|| Closing { on, reason, words: words.to_owned(), reopened, by })
}

/// A clinician's name, or none; `None` for one that is too long.
#[expect(clippy::option_option, reason = "a name that is not known is no fault")]
fn name(text: &str) -> Option<Option<String>> {
    (text.chars().count() <= MAX_NAME).then(|| Some(text.to_owned()).filter(|name| !name.is_empty()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;
    use exercises::closing::CloseReason;

    fn closings() -> Vec<Closing> {
        let day = |day| NaiveDate::from_ymd_opt(2027, 3, day).expect("a day");
        let closing = |on, reason, words: &str, reopened| Closing { on, reason, words: words.into(), reopened, by: None };
        vec![
            closing(day(1), CloseReason::StoppedComing, "", Some(day(9))),
            closing(day(20), CloseReason::Other, "moved away", None),
        ]
    }

    /// These bytes never change within a version.
    #[test]
    fn closings_are_written_as_they_always_were() {
        let case = Case { closings: closings(), ..Case::default() };
        let text = "1\n2027-03-01\t2027-03-09\tstopped-coming\t\n2027-03-20\t-\tother\tmoved away";
        assert_eq!(write(&case), text.as_bytes());
        assert_eq!(read(text.as_bytes()), Some(case));
        assert_eq!(read(&write(&Case::default())), Some(Case::default()));
        for bad in ["", "3", "1\n", "1\n2027-03-01\t-\tother", "1\n2027-03-01\t-\tanother\t", "1\n2027-13-01\t-\tother\t"] {
            assert_eq!(read(bad.as_bytes()), None, "{bad:?}");
        }
        let long = format!("1\n2027-03-01\t-\tother\t{}", "x".repeat(MAX_WORDS + 1));
        assert_eq!(read(long.as_bytes()), None);
    }

    /// These bytes never change within a version.
    #[test]
    fn who_did_something_is_written_with_it() {
        let mut case = Case { closings: closings(), ..Case::default() };
        case.closings[1].by = Some("Rowan Hale".into());
        case.issued_by = [(1, "Ash Lindqvist".to_owned()), (12, "Rowan Hale".to_owned())].into();
        case.diary_by = Some("Ash Lindqvist".into());
        let text = "2\nclosed\t2027-03-01\t2027-03-09\tstopped-coming\t\t\nclosed\t2027-03-20\t-\tother\tmoved away\tRowan Hale\n\
                    issued\t1\tAsh Lindqvist\nissued\t12\tRowan Hale\ndiary\tAsh Lindqvist";
        assert_eq!(write(&case), text.as_bytes());
        assert_eq!(read(text.as_bytes()), Some(case));
        let long = format!("2\ndiary\t{}", "x".repeat(MAX_NAME + 1));
        for bad in [
            "2\nissued\t1\t",
            "2\nissued\tx\tAsh",
            "2\ndiary\t",
            "2\n2027-03-20\t-\tother\tmoved away",
            "1\ndiary\tAsh",
            &long,
        ] {
            assert_eq!(read(bad.as_bytes()), None, "{bad:?}");
        }
    }
}
