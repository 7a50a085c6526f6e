use super::*;
use proptest::prelude::*;

/// The day on which the card was issued.
const ISSUED: i64 = 20_800;
const YEAR: i64 = 365;

/// Noon of a day after the card was issued, plus some milliseconds.
fn at(day: i64, ms: i64) -> Stamp {
    Stamp { utc_ms: (ISSUED + day) * MS_OF_A_DAY + MS_OF_A_DAY / 2 + ms, offset_s: 0 }
}

fn entries(days: &[i64]) -> Vec<ShownTime> {
    let numbered = (1..).zip(days);
    numbered.map(|(n, day)| ShownTime { n, at: at(*day, 0), issued: Some(ISSUED) }).collect()
}

/// The days of the entries that are marked, and how the clock was wrong, at a look on the day `now`.
fn marked(days: &[i64], now: Option<i64>) -> Vec<(i64, WrongClock)> {
    let found = misdated(&entries(days), now.map(|day| at(day, 0)));
    found.into_iter().map(|(n, of)| (days[n as usize - 1], of.wrong)).collect()
}

#[test]
fn days_in_their_order_are_true() {
    assert_eq!(marked(&[0, 0, 1, 2, 9, 40], Some(40)), []);
    assert_eq!(marked(&[], Some(40)), []);
}

#[test]
fn a_session_years_ahead_is_marked_once_the_clock_was_put_right() {
    let days = [0, 1, 2, 3 * YEAR, 3 * YEAR];
    assert_eq!(marked(&days, Some(3 * YEAR)), [], "nothing contradicts it yet");
    let wrong = [(3 * YEAR, WrongClock::Ahead); 2];
    assert_eq!(marked(&days, Some(3)), wrong, "by the look alone");
    assert_eq!(marked(&[0, 1, 2, 3 * YEAR, 3 * YEAR, 3], None), wrong, "by the next entry alone");
    assert_eq!(marked(&[0, 1, 2, 3 * YEAR, 3 * YEAR, 3, 4], Some(4 * YEAR)), wrong, "also years later");
}

#[test]
fn what_an_empty_battery_dates_before_the_card_is_marked() {
    let days = [0, 1, -2500, 2, 3];
    assert_eq!(marked(&days, Some(3)), [(-2500, WrongClock::Behind)]);
    assert_eq!(marked(&[0, 1, -2500], Some(-2500)), [(-2500, WrongClock::Behind)], "a look at that moment is no evidence");
    assert_eq!(marked(&[0, 1, 2, -20_000, 3], None), [(-20_000, WrongClock::Behind)]);
}

#[test]
fn a_clock_that_was_some_weeks_behind_does_not_mark_the_many_days_before() {
    let mut days: Vec<i64> = (0..40).collect();
    days.extend([10, 40, 41]);
    assert_eq!(marked(&days, Some(41)), [(10, WrongClock::Behind)]);
}

#[test]
fn what_is_recorded_from_a_file_within_a_week_is_true() {
    assert_eq!(marked(&[0, 1, 5, 6, 2, 3, 7], Some(7)), []);
    assert_eq!(marked(&[0, 7, 8, 9, 0, 10], Some(10)), [(0, WrongClock::Behind)], "more than that is no true day");
}

#[test]
fn of_two_equal_stretches_the_later_is_true() {
    assert_eq!(marked(&[0, 1, 12, 2], None), [(12, WrongClock::Ahead)]);
    assert_eq!(
        marked(&[0, 30, 31, 32, 1, 2, 3, 33], None),
        [(30, WrongClock::Ahead), (31, WrongClock::Ahead), (32, WrongClock::Ahead)]
    );
}

#[test]
fn a_clock_that_is_always_wrong_contradicts_nothing_on_its_device() {
    let behind: Vec<i64> = (-YEAR..10 - YEAR).collect();
    assert_eq!(marked(&behind, Some(10 - YEAR)), [], "it works with its own days");
    assert_eq!(marked(&behind, Some(10)).len(), 10, "until it is put right");
    let ahead: Vec<i64> = (YEAR..10 + YEAR).collect();
    assert_eq!(marked(&ahead, Some(10 + YEAR)), []);
}

#[test]
fn a_later_card_says_that_the_clock_was_behind() {
    let mut all = entries(&[0, 1, 2, 3]);
    all[2].issued = Some(ISSUED + 30);
    all[3].issued = Some(ISSUED + 30);
    let found = misdated(&all, Some(at(31, 0)));
    assert_eq!(found.keys().copied().collect::<Vec<_>>(), [3, 4]);
}

#[test]
fn a_marked_entry_has_its_place_between_its_neighbours() {
    let found = misdated(&entries(&[1, YEAR, 2]), None);
    assert_eq!(found[&2], Misdated { wrong: WrongClock::Ahead, before: Some(at(1, 0)), after: Some(at(2, 0)) });
    assert_eq!(found[&2].placed(), Some(at(1, 0)));
    assert_eq!(misdated(&entries(&[YEAR, 2]), None)[&1].placed(), Some(at(2, 0)), "nothing was recorded before it");
    assert_eq!(misdated(&entries(&[YEAR]), Some(at(3, 0)))[&1].placed(), None);
}

#[test]
fn less_than_a_day_is_never_marked() {
    let back = [at(3, 0), at(3, -MS_OF_A_DAY), at(3, 1)];
    let all: Vec<ShownTime> = (1..).zip(back).map(|(n, at)| ShownTime { n, at, issued: Some(ISSUED) }).collect();
    assert_eq!(misdated(&all, Some(at(3, -MS_OF_A_DAY))), BTreeMap::new());
}

/// Days that never fall, each with its distance from noon in milliseconds.
fn a_true_log() -> impl Strategy<Value = Vec<Stamp>> {
    let steps = proptest::collection::vec((0..4_i64, 0..MS_OF_A_DAY / 2, -14 * 3600..14 * 3600_i32), 1..60);
    steps.prop_map(|steps| {
        let mut day = 0;
        let stamps = steps.into_iter().map(|(step, ms, offset_s)| {
            day += step;
            Stamp { offset_s, ..at(day, -ms) }
        });
        stamps.collect()
    })
}

fn shown(stamps: &[Stamp]) -> Vec<ShownTime> {
    (1..).zip(stamps).map(|(n, at)| ShownTime { n, at: *at, issued: Some(ISSUED) }).collect()
}

fn numbers(found: &BTreeMap<u32, Misdated>) -> Vec<u32> {
    found.keys().copied().collect()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Zones, summer time, flights over the date line, a clock that is some hours wrong.
    #[test]
    fn a_clock_that_is_less_than_a_day_wrong_marks_nothing(
        log in a_true_log(),
        wrong in proptest::collection::vec(-MS_OF_A_DAY / 2..=MS_OF_A_DAY / 2, 60),
    ) {
        let shifted: Vec<Stamp> = log.iter().zip(wrong).map(|(at, ms)| at.plus_ms(ms)).collect();
        prop_assert_eq!(misdated(&shown(&shifted), log.last().copied()), BTreeMap::new());
    }

    /// Of a stretch that was years wrong exactly that stretch is marked, once the clock is right again.
    #[test]
    fn exactly_what_a_clock_that_was_years_wrong_recorded_is_marked(
        log in a_true_log(),
        from in 0..60_usize,
        many in 1..60_usize,
        years in prop_oneof![-30..=-2_i64, 1..=30_i64],
    ) {
        let stretch = from % log.len()..(from % log.len() + many).min(log.len());
        let mut wrong = log.clone();
        for place in stretch.clone() {
            wrong[place] = wrong[place].plus_ms(years * YEAR * MS_OF_A_DAY);
        }
        let found = misdated(&shown(&wrong), log.last().copied());
        let expected: Vec<u32> = stretch.map(|place| place as u32 + 1).collect();
        prop_assert_eq!(numbers(&found), expected);
        let kind = if years > 0 { WrongClock::Ahead } else { WrongClock::Behind };
        prop_assert!(found.values().all(|of| of.wrong == kind));
    }

    /// Whatever clocks show, what is not marked agrees with the order, the cards and the known now; and no larger part of the days does.
    #[test]
    fn what_is_not_marked_agrees_and_is_as_much_as_can_be(days in proptest::collection::vec(-5..25_i64, 0..9), now in 0..25_i64) {
        let all = entries(&days);
        let found = misdated(&all, Some(at(now, 0)));
        let agrees = |kept: &[i64]| {
            let ordered = (0..kept.len()).all(|first| kept[first..].iter().all(|later| *later + LATE_DAYS >= kept[first]));
            ordered && kept.iter().all(|day| (-TOLERANCE..=now + TOLERANCE).contains(day))
        };
        let kept: Vec<i64> = all.iter().filter(|entry| !found.contains_key(&entry.n)).map(|entry| utc_day(entry.at) - ISSUED).collect();
        prop_assert!(agrees(&kept), "{kept:?} of {days:?}");
        let within: Vec<i64> = days.iter().copied().filter(|day| (-TOLERANCE..=now + TOLERANCE).contains(day)).collect();
        let stretches = |days: &[i64]| days.chunk_by(|one, other| one == other).count();
        // Days that follow each other count once, as they do in the whole.
        let by_stretch: Vec<i64> = within.chunk_by(|one, other| one == other).map(|same| same[0]).collect();
        let most = (0..1_u32 << by_stretch.len()).filter_map(|choice| {
            let chosen: Vec<i64> =
                (0..by_stretch.len()).filter(|place| choice >> place & 1 == 1).map(|place| by_stretch[place]).collect();
            agrees(&chosen).then_some(chosen.len())
        });
        prop_assert!(stretches(&kept) <= by_stretch.len());
        let kept_stretches = {
            let mut kept_of = 0;
            let mut last = None;
            for entry in all.iter().filter(|entry| (-TOLERANCE..=now + TOLERANCE).contains(&(utc_day(entry.at) - ISSUED))) {
                let day = utc_day(entry.at);
                if last != Some(day) && !found.contains_key(&entry.n) {
                    kept_of += 1;
                }
                last = Some(day);
            }
            kept_of
        };
        prop_assert_eq!(Some(kept_stretches), most.max());
    }

    /// An entry that agrees with what was kept before changes no earlier mark: logs that grow are read as those read at once.
    #[test]
    fn an_entry_that_agrees_changes_no_mark(days in proptest::collection::vec(0..30_i64, 1..12)) {
        let before = misdated(&entries(&days), None);
        let kept = (1..).zip(&days).filter(|(n, _)| !before.contains_key(n)).map(|(_, day)| *day).max();
        let grown = [days.as_slice(), &[kept.unwrap_or_default()]].concat();
        prop_assert_eq!(numbers(&misdated(&entries(&grown), None)), numbers(&before));
    }
}
