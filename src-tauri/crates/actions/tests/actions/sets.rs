//! Sets of what a clinic prescribes often: saved, replaced, handed on as plan files, put into a patient's plan.

use crate::people::{PASSPHRASE, at, clinic, example, issue};
use actions::DataFolder;
use actions::clinic::{drafting, lock, own_exercises, patients, sets};
use exercises::catalogue::ExerciseId;
use exercises::file_fault::FaultKind;
use exercises::id::ItemId;
use exercises::plan::check::Problem;
use exercises::plan::{Item, Prescription, Side};
use format::catalogue::OWN_EXAMPLE;
use wire::Failure;
use wire::prescribing::{ImportSetRequest, SaveSetRequest, UseSetRequest};

fn request(name: &str, prescription: Prescription) -> SaveSetRequest {
    SaveSetRequest { name: name.into(), prescription }
}

fn names(folder: &DataFolder) -> Vec<String> {
    sets::list(folder).expect("open").into_iter().map(|set| set.name).collect()
}

fn import(name: &str, text: &str) -> ImportSetRequest {
    ImportSetRequest { name: name.into(), file: "plan.toml".into(), text: text.into() }
}

#[test]
fn a_set_keeps_the_items_and_nothing_of_the_patient() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    sets::save(&mut folder, &at("11-25T08:00"), &request(" Desk ", example())).expect("good");
    sets::save(&mut folder, &at("11-25T08:00"), &request("ankle", example())).expect("good");
    assert_eq!(names(&folder), ["ankle", "Desk"]);
    lock::lock(&mut folder);
    assert_eq!(sets::list(&folder).err(), Some(Failure::ClinicLocked));
    lock::unlock(&mut folder, PASSPHRASE.into()).expect("the passphrase");
    assert!(patients::notices(&folder).expect("open").is_empty(), "nothing was changed from outside");
    let mut fewer = example();
    fewer.items.truncate(1);
    sets::save(&mut folder, &at("11-25T08:00"), &request("DESK", fewer)).expect("good");
    assert_eq!(names(&folder), ["ankle", "DESK"], "replaced, with the name as it is now");
    let set = sets::list(&folder).expect("open").swap_remove(1).prescription;
    assert_eq!((set.items.len(), set.complaints.len(), set.baselines.len(), set.age), (1, 0, 0, None));
    let (kept, item) = (&set.items[0], &example().items[0]);
    assert_eq!((&kept.schedule, kept.dose, &kept.note, kept.serves), (&item.schedule, item.dose, &item.note, None));
    sets::remove(&mut folder, "desk").expect("there");
    assert_eq!(sets::remove(&mut folder, "desk").err(), Some(Failure::NoSuchSet { name: "desk".into() }));
    assert_eq!(names(&folder), ["ankle"]);
}

#[test]
fn what_can_be_prescribed_to_nobody_is_no_set() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    let mut wrong = example();
    wrong.items[0].side = Side::Left;
    wrong.items[1].exercise = ExerciseId::new("no-such-exercise").expect("an id");
    let problems = vec![Problem::Side(ItemId(1)), Problem::UnknownExercise(ItemId(2), "no-such-exercise".into())];
    assert_eq!(sets::save(&mut folder, &at("11-25T08:00"), &request("x", wrong)).err(), Some(Failure::SetRefused(problems)));
    let empty = Prescription { items: Vec::new(), ..example() };
    assert_eq!(
        sets::save(&mut folder, &at("11-25T08:00"), &request("x", empty)).err(),
        Some(Failure::SetRefused(vec![Problem::NoItem]))
    );
    for name in ["", "  ", "two\nlines", "\u{202e}x"] {
        assert_eq!(
            sets::save(&mut folder, &at("11-25T08:00"), &request(name, example())).err(),
            Some(Failure::SetNameUnfit { most: 60 })
        );
    }
    let fault = sets::import(&mut folder, &at("11-25T08:00"), &import("x", "review = 5")).err();
    assert!(matches!(fault, Some(Failure::NotUnderstood { fault, .. }) if fault.kind == FaultKind::Date));
    assert!(names(&folder).is_empty());
}

#[test]
fn a_plan_begins_with_a_set_and_goes_on_as_a_draft() {
    let dir = tempfile::tempdir().expect("a temporary folder");
    let mut folder = clinic(dir.path());
    sets::save(&mut folder, &at("11-25T08:00"), &request("desk", example())).expect("good");
    let used = UseSetRequest { code: "K17".into(), set: "Desk".into() };
    let begun = sets::put_into_plan(&mut folder, &at("11-25T08:00"), &used).expect("open");
    let exercises = |items: &[Item]| items.iter().map(|item| item.exercise.to_string()).collect::<Vec<_>>();
    assert_eq!(exercises(&begun.draft.draft.prescription.items), exercises(&example().items));
    assert!(begun.left_out.is_empty());
    let again = drafting::draft(&folder, &at("11-25T09:00"), "K17").expect("open");
    assert_eq!(again.draft, begun.draft.draft, "it was kept");
    issue(&mut folder, &at("11-25T09:00"), example(), &dir.path().join("card"));
    let next = sets::put_into_plan(&mut folder, &at("12-02T08:00"), &used).expect("open");
    assert_eq!(next.draft.draft.prescription.items.len(), 3, "what the plan has already is not added again");
    let unknown = UseSetRequest { set: "other".into(), ..used };
    let failure = sets::put_into_plan(&mut folder, &at("12-02T08:00"), &unknown).err();
    assert_eq!(failure, Some(Failure::NoSuchSet { name: "other".into() }));
}

#[test]
fn a_set_goes_to_another_clinic_as_a_plan_file_that_names_own_exercises_as_their_author_does() {
    let dirs = [0; 2].map(|_| tempfile::tempdir().expect("a temporary folder"));
    let [mut one, mut other] = [0, 1].map(|place: usize| clinic(dirs[place].path()));
    let add = |folder: &mut DataFolder| {
        own_exercises::add(folder, &[("mine.toml".into(), OWN_EXAMPLE.into())]).expect("open").expect("good");
    };
    add(&mut one);
    let mut prescription = example();
    let own = ExerciseId::new("my-doorway-lean").expect("an id");
    prescription.items[0] = Item { exercise: own, ..prescription.items[0].clone() };
    sets::save(&mut one, &at("11-25T08:00"), &request("desk", prescription)).expect("good");
    let file = sets::file(&one, &at("11-25T08:00"), "desk").expect("there");
    assert!(file.contains("exercise = \"my-doorway-lean\"\n") && !file.contains("own-"), "{file}");
    let without = sets::import(&mut other, &at("11-25T08:00"), &import("theirs", &file)).err();
    let unknown = Problem::UnknownExercise(ItemId(1), "my-doorway-lean".into());
    assert_eq!(without, Some(Failure::SetRefused(vec![unknown])), "the exercise is handed over by itself");
    add(&mut other);
    sets::import(&mut other, &at("11-25T08:00"), &import("theirs", &file)).expect("good");
    let ids = [&one, &other].map(|folder| sets::list(folder).expect("open")[0].prescription.items[0].exercise.clone());
    assert!(ids[0] != ids[1] && ids.iter().all(ExerciseId::is_own));
    own_exercises::remove(&mut other, "my-doorway-lean").expect("there");
    let used = UseSetRequest { code: "K17".into(), set: "theirs".into() };
    let begun = sets::put_into_plan(&mut other, &at("11-25T08:00"), &used).expect("open");
    assert_eq!((begun.left_out.as_slice(), begun.draft.draft.prescription.items.len()), (&ids[1..], 2), "named, not lost");
}
