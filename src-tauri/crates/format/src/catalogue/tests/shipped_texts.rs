//! What the shipped exercises say for safety, level by level and in every language.
use super::*;
use exercises::catalogue::{Dose, Equipment, Eyes, Grows, Posture, Rung, Texts, View};

fn all() -> Vec<Exercise> {
    embedded().expect("tested above").exercises
}

fn exercise(id: &str) -> Exercise {
    all().into_iter().find(|exercise| exercise.id.as_str() == id).expect("shipped")
}

/// Every level with the exercise that it belongs to.
fn levels() -> Vec<(Exercise, Rung)> {
    let of = |exercise: Exercise| {
        let rungs: Vec<Rung> = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).cloned().collect();
        rungs.into_iter().map(move |rung| (exercise.clone(), rung))
    };
    all().into_iter().flat_map(of).collect()
}

/// The texts at a level.
fn at(exercise: &Exercise, rung: &str, lang: Lang) -> Texts {
    let rung =
        exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).find(|one| one.id.as_str() == rung).expect("a level");
    exercise.level(Some(&rung.id)).texts(lang).expect("texts")
}

fn says(lines: &[String], word: &str) -> bool {
    lines.iter().any(|line| line.contains(word))
}

#[test]
fn every_level_says_in_which_posture_it_is_done() {
    for (exercise, rung) in levels() {
        assert!(exercise.posture_at(Some(&rung.id)).is_some(), "{} {}", exercise.id, rung.id);
    }
}

/// Whether a view shows a hand or a foot by itself.
fn is_close(view: View) -> bool {
    matches!(view, View::Hand | View::Palm | View::Fist | View::Feet | View::Foot)
}

#[test]
fn the_posture_is_the_one_of_the_figure() {
    use exercises::catalogue::Contact::{FarElbow, FarKnee, FarSide, Front, LowBack, NearKnee, Seat, UpperBack};
    for (exercise, rung) in levels() {
        let posture = exercise.posture_at(Some(&rung.id));
        let first = exercise.figure(&rung.id).contacts.first().copied();
        match first {
            Some(Seat) => assert_eq!(posture, Some(Posture::Sitting), "{} {}", exercise.id, rung.id),
            Some(NearKnee | FarKnee) => assert_eq!(posture, Some(Posture::Kneeling), "{} {}", exercise.id, rung.id),
            Some(UpperBack | LowBack | Front | FarSide | FarElbow) => {
                assert_eq!(posture, Some(Posture::Lying), "{} {}", exercise.id, rung.id)
            }
            Some(_) => assert_eq!(posture, Some(Posture::Standing), "{} {}", exercise.id, rung.id),
            None => assert!(is_close(exercise.poses.view), "{}", exercise.id),
        }
    }
}

#[test]
fn no_level_that_is_done_standing_tells_somebody_to_sit() {
    // They are about getting up and sitting down.
    let both_ways = ["sit-to-stand", "chair-rise-30s", "change-position"];
    for (exercise, rung) in levels().into_iter().filter(|(exercise, _)| !both_ways.contains(&exercise.id.as_str())) {
        if exercise.posture_at(Some(&rung.id)) != Some(Posture::Standing) || exercise.id.as_str() == "neck-side-press" {
            continue;
        }
        let texts = at(&exercise, rung.id.as_str(), Lang::En);
        let lines = [&[texts.set_up][..], &texts.steps].concat();
        assert!(!lines.iter().any(|line| line.starts_with("Sit")), "{} {}: {lines:?}", exercise.id, rung.id);
        let texts = at(&exercise, rung.id.as_str(), Lang::Es);
        let lines = [&[texts.set_up][..], &texts.steps].concat();
        assert!(!lines.iter().any(|line| line.starts_with("Siéntese")), "{} {}: {lines:?}", exercise.id, rung.id);
    }
}

#[test]
fn with_closed_eyes_an_attempt_begins_with_them_closed_and_ends_when_they_open() {
    let closed: Vec<_> = levels().into_iter().filter(|(_, rung)| rung.eyes == Some(Eyes::Closed)).collect();
    assert_eq!(closed.len(), 4);
    for (exercise, rung) in closed {
        for (lang, hold, close, tone, open) in [
            (Lang::En, "Hold on", "Close your eyes", "At the starting tone, lift", "Open your eyes"),
            (Lang::Es, "Sujétese", "Cierre los ojos", "la señal de inicio, levante", "Abra los ojos"),
        ] {
            let steps = at(&exercise, rung.id.as_str(), lang).steps;
            let place = |word: &str| {
                steps.iter().position(|step| step.contains(word)).unwrap_or_else(|| panic!("{word}: {steps:?}"))
            };
            let order = [place(hold), place(close), place(tone), steps.len() - 1];
            assert!(order.is_sorted_by(|one, next| one < next), "{} {}: {steps:?}", exercise.id, rung.id);
            assert!(steps[order[3]].starts_with(open), "opening the eyes ends it: {steps:?}");
            assert!(
                !says(&[rung.texts[&lang].change.clone()], "first") && !says(&[rung.texts[&lang].change.clone()], "primero")
            );
        }
    }
}

#[test]
fn the_hook_of_the_fingers_never_goes_on_into_a_fist() {
    let glides = exercise("finger-glides");
    for (lang, fist, stop) in
        [(Lang::En, "full fist", "Do not go on into a fist"), (Lang::Es, "por completo", "No siga hasta cerrar el puño")]
    {
        let steps = at(&glides, "hook", lang).steps;
        assert!(!says(&steps, fist) && says(&steps, stop), "{steps:?}");
        assert!(says(&at(&glides, "hook-fist", lang).steps, fist));
    }
    let level = |grows: Grows| grows == Grows::Level;
    assert!(!glides.grows().into_iter().any(level), "only the clinician goes on to the fist");
}

#[test]
fn feet_together_does_not_ask_for_a_foot_in_front() {
    let stand = exercise("heel-to-toe-stand");
    for (lang, front) in [(Lang::En, "foot in front"), (Lang::Es, "pie de delante")] {
        let texts = at(&stand, "feet-together", lang);
        assert!(!texts.set_up.contains(front) && !says(&texts.steps, "front") && !says(&texts.steps, "delante"));
        assert!(at(&stand, "half-step", lang).set_up.contains(front));
    }
    let usual = stand.level(stand.first_rung().map(|rung| &rung.id)).dose();
    assert!(usual.parts() < stand.dose.parts(), "fewer attempts, since both sides do the same");
}

#[test]
fn lifting_the_toes_while_standing_has_a_support_and_a_floor_that_does_not_slip() {
    let lift = exercise("toe-lift");
    let rung = lift.ladders[0].rungs[1].id.clone();
    assert!(lift.level(Some(&rung)).equipment().contains(&Equipment::SturdyShoes));
    for (lang, floor, support) in [(Lang::En, "does not slip", "support"), (Lang::Es, "no resbale", "apoyo firme")] {
        let texts = at(&lift, "standing", lang);
        assert!(texts.set_up.contains(floor) && texts.set_up.contains(support), "{}", texts.set_up);
        assert!(texts.cautions.iter().any(|line| line.contains(floor) && line.contains(support)));
    }
}

#[test]
fn the_nod_starts_below_its_usual_most_and_the_head_never_becomes_weightless() {
    let nod = exercise("chin-nod-lying");
    let Dose::Hold { repetitions, hold_s, .. } = nod.dose else { panic!("a hold") };
    assert!(repetitions < 10 && hold_s < 10);
    let most = nod.step_rules.iter().filter_map(|rule| match rule.grows {
        Grows::Dose(step) => Some(step.most),
        Grows::Level => None,
    });
    assert!(most.max() == Some(10));
    let light = |lang| nod.ladders[0].rungs[1].texts[&lang].change.clone();
    assert!(!light(Lang::En).contains("weightless") && !light(Lang::Es).contains("casi no pesa"));
}

#[test]
fn the_leg_is_lowered_no_further_than_the_hip_onto_a_pillow() {
    let lift = exercise("side-lying-leg-lift");
    assert!(lift.equipment.contains(&Equipment::Pillow));
    assert!(lift.texts[&Lang::En].set_up.contains("second pillow between the knees"));
    assert!(lift.texts[&Lang::Es].set_up.contains("otra almohada entre las rodillas"));
    assert!(
        says(&lift.texts[&Lang::En].steps, "no lower than the hip")
            && says(&lift.texts[&Lang::Es].steps, "no más abajo que la cadera")
    );
}

#[test]
fn a_heel_raise_that_is_worse_the_next_morning_is_never_called_normal() {
    let raise = exercise("heel-raise");
    for (lang, normal, worse) in [(Lang::En, "normal", "worse the next morning"), (Lang::Es, "normal", "peores")] {
        assert!(!says(&raise.texts[&lang].cautions, normal) && says(&raise.texts[&lang].cautions, worse));
    }
    assert!(raise.ladders[1].rungs.iter().all(|rung| rung.side == Some(Sidedness::EachSide)), "levels on one leg");
}

#[test]
fn getting_up_is_made_harder_by_the_seat_and_has_a_support_in_front() {
    let up = exercise("sit-to-stand");
    let ids = |ladder: usize| up.ladders[ladder].rungs.iter().map(|rung| rung.id.as_str()).collect::<Vec<_>>();
    assert_eq!(ids(0), ["seat-high", "seat-usual", "seat-low"]);
    assert_eq!(ids(1), ["hands-push", "arms-forward", "arms-crossed"], "arms forward is the easier of the two");
    assert!(
        up.texts[&Lang::En].set_up.contains("support in front")
            && up.texts[&Lang::Es].set_up.contains("delante un mueble firme")
    );
}

#[test]
fn dizziness_is_apart_from_what_needs_help_at_once() {
    for exercise in all() {
        for (lang, dizzy, urgent) in
            [(Lang::En, "izziness", "get medical help now"), (Lang::Es, "Mareo", "busque atención médica urgente")]
        {
            let lines = &exercise.texts[&lang].stop_signs;
            let lumped = lines.iter().find(|line| {
                let first = line.split([':', '.']).next().unwrap_or_default();
                first.contains(dizzy)
                    && line.ends_with(&format!("{urgent}."))
                    && !line.contains("señales de arriba")
                    && !line.contains("signs above")
            });
            assert_eq!(lumped, None, "{}", exercise.id);
        }
    }
    for id in ["sit-tall-chin-back", "chin-nod-lying", "neck-side-press"] {
        assert!(says(&exercise(id).texts[&Lang::En].stop_signs, "Double vision"), "{id}: the emergency is still there");
        assert!(says(&exercise(id).texts[&Lang::En].stop_signs, "Dizziness or light-headedness: stop"), "{id}");
    }
}

#[test]
fn what_else_was_unclear_or_missing_is_said() {
    let wall = exercise("wall-sit");
    assert!(!says(&wall.texts[&Lang::En].steps, "above the ankles"), "this is only so with a deep bend");
    assert!(
        wall.ladders[0].rungs[0].texts[&Lang::En].change.contains("fingers' width"),
        "degrees mean nothing to most people"
    );
    let set = exercise("shoulder-blade-set");
    assert!(
        !says(&set.texts[&Lang::En].steps, "back pockets") && says(&set.texts[&Lang::En].cautions, "shoulders hang low")
    );
    let bridge = exercise("hip-bridge");
    assert!(says(&bridge.texts[&Lang::En].cautions, "hernia") && says(&bridge.texts[&Lang::Es].cautions, "hernia"));
    let press = exercise("neck-side-press");
    assert!(
        press.texts[&Lang::En].set_up.contains("wall") && press.texts[&Lang::Es].set_up.contains("pared"),
        "arms that cannot rise"
    );
    let stand = exercise("one-leg-stand");
    assert!(stand.texts[&Lang::En].set_up.contains("barefoot") && !says(&stand.texts[&Lang::En].cautions, "shoes"));
    assert!(
        stand.texts[&Lang::Es].set_up.contains("sin calzado") && !says(&stand.texts[&Lang::Es].cautions, "calzado firme")
    );
}
