//! What next, item by item.

use crate::names::name;
use exercises::catalogue::Quantity;
use exercises::plan::Load;
use exercises::suggest::{Ask, HalfOfDay, Hindrance, Proposal, Reason, Reduction, Step, Suggestion};
use serde_json::{Value, json};

pub(super) fn suggestion(suggestion: &Suggestion) -> Value {
    let (proposal, change) = match &suggestion.proposal {
        Proposal::Talk => ("talk", None),
        Proposal::Ease(change) => ("ease", Some(step(change))),
        Proposal::Reduce(less) => ("reduce", Some(reduction(less))),
        Proposal::Progress(change) => ("progress", Some(step(change))),
        Proposal::Keep => ("keep", None),
    };
    json!({
        "item": suggestion.item.0,
        "proposal": proposal,
        "step": change,
        "reasons": suggestion.reasons.iter().map(reason).collect::<Vec<_>>(),
        "ask": suggestion.ask.iter().map(|ask| self::ask(*ask)).collect::<Vec<_>>(),
    })
}

fn ask(ask: Ask) -> &'static str {
    match ask {
        Ask::Pain => "pain",
        Ask::Reason => "reason",
    }
}

/// "hold +5 s", "level cushion-open".
fn step(step: &Step) -> String {
    match step {
        Step::Rung { to, .. } => format!("level {to}"),
        Step::Load { to: Load::Weight(weight), .. } => format!("load {} kg", weight.kilograms()),
        Step::Load { to: Load::Band(band), .. } => format!("load {} band", name(band)),
        Step::Change { quantity, by } => {
            let (what, unit) = quantity_name(*quantity);
            format!("{what} {by:+}{unit}")
        }
    }
}

/// The name of a quantity, and its unit after a number.
fn quantity_name(quantity: Quantity) -> (&'static str, &'static str) {
    match quantity {
        Quantity::HoldSeconds => ("hold", " s"),
        Quantity::StretchSeconds => ("stretch", " s"),
        Quantity::ActivityMinutes | Quantity::BreathMinutes | Quantity::CareMinutes | Quantity::QuotaMinutes => {
            ("minutes", "")
        }
        Quantity::RestSeconds => ("rest", " s"),
        Quantity::TargetSeconds => ("target", " s"),
        Quantity::BeatSeconds => ("seconds", ""),
        Quantity::BeatsPerMinute => ("beats", ""),
        Quantity::Repetitions => ("repetitions", ""),
        Quantity::Sets => ("sets", ""),
        Quantity::Trials => ("trials", ""),
        Quantity::TempoUpSeconds | Quantity::TempoHoldSeconds | Quantity::TempoDownSeconds => ("tempo", " s"),
        _ => ("dose", ""),
    }
}

fn reduction(less: &Reduction) -> String {
    match less {
        Reduction::Half(HalfOfDay::BeforeNoon) => "only before noon".to_owned(),
        Reduction::Half(HalfOfDay::AfterNoon) => "only from noon on".to_owned(),
        Reduction::FewerTimes { from, to } => format!("{to} of {from} a week"),
        Reduction::FewerSlots { from, to } => format!("{to} of {from} a day"),
        Reduction::ShorterDose(change) => step(change),
        Reduction::ShortenOrEnd => "shorter dose or end".to_owned(),
    }
}

fn reason(reason: &Reason) -> String {
    let known = match reason {
        Reason::Given { barrier, .. } => return format!("given-{}", name(barrier)),
        Reason::Alarm { .. } => "alarm",
        Reason::NothingDone { .. } => "nothing-done",
        Reason::AboveLimit { .. } => "above-limit",
        Reason::Unsettled { .. } => "unsettled",
        Reason::TargetMissed { .. } => "target-missed",
        Reason::NearFall { .. } => "near-fall",
        Reason::BalanceFalling => "balance-falling",
        Reason::LittleDone { .. } => "little-done",
        Reason::NoneGiven => "none-given",
        Reason::TargetMet { .. } => "target-met",
        Reason::LowPain { .. } => "low-pain",
        Reason::PainUnknown { .. } => "pain-unknown",
        Reason::ChangedLately { .. } => "changed-lately",
        Reason::FewSessions { .. } => "few-sessions",
        Reason::NotMet => "not-met",
        Reason::PainTooHighToProgress { .. } => "pain-too-high",
        Reason::PainWorse => "pain-worse",
        Reason::AlarmLately { .. } => "alarm-lately",
        Reason::FlareLately { .. } => "flare-lately",
        Reason::Hindered(Hindrance::AtTheTop) => "at-the-top",
        Reason::Hindered(Hindrance::GateClosed) => "gate-closed",
        Reason::Hindered(Hindrance::SoftAndClosed) => "soft-and-closed",
        Reason::Hindered(Hindrance::EyesApart) => "closed-eyes",
        Reason::Hindered(Hindrance::Test) => "test",
        Reason::Hindered(Hindrance::NotStepped) => "not-stepped",
        Reason::Hindered(Hindrance::ByCalendar) => "by-calendar",
        Reason::Hindered(Hindrance::GoalReached) => "goal-reached",
        Reason::Hindered(Hindrance::AsNeeded) => "as-needed",
        Reason::Hindered(Hindrance::ToCome) => "phase-to-come",
        Reason::Hindered(Hindrance::Over) => "phase-over",
        Reason::Hindered(Hindrance::Unknown) => "unknown-exercise",
    };
    known.to_owned()
}
