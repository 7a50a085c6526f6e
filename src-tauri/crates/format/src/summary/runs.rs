//! Runs in the form in which they are written, with conversions to and from the domain. The keys never change.

use super::stance::StanceOut;
use super::tally::TallyOut;
use crate::codes::Code;
use exercises::catalogue::RungId;
use exercises::id::{ItemId, RunId};
use exercises::run::{RunEnd, Share};
use exercises::summary::{RunOn, RunTiming, TallyOn};
use exercises::time::DayNumber;
use minicbor::{Decode, Encode};
use std::iter;

fn is_false(value: &bool) -> bool {
    !value
}

#[derive(Encode, Decode)]
pub(super) struct ShareOut(#[n(0)] u32, #[n(1)] u32);

impl From<Share> for ShareOut {
    fn from(Share { done, of }: Share) -> ShareOut {
        ShareOut(done, of)
    }
}

impl ShareOut {
    fn share(self) -> Option<Share> {
        share(self.0, self.1)
    }
}

/// How much of a whole was done; `None` if it is more than the whole.
pub(super) fn share(done: u32, of: u32) -> Option<Share> {
    (done <= of).then_some(Share { done, of })
}

/// A run, relative to the one before it in the list, because most are the next one of the same day.
#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct RunOut {
    /// Left out if it is one more than in the run before; the first run is compared with 0.
    #[n(0)]
    run: Option<u32>,
    /// Left out if it is the same as in the run before; the first run is compared with 0.
    #[n(1)]
    day: Option<u16>,
    #[n(2)]
    item: u8,
    #[n(3)]
    rung: Option<String>,
    #[n(4)]
    slot: Option<u8>,
    #[n(5)]
    hour: u8,
    #[n(6)]
    #[cbor(skip_if = "is_false")]
    live: bool,
    #[n(7)]
    end: Code<RunEnd>,
    #[n(8)]
    dose: ShareOut,
    #[n(9)]
    parts: ShareOut,
    #[n(10)]
    stance: Option<StanceOut>,
    /// Not in version 1; left out for a run in time.
    #[n(11)]
    timing: Option<Code<RunTiming>>,
    /// Left out if it was no test by repetitions.
    #[n(12)]
    tally: Option<TallyOut>,
}

impl RunOut {
    /// The rows for a list of runs.
    pub(super) fn list(runs: &[RunOn]) -> Vec<RunOut> {
        let before = iter::once((0, 0)).chain(runs.iter().map(|run| (run.run.0, run.day.0)));
        runs.iter().zip(before).map(|(run, before)| RunOut::after(run, before)).collect()
    }

    fn after(run: &RunOn, before: (u32, u16)) -> RunOut {
        let RunOn { run, day, item, rung, slot, hour, live, timing, end, dose, parts, stance, tally } = run;
        RunOut {
            run: Some(run.0).filter(|run| Some(*run) != before.0.checked_add(1)),
            day: Some(day.0).filter(|day| *day != before.1),
            item: item.0,
            rung: rung.as_ref().map(RungId::to_string),
            slot: *slot,
            hour: *hour,
            live: *live,
            end: Code(*end),
            dose: ShareOut::from(*dose),
            parts: ShareOut::from(*parts),
            stance: stance.as_ref().map(StanceOut::from),
            timing: Some(Code(*timing)).filter(|Code(timing)| *timing != RunTiming::InTime),
            tally: tally.map(TallyOut::from),
        }
    }

    /// The runs of the rows; `None` if a row is not valid.
    pub(super) fn runs(list: Vec<RunOut>) -> Option<Vec<RunOn>> {
        let mut before = (0_u32, 0_u16);
        let mut runs = Vec::new();
        for row in list {
            let run = row.run(before)?;
            before = (run.run.0, run.day.0);
            runs.push(run);
        }
        Some(runs)
    }

    fn run(self, before: (u32, u16)) -> Option<RunOn> {
        let RunOut { run, day, item, rung, slot, hour, live, end: Code(end), dose, parts, stance, timing, tally } = self;
        Some(RunOn {
            run: RunId(run.or(before.0.checked_add(1))?),
            day: DayNumber(day.unwrap_or(before.1)),
            item: ItemId(item),
            rung: rung.map(RungId::new).transpose().ok()?,
            slot,
            hour: (hour < 24).then_some(hour)?,
            live,
            timing: timing.map_or(RunTiming::InTime, |Code(timing)| timing),
            end,
            dose: dose.share()?,
            parts: parts.share()?,
            stance: stance.map(StanceOut::stance),
            tally: tally.map(TallyOn::from),
        })
    }
}
