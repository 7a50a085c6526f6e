//! What each part of a summary is.

use crate::{Key, Words};
use exercises::summary::SummaryPart;

impl Words {
    /// What this part of a summary contains.
    pub fn summary_part(self, part: SummaryPart) -> &'static str {
        self.text(match part {
            SummaryPart::Plan => Key::PartPlan,
            SummaryPart::Log => Key::PartLog,
            SummaryPart::Counter => Key::PartCounter,
            SummaryPart::From => Key::PartFrom,
            SummaryPart::Until => Key::PartUntil,
            SummaryPart::Taken => Key::PartTaken,
            SummaryPart::Seen => Key::PartSeen,
            SummaryPart::Days => Key::PartDays,
            SummaryPart::Runs => Key::PartRuns,
            SummaryPart::Settled => Key::PartSettled,
            SummaryPart::Rated => Key::PartRated,
            SummaryPart::Alarms => Key::PartAlarms,
            SummaryPart::Delays => Key::PartDelays,
            SummaryPart::Note => Key::PartNote,
            SummaryPart::Corrections => Key::PartCorrections,
            SummaryPart::Mornings => Key::PartMornings,
            SummaryPart::During => Key::PartDuring,
            SummaryPart::WellAgain => Key::PartWellAgain,
            SummaryPart::Former => Key::PartFormer,
        })
    }
}
