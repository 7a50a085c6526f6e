//! What crosses between window and shell: each command's name, argument, result and error, declared once.
//!
//! Both sides compile against this crate, so that a command's types cannot drift apart; [`COMMANDS`] lists every name, and a
//! test of the shell compares it with the app manifest and the handlers. Values cross as JSON.
#![forbid(unsafe_code)]

pub mod app;
pub mod clinic;
pub mod device;
pub mod failure;
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

use app::{AppState, LocaleRequest, RoleRequest, SampleRequest};
use clinic::{
    AddPatientRequest, AskKeep, IssueRequest, IssuedCard, Passphrase, PatientCode, PatientLine, PlanDraft, Receipt,
    ReceiveRequest, ReviewPage, StartClinicRequest,
};
use device::{AtLoginRequest, BackgroundState, EraseRequest, Leaving, MeetingRequest, QuietTimesRequest, Reminders};
use exercises::catalogue::Exercise;
use exercises::plan::check::Problem;
use exercises::questions::Question;
use exercises::summary::Summary;
use exercises::sway::Sample;
use exercises::today::Today;
use patient::{
    CardPreview, CardSource, CorrectPage, CorrectRequest, CorrectableRequest, DaysOffRequest, PlanPage, QuestionAnswer,
    RecordPage, RunScript, Saved, SealRequest, SkipRequest, SlotRequest, TakeCardRequest, TroubleRequest,
};

commands! {
    app::ShowAppState = "app_state" (()) -> AppState;
    app::ChooseRole = "choose_role" (RoleRequest) -> AppState;
    app::ShowSample = "show_sample" (SampleRequest) -> AppState;
    app::ChooseLocale = "choose_locale" (LocaleRequest) -> AppState;
    app::ShowDataFolder = "data_folder" (()) -> String;
    app::ShowCatalogue = "catalogue" (()) -> Vec<Exercise>;

    patient::ReadCard = "read_card" (CardSource) -> CardPreview;
    patient::TakeCard = "take_card" (TakeCardRequest) -> Today;
    patient::ShowToday = "today" (()) -> Today;
    patient::ShowPlan = "plan" (()) -> Vec<PlanPage>;
    patient::Begin = "begin" (patient::BeginRequest) -> RunScript;
    patient::Checkpoint = "checkpoint" (patient::RunSnapshot) -> Vec<Question>;
    patient::SaveSensed = "save_sensed" (patient::SensedTrial) -> ();
    patient::Replay = "replay" (()) -> Vec<Vec<Sample>>;
    patient::PutOff = "put_off" (SlotRequest) -> Today;
    patient::SkipSlot = "skip_slot" (SkipRequest) -> Today;
    patient::DidIt = "did_it" (SlotRequest) -> Today;
    patient::TakeDaysOff = "take_days_off" (DaysOffRequest) -> Today;
    patient::GiveAnswer = "answer" (QuestionAnswer) -> Today;
    patient::RaiseTrouble = "trouble" (TroubleRequest) -> Today;
    patient::ShowRecord = "record" (()) -> Vec<RecordPage>;
    patient::PreviewSummary = "preview_summary" (SealRequest) -> Summary;
    patient::SealSummary = "seal_summary" (SealRequest) -> Saved;
    patient::ShowFrames = "show_frames" (SealRequest) -> Vec<String>;
    patient::ShowCorrectable = "correctable" (CorrectableRequest) -> CorrectPage;
    patient::Correct = "correct" (CorrectRequest) -> CorrectPage;

    device::ShowReminders = "reminders" (()) -> Reminders;
    device::SetReminders = "set_reminders" (QuietTimesRequest) -> Reminders;
    device::Meeting = "meeting" (MeetingRequest) -> Reminders;
    device::ExportOwnData = "export_own_data" (()) -> Vec<Saved>;
    device::ExportCalendar = "export_calendar" (()) -> Saved;
    device::EraseEverything = "erase_everything" (EraseRequest) -> AppState;
    device::ShowBackgroundState = "background_state" (()) -> BackgroundState;
    device::SetAtLogin = "set_at_login" (AtLoginRequest) -> BackgroundState;
    device::Leave = "leave" (Leaving) -> ();

    clinic::Start = "clinic_start" (StartClinicRequest) -> AppState;
    clinic::Unlock = "clinic_unlock" (Passphrase) -> AppState;
    clinic::ShowPatients = "patients" (()) -> Vec<PatientLine>;
    clinic::Add = "add_patient" (AddPatientRequest) -> Vec<PatientLine>;
    clinic::BeginPlan = "draft" (PatientCode) -> PlanDraft;
    clinic::KeepDraft = "keep_draft" (AskKeep) -> ();
    clinic::DiscardDraft = "discard_draft" (PatientCode) -> PlanDraft;
    clinic::CheckPlan = "check_plan" (IssueRequest) -> Vec<Problem>;
    clinic::Issue = "issue" (IssueRequest) -> IssuedCard;
    clinic::Receive = "receive" (ReceiveRequest) -> Vec<Receipt>;
    clinic::ShowReview = "review" (PatientCode) -> ReviewPage;
}
