//! The demo's story in the real windows: one patient from the first card to the next one, in a dozen screens.

use crate::{Desktop, Opening, Window, carryover, wait};
use exercises::plan::Risk;
use std::path::{Path, PathBuf};
use std::process::Command;
use strum::VariantArray;
use words::{Key, Words};

/// The patient of the story; one of the demo's patients.
const CODE: &str = "A11";
/// The exercises of the first plan, as in the demo's plan for this patient.
const HOLD: &str = "Sit tall, chin back";
const BALANCE: &str = "Stand on one leg";

/// A part of the story, shown by one screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, VariantArray)]
pub enum Part {
    /// The clinician edits the first plan.
    FirstPlan,
    /// Its card, issued, on the clinic's screen.
    PlanCard,
    /// The patient's phone has read the card.
    CardTaken,
    /// The page Now.
    Now,
    /// A guided hold, half-way.
    GuidedHold,
    /// A balance trial, running.
    BalanceTrial,
    /// The choice of what is wrong.
    SomethingIsWrong,
    /// Six weeks on the patient's Record page.
    Record,
    /// The contents of the summary for the visit.
    Summary,
    /// The clinic has received the summary.
    SummaryReceived,
    /// The clinic's review of the six weeks.
    Review,
    /// The next plan's card.
    NextPlanCard,
}

impl Part {
    /// All, in the story's order.
    pub const ALL: &[Part] = Part::VARIANTS;

    /// Its number in the story, from 1, and a plain name: the name of its file.
    pub fn file_name(self) -> String {
        let name = match self {
            Part::FirstPlan => "first-plan",
            Part::PlanCard => "plan-card",
            Part::CardTaken => "card-taken",
            Part::Now => "now",
            Part::GuidedHold => "guided-hold",
            Part::BalanceTrial => "balance-trial",
            Part::SomethingIsWrong => "something-is-wrong",
            Part::Record => "record",
            Part::Summary => "summary-for-the-visit",
            Part::SummaryReceived => "summary-received",
            Part::Review => "review",
            Part::NextPlanCard => "next-plan-card",
        };
        format!("{:02}-{name}.png", self as usize + 1)
    }

    /// Whether it is shown in the clinic's window and not in the patient's.
    pub fn at_the_clinic(self) -> bool {
        use Part::{FirstPlan, NextPlanCard, PlanCard, Review, SummaryReceived};
        matches!(self, FirstPlan | PlanCard | SummaryReceived | Review | NextPlanCard)
    }
}

/// The settings of the story, and what is done at each of its parts.
#[derive(Clone)]
pub struct Story<'a> {
    /// The folder with the demo's data folders; they are not changed.
    pub homes: PathBuf,
    /// The moment of the first visit, RFC 3339.
    pub first: String,
    /// The moment at which the windows are opened for the rest, RFC 3339.
    pub at: String,
    /// The zone of all windows; `None` for this machine's.
    pub zone: Option<String>,
    /// Width and height of the patient's page in CSS pixels.
    pub phone: (u32, u32),
    /// Width and height of the clinic's page in CSS pixels.
    pub desk: (u32, u32),
    /// Whether the desktop is set to dark.
    pub dark: bool,
    /// Called at each part.
    pub at_part: &'a dyn Fn(&Window, Part),
}

impl Story<'_> {
    /// Goes through the whole story.
    pub fn whole(&self) {
        let desktop = Desktop::new();
        let card = self.first_visit(&desktop);
        self.card_taken(&desktop, &card);
        let summary = self.at_home(&desktop);
        self.next_visit(&desktop, &summary);
    }

    /// Writes the first plan and issues its card; returns the path of the card's picture.
    fn first_visit(&self, desktop: &Desktop) -> PathBuf {
        let passphrase = self.homes.join("passphrase.txt");
        let at_clinic = |arguments: &[&str]| {
            let home = desktop.path("first-visit");
            let start = ["--home", plain(&home), "--at", &self.first, "clinic", "--passphrase-file", plain(&passphrase)];
            carryover(&[&start[..], arguments].concat())
        };
        at_clinic(&["start", "--name", "Ropewalk Practice"]);
        at_clinic(&["add", CODE]);
        let window = self.begin(desktop.open("first-visit").at(&self.first), self.desk);
        self.unlock(&window);
        window.press(&format!("{}: {CODE}", say(Key::PlanFirst)));
        window.see(say(Key::IssueCard));
        self.compose(&window);
        (self.at_part)(&window, Part::FirstPlan);
        window.press(say(Key::IssueCard));
        window.see(say(Key::IssuedWarning));
        (self.at_part)(&window, Part::PlanCard);
        file_named(&desktop.path(""), "plan-card", "card.png")
    }

    /// Writes the part of the plan that the patient's pages show: exercises, complaint, and what balance at home requires.
    fn compose(&self, window: &Window) {
        for name in [HOLD, BALANCE] {
            window.press(&words().catalogue_add(name));
        }
        // The first such field on the page belongs to the hold.
        window.set(say(Key::Level), "chair");
        window.choose(say(Key::SideLabel), say(Key::Left));
        window.choose(say(Key::AgeBand), &words().age_between(40, 49));
        self.fit_for_balance(window, "16.5");
        window.press_part(say(Key::Complaints));
        window.press(say(Key::ComplaintAdd));
        window.type_into(say(Key::ComplaintName), "upper back");
        window.choose(say(Key::PainToday), "5");
        // The visit at the end of the demo's history.
        window.set(say(Key::DateLabel), &self.at[..10]);
        window.see(say(Key::IssueReady));
        window.ask("scrollTo(0, 0); document.querySelector('.screen').scrollTo(0, 0); return true", &[]);
    }

    /// Ticks the risks that are absent, and enters today's seconds on the left leg.
    fn fit_for_balance(&self, window: &Window, seconds: &str) {
        for risk in Risk::ALL.into_iter().filter(|risk| *risk != Risk::SevereVisualLoss) {
            window.press(words().risk(risk));
        }
        window.type_into(say(Key::LeftLeg), seconds);
    }

    /// A new phone reads the card.
    fn card_taken(&self, desktop: &Desktop, card: &Path) {
        let window = self.begin(desktop.open("new").at(&self.first), self.phone);
        window.welcomed();
        window.press(say(Key::RolePatient));
        window.choose_file(say(Key::CardFile), card);
        window.see(say(Key::StartPlan));
        (self.at_part)(&window, Part::CardTaken);
    }

    /// The patient's own six weeks, after a hold and a balance trial on the day of the visit; returns the path of the sealed
    /// summary.
    fn at_home(&self, desktop: &Desktop) -> PathBuf {
        let window = self.exercises(desktop);
        window.press(say(Key::SomethingWrong));
        window.see(say(Key::WhatIsWrong));
        (self.at_part)(&window, Part::SomethingIsWrong);
        window.press(say(Key::NothingIsWrong));
        window.press(say(Key::PlaceRecord));
        window.see(say(Key::DoneWhen));
        (self.at_part)(&window, Part::Record);
        window.press(say(Key::ForTheVisit));
        window.see(say(Key::SharedTitle));
        (self.at_part)(&window, Part::Summary);
        window.press(say(Key::SaveEncrypted));
        window.see(say(Key::SavedWhat));
        file_named(&desktop.path(""), "summary", "")
    }

    /// Shows Now, a hold and a balance trial, both ended early; returns the window on Now.
    ///
    /// What is due at that moment depends on the weekday, so both are started in the way that works on any day.
    pub fn exercises(&self, desktop: &Desktop) -> Window {
        let window = self.begin(desktop.open_at(&self.copy(desktop, "A11-work")).at(&self.at), self.phone);
        window.see(say(Key::DoOneNow));
        (self.at_part)(&window, Part::Now);
        self.begin_one(&window, HOLD);
        window.see(&words().hold_of(1, 3));
        (self.at_part)(&window, Part::GuidedHold);
        self.stop(&window);
        self.begin_one(&window, BALANCE);
        window.press(say(Key::StartCount));
        window.see(say(Key::PressWhenDown));
        (self.at_part)(&window, Part::BalanceTrial);
        window.touch_anywhere();
        self.stop(&window);
        window
    }

    fn begin_one(&self, window: &Window, name: &str) {
        window.press(say(Key::DoOneNow));
        window.press_part(name);
        // The cautions come only before the first run of an exercise.
        let (cautions, begun) = (say(Key::ReadStart), [say(Key::Stop), say(Key::StartCount)]);
        let asked = wait::until(|| {
            let asked = window.can_press(cautions);
            (asked || begun.iter().any(|words| window.can_press(words))).then_some(asked)
        });
        if asked.unwrap_or_else(|| panic!("{name} does not begin; {}", window.page())) {
            window.press(cautions);
        }
    }

    fn stop(&self, window: &Window) {
        window.press(say(Key::Stop));
        window.see(say(Key::StoppedHere));
        window.press(say(Key::ContinueOn));
        back_to_now(window);
    }

    /// The clinic receives the summary, opens the review, and issues the next card.
    fn next_visit(&self, desktop: &Desktop, summary: &Path) {
        let window = self.begin(desktop.open_at(&self.copy(desktop, "clinic")).at(&self.at), self.desk);
        self.unlock(&window);
        window.choose_file(say(Key::ChooseFiles), summary);
        window.see(&format!("{CODE}: "));
        (self.at_part)(&window, Part::SummaryReceived);
        self.open_review(&window);
        (self.at_part)(&window, Part::Review);
        window.press(say(Key::PlanNext));
        window.see(say(Key::BalanceAtHome));
        window.press(say(Key::AbsentStillTrue));
        window.type_into(say(Key::LeftLeg), "21.5");
        window.see(say(Key::IssueReady));
        window.press(say(Key::IssueCard));
        window.see(say(Key::IssuedWarning));
        (self.at_part)(&window, Part::NextPlanCard);
    }

    /// Opens the review from the list of patients. A press is lost if the page is just reloading the list, as it does after
    /// receiving a summary; a person would press again.
    fn open_review(&self, window: &Window) {
        let opened = wait::until(|| {
            // In the list these buttons also contain the patient's code.
            let opened = window.can_press(say(Key::PlanNext));
            if !opened {
                window.try_press_part(CODE);
            }
            opened.then_some(())
        });
        assert!(opened.is_some(), "the review does not open; {}", window.page());
    }

    fn unlock(&self, window: &Window) {
        let passphrase = std::fs::read_to_string(self.homes.join("passphrase.txt")).expect("the demo has a passphrase");
        window.type_into(say(Key::Passphrase), passphrase.trim());
        window.press(say(Key::ClinicUnlock));
        window.see(say(Key::ReceiveSummaries));
    }

    /// Copies one of the demo's data folders to this desktop.
    fn copy(&self, desktop: &Desktop, home: &str) -> PathBuf {
        let copy = desktop.path(home);
        let copied = Command::new("cp").arg("-r").arg(self.homes.join(home)).arg(&copy).status().expect("cp");
        assert!(copied.success(), "{home} can be copied");
        copy
    }

    fn begin(&self, opening: Opening<'_>, size: (u32, u32)) -> Window {
        let opening = opening.size(size.0, size.1);
        let opening = if let Some(zone) = &self.zone { opening.zone(zone) } else { opening };
        if self.dark { opening.dark().start() } else { opening.start() }
    }
}

/// After a run: leaves the questions unanswered. After a hold they are asked only if it is the last one of the day.
pub(crate) fn back_to_now(window: &Window) {
    let (asked, now) = (say(Key::RatherNotAnswer), say(Key::DoOneNow));
    let there = wait::until(|| {
        if window.can_press(asked) {
            window.press(asked);
        }
        window.can_press(now).then_some(())
    });
    assert!(there.is_some(), "the page Now does not come; {}", window.page());
}

fn words() -> Words {
    Words::new(words::Locale::En)
}

fn say(key: Key) -> &'static str {
    words().text(key)
}

fn plain(path: &Path) -> &str {
    path.to_str().expect("the demo's paths are plain")
}

/// The entry of a folder whose name begins with `begins`, and in it, unless `file` is empty, that file.
fn file_named(folder: &Path, begins: &str, file: &str) -> PathBuf {
    let mut entries = std::fs::read_dir(folder).expect("a folder").filter_map(Result::ok);
    let found = entries.find(|entry| entry.file_name().to_string_lossy().starts_with(begins));
    let found = found.unwrap_or_else(|| panic!("nothing in {} begins with {begins}", folder.display())).path();
    if file.is_empty() { found } else { found.join(file) }
}
