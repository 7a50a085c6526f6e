//! How what is found is laid out: as one list, or by region.

use super::index::Index;
use crate::catalogue::{Exercise, Region};

/// Number of exercises that stand apart because they are prescribed most.
pub const MOST_USED: usize = 6;

/// What the exercises of a shelf have in common.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Shelf {
    /// They were looked for.
    Found,
    /// They are prescribed most.
    MostUsed,
    /// They train this part of the body.
    Of(Region),
}

/// Exercises that are shown together, by their places.
pub type Shelved = (Shelf, Vec<usize>);

/// The exercises by region, from the head downward, in the order in which they were found. With `most_used`, those that were prescribed
/// most stand on a shelf before, and not with their regions.
pub fn by_region(exercises: &[Exercise], index: &Index, found: &[usize], most_used: bool) -> Vec<Shelved> {
    let used = |place: &&usize| index.prescribed(**place) > 0;
    let most = if most_used { MOST_USED } else { 0 };
    let apart: Vec<usize> = found.iter().filter(used).take(most).copied().collect();
    let of = |region: Region| {
        let here = |place: &&usize| exercises[**place].region == region && !apart.contains(place);
        (Shelf::Of(region), found.iter().filter(here).copied().collect())
    };
    let regions: Vec<Shelved> = Region::ALL.into_iter().map(of).collect();
    let all = [(Shelf::MostUsed, apart)].into_iter().chain(regions);
    all.filter(|(_, places): &Shelved| !places.is_empty()).collect()
}

/// The first `most` exercises of all shelves together, without shelves that are empty then.
pub fn first(shelves: Vec<Shelved>, most: usize) -> Vec<Shelved> {
    let mut left = most;
    let mut cut = Vec::new();
    for (shelf, mut places) in shelves {
        places.truncate(left);
        left -= places.len();
        cut.extend((!places.is_empty()).then_some((shelf, places)));
    }
    cut
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::{ExerciseId, Lang};
    use crate::review::samples::catalogue;

    /// Exercises for knee, neck, knee, whole body; the third and the second were prescribed.
    fn sample() -> (Vec<Exercise>, Index) {
        let one = catalogue().exercises.swap_remove(0);
        let id = |n: usize| ExerciseId::new(format!("one-{n}")).expect("an id");
        let regions = [Region::Knee, Region::NeckUpperBack, Region::Knee, Region::General];
        let exercise = |(n, region)| Exercise { id: id(n), region, ..one.clone() };
        let exercises: Vec<Exercise> = regions.into_iter().enumerate().map(exercise).collect();
        let index = Index::new(&exercises, Lang::En, |_| String::new(), &[(id(2), 5), (id(1), 1)]);
        (exercises, index)
    }

    #[test]
    fn shelves_go_from_the_head_downward_and_none_is_empty() {
        let (exercises, index) = sample();
        let found = index.find("", |_| true);
        let knee = (Shelf::Of(Region::Knee), vec![2, 0]);
        let plain = [(Shelf::Of(Region::NeckUpperBack), vec![1]), knee, (Shelf::Of(Region::General), vec![3])];
        assert_eq!(by_region(&exercises, &index, &found, false), plain);
        let apart =
            [(Shelf::MostUsed, vec![2, 1]), (Shelf::Of(Region::Knee), vec![0]), (Shelf::Of(Region::General), vec![3])];
        assert_eq!(by_region(&exercises, &index, &found, true), apart);
        assert_eq!(by_region(&exercises, &index, &[], true), []);
    }

    #[test]
    fn only_the_first_are_shown() {
        let shelves = vec![(Shelf::MostUsed, vec![2, 1]), (Shelf::Of(Region::Knee), vec![0, 4])];
        assert_eq!(first(shelves.clone(), 3), [(Shelf::MostUsed, vec![2, 1]), (Shelf::Of(Region::Knee), vec![0])]);
        assert_eq!(first(shelves.clone(), 2), [(Shelf::MostUsed, vec![2, 1])]);
        assert_eq!(first(shelves.clone(), 9), shelves);
    }
}
