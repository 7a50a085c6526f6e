//! Stance times measured at the visit, and those of earlier visits.

use super::Draft;
use crate::plan::stance::{MAX_STANCE_TENTHS, StanceBaseline, StanceField};

/// Tenths of a second from a text in seconds: "12", "12.4", "12,4", "12.4 s", rounded to tenths; `None` for any other text, or for
/// more than ten minutes.
pub fn tenths_of(text: &str) -> Option<u16> {
    let text = text.trim();
    let number = text.strip_suffix(['s', 'S']).unwrap_or(text).trim_end().replace(',', ".");
    let is_plain =
        number.starts_with(|c: char| c.is_ascii_digit()) && number.bytes().all(|b| b.is_ascii_digit() || b == b'.');
    let seconds: f64 = number.parse().ok().filter(|_| is_plain)?;
    let tenths = libm::round(seconds * 10.0);
    (0.0..=f64::from(MAX_STANCE_TENTHS)).contains(&tenths).then_some(tenths as u16)
}

impl Draft {
    /// Whether a time was measured at this visit. A day after the day of issue counts as well, because then the clock was set back
    /// since.
    fn is_of_today(&self, baseline: &StanceBaseline) -> bool {
        baseline.taken.is_some_and(|taken| taken >= self.today)
    }

    /// The time measured at this visit.
    pub fn stance_today(&self, field: StanceField) -> Option<StanceBaseline> {
        let today = |baseline: &&StanceBaseline| field.is_of(baseline) && self.is_of_today(baseline);
        self.prescription.baselines.iter().rfind(today).copied()
    }

    /// The longest time measured at earlier visits.
    pub fn stance_earlier(&self, field: StanceField) -> Option<StanceBaseline> {
        let earlier = |baseline: &&StanceBaseline| field.is_of(baseline) && !self.is_of_today(baseline);
        self.prescription.baselines.iter().filter(earlier).max_by_key(|baseline| baseline.tenths).copied()
    }

    /// Sets or removes the time of this visit. Times of earlier visits stay.
    pub fn set_stance(&mut self, field: StanceField, tenths: Option<u16>, capped: bool) {
        let mut baselines = std::mem::take(&mut self.prescription.baselines);
        baselines.retain(|baseline| !(field.is_of(baseline) && self.is_of_today(baseline)));
        if let Some(tenths) = tenths {
            let StanceField { leg, surface, eyes } = field;
            let taken = Some(self.today);
            baselines.push(StanceBaseline { taken, leg, surface, eyes, tenths, capped });
        }
        self.prescription.baselines = baselines;
    }
}
