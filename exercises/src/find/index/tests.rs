use super::*;
use crate::catalogue::Texts;
use crate::review::samples::catalogue;

/// Id, name and use in English, name in Spanish.
const ALL: [[&str; 4]; 6] = [
    ["wall-sit", "Wall sit", "Strengthens the thighs while the knee stays still.", "Sentadilla en la pared"],
    ["knee-straighten", "Straighten the knee, sitting", "Strengthens the front of the thigh.", "Estirar la rodilla"],
    ["heel-raise", "Heel raise", "Strengthens the calf for stairs.", "Elevación de talones"],
    ["sit-to-stand", "Sit to stand", "For getting up from a chair, a bed, a wall or the floor.", "Levantarse de la silla"],
    ["arm-circles", "Arm circles", "Loosens the shoulder.", "Círculos con el brazo"],
    ["slow-breath", "Slow breath", "Calms.", "Respiración lenta"],
];

fn exercises() -> Vec<Exercise> {
    let sample = catalogue().exercises.swap_remove(0);
    let texts = |name: &str, purpose: &str| Texts { name: name.into(), purpose: purpose.into(), ..Texts::default() };
    let one = |[id, en, purpose, es]: [&str; 4]| Exercise {
        id: ExerciseId::new(id).expect("an id"),
        texts: BTreeMap::from([(Lang::En, texts(en, purpose)), (Lang::Es, texts(es, ""))]),
        ..sample.clone()
    };
    ALL.map(one).to_vec()
}

fn index(prescribed: &[(&str, u32)]) -> Index {
    let label =
        |exercise: &Exercise| if exercise.id.as_str() == "heel-raise" { "Ankle and foot".into() } else { String::new() };
    let counts: Vec<_> = prescribed.iter().map(|(id, n)| (ExerciseId::new(*id).expect("an id"), *n)).collect();
    Index::new(&exercises(), Lang::En, label, &counts)
}

#[track_caller]
fn finds(index: &Index, typed: &str, expected: &[&str]) {
    let found: Vec<&str> = index.find(typed, |_| true).into_iter().map(|place| ALL[place][0]).collect();
    assert_eq!(found, expected, "{typed:?}");
}

#[test]
fn without_words_everything_is_found_in_order() {
    finds(&index(&[]), " ", &ALL.map(|one| one[0]));
    finds(
        &index(&[("heel-raise", 2)]),
        "",
        &["heel-raise", "wall-sit", "knee-straighten", "sit-to-stand", "arm-circles", "slow-breath"],
    );
}

#[test]
fn every_word_has_to_be_there_in_name_use_label_id_or_the_other_language() {
    let index = index(&[]);
    finds(&index, "heel raise", &["heel-raise"]);
    finds(&index, "calf stairs", &["heel-raise"]);
    finds(&index, "ankle", &["heel-raise"]);
    finds(&index, "pared", &["wall-sit"]);
    finds(&index, "RESPIRACIÓN", &["slow-breath"]);
    finds(&index, "respiracion", &["slow-breath"]);
    finds(&index, "arm-circles", &["arm-circles"]);
    finds(&index, "heel knee", &[]);
    finds(&index, "giraffe", &[]);
}

#[test]
fn a_word_is_found_while_it_is_typed() {
    for typed in ["sho", "shou", "shoulde", "shoulder", "shoulders"] {
        finds(&index(&[]), typed, &["arm-circles"]);
    }
}

#[test]
fn small_mistakes_are_forgiven_by_length_and_only_where_the_word_is_unknown() {
    let index = index(&[]);
    for typed in ["shuolder", "sholder", "shoudlre", "shoullde"] {
        finds(&index, typed, &["arm-circles"]);
    }
    finds(&index, "xhouldxx", &[]);
    // A beginning with a mistake.
    finds(&index, "strenthe", &["wall-sit", "knee-straighten", "heel-raise"]);
    finds(&index, "clf", &[]);
    finds(&index, "claf", &["heel-raise"]);
    // "raise" is a word here, so "arise" and its like are not looked for.
    finds(&index, "raise", &["heel-raise"]);
}

#[test]
fn what_is_prescribed_most_comes_first_and_a_name_before_a_mention() {
    finds(&index(&[]), "knee", &["knee-straighten", "wall-sit"]);
    let used = index(&[("wall-sit", 9), ("sit-to-stand", 30), ("heel-raise", 4)]);
    finds(&used, "strengthens", &["wall-sit", "heel-raise", "knee-straighten"]);
    // However often the other one is prescribed, the typed name is meant.
    finds(&used, "wall", &["wall-sit", "sit-to-stand"]);
    finds(&used, "sit", &["sit-to-stand", "wall-sit", "knee-straighten"]);
    assert_eq!((used.prescribed(3), used.prescribed(4), used.prescribed(99)), (30, 0, 0));
}

#[test]
fn only_what_is_kept_is_found() {
    assert_eq!(index(&[]).find("strengthens", |place| place != 0), [1, 2]);
    assert_eq!(Index::new(&[], Lang::En, |_| String::new(), &[]).find("knee", |_| true), Vec::<usize>::new());
}
