//! What is wrong in a file that a person wrote, as part of a sentence.

use crate::{Key, Words};
use exercises::catalogue::{IdFault, Lang, MAX_ID};
use exercises::file_fault::{CsvFault, ExerciseFault, FaultKind, FileFault, NormsFault, PlanFault, RunsFault, ValueKind};

/// An example of how dates are written in files, in every language.
const DATE: &str = "2026-11-25";
const INSTANT: &str = "2026-11-25T09:02:00+01:00";

impl Words {
    /// The fault at a place in a file, with the field: "score: a number from 0 to 10 is expected here".
    pub(super) fn file_fault(self, fault: &FileFault) -> String {
        let kind = self.fault_kind(&fault.kind);
        if fault.field.is_empty() { kind } else { self.file_fault_in_field(&fault.field, &kind) }
    }

    fn fault_kind(self, kind: &FaultKind) -> String {
        let text = |key| self.text(key).to_owned();
        match kind {
            FaultKind::NotUtf8 => text(Key::FileFaultNotUtf8),
            FaultKind::TooLarge { most, .. } => self.file_fault_too_large(&self.size(*most)),
            FaultKind::NotToml { detail } => self.file_fault_not_toml(detail),
            FaultKind::NotJson { column, detail } => self.file_fault_not_json(column, detail),
            FaultKind::UnknownField { found, allowed } => self.file_fault_unknown_field(found, &self.commas(allowed)),
            FaultKind::MissingField { field } => self.file_fault_missing_field(field),
            FaultKind::UnknownWord { found, allowed } => self.file_fault_unknown_word(found, &self.commas(allowed)),
            FaultKind::WrongKind { expected, found } => {
                self.file_fault_wrong_kind(&self.expected_kind(*expected), &self.found_kind(*found))
            }
            FaultKind::NumberRange { least, most } => self.file_fault_number_range(least, most),
            FaultKind::TextLength { least, most, found } => self.file_fault_text_length(least, most, found),
            FaultKind::ListLength { least, most, found } => self.file_fault_list_length(found, least, most),
            FaultKind::OneOfFields { fields } => self.file_fault_one_of_fields(&self.commas(fields)),
            FaultKind::Duplicate { id } => self.file_fault_duplicate(id),
            FaultKind::Date => self.file_fault_date(DATE),
            FaultKind::DateAfterToday { today } => self.file_fault_date_after_today(&today.to_string()),
            FaultKind::TimeOfDay => text(Key::FileFaultTime),
            FaultKind::Moment => self.file_fault_instant(INSTANT),
            FaultKind::Id(IdFault::Empty) => text(Key::FileFaultIdEmpty),
            FaultKind::Id(IdFault::TooLong) => self.file_fault_id_too_long(MAX_ID),
            FaultKind::Id(IdFault::NotKebabCase) => text(Key::FileFaultIdForm),
            FaultKind::NoExerciseFile => text(Key::FileFaultNoExerciseFile),
            FaultKind::Exercise(fault) => self.exercise_fault(fault),
            FaultKind::Plan(fault) => self.text(plan(fault)).to_owned(),
            FaultKind::Runs(fault) => self.runs_fault(fault),
            FaultKind::Norms(fault) => self.norms_fault(fault),
            FaultKind::Csv(fault) => self.csv_fault(fault),
        }
    }

    fn exercise_fault(self, fault: &ExerciseFault) -> String {
        let key = match fault {
            ExerciseFault::NotFluent { detail } => return self.file_fault_not_fluent(detail),
            ExerciseFault::UnknownMessage { allowed } => return self.file_fault_unknown_message(&self.commas(allowed)),
            ExerciseFault::NoSuchLevel { found, levels } => {
                return self.file_fault_no_such_level(found, &self.commas(levels));
            }
            ExerciseFault::Gap { missing } => return self.file_fault_gap(missing),
            ExerciseFault::ListsDiffer { here, first } => return self.file_fault_lists_differ(here, first),
            ExerciseFault::MissingLanguage { lang } => {
                return self.file_fault_missing_language(lang.code(), &self.commas(&Lang::ALL.map(Lang::code)));
            }
            ExerciseFault::NoExercise { expected } => return self.file_fault_no_exercise(expected),
            ExerciseFault::NoLanguage => {
                let endings = Lang::ALL.map(|lang| format!(".{}.ftl", lang.code()));
                return self.file_fault_no_language(&self.commas(&endings));
            }
            ExerciseFault::Unprintable { character } => {
                return self.file_fault_unprintable(&format!("U+{:04X}", u32::from(*character)));
            }
            ExerciseFault::SameId { id } => return self.file_fault_same_id(id),
            ExerciseFault::OwnIdTooLong { most } => return self.file_fault_own_id_too_long(most),
            ExerciseFault::ShippedId { id } => return self.file_fault_shipped_id(id),
            ExerciseFault::OldRevision { found, have } => return self.file_fault_old_revision(found, have),
            ExerciseFault::ReservedId => Key::FileFaultReservedId,
            ExerciseFault::Placeable => Key::FileFaultPlaceable,
            ExerciseFault::Attribute => Key::FileFaultAttribute,
            ExerciseFault::Term => Key::FileFaultTerm,
            ExerciseFault::MissingMessage => Key::FileFaultMissingMessage,
            ExerciseFault::TextsTwice => Key::FileFaultTextsTwice,
            ExerciseFault::BalanceNeeds => Key::FileFaultBalanceNeeds,
            ExerciseFault::SidesOfLadder => Key::FileFaultSidesOfLadder,
            ExerciseFault::SidesOfKind => Key::FileFaultSidesOfKind,
            ExerciseFault::ErrorOfCount => Key::FileFaultErrorOfCount,
            ExerciseFault::StepOfTest => Key::FileFaultStepOfTest,
        };
        self.text(key).to_owned()
    }

    fn runs_fault(self, fault: &RunsFault) -> String {
        let key = match fault {
            RunsFault::TooManyParts { most } => return self.file_fault_too_many_parts(most),
            RunsFault::FailedCount => Key::FileFaultFailedCount,
            RunsFault::PhoneWithoutTrials => Key::FileFaultPhoneWithoutTrials,
            RunsFault::NoSuchItem => Key::FileFaultNoSuchItem,
            RunsFault::NoOpenSlot => Key::FileFaultNoOpenSlot,
            RunsFault::Paused => Key::FileFaultPaused,
            RunsFault::DaysOutsidePlan => Key::FileFaultDaysOutsidePlan,
        };
        self.text(key).to_owned()
    }

    fn norms_fault(self, fault: &NormsFault) -> String {
        let key = match fault {
            NormsFault::RowCount { most } => return self.file_fault_row_count(most),
            NormsFault::Source { most } => return self.file_fault_source(most),
            NormsFault::Statistic { most } => return self.file_fault_statistic(most),
            NormsFault::Cap { least, most } => return self.file_fault_cap(least, most),
            NormsFault::SdWithoutMean => Key::FileFaultSdWithoutMean,
            NormsFault::Ages => Key::FileFaultAges,
            NormsFault::AgesReversed => Key::FileFaultAgesReversed,
            NormsFault::AboveCap => Key::FileFaultAboveCap,
            NormsFault::FirmOnly => Key::FileFaultFirmOnly,
        };
        self.text(key).to_owned()
    }

    fn csv_fault(self, fault: &CsvFault) -> String {
        match fault {
            CsvFault::Empty { header } => self.file_fault_csv_empty(header),
            CsvFault::Header { header, found } => self.file_fault_csv_header(header, found),
            CsvFault::ByteOrderMark => self.text(Key::FileFaultCsvByteOrderMark).to_owned(),
            CsvFault::Rows { most } => self.file_fault_csv_rows(most),
            CsvFault::Separator { found: '\t' } => self.text(Key::FileFaultCsvTab).to_owned(),
            CsvFault::Separator { found } => self.file_fault_csv_separator(&found.to_string()),
            CsvFault::LineLength { most } => self.file_fault_csv_line_length(most),
            CsvFault::EmptyLine { columns } => self.file_fault_csv_empty_line(columns),
            CsvFault::Columns { columns, found } => self.file_fault_csv_columns(columns, found),
            CsvFault::Number { column, found } => self.file_fault_csv_number(column, found),
            CsvFault::Finite { column } => self.file_fault_csv_finite(column),
            CsvFault::Day { column, found } => self.file_fault_csv_day(column, found),
            CsvFault::MixedDays { column } => self.file_fault_csv_mixed_days(column),
            CsvFault::DayOrder { column } => self.file_fault_csv_day_order(column),
        }
    }

    /// The kind of value that is expected at a place.
    fn expected_kind(self, kind: ValueKind) -> String {
        match kind {
            ValueKind::Number => self.text(Key::FileKindAnyNumber).to_owned(),
            other => self.found_kind(other),
        }
    }

    /// The kind of value that is at a place.
    fn found_kind(self, kind: ValueKind) -> String {
        let key = match kind {
            ValueKind::Text => Key::FileKindText,
            ValueKind::WholeNumber => Key::FileKindWholeNumber,
            ValueKind::Number => Key::FileKindNumber,
            ValueKind::Truth => Key::FileKindTruth,
            ValueKind::DateOrTime => Key::FileKindDateOrTime,
            ValueKind::List => Key::FileKindList,
            ValueKind::ListOfNumbers(count) => return self.file_kind_list_of_numbers(count),
            ValueKind::Table => Key::FileKindTable,
            ValueKind::Nothing => Key::FileKindNothing,
        };
        self.text(key).to_owned()
    }
}

fn plan(fault: &PlanFault) -> Key {
    match fault {
        PlanFault::Days => Key::FileFaultDays,
        PlanFault::Weight => Key::FileFaultWeight,
        PlanFault::AlarmName => Key::FileFaultAlarmName,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;
    use chrono::NaiveDate;
    use wire::Failure;

    const EN: Words = Words::new(Locale::En);
    const ES: Words = Words::new(Locale::Es);

    fn some(words: &[&str]) -> Vec<String> {
        words.iter().map(|word| (*word).to_owned()).collect()
    }

    /// One fault of each kind.
    fn all() -> Vec<FaultKind> {
        let today = NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date");
        let (column, header, found) = (|| "day".to_owned(), || "day,value".to_owned(), || "x".to_owned());
        let kinds = [ValueKind::ListOfNumbers(3), ValueKind::WholeNumber, ValueKind::Truth, ValueKind::DateOrTime];
        let others = [ValueKind::Text, ValueKind::Number, ValueKind::List, ValueKind::Table, ValueKind::Nothing];
        let wrong_kinds = kinds.into_iter().chain(others);
        let mut all: Vec<FaultKind> =
            wrong_kinds.map(|kind| FaultKind::WrongKind { expected: kind, found: ValueKind::Nothing }).collect();
        all.extend([IdFault::Empty, IdFault::TooLong, IdFault::NotKebabCase].map(FaultKind::Id));
        all.extend([
            FaultKind::NotUtf8,
            FaultKind::TooLarge { bytes: 70_000, most: 65_536 },
            FaultKind::NotToml { detail: "invalid key".into() },
            FaultKind::NotJson { column: 7, detail: "trailing comma".into() },
            FaultKind::UnknownField { found: found(), allowed: some(&["leg", "end"]) },
            FaultKind::MissingField { field: "review".into() },
            FaultKind::UnknownWord { found: found(), allowed: some(&["left", "right"]) },
            FaultKind::NumberRange { least: 0, most: 600 },
            FaultKind::TextLength { least: 1, most: 40, found: 41 },
            FaultKind::ListLength { least: 1, most: 8, found: 9 },
            FaultKind::OneOfFields { fields: some(&["every", "at"]) },
            FaultKind::Duplicate { id: "at".into() },
            FaultKind::Date,
            FaultKind::DateAfterToday { today },
            FaultKind::TimeOfDay,
            FaultKind::Moment,
            FaultKind::NoExerciseFile,
        ]);
        let exercise = [
            ExerciseFault::NotFluent { detail: "Expected a token".into() },
            ExerciseFault::Placeable,
            ExerciseFault::Attribute,
            ExerciseFault::Term,
            ExerciseFault::MissingMessage,
            ExerciseFault::UnknownMessage { allowed: some(&["name", "step-N"]) },
            ExerciseFault::NoSuchLevel { found: "sofa".into(), levels: some(&["wall", "chair"]) },
            ExerciseFault::Gap { missing: "step-2".into() },
            ExerciseFault::ListsDiffer { here: 2, first: 3 },
            ExerciseFault::ListsDiffer { here: 1, first: 3 },
            ExerciseFault::MissingLanguage { lang: Lang::Es },
            ExerciseFault::TextsTwice,
            ExerciseFault::NoExercise { expected: "wall-sit.toml".into() },
            ExerciseFault::NoLanguage,
            ExerciseFault::Unprintable { character: '\u{202E}' },
            ExerciseFault::BalanceNeeds,
            ExerciseFault::SidesOfLadder,
            ExerciseFault::SidesOfKind,
            ExerciseFault::ErrorOfCount,
            ExerciseFault::StepOfTest,
            ExerciseFault::SameId { id: "wall-sit".into() },
        ];
        all.extend(exercise.map(FaultKind::Exercise));
        all.extend([PlanFault::Days, PlanFault::AlarmName, PlanFault::Weight].map(FaultKind::Plan));
        let runs = [
            RunsFault::TooManyParts { most: 64 },
            RunsFault::FailedCount,
            RunsFault::PhoneWithoutTrials,
            RunsFault::NoSuchItem,
            RunsFault::NoOpenSlot,
            RunsFault::Paused,
            RunsFault::DaysOutsidePlan,
        ];
        all.extend(runs.map(FaultKind::Runs));
        let norms = [
            NormsFault::RowCount { most: 500 },
            NormsFault::Source { most: 200 },
            NormsFault::SdWithoutMean,
            NormsFault::Ages,
            NormsFault::AgesReversed,
            NormsFault::Statistic { most: 20 },
            NormsFault::Cap { least: 1, most: 600 },
            NormsFault::AboveCap,
            NormsFault::FirmOnly,
        ];
        all.extend(norms.map(FaultKind::Norms));
        let csv = [
            CsvFault::Empty { header: header() },
            CsvFault::Header { header: header(), found: found() },
            CsvFault::ByteOrderMark,
            CsvFault::Rows { most: 3000 },
            CsvFault::Separator { found: ';' },
            CsvFault::Separator { found: '\t' },
            CsvFault::LineLength { most: 256 },
            CsvFault::EmptyLine { columns: 2 },
            CsvFault::Columns { columns: 2, found: 3 },
            CsvFault::Number { column: column(), found: found() },
            CsvFault::Finite { column: column() },
            CsvFault::Day { column: column(), found: found() },
            CsvFault::MixedDays { column: column() },
            CsvFault::DayOrder { column: column() },
        ];
        all.extend(csv.map(FaultKind::Csv));
        all
    }

    #[test]
    fn every_fault_has_a_text_of_its_own_in_both_languages() {
        let mut seen = std::collections::BTreeSet::new();
        for kind in all() {
            let fault = FileFault::at(3, kind);
            let [en, es] = [EN, ES].map(|words| words.file_fault(&fault));
            assert_ne!(en, es, "{fault:?}");
            for text in [en, es] {
                assert!(text.len() > 12 && !text.ends_with('.') && !text.contains(['{', '}']), "{fault:?}: {text}");
                assert!(seen.insert(text.clone()), "{fault:?}: two faults with the text {text}");
            }
        }
    }

    #[test]
    fn the_facts_are_in_the_text() {
        let text = |words: Words, kind| words.file_fault(&FileFault { line: 2, field: "leg".into(), kind });
        let word = || FaultKind::UnknownWord { found: "up".into(), allowed: some(&["left", "right"]) };
        assert_eq!(text(EN, word()), "leg: “up” is not allowed here; allowed: left, right");
        assert_eq!(text(ES, word()), "leg: aquí no se permite «up»; se permite: left, right");
        let number = || FaultKind::WrongKind { expected: ValueKind::Number, found: ValueKind::Text };
        assert_eq!(text(EN, number()), "leg: a number is expected here, but this is text");
        assert_eq!(text(ES, number()), "leg: aquí se espera un número, pero hay un texto");
        let large = FileFault::at(0, FaultKind::TooLarge { bytes: 70_000, most: 65_536 });
        assert_eq!(EN.file_fault(&large), "the file is larger than the limit of 64 kB");
    }

    #[test]
    fn the_line_is_named_if_there_is_one() {
        let said = |line| {
            let fault = FileFault::at(line, FaultKind::NotUtf8);
            EN.failure(&Failure::NotUnderstood { file: "plan.toml".into(), fault }).fault
        };
        assert_eq!(said(7), "plan.toml, line 7: UTF-8 text is expected here.");
        assert_eq!(said(0), "Could not understand plan.toml: UTF-8 text is expected here.");
    }

    #[test]
    fn limits_of_size_are_in_units_that_people_use() {
        let said = [8 << 20, 256 << 10, 4096, 1500, 1].map(|bytes| EN.size(bytes));
        assert_eq!(said, ["8 MB", "256 kB", "4 kB", "1500 bytes", "1 byte"]);
    }
}
