//! Seven invented people, and how each of them behaves.

use exercises::alarm::Trouble;
use exercises::log::Barrier;

/// One invented person.
pub struct Person {
    /// The code at the clinic.
    pub code: &'static str,
    /// The plan of the first visit.
    pub plan: &'static str,
    /// The devices on which they log.
    pub devices: &'static [&'static str],
    /// Probability that a slot is done, by day since the start and hour of the day.
    pub keeps: fn(day: u16, hour: u16) -> f64,
    /// Reasons for skipping a slot.
    pub reasons: &'static [Barrier],
    /// Pain in the morning, 0 to 10, before random variation.
    pub pain: fn(day: u16) -> f64,
    /// Pain while doing an item, 0 to 10, before random variation.
    pub during: fn(day: u16, item: u8) -> f64,
    /// Seconds on one leg on the weaker side, before random variation.
    pub stance: fn(day: u16) -> f64,
    /// Rating of the named activities, 0 to 10, before random variation.
    pub ability: fn(day: u16) -> f64,
    /// A complaint: its day, what is wrong, and the item during which it happens.
    pub trouble: Option<(u16, Trouble, u8)>,
    /// The day of the history on which a second card is issued.
    pub second_card: Option<u16>,
}

/// Changes evenly from `from` to `to` over six weeks.
fn over(day: u16, from: f64, to: f64) -> f64 {
    from + (to - from) * f64::from(day.min(42)) / 42.0
}

/// All seven people.
pub const PEOPLE: [Person; 7] = [
    // Regular, on the computer at work and the phone at home.
    Person {
        code: "A11",
        plan: include_str!("../../plans/desk.toml"),
        devices: &["A11-work", "A11-home"],
        keeps: |_, hour| if hour == 12 { 0.6 } else { 0.9 },
        reasons: &[Barrier::NoTime, Barrier::NoPlace, Barrier::NoTime],
        pain: |day| over(day, 5.0, 3.0),
        during: |day, _| over(day, 3.0, 1.5),
        stance: |day| over(day, 16.0, 22.0),
        ability: |day| over(day, 4.0, 6.5),
        trouble: None,
        second_card: None,
    },
    // Begins well and does less after a week.
    Person {
        code: "B24",
        plan: include_str!("../../plans/neck.toml"),
        devices: &["B24"],
        keeps: |day, _| if day < 8 { 0.85 } else { 0.18 - f64::from(day.min(36)) * 0.004 },
        reasons: &[Barrier::NoTime, Barrier::Forgot, Barrier::FeltFine, Barrier::NoHelp],
        pain: |day| over(day, 6.0, 5.6),
        during: |_, _| 3.4,
        stance: |_| 20.0,
        ability: |day| over(day, 5.0, 5.2),
        trouble: None,
        second_card: None,
    },
    // Does the exercises in the morning only.
    Person {
        code: "C37",
        plan: include_str!("../../plans/wrist.toml"),
        devices: &["C37"],
        keeps: |_, hour| if hour < 12 { 0.92 } else { 0.06 },
        reasons: &[Barrier::NoTime, Barrier::NoPlace, Barrier::Forgot],
        pain: |day| over(day, 4.0, 2.4),
        during: |day, _| over(day, 2.5, 1.0),
        stance: |_| 20.0,
        ability: |day| over(day, 5.0, 7.0),
        trouble: None,
        second_card: None,
    },
    // A flare in the third week.
    Person {
        code: "D42",
        plan: include_str!("../../plans/hip.toml"),
        devices: &["D42"],
        keeps: |day, _| if (16..24).contains(&day) { 0.3 } else { 0.8 },
        reasons: &[Barrier::Pain, Barrier::Unwell, Barrier::Pain, Barrier::NoTime],
        pain: |day| if (15..25).contains(&day) { 6.8 } else { over(day, 4.0, 3.4) },
        during: |day, _| if (15..25).contains(&day) { 4.8 } else { over(day, 3.0, 2.4) },
        stance: |_| 20.0,
        ability: |day| if (15..25).contains(&day) { 3.0 } else { over(day, 4.0, 5.5) },
        trouble: None,
        second_card: None,
    },
    // Nearly falls on the cushion; balance is paused from then on.
    Person {
        code: "E58",
        plan: include_str!("../../plans/cushion.toml"),
        devices: &["E58"],
        keeps: |_, _| 0.82,
        reasons: &[Barrier::NoSupport, Barrier::NoTime, Barrier::Unwell],
        pain: |day| over(day, 3.0, 2.2),
        during: |_, _| 1.2,
        stance: |day| over(day, 11.0, 14.0),
        ability: |day| over(day, 5.0, 6.0),
        trouble: Some((19, Trouble::NearlyFell, 1)),
        second_card: None,
    },
    // Improves, and gets a second card half-way.
    Person {
        code: "F63",
        plan: include_str!("../../plans/ankle.toml"),
        devices: &["F63"],
        keeps: |day, hour| if hour < 12 && day % 7 > 4 { 0.5 } else { 0.9 },
        reasons: &[Barrier::NoTime, Barrier::FeltFine],
        pain: |day| over(day, 6.0, 2.0),
        during: |day, _| over(day, 3.0, 1.0),
        stance: |day| over(day, 8.5, 30.0),
        ability: |day| over(day, 3.0, 8.0),
        trouble: None,
        second_card: Some(21),
    },
    // A stiff back: walks, stretches and breathes, less in the evening.
    Person {
        code: "G71",
        plan: include_str!("../../plans/back.toml"),
        devices: &["G71"],
        keeps: |_, hour| if hour < 18 { 0.85 } else { 0.55 },
        reasons: &[Barrier::NoTime, Barrier::FeltFine, Barrier::Forgot],
        pain: |day| over(day, 5.0, 2.6),
        during: |day, _| over(day, 3.0, 1.2),
        stance: |_| 20.0,
        ability: |day| over(day, 4.0, 6.8),
        trouble: None,
        second_card: None,
    },
];
