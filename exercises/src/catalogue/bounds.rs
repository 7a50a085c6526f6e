//! All quantities of the catalogue in one table: for each its unit, its range and the reason for the range.
//!
//! The reader of catalogue files, the domain and the tests all take their limits from [`BOUNDS`]. The ranges are what the
//! program can handle, not what is advisable: the clinician chooses a value within them.

/// A quantity that the catalogue or a dose gives as a whole number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Quantity {
    /// The revision of an exercise's content.
    Revision,
    /// Number of holds, or of movements within a set.
    Repetitions,
    /// Length of one hold, in seconds.
    HoldSeconds,
    /// Pause between holds, trials or sets, in seconds.
    RestSeconds,
    /// Number of trials of a balance exercise.
    Trials,
    /// The time at which a balance trial is complete and ends, in seconds.
    TargetSeconds,
    /// Number of sets of a counted movement.
    Sets,
    /// Length of the outward part of a counted movement, in seconds.
    TempoUpSeconds,
    /// Length of the pause at the end position of a counted movement, in seconds.
    TempoHoldSeconds,
    /// Length of the return part of a counted movement, in seconds.
    TempoDownSeconds,
    /// Number of ladders of an exercise.
    Ladders,
    /// Number of rungs of a ladder.
    Rungs,
    /// Number of step rules of an exercise.
    StepRules,
    /// Number of positions of a figure.
    Poses,
    /// Number of bands, straps and sticks of a figure.
    Links,
    /// Number of arrows of a figure.
    Arrows,
    /// Number of characters in the name of an exercise or a rung.
    NameCharacters,
    /// Number of characters in a paragraph or a line of a list.
    LineCharacters,
    /// Number of steps in an exercise's instructions.
    Steps,
    /// Number of lines in a list of common mistakes, cautions or stop signs.
    ListLines,
    /// Distance of an arrow from its landmark, positive to the right or up, in centimetres.
    ArrowOffset,
    /// Length of an arrow, in centimetres.
    ArrowLength,
    /// Direction of an arrow at its start, in degrees.
    ArrowToward,
    /// The angle by which an arrow turns along its length, in degrees.
    ArrowBend,
    /// Length of one stretch, in seconds, without easing into it.
    StretchSeconds,
    /// Length of an activity such as walking, in minutes.
    ActivityMinutes,
    /// The effort aimed at, 0 (none) to 10 (the most possible).
    Effort,
    /// Length of breathing at a pace, in minutes.
    BreathMinutes,
    /// Length of breathing in, in seconds.
    BreathInSeconds,
    /// Length of the pause after breathing in, in seconds.
    BreathFullSeconds,
    /// Length of breathing out, in seconds.
    BreathOutSeconds,
    /// Length of the pause after breathing out, in seconds.
    BreathEmptySeconds,
    /// Length of warmth, cold or rest, in minutes.
    CareMinutes,
    /// Length of a test in which repetitions are counted, in seconds.
    CountSeconds,
    /// Measurement error of a count, in tenths of a repetition.
    CountErrorTenths,
    /// Length of one repetition of a movement on a beat, in seconds.
    BeatSeconds,
    /// Beats a minute.
    BeatsPerMinute,
    /// Minutes of graded activity at its start.
    QuotaMinutes,
    /// The amount by which graded activity grows after each interval.
    QuotaStep,
    /// Length of the interval after which graded activity grows, in days.
    QuotaDays,
    /// The amount beyond which graded activity does not grow.
    QuotaGoal,
}

/// The unit of a [`Quantity`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Unit {
    /// A plain count.
    Count,
    /// Seconds.
    Seconds,
    /// Minutes.
    Minutes,
    /// Characters, counted as Unicode scalar values.
    Characters,
    /// Centimetres on a body 170 cm tall.
    Centimetres,
    /// Degrees of angle.
    Degrees,
}

/// One row of the table of quantities.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Bound {
    /// The quantity that the row is about.
    pub quantity: Quantity,
    /// The quantity's unit.
    pub unit: Unit,
    /// The smallest value allowed.
    pub min: i64,
    /// The largest value allowed.
    pub max: i64,
    /// The reason for this range.
    pub why: &'static str,
}

/// A value outside the range of its quantity.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct OutOfRange {
    /// The quantity.
    pub quantity: Quantity,
    /// The value that was given.
    pub value: i64,
}

impl Quantity {
    /// The row of [`BOUNDS`] for this quantity.
    pub fn bound(self) -> &'static Bound {
        &BOUNDS[self as usize]
    }

    /// Returns `value` if it is in the range of this quantity.
    ///
    /// # Errors
    /// [`OutOfRange`] with the value if it is not.
    pub fn check(self, value: i64) -> Result<i64, OutOfRange> {
        let Bound { min, max, .. } = *self.bound();
        if (min..=max).contains(&value) { Ok(value) } else { Err(OutOfRange { quantity: self, value }) }
    }
}

const fn row(quantity: Quantity, unit: Unit, range: (i64, i64), why: &'static str) -> Bound {
    Bound { quantity, unit, min: range.0, max: range.1, why }
}

/// All quantities with their ranges, in the order of [`Quantity`], which a test checks.
#[rustfmt::skip]
pub const BOUNDS: [Bound; 41] = {
    use Quantity::*;
    use Unit::*;
    [
        row(Revision, Count, (1, 60_000), "rises with every change of content; fits sixteen bits"),
        row(Repetitions, Count, (1, 50), "sets of home exercise lie at 8 to 20; 50 leaves room for light, fast ones"),
        row(HoldSeconds, Seconds, (1, 120), "holds of 5 to 30 s are usual, tendon work 45 s; two minutes is the longest that is asked"),
        row(RestSeconds, Seconds, (0, 300), "rest at least as long as the hold is usual, 2 min between heavy holds; 5 min ends the patience"),
        row(Trials, Count, (1, 10), "three trials are usual in testing stance (Springer 2007); more than ten is fatigue, not practice"),
        row(TargetSeconds, Seconds, (5, 60), "under 5 s is not for practice alone; stance up to 60 s before it is made harder (J Foot Ankle Res 2022)"),
        row(Sets, Count, (1, 10), "one to three are usual"),
        row(TempoUpSeconds, Seconds, (1, 20), "slower than 20 s is a hold"),
        row(TempoHoldSeconds, Seconds, (0, 20), "longer than 20 s is a hold"),
        row(TempoDownSeconds, Seconds, (1, 20), "slower than 20 s is a hold"),
        row(Ladders, Count, (1, 4), "a plan names a rung, so one at least; more than four cannot be explained in a visit"),
        row(Rungs, Count, (1, 8), "as above"),
        row(StepRules, Count, (1, 6), "one for each quantity and the level, some of them twice"),
        row(Poses, Count, (2, 8), "a start and an end at least"),
        row(Links, Count, (0, 4), "one for each hand and foot"),
        row(Arrows, Count, (0, 4), "more hide the figure"),
        row(NameCharacters, Characters, (1, 40), "one line on a phone and on the card"),
        row(LineCharacters, Characters, (1, 280), "read aloud in about fifteen seconds"),
        row(Steps, Count, (1, 8), "more cannot be kept in mind while doing it"),
        row(ListLines, Count, (1, 8), "more are not read"),
        row(ArrowOffset, Centimetres, (-120, 120), "stays near the body, which is 170 cm tall"),
        row(ArrowLength, Centimetres, (3, 100), "shorter has no room for its head"),
        row(ArrowToward, Degrees, (-180, 180), "0 points to the right of the picture, 90 up"),
        row(ArrowBend, Degrees, (-300, 300), "positive turns to the left; a full turn would bite its tail"),
        row(StretchSeconds, Seconds, (5, 120), "15 to 30 s are usual; under 5 s it is a movement, beyond two minutes a position of rest"),
        row(ActivityMinutes, Minutes, (1, 180), "a minute's walk can be a beginning; three hours is a day out"),
        row(Effort, Count, (0, 10), "a rating from none to the most possible"),
        row(BreathMinutes, Minutes, (1, 30), "5 to 20 min are usual"),
        row(BreathInSeconds, Seconds, (2, 10), "quicker than at rest is no calm breath, slower makes most people dizzy"),
        row(BreathFullSeconds, Seconds, (0, 10), "as above"),
        row(BreathOutSeconds, Seconds, (2, 12), "as above"),
        row(BreathEmptySeconds, Seconds, (0, 10), "as above"),
        row(CareMinutes, Minutes, (1, 60), "10 to 15 min of warmth or cold are usual; longer can harm the skin, a position of rest may last longer"),
        row(CountSeconds, Seconds, (10, 120), "30 s are usual in tests of rising from a chair; over two minutes endurance is tested"),
        row(CountErrorTenths, Count, (1, 500), "an error of fifty repetitions is none that helps"),
        row(BeatSeconds, Seconds, (5, 120), "20 to 60 s are usual; over two minutes it makes most people dizzy"),
        row(BeatsPerMinute, Count, (30, 180), "slower is no beat, quicker cannot be followed with the head"),
        row(QuotaMinutes, Minutes, (1, 180), "a minute can be a beginning; three hours without a change are asked of nobody"),
        row(QuotaStep, Count, (0, 30), "0 keeps it as it is; half an hour more at once is no step"),
        row(QuotaDays, Count, (1, 28), "a step a day at most, and one between two visits at least"),
        row(QuotaGoal, Count, (1, 180), "the longest that it can grow to"),
    ]
};

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_in_the_order_of_the_quantities_and_every_range_has_a_reason() {
        for (place, bound) in BOUNDS.iter().enumerate() {
            assert_eq!(bound.quantity as usize, place, "{:?} is in the wrong row", bound.quantity);
            assert!(bound.min < bound.max, "{:?}", bound.quantity);
            assert!(!bound.why.is_empty(), "{:?}", bound.quantity);
        }
    }

    #[test]
    fn both_ends_are_inside_and_the_next_value_is_not() {
        for Bound { quantity, min, max, .. } in BOUNDS {
            assert_eq!(quantity.check(min), Ok(min));
            assert_eq!(quantity.check(max), Ok(max));
            assert_eq!(quantity.check(min - 1), Err(OutOfRange { quantity, value: min - 1 }));
            assert_eq!(quantity.check(max + 1), Err(OutOfRange { quantity, value: max + 1 }));
        }
    }

    #[test]
    fn ten_thousand_repetitions_and_negative_seconds_are_out_of_range() {
        assert!(Quantity::Repetitions.check(10_000).is_err());
        assert!(Quantity::HoldSeconds.check(-10).is_err());
        assert!(Quantity::RestSeconds.check(-1).is_err());
    }
}
