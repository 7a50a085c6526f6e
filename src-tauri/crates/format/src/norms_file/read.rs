//! From the file's words to a table.

use super::shape::{CapShape, RowShape, TableShape, Word};
use super::{MAX_ROWS, MAX_SOURCE};
use crate::names::{self, Named};
use crate::plan_file::{FileFault, plainly};
use exercises::catalogue::Surface;
use exercises::norms::{Ages, Cap, ClinicRow, ClinicTable, Conditions, Norms, Published, Statistic, TableFault};
use std::ops::Range;
use toml::Spanned;

/// A fault at a place of the text, before its line is counted.
struct Wrong(Option<Range<usize>>, String);

/// Longest time that may stand in a table, in seconds.
const MAX_SECONDS: f64 = 600.0;
/// Most tries of which one figure is made.
const MAX_TRIES: u8 = 20;

/// Reads a table.
///
/// # Errors
/// The first [`FileFault`] of the file.
pub fn read(text: &str) -> Result<ClinicTable, FileFault> {
    let line = |span: Option<Range<usize>>| {
        span.map_or(0, |span| 1 + text[..span.start.min(text.len())].matches('\n').count() as u32)
    };
    let shape: TableShape =
        toml::from_str(text).map_err(|error| FileFault { line: line(error.span()), expected: plainly(error.message()) })?;
    table(shape).map_err(|Wrong(span, expected)| FileFault { line: line(span), expected })
}

fn table(shape: TableShape) -> Result<ClinicTable, Wrong> {
    let source = source(&shape.source)?;
    if !(1..=MAX_ROWS).contains(&shape.row.len()) {
        return Err(Wrong(None, format!("1 to {MAX_ROWS} rows belong into it, each under [[row]]")));
    }
    let spans: Vec<Range<usize>> = shape.row.iter().map(Spanned::span).collect();
    let rows = shape.row.into_iter().map(row).collect::<Result<_, _>>()?;
    let table = ClinicTable { source, rows };
    match Norms::built_in().with(&table) {
        Ok(_) => Ok(table),
        Err(fault) => Err(unsound(fault, &spans)),
    }
}

/// What the domain refuses, at the row that it names.
fn unsound(fault: TableFault, spans: &[Range<usize>]) -> Wrong {
    let (row, expected) = match fault {
        TableFault::NoSource => (None, "source: where the figures are from belongs here"),
        TableFault::NotATime { row } => (Some(row), "times of this row must be seconds from 0 to 600"),
        TableFault::AboveCap { row } => (Some(row), "the mean or median of this row is longer than its cap"),
        TableFault::AgesReversed { row } => (Some(row), "ages of this row: the youngest first, such as \"60-69\""),
    };
    Wrong(row.and_then(|row| spans.get(row).cloned()), expected.to_owned())
}

fn source(word: &Word) -> Result<String, Wrong> {
    let source = word.get_ref().trim();
    let fits = (1..=MAX_SOURCE).contains(&source.chars().count()) && !source.chars().any(char::is_control);
    let expected = || format!("source: where the figures are from belongs here, 1 to {MAX_SOURCE} characters on one line");
    fits.then(|| source.to_owned()).ok_or_else(|| Wrong(Some(word.span()), expected()))
}

fn row(shape: Spanned<RowShape>) -> Result<ClinicRow, Wrong> {
    let span = shape.span();
    let shape = shape.into_inner();
    let published = published(&shape, &span)?;
    Ok(ClinicRow {
        conditions: Conditions {
            ages: shape.ages.as_ref().map(ages).transpose()?,
            eyes: shape.eyes.as_ref().map(named).transpose()?,
            surface: shape.surface.as_ref().map(surface).transpose()?,
            feet: shape.feet.as_ref().map(named).transpose()?,
            arms: shape.arms.as_ref().map(named).transpose()?,
            statistic: shape.statistic.as_ref().map(statistic).transpose()?,
            cap: shape.cap.as_ref().map(cap).transpose()?,
        },
        people: shape.people,
        published,
    })
}

fn published(shape: &RowShape, row: &Range<usize>) -> Result<Published, Wrong> {
    match (&shape.mean, &shape.sd, &shape.median) {
        (Some(mean), sd, None) => {
            Ok(Published::Mean { mean_s: seconds(mean)?, sd_s: sd.as_ref().map(seconds).transpose()? })
        }
        (None, None, Some(median)) => Ok(Published::Median { median_s: seconds(median)? }),
        (_, Some(sd), _) => Err(Wrong(Some(sd.span()), "sd stands only beside a mean".into())),
        _ => Err(Wrong(Some(row.clone()), "a row needs either mean or median".into())),
    }
}

fn seconds(number: &Spanned<f64>) -> Result<f64, Wrong> {
    let seconds = *number.get_ref();
    let fits = (0.0..=MAX_SECONDS).contains(&seconds);
    fits.then_some(seconds).ok_or_else(|| Wrong(Some(number.span()), "seconds from 0 to 600 belong here".into()))
}

fn named<T: Named>(word: &Word) -> Result<T, Wrong> {
    names::find(word.get_ref())
        .ok_or_else(|| Wrong(Some(word.span()), format!("one of {} belongs here", names::list::<T>())))
}

fn surface(word: &Word) -> Result<Surface, Wrong> {
    match named(word)? {
        Surface::Firm => Ok(Surface::Firm),
        _ => Err(Wrong(Some(word.span()), "only \"firm\" belongs here: soft surfaces differ too much for a table".into())),
    }
}

/// Whole years in plain digits.
fn whole(text: &str) -> Option<u8> {
    text.bytes().all(|byte| byte.is_ascii_digit()).then(|| text.parse().ok()).flatten()
}

fn ages(word: &Word) -> Result<Ages, Wrong> {
    let parsed = match word.get_ref().split_once('-') {
        Some((from, "plus")) => whole(from).map(|from| Ages { from, to: None }),
        Some((from, to)) => whole(from).zip(whole(to)).map(|(from, to)| Ages { from, to: Some(to) }),
        None => None,
    };
    parsed.ok_or_else(|| Wrong(Some(word.span()), "whole years such as \"60-69\" or \"80-plus\" belong here".into()))
}

fn statistic(word: &Word) -> Result<Statistic, Wrong> {
    let tries = |text: &str| whole(text).filter(|tries| (1..=MAX_TRIES).contains(tries));
    let parsed = match word.get_ref().rsplit_once('-') {
        Some(("best-of", number)) => tries(number).map(Statistic::BestOf),
        Some(("mean-of", number)) => tries(number).map(Statistic::MeanOf),
        Some(("median-of", number)) => tries(number).map(Statistic::MedianOf),
        _ => None,
    };
    let expected = || format!("best-of-3, mean-of-3, median-of-3 or another number from 1 to {MAX_TRIES} belongs here");
    parsed.ok_or_else(|| Wrong(Some(word.span()), expected()))
}

fn cap(shape: &Spanned<CapShape>) -> Result<Cap, Wrong> {
    match shape.get_ref() {
        CapShape::Seconds(seconds @ 1..=600) => Ok(Cap::Seconds(*seconds)),
        CapShape::Word(word) if word == "none" => Ok(Cap::None),
        _ => Err(Wrong(Some(shape.span()), "whole seconds from 1 to 600, or \"none\", belong here".into())),
    }
}

#[cfg(test)]
mod tests {
    use super::super::EXAMPLE;
    use super::*;
    use exercises::catalogue::Arms;
    use exercises::catalogue::Eyes;
    use exercises::catalogue::Feet;
    use proptest::prelude::*;

    #[test]
    fn the_example_is_valid_and_says_that_it_is_invented() {
        let table = read(EXAMPLE).expect("the example reads");
        assert!(table.source.contains("INVENTED") && EXAMPLE.contains("FIGURES BELOW ARE INVENTED"));
        let conditions = Conditions {
            ages: Some(Ages { from: 40, to: Some(49) }),
            eyes: Some(Eyes::Open),
            surface: Some(Surface::Firm),
            feet: Some(Feet::Bare),
            arms: Some(Arms::Crossed),
            statistic: Some(Statistic::BestOf(3)),
            cap: Some(Cap::Seconds(30)),
        };
        let published = Published::Mean { mean_s: 21.5, sd_s: Some(7.5) };
        assert_eq!(table.rows[0], ClinicRow { conditions, people: Some(12), published });
        assert_eq!(table.rows[1].published, Published::Median { median_s: 18.5 });
    }

    /// The example with one change is refused at the changed line, and the text says what belongs there.
    #[track_caller]
    fn refused(from: &str, to: &str, says: &str) {
        let at = EXAMPLE.find(from).unwrap_or_else(|| panic!("{from:?} is part of the example"));
        let line = 1 + EXAMPLE[..at].matches('\n').count() as u32;
        let fault = read(&EXAMPLE.replacen(from, to, 1)).expect_err(to);
        assert!(fault.expected.contains(says), "{to}: {fault}");
        assert_eq!(fault.line, line, "{to}: {fault}");
    }

    #[test]
    fn what_cannot_be_understood_is_named_with_its_line() {
        refused("source = \"INVENTED EXAMPLE, not a publication\"", "source = \" \"", "where the figures are from");
        refused("ages = \"40-49\"", "ages = \"forties\"", "whole years such as");
        refused("ages = \"40-49\"", "ages = \"+4-49\"", "whole years such as");
        refused("ages = \"40-49\"", "ages = \"40-490\"", "whole years such as");
        refused("eyes = \"open\"", "eyes = \"half\"", "one of open, closed");
        refused("surface = \"firm\"", "surface = \"foam\"", "only \"firm\"");
        refused("feet = \"bare\"", "feet = \"cold\"", "one of bare, covered");
        refused("arms = \"crossed\"", "arms = \"hand-in-use\"", "one of crossed, on-hips, free");
        refused("statistic = \"best-of-3\"", "statistic = \"best-of-0\"", "best-of-3, mean-of-3");
        refused("statistic = \"best-of-3\"", "statistic = \"longest\"", "best-of-3, mean-of-3");
        refused("cap = 30 ", "cap = 0 ", "whole seconds from 1 to 600");
        refused("cap = 30 ", "cap = \"never\" ", "whole seconds from 1 to 600");
        refused("cap = 30 ", "cap = 30.5 ", "whole seconds from 1 to 600");
        refused("people = 12", "people = -1", "expected a whole number");
        refused("mean = 21.5 ", "mean = inf ", "seconds from 0 to 600");
        refused("sd = 7.5 ", "sd = -7.5 ", "seconds from 0 to 600");
        refused("sd = 7.5 ", "percentile = 5 ", "unknown field");
    }

    #[test]
    fn what_a_row_as_a_whole_says_is_named_at_the_row() {
        refused("[[row]]\nages = \"40-49\"", "[[row]]\nages = \"49-40\"", "the youngest first");
        let above = EXAMPLE.replacen("mean = 21.5 ", "mean = 31 ", 1);
        let first = 1 + EXAMPLE[..EXAMPLE.find("[[row]]").expect("a row")].matches('\n').count() as u32;
        let fault = read(&above).expect_err("above its cap");
        assert_eq!((fault.line, fault.expected.contains("longer than its cap")), (first, true), "{fault}");
        let neither = EXAMPLE.replacen("median = 18.5", "", 1);
        assert!(read(&neither).expect_err("no figure").expected.contains("either mean or median"));
        let both = EXAMPLE.replacen("median = 18.5", "median = 18.5\nmean = 3", 1);
        assert!(read(&both).expect_err("two figures").expected.contains("either mean or median"));
        let stray = EXAMPLE.replacen("median = 18.5", "median = 18.5\nsd = 3", 1);
        assert!(read(&stray).expect_err("a stray sd").expected.contains("only beside a mean"));
    }

    #[test]
    fn a_table_has_a_source_and_rows_and_no_more_than_are_read() {
        assert!(read("").expect_err("empty").expected.contains("missing field `source`"));
        assert!(read("source = \"x\"").expect_err("no row").expected.contains("[[row]]"));
        let many = |rows: usize| format!("source = \"x\"\n{}", "[[row]]\nmean = 1\n".repeat(rows));
        assert_eq!(read(&many(MAX_ROWS)).expect("as many as are read").rows.len(), MAX_ROWS);
        assert!(read(&many(MAX_ROWS + 1)).expect_err("too many").expected.contains("[[row]]"));
        assert!(read("source = ").expect_err("no TOML").line == 1);
    }

    proptest! {
        #[test]
        fn any_text_gives_a_table_or_a_fault(text in "\\PC{0,200}", row in "[a-z =\"0-9.\n\\-\\[\\]]{0,120}") {
            let _ = read(&text);
            let _ = read(&format!("source = \"x\"\n[[row]]\n{row}"));
        }

        #[test]
        fn what_is_written_arrives(from in 0u8..120, more in 0u8..100, tries in 1u8..=20, cap in 1u16..=600, share in 0.0f64..=1.0) {
            let to = from + more;
            let median_s = share * f64::from(cap);
            let text = format!(
                "source = \"x\"\n[[row]]\nages = \"{from}-{to}\"\nstatistic = \"median-of-{tries}\"\ncap = {cap}\nmedian = {median_s:?}"
            );
            let table = read(&text).expect("within every range");
            let row = table.rows[0];
            prop_assert_eq!(row.conditions.ages, Some(Ages { from, to: Some(to) }));
            prop_assert_eq!(row.conditions.statistic, Some(Statistic::MedianOf(tries)));
            prop_assert_eq!(row.conditions.cap, Some(Cap::Seconds(cap)));
            prop_assert_eq!((row.conditions.arms, row.published), (None, Published::Median { median_s }));
        }
    }
}
