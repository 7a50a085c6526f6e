//! Functions of a dose of any kind.

use super::rules::{DoseField, PartWork, WorkForm};
use super::{Dose, Kind};
use crate::catalogue::bounds::{OutOfRange, Quantity};
use crate::catalogue::sidedness::Sidedness;

/// Seconds that one movement at one's own pace is taken to last (an estimate of ours).
const OWN_PACE_S: u32 = 4;

impl Dose {
    /// The fields of this dose, in the order in which files hold them.
    pub fn fields(&self) -> &'static [DoseField] {
        self.kind().rules().fields()
    }

    /// The values of the fields, in the order of [`Dose::fields`].
    pub fn values(&self) -> Vec<i64> {
        self.kind().rules().values(self)
    }

    /// The dose of `kind` with these values of its fields; `None` if there are too few or too many values, or one does not
    /// fit its field. Ranges are not checked here; [`Dose::check`] does that.
    pub fn from_values(kind: Kind, values: &[i64]) -> Option<Dose> {
        kind.rules().dose(values)
    }

    /// All quantities of this dose with their values, in the order of the fields.
    pub fn quantities(&self) -> Vec<(Quantity, i64)> {
        self.fields().iter().map(|field| field.quantity).zip(self.values()).collect()
    }

    /// The value of a quantity; `None` if the dose does not have it.
    pub fn value(&self, quantity: Quantity) -> Option<i64> {
        self.quantities().into_iter().find(|(other, _)| *other == quantity).map(|(_, value)| value)
    }

    /// The same dose with one quantity set to `value`; unchanged if the dose does not have the quantity or the value does not
    /// fit.
    pub fn with(&self, quantity: Quantity, value: i64) -> Dose {
        let values: Vec<i64> =
            self.quantities().into_iter().map(|(other, old)| if other == quantity { value } else { old }).collect();
        Dose::from_values(self.kind(), &values).unwrap_or(*self)
    }

    /// The dose that is asked for `days` days after it was prescribed; only graded activity grows by the calendar.
    pub fn after_days(&self, days: i64) -> Dose {
        self.kind().rules().after_days(self, days)
    }

    /// Checks every quantity against [`crate::catalogue::bounds::BOUNDS`].
    ///
    /// # Errors
    /// All quantities that are out of range, in the order of the fields; the list is never empty.
    pub fn check(&self) -> Result<(), Vec<OutOfRange>> {
        let out: Vec<_> = self.quantities().into_iter().filter_map(|(q, v)| q.check(v).err()).collect();
        if out.is_empty() { Ok(()) } else { Err(out) }
    }

    /// Number of parts (holds, trials or sets) in one run on one side.
    pub fn parts(&self) -> u8 {
        self.kind().rules().parts(self)
    }

    /// The amount of work in one whole part, in the units of [`crate::run::Share`]: milliseconds of a timed part, repetitions
    /// of a counted one. A balance trial counts as one, however long it is, and so does a whole test.
    pub fn part_amount(&self) -> u32 {
        let work = self.kind().rules().course(self).work;
        match self.kind().form() {
            WorkForm::Timed => work.seconds() * 1000,
            WorkForm::Counted => work.count(),
            WorkForm::Trials | WorkForm::Tallied => 1,
        }
    }

    /// Milliseconds of work in one part; for a balance trial the longest it can last.
    pub fn part_ms(&self) -> u32 {
        self.kind().rules().course(self).work.seconds() * 1000
    }

    /// Whether its work keeps one position.
    pub fn is_kept(&self) -> bool {
        self.kind().rules().course(self).work.is_kept()
    }

    /// Seconds of work on one side, without rests; for a balance exercise the most it can be.
    pub fn work_s(&self) -> u32 {
        u32::from(self.parts()) * self.kind().rules().course(self).work.seconds()
    }

    /// Seconds of one whole run with its rests, on both sides if the exercise is done for each side. There is no rest after
    /// the last part; changing sides counts as one rest, except between movements that go to each side in turn.
    pub fn total_s(&self, side: Sidedness) -> u32 {
        let rest_s = u32::from(self.kind().rules().course(self).rest_s);
        let sides: u32 = if side == Sidedness::None { 1 } else { 2 };
        let in_one_set = side == Sidedness::Alternating && self.kind().form() == WorkForm::Counted;
        let parts = u32::from(self.parts()) * if in_one_set { 1 } else { sides };
        self.work_s() * sides + parts.saturating_sub(1) * rest_s
    }
}

impl PartWork {
    /// Whether one position is kept: then a figure that stands still must show that one, because it is copied.
    pub fn is_kept(self) -> bool {
        match self {
            PartWork::Hold { .. } | PartWork::Stretch { .. } | PartWork::Trial { .. } => true,
            PartWork::Timer { moves, .. } => !moves,
            PartWork::Movements { .. }
            | PartWork::OwnPace { .. }
            | PartWork::Tally { .. }
            | PartWork::OnBeat { .. }
            | PartWork::Breaths { .. } => false,
        }
    }

    /// Its length in seconds; for a trial the longest it can last, and for movements at one's own pace an estimate.
    pub fn seconds(self) -> u32 {
        match self {
            PartWork::Hold { s }
            | PartWork::Stretch { s }
            | PartWork::Trial { s }
            | PartWork::Tally { s }
            | PartWork::OnBeat { s, .. }
            | PartWork::Timer { s, .. }
            | PartWork::Breaths { s, .. } => s.into(),
            PartWork::Movements { count, tempo } => u32::from(count) * u32::from(tempo.seconds()),
            PartWork::OwnPace { count } => u32::from(count) * OWN_PACE_S,
        }
    }

    /// Number of movements; everything else counts as one.
    pub fn count(self) -> u32 {
        match self {
            PartWork::Movements { count, .. } | PartWork::OwnPace { count } => count.into(),
            PartWork::Hold { .. }
            | PartWork::Stretch { .. }
            | PartWork::Trial { .. }
            | PartWork::Tally { .. }
            | PartWork::OnBeat { .. }
            | PartWork::Timer { .. }
            | PartWork::Breaths { .. } => 1,
        }
    }
}
