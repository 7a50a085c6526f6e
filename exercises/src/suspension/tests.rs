//! What each alarm suspends, on every item, and until when.

use super::*;
use crate::catalogue::{Catalogue, Kind};
use crate::plan::{Item, Plan, Side};
use crate::review::samples::{BALANCE, HOLD, HOLD_DOSE, REPS, catalogue, item, plan, rung};

fn said(day: i64, trouble: Trouble, item: Option<ItemId>) -> Sign {
    let kind = SignKind::Alarm { place: 0, trouble, circumstances: BTreeSet::new() };
    Sign { day, item, kind }
}

fn within_limit(day: i64, item: ItemId) -> Sign {
    Sign { day, item: Some(item), kind: SignKind::WithinLimit }
}

fn well_again(day: i64) -> Sign {
    Sign { day, item: None, kind: SignKind::WellAgain }
}

/// The items of hold, balance and counted movement that the signs suspend.
fn suspended(signs: &[Sign]) -> Vec<ItemId> {
    let (plan, catalogue) = (plan(), catalogue());
    let all = in_force(signs, None);
    let blocked = plan.prescription.items.iter().filter(|item| blocking(&all, item, &plan, &catalogue).is_some());
    blocked.map(|item| item.id).collect()
}

#[test]
fn what_each_alarm_suspends() {
    let all = vec![HOLD, BALANCE, REPS];
    for trouble in Trouble::ALL {
        let (during_hold, outside) = match trouble {
            Trouble::HeartOrBreath
            | Trouble::HeadOrNeck
            | Trouble::Nerve
            | Trouble::BladderOrBowel
            | Trouble::Limb
            | Trouble::Unwell => (all.clone(), all.clone()),
            // The sample catalogue says of no level that it is done other than standing.
            Trouble::Fell | Trouble::Dizzy => (all.clone(), all.clone()),
            Trouble::TooMuchPain | Trouble::Other => (vec![HOLD], Vec::new()),
            Trouble::NearlyFell | Trouble::PainAboveLimit => (Vec::new(), Vec::new()),
        };
        assert_eq!(suspended(&[said(0, trouble, Some(HOLD))]), during_hold, "{trouble:?} during the hold");
        assert_eq!(suspended(&[said(0, trouble, None)]), outside, "{trouble:?} outside a run");
    }
}

#[test]
fn every_alarm_but_the_programs_own_is_offered() {
    let offered: BTreeSet<Trouble> = Trouble::OFFERED.into_iter().collect();
    let all = Trouble::ALL.into_iter().filter(|trouble| *trouble != Trouble::PainAboveLimit);
    assert_eq!(offered, all.collect());
    assert!(Trouble::OFFERED.is_sorted_by_key(|trouble| !trouble.is_urgent()), "the urgent ones first");
}

#[test]
fn two_ratings_in_a_row_above_the_limit_suspend_the_exercise() {
    let above = |day| said(day, Trouble::PainAboveLimit, Some(HOLD));
    assert_eq!(suspended(&[above(0), above(3)]), [HOLD]);
    assert_eq!(suspended(&[above(0), within_limit(1, HOLD), above(3)]), []);
    assert_eq!(
        suspended(&[above(0), within_limit(1, REPS), above(3)]),
        [HOLD],
        "a rating of another item is none of this one"
    );
    assert_eq!(suspended(&[above(0), said(1, Trouble::PainAboveLimit, Some(REPS))]), []);
}

#[test]
fn a_rating_above_the_limit_stops_the_exercise_for_its_day() {
    let signs = [said(4, Trouble::PainAboveLimit, Some(HOLD))];
    let on = |day| in_force(&signs, Some(day)).into_iter().map(|one| one.suspends).collect::<Vec<_>>();
    assert_eq!((on(4), on(5)), (vec![Suspends::Exercise(HOLD)], Vec::new()));
}

#[test]
fn two_near_falls_within_a_week_count_as_a_fall() {
    let nearly = |day| said(day, Trouble::NearlyFell, Some(BALANCE));
    let found = |signs: &[Sign]| in_force(signs, None).into_iter().map(|one| one.suspends).collect::<Vec<_>>();
    assert_eq!(found(&[nearly(0), nearly(6)]), [Suspends::Standing]);
    assert_eq!(found(&[nearly(0), nearly(7)]), []);
    assert_eq!(
        (eased(&[nearly(0)], BALANCE), eased(&[nearly(0), nearly(9)], BALANCE), eased(&[nearly(0)], HOLD)),
        (1, 2, 0)
    );
}

#[test]
fn a_passing_illness_ends_when_the_person_is_well_again_and_one_with_a_warning_sign_does_not() {
    let ill = said(0, Trouble::Unwell, None);
    assert_eq!(suspended(std::slice::from_ref(&ill)).len(), 3);
    assert_eq!(suspended(&[ill.clone(), well_again(2)]), []);
    assert_eq!(suspended(&[well_again(0), ill]).len(), 3, "said before");
    let circumstances = [Circumstance::SweatsOrWeightLoss].into();
    let kind = SignKind::Alarm { place: 0, trouble: Trouble::Unwell, circumstances };
    let lasting = Sign { day: 0, item: None, kind };
    assert_eq!(suspended(&[lasting, well_again(2)]).len(), 3);
}

#[test]
fn the_same_exercise_is_suspended_on_every_rung_and_item() {
    let mut plan = plan();
    let twin = Item { id: ItemId(9), rung: Some(rung("chair")), ..item(HOLD_DOSE, Side::Neither) };
    plan.prescription.items.push(twin.clone());
    assert!(reaches(&plan, &catalogue(), &[said(0, Trouble::TooMuchPain, Some(HOLD))], &twin));
}

#[test]
fn dizziness_suspends_steady_gaze_also_where_it_is_trained_sitting() {
    let (plan, mut catalogue) = (plan(), catalogue());
    for exercise in &mut catalogue.exercises {
        exercise.posture = Some(Posture::Sitting);
        exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs).for_each(|rung| rung.posture = None);
    }
    let hold = plan.item(HOLD).expect("the hold").clone();
    let dizzy = [said(0, Trouble::Dizzy, Some(HOLD))];
    assert!(!reaches(&plan, &catalogue, &dizzy, &hold), "a hold that is done sitting goes on");
    catalogue.exercises.iter_mut().filter(|one| one.id == hold.exercise).for_each(|one| one.kind = Kind::Beat);
    assert!(reaches(&plan, &catalogue, &dizzy, &hold));
}

#[test]
fn an_unknown_exercise_is_suspended_by_a_fall() {
    let mut plan = plan();
    plan.prescription.items[0].exercise = crate::catalogue::ExerciseId::new("unheard-of").expect("an id");
    let item = plan.prescription.items[0].clone();
    assert!(reaches(&plan, &catalogue(), &[said(0, Trouble::Fell, None)], &item));
}

fn reaches(plan: &Plan, catalogue: &Catalogue, signs: &[Sign], item: &Item) -> bool {
    blocking(&in_force(signs, None), item, plan, catalogue).is_some()
}

#[test]
fn the_gravest_alarm_decides_the_advice() {
    let signs = [
        said(0, Trouble::TooMuchPain, Some(HOLD)),
        said(1, Trouble::Fell, None),
        said(2, Trouble::Nerve, None),
        said(3, Trouble::HeadOrNeck, None),
    ];
    let (plan, catalogue, all) = (plan(), catalogue(), in_force(&signs, None));
    let gravest = |item: &Item| blocking(&all, item, &plan, &catalogue).map(|one| one.trouble);
    assert_eq!(gravest(&plan.prescription.items[0]), Some(Trouble::HeadOrNeck));
}
