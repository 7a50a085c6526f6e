//! Writes an exercise as a single TOML file with its texts, which [`super::read_own`] reads: what clinics hand over, keep and put on
//! cards. Whatever else was in the author's file is not in it.

use crate::names::{Named, name};
use crate::toml_text::{list, quoted};
use exercises::catalogue::kind::{DoseField, StepForward};
use exercises::catalogue::{
    Arrow, Dose, Exercise, Figure, Grows, Kind, Ladder, Lang, Link, Pose, Rung, RungTexts, StepRule, Texts,
};
use std::collections::BTreeMap;

/// The exercise as a file.
pub fn write(exercise: &Exercise) -> String {
    let Exercise { ladders, poses, texts, step_rules, dose, kind, .. } = exercise;
    let mut out = Lines(head(exercise));
    out.section("dose");
    out.dose(dose);
    step_rules.iter().for_each(|rule| out.step(*kind, rule));
    ladders.iter().for_each(|ladder| out.ladder(ladder, poses));
    out.section("figure");
    out.figure("figure", poses, None);
    out.texts(texts);
    out.0
}

/// The fields of the file that are in no table.
fn head(exercise: &Exercise) -> String {
    let Exercise {
        id,
        revision,
        region,
        purposes,
        flags,
        kind,
        side,
        posture,
        equipment,
        one_leg,
        test,
        dose_basis,
        count_error_tenths,
        ..
    } = exercise;
    // What is in tables of its own.
    let Exercise { step_rules: _, dose: _, ladders: _, poses: _, texts: _, .. } = exercise;
    let mut out = Lines(String::new());
    out.put("id", quoted(id.as_str()));
    out.put("revision", revision);
    out.word("region", Some(region));
    out.words("purpose", Some(purposes).filter(|all| !all.is_empty()));
    out.words("flags", Some(flags).filter(|all| !all.is_empty()));
    out.put("kind", quoted(kind.rules().name()));
    out.word("side", Some(side));
    out.word("posture", posture.as_ref());
    out.words("equipment", Some(equipment).filter(|all| !all.is_empty()));
    for (field, is_set) in [("one_leg", one_leg), ("test", test)] {
        if *is_set {
            out.put(field, "true");
        }
    }
    count_error_tenths.iter().for_each(|tenths| out.put("count_error_tenths", tenths));
    out.word("dose_basis", dose_basis.as_ref());
    out.0
}

/// A file as far as it is written.
struct Lines(String);

impl Lines {
    fn put(&mut self, field: &str, value: impl std::fmt::Display) {
        self.0 += &format!("{field} = {value}\n");
    }

    fn word<T: Named + PartialEq>(&mut self, field: &str, value: Option<&T>) {
        value.into_iter().for_each(|value| self.put(field, quoted(name(value))));
    }

    fn words<T: Named + PartialEq>(&mut self, field: &str, values: Option<&Vec<T>>) {
        if let Some(values) = values {
            self.put(field, format!("[{}]", values.iter().map(|one| quoted(name(one))).collect::<Vec<_>>().join(", ")));
        }
    }

    fn section(&mut self, table: &str) {
        self.0 += &format!("\n[{table}]\n");
    }

    fn entry(&mut self, list: &str) {
        self.0 += &format!("\n[[{list}]]\n");
    }

    fn dose(&mut self, dose: &Dose) {
        let values = dose.values();
        let all: Vec<(&DoseField, i64)> = dose.fields().iter().zip(values).collect();
        for together in all.chunk_by(|(one, _), (next, _)| one.group.is_some() && one.group == next.group) {
            let each: Vec<String> = together.iter().map(|(field, value)| format!("{} = {value}", field.key)).collect();
            match together[0].0.group {
                Some(group) => self.put(group, format!("{{ {} }}", each.join(", "))),
                None => self.0 += &format!("{}\n", each.join("\n")),
            }
        }
    }

    fn step(&mut self, kind: Kind, StepRule { grows, basis }: &StepRule) {
        self.entry("step");
        match grows {
            Grows::Level => self.put("grows", quoted("level")),
            Grows::Dose(StepForward { quantity, by, percent, most, short_if_often: _ }) => {
                let field = kind.rules().fields().iter().find(|field| field.quantity == *quantity);
                self.put("grows", quoted(field.map_or("", |field| field.key)));
                self.put("by", by);
                if *percent > 0 {
                    self.put("percent", percent);
                }
                self.put("to", most);
            }
        }
        self.word("basis", Some(basis));
    }

    fn ladder(&mut self, Ladder { id, factor, rungs }: &Ladder, base: &Figure) {
        self.entry("ladder");
        self.put("id", quoted(id.as_str()));
        self.word("factor", Some(factor));
        rungs.iter().for_each(|rung| self.rung(rung, base));
    }

    fn rung(&mut self, rung: &Rung, base: &Figure) {
        let Rung { id, surface, eyes, feet, arms, posture, side, dose, equipment, texts, figure } = rung;
        self.entry("ladder.rung");
        self.put("id", quoted(id.as_str()));
        self.word("surface", surface.as_ref());
        self.word("eyes", eyes.as_ref());
        self.word("feet", feet.as_ref());
        self.word("arms", arms.as_ref());
        self.word("posture", posture.as_ref());
        self.word("side", side.as_ref());
        self.words("equipment", equipment.as_ref());
        if let Some(dose) = dose {
            self.section("ladder.rung.dose");
            self.dose(dose);
        }
        for (lang, RungTexts { name, change, set_up, steps }) in texts {
            self.section(&format!("ladder.rung.text.{}", lang.code()));
            self.put("name", quoted(name));
            self.put("change", quoted(change));
            set_up.iter().for_each(|set_up| self.put("set_up", quoted(set_up)));
            steps.iter().for_each(|steps| self.put("steps", list(steps)));
        }
        if let Some(figure) = figure {
            self.section("ladder.rung.figure");
            self.figure("ladder.rung.figure", figure, Some(base));
        }
    }

    /// A figure, or what differs in it from `base`. Eyes are not part of a file: they come from the level.
    fn figure(&mut self, table: &str, figure: &Figure, base: Option<&Figure>) {
        let Figure { view, furniture, plumb, contacts, links, poses, arrows, eyes: _ } = figure;
        let differs = |is_same: fn(&Figure, &Figure) -> bool| base.is_none_or(|base| !is_same(base, figure));
        self.word("view", Some(view).filter(|_| differs(|one, other| one.view == other.view)));
        self.words("furniture", Some(furniture).filter(|_| differs(|one, other| one.furniture == other.furniture)));
        if differs(|one, other| one.plumb == other.plumb) {
            self.put("plumb", plumb);
        }
        self.words("contacts", Some(contacts).filter(|_| differs(|one, other| one.contacts == other.contacts)));
        if differs(|one, other| one.poses == other.poses) {
            let all: Vec<String> = poses.iter().map(|pose| format!("  {},\n", written(pose))).collect();
            self.put("poses", format!("[\n{}]", all.concat()));
        }
        let (new_links, new_arrows) =
            (differs(|one, other| one.links == other.links), differs(|one, other| one.arrows == other.arrows));
        // Empty lists are fields of this table, so they come before the tables within it.
        for (field, is_empty) in [("link", new_links && links.is_empty()), ("arrow", new_arrows && arrows.is_empty())] {
            if is_empty && base.is_some() {
                self.put(field, "[]");
            }
        }
        links.iter().filter(|_| new_links).for_each(|link| self.link(table, link));
        arrows.iter().filter(|_| new_arrows).for_each(|arrow| self.arrow(table, arrow));
    }

    fn link(&mut self, table: &str, Link { tie, from, to }: &Link) {
        self.entry(&format!("{table}.link"));
        self.word("tie", Some(tie));
        self.word("from", Some(from));
        self.word("to", Some(to));
    }

    fn arrow(&mut self, table: &str, Arrow { at, right_cm, up_cm, toward_deg, length_cm, bend_deg }: &Arrow) {
        self.entry(&format!("{table}.arrow"));
        self.word("at", Some(at));
        for (field, value) in [("right_cm", right_cm), ("up_cm", up_cm), ("bend_deg", bend_deg)] {
            if *value != 0 {
                self.put(field, value);
            }
        }
        self.put("toward_deg", toward_deg);
        self.put("length_cm", length_cm);
    }

    fn texts(&mut self, texts: &BTreeMap<Lang, Texts>) {
        for (lang, text) in texts {
            let Texts { name, purpose, set_up, steps, should_feel, should_not_feel, mistakes, cautions, stop_signs } = text;
            self.section(&format!("text.{}", lang.code()));
            self.put("name", quoted(name));
            self.put("purpose", quoted(purpose));
            self.put("set_up", quoted(set_up));
            self.put("steps", list(steps));
            self.put("should_feel", quoted(should_feel));
            self.put("should_not_feel", quoted(should_not_feel));
            self.put("mistakes", list(mistakes));
            self.put("cautions", list(cautions));
            self.put("stop_signs", list(stop_signs));
        }
    }
}

fn written(Pose { angles }: &Pose) -> String {
    let each: Vec<String> = angles.iter().map(|(joint, angle)| format!("{} = {angle}", joint.name())).collect();
    if each.is_empty() { "{}".to_owned() } else { format!("{{ {} }}", each.join(", ")) }
}
