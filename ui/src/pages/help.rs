//! Help, as questions and answers.

use leptos::prelude::*;
use wire::app::Role;
use words::Key;

use super::purpose::Purpose;
use crate::shared::AppContext;

/// A question, and the texts that answer it.
type Question = (Key, &'static [Key]);

/// Questions of patients; the most urgent one comes first.
const OF_PATIENTS: [Question; 8] = [
    (Key::HelpAskWrong, &[Key::HelpWrong]),
    (Key::HelpAskWhere, &[Key::HelpNow]),
    (Key::HelpAskStop, &[Key::HelpStop]),
    (Key::HelpAskMissed, &[Key::HelpMissed]),
    (Key::HelpAskSoreness, &[Key::SorenessUsual, Key::SorenessTooMuch]),
    (Key::HelpAskNoReminder, &[Key::RemindersMayFail, Key::RemindersBattery]),
    (Key::HelpAskTwoDevices, &[Key::HelpTwoDevices]),
    (Key::HelpAskNewDevice, &[Key::HelpNewDevice]),
];

/// Questions of clinicians.
const OF_CLINICIANS: [Question; 6] = [
    (Key::HelpAskCard, &[Key::HelpCard]),
    (Key::HelpAskDone, &[Key::HelpDone]),
    (Key::HelpAskAlarm, &[Key::HelpAlarm]),
    (Key::HelpAskAlone, &[Key::HelpAlone]),
    (Key::HelpAskDraft, &[Key::HelpDraft]),
    (
        Key::HelpAskLost,
        &[Key::HelpLostPassphrase, Key::HelpLostComputer, Key::HelpLostBoth, Key::HelpLostStolen, Key::HelpLostRenewed],
    ),
];

/// Questions with their answers, and what the program is for.
#[component]
pub fn Help(role: Role) -> impl IntoView {
    let app = AppContext::current();
    let questions: &[Question] = match role {
        Role::Patient => &OF_PATIENTS,
        Role::Clinic => &OF_CLINICIANS,
    };
    let answered = questions.iter().map(|(question, answer)| {
        let answer = answer.iter().map(|part| view! { <p>{app.text(*part)}</p> }).collect_view();
        view! { <section class="stack-1"><h2>{app.text(*question)}</h2>{answer}</section> }
    });
    view! {
        {answered.collect_view()}
        <section class="stack-2"><h2>{app.text(Key::WelcomeTitle)}</h2><Purpose role=Some(role)/></section>
    }
}
