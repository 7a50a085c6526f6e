//! The frames of a summary on a screen: one at a time, turned by hand or by themselves.

/// A frame that turns by itself stays so long: a telephone finds it, sharpens, and somebody presses.
pub const STAYS_MS: u64 = 5_000;

/// Which frame is shown. It goes round: after the last comes the first, for whoever missed one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turning {
    of: usize,
    at: usize,
    by_itself: bool,
    since_ms: u64,
}

impl Turning {
    /// The first of `of` frames, shown from `now_ms` on. One alone never turns, and none does for whoever wants no movement.
    pub fn begin(of: usize, still: bool, now_ms: u64) -> Turning {
        Turning { of: of.max(1), at: 0, by_itself: of > 1 && !still, since_ms: now_ms }
    }

    /// How many there are.
    pub fn of(&self) -> usize {
        self.of
    }

    /// The place of the frame that is shown, from 0.
    pub fn at(&self) -> usize {
        self.at
    }

    /// Whether there is any to turn to.
    pub fn can_turn(&self) -> bool {
        self.of > 1
    }

    /// Whether they turn by themselves.
    pub fn by_itself(&self) -> bool {
        self.by_itself
    }

    /// The same a moment later: the next frame once this one has stayed long enough.
    pub fn pass(self, now_ms: u64) -> Turning {
        if self.by_itself && now_ms.saturating_sub(self.since_ms) >= STAYS_MS { self.to(self.at + 1, now_ms) } else { self }
    }

    /// The next one by hand. Whoever turns by hand goes on by hand.
    pub fn next(self, now_ms: u64) -> Turning {
        Turning { by_itself: false, ..self.to(self.at + 1, now_ms) }
    }

    /// The one before, by hand.
    pub fn before(self, now_ms: u64) -> Turning {
        Turning { by_itself: false, ..self.to(self.at + self.of - 1, now_ms) }
    }

    /// Stops turning by itself, or begins; the frame shown then stays its whole time.
    pub fn switch(self, now_ms: u64) -> Turning {
        Turning { by_itself: self.can_turn() && !self.by_itself, since_ms: now_ms, ..self }
    }

    fn to(self, place: usize, now_ms: u64) -> Turning {
        Turning { at: place % self.of, since_ms: now_ms, ..self }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn they_turn_by_themselves_and_go_round() {
        let mut shown = Turning::begin(3, false, 100);
        let mut seen = vec![shown.at()];
        for now_ms in (100..100 + 4 * STAYS_MS).step_by(250).chain([100 + 4 * STAYS_MS]) {
            let next = shown.pass(now_ms);
            if next.at() != shown.at() {
                seen.push(next.at());
            }
            shown = next;
        }
        assert_eq!(seen, [0, 1, 2, 0, 1]);
        assert_eq!(shown.pass(4 * STAYS_MS).at(), 1, "an instant that lies before is none");
    }

    #[test]
    fn by_hand_they_go_round_both_ways_and_stay() {
        let shown = Turning::begin(3, false, 0);
        assert_eq!((shown.next(1).at(), shown.before(1).at(), shown.before(1).next(2).at()), (1, 2, 0));
        let by_hand = shown.next(1);
        assert!(!by_hand.by_itself());
        assert_eq!(by_hand.pass(10 * STAYS_MS), by_hand);
    }

    #[test]
    fn stopped_and_begun_again_a_frame_stays_its_whole_time() {
        let stopped = Turning::begin(2, false, 0).switch(4_000);
        assert_eq!(stopped.pass(60_000).at(), 0);
        let again = stopped.switch(60_000);
        assert_eq!(again.pass(60_000 + STAYS_MS - 1).at(), 0);
        assert_eq!(again.pass(60_000 + STAYS_MS).at(), 1);
    }

    #[test]
    fn nothing_moves_for_whoever_wants_no_movement_until_asked_to() {
        let still = Turning::begin(2, true, 0);
        assert!(!still.by_itself() && still.switch(0).by_itself());
    }

    #[test]
    fn one_alone_never_turns() {
        for of in [0, 1] {
            let alone = Turning::begin(of, false, 0);
            assert!(!alone.can_turn() && !alone.by_itself() && !alone.switch(0).by_itself());
            assert_eq!((alone.next(0).at(), alone.before(0).at(), alone.of()), (0, 0, 1));
        }
    }
}
