//! Rules that every shipped exercise follows, beyond those that the reader checks.
use super::*;
use exercises::catalogue::{Dose, Equipment, Exercise, Eyes, Grows, PrescriberFlag, Purpose, Region, Surface, Texts};
use std::collections::BTreeSet;

fn all() -> Vec<Exercise> {
    embedded().expect("tested above").exercises
}

#[test]
fn every_file_of_the_folder_is_embedded_and_named_after_its_exercise() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../../exercises/catalogue");
    let here: BTreeSet<_> = std::fs::read_dir(folder)
        .expect("the folder is in the checkout")
        .map(|entry| entry.expect("an entry").file_name().into_string().expect("a plain name"))
        .collect();
    let names = |files: &Files| std::iter::once(files.name).chain(files.texts.map(|file| file.name)).map(str::to_owned);
    let embedded_names: BTreeSet<_> = FILES.iter().flat_map(names).collect();
    assert_eq!(here, embedded_names);
    for (exercise, files) in all().iter().zip(FILES) {
        assert_eq!(format!("{}.toml", exercise.id), files.name);
        assert_eq!(files.texts.map(|file| file.lang), Lang::ALL);
        assert_eq!(files.texts.map(|file| file.name.to_owned()), Lang::ALL.map(|lang| text_file_name(files.name, lang)));
    }
}

#[test]
fn all_kinds_and_the_five_regions_are_there() {
    let all = all();
    for kind in [Kind::Hold, Kind::Balance, Kind::Reps] {
        assert!(all.iter().any(|exercise| exercise.kind == kind), "{kind:?}");
    }
    for region in [Region::NeckUpperBack, Region::WristHand, Region::Hip, Region::Knee, Region::Ankle] {
        assert!(all.iter().any(|exercise| exercise.region == region), "{region:?}");
    }
    assert!(all.len() >= 9);
}

#[test]
fn names_differ_in_both_languages() {
    for lang in Lang::ALL {
        let names: BTreeSet<_> = all().iter().map(|exercise| exercise.texts[&lang].name.clone()).collect();
        assert_eq!(names.len(), all().len(), "{lang:?}");
    }
}

#[test]
fn default_doses_keep_to_the_usual_range() {
    for (exercise, dose) in all_doses() {
        match dose {
            Dose::Hold { hold_s, rest_s, .. } => {
                assert!((5..=30).contains(&hold_s), "{}: holds of 5 to 30 s", exercise.id);
                assert!(rest_s >= hold_s, "{}: rest at least as long as the hold", exercise.id);
                assert!(dose.work_s() <= 120, "{}: about two minutes of holding at most", exercise.id);
            }
            Dose::Balance { target_s, .. } => assert!(target_s <= 45, "{}", exercise.id),
            Dose::Reps { sets, repetitions, .. } => assert!(sets <= 3 && repetitions <= 15, "{}", exercise.id),
            Dose::Stretch { stretch_s, .. } => {
                assert!(
                    (15..=30).contains(&stretch_s) && dose.work_s() <= 120,
                    "{}: 15 to 30 s, two minutes a side",
                    exercise.id
                );
            }
            Dose::Move { repetitions } => assert!(repetitions <= 20, "{}", exercise.id),
            Dose::Go { minutes, effort } => assert!(minutes <= 30 && effort <= 4, "{}: an easy beginning", exercise.id),
            Dose::Breath { minutes, pace } => {
                assert!(minutes <= 10 && pace.out_s >= pace.in_s, "{}: breathing out is not hurried", exercise.id);
            }
            Dose::Care { minutes } => assert!(minutes <= 15, "{}", exercise.id),
            Dose::Prompt => {}
            Dose::Beat { seconds, per_minute, .. } => assert!(seconds <= 30 && per_minute <= 60, "{}", exercise.id),
            Dose::Quota { minutes: start, step, every_days, goal }
            | Dose::QuotaTimes { times: start, step, every_days, goal } => {
                assert!(start <= 10 && goal <= 30, "{}: begun below what is tolerated", exercise.id);
                assert!(step > 0 && every_days >= 2 && u16::from(step) * 5 <= u16::from(start) * 2, "{}", exercise.id);
            }
            Dose::Count { seconds } => assert_eq!(seconds, 30, "{}", exercise.id),
            Dose::Limit { trials, cap_s, .. } => assert!(trials <= 3 && cap_s <= 30, "{}", exercise.id),
        }
        assert_eq!(dose.check(), Ok(()));
        assert_eq!(dose.kind(), exercise.kind);
    }
}

/// Every exercise with the dose of each of its levels.
fn all_doses() -> Vec<(Exercise, Dose)> {
    let doses = |exercise: Exercise| {
        let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
        let doses: Vec<Dose> = rungs.map(|rung| exercise.level(Some(&rung.id)).dose()).collect();
        doses.into_iter().map(move |dose| (exercise.clone(), dose))
    };
    all().into_iter().flat_map(doses).collect()
}

#[test]
fn every_exercise_states_how_it_is_made_harder_from_its_usual_doses_on_or_is_a_test() {
    for (exercise, dose) in all_doses() {
        let never_stepped = exercise.test || !exercise.kind.rules().is_stepped();
        assert_eq!(never_stepped, exercise.step_rules.is_empty(), "{}", exercise.id);
        for rule in &exercise.step_rules {
            let Grows::Dose(step) = rule.grows else { continue };
            assert!(dose.value(step.quantity).is_some_and(|usual| usual <= step.most), "{}: {step:?}", exercise.id);
        }
    }
    let tests: Vec<String> = all().into_iter().filter(|one| one.test).map(|one| one.id.to_string()).collect();
    assert_eq!(tests, ["chair-rise-30s", "one-leg-timed"]);
}

/// An empty list of flags says that they were thought of, so it stands in the file as well.
#[test]
fn every_exercise_says_what_it_is_for_its_flags_and_what_its_dose_is_based_on() {
    for (exercise, files) in all().iter().zip(FILES) {
        assert!(!exercise.purposes.is_empty(), "{}", exercise.id);
        assert!(files.text.lines().any(|line| line.starts_with("flags = [")), "{}", exercise.id);
        assert!(exercise.dose_basis.is_some(), "{}", exercise.id);
        let balances = exercise.kind.is_balance();
        assert!(!balances || exercise.purposes.contains(&Purpose::Balance), "{}", exercise.id);
    }
}

/// What the text asks the patient to be careful with is flagged for the prescriber as well.
#[test]
fn the_flags_name_what_the_cautions_name() {
    use PrescriberFlag::*;
    let named: [(&str, &[PrescriberFlag]); 7] = [
        ("high blood pressure", &[BloodPressure]),
        ("pregnant", &[Pregnancy]),
        ("osteoporosis", &[Osteoporosis]),
        ("replacement", &[JointReplacement]),
        ("hernia", &[Abdomen]),
        ("dislocated shoulder", &[DislocatedShoulder]),
        ("still healing", &[UnhealedOperation, HandOperation, Abdomen]),
    ];
    let mut seen = 0;
    for exercise in all() {
        let cautions = exercise.texts[&Lang::En].cautions.concat();
        for (words, flags) in named.iter().filter(|(words, _)| cautions.contains(words)) {
            assert!(flags.iter().any(|flag| exercise.flags.contains(flag)), "{}: {words}", exercise.id);
            seen += 1;
        }
    }
    assert!(seen >= 10, "{seen}");
}

/// Whoever cannot get up from the floor does not lie on a mat; whoever breaks or bleeds easily should not fall.
#[test]
fn what_is_done_on_the_floor_or_on_one_leg_has_its_flags() {
    for exercise in all() {
        let on_the_floor = exercise.equipment.contains(&Equipment::Mat);
        assert_eq!(on_the_floor, exercise.flags.contains(&PrescriberFlag::CannotGetUp), "{}", exercise.id);
        let falls = [PrescriberFlag::Osteoporosis, PrescriberFlag::BloodThinners];
        assert!(!exercise.kind.is_balance() || falls.iter().all(|flag| exercise.flags.contains(flag)), "{}", exercise.id);
    }
}

#[test]
fn every_kind_is_in_the_catalogue() {
    let kinds: BTreeSet<Kind> = all().iter().map(|exercise| exercise.kind).collect();
    assert_eq!(kinds.into_iter().collect::<Vec<_>>(), Kind::ALL);
}

#[test]
fn a_stance_begins_on_the_firm_floor_and_never_mixes_eyes_on_one_ladder() {
    for exercise in all().iter().filter(|exercise| exercise.kind.is_balance()) {
        for ladder in &exercise.ladders {
            assert_eq!(ladder.rungs[0].surface, Some(Surface::Firm), "{}", exercise.id);
            let eyes: BTreeSet<_> = ladder.rungs.iter().map(|rung| rung.eyes).collect();
            assert_eq!(eyes.len(), 1, "{}: one factor changes at a time", exercise.id);
            assert!(ladder.rungs.windows(2).all(|pair| pair[0].surface <= pair[1].surface), "{}", exercise.id);
        }
        assert_eq!(exercise.first_rung().and_then(|rung| rung.eyes), Some(Eyes::Open));
    }
}

#[test]
fn every_balance_exercise_asks_for_a_support_within_reach() {
    for exercise in all().iter().filter(|exercise| exercise.kind.is_balance()) {
        assert!(exercise.texts[&Lang::En].cautions.iter().any(|line| line.contains("support within reach")));
        assert!(exercise.texts[&Lang::Es].cautions.iter().any(|line| line.contains("apoyo firme al alcance")));
    }
}

#[test]
fn the_ways_to_stop_name_the_plans_limit() {
    for exercise in all().into_iter().filter(|exercise| exercise.kind.rules().asks_pain()) {
        let says = |lang, word: &str| exercise.texts[&lang].stop_signs.iter().any(|line| line.contains(word));
        assert!(says(Lang::En, "limit in your plan"), "{}", exercise.id);
        assert!(says(Lang::Es, "límite de su plan"), "{}", exercise.id);
    }
}

#[test]
fn every_exercise_has_both_languages_with_lists_of_equal_length() {
    for exercise in all() {
        let lists = |texts: &Texts| [texts.steps.len(), texts.mistakes.len(), texts.cautions.len(), texts.stop_signs.len()];
        assert!(exercise.texts.keys().copied().eq(Lang::ALL), "{}", exercise.id);
        assert!(exercise.texts.values().all(|texts| lists(texts) == lists(&exercise.texts[&Lang::En])), "{}", exercise.id);
        let mut rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
        assert!(rungs.all(|rung| rung.texts.keys().copied().eq(Lang::ALL)), "{}", exercise.id);
    }
}

#[test]
fn no_text_is_left_in_the_other_language() {
    for exercise in all() {
        let Texts { steps, cautions, stop_signs, .. } = &exercise.texts[&Lang::En];
        let other = &exercise.texts[&Lang::Es];
        for (here, there) in [(steps, &other.steps), (cautions, &other.cautions), (stop_signs, &other.stop_signs)] {
            assert!(here.iter().zip(there).all(|(here, there)| here != there), "{}", exercise.id);
        }
    }
}

#[test]
fn rungs_know_their_neighbours() {
    for exercise in all() {
        for ladder in &exercise.ladders {
            for pair in ladder.rungs.windows(2) {
                assert_eq!(exercise.harder(&pair[0].id).map(|rung| &rung.id), Some(&pair[1].id));
                assert_eq!(exercise.easier(&pair[1].id).map(|rung| &rung.id), Some(&pair[0].id));
            }
            assert_eq!(exercise.easier(&ladder.rungs[0].id), None);
        }
    }
}

#[test]
fn numbers_of_the_table_are_quoted_in_faults() {
    let bound = exercises::catalogue::Quantity::HoldSeconds.bound();
    let found = faults(&whole(), "hold_s = 10", &format!("hold_s = {}", bound.max + 1));
    assert_eq!(found[0].kind, FaultKind::NumberRange { least: bound.min, most: bound.max });
}
