//! Reads a table of norms from the text of its file.

use super::{MAX_ROWS, MAX_SOURCE};
use crate::fields::{self, Fields, Value, Wrong};
use exercises::catalogue::Surface;
use exercises::file_fault::{FaultKind, FileFault, NormsFault};
use exercises::norms::{Ages, Cap, ClinicRow, ClinicTable, Conditions, Norms, Published, Statistic, TableFault};

/// The longest time allowed in a table, in seconds.
const MAX_SECONDS: u16 = 600;
/// Largest number of trials from which one figure is made.
const MAX_TRIES: u8 = 20;
const FIELDS: [&str; 11] = ["ages", "eyes", "surface", "feet", "arms", "statistic", "cap", "people", "mean", "sd", "median"];

/// Reads a table.
///
/// # Errors
/// The first [`FileFault`] that is found in the file.
pub fn read(text: &str) -> Result<ClinicTable, FileFault> {
    let file = fields::toml(text)?;
    table(&file).map_err(|wrong| wrong.in_text(text))
}

fn table(file: &Value) -> Result<ClinicTable, Wrong> {
    let fields = file.fields()?;
    fields.only(&["source", "row"])?;
    let source = source(fields.required("source")?)?;
    let given = fields.optional("row").map_or(Ok(&[][..]), Value::list)?;
    if !(1..=MAX_ROWS).contains(&given.len()) {
        return Err(whole_file(FaultKind::Norms(NormsFault::RowCount { most: MAX_ROWS as u32 })));
    }
    let rows = given.iter().map(row).collect::<Result<_, _>>()?;
    let table = ClinicTable { source, rows };
    match Norms::built_in().with(&table) {
        Ok(_) => Ok(table),
        Err(fault) => Err(unsound(fault, given)),
    }
}

/// The domain's objection, reported at the row that it is about.
fn unsound(fault: TableFault, rows: &[Value]) -> Wrong {
    let (row, kind) = match fault {
        TableFault::NoSource => return whole_file(FaultKind::Norms(NormsFault::Source { most: MAX_SOURCE as u32 })),
        TableFault::NotATime { row } => (row, FaultKind::NumberRange { least: 0, most: MAX_SECONDS.into() }),
        TableFault::AboveCap { row } => (row, FaultKind::Norms(NormsFault::AboveCap)),
        TableFault::AgesReversed { row } => (row, FaultKind::Norms(NormsFault::AgesReversed)),
    };
    match rows.get(row) {
        Some(row) => row.wrong_here(kind),
        None => whole_file(kind),
    }
}

fn whole_file(kind: FaultKind) -> Wrong {
    Wrong { at: None, field: String::new(), kind }
}

fn source(value: &Value) -> Result<String, Wrong> {
    let source = value.text()?.trim();
    let fits = (1..=MAX_SOURCE).contains(&source.chars().count()) && !source.chars().any(char::is_control);
    let wrong = || value.wrong_here(FaultKind::Norms(NormsFault::Source { most: MAX_SOURCE as u32 }));
    fits.then(|| source.to_owned()).ok_or_else(wrong)
}

fn row(value: &Value) -> Result<ClinicRow, Wrong> {
    let row = value.fields()?;
    row.only(&FIELDS)?;
    Ok(ClinicRow {
        conditions: Conditions {
            ages: row.maybe("ages", ages)?,
            eyes: row.maybe("eyes", Value::named)?,
            surface: row.maybe("surface", surface)?,
            feet: row.maybe("feet", Value::named)?,
            arms: row.maybe("arms", Value::named)?,
            statistic: row.maybe("statistic", statistic)?,
            cap: row.maybe("cap", cap)?,
        },
        people: row.maybe("people", |people| people.whole(u32::MAX))?,
        published: published(&row)?,
    })
}

fn published(row: &Fields<'_>) -> Result<Published, Wrong> {
    let seconds = |name| row.maybe(name, |value| value.number(MAX_SECONDS.into()));
    match (seconds("mean")?, row.optional("sd"), seconds("median")?) {
        (Some(mean_s), _, None) => Ok(Published::Mean { mean_s, sd_s: seconds("sd")? }),
        (None, None, Some(median_s)) => Ok(Published::Median { median_s }),
        (None, Some(sd), _) => Err(sd.wrong_here(FaultKind::Norms(NormsFault::SdWithoutMean))),
        _ => Err(row.one_of(&["mean", "median"])),
    }
}

fn surface(value: &Value) -> Result<Surface, Wrong> {
    match value.named()? {
        Surface::Firm => Ok(Surface::Firm),
        _ => Err(value.wrong(FaultKind::Norms(NormsFault::FirmOnly))),
    }
}

/// A number of whole years in plain digits.
fn whole(text: &str) -> Option<u8> {
    text.bytes().all(|byte| byte.is_ascii_digit()).then(|| text.parse().ok()).flatten()
}

fn ages(value: &Value) -> Result<Ages, Wrong> {
    let parsed = match value.text()?.split_once('-') {
        Some((from, "plus")) => whole(from).map(|from| Ages { from, to: None }),
        Some((from, to)) => whole(from).zip(whole(to)).map(|(from, to)| Ages { from, to: Some(to) }),
        None => None,
    };
    parsed.ok_or_else(|| value.wrong(FaultKind::Norms(NormsFault::Ages)))
}

fn statistic(value: &Value) -> Result<Statistic, Wrong> {
    let tries = |text: &str| whole(text).filter(|tries| (1..=MAX_TRIES).contains(tries));
    let parsed = match value.text()?.rsplit_once('-') {
        Some(("best-of", number)) => tries(number).map(Statistic::BestOf),
        Some(("mean-of", number)) => tries(number).map(Statistic::MeanOf),
        Some(("median-of", number)) => tries(number).map(Statistic::MedianOf),
        _ => None,
    };
    parsed.ok_or_else(|| value.wrong(FaultKind::Norms(NormsFault::Statistic { most: MAX_TRIES })))
}

fn cap(value: &Value) -> Result<Cap, Wrong> {
    match (value.whole(MAX_SECONDS), value.text()) {
        (Ok(seconds @ 1..), _) => Ok(Cap::Seconds(seconds)),
        (_, Ok("none")) => Ok(Cap::None),
        _ => Err(value.wrong(FaultKind::Norms(NormsFault::Cap { least: 1, most: MAX_SECONDS }))),
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

    /// Checks that the example with one change is refused at the changed line, for that field and reason.
    #[track_caller]
    fn refused(from: &str, to: &str, field: &str, kind: FaultKind) {
        let at = EXAMPLE.find(from).unwrap_or_else(|| panic!("{from:?} is part of the example"));
        let line = 1 + EXAMPLE[..at].matches('\n').count() as u32;
        let fault = FileFault { line, field: field.into(), kind };
        assert_eq!(read(&EXAMPLE.replacen(from, to, 1)), Err(fault), "{to}");
    }

    #[track_caller]
    fn refused_word(field: &str, from: &str, to: &str, allowed: &[&str]) {
        let allowed = allowed.iter().map(|word| (*word).to_owned()).collect();
        let change = |word: &str| format!("{field} = \"{word}\"");
        refused(&change(from), &change(to), field, FaultKind::UnknownWord { found: to.into(), allowed });
    }

    #[test]
    fn what_cannot_be_understood_is_named_with_its_line_and_field() {
        let source = FaultKind::Norms(NormsFault::Source { most: 200 });
        refused("source = \"INVENTED EXAMPLE, not a publication\"", "source = \" \"", "", source);
        for ages in ["forties", "+4-49", "40-490"] {
            refused("ages = \"40-49\"", &format!("ages = \"{ages}\""), "ages", FaultKind::Norms(NormsFault::Ages));
        }
        refused_word("eyes", "open", "half", &["open", "closed"]);
        refused_word("feet", "bare", "cold", &["bare", "covered"]);
        refused_word("arms", "crossed", "hand-in-use", &["crossed", "on-hips", "free"]);
        refused("surface = \"firm\"", "surface = \"foam\"", "surface", FaultKind::Norms(NormsFault::FirmOnly));
        for statistic in ["best-of-0", "longest"] {
            let to = format!("statistic = \"{statistic}\"");
            refused("statistic = \"best-of-3\"", &to, "statistic", FaultKind::Norms(NormsFault::Statistic { most: 20 }));
        }
        for cap in ["0", "\"never\"", "30.5", "601"] {
            refused("cap = 30 ", &format!("cap = {cap} "), "cap", FaultKind::Norms(NormsFault::Cap { least: 1, most: 600 }));
        }
        refused("people = 12", "people = -1", "people", FaultKind::NumberRange { least: 0, most: u32::MAX.into() });
        let seconds = || FaultKind::NumberRange { least: 0, most: 600 };
        refused("mean = 21.5 ", "mean = inf ", "mean", seconds());
        refused("sd = 7.5 ", "sd = -7.5 ", "sd", seconds());
        let allowed = FIELDS.map(str::to_owned).to_vec();
        refused("sd = 7.5 ", "percentile = 5 ", "", FaultKind::UnknownField { found: "percentile".into(), allowed });
    }

    #[test]
    fn what_a_row_as_a_whole_says_is_named_at_the_row() {
        refused("[[row]]\nages = \"40-49\"", "[[row]]\nages = \"49-40\"", "", FaultKind::Norms(NormsFault::AgesReversed));
        let above = EXAMPLE.replacen("mean = 21.5 ", "mean = 31 ", 1);
        let first = 1 + EXAMPLE[..EXAMPLE.find("[[row]]").expect("a row")].matches('\n').count() as u32;
        assert_eq!(read(&above), Err(FileFault::at(first, FaultKind::Norms(NormsFault::AboveCap))));
        let changed = |to: &str| read(&EXAMPLE.replacen("median = 18.5", to, 1)).expect_err(to).kind;
        let one_of = FaultKind::OneOfFields { fields: vec!["mean".into(), "median".into()] };
        assert_eq!(changed(""), one_of);
        assert_eq!(changed("median = 18.5\nmean = 3"), one_of);
        assert_eq!(changed("median = 18.5\nsd = 3"), FaultKind::Norms(NormsFault::SdWithoutMean));
        assert_eq!(changed("sd = 3"), FaultKind::Norms(NormsFault::SdWithoutMean));
    }

    #[test]
    fn a_table_has_a_source_and_rows_and_no_more_than_are_read() {
        assert_eq!(read(""), Err(FileFault::at(1, FaultKind::MissingField { field: "source".into() })));
        let rows = || Err(FileFault::at(0, FaultKind::Norms(NormsFault::RowCount { most: 500 })));
        assert_eq!(read("source = \"x\""), rows());
        let many = |rows: usize| format!("source = \"x\"\n{}", "[[row]]\nmean = 1\n".repeat(rows));
        assert_eq!(read(&many(MAX_ROWS)).expect("as many as are read").rows.len(), MAX_ROWS);
        assert_eq!(read(&many(MAX_ROWS + 1)), rows());
        assert!(matches!(read("source = "), Err(FileFault { line: 1, kind: FaultKind::NotToml { .. }, .. })));
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
