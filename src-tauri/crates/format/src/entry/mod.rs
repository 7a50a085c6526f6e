//! The bytes of a log entry in the patient's database: a version, then CBOR.
//!
//! Entries are never rewritten, so every old version must remain readable: a new part of an entry gets a new index, a new
//! kind of event a new number, and old ones are never used again. Version 2 has kinds of their own for a rating this morning and one
//! while doing an item, for "I am well again", and ids and answers of alarms.

mod correction;
mod run;
mod sensed;

use crate::cbor::AtMost;
use crate::codes::Code;
use crate::codes::{circumstance_bits, circumstances_of};
use crate::parts::{Date, ScheduleOut};
use correction::CorrectionOut;
use exercises::alarm::Trouble;
use exercises::id::{ActivityId, AlarmId, ComplaintId, ItemId, RunId};
use exercises::log::{Barrier, DayOffReason, LogEvent};
use exercises::score::Score;
use exercises::slots::SlotRef;
use minicbor::bytes::ByteArray;
use minicbor::{Decode, Encode};
use run::RunOut;
use sensed::SensedOut;

pub(crate) use sensed::ShownOut;

/// The newest version. Version 1 has one number of pain for two meanings and alarms without names.
pub const LATEST: u8 = 2;

/// Why an entry cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum EntryFault {
    /// The entry is of a newer version.
    #[error("entry of version {found}, known up to {LATEST}")]
    Newer {
        /// The entry's version.
        found: u8,
    },
    /// The bytes are not a log entry.
    #[error("not a log entry")]
    Malformed,
}

/// An item's number and the schedule that the person agreed to.
#[derive(Encode, Decode)]
struct AgreedOut(#[n(0)] u8, #[n(1)] ScheduleOut);

/// A slot: day, item, number.
#[derive(Encode, Decode, Clone, Copy)]
pub(super) struct SlotOut(#[n(0)] pub Date, #[n(1)] pub u8, #[n(2)] pub u8);

#[derive(Encode, Decode)]
#[cbor(flat)]
enum LogEventOut {
    #[n(0)]
    Opened,
    #[n(1)]
    Taken(#[n(0)] u16, #[n(1)] AtMost<AgreedOut, 32>),
    #[n(2)]
    Run(#[n(0)] RunOut),
    #[n(3)]
    Reminded(#[n(0)] SlotOut),
    #[n(4)]
    PutOff(#[n(0)] SlotOut, #[n(1)] u16),
    #[n(5)]
    Skipped(#[n(0)] SlotOut, #[n(1)] Code<Barrier>),
    #[n(6)]
    DaysOff(#[n(0)] Date, #[n(1)] Date, #[n(2)] Code<DayOffReason>),
    #[n(7)]
    Pain(#[n(0)] u8, #[n(1)] u8, #[n(2)] Option<u32>),
    #[n(8)]
    Settled(#[n(0)] u8, #[n(1)] bool),
    #[n(9)]
    Rated(#[n(0)] u8, #[n(1)] u8),
    #[n(10)]
    Trouble(#[n(0)] Code<Trouble>, #[n(1)] Option<u8>, #[n(2)] Option<ByteArray<8>>, #[n(3)] Option<u8>),
    #[n(11)]
    Sealed(#[n(0)] u32),
    #[n(12)]
    Sensed(#[n(0)] SensedOut),
    #[n(13)]
    Corrected(#[n(0)] u32, #[n(1)] CorrectionOut),
    #[n(14)]
    Morning(#[n(0)] u8, #[n(1)] u8),
    #[n(15)]
    During(#[n(0)] u8, #[n(1)] u8),
    #[n(16)]
    WellAgain,
}

impl From<SlotRef> for SlotOut {
    fn from(SlotRef { day, item, number }: SlotRef) -> SlotOut {
        SlotOut(Date(day), item.0, number)
    }
}

impl From<SlotOut> for SlotRef {
    fn from(SlotOut(Date(day), item, number): SlotOut) -> SlotRef {
        SlotRef { day, item: ItemId(item), number }
    }
}

/// Writes an event as bytes.
///
/// # Panics
/// Never for events made by this program: their dates are between 2020 and 2199, because the system clock and cards are read
/// only within that range.
pub fn write(event: &LogEvent) -> Vec<u8> {
    let mut bytes = vec![LATEST];
    minicbor::encode(out(event), &mut bytes).expect("dates within 2020 to 2199, and a vector takes every byte");
    bytes
}

/// Reads an event from its bytes.
///
/// # Errors
/// [`EntryFault`] if the version is newer or the bytes are not an entry.
pub fn read(bytes: &[u8]) -> Result<LogEvent, EntryFault> {
    match bytes.split_first() {
        Some((1..=LATEST, rest)) => minicbor::decode(rest).ok().and_then(event).ok_or(EntryFault::Malformed),
        Some((&found, _)) if found > LATEST => Err(EntryFault::Newer { found }),
        _ => Err(EntryFault::Malformed),
    }
}

fn out(event: &LogEvent) -> LogEventOut {
    match event {
        LogEvent::Opened => LogEventOut::Opened,
        LogEvent::Taken { revision, agreed } => {
            let agreed = agreed.iter().map(|(item, schedule)| AgreedOut(item.0, schedule.into()));
            LogEventOut::Taken(*revision, AtMost(agreed.collect()))
        }
        LogEvent::Run(run) => LogEventOut::Run(run.into()),
        LogEvent::Reminded { slot } => LogEventOut::Reminded((*slot).into()),
        LogEvent::PutOff { slot, minutes } => LogEventOut::PutOff((*slot).into(), *minutes),
        LogEvent::Skipped { slot, reason } => LogEventOut::Skipped((*slot).into(), Code(*reason)),
        LogEvent::DaysOff { from, until, why } => LogEventOut::DaysOff(Date(*from), Date(*until), Code(*why)),
        LogEvent::Pain { complaint, score, after } => LogEventOut::Pain(complaint.0, score.points(), after.map(|run| run.0)),
        LogEvent::Settled { complaint, settled } => LogEventOut::Settled(complaint.0, *settled),
        LogEvent::Rated { activity, score } => LogEventOut::Rated(activity.0, score.points()),
        LogEvent::Morning { complaint, score } => LogEventOut::Morning(complaint.0, score.points()),
        LogEvent::During { item, score } => LogEventOut::During(item.0, score.points()),
        LogEvent::WellAgain => LogEventOut::WellAgain,
        LogEvent::Trouble { trouble, item, id, circumstances } => LogEventOut::Trouble(
            Code(*trouble),
            item.map(|item| item.0),
            id.map(|id| ByteArray::from(id.0)),
            circumstance_bits(circumstances),
        ),
        LogEvent::Sealed { counter } => LogEventOut::Sealed(*counter),
        LogEvent::Sensed { run, trial, sensed, detail } => LogEventOut::Sensed(SensedOut::new(*run, *trial, sensed, detail)),
        LogEvent::Corrected { entry, to } => LogEventOut::Corrected(*entry, (*to).into()),
    }
}

fn event(out: LogEventOut) -> Option<LogEvent> {
    Some(match out {
        LogEventOut::Opened => LogEvent::Opened,
        LogEventOut::Taken(revision, AtMost(agreed)) => {
            let agreed = agreed.into_iter().map(|AgreedOut(item, schedule)| Some((ItemId(item), schedule.schedule()?)));
            LogEvent::Taken { revision, agreed: agreed.collect::<Option<_>>()? }
        }
        LogEventOut::Run(run) => LogEvent::Run(run.run()?),
        LogEventOut::Reminded(slot) => LogEvent::Reminded { slot: slot.into() },
        LogEventOut::PutOff(slot, minutes) => LogEvent::PutOff { slot: slot.into(), minutes },
        LogEventOut::Skipped(slot, Code(reason)) => LogEvent::Skipped { slot: slot.into(), reason },
        LogEventOut::DaysOff(Date(from), Date(until), Code(why)) => LogEvent::DaysOff { from, until, why },
        LogEventOut::Pain(complaint, score, after) => {
            LogEvent::Pain { complaint: ComplaintId(complaint), score: Score::new(score)?, after: after.map(RunId) }
        }
        LogEventOut::Settled(complaint, settled) => LogEvent::Settled { complaint: ComplaintId(complaint), settled },
        LogEventOut::Rated(activity, score) => LogEvent::Rated { activity: ActivityId(activity), score: Score::new(score)? },
        LogEventOut::Morning(complaint, score) => {
            LogEvent::Morning { complaint: ComplaintId(complaint), score: Score::new(score)? }
        }
        LogEventOut::During(item, score) => LogEvent::During { item: ItemId(item), score: Score::new(score)? },
        LogEventOut::WellAgain => LogEvent::WellAgain,
        LogEventOut::Trouble(Code(trouble), item, id, circumstances) => LogEvent::Trouble {
            trouble,
            item: item.map(ItemId),
            id: id.map(|id| AlarmId(id.into())),
            circumstances: circumstances_of(circumstances),
        },
        LogEventOut::Sealed(counter) => LogEvent::Sealed { counter },
        LogEventOut::Sensed(sensed) => sensed.event(),
        LogEventOut::Corrected(entry, to) => LogEvent::Corrected { entry, to: to.correction()? },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;
    use exercises::alarm::Circumstance;
    use exercises::catalogue::{Dose, ExerciseId, Eyes, Surface};
    use exercises::log::Correction;
    use exercises::plan::{BodySide, Days, Pattern, Schedule};
    use exercises::run::{Balance, HoldRecord, Run, RunEnd, SetUp, Trial, TrialEnd, Work};
    use exercises::sway::{AlternativeHold, Flag, Reason, ReportedFigures, Sensed, SourceKind};
    use exercises::time::Stamp;
    use std::collections::BTreeSet;

    fn day() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date")
    }

    fn run(work: Work, dose: Dose) -> Run {
        Run {
            id: RunId(7),
            item: ItemId(2),
            exercise: ExerciseId::new("one-leg-stand").expect("kebab case"),
            rung: None,
            dose,
            slot: Some(SlotRef { day: day(), item: ItemId(2), number: 3 }),
            started: Stamp { utc_ms: 1_795_600_000_000, offset_s: -12_600 },
            live: true,
            end: RunEnd::Stopped,
            paused_ms: 1200,
            interruptions: vec![400, 9000],
            work,
        }
    }

    #[test]
    fn what_is_written_can_be_read_however_long_it_is() {
        let trial = Trial { leg: Some(BodySide::Left), held_ms: 1000, end: TrialEnd::CutOff };
        let balance =
            Balance { set_up: SetUp::OnSupport, surface: Surface::Firm, eyes: Eyes::Open, trials: vec![trial; 1000] };
        let dose = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
        let endless = [
            run(Work::Balance(balance), dose),
            run(Work::Timed(vec![HoldRecord { side: None, held_ms: 1 }; 1000]), dose),
            run(Work::Counted(vec![exercises::run::SetRecord { side: None, done: 1, failed: 0 }; 1000]), dose),
        ];
        for endless in endless {
            assert!(read(&write(&LogEvent::Run(endless))).is_ok());
        }
    }

    fn sensed() -> Sensed {
        Sensed {
            kind: SourceKind::Web,
            held_ms: 14_277,
            censored: false,
            gap: true,
            otherwise: Some(AlternativeHold { held_ms: 30_000, censored: true }),
            touch_downs: 2,
            figures: Some(ReportedFigures { rms_ml: None, rms_planar: 3603, path_per_s: 21_458 }),
            reasons: vec![Reason::WindowTooShort],
            flags: vec![Flag::Gap, Flag::Auto],
        }
    }

    /// One event of each kind that version 1 has.
    fn all_of_version_1() -> Vec<LogEvent> {
        let slot = SlotRef { day: day(), item: ItemId(1), number: 8 };
        let hold = run(
            Work::Timed(vec![
                HoldRecord { side: None, held_ms: 10_000 },
                HoldRecord { side: Some(BodySide::Right), held_ms: 4300 },
            ]),
            Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 },
        );
        let trials = vec![Trial { leg: Some(BodySide::Left), held_ms: 14_250, end: TrialEnd::Touch }];
        let balance = Balance { set_up: SetUp::OnSupport, surface: Surface::Cushion, eyes: Eyes::Open, trials };
        let schedule = Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![480, 1200] } };
        vec![
            LogEvent::Opened,
            LogEvent::Taken { revision: 2, agreed: vec![(ItemId(1), schedule)] },
            LogEvent::Run(hold),
            LogEvent::Run(run(Work::Balance(balance), Dose::Balance { trials: 3, target_s: 30, rest_s: 30 })),
            LogEvent::Reminded { slot },
            LogEvent::PutOff { slot, minutes: 10 },
            LogEvent::Skipped { slot, reason: Barrier::NoTime },
            LogEvent::DaysOff { from: day(), until: day(), why: DayOffReason::Ill },
            LogEvent::Pain { complaint: ComplaintId(1), score: Score::at_most_ten(4), after: Some(RunId(7)) },
            LogEvent::Settled { complaint: ComplaintId(1), settled: false },
            LogEvent::Rated { activity: ActivityId(1), score: Score::at_most_ten(6) },
            LogEvent::Trouble {
                trouble: Trouble::NearlyFell,
                item: Some(ItemId(2)),
                id: None,
                circumstances: BTreeSet::new(),
            },
            LogEvent::Sealed { counter: 3 },
            LogEvent::Sensed { run: RunId(7), trial: 1, sensed: sensed(), detail: "{\"version\":\"sway/1\"}".into() },
            LogEvent::Corrected { entry: 9, to: Correction::Never },
            LogEvent::Corrected { entry: 9, to: Correction::Score(Score::at_most_ten(2)) },
            LogEvent::Corrected { entry: 10, to: Correction::Settled(true) },
            LogEvent::Corrected { entry: 7, to: Correction::Reason(Barrier::Unwell) },
            LogEvent::Corrected {
                entry: 8,
                to: Correction::DaysOff { from: day(), until: day(), why: DayOffReason::Travelling },
            },
            LogEvent::Corrected { entry: 70_000, to: Correction::Stands },
        ]
    }

    /// One event of each kind.
    fn all() -> Vec<LogEvent> {
        let trouble = |trouble, circumstances: &[Circumstance]| LogEvent::Trouble {
            trouble,
            item: None,
            id: Some(AlarmId([1, 2, 3, 4, 5, 6, 7, 8])),
            circumstances: circumstances.iter().copied().collect(),
        };
        let mut all = all_of_version_1();
        all.extend([
            LogEvent::Morning { complaint: ComplaintId(1), score: Score::at_most_ten(4) },
            LogEvent::During { item: ItemId(2), score: Score::at_most_ten(3) },
            trouble(Trouble::Fell, &[Circumstance::BlowToTheHead, Circumstance::CouldNotGetUp]),
            trouble(Trouble::PainAboveLimit, &[]),
            LogEvent::WellAgain,
        ]);
        all
    }

    #[test]
    fn what_was_written_is_read_again() {
        for event in all() {
            assert_eq!(read(&write(&event)), Ok(event));
        }
    }

    #[test]
    fn a_newer_entry_and_other_bytes_have_different_faults() {
        assert_eq!(read(&[3, 0x81, 0]), Err(EntryFault::Newer { found: 3 }));
        for bytes in [&[][..], &[0], &[1], &[1, 0xff], &[1, 0x81, 0x18, 99]] {
            assert_eq!(read(bytes), Err(EntryFault::Malformed), "{bytes:?}");
        }
    }

    #[test]
    fn a_score_above_ten_is_no_entry() {
        let ten = Score::MOST;
        let events = [
            LogEvent::Pain { complaint: ComplaintId(1), score: ten, after: None },
            LogEvent::Morning { complaint: ComplaintId(1), score: ten },
            LogEvent::During { item: ItemId(1), score: ten },
            LogEvent::Rated { activity: ActivityId(1), score: ten },
            LogEvent::Corrected { entry: 3, to: Correction::Score(ten) },
        ];
        for event in events {
            let mut bytes = write(&event);
            let place = bytes.iter().rposition(|byte| *byte == ten.points()).expect("the score");
            bytes[place] += 1;
            assert_eq!(read(&bytes), Err(EntryFault::Malformed), "{event:?}");
        }
    }

    /// Of a run with more interruptions than are kept the first are written; an entry that has more is none.
    #[test]
    fn a_list_longer_than_an_entry_may_have_is_refused() {
        let run = all().into_iter().find_map(|event| match event {
            LogEvent::Run(run) => Some(run),
            _ => None,
        });
        let mut run = run.expect("one of each kind");
        run.interruptions = vec![5; 300];
        let mut bytes = write(&LogEvent::Run(run));
        assert!(read(&bytes).is_ok());
        let place = bytes.windows(4).position(|part| part == [0x99, 0x01, 0x00, 5]).expect("256 of them");
        bytes.splice(place..place + 3, [0x99, 0x01, 0x01, 5]);
        assert_eq!(read(&bytes), Err(EntryFault::Malformed));
    }

    fn hex(event: &LogEvent) -> String {
        write(event).iter().map(|byte| format!("{byte:02x}")).collect()
    }

    #[test]
    fn entries_of_version_1_are_read_as_they_always_were() {
        let frozen = include_str!("../../tests/frozen/entries-1.hex").lines();
        let bytes = |line: &str| -> Vec<u8> {
            let pairs = line.as_bytes().chunks(2).map(|pair| str::from_utf8(pair).expect("ASCII"));
            pairs.map(|pair| u8::from_str_radix(pair, 16).expect("a byte")).collect()
        };
        let events: Vec<_> = frozen.map(|line| read(&bytes(line)).expect("an entry")).collect();
        assert_eq!(events, all_of_version_1());
    }

    #[test]
    fn the_bytes_of_version_2_never_change() {
        let lines: Vec<&str> = include_str!("../../tests/frozen/entries-2.hex").lines().collect();
        let written: Vec<String> = all().iter().map(hex).collect();
        assert_eq!(lines, written, "an entry on somebody's disk would read differently");
    }
}
