//! `carryover clinic issue` and `carryover clinic card`.

use crate::Done;
use crate::facts;
use crate::out::Out;
use actions::clinic::{drafting, issuing};
use actions::{DataFolder, Moment, platform};
use serde_json::json;
use std::path::Path;
use wire::Failure;
use wire::clinic::{Handover, IssueRequest, IssuedCard, PlanCheck};
use words::Key;

/// Issues a plan, or without a folder only says whether it could be issued. That a card is too large for a code is said first.
pub fn issue(
    folder: &mut DataFolder,
    moment: &Moment,
    code: &str,
    plan: &Path,
    out_folder: Option<&Path>,
    out: &mut Out,
) -> Done {
    let name = plan.display().to_string();
    let bytes = platform::read(plan, format::plan_file::MAX_BYTES)?;
    let read = format::text(&bytes).and_then(|text| format::plan_file::read(text, moment.now.date()));
    let prescription = read.map_err(platform::not_understood(&name))?;
    facts::name_concerns(folder, code, &prescription, out)?;
    let PlanCheck { problems, handover } = drafting::check(folder, moment, code, &prescription)?;
    match handover {
        Some(Handover::Codes { n }) => out.note(&out.words.issue_as_codes(n)),
        Some(Handover::File) => out.note(out.words.text(Key::IssueAsFile)),
        _ => {}
    }
    let Some(out_folder) = out_folder else {
        return match handover {
            None => Err(Failure::PlanRefused(problems)),
            Some(Handover::TooLarge) => Err(Failure::PlanTooLarge),
            Some(Handover::File) => Ok(true),
            Some(Handover::Codes { n }) => {
                out.say(|words| words.issue_codes(n), || json!({ "codes": n }));
                Ok(true)
            }
            Some(Handover::Code { version }) => {
                out.say(|words| words.text(Key::IssueAsCode).to_owned(), || json!({ "version": version }));
                Ok(true)
            }
        };
    };
    let issued = issuing::issue(folder, moment, &IssueRequest { code: code.to_owned(), prescription }, Some(out_folder))?;
    show_card(&issued, out)
}

/// Prints the files of a card.
pub fn show_card(issued: &IssuedCard<String>, out: &mut Out) -> Done {
    out.say(
        |_| issued.files.join("\n"),
        || {
            json!({ "plan": issued.plan.header.id.to_string(), "revision": issued.plan.header.revision, "version": issued.version,
                   "codes": issued.codes.len(),
                   "fingerprint": issued.fingerprint, "files": issued.files })
        },
    );
    Ok(true)
}
