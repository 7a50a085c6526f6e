//! What each trouble pauses, on every item.

use super::*;
use crate::id::LogId;
use crate::plan::Side;
use crate::review::samples::{BALANCE, HOLD, HOLD_DOSE, PHONE, REPS, catalogue, item, plan, rung};

fn alarm(trouble: Trouble, during: Option<ItemId>) -> Alarm {
    Alarm { entry: EntryRef { log: PHONE, n: 5 }, at: Stamp { utc_ms: 0, offset_s: 0 }, trouble, item: during }
}

/// The items of hold, balance and counted movement that are paused.
fn paused(trouble: Trouble, during: Option<ItemId>) -> Vec<ItemId> {
    let (plan, catalogue) = (plan(), catalogue());
    let blocked = plan.prescription.items.iter().filter(|item| blocks(&alarm(trouble, during), item, &plan, &catalogue));
    blocked.map(|item| item.id).collect()
}

#[test]
fn each_choice_pauses_what_it_should() {
    let all = vec![HOLD, BALANCE, REPS];
    for trouble in Trouble::ALL {
        let (during_hold, outside) = match trouble {
            Trouble::HeartOrBreath | Trouble::HeadOrNeck | Trouble::Nerve | Trouble::BladderOrBowel => {
                (all.clone(), all.clone())
            }
            Trouble::Fell | Trouble::NearlyFell => (vec![BALANCE], vec![BALANCE]),
            Trouble::TooMuchPain | Trouble::Other => (vec![HOLD], all.clone()),
        };
        assert_eq!(paused(trouble, Some(HOLD)), during_hold, "{trouble:?} during the hold");
        assert_eq!(paused(trouble, None), outside, "{trouble:?} outside a run");
    }
}

#[test]
fn the_same_exercise_is_paused_on_every_rung_and_item() {
    let mut plan = plan();
    let twin = Item { id: ItemId(9), rung: Some(rung("chair")), ..item(HOLD_DOSE, Side::Neither) };
    plan.prescription.items.push(twin.clone());
    assert!(blocks(&alarm(Trouble::TooMuchPain, Some(HOLD)), &twin, &plan, &catalogue()));
}

#[test]
fn only_the_entry_that_a_card_lists_is_cleared() {
    let (mut plan, catalogue) = (plan(), catalogue());
    let raised = alarm(Trouble::Nerve, None);
    for other in [EntryRef { log: PHONE, n: 6 }, EntryRef { log: LogId([9; 8]), n: 5 }] {
        plan.prescription.cleared = vec![other];
        assert!(blocks(&raised, &plan.prescription.items[0], &plan, &catalogue), "{other:?}");
    }
    plan.prescription.cleared = vec![raised.entry];
    assert!(!blocks(&raised, &plan.prescription.items[0], &plan, &catalogue));
    assert_eq!(blocking(&[raised], &plan.prescription.items[0], &plan, &catalogue), None);
}

#[test]
fn an_unknown_exercise_is_paused_by_a_fall() {
    let mut plan = plan();
    plan.prescription.items[0].exercise = crate::catalogue::ExerciseId::new("unheard-of").expect("an id");
    assert!(blocks(&alarm(Trouble::Fell, None), &plan.prescription.items[0], &plan, &catalogue()));
}

#[test]
fn of_several_alarms_the_gravest_is_shown() {
    let (plan, catalogue) = (plan(), catalogue());
    let alarms =
        [Trouble::TooMuchPain, Trouble::Nerve, Trouble::HeartOrBreath, Trouble::Other].map(|t| alarm(t, Some(HOLD)));
    assert_eq!(
        blocking(&alarms, &plan.prescription.items[0], &plan, &catalogue).map(|alarm| alarm.trouble),
        Some(Trouble::HeartOrBreath)
    );
}
