//! What somebody with a card may put into a summary: whatever it says, nobody else's page is closed by it.

#[allow(dead_code, reason = "of the arbitrary values only summaries are used here")]
#[path = "../../../format/tests/support/any.rs"]
mod any;

use crate::people::{at, example};
use crate::receiving::{receive, summary, two_patients, unlocked};
use actions::DataFolder;
use actions::clinic::{drafting, patients, reviewing};
use exercises::alarm::Trouble;
use exercises::history::Mark;
use exercises::id::{AlarmId, ItemId, LogId, RunId};
use exercises::norms::Norms;
use exercises::plan::{Header, Plan};
use exercises::review::{self, Review};
use exercises::run::{RunEnd, Share};
use exercises::summary::{AlarmOn, Corrections, FormerPart, ItemDay, RunOn, RunTiming, Summary, TakenOn};
use exercises::time::DayNumber;
use format::card::Card;
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use wire::Failure;
use wire::clinic::ReviewPage;
use wire::receiving::Outcome;
use words::{Locale, Words};

/// The example's plan in two revisions.
fn revisions() -> BTreeMap<u16, Plan> {
    let today = at("11-25T08:00").now.date();
    let first = Header::first(exercises::id::PlanId([1; 8]), "Linden Lane Practice", today);
    let second = first.next("Linden Lane Practice", today + chrono::Duration::days(7));
    let plan = |header: Header| (header.revision, Plan { header, prescription: example() });
    BTreeMap::from([plan(first), plan(second)])
}

/// The summary as one of the example's plan: about items that it has and one that it does not have, of known and unknown revisions.
fn of_the_plan(mut summary: Summary, log: u8, later: u16) -> Summary {
    let later = |day: DayNumber| day.plus(later);
    summary.plan = revisions()[&1].header.id;
    summary.log = LogId([log; 8]);
    (summary.from, summary.until) = (later(summary.from), later(summary.until));
    summary.seen = summary.seen.iter().map(|day| later(*day)).collect();
    for taken in &mut summary.taken {
        taken.revision %= 5;
    }
    for row in &mut summary.days {
        (row.day, row.item, row.revision) = (later(row.day), ItemId(row.item.0 % 5), row.revision % 5);
        row.slots = (0..).zip(row.slots.iter().map(|(_, mark)| *mark)).collect();
    }
    for run in &mut summary.runs {
        (run.day, run.item) = (later(run.day), ItemId(run.item.0 % 5));
    }
    summary.mornings.iter_mut().for_each(|one| (one.day, one.complaint.0) = (later(one.day), one.complaint.0 % 3));
    summary.during.iter_mut().for_each(|one| (one.day, one.item.0) = (later(one.day), one.item.0 % 5));
    summary.well_again.iter_mut().for_each(|one| one.day = later(one.day));
    summary.settled.iter_mut().for_each(|one| (one.day, one.complaint.0) = (later(one.day), one.complaint.0 % 3));
    summary.rated.iter_mut().for_each(|one| (one.day, one.activity.0) = (later(one.day), one.activity.0 % 3));
    summary.alarms.iter_mut().for_each(|one| one.day = later(one.day));
    summary
}

/// Everything that is made of summaries: the review, its JSON and its text.
fn everything(summaries: &[Summary]) -> Review {
    let revisions = revisions();
    let catalogue = DataFolder::shipped_catalogue().expect("shipped");
    let review = review::build_against(&revisions, &catalogue, summaries, &Norms::built_in()).expect("a plan and a summary");
    let page = ReviewPage {
        code: "K17".into(),
        name: None,
        today: at("11-25T08:00").now.date(),
        plan: revisions.get(&2).cloned(),
        earlier: revisions.get(&1).cloned().into_iter().collect(),
        exercises: catalogue.exercises,
        review: Some(review.clone()),
        devices: Vec::new(),
        notices: Vec::new(),
    };
    assert!(reviewing::json(&page, &[]).starts_with('{'));
    for locale in [Locale::En, Locale::Es] {
        assert!(!Words::new(locale).review_text(&page).is_empty());
    }
    exercises::chart::groups(&review.balance);
    review
}

/// `ACTIONS_HOSTILE_CASES` sets the number of reviews; the default is 24.
fn cases() -> u32 {
    std::env::var("ACTIONS_HOSTILE_CASES").map_or(24, |cases| cases.parse().expect("a number"))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, max_shrink_iters: 200, ..ProptestConfig::with_cases(cases()) })]

    #[test]
    fn any_summaries_give_a_review_its_json_and_its_text(
        all in proptest::collection::vec((any::summary(), 0..3_u8, prop_oneof![Just(0_u16), any::<u16>()]), 1..4)
    ) {
        let all: Vec<Summary> = all.into_iter().map(|(summary, log, later)| of_the_plan(summary, log, later)).collect();
        everything(&all);
        exercises::summary::union::arrival_effect(&all[1..], &all[0]);
    }
}

/// A summary that says nothing, for the days `from` to `until`.
fn empty(log: u8, from: u16, until: u16) -> Summary {
    Summary {
        plan: revisions()[&1].header.id,
        log: LogId([log; 8]),
        former: Vec::new(),
        counter: 1,
        from: DayNumber(from),
        until: DayNumber(until),
        taken: vec![TakenOn { day: DayNumber(0), revision: 1, agreed: Vec::new() }],
        seen: BTreeSet::new(),
        days: Vec::new(),
        runs: Vec::new(),
        mornings: Vec::new(),
        during: Vec::new(),
        settled: Vec::new(),
        well_again: Vec::new(),
        rated: Vec::new(),
        alarms: Vec::new(),
        delays: Vec::new(),
        note: None,
        corrections: Corrections::default(),
        wrong_clock: Default::default(),
    }
}

fn stopped(run: u32, day: u16) -> RunOn {
    let most = Share { done: u32::MAX, of: u32::MAX };
    RunOn {
        run: RunId(run),
        day: DayNumber(day),
        item: ItemId(1),
        rung: None,
        slot: None,
        hour: 23,
        live: true,
        timing: RunTiming::Late,
        end: RunEnd::Stopped,
        dose: most,
        parts: most,
        stance: None,
        tally: None,
    }
}

#[test]
fn counts_beyond_what_a_counter_holds_stay_at_its_largest_value() {
    let mut made_up = empty(1, 0, u16::MAX);
    made_up.runs = (0..70_000).map(|run| stopped(run, 7)).collect();
    let half = Mark::Partly(Share { done: u32::MAX - 1, of: u32::MAX });
    made_up.days = (0..=u16::MAX)
        .map(|day| {
            let slots = vec![(0, if day % 2 == 0 { half } else { Mark::NotDone })];
            ItemDay { day: DayNumber(day), item: ItemId(1), revision: 1, slots }
        })
        .collect();
    made_up.corrections.days = u16::MAX;
    made_up.corrections.gone = (0..70_000).collect();
    let review = everything(&[made_up]);
    let first = &review.adherence[0];
    assert_eq!(first.stops.stopped, u16::MAX);
    assert_eq!(first.stops.after, [(Share { done: u32::MAX, of: u32::MAX }, u16::MAX)]);
    assert_eq!((first.extra.runs, first.slots.partly), (70_000, 32_768));
    assert_eq!(review.corrected, 70_000 + u32::from(u16::MAX));
}

/// The card on a text.
fn card(text: &str) -> Card {
    let bytes = format::card::from_text(text).expect("a card");
    format::card::open(&bytes).expect("a card").into_card_after_checking_the_signature()
}

/// Seals a summary as somebody who has this card.
fn sealed(card: &Card, summary: &Summary) -> Vec<u8> {
    let summary = Summary { plan: card.plan.header.id, ..summary.clone() };
    vault::summary::seal(&summary, &card.pairing_secret, &card.recipient).expect("within the limits")
}

/// The list, and the page and the draft of everybody on it.
fn all_pages(dir: &Path) -> Vec<(String, u16)> {
    let folder = unlocked(dir);
    let list = patients::list(&folder, &at("12-02T08:00")).expect("the list");
    for line in &list.lines {
        assert!(!line.damaged, "{}", line.code);
        reviewing::page(&folder, &at("11-28T08:00"), &line.code).expect("a page");
        drafting::draft(&folder, &at("11-28T08:00"), &line.code).expect("a draft");
    }
    list.lines.into_iter().map(|line| (line.code, line.alarms)).collect()
}

#[test]
fn a_hostile_summary_of_one_patient_shuts_out_nobody() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let hers = card(&cards[0]);
    let mut folder = unlocked(dir.path());
    let mut unknown = empty(7, 65_200, u16::MAX);
    let of_revision = |revision| ItemDay {
        day: DayNumber(u16::MAX),
        item: ItemId(1),
        revision,
        slots: vec![(0, Mark::Partly(Share { done: u32::MAX, of: u32::MAX })), (200, Mark::Done)],
    };
    // Revision 0 is below every card and unknown.
    unknown.days = vec![of_revision(0), of_revision(1), ItemDay { item: ItemId(200), ..of_revision(1) }];
    unknown.alarms = (0..20_000_u32)
        .map(|n| AlarmOn {
            n,
            id: AlarmId(u64::from(n).to_be_bytes()),
            day: DayNumber(65_300),
            trouble: Trouble::ALL[n as usize % Trouble::ALL.len()],
            item: Some(ItemId(n as u8)),
            circumstances: BTreeSet::new(),
        })
        .collect();
    let alarms = |log: u8, first: u32| {
        let mut more = Summary { log: LogId([log; 8]), ..unknown.clone() };
        let ids = (first..).zip(&mut more.alarms);
        ids.for_each(|(n, alarm)| (alarm.n, alarm.id) = (n, AlarmId(u64::from(n).to_be_bytes())));
        more
    };
    for (log, first) in [(7, 0), (8, 20_000), (9, 40_000), (10, 60_000)] {
        let outcome = receive(&mut folder, &sealed(&hers, &alarms(log, first)));
        assert!(!matches!(outcome, Outcome::Refused(_)), "{outcome:?}");
    }
    let outcome = receive(&mut folder, &summary(&dir.path().join("other"), &cards[1]));
    assert_eq!(outcome, Outcome::New { code: "K18".into(), days: 1 });
    drop(folder);
    assert_eq!(all_pages(dir.path()), [("K17".to_owned(), u16::MAX), ("K18".to_owned(), 0)]);
}

#[test]
fn nobody_sends_what_only_the_clinic_enters_from_paper() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let cards = two_patients(dir.path());
    let hers = card(&cards[0]);
    let mut folder = unlocked(dir.path());
    let own = Summary { log: LogId::PAPER, ..empty(1, 0, 0) };
    assert_eq!(receive(&mut folder, &sealed(&hers, &own)), Outcome::Refused(Failure::SummaryDamaged));
    let part = FormerPart { log: LogId::PAPER, entries: 1, runs: 0, until: DayNumber(0) };
    let former = Summary { former: vec![part], ..empty(1, 0, 0) };
    assert_eq!(receive(&mut folder, &sealed(&hers, &former)), Outcome::Refused(Failure::SummaryDamaged));
}
