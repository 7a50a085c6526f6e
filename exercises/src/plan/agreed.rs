//! Times that the patient moves to fit their own day. How often an exercise is due stays as the clinician prescribed.

use super::schedule::Pattern;
use crate::time::DAY_MINUTES;

impl Pattern {
    /// The same pattern with its window beginning at `minute` (0 to 1439); fixed times are returned unchanged.
    pub fn beginning(&self, minute: u16) -> Pattern {
        match self {
            Pattern::Every { minutes, to, .. } => Pattern::Every { minutes: *minutes, from: minute, to: *to },
            Pattern::At { .. } | Pattern::AsNeeded => self.clone(),
        }
    }

    /// The same pattern with its window ending at `minute` (0 to 1439); fixed times are returned unchanged.
    pub fn ending(&self, minute: u16) -> Pattern {
        match self {
            Pattern::Every { minutes, from, .. } => Pattern::Every { minutes: *minutes, from: *from, to: minute },
            Pattern::At { .. } | Pattern::AsNeeded => self.clone(),
        }
    }

    /// A pattern of the chosen times (minutes of the day, in any order). `None` if two are the same or one is above 1439,
    /// because the exercise would then be due less often than the clinician prescribed.
    pub fn at(chosen: &[u16]) -> Option<Pattern> {
        let mut times = chosen.to_vec();
        times.sort_unstable();
        times.dedup();
        let fits = times.len() == chosen.len() && times.iter().all(|time| *time < DAY_MINUTES);
        fits.then_some(Pattern::At { times })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const HOURLY: Pattern = Pattern::Every { minutes: 60, from: 540, to: 1020 };

    #[test]
    fn a_window_moves_at_either_end() {
        assert_eq!(HOURLY.beginning(480).minutes().len(), 10);
        assert_eq!(HOURLY.ending(960).minutes().last(), Some(&960));
    }

    #[test]
    fn chosen_times_come_in_order() {
        assert_eq!(Pattern::at(&[1200, 480]), Some(Pattern::At { times: vec![480, 1200] }));
    }

    #[test]
    fn two_equal_times_are_refused() {
        assert_eq!(Pattern::at(&[480, 480]), None);
        assert_eq!(Pattern::at(&[480, 1440]), None);
    }

    #[test]
    fn what_does_not_apply_changes_nothing() {
        let fixed = Pattern::At { times: vec![480] };
        assert_eq!((fixed.beginning(0), fixed.ending(0)), (fixed.clone(), fixed.clone()));
    }
}
