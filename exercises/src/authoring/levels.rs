//! Levels, added, removed and put in order.

use crate::catalogue::{Exercise, Quantity, Rung, RungId, RungTexts};
use std::collections::BTreeMap;

/// The ids of all levels, ladder by ladder, from easy to hard.
pub fn level_places(exercise: &Exercise) -> Vec<RungId> {
    exercise.ladders.iter().flat_map(|ladder| &ladder.rungs).map(|rung| rung.id.clone()).collect()
}

/// Whether it has a single level. Patients and clinicians are then not told of levels.
pub fn has_one_level(exercise: &Exercise) -> bool {
    level_places(exercise).len() <= 1
}

/// Adds a level above the hardest one of the last ladder, which differs in nothing yet; `None` if there is no room for one.
pub fn add_level(exercise: &mut Exercise) -> Option<RungId> {
    let taken = level_places(exercise);
    if has_one_level(exercise) {
        // Until now it was called like the exercise.
        let names: Vec<_> = exercise.texts.iter().map(|(lang, texts)| (*lang, texts.name.clone())).collect();
        let rungs = exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs);
        for (lang, texts) in rungs.flat_map(|rung| &mut rung.texts) {
            if names.iter().any(|(other, name)| other == lang && *name == texts.name) {
                *texts = RungTexts { name: String::new(), change: String::new(), ..texts.clone() };
            }
        }
    }
    let langs: Vec<_> = exercise.texts.keys().copied().collect();
    let ladder = exercise.ladders.last_mut()?;
    if ladder.rungs.len() as i64 >= Quantity::Rungs.bound().max {
        return None;
    }
    let id = (1u32..).map(|n| RungId::new(format!("level-{n}")).expect("an id")).find(|id| !taken.contains(id))?;
    let texts: BTreeMap<_, _> = langs.into_iter().map(|lang| (lang, RungTexts::default())).collect();
    let like = ladder.rungs.last().cloned().unwrap_or_else(|| Rung::new(id.clone()));
    ladder.rungs.push(Rung { id: id.clone(), texts, ..like });
    Some(id)
}

/// Removes a level, unless it is the only one of its ladder.
pub fn remove_level(exercise: &mut Exercise, id: &RungId) {
    for ladder in exercise.ladders.iter_mut().filter(|ladder| ladder.rungs.len() > 1) {
        ladder.rungs.retain(|rung| rung.id != *id);
    }
}

/// Makes a level one place harder or easier on its ladder.
pub fn move_level(exercise: &mut Exercise, id: &RungId, harder: bool) {
    for ladder in &mut exercise.ladders {
        let Some(place) = ladder.rungs.iter().position(|rung| rung.id == *id) else { continue };
        let other = if harder { place + 1 } else { place.wrapping_sub(1) };
        if other < ladder.rungs.len() {
            ladder.rungs.swap(place, other);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::authoring::{TextPart, blank, tidied};
    use crate::catalogue::Lang;

    #[test]
    fn levels_are_added_up_to_the_most_moved_and_removed_down_to_one() {
        let mut exercise = blank(Lang::En);
        while add_level(&mut exercise).is_some() {}
        let all = level_places(&exercise);
        assert_eq!((all.len() as i64, has_one_level(&exercise)), (Quantity::Rungs.bound().max, false));
        move_level(&mut exercise, &all[0], true);
        move_level(&mut exercise, &all[7], true);
        move_level(&mut exercise, &all[1], false);
        assert_eq!(level_places(&exercise)[..2], [all[1].clone(), all[0].clone()]);
        all.iter().for_each(|id| remove_level(&mut exercise, id));
        assert_eq!(level_places(&exercise), [all[7].clone()], "one is left");
        assert_eq!(add_level(&mut exercise).as_ref(), all.first(), "the ids of those that are gone are free");
    }

    #[test]
    fn the_only_level_was_called_like_the_exercise_until_there_is_another() {
        let mut exercise = blank(Lang::En);
        TextPart::Name.put(&mut exercise, Lang::En, "Lean");
        let mut saved = tidied(&exercise);
        assert_eq!(saved.ladders[0].rungs[0].texts[&Lang::En].name, "Lean");
        add_level(&mut saved);
        assert_eq!(saved.ladders[0].rungs[0].texts[&Lang::En].name, "");
    }
}
