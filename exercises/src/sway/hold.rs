//! The duration of the hold: until the first touch-down, or censored at the planned end.
//!
//! | tap | candidate | what ends the hold |
//! |---|---|---|
//! | yes | yes | the candidate, at its own time |
//! | yes | no  | the tap, 0.5 s earlier (the assumed delay) |
//! | no  | definite | the candidate, provisionally: the patient is asked |
//! | no  | possible | nothing; the patient is asked |
//!
//! An answer overrides the sensor: "yes" ends the hold, "no" does not, "unsure" changes nothing and keeps both times. A "yes" at a
//! moment without an event ends the hold at that moment.

use super::{
    clean::Clean,
    detection::{Class, Detection, Event},
    parameters::{GAP_SPLIT_S, TAP_DELAY_S},
    sample::{AnsweredAt, Marks, TouchAnswer},
};

/// An answer belongs to an event if their times differ by no more than this, s: two grid steps.
const ANSWER_REACH_S: f64 = 0.02;

/// What ended a hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum EndedBy {
    /// The planned end, or the end of the recording: the hold is censored.
    End,
    /// A touch-down that the sensor detected and that matches a tap.
    TapAndSensor,
    /// A tap; the sensor detected nothing near it, or there is no sensor.
    TapOnly,
    /// The sensor alone; provisional until the patient confirms it.
    SensorOnly,
    /// The patient's answer after the trial.
    TouchAnswer,
}

/// How long the hold would be if the open question were answered the other way.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct OtherHold {
    /// Its length, s.
    pub seconds: f64,
    /// Whether it would be censored.
    pub censored: bool,
}

/// One hold.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Hold {
    /// From the start tone to the end, s.
    pub seconds: f64,
    /// Whether no touch-down was found: the true hold is this or longer.
    pub censored: bool,
    /// Whether more than 0.20 s of samples are missing during the hold: a touch-down cannot be excluded there.
    pub gap: bool,
    /// What ended it.
    pub ended_by: EndedBy,
    /// The other possible duration, while a question is open.
    pub otherwise: Option<OtherHold>,
    /// Times of the events to ask about ("did the foot touch?"), s.
    pub ask_s: Vec<f64>,
}

impl Hold {
    /// Whether the duration still has to be confirmed.
    pub fn to_be_confirmed(&self) -> bool {
        self.otherwise.is_some()
    }
}

/// Stores the answers in the events they belong to.
pub(crate) fn apply_answers(events: &mut [Event], answers: &[AnsweredAt]) {
    for event in events {
        let about = answers.iter().rfind(|one| (one.t_s - event.t_s).abs() <= ANSWER_REACH_S);
        if let Some(about) = about {
            event.answer = about.answer;
        }
    }
}

/// Computes the hold. In `detection`, taps must be matched and answers applied; without it, only taps and answers end the hold.
pub(crate) fn hold(detection: Option<&Detection>, taps_s: &[f64], marks: &Marks, clean: Option<&Clean>) -> Hold {
    let events: &[Event] = detection.map_or(&[], |found| &found.events);
    let lone_taps = detection.map_or(taps_s, |found| &found.unmatched_taps_s);
    let ends = Ends { events, lone_taps, marks };
    let (end, ended_by) = ends.first(|_| true);
    let open: Vec<&Event> = events.iter().filter(|event| open(event) && event.t_s <= end).collect();
    let other = |end: (f64, EndedBy)| OtherHold { seconds: end.0 - marks.t_on_s, censored: end.1 == EndedBy::End };
    let otherwise = match (ended_by, open.first()) {
        (EndedBy::SensorOnly, _) => Some(other(ends.first(|event| event.t_s != end))),
        (_, Some(possible)) => Some(other((possible.t_s, EndedBy::TouchAnswer))),
        _ => None,
    };
    Hold {
        seconds: end - marks.t_on_s,
        censored: ended_by == EndedBy::End,
        gap: clean.is_some_and(|clean| gap_between(clean, marks.t_on_s, end)),
        ended_by,
        otherwise,
        ask_s: open.iter().filter(|event| event.answer == TouchAnswer::NotAsked).map(|event| event.t_s).collect(),
    }
}

/// Whether the patient's answer about this event could still change when the hold ends.
fn open(event: &Event) -> bool {
    let unanswered = matches!(event.answer, TouchAnswer::NotAsked | TouchAnswer::Unsure);
    unanswered && event.tap_s.is_none() && event.class != Class::TapKnock
}

struct Ends<'a> {
    events: &'a [Event],
    lone_taps: &'a [f64],
    marks: &'a Marks,
}

impl Ends<'_> {
    /// The earliest end among: the events that `counts` accepts, taps without an event, the answers, and the planned end.
    fn first(&self, counts: impl Fn(&Event) -> bool) -> (f64, EndedBy) {
        let by_event = self.events.iter().filter(|event| counts(event)).filter_map(ended_by_event);
        let by_tap = self.lone_taps.iter().map(|tap| (tap - TAP_DELAY_S, EndedBy::TapOnly));
        let by_answer = self.answers_without_event().map(|t| (t, EndedBy::TouchAnswer));
        let bounded = by_event.chain(by_tap).chain(by_answer).map(|(t, by)| (t.max(self.marks.t_on_s), by));
        let planned = (self.marks.t_off_s, EndedBy::End);
        bounded.fold(planned, |first, next| if next.0 < first.0 { next } else { first })
    }

    fn answers_without_event(&self) -> impl Iterator<Item = f64> {
        let said_yes = |one: &&AnsweredAt| one.answer == TouchAnswer::Yes && one.t_s >= self.marks.t_on_s;
        let matched = |t: f64| self.events.iter().any(|event| (event.t_s - t).abs() <= ANSWER_REACH_S);
        self.marks.answers.iter().filter(said_yes).map(|one| one.t_s).filter(move |t| !matched(*t))
    }
}

fn ended_by_event(event: &Event) -> Option<(f64, EndedBy)> {
    let by = match (event.answer, event.class, event.tap_s) {
        (TouchAnswer::No, ..) => return None,
        (_, Class::Definite, Some(_)) => EndedBy::TapAndSensor,
        (TouchAnswer::Yes, ..) => EndedBy::TouchAnswer,
        (_, Class::Definite, None) => EndedBy::SensorOnly,
        (_, Class::Possible | Class::TapKnock, _) => return None,
    };
    Some((event.t_s, by))
}

/// Whether samples are missing for more than 0.20 s between the two times, including before the first and after the last sample.
fn gap_between(clean: &Clean, from: f64, to: f64) -> bool {
    let times = || clean.samples.iter().map(|sample| sample.t_s).filter(|t| *t > from && *t < to);
    let before = clean.samples.iter().rfind(|sample| sample.t_s <= from).map_or(from, |sample| sample.t_s);
    let after = clean.samples.iter().find(|sample| sample.t_s >= to).map_or(to, |sample| sample.t_s);
    let mut last = before;
    times().chain([after]).any(|t| {
        let missing = t - last > GAP_SPLIT_S;
        last = t;
        missing
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sway::{clean::clean, sample::Sample};

    fn event(t_s: f64, class: Class, tap_s: Option<f64>, answer: TouchAnswer) -> Event {
        Event { t_s, p2p: 30.0, pre: 1.0, shift: 0.5, support: true, tap_s, class, answer }
    }

    fn found(events: &[Event], unmatched: &[f64]) -> Detection {
        Detection {
            events: events.to_vec(),
            unmatched_taps_s: unmatched.to_vec(),
            thr_lo: 10.0,
            thr_hi: 20.0,
            p2p_median: 2.0,
            p2p_mad: 0.5,
        }
    }

    fn of(events: &[Event], unmatched: &[f64]) -> Hold {
        hold(Some(&found(events, unmatched)), &[], &Marks::between(5.0, 35.0), None)
    }

    #[track_caller]
    fn check(got: &Hold, seconds: f64, ended_by: EndedBy) {
        assert!((got.seconds - seconds).abs() < 1e-12, "{got:?}");
        assert_eq!(got.ended_by, ended_by);
        assert_eq!(got.censored, ended_by == EndedBy::End);
    }

    #[test]
    fn a_hold_without_a_touch_down_lasts_to_the_planned_end() {
        let got = of(&[], &[]);
        check(&got, 30.0, EndedBy::End);
        assert!(!got.to_be_confirmed() && got.ask_s.is_empty());
    }

    #[test]
    fn tap_and_sensor() {
        let got = of(&[event(19.0, Class::Definite, Some(19.6), TouchAnswer::NotAsked)], &[]);
        check(&got, 14.0, EndedBy::TapAndSensor);
        assert!(got.ask_s.is_empty());
    }

    #[test]
    fn a_lone_tap_ends_half_a_second_earlier_but_not_before_the_start() {
        check(&of(&[], &[20.0]), 14.5, EndedBy::TapOnly);
        check(&of(&[], &[5.2]), 0.0, EndedBy::TapOnly);
        check(&of(&[], &[40.0]), 30.0, EndedBy::End);
    }

    #[test]
    fn the_sensor_alone_ends_it_provisionally() {
        let got = of(&[event(19.0, Class::Definite, None, TouchAnswer::NotAsked)], &[]);
        check(&got, 14.0, EndedBy::SensorOnly);
        assert_eq!(got.otherwise, Some(OtherHold { seconds: 30.0, censored: true }));
        assert_eq!(got.ask_s, vec![19.0]);
    }

    #[test]
    fn a_possible_event_is_asked_about_and_ends_nothing() {
        let got = of(&[event(12.0, Class::Possible, None, TouchAnswer::NotAsked)], &[]);
        check(&got, 30.0, EndedBy::End);
        assert_eq!(got.otherwise, Some(OtherHold { seconds: 7.0, censored: false }));
        assert_eq!(got.ask_s, vec![12.0]);
        let late = [
            event(12.0, Class::Definite, Some(12.5), TouchAnswer::NotAsked),
            event(20.0, Class::Possible, None, TouchAnswer::NotAsked),
        ];
        assert!(of(&late, &[]).ask_s.is_empty());
    }

    #[test]
    fn an_answer_overrides_the_sensor() {
        check(&of(&[event(12.0, Class::Possible, None, TouchAnswer::Yes)], &[]), 7.0, EndedBy::TouchAnswer);
        check(&of(&[event(12.0, Class::Definite, None, TouchAnswer::No)], &[]), 30.0, EndedBy::End);
        let unsure = of(&[event(12.0, Class::Possible, None, TouchAnswer::Unsure)], &[]);
        check(&unsure, 30.0, EndedBy::End);
        assert!(unsure.to_be_confirmed() && unsure.ask_s.is_empty());
    }

    #[test]
    fn an_answer_is_written_on_its_event_and_the_last_one_counts() {
        let mut events = [event(12.0, Class::Possible, None, TouchAnswer::NotAsked)];
        let said = |t_s, answer| AnsweredAt { t_s, answer };
        apply_answers(
            &mut events,
            &[said(12.01, TouchAnswer::Unsure), said(12.0, TouchAnswer::Yes), said(13.0, TouchAnswer::No)],
        );
        assert_eq!(events[0].answer, TouchAnswer::Yes);
    }

    #[test]
    fn a_touch_time_given_by_the_patient_ends_the_hold_there() {
        let answers = vec![AnsweredAt { t_s: 15.0, answer: TouchAnswer::Yes }];
        let marks = Marks { answers, ..Marks::between(5.0, 35.0) };
        check(&hold(Some(&found(&[], &[])), &[], &marks, None), 10.0, EndedBy::TouchAnswer);
    }

    #[test]
    fn a_knock_of_a_tap_is_neither_an_end_nor_a_question() {
        let got = of(&[event(12.0, Class::TapKnock, None, TouchAnswer::NotAsked)], &[]);
        check(&got, 30.0, EndedBy::End);
        assert!(got.ask_s.is_empty());
    }

    #[test]
    fn without_a_sensor_taps_still_end_it() {
        check(&hold(None, &[21.0], &Marks::between(5.0, 35.0), None), 15.5, EndedBy::TapOnly);
    }

    #[test]
    fn missing_samples_inside_before_or_after_are_a_gap() {
        let record = |from: i32, to: i32, skip: core::ops::Range<i32>| {
            let rows: Vec<Sample> = (from..=to)
                .filter(|k| !skip.contains(k))
                .map(|k| Sample { t_s: f64::from(k) / 10.0, a: [0.0; 3] })
                .collect();
            clean(&rows)
        };
        assert!(!gap_between(&record(0, 300, 0..0), 0.0, 30.0));
        assert!(gap_between(&record(0, 300, 100..103), 0.0, 30.0));
        assert!(!gap_between(&record(0, 300, 100..103), 15.0, 30.0));
        assert!(gap_between(&record(5, 300, 0..0), 0.0, 30.0));
        assert!(gap_between(&record(0, 290, 0..0), 0.0, 30.0));
        assert!(gap_between(&record(0, 0, 0..0), 5.0, 10.0));
    }
}
