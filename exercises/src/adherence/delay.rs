//! The delay between reminder and run, combined over devices.
//!
//! Rule: there are quartiles for each week. Over devices the numbers of runs are added, and each quartile is the mean of the
//! devices' quartiles weighted by their runs: the quartiles of all runs together cannot be computed from quartiles, but they lie
//! between them.

use crate::summary::WeekDelay;
use std::collections::BTreeMap;

/// One line per week, oldest first, from at most one line per week of each device. Weeks without runs are left out.
pub fn unite_delays<'a>(of_devices: impl IntoIterator<Item = &'a WeekDelay>) -> Vec<WeekDelay> {
    let mut weeks: BTreeMap<u16, Vec<WeekDelay>> = BTreeMap::new();
    for delay in of_devices {
        weeks.entry(delay.week).or_default().push(*delay);
    }
    weeks.into_iter().filter_map(|(week, of_devices)| together(week, &of_devices)).collect()
}

fn together(week: u16, of_devices: &[WeekDelay]) -> Option<WeekDelay> {
    let runs: u64 = of_devices.iter().map(|delay| u64::from(delay.runs)).sum();
    if runs == 0 {
        return None;
    }
    let mean = |of: fn(&WeekDelay) -> u16| {
        let weighted: u64 = of_devices.iter().map(|delay| u64::from(of(delay)) * u64::from(delay.runs)).sum();
        ((weighted + runs / 2) / runs) as u16
    };
    Some(WeekDelay {
        week,
        runs: u16::try_from(runs).unwrap_or(u16::MAX),
        lower_s: mean(|delay| delay.lower_s),
        median_s: mean(|delay| delay.median_s),
        upper_s: mean(|delay| delay.upper_s),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn week(week: u16, runs: u16, quartiles: [u16; 3]) -> WeekDelay {
        WeekDelay { week, runs, lower_s: quartiles[0], median_s: quartiles[1], upper_s: quartiles[2] }
    }

    #[test]
    fn one_device_is_taken_as_it_is() {
        let told = [week(1, 9, [30, 60, 240]), week(0, 4, [10, 20, 30])];
        assert_eq!(unite_delays(&told), [told[1], told[0]], "oldest week first");
    }

    #[test]
    fn two_devices_are_weighted_by_their_runs() {
        let united = unite_delays(&[week(0, 3, [10, 20, 100]), week(0, 1, [50, 60, 200])]);
        assert_eq!(united, [week(0, 4, [20, 30, 125])]);
    }

    #[test]
    fn a_week_without_runs_has_no_delay() {
        assert_eq!(unite_delays(&[week(0, 0, [0, 0, 0])]), []);
        assert_eq!(unite_delays(&[]), []);
    }
}
