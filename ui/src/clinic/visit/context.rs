//! The state of the page: the patient's visits, and what is being typed.

use exercises::catalogue::PrescriberFlag;
use exercises::plan::{BodySide, Side};
use exercises::score::Score;
use exercises::visit::{Finding, Found, Measured, Moment, last_screening};
use leptos::prelude::*;
use std::collections::BTreeSet;
use wire::clinic::{PatientCode, ReviewPage, ShowReview};
use wire::visiting::{NoteFinding, NoteRequest, VisitPage};
use words::Words;

use crate::clinic::context::ClinicContext;

/// The kinds of measures, in the order in which they are offered.
pub const KINDS: [&str; 6] = ["pain", "motion", "stance", "chair-rise", "grip", "other"];

/// What is being typed. The value of a choice is the variant's name in the code, or empty if nothing is chosen.
#[derive(Clone, Copy)]
pub struct Forms {
    pub region: RwSignal<String>,
    pub side: RwSignal<String>,
    pub score: RwSignal<String>,
    pub line: RwSignal<String>,
    pub change: RwSignal<String>,
    pub words: RwSignal<String>,
    pub kind: RwSignal<String>,
    pub movement: RwSignal<String>,
    pub unit: RwSignal<String>,
    pub leg: RwSignal<String>,
    pub moment: RwSignal<String>,
    pub surface: RwSignal<String>,
    pub eyes: RwSignal<String>,
    pub results: RwSignal<String>,
    pub flags: RwSignal<BTreeSet<PrescriberFlag>>,
    pub fell: RwSignal<bool>,
    pub note: RwSignal<String>,
    pub item: RwSignal<String>,
    pub reason: RwSignal<String>,
}

/// The state of the page.
#[derive(Clone, Copy)]
pub struct VisitContext {
    /// The clinic's side.
    pub clinic: ClinicContext,
    /// The patient's visits.
    pub page: RwSignal<VisitPage>,
    /// The review, for the names of items and what was proposed; `None` until the shell has answered. Without a plan, its `plan` is `None`.
    pub review: RwSignal<Option<ReviewPage>>,
    /// The number of the finding that is being corrected.
    pub correcting: RwSignal<Option<u32>>,
    /// What is being typed.
    pub forms: Forms,
}

impl VisitContext {
    /// The state at the beginning. What held at the last screening is ticked; what only the clinician knows is chosen by nobody.
    pub fn new(clinic: ClinicContext, page: VisitPage) -> VisitContext {
        let text = |text: &str| RwSignal::new(text.to_owned());
        let fell = last_screening(&page.visits).is_some_and(|(_, screening)| screening.fell);
        let forms = Forms {
            region: text(""),
            side: text("Neither"),
            score: text(""),
            line: text(""),
            change: text(""),
            words: text(""),
            kind: text(KINDS[0]),
            movement: text(""),
            unit: text(""),
            leg: text(""),
            moment: text(""),
            surface: text("Firm"),
            eyes: text("Open"),
            results: text(""),
            flags: RwSignal::new(page.flags.clone()),
            fell: RwSignal::new(fell),
            note: text(""),
            item: text(""),
            reason: text(""),
        };
        let code = page.code.clone();
        let context = VisitContext {
            clinic,
            page: RwSignal::new(page),
            review: RwSignal::new(None),
            correcting: RwSignal::new(None),
            forms,
        };
        clinic.app.query::<ShowReview>(PatientCode { code }, move |review| {
            // The page may be gone by then.
            let _ = context.review.try_set(Some(review));
        });
        context
    }

    /// The context of this page.
    pub fn current() -> VisitContext {
        expect_context()
    }

    /// The texts.
    pub fn words(self) -> Words {
        self.clinic.app.words()
    }

    /// Notes a finding, in the place of the one that is being corrected. `done` clears what was typed.
    pub fn note(self, finding: Finding, done: impl FnOnce() + 'static) {
        let replaces = self.correcting.get_untracked();
        self.send(replaces, Some(finding), done);
    }

    /// Takes a finding back.
    pub fn take_back(self, n: u32) {
        self.send(Some(n), None, || {});
    }

    fn send(self, replaces: Option<u32>, finding: Option<Finding>, done: impl FnOnce() + 'static) {
        let code = self.page.with_untracked(|page| page.code.clone());
        self.clinic.app.request::<NoteFinding>(NoteRequest { code, replaces, finding }, move |page| {
            self.page.set(page);
            self.correcting.set(None);
            done();
        });
    }

    /// Puts a finding into its section, to be corrected there.
    pub fn correct(self, found: &Found) {
        let forms = self.forms;
        self.correcting.set(Some(found.n));
        match &found.finding {
            Finding::Complaint(one) => {
                forms.region.set(format!("{:?}", one.region));
                forms.side.set(format!("{:?}", one.side));
                forms.score.set(one.score.to_string());
                forms.line.set(one.line.clone());
            }
            Finding::Change(one) => {
                forms.change.set(one.score.to_string());
                forms.words.set(one.words.clone());
            }
            Finding::Measure(one) => self.correct_measure(one),
            Finding::Screening(one) => {
                forms.flags.set(one.flags.clone());
                forms.fell.set(one.fell);
            }
            Finding::Note(note) => forms.note.set(note.clone()),
            Finding::Overridden(one) => {
                forms.item.set(one.item.0.to_string());
                forms.reason.set(one.reason.clone());
            }
        }
    }

    fn correct_measure(self, measure: &exercises::visit::Measure) {
        let forms = self.forms;
        let (kind, movement, unit) = match &measure.what {
            Measured::Pain { movement } => ("pain", movement.as_str(), ""),
            Measured::Motion { movement } => ("motion", movement.as_str(), ""),
            Measured::Grip => ("grip", "", ""),
            Measured::ChairRise => ("chair-rise", "", ""),
            Measured::Stance { surface, eyes } => {
                forms.surface.set(format!("{surface:?}"));
                forms.eyes.set(format!("{eyes:?}"));
                ("stance", "", "")
            }
            Measured::Other { name, unit } => ("other", name.as_str(), unit.as_str()),
        };
        forms.kind.set(kind.to_owned());
        forms.movement.set(movement.to_owned());
        forms.unit.set(unit.to_owned());
        forms.leg.set(measure.side.map(|side| format!("{side:?}")).unwrap_or_default());
        forms.moment.set(format!("{:?}", measure.moment));
        let words = self.words();
        let results = measure.tenths.iter().map(|tenths| words.shown(words.number(f64::from(*tenths) / 10.0)));
        forms.results.set(results.collect::<Vec<_>>().join(" "));
    }
}

/// The value whose name in the code is `chosen`.
pub fn chosen<T: Copy + std::fmt::Debug>(all: &[T], chosen: &str) -> Option<T> {
    all.iter().copied().find(|one| format!("{one:?}") == chosen)
}

/// Options for a choice, by their names in the code.
pub fn options<T: Copy + std::fmt::Debug>(all: &[T], text: impl Fn(T) -> String) -> Vec<(String, String)> {
    all.iter().map(|one| (format!("{one:?}"), text(*one))).collect()
}

/// The sides of a complaint.
pub const SIDES: [Side; 4] = [Side::Neither, Side::Left, Side::Right, Side::Both];
/// The sides of a measure.
pub const LEGS: [BodySide; 2] = [BodySide::Left, BodySide::Right];
/// When something is measured.
pub const MOMENTS: [Moment; 3] = Moment::ALL;

/// The scores from 0 to 10, as options.
pub fn scores() -> Vec<(String, String)> {
    with_none(Score::all().map(|score| (score.to_string(), score.to_string())))
}

/// These options after one that says that nothing is chosen.
pub fn with_none(options: impl IntoIterator<Item = (String, String)>) -> Vec<(String, String)> {
    std::iter::once((String::new(), "–".to_owned())).chain(options).collect()
}
