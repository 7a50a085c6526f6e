//! What can be said of a dose of any kind.

use super::rules::{DoseField, PartWork, WorkForm};
use super::{Dose, Kind};
use crate::catalogue::bounds::{OutOfRange, Quantity};
use crate::catalogue::sidedness::Sidedness;

impl Dose {
    /// Its fields, in the order in which files hold them.
    pub fn fields(&self) -> &'static [DoseField] {
        self.kind().rules().fields()
    }

    /// The values of [`Dose::fields`].
    pub fn values(&self) -> Vec<i64> {
        self.kind().rules().values(self)
    }

    /// The dose of `kind` with these values of its fields; `None` where their count or size is none that a dose has. Ranges
    /// are not looked at: [`Dose::check`] does that.
    pub fn from_values(kind: Kind, values: &[i64]) -> Option<Dose> {
        kind.rules().dose(values)
    }

    /// Every quantity of this dose with its value, in reading order.
    pub fn quantities(&self) -> Vec<(Quantity, i64)> {
        self.fields().iter().map(|field| field.quantity).zip(self.values()).collect()
    }

    /// The value of a quantity, if the dose has it.
    pub fn value(&self, quantity: Quantity) -> Option<i64> {
        self.quantities().into_iter().find(|(other, _)| *other == quantity).map(|(_, value)| value)
    }

    /// The same dose with one quantity at `value`; unchanged where it has no such quantity or no room for the value.
    pub fn with(&self, quantity: Quantity, value: i64) -> Dose {
        let values: Vec<i64> =
            self.quantities().into_iter().map(|(other, old)| if other == quantity { value } else { old }).collect();
        Dose::from_values(self.kind(), &values).unwrap_or(*self)
    }

    /// Checks every quantity against [`crate::catalogue::bounds::BOUNDS`].
    ///
    /// # Errors
    /// All that are out of range, in reading order; never an empty list.
    pub fn check(&self) -> Result<(), Vec<OutOfRange>> {
        let out: Vec<_> = self.quantities().into_iter().filter_map(|(q, v)| q.check(v).err()).collect();
        if out.is_empty() { Ok(()) } else { Err(out) }
    }

    /// How many parts one doing has on one side: holds, trials or sets.
    pub fn parts(&self) -> u8 {
        self.kind().rules().parts(self)
    }

    /// What one whole part comes to, in the units of [`crate::run::Share`]: milliseconds of a timed part, repetitions of a
    /// counted one; a trial is one trial, however long.
    pub fn part_amount(&self) -> u32 {
        let work = self.kind().rules().course(self).work;
        match self.kind().form() {
            WorkForm::Timed => work.seconds() * 1000,
            WorkForm::Counted => work.count(),
            WorkForm::Trials => 1,
        }
    }

    /// Milliseconds of work in one part: of a balance trial the most that it can be.
    pub fn part_ms(&self) -> u32 {
        self.kind().rules().course(self).work.seconds() * 1000
    }

    /// Seconds of work on one side, without rests: of a balance exercise the most that it can be.
    pub fn work_s(&self) -> u32 {
        u32::from(self.parts()) * self.kind().rules().course(self).work.seconds()
    }

    /// Seconds of one whole doing with its rests, both sides where there are sides.
    /// There is no rest after the last part; changing sides counts as one rest.
    pub fn total_s(&self, side: Sidedness) -> u32 {
        let rest_s = u32::from(self.kind().rules().course(self).rest_s);
        let sides: u32 = if side == Sidedness::EachSide { 2 } else { 1 };
        let rests = (u32::from(self.parts()) * sides).saturating_sub(1);
        self.work_s() * sides + rests * rest_s
    }
}

impl PartWork {
    /// Its length in seconds: of a trial the most that it can be.
    pub fn seconds(self) -> u32 {
        match self {
            PartWork::Hold { s } | PartWork::Trial { s } => s.into(),
            PartWork::Movements { count, tempo } => u32::from(count) * u32::from(tempo.seconds()),
        }
    }

    /// How many movements it has; a hold or a trial is one.
    pub fn count(self) -> u32 {
        match self {
            PartWork::Hold { .. } | PartWork::Trial { .. } => 1,
            PartWork::Movements { count, .. } => count.into(),
        }
    }
}
