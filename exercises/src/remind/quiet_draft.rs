//! Quiet times while the person edits them, before they are saved.

use super::{MAX_QUIET, Span};

/// Quiet times that are being edited.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct QuietTimesDraft {
    quiet: Vec<Span>,
}

impl QuietTimesDraft {
    /// Starts with the saved quiet times.
    pub fn new(held: Vec<Span>) -> QuietTimesDraft {
        QuietTimesDraft { quiet: held }
    }

    /// The edited quiet times, in order.
    pub fn quiet(&self) -> &[Span] {
        &self.quiet
    }

    /// Whether `span` is valid, is not in the list yet, and the list is not full.
    pub fn accepts(&self, span: Span) -> bool {
        span.fits() && !self.quiet.contains(&span) && self.quiet.len() < MAX_QUIET
    }

    /// Adds a quiet time at its place in the order; one that is not accepted changes nothing.
    pub fn add(&mut self, span: Span) {
        if self.accepts(span) {
            self.quiet.push(span);
            self.quiet.sort_unstable();
        }
    }

    /// Removes a quiet time.
    pub fn remove(&mut self, span: Span) {
        self.quiet.retain(|one| *one != span);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOON: Span = Span { from: 720, to: 780 };
    const NIGHT: Span = Span { from: 1320, to: 420 };

    #[test]
    fn an_added_quiet_time_is_listed_in_order_until_it_is_removed() {
        let mut draft = QuietTimesDraft::new(vec![NIGHT]);
        draft.add(NOON);
        assert_eq!(draft.quiet(), [NOON, NIGHT]);
        draft.remove(NOON);
        assert_eq!(draft.quiet(), [NIGHT]);
    }

    #[test]
    fn duplicates_empty_times_and_more_than_the_limit_are_not_accepted() {
        let mut draft = QuietTimesDraft::new(vec![NOON]);
        for span in [NOON, Span { from: 60, to: 60 }, Span { from: 60, to: 1440 }] {
            assert!(!draft.accepts(span), "{span:?}");
            draft.add(span);
        }
        assert_eq!(draft.quiet(), [NOON]);
        for hour in 0..7 {
            draft.add(Span { from: hour * 60, to: hour * 60 + 10 });
        }
        assert_eq!(draft.quiet().len(), MAX_QUIET);
        assert!(!draft.accepts(NIGHT));
    }
}
