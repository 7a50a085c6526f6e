//! The bytes of a log entry, as the patient's database keeps them: a version, then CBOR.
//!
//! Entries are never rewritten, so an old version stays readable for good: a new part of an entry takes a new index, a new
//! happening a new number, and an old one is never used again.

mod correction;
mod run;
mod sensed;

use crate::cbor::AtMost;
use crate::codes::Code;
use crate::parts::{Date, ScheduleOut};
use correction::CorrectionOut;
use exercises::alarm::Trouble;
use exercises::id::{ActivityId, ComplaintId, ItemId, RunId};
use exercises::log::{Barrier, Excuse, What};
use exercises::slots::SlotRef;
use minicbor::{Decode, Encode};
use run::RunOut;
use sensed::SensedOut;

pub(crate) use sensed::ShownOut;

/// The newest version, and the only one so far.
pub const LATEST: u8 = 1;

/// Why an entry cannot be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum EntryFault {
    /// It is of a newer version.
    #[error("entry of version {found}, known up to {LATEST}")]
    Newer {
        /// Its version.
        found: u8,
    },
    /// It is no entry.
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
enum WhatOut {
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
    LeftOut(#[n(0)] SlotOut, #[n(1)] Code<Barrier>),
    #[n(6)]
    Excused(#[n(0)] Date, #[n(1)] Date, #[n(2)] Code<Excuse>),
    #[n(7)]
    Pain(#[n(0)] u8, #[n(1)] u8, #[n(2)] Option<u32>),
    #[n(8)]
    Settled(#[n(0)] u8, #[n(1)] bool),
    #[n(9)]
    Rated(#[n(0)] u8, #[n(1)] u8),
    #[n(10)]
    Trouble(#[n(0)] Code<Trouble>, #[n(1)] Option<u8>),
    #[n(11)]
    Sealed(#[n(0)] u32),
    #[n(12)]
    Sensed(#[n(0)] SensedOut),
    #[n(13)]
    Corrected(#[n(0)] u32, #[n(1)] CorrectionOut),
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

/// The bytes of what happened.
///
/// # Panics
/// Never for entries made by this program: their dates lie between 2020 and 2199, within which the clock's reader keeps every
/// moment and the card's reader every plan.
pub fn write(what: &What) -> Vec<u8> {
    let mut bytes = vec![LATEST];
    minicbor::encode(out(what), &mut bytes).expect("dates within 2020 to 2199, and a vector takes every byte");
    bytes
}

/// What happened, from its bytes.
///
/// # Errors
/// [`EntryFault`] for a newer version or for bytes that are no entry.
pub fn read(bytes: &[u8]) -> Result<What, EntryFault> {
    match bytes.split_first() {
        Some((&LATEST, rest)) => minicbor::decode(rest).ok().and_then(what).ok_or(EntryFault::Malformed),
        Some((&found, _)) if found > LATEST => Err(EntryFault::Newer { found }),
        _ => Err(EntryFault::Malformed),
    }
}

fn out(what: &What) -> WhatOut {
    match what {
        What::Opened => WhatOut::Opened,
        What::Taken { revision, agreed } => {
            let agreed = agreed.iter().map(|(item, schedule)| AgreedOut(item.0, schedule.into()));
            WhatOut::Taken(*revision, AtMost(agreed.collect()))
        }
        What::Run(run) => WhatOut::Run(run.into()),
        What::Reminded { slot } => WhatOut::Reminded((*slot).into()),
        What::PutOff { slot, minutes } => WhatOut::PutOff((*slot).into(), *minutes),
        What::LeftOut { slot, reason } => WhatOut::LeftOut((*slot).into(), Code(*reason)),
        What::Excused { from, until, why } => WhatOut::Excused(Date(*from), Date(*until), Code(*why)),
        What::Pain { complaint, score, after } => WhatOut::Pain(complaint.0, *score, after.map(|run| run.0)),
        What::Settled { complaint, settled } => WhatOut::Settled(complaint.0, *settled),
        What::Rated { activity, score } => WhatOut::Rated(activity.0, *score),
        What::Trouble { trouble, item } => WhatOut::Trouble(Code(*trouble), item.map(|item| item.0)),
        What::Sealed { counter } => WhatOut::Sealed(*counter),
        What::Sensed { run, trial, sensed, detail } => WhatOut::Sensed(SensedOut::new(*run, *trial, sensed, detail)),
        What::Corrected { entry, to } => WhatOut::Corrected(*entry, (*to).into()),
    }
}

fn what(out: WhatOut) -> Option<What> {
    Some(match out {
        WhatOut::Opened => What::Opened,
        WhatOut::Taken(revision, AtMost(agreed)) => {
            let agreed = agreed.into_iter().map(|AgreedOut(item, schedule)| Some((ItemId(item), schedule.schedule()?)));
            What::Taken { revision, agreed: agreed.collect::<Option<_>>()? }
        }
        WhatOut::Run(run) => What::Run(run.run()?),
        WhatOut::Reminded(slot) => What::Reminded { slot: slot.into() },
        WhatOut::PutOff(slot, minutes) => What::PutOff { slot: slot.into(), minutes },
        WhatOut::LeftOut(slot, Code(reason)) => What::LeftOut { slot: slot.into(), reason },
        WhatOut::Excused(Date(from), Date(until), Code(why)) => What::Excused { from, until, why },
        WhatOut::Pain(complaint, score, after) => {
            What::Pain { complaint: ComplaintId(complaint), score, after: after.map(RunId) }
        }
        WhatOut::Settled(complaint, settled) => What::Settled { complaint: ComplaintId(complaint), settled },
        WhatOut::Rated(activity, score) => What::Rated { activity: ActivityId(activity), score },
        WhatOut::Trouble(Code(trouble), item) => What::Trouble { trouble, item: item.map(ItemId) },
        WhatOut::Sealed(counter) => What::Sealed { counter },
        WhatOut::Sensed(sensed) => sensed.what(),
        WhatOut::Corrected(entry, to) => What::Corrected { entry, to: to.into() },
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use chrono::NaiveDate;
    use exercises::catalogue::{Dose, ExerciseId, Eyes, Surface};
    use exercises::correct::Correction;
    use exercises::plan::{BodySide, Days, Pattern, Schedule};
    use exercises::run::{Balance, Doing, Held, Run, RunEnd, SetUp, Trial, TrialEnd};
    use exercises::sway::{Flag, Otherwise, Reason, Sensed, Shown, SourceKind};
    use exercises::time::Stamp;

    fn day() -> NaiveDate {
        NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date")
    }

    fn run(doing: Doing, dose: Dose) -> Run {
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
            doing,
        }
    }

    #[test]
    fn what_is_written_can_be_read_however_long_it_is() {
        let trial = Trial { leg: BodySide::Left, held_ms: 1000, end: TrialEnd::CutOff };
        let balance =
            Balance { set_up: SetUp::OnSupport, surface: Surface::Firm, eyes: Eyes::Open, trials: vec![trial; 1000] };
        let dose = Dose::Balance { trials: 3, target_s: 30, rest_s: 30 };
        let endless = [
            run(Doing::Balance(balance), dose),
            run(Doing::Timed(vec![Held { side: None, held_ms: 1 }; 1000]), dose),
            run(Doing::Counted(vec![exercises::run::Counted { side: None, done: 1, failed: 0 }; 1000]), dose),
        ];
        for endless in endless {
            assert!(read(&write(&What::Run(endless))).is_ok());
        }
    }

    fn sensed() -> Sensed {
        Sensed {
            kind: SourceKind::Web,
            held_ms: 14_277,
            censored: false,
            gap: true,
            otherwise: Some(Otherwise { held_ms: 30_000, censored: true }),
            touch_downs: 2,
            figures: Some(Shown { rms_ml: None, rms_planar: 3603, path_per_s: 21_458 }),
            reasons: vec![Reason::WindowTooShort],
            flags: vec![Flag::Gap, Flag::Auto],
        }
    }

    /// One of each happening.
    fn all() -> Vec<What> {
        let slot = SlotRef { day: day(), item: ItemId(1), number: 8 };
        let hold = run(
            Doing::Timed(vec![Held { side: None, held_ms: 10_000 }, Held { side: Some(BodySide::Right), held_ms: 4300 }]),
            Dose::Hold { repetitions: 3, hold_s: 10, rest_s: 10 },
        );
        let trials = vec![Trial { leg: BodySide::Left, held_ms: 14_250, end: TrialEnd::Touch }];
        let balance = Balance { set_up: SetUp::OnSupport, surface: Surface::Cushion, eyes: Eyes::Open, trials };
        let schedule = Schedule { days: Days::ALL, pattern: Pattern::At { times: vec![480, 1200] } };
        vec![
            What::Opened,
            What::Taken { revision: 2, agreed: vec![(ItemId(1), schedule)] },
            What::Run(hold),
            What::Run(run(Doing::Balance(balance), Dose::Balance { trials: 3, target_s: 30, rest_s: 30 })),
            What::Reminded { slot },
            What::PutOff { slot, minutes: 10 },
            What::LeftOut { slot, reason: Barrier::NoTime },
            What::Excused { from: day(), until: day(), why: Excuse::Ill },
            What::Pain { complaint: ComplaintId(1), score: 4, after: Some(RunId(7)) },
            What::Settled { complaint: ComplaintId(1), settled: false },
            What::Rated { activity: ActivityId(1), score: 6 },
            What::Trouble { trouble: Trouble::NearlyFell, item: Some(ItemId(2)) },
            What::Sealed { counter: 3 },
            What::Sensed { run: RunId(7), trial: 1, sensed: sensed(), detail: "{\"version\":\"sway/1\"}".into() },
            What::Corrected { entry: 9, to: Correction::Never },
            What::Corrected { entry: 9, to: Correction::Score(2) },
            What::Corrected { entry: 10, to: Correction::Settled(true) },
            What::Corrected { entry: 7, to: Correction::Reason(Barrier::Unwell) },
            What::Corrected { entry: 8, to: Correction::Excused { from: day(), until: day(), why: Excuse::Travelling } },
            What::Corrected { entry: 70_000, to: Correction::Stands },
        ]
    }

    #[test]
    fn what_was_written_is_read_again() {
        for what in all() {
            assert_eq!(read(&write(&what)), Ok(what));
        }
    }

    #[test]
    fn a_newer_entry_and_other_bytes_are_told_apart() {
        assert_eq!(read(&[2, 0x81, 0]), Err(EntryFault::Newer { found: 2 }));
        for bytes in [&[][..], &[0], &[1], &[1, 0xff], &[1, 0x81, 0x18, 99]] {
            assert_eq!(read(bytes), Err(EntryFault::Malformed), "{bytes:?}");
        }
    }

    #[test]
    fn the_bytes_of_version_1_never_change() {
        let frozen = include_str!("../../tests/frozen/entries-1.hex");
        let lines: Vec<&str> = frozen.lines().collect();
        let written: Vec<String> =
            all().iter().map(|what| write(what).iter().map(|byte| format!("{byte:02x}")).collect()).collect();
        assert_eq!(lines, written, "an entry on somebody's disk would read differently");
    }
}
