//! The hours of a day from left to right, for the sessions of a full day.

use crate::plan::DueSession;

/// Space for half of the first and of the last label, in CSS pixels.
const MARGIN: f64 = 26.0;
/// Least distance between two labels, in CSS pixels.
const LABELS_APART: f64 = 58.0;
/// Least number of minutes shown, so that one session does not fill the day.
const LEAST_MINUTES: u16 = 240;

/// The hours in which sessions are due.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HoursAxis {
    first: u16,
    last: u16,
    width: f64,
}

/// A session of a full day as a place in its picture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SessionPlace {
    /// From the left, in CSS pixels.
    pub x: f64,
    /// Number of sessions at the same time before it, from 0.
    pub row: usize,
}

impl HoursAxis {
    /// The whole hours around all sessions of several days, within `width` CSS pixels. `None` without a session.
    pub fn around<'a>(days: impl IntoIterator<Item = &'a [DueSession]>, width: f64) -> Option<HoursAxis> {
        let minutes: Vec<u16> = days.into_iter().flatten().map(|session| session.minute).collect();
        let first = minutes.iter().min()? / 60 * 60;
        let last = minutes.iter().max()?.div_ceil(60).saturating_mul(60);
        Some(HoursAxis { first, last: last.max(first.saturating_add(LEAST_MINUTES)), width: width.max(4.0 * MARGIN) })
    }

    /// The whole width, in CSS pixels.
    pub fn width(&self) -> f64 {
        self.width
    }

    /// The place of a minute of the day.
    pub fn x(&self, minute: u16) -> f64 {
        let share = f64::from(minute.saturating_sub(self.first)) / f64::from(self.last - self.first);
        MARGIN + share * (self.width - 2.0 * MARGIN)
    }

    /// The minutes to label: whole hours at equal distances, as many as there is space for.
    pub fn labels(&self) -> Vec<u16> {
        let an_hour = self.x(self.first + 60) - self.x(self.first);
        let step = [1, 2, 3, 4, 6, 12].into_iter().find(|hours| f64::from(*hours) * an_hour >= LABELS_APART).unwrap_or(24);
        (self.first..=self.last).step_by(step as usize * 60).collect()
    }

    /// The places of a day's sessions, which are in order of time.
    pub fn places(&self, day: &[DueSession]) -> Vec<SessionPlace> {
        let same = |place: usize| day[..place].iter().rev().take_while(|one| one.minute == day[place].minute).count();
        day.iter().enumerate().map(|(place, one)| SessionPlace { x: self.x(one.minute), row: same(place) }).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::id::ItemId;

    fn at(minutes: &[u16]) -> Vec<DueSession> {
        minutes.iter().map(|minute| DueSession { minute: *minute, item: ItemId(1), seconds: 60 }).collect()
    }

    #[test]
    fn two_days_share_the_hours_around_both() {
        let (before, after) = (at(&[9 * 60 + 30, 17 * 60]), at(&[8 * 60 + 10]));
        let axis = HoursAxis::around([before.as_slice(), &after], 400.0).expect("sessions");
        assert_eq!((axis.x(8 * 60), axis.x(17 * 60)), (MARGIN, 400.0 - MARGIN));
        assert!(axis.x(9 * 60 + 30) > axis.x(8 * 60 + 10));
        assert!(HoursAxis::around([at(&[]).as_slice()], 400.0).is_none());
    }

    #[test]
    fn one_session_is_shown_within_some_hours_also_after_midnight() {
        let axis = HoursAxis::around([at(&[25 * 60]).as_slice()], 400.0).expect("a session");
        assert_eq!((axis.first, axis.last), (25 * 60, 29 * 60));
    }

    #[test]
    fn labels_have_space_at_every_width() {
        let day = at(&[7 * 60, 22 * 60]);
        for width in [0.0, 280.0, 320.0, 700.0, 1200.0] {
            let axis = HoursAxis::around([day.as_slice()], width).expect("sessions");
            let places: Vec<f64> = axis.labels().into_iter().map(|minute| axis.x(minute)).collect();
            assert!(places.windows(2).all(|two| two[1] - two[0] >= LABELS_APART), "{width}: {places:?}");
            assert!(places.iter().all(|x| (MARGIN..=axis.width() - MARGIN).contains(x)), "{width}: {places:?}");
        }
    }

    #[test]
    fn sessions_at_the_same_time_are_stacked() {
        let axis = HoursAxis::around([at(&[600, 600, 660, 660, 660]).as_slice()], 400.0).expect("sessions");
        let rows: Vec<usize> = axis.places(&at(&[600, 600, 660, 660, 660])).iter().map(|place| place.row).collect();
        assert_eq!(rows, [0, 1, 0, 1, 2]);
    }
}
