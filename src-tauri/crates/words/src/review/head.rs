//! The head of the review, and the headings of its questions.

use crate::{Key, Words};
use exercises::plan::Plan;
use exercises::review::{Review, WrongClockEntry, WrongClockNotes};
use wire::clinic::{DeviceLine, ReviewNotice, ReviewPage, StoreNotice};

/// The questions that a review answers, in this order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ReviewQuestion {
    /// Did anything alarming happen?
    Alarms,
    /// Was the plan followed: when, how completely, and since when not?
    Done,
    /// Did it hurt?
    Pain,
    /// Is the plan working: balance?
    Balance,
    /// Is the plan working: tests by repetitions? Shown only if there are any.
    Counts,
    /// Is the plan working: activities?
    Activities,
    /// What got in the way?
    Barriers,
    /// What next?
    Next,
    /// What else did the patient write?
    Notes,
}

impl Words {
    /// The heading of a question's answer.
    pub fn question(self, question: ReviewQuestion) -> &'static str {
        self.text(match question {
            ReviewQuestion::Alarms => Key::ReviewQuestionAlarms,
            ReviewQuestion::Done => Key::ReviewQuestionDone,
            ReviewQuestion::Pain => Key::ReviewQuestionPain,
            ReviewQuestion::Balance => Key::ReviewQuestionBalance,
            ReviewQuestion::Counts => Key::ReviewQuestionCounts,
            ReviewQuestion::Activities => Key::ReviewQuestionActivities,
            ReviewQuestion::Barriers => Key::ReviewQuestionBarriers,
            ReviewQuestion::Next => Key::ReviewQuestionNext,
            ReviewQuestion::Notes => Key::ReviewNotes,
        })
    }

    /// The text if there are no data to answer a question.
    pub fn unanswered(self, question: ReviewQuestion) -> &'static str {
        self.text(match question {
            ReviewQuestion::Alarms => Key::ReviewNoAlarm,
            ReviewQuestion::Done | ReviewQuestion::Counts | ReviewQuestion::Notes => Key::ReviewNothingDue,
            ReviewQuestion::Pain => Key::ReviewNoComplaint,
            ReviewQuestion::Balance => Key::ReviewNoBalance,
            ReviewQuestion::Activities => Key::ReviewNoActivity,
            ReviewQuestion::Barriers => Key::ReviewNoBarrier,
            ReviewQuestion::Next => Key::ReviewNoPlan,
        })
    }

    /// "28 days since 28 October; 3 exercises; visit today".
    pub fn review_head(self, page: &ReviewPage) -> String {
        let Some(plan) = &page.plan else { return self.text(Key::ReviewNoPlan).to_owned() };
        let days = page.today.signed_duration_since(plan.header.start).num_days().max(0);
        let since = self.review_days_since(days, &self.date(plan.header.start));
        let exercises = self.review_exercises(plan.prescription.items.len());
        self.review_head_line(&since, &exercises, &self.visit(plan, page))
    }

    fn visit(self, plan: &Plan, page: &ReviewPage) -> String {
        let date = self.date(plan.prescription.review);
        match plan.prescription.review.cmp(&page.today) {
            std::cmp::Ordering::Equal => self.text(Key::ReviewVisitToday).to_owned(),
            std::cmp::Ordering::Greater => self.review_visit_on(&date),
            std::cmp::Ordering::Less => self.review_visit_was(&date),
        }
    }

    /// The period that the record covers, and which entries are still missing; empty if nothing was received.
    pub fn review_covers(self, page: &ReviewPage) -> Vec<String> {
        let Some(review) = &page.review else { return vec![self.text(Key::ReviewNoSummary).to_owned()] };
        let mut lines = Vec::new();
        if let Some((from, until)) = review.covered {
            let (from, until) = (self.date(from), self.date(until));
            lines.push(match review.logs {
                2.. => self.review_covered_devices(&from, &until, review.logs),
                _ => self.review_covered(&from, &until),
            });
        }
        let behind = review.behind.iter().map(|behind| self.review_device_behind(&self.date(behind.until)));
        lines.extend(behind);
        lines.extend(review.renewed.iter().map(|day| self.review_device_renewed(&self.date(*day))));
        lines.extend((review.corrected > 0).then(|| self.review_corrected(review.corrected)));
        lines.extend(self.wrong_clock(&review.wrong_clock));
        lines.extend(self.older_card(page.plan.as_ref(), review));
        lines
    }

    /// What was recorded while a device's clock was wrong, and whether the clinic can tell that one was ahead; mostly nothing.
    fn wrong_clock(self, notes: &WrongClockNotes) -> Vec<String> {
        let sessions = notes.entries.iter().filter(|entry| matches!(entry, WrongClockEntry::Run { .. })).count();
        let ratings = notes.entries.len() - sessions;
        let sessions = (sessions > 0).then(|| self.wrong_clock_sessions(sessions));
        let ratings = (ratings > 0).then(|| self.wrong_clock_ratings(ratings));
        let counted: Vec<String> = sessions.into_iter().chain(ratings).collect();
        let recorded = (!counted.is_empty()).then(|| self.review_wrong_clock(&self.list(&counted)));
        let ahead = notes.ahead_days.map(|days| self.review_clock_ahead(days));
        ahead.into_iter().chain(recorded).collect()
    }

    /// What there is to say about the store that the review is made from; mostly nothing.
    pub fn review_notices(self, page: &ReviewPage) -> Vec<String> {
        let of_store = page.notices.iter().map(|notice| match notice {
            ReviewNotice::ChangedOutside => self.text(Key::ReviewChangedOutside).to_owned(),
            ReviewNotice::StoreBehind { revision, next } => self.review_store_behind(revision, next),
        });
        of_store.collect()
    }

    /// "Device 1: used from 25 November to 9 December, 16 sessions."
    pub fn review_device(self, line: &DeviceLine) -> String {
        let Some(number) = line.number else { return self.diary_in_review(line) };
        let used = match line.used {
            None => self.text(Key::DeviceNotUsed).to_owned(),
            Some((first, last)) if first == last => self.device_used_on(line.sessions, &self.date(first)),
            Some((first, last)) => self.device_used(line.sessions, &self.date(first), &self.date(last)),
        };
        match line.left_out {
            true => self.review_device_left_out(number, &used),
            false => self.review_device_counted(number, &used),
        }
    }

    fn diary_in_review(self, line: &DeviceLine) -> String {
        let until = line.until.filter(|_| !line.left_out).map(|until| self.date(until));
        match (until, &line.by) {
            (None, _) => self.text(Key::PaperDiaryLeftOut).to_owned(),
            (Some(until), Some(name)) => self.paper_diary_device_by(&until, name),
            (Some(until), None) => self.paper_diary_device(&until),
        }
    }

    /// What tells a device from others besides its use: "First summary received on 25 November. Number on the device: 0123456789abcdef".
    /// Of a diary on paper there is nothing.
    pub fn review_device_which(self, line: &DeviceLine) -> Option<String> {
        line.number?;
        let first = match line.first_seen {
            Some(day) => self.device_first_seen(&self.date(day)),
            None => self.text(Key::DeviceSeenBefore).to_owned(),
        };
        let later = line.goes_on_as.map(|number| self.device_goes_on_as(number));
        let own = self.device_number(&line.device.to_string());
        Some([Some(first), later, Some(own)].into_iter().flatten().collect::<Vec<_>>().join(" "))
    }

    /// What is wrong with the clinic's store as a whole.
    pub fn store_notice(self, notice: &StoreNotice) -> String {
        match notice {
            StoreNotice::DamagedRecords { n } => self.store_damaged_records(*n),
            StoreNotice::ChangedOutside { rows, codes } if codes.is_empty() => self.store_changed_outside(*rows),
            StoreNotice::ChangedOutside { rows, codes } => self.store_changed_outside_of(*rows, &self.list(codes)),
            StoreNotice::KeysOlder { renewed } => self.store_keys_older(&self.date_in_full(*renewed)),
            StoreNotice::ManifestChanged => self.text(Key::StoreManifestChanged).to_owned(),
        }
    }

    fn older_card(self, plan: Option<&Plan>, review: &Review) -> Option<String> {
        let newest = plan?.header.revision;
        (review.revision < newest).then(|| self.review_older_plan_followed(review.revision, newest))
    }

    /// The note that proposals follow fixed rules and that the clinician decides.
    pub fn proposals_only(self) -> &'static str {
        self.text(Key::ReviewProposalsOnly)
    }

    /// "no longer in the plan".
    pub fn no_longer(self) -> &'static str {
        self.text(Key::ReviewNoLonger)
    }
}
