//! `carryover clinic close`, `reopen`, `rename` and `plans`.

use crate::Done;
use crate::out::Out;
use actions::clinic::cases;
use actions::{DataFolder, Moment};
use exercises::plan::differ::item_changes;
use serde_json::json;
use wire::cases::{CasePage, RenameRequest};
use words::{Key, Words};

/// Whether the case is open or closed.
pub fn show(page: &CasePage, out: &mut Out) -> Done {
    let said = |words: Words| match exercises::closing::in_force(&page.closings) {
        Some(closing) => words.closing(closing),
        None => words.text(Key::CaseIsOpen).to_owned(),
    };
    out.say(|words| words.named_text(&page.code, &said(words)), || json!({ "code": page.code, "closings": page.closings }));
    Ok(true)
}

/// What is left out stays as it is.
pub fn rename(
    folder: &mut DataFolder,
    moment: &Moment,
    code: &str,
    to: Option<&str>,
    name: Option<String>,
    out: &mut Out,
) -> Done {
    let was = cases::page(folder, moment, code)?;
    let asked =
        RenameRequest { code: code.to_owned(), new_code: to.unwrap_or(&was.code).to_owned(), name: name.or(was.name) };
    let page = cases::rename(folder, moment, &asked)?;
    out.say(|_| page.code.clone(), || json!({ "code": page.code, "was": was.code }));
    Ok(true)
}

/// Each plan with its items, and what is different from the one before.
pub fn plans(page: &CasePage, out: &mut Out) -> Done {
    for (place, plan) in page.plans.iter().enumerate() {
        let before = page.plans.get(place + 1);
        let text = |words: Words| {
            let (header, prescription) = (&plan.header, &plan.prescription);
            let (issued, visit) = (words.date_in_full(header.issued), words.date_in_full(prescription.review));
            let mut lines = vec![words.case_plan_line(header.revision, &issued, &visit)];
            lines.extend(prescription.items.iter().map(|item| format!("  {}", words.issued_item(item, &page.exercises))));
            if let Some(before) = before {
                lines.push(format!("  {}", words.text(Key::CasePlanChanges)));
                let changes = words.plan_changes(before, plan, &page.exercises);
                lines.extend(changes.iter().map(|change| format!("    {change}")));
            }
            lines.join("\n")
        };
        let changes = before.map(|before| item_changes(before, plan).len());
        out.say(text, || json!({ "plan": plan, "changes": changes }));
    }
    if page.plans.is_empty() {
        out.say(|words| words.text(Key::CasePlansNone).to_owned(), || json!({ "plan": null, "changes": null }));
    }
    Ok(true)
}
