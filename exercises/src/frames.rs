//! The frames of a summary on a screen: one at a time, changed by hand or automatically.

/// Time for which a frame is shown automatically, in milliseconds: enough for a phone to find it and focus, and for somebody to
/// press.
pub const FRAME_MS: u64 = 5_000;

/// Which frame is shown. After the last frame comes the first, so that a missed one appears again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct FrameRotation {
    of: usize,
    at: usize,
    is_automatic: bool,
    since_ms: u64,
}

impl FrameRotation {
    /// The first of `of` frames, shown from `now_ms` on. Frames do not change automatically if there is only one or if the person
    /// prefers no movement.
    pub fn begin(of: usize, still: bool, now_ms: u64) -> FrameRotation {
        FrameRotation { of: of.max(1), at: 0, is_automatic: of > 1 && !still, since_ms: now_ms }
    }

    /// The number of frames.
    pub fn count(&self) -> usize {
        self.of
    }

    /// The index of the frame that is shown, from 0.
    pub fn position(&self) -> usize {
        self.at
    }

    /// Whether there is another frame to show.
    pub fn can_turn(&self) -> bool {
        self.of > 1
    }

    /// Whether frames change automatically.
    pub fn is_automatic(&self) -> bool {
        self.is_automatic
    }

    /// The state at a later moment: the next frame if this one was shown long enough.
    pub fn advance(self, now_ms: u64) -> FrameRotation {
        if self.is_automatic && now_ms.saturating_sub(self.since_ms) >= FRAME_MS {
            self.to(self.at + 1, now_ms)
        } else {
            self
        }
    }

    /// The next frame, by hand. This stops the automatic change.
    pub fn next(self, now_ms: u64) -> FrameRotation {
        FrameRotation { is_automatic: false, ..self.to(self.at + 1, now_ms) }
    }

    /// The previous frame, by hand. This stops the automatic change.
    pub fn previous(self, now_ms: u64) -> FrameRotation {
        FrameRotation { is_automatic: false, ..self.to(self.at + self.of - 1, now_ms) }
    }

    /// Stops or starts the automatic change; the current frame is then shown for its full time.
    pub fn toggle_automatic(self, now_ms: u64) -> FrameRotation {
        FrameRotation { is_automatic: self.can_turn() && !self.is_automatic, since_ms: now_ms, ..self }
    }

    fn to(self, place: usize, now_ms: u64) -> FrameRotation {
        FrameRotation { at: place % self.of, since_ms: now_ms, ..self }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn frames_change_automatically_and_start_over() {
        let mut shown = FrameRotation::begin(3, false, 100);
        let mut seen = vec![shown.position()];
        for now_ms in (100..100 + 4 * FRAME_MS).step_by(250).chain([100 + 4 * FRAME_MS]) {
            let next = shown.advance(now_ms);
            if next.position() != shown.position() {
                seen.push(next.position());
            }
            shown = next;
        }
        assert_eq!(seen, [0, 1, 2, 0, 1]);
        assert_eq!(shown.advance(4 * FRAME_MS).position(), 1, "an instant before that is invalid");
    }

    #[test]
    fn frames_change_by_hand_in_both_directions_and_stay() {
        let shown = FrameRotation::begin(3, false, 0);
        assert_eq!(
            (shown.next(1).position(), shown.previous(1).position(), shown.previous(1).next(2).position()),
            (1, 2, 0)
        );
        let by_hand = shown.next(1);
        assert!(!by_hand.is_automatic());
        assert_eq!(by_hand.advance(10 * FRAME_MS), by_hand);
    }

    #[test]
    fn after_a_restart_a_frame_is_shown_for_its_full_time() {
        let stopped = FrameRotation::begin(2, false, 0).toggle_automatic(4_000);
        assert_eq!(stopped.advance(60_000).position(), 0);
        let again = stopped.toggle_automatic(60_000);
        assert_eq!(again.advance(60_000 + FRAME_MS - 1).position(), 0);
        assert_eq!(again.advance(60_000 + FRAME_MS).position(), 1);
    }

    #[test]
    fn with_reduced_motion_frames_change_automatically_only_on_request() {
        let still = FrameRotation::begin(2, true, 0);
        assert!(!still.is_automatic() && still.toggle_automatic(0).is_automatic());
    }

    #[test]
    fn a_single_frame_never_changes() {
        for of in [0, 1] {
            let alone = FrameRotation::begin(of, false, 0);
            assert!(!alone.can_turn() && !alone.is_automatic() && !alone.toggle_automatic(0).is_automatic());
            assert_eq!((alone.next(0).position(), alone.previous(0).position(), alone.count()), (0, 0, 1));
        }
    }
}
