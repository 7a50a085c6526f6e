//! Mornings on which the pain of the day before had not settled.
//!
//! Rule (a proposal of ours, after Silbernagel 2007, Am J Sports Med 35:897-906: pain must settle by next morning): a morning after a
//! day with a session is unsettled if it is at least [`UNSETTLED_POINTS`] above the lower of the base and the median of up to seven
//! answered mornings before.

use super::{base, before};
use crate::score::Score;
use crate::time::DayNumber;

/// Points above what is usual.
pub const UNSETTLED_POINTS: f64 = 2.0;

/// The days of unsettled mornings among `mornings`, one a day, oldest first. `had_session` says whether a session was done on a day.
pub fn unsettled(
    mornings: &[(DayNumber, Score)],
    at_visit: Option<Score>,
    had_session: impl Fn(DayNumber) -> bool,
) -> Vec<DayNumber> {
    let after_a_session = |day: DayNumber| day.minus(1).is_some_and(&had_session);
    let base = base(mornings, at_visit);
    let all = mornings.iter().enumerate().filter(|(place, (day, score))| {
        let usual = [base, before(mornings, *place)].into_iter().flatten().min_by(f64::total_cmp);
        after_a_session(*day) && usual.is_some_and(|usual| f64::from(*score) >= usual + UNSETTLED_POINTS)
    });
    all.map(|(_, (day, _))| *day).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::on_days;

    fn found(scores: &[u8], sessions: &[u16]) -> Vec<u16> {
        let mornings = on_days(&(0..).zip(scores.iter().copied()).collect::<Vec<_>>());
        let days = unsettled(&mornings, None, |day| sessions.contains(&day.0));
        days.iter().map(|day| day.0).collect()
    }

    #[test]
    fn two_points_above_what_is_usual_after_a_session() {
        assert_eq!(found(&[3, 3, 3, 3, 5, 3], &[0, 1, 2, 3, 4]), [4]);
        assert_eq!(found(&[3, 3, 3, 3, 4, 3], &[0, 1, 2, 3, 4]), [0_u16; 0]);
        assert_eq!(found(&[3, 3, 3, 3, 5, 3], &[0, 1]), [0_u16; 0], "no session the day before");
    }

    #[test]
    fn a_plateau_stays_unsettled_against_the_base() {
        assert_eq!(
            found(&[0, 0, 0, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6], &(0..14).collect::<Vec<_>>()),
            (3..14).collect::<Vec<_>>()
        );
    }

    #[test]
    fn what_got_better_is_compared_with_the_last_week() {
        assert_eq!(found(&[8, 8, 8, 2, 2, 2, 2, 2, 2, 2, 5], &(0..14).collect::<Vec<_>>()), [10]);
    }
}
