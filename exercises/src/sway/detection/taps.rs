//! Matches the patient's taps with the candidates that the sensor found.
//!
//! A tap makes the largest candidate from 1.5 s before it to 0.2 s after it definite. Other *possible* events within 0.15 s of the
//! tap are attributed to the knock of the tap. A tap that matches no candidate is kept separately.

use super::{Class, Event};
use crate::sway::parameters::{TAP_AFTER_S, TAP_BEFORE_S, TAP_KNOCK_S};

/// Marks the events that match a tap, and returns the taps that match none. `taps_s` must be in order of time.
pub(crate) fn match_taps(events: &mut [Event], taps_s: &[f64]) -> Vec<f64> {
    taps_s.iter().copied().filter(|tap| !claim(events, *tap)).collect()
}

fn claim(events: &mut [Event], tap: f64) -> bool {
    let near = |event: &Event| event.t_s >= tap - TAP_BEFORE_S && event.t_s <= tap + TAP_AFTER_S;
    let largest = (0..events.len())
        .filter(|&index| near(&events[index]))
        .max_by(|&one, &other| events[one].p2p.total_cmp(&events[other].p2p));
    let Some(chosen) = largest else { return false };
    for (index, event) in events.iter_mut().enumerate() {
        if index == chosen {
            event.class = Class::Definite;
            // A later tap does not replace an earlier one that already matched the event.
            event.tap_s = event.tap_s.or(Some(tap));
        } else if event.class == Class::Possible && (event.t_s - tap).abs() <= TAP_KNOCK_S {
            event.class = Class::TapKnock;
        }
    }
    true
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sway::sample::TouchAnswer;

    fn event(t_s: f64, p2p: f64, class: Class) -> Event {
        Event { t_s, p2p, pre: 0.0, shift: 0.0, support: false, tap_s: None, class, answer: TouchAnswer::NotAsked }
    }

    #[test]
    fn the_largest_candidate_before_the_tap_is_definite_and_the_knock_is_a_knock() {
        let mut events =
            [event(10.0, 15.0, Class::Possible), event(11.4, 12.0, Class::Possible), event(20.0, 14.0, Class::Possible)];
        assert!(match_taps(&mut events, &[11.45]).is_empty());
        assert_eq!(events[0].class, Class::Definite);
        assert_eq!(events[0].tap_s, Some(11.45));
        assert_eq!(events[1].class, Class::TapKnock);
        assert_eq!((events[2].class, events[2].tap_s), (Class::Possible, None));
    }

    #[test]
    fn both_ends_of_the_reach_count() {
        for t in [10.0 - TAP_BEFORE_S, 10.0 + TAP_AFTER_S] {
            assert!(match_taps(&mut [event(t, 12.0, Class::Possible)], &[10.0]).is_empty());
        }
        for t in [8.49, 10.21] {
            let mut events = [event(t, 12.0, Class::Possible)];
            assert_eq!(match_taps(&mut events, &[10.0]), vec![10.0]);
            assert_eq!(events[0].class, Class::Possible);
        }
    }

    #[test]
    fn a_definite_event_near_a_tap_that_belongs_elsewhere_stays_definite() {
        let mut events = [event(9.0, 50.0, Class::Possible), event(10.05, 30.0, Class::Definite)];
        match_taps(&mut events, &[10.0]);
        assert_eq!(events.map(|event| event.class), [Class::Definite; 2]);
    }

    #[test]
    fn without_events_every_tap_is_left() {
        assert_eq!(match_taps(&mut [], &[3.0, 4.0]), vec![3.0, 4.0]);
    }
}
