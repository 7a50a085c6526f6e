//! The visits that a patient's entries add up to.

use super::{Finding, Measure, Screening, VisitEntry};
use chrono::NaiveDate;

/// One visit.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Visit {
    /// Its day.
    pub day: NaiveDate,
    /// What was found, in the order in which it was first written.
    pub found: Vec<Found>,
}

impl Visit {
    /// The names of the clinicians who noted what was found, as far as they are known, in the order in which they did.
    pub fn by(&self) -> Vec<String> {
        let mut names: Vec<String> = Vec::new();
        for name in self.found.iter().filter_map(|found| found.by.as_ref()) {
            if !names.contains(name) {
                names.push(name.clone());
            }
        }
        names
    }
}

/// A finding that was taken back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TakenBack {
    /// The day of its visit.
    pub day: NaiveDate,
    /// The number of the entry that first said it.
    pub first: u32,
    /// What it said last.
    pub finding: Finding,
}

/// A finding of a visit.
#[derive(Debug, Clone, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Found {
    /// The number of the entry that says it now; a correction names it.
    pub n: u32,
    /// The number of the entry that first said it, which stays whatever is corrected.
    pub first: u32,
    /// What was found.
    pub finding: Finding,
    /// Whether it was corrected.
    pub corrected: bool,
    /// The name of the clinician who first noted it, where it is known.
    pub by: Option<String>,
    /// The name of the clinician who corrected it last, where it is known.
    pub corrected_by: Option<String>,
}

/// The visits with anything that was not taken back, the newest first. `entries` are in the order of their numbers. An entry that replaces one
/// that is not there, or that was replaced already, changes nothing.
pub fn visits(entries: &[VisitEntry]) -> Vec<Visit> {
    let lines = lines(entries);
    let mut days: Vec<NaiveDate> = lines.iter().filter(|line| !line.taken_back).map(|line| line.day).collect();
    days.sort_unstable_by(|one, other| other.cmp(one));
    days.dedup();
    let of = |day: NaiveDate| {
        let found = lines.iter().filter(|line| line.day == day && !line.taken_back).map(|line| Found {
            n: line.n,
            first: line.first,
            finding: line.finding.clone(),
            corrected: line.n != line.first,
            by: line.by.cloned(),
            corrected_by: line.corrected_by.cloned(),
        });
        Visit { day, found: found.collect() }
    };
    days.into_iter().map(of).collect()
}

/// What was taken back, in the order in which it was first written.
pub fn taken_back(entries: &[VisitEntry]) -> Vec<TakenBack> {
    let gone = lines(entries).into_iter().filter(|line| line.taken_back);
    gone.map(|line| TakenBack { day: line.day, first: line.first, finding: line.finding.clone() }).collect()
}

/// What became of one finding.
struct FindingLine<'a> {
    day: NaiveDate,
    first: u32,
    n: u32,
    finding: &'a Finding,
    taken_back: bool,
    by: Option<&'a String>,
    corrected_by: Option<&'a String>,
}

fn lines(entries: &[VisitEntry]) -> Vec<FindingLine<'_>> {
    let mut lines: Vec<FindingLine<'_>> = Vec::new();
    for entry in entries {
        match (entry.replaces, entry.finding.as_ref()) {
            (None, Some(finding)) => {
                lines.push(FindingLine {
                    day: entry.day,
                    first: entry.n,
                    n: entry.n,
                    finding,
                    taken_back: false,
                    by: entry.by.as_ref(),
                    corrected_by: None,
                });
            }
            (None, None) => {}
            (Some(of), said) => {
                if let Some(line) = lines.iter_mut().find(|line| line.n == of && !line.taken_back) {
                    (line.n, line.finding, line.taken_back) = (entry.n, said.unwrap_or(line.finding), said.is_none());
                    line.corrected_by = entry.by.as_ref();
                }
            }
        }
    }
    lines
}

/// The last screening, and the day on which it was done.
pub fn last_screening(visits: &[Visit]) -> Option<(NaiveDate, &Screening)> {
    visits.iter().find_map(|visit| {
        let screenings = visit.found.iter().rev();
        screenings
            .filter_map(|found| if let Finding::Screening(one) = &found.finding { Some(one) } else { None })
            .next()
            .map(|one| (visit.day, one))
    })
}

/// The last measure of the same at a visit before `day`, and its day. Of measures before and after treatment the one before counts: what
/// treatment changed for an hour is no progress.
pub fn measured_before<'a>(visits: &'a [Visit], measure: &Measure, day: NaiveDate) -> Option<(NaiveDate, &'a Measure)> {
    visits.iter().filter(|visit| visit.day < day).find_map(|visit| {
        let like = visit.found.iter().filter_map(|found| match &found.finding {
            Finding::Measure(one) if one.is_like(measure) => Some(one),
            _ => None,
        });
        like.min_by_key(|one| one.moment == super::Moment::After).map(|one| (visit.day, one))
    })
}

#[cfg(test)]
mod tests {
    use super::super::*;
    use super::*;
    use crate::plan::BodySide;
    use crate::time::Stamp;

    fn day(n: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 3, n).expect("a date")
    }

    fn entry(n: u32, of: u32, replaces: Option<u32>, finding: Option<Finding>) -> VisitEntry {
        VisitEntry { n, at: Stamp { utc_ms: i64::from(n), offset_s: 0 }, day: day(of), replaces, finding, by: None }
    }

    fn by(name: &str, entry: VisitEntry) -> VisitEntry {
        VisitEntry { by: Some(name.into()), ..entry }
    }

    #[test]
    fn a_visit_names_who_noted_what_was_found_and_who_corrected_it() {
        let entries = [
            entry(1, 1, None, note("by nobody that is known")),
            by("Rowan", entry(2, 1, None, note("one"))),
            by("Ash", entry(3, 1, None, note("taken back"))),
            by("Rowan", entry(4, 1, None, note("two"))),
            by("Ash", entry(5, 1, Some(2), note("one, corrected"))),
            by("Rowan", entry(6, 1, Some(3), None)),
        ];
        let all = visits(&entries);
        assert_eq!(all[0].by(), ["Rowan"], "nobody is named for what was taken back, or for a correction");
        let said: Vec<_> = all[0].found.iter().map(|found| (found.by.as_deref(), found.corrected_by.as_deref())).collect();
        assert_eq!(said, [(None, None), (Some("Rowan"), Some("Ash")), (Some("Rowan"), None)]);
    }

    fn note(text: &str) -> Option<Finding> {
        Some(Finding::Note(text.into()))
    }

    fn motion(moment: Moment, degrees: i32) -> Measure {
        let what = Measured::Motion { movement: "turn".into() };
        Measure { what, moment, side: Some(BodySide::Left), tenths: vec![degrees * 10] }
    }

    #[test]
    fn corrections_stand_in_the_place_of_what_they_correct() {
        let entries = [
            entry(1, 1, None, note("one")),
            entry(2, 1, None, note("two")),
            entry(3, 8, None, note("later")),
            entry(4, 1, Some(1), note("one, corrected")),
            entry(5, 1, Some(2), None),
            entry(6, 1, Some(1), note("of an entry that was corrected already")),
            entry(7, 1, Some(5), note("of one that was taken back")),
            entry(8, 8, Some(99), None),
        ];
        let all = visits(&entries);
        let said = |visit: &Visit| visit.found.iter().map(|found| (found.n, found.corrected)).collect::<Vec<_>>();
        assert_eq!(all.iter().map(|visit| visit.day).collect::<Vec<_>>(), [day(8), day(1)]);
        assert_eq!(said(&all[0]), [(3, false)]);
        assert_eq!(said(&all[1]), [(4, true)]);
        assert_eq!((all[1].found[0].first, all[0].found[0].first), (1, 3));
        let gone = taken_back(&entries);
        assert_eq!(gone.iter().map(|one| (one.day, one.first)).collect::<Vec<_>>(), [(day(1), 2)]);
        assert_eq!(gone[0].finding, Finding::Note("two".into()));
    }

    #[test]
    fn a_day_on_which_everything_was_taken_back_is_no_visit() {
        assert_eq!(visits(&[entry(1, 1, None, note("x")), entry(2, 1, Some(1), None)]), []);
    }

    #[test]
    fn a_measure_is_compared_with_the_one_before_treatment_at_the_last_visit() {
        let measure = |moment, degrees| Some(Finding::Measure(motion(moment, degrees)));
        let entries = [
            entry(1, 1, None, measure(Moment::Before, 40)),
            entry(2, 8, None, measure(Moment::After, 60)),
            entry(3, 8, None, measure(Moment::Before, 45)),
            entry(4, 15, None, measure(Moment::Before, 55)),
        ];
        let all = visits(&entries);
        let now = motion(Moment::Before, 55);
        let (when, before) = measured_before(&all, &now, day(15)).expect("measured twice before");
        assert_eq!((when, before.result()), (day(8), 450));
        let compared = compare(before, &now).expect("not capped");
        assert_eq!((compared.difference, compared.error, compared.within_error), (100, None, false));
        let other = Measure { side: None, ..now };
        assert_eq!(measured_before(&all, &other, day(15)), None);
    }

    #[test]
    fn differences_within_the_error_are_named_and_of_capped_times_nothing_is_said() {
        let stance = |tenths: &[i32]| Measure {
            what: Measured::Stance { surface: crate::catalogue::Surface::Firm, eyes: crate::catalogue::Eyes::Open },
            moment: Moment::Once,
            side: Some(BodySide::Right),
            tenths: tenths.to_vec(),
        };
        let (short, long) = (stance(&[80, 124, 101]), stance(&[300, 402]));
        assert_eq!((short.best(), short.median(), short.result()), (124, 101, 124));
        assert_eq!(long.median(), 351);
        assert!(!compare(&short, &long).expect("not capped").within_error);
        assert!(compare(&short, &stance(&[300])).expect("not capped").within_error);
        assert_eq!(compare(&short, &stance(&[600])), None);
        let pain = |score| Measure {
            what: Measured::Pain { movement: "bend".into() },
            moment: Moment::After,
            side: None,
            tenths: vec![score * 10],
        };
        assert!(compare(&pain(6), &pain(5)).expect("whole").within_error);
        assert!(!compare(&pain(6), &pain(4)).expect("whole").within_error);
    }

    #[test]
    fn values_out_of_range_and_texts_that_do_not_fit_are_refused() {
        let bad = |measure: Measure| Finding::Measure(measure).check();
        assert_eq!(bad(motion(Moment::Once, 361)), Err(VisitFault::Value { least: -180, most: 360 }));
        assert_eq!(bad(Measure { tenths: Vec::new(), ..motion(Moment::Once, 1) }), Err(VisitFault::Trials));
        let grip = Measure { what: Measured::Grip, side: None, ..motion(Moment::Once, 30) };
        assert_eq!(bad(grip), Err(VisitFault::Side));
        let half = Measure { what: Measured::ChairRise, tenths: vec![125], ..motion(Moment::Once, 1) };
        assert_eq!(bad(half), Err(VisitFault::Value { least: 0, most: 60 }));
        assert_eq!(Finding::Note("  ".into()).check(), Err(VisitFault::Text { most: 1_000 }));
        assert_eq!(Finding::Note("two\nlines".into()).check(), Ok(()));
        let change = |score, words: &str| Finding::Change(OverallChange { score, words: words.into() }).check();
        assert_eq!(change(6, ""), Err(VisitFault::Value { least: -5, most: 5 }));
        assert_eq!(change(-5, "worse\u{202e}"), Err(VisitFault::Text { most: 120 }));
        assert_eq!(change(2, "nights are better"), Ok(()));
    }

    #[test]
    fn the_last_screening_is_known_with_its_day() {
        let asked = |fell| Some(Finding::Screening(Screening { flags: [].into(), fell }));
        let all = visits(&[entry(1, 1, None, asked(false)), entry(2, 8, None, asked(true)), entry(3, 9, None, note("x"))]);
        assert_eq!(last_screening(&all).map(|(day, one)| (day, one.fell)), Some((day(8), true)));
    }
}
