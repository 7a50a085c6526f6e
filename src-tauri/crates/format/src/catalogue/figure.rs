//! Reads a figure from its table: view, furniture, contacts, positions, arrows.

use super::fault::FaultKind;
use super::names::{CONTACTS, FURNITURE, LANDMARKS, Names, VIEWS};
use super::table::{Item, Table};
use exercises::catalogue::{Arrow, Figure, Joint, Pose, Quantity};

const FIELDS: &[&str] = &["view", "furniture", "plumb", "contacts", "poses", "arrow"];

/// A complete figure.
pub(super) fn figure(table: &Table) -> Option<Figure> {
    table.only(FIELDS);
    let view = table.word("view", VIEWS);
    let furniture = words(table, "furniture", FURNITURE);
    let plumb = table.optional("plumb").map_or(Some(false), |item| item.truth());
    let contacts = words(table, "contacts", CONTACTS);
    let poses = table.required("poses").and_then(|item| poses(&item));
    let arrows = arrows(table);
    Some(Figure {
        view: view?,
        furniture: furniture?,
        plumb: plumb?,
        contacts: contacts?,
        poses: poses?,
        arrows: arrows?,
        eyes: None,
    })
}

/// A rung's figure: what its table gives, and the rest from the exercise's figure.
pub(super) fn changed(table: &Table, base: Option<&Figure>) -> Option<Figure> {
    table.only(FIELDS);
    let here = |field: &str| table.optional(field);
    let view = here("view").map(|item| item.word(VIEWS));
    let furniture = here("furniture").map(|_| words(table, "furniture", FURNITURE));
    let plumb = here("plumb").map(|item| item.truth());
    let contacts = here("contacts").map(|_| words(table, "contacts", CONTACTS));
    let poses = here("poses").map(|item| poses(&item));
    let arrows = here("arrow").map(|_| arrows(table));
    // If the exercise's figure could not be read, its faults are already noted, and no figure can be made here.
    let base = base?;
    Some(Figure {
        view: view.unwrap_or(Some(base.view))?,
        furniture: furniture.unwrap_or_else(|| Some(base.furniture.clone()))?,
        plumb: plumb.unwrap_or(Some(base.plumb))?,
        contacts: contacts.unwrap_or_else(|| Some(base.contacts.clone()))?,
        poses: poses.unwrap_or_else(|| Some(base.poses.clone()))?,
        arrows: arrows.unwrap_or_else(|| Some(base.arrows.clone()))?,
        eyes: None,
    })
}

/// A list of words, none of which may be repeated.
fn words<T: Copy + PartialEq>(table: &Table, field: &str, names: Names<T>) -> Option<Vec<T>> {
    let Some(item) = table.optional(field) else {
        return Some(Vec::new());
    };
    let items = item.list(None)?;
    let mut words = Vec::new();
    for item in &items {
        match item.word(names) {
            Some(word) if words.contains(&word) => {
                let id = item.text().unwrap_or_default().to_owned();
                item.fault(FaultKind::Duplicate { id });
            }
            word => words.extend(word),
        }
    }
    (words.len() == items.len()).then_some(words)
}

fn poses(item: &Item) -> Option<Vec<Pose>> {
    let poses: Vec<_> = item.tables(Quantity::Poses)?.iter().map(pose).collect();
    poses.into_iter().collect()
}

fn pose(table: &Table) -> Option<Pose> {
    let mut pose = Pose::default();
    let mut whole = true;
    for key in table.map.keys() {
        let name = key.get_ref();
        let angle = joint(table, name).zip(table.optional(name)).and_then(|(joint, item)| angle(joint, &item));
        whole &= angle.is_some();
        pose.angles.extend(angle);
    }
    whole.then_some(pose)
}

fn joint(table: &Table, name: &str) -> Option<Joint> {
    let joint = Joint::from_name(name);
    if joint.is_none() {
        table.fault(name, FaultKind::NoSuchJoint { found: name.chars().take(40).collect() });
    }
    joint
}

fn angle(joint: Joint, item: &Item) -> Option<(Joint, i16)> {
    let degrees = item.whole()?;
    let (min, max) = joint.range();
    match i16::try_from(degrees) {
        Ok(angle) if (min..=max).contains(&angle) => Some((joint, angle)),
        _ => {
            item.fault(FaultKind::Angle { joint, degrees });
            None
        }
    }
}

fn arrows(table: &Table) -> Option<Vec<Arrow>> {
    let Some(item) = table.optional("arrow") else {
        return Some(Vec::new());
    };
    let arrows: Vec<_> = item.tables(Quantity::Arrows)?.iter().map(arrow).collect();
    arrows.into_iter().collect()
}

fn arrow(table: &Table) -> Option<Arrow> {
    table.only(&["at", "right_cm", "up_cm", "toward_deg", "length_cm", "bend_deg"]);
    let number = |field, quantity| table.number(field, quantity).and_then(|n| i16::try_from(n).ok());
    let or_none = |field, quantity| {
        table.optional(field).map_or(Some(0), |item| item.number(quantity).and_then(|n| i16::try_from(n).ok()))
    };
    let at = table.word("at", LANDMARKS);
    let right_cm = or_none("right_cm", Quantity::ArrowOffset);
    let up_cm = or_none("up_cm", Quantity::ArrowOffset);
    let toward_deg = number("toward_deg", Quantity::ArrowToward);
    let length_cm = number("length_cm", Quantity::ArrowLength);
    let bend_deg = or_none("bend_deg", Quantity::ArrowBend);
    Some(Arrow {
        at: at?,
        right_cm: right_cm?,
        up_cm: up_cm?,
        toward_deg: toward_deg?,
        length_cm: length_cm?,
        bend_deg: bend_deg?,
    })
}
