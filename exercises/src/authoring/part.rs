//! The texts of an exercise and of its levels, one by one: read for a field, written from one.

use crate::catalogue::{Exercise, Lang, Quantity, RungId, RungTexts, Texts};
use strum::VariantArray;

/// A text of an exercise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, VariantArray)]
pub enum TextPart {
    /// [`Texts::name`].
    Name,
    /// [`Texts::purpose`].
    Purpose,
    /// [`Texts::set_up`].
    SetUp,
    /// [`Texts::steps`], one to a line.
    Steps,
    /// [`Texts::should_feel`].
    ShouldFeel,
    /// [`Texts::should_not_feel`].
    ShouldNotFeel,
    /// [`Texts::mistakes`], one to a line.
    Mistakes,
    /// [`Texts::cautions`], one to a line.
    Cautions,
    /// [`Texts::stop_signs`], one to a line.
    StopSigns,
}

/// A text of a level.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, VariantArray)]
pub enum LevelPart {
    /// [`RungTexts::name`].
    Name,
    /// [`RungTexts::change`].
    Change,
    /// [`RungTexts::set_up`]; empty if it is the exercise's.
    SetUp,
    /// [`RungTexts::steps`], one to a line; empty if they are the exercise's.
    Steps,
}

/// Where a text stands: a paragraph, or a list with one entry to a line.
enum Slot<'a> {
    Line(&'a mut String),
    Lines(&'a mut Vec<String>),
}

impl Slot<'_> {
    fn put(self, text: &str) {
        let plain: String = text.chars().filter(|c| *c == '\n' || !is_unfit(*c)).collect();
        match self {
            Slot::Line(line) => *line = plain.replace('\n', " "),
            Slot::Lines(lines) if plain.is_empty() => lines.clear(),
            Slot::Lines(lines) => *lines = plain.split('\n').map(str::to_owned).collect(),
        }
    }
}

/// Characters that the reader of exercises refuses, because they act instead of being seen.
fn is_unfit(c: char) -> bool {
    c.is_control() || crate::plain_text::is_hidden(c) || matches!(c, '\u{2028}' | '\u{2029}' | '\u{FEFF}' | '\u{FFFD}')
}

impl TextPart {
    /// All of them, in the order in which they are written.
    pub const ALL: &'static [TextPart] = TextPart::VARIANTS;

    /// The number of entries that it may have if it is a list; `None` for a paragraph.
    pub fn entries(self) -> Option<Quantity> {
        match self {
            TextPart::Steps => Some(Quantity::Steps),
            TextPart::Mistakes | TextPart::Cautions | TextPart::StopSigns => Some(Quantity::ListLines),
            _ => None,
        }
    }

    /// The characters that it, or an entry of it, may have.
    pub fn characters(self) -> Quantity {
        if self == TextPart::Name { Quantity::NameCharacters } else { Quantity::LineCharacters }
    }

    /// Its entries; a paragraph is one.
    pub fn lines(self, texts: &Texts) -> Vec<String> {
        let one = |line: &String| vec![line.clone()];
        match self {
            TextPart::Name => one(&texts.name),
            TextPart::Purpose => one(&texts.purpose),
            TextPart::SetUp => one(&texts.set_up),
            TextPart::ShouldFeel => one(&texts.should_feel),
            TextPart::ShouldNotFeel => one(&texts.should_not_feel),
            TextPart::Steps => texts.steps.clone(),
            TextPart::Mistakes => texts.mistakes.clone(),
            TextPart::Cautions => texts.cautions.clone(),
            TextPart::StopSigns => texts.stop_signs.clone(),
        }
    }

    /// The text as a field shows it; empty in a language in which nothing is written.
    pub fn get(self, exercise: &Exercise, lang: Lang) -> String {
        exercise.texts.get(&lang).map(|texts| self.lines(texts).join("\n")).unwrap_or_default()
    }

    /// Writes what was typed into a field, without characters that cannot be shown.
    pub fn put(self, exercise: &mut Exercise, lang: Lang, text: &str) {
        self.slot(exercise.texts.entry(lang).or_default()).put(text);
    }

    pub(super) fn put_lines(self, texts: &mut Texts, lines: Vec<String>) {
        match self.slot(texts) {
            Slot::Line(line) => *line = lines.into_iter().next().unwrap_or_default(),
            Slot::Lines(all) => *all = lines,
        }
    }

    fn slot(self, texts: &mut Texts) -> Slot<'_> {
        match self {
            TextPart::Name => Slot::Line(&mut texts.name),
            TextPart::Purpose => Slot::Line(&mut texts.purpose),
            TextPart::SetUp => Slot::Line(&mut texts.set_up),
            TextPart::ShouldFeel => Slot::Line(&mut texts.should_feel),
            TextPart::ShouldNotFeel => Slot::Line(&mut texts.should_not_feel),
            TextPart::Steps => Slot::Lines(&mut texts.steps),
            TextPart::Mistakes => Slot::Lines(&mut texts.mistakes),
            TextPart::Cautions => Slot::Lines(&mut texts.cautions),
            TextPart::StopSigns => Slot::Lines(&mut texts.stop_signs),
        }
    }
}

impl LevelPart {
    /// All of them, in the order in which they are written.
    pub const ALL: &'static [LevelPart] = LevelPart::VARIANTS;

    /// The number of entries that it may have if it is a list; `None` for a paragraph.
    pub fn entries(self) -> Option<Quantity> {
        (self == LevelPart::Steps).then_some(Quantity::Steps)
    }

    /// The characters that it, or an entry of it, may have.
    pub fn characters(self) -> Quantity {
        if self == LevelPart::Name { Quantity::NameCharacters } else { Quantity::LineCharacters }
    }

    /// Whether a level has it only if it differs from the exercise's.
    pub fn is_optional(self) -> bool {
        matches!(self, LevelPart::SetUp | LevelPart::Steps)
    }

    /// Its entries; a paragraph is one. `None` if the level does not have it.
    pub fn lines(self, texts: &RungTexts) -> Option<Vec<String>> {
        match self {
            LevelPart::Name => Some(vec![texts.name.clone()]),
            LevelPart::Change => Some(vec![texts.change.clone()]),
            LevelPart::SetUp => texts.set_up.clone().map(|line| vec![line]),
            LevelPart::Steps => texts.steps.clone(),
        }
    }

    /// The text of a level as a field shows it; empty where nothing is written.
    pub fn get(self, exercise: &Exercise, level: &RungId, lang: Lang) -> String {
        let texts = exercise.rung(level).and_then(|rung| rung.texts.get(&lang));
        texts.and_then(|texts| self.lines(texts)).map(|lines| lines.join("\n")).unwrap_or_default()
    }

    /// Writes what was typed into a field of a level, without characters that cannot be shown. A text that a level has only if it
    /// differs is taken away when nothing is left of it.
    pub fn put(self, exercise: &mut Exercise, level: &RungId, lang: Lang, text: &str) {
        let mut rungs = exercise.ladders.iter_mut().flat_map(|ladder| &mut ladder.rungs);
        let Some(rung) = rungs.find(|rung| rung.id == *level) else { return };
        let texts = rung.texts.entry(lang).or_default();
        match self {
            LevelPart::Name => Slot::Line(&mut texts.name).put(text),
            LevelPart::Change => Slot::Line(&mut texts.change).put(text),
            LevelPart::SetUp => {
                Slot::Line(texts.set_up.get_or_insert_default()).put(text);
                texts.set_up.take_if(|line| line.trim().is_empty());
            }
            LevelPart::Steps => {
                Slot::Lines(texts.steps.get_or_insert_default()).put(text);
                texts.steps.take_if(|lines| lines.iter().all(|line| line.trim().is_empty()));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::authoring::blank;

    #[test]
    fn every_text_that_is_put_is_got_again() {
        let mut exercise = blank(Lang::En);
        for part in TextPart::ALL {
            part.put(&mut exercise, Lang::Es, &format!("{part:?}"));
        }
        for part in TextPart::ALL {
            assert_eq!(part.get(&exercise, Lang::Es), format!("{part:?}"));
        }
        let level = exercise.ladders[0].rungs[0].id.clone();
        for part in LevelPart::ALL {
            part.put(&mut exercise, &level, Lang::Es, &format!("{part:?}"));
            assert_eq!(part.get(&exercise, &level, Lang::Es), format!("{part:?}"));
        }
    }

    #[test]
    fn a_list_has_a_line_for_each_entry_and_a_paragraph_has_none() {
        let mut exercise = blank(Lang::En);
        TextPart::Steps.put(&mut exercise, Lang::En, "Stand.\nLean.\n");
        TextPart::Purpose.put(&mut exercise, Lang::En, "For\nlong days");
        let texts = &exercise.texts[&Lang::En];
        assert_eq!(texts.steps, ["Stand.", "Lean.", ""], "the line that is being begun stays");
        assert_eq!(texts.purpose, "For long days");
    }

    #[test]
    fn characters_that_act_are_left_out() {
        let mut exercise = blank(Lang::En);
        TextPart::Name.put(&mut exercise, Lang::En, "Le\u{202e}an\u{1b}[2J\u{feff}\t🙂");
        assert_eq!(exercise.texts[&Lang::En].name, "Lean[2J🙂");
    }

    #[test]
    fn what_a_level_no_longer_says_is_the_exercises_again() {
        let mut exercise = blank(Lang::En);
        let level = exercise.ladders[0].rungs[0].id.clone();
        LevelPart::SetUp.put(&mut exercise, &level, Lang::En, "On a step.");
        assert_eq!(exercise.level(Some(&level)).texts(Lang::En).map(|texts| texts.set_up), Some("On a step.".into()));
        LevelPart::SetUp.put(&mut exercise, &level, Lang::En, " ");
        assert_eq!(exercise.rung(&level).and_then(|rung| rung.texts[&Lang::En].set_up.clone()), None);
    }
}
