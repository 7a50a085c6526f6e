//! Quiet times as somebody changes them, before they are kept.

use super::{MAX_QUIET, Span};

/// Quiet times as they are being changed, beside those that hold.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct QuietTimesDraft {
    held: Vec<Span>,
    quiet: Vec<Span>,
}

impl QuietTimesDraft {
    /// Begins with those that hold.
    pub fn new(held: Vec<Span>) -> QuietTimesDraft {
        QuietTimesDraft { quiet: held.clone(), held }
    }

    /// As changed so far, in order.
    pub fn quiet(&self) -> &[Span] {
        &self.quiet
    }

    /// Whether there is anything to keep.
    pub fn is_changed(&self) -> bool {
        self.quiet != self.held
    }

    /// Whether `span` is a quiet time, is not there yet, and is not one too many.
    pub fn accepts(&self, span: Span) -> bool {
        span.fits() && !self.quiet.contains(&span) && self.quiet.len() < MAX_QUIET
    }

    /// Adds one in its place; one that is not taken changes nothing.
    pub fn add(&mut self, span: Span) {
        if self.accepts(span) {
            self.quiet.push(span);
            self.quiet.sort_unstable();
        }
    }

    /// Takes one out.
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
    fn what_is_added_stands_in_order_and_what_is_taken_out_again_is_no_change() {
        let mut draft = QuietTimesDraft::new(vec![NIGHT]);
        assert!(!draft.is_changed());
        draft.add(NOON);
        assert_eq!((draft.quiet(), draft.is_changed()), (&[NOON, NIGHT][..], true));
        draft.remove(NOON);
        assert_eq!((draft.quiet(), draft.is_changed()), (&[NIGHT][..], false));
    }

    #[test]
    fn neither_twice_nor_without_an_end_nor_too_many() {
        let mut draft = QuietTimesDraft::new(vec![NOON]);
        for span in [NOON, Span { from: 60, to: 60 }, Span { from: 60, to: 1440 }] {
            assert!(!draft.accepts(span), "{span:?}");
            draft.add(span);
        }
        assert!(!draft.is_changed());
        for hour in 0..7 {
            draft.add(Span { from: hour * 60, to: hour * 60 + 10 });
        }
        assert_eq!(draft.quiet().len(), MAX_QUIET);
        assert!(!draft.accepts(NIGHT));
    }
}
