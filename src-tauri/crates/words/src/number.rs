//! A number as a text shows it. The plural form depends on what is shown, not on the exact value.

use exercises::score::Score;

/// A whole number, or one with a fixed number of decimals.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Number {
    /// The value in units of the last decimal that is shown.
    units: i64,
    /// Number of decimals that are shown.
    decimals: u8,
}

impl Number {
    /// `value` with at most `decimals` decimals (6 at most), or none if they are all zero.
    pub fn rounded(value: f64, decimals: u8) -> Number {
        let decimals = decimals.min(6);
        let mut number = Number { units: (value * f64::from(10_u32.pow(decimals.into()))).round() as i64, decimals };
        while number.decimals > 0 && number.units % 10 == 0 {
            number = Number { units: number.units / 10, decimals: number.decimals - 1 };
        }
        number
    }

    /// The whole part, without sign.
    pub(crate) fn whole(self) -> u64 {
        self.units.unsigned_abs() / 10_u64.pow(self.decimals.into())
    }

    /// Number of decimals that are shown.
    pub(crate) fn decimals(self) -> u8 {
        self.decimals
    }

    /// Whether it is this whole number.
    pub(crate) fn is(self, whole: i64) -> bool {
        self.decimals == 0 && self.units == whole
    }

    /// The digits, with `mark` before the decimals and `minus` before a negative number.
    pub(crate) fn written(self, mark: &str, minus: &str) -> String {
        let sign = if self.units < 0 { minus } else { "" };
        let scale = 10_u64.pow(self.decimals.into());
        match self.decimals {
            0 => format!("{sign}{}", self.whole()),
            decimals => {
                let rest = self.units.unsigned_abs() % scale;
                format!("{sign}{}{mark}{rest:0width$}", self.whole(), width = usize::from(decimals))
            }
        }
    }
}

impl From<Score> for Number {
    fn from(score: Score) -> Number {
        score.points().into()
    }
}

impl From<&Score> for Number {
    fn from(score: &Score) -> Number {
        score.points().into()
    }
}

macro_rules! whole {
    ($($kind:ty)*) => { $(
        impl From<$kind> for Number {
            fn from(value: $kind) -> Number {
                Number { units: i64::try_from(value).unwrap_or(i64::MAX), decimals: 0 }
            }
        }
        impl From<&$kind> for Number {
            fn from(value: &$kind) -> Number {
                Number::from(*value)
            }
        }
    )* };
}
whole!(u8 u16 u32 u64 usize i8 i16 i32 i64);

impl From<&Number> for Number {
    fn from(value: &Number) -> Number {
        *value
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_have_the_marks_of_the_locale() {
        assert_eq!(Number::from(0).written(".", "-"), "0");
        assert_eq!(Number::from(-12).written(".", "-"), "-12");
        assert_eq!(Number::rounded(3.5, 1).written(",", "-"), "3,5");
        assert_eq!(Number::rounded(3.0, 1).written(",", "-"), "3");
        assert_eq!(Number::rounded(-0.05, 2).written(".", "-"), "-0.05");
        assert_eq!(Number::rounded(-0.04, 1).written(".", "-"), "0");
    }
}
