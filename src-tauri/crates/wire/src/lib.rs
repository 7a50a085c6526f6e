//! What crosses between window and shell: each command's name, argument, result and error, declared once.
//!
//! Both sides compile against this crate, so that a command's types cannot drift apart; [`COMMANDS`] lists every name, and a
//! test of the shell compares it with the app manifest and the handlers. Values cross as JSON.
#![forbid(unsafe_code)]

pub mod clinic;
pub mod failure;
pub mod house;
pub mod own;
pub mod patient;

pub use failure::Failure;

use serde::Serialize;
use serde::de::DeserializeOwned;

/// One thing that the window may ask of the shell.
pub trait Command {
    /// The name under which the window calls it.
    const NAME: &'static str;
    /// What the window sends; always under the single key `args`.
    type Args: Serialize + DeserializeOwned;
    /// What comes back when it worked.
    type Reply: Serialize + DeserializeOwned;
}

macro_rules! commands {
    ($($(#[$doc:meta])* $module:ident::$name:ident = $text:literal ($args:ty) -> $reply:ty;)*) => {
        /// Every command's name.
        pub const COMMANDS: &[&str] = &[$($text),*];

        $(
            impl Command for $module::$name {
                const NAME: &'static str = $text;
                type Args = $args;
                type Reply = $reply;
            }
        )*
    };
}

use clinic::{
    AddPatient, AskIssue, AskKeep, AskReceive, ClinicName, IssuedCard, Passphrase, PatientCode, PatientLine, PlanDraft,
    Receipt, ReviewPage,
};
use exercises::ask::Question;
use exercises::catalogue::Exercise;
use exercises::plan::check::Problem;
use exercises::summary::Summary;
use exercises::sway::Sample;
use exercises::today::Today;
use house::{Around, RoleChoice, Situation};
use own::{AtLogin, EraseAsk, Leaving, MeetingAsk, QuietTimes, Reminders, Stay};
use patient::{
    Answer, CardPreview, CardSource, CorrectAsk, CorrectPage, Excusing, LeavingOut, LookBack, PlanPage, RecordPage,
    RunScript, Saved, SealAsk, SlotAsk, TakeAsk, TroubleAsk,
};

commands! {
    house::Situate = "situation" (()) -> Situation;
    house::ChooseRole = "choose_role" (RoleChoice) -> Situation;
    house::LookAround = "look_around" (Around) -> Situation;
    house::ShowCatalogue = "catalogue" (()) -> Vec<Exercise>;

    patient::ReadCard = "read_card" (CardSource) -> CardPreview;
    patient::TakeCard = "take_card" (TakeAsk) -> Today;
    patient::ShowToday = "today" (()) -> Today;
    patient::ShowPlan = "plan" (()) -> Vec<PlanPage>;
    patient::Begin = "begin" (patient::BeginAsk) -> RunScript;
    patient::Checkpoint = "checkpoint" (patient::RunSnapshot) -> Vec<Question>;
    patient::KeepSensed = "keep_sensed" (patient::SensedTrial) -> ();
    patient::Replay = "replay" (()) -> Vec<Vec<Sample>>;
    patient::PutOff = "put_off" (SlotAsk) -> Today;
    patient::LeaveOut = "leave_out" (LeavingOut) -> Today;
    patient::DidIt = "did_it" (SlotAsk) -> Today;
    patient::Excuse = "excuse" (Excusing) -> Today;
    patient::GiveAnswer = "answer" (Answer) -> Today;
    patient::RaiseTrouble = "trouble" (TroubleAsk) -> Today;
    patient::ShowRecord = "record" (()) -> Vec<RecordPage>;
    patient::PreviewSummary = "preview_summary" (SealAsk) -> Summary;
    patient::SealSummary = "seal_summary" (SealAsk) -> Saved;
    patient::ShowFrames = "show_frames" (SealAsk) -> Vec<String>;
    patient::ShowCorrectable = "correctable" (LookBack) -> CorrectPage;
    patient::Correct = "correct" (CorrectAsk) -> CorrectPage;

    own::ShowReminders = "reminders" (()) -> Reminders;
    own::SetReminders = "set_reminders" (QuietTimes) -> Reminders;
    own::Meeting = "meeting" (MeetingAsk) -> Reminders;
    own::ExportMine = "export_mine" (()) -> Vec<Saved>;
    own::ExportCalendar = "export_calendar" (()) -> Saved;
    own::EraseEverything = "erase_everything" (EraseAsk) -> Situation;
    own::ShowStay = "stay" (()) -> Stay;
    own::SetAtLogin = "set_at_login" (AtLogin) -> Stay;
    own::Leave = "leave" (Leaving) -> ();

    clinic::Start = "clinic_start" (ClinicName) -> Situation;
    clinic::Unlock = "clinic_unlock" (Passphrase) -> Situation;
    clinic::ShowPatients = "patients" (()) -> Vec<PatientLine>;
    clinic::Add = "add_patient" (AddPatient) -> Vec<PatientLine>;
    clinic::BeginPlan = "draft" (PatientCode) -> PlanDraft;
    clinic::KeepDraft = "keep_draft" (AskKeep) -> ();
    clinic::DiscardDraft = "discard_draft" (PatientCode) -> PlanDraft;
    clinic::CheckPlan = "check_plan" (AskIssue) -> Vec<Problem>;
    clinic::Issue = "issue" (AskIssue) -> IssuedCard;
    clinic::Receive = "receive" (AskReceive) -> Vec<Receipt>;
    clinic::ShowReview = "review" (PatientCode) -> ReviewPage;
}
