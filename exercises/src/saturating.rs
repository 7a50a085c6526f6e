//! Counts of what others report, which may be as many as they like.

/// The number as a counter, or the counter's largest value for a larger one: a wrong large number is noticed, a 0 would not be.
pub(crate) fn at_most(count: usize) -> u16 {
    u16::try_from(count).unwrap_or(u16::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_count_that_does_not_fit_is_the_largest_that_does() {
        assert_eq!((at_most(65_535), at_most(65_536), at_most(7)), (u16::MAX, u16::MAX, 7));
    }
}
