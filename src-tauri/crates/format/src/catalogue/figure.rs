//! Reads a figure from its table: view, furniture, contacts, positions, arrows.

use super::page::{Item, Table, whole};
use exercises::catalogue::{Arrow, Figure, Joint, Link, Pose, Quantity};

const FIELDS: &[&str] = &["view", "furniture", "link", "plumb", "contacts", "poses", "arrow"];

/// A complete figure.
pub(super) fn figure(table: &Table) -> Option<Figure> {
    table.only(FIELDS);
    let view = table.word("view");
    let furniture = table.words("furniture");
    let links = links(table);
    let plumb = table.optional("plumb").map_or(Some(false), |item| item.truth());
    let contacts = table.words("contacts");
    let poses = table.required("poses").and_then(|item| poses(&item));
    let arrows = arrows(table);
    Some(Figure {
        view: view?,
        furniture: furniture?,
        links: links?,
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
    let view = here("view").map(|item| item.word());
    let furniture = here("furniture").map(|_| table.words("furniture"));
    let links = here("link").map(|_| links(table));
    let plumb = here("plumb").map(|item| item.truth());
    let contacts = here("contacts").map(|_| table.words("contacts"));
    let poses = here("poses").map(|item| poses(&item));
    let arrows = here("arrow").map(|_| arrows(table));
    // If the exercise's figure could not be read, its faults are already noted, and no figure can be made here.
    let base = base?;
    Some(Figure {
        view: view.unwrap_or(Some(base.view))?,
        furniture: furniture.unwrap_or_else(|| Some(base.furniture.clone()))?,
        links: links.unwrap_or_else(|| Some(base.links.clone()))?,
        plumb: plumb.unwrap_or(Some(base.plumb))?,
        contacts: contacts.unwrap_or_else(|| Some(base.contacts.clone()))?,
        poses: poses.unwrap_or_else(|| Some(base.poses.clone()))?,
        arrows: arrows.unwrap_or_else(|| Some(base.arrows.clone()))?,
        eyes: None,
    })
}

fn poses(item: &Item) -> Option<Vec<Pose>> {
    whole(item.tables(Quantity::Poses)?.iter().map(pose))
}

fn pose(table: &Table) -> Option<Pose> {
    let names: Vec<&str> = Joint::ALL.iter().map(|joint| joint.name()).collect();
    table.only(&names);
    let angles = whole(table.all().map(|(name, item)| angle(Joint::from_name(name)?, &item)))?;
    Some(Pose { angles: angles.into_iter().collect() })
}

fn angle(joint: Joint, item: &Item) -> Option<(Joint, i16)> {
    let (least, most) = joint.range();
    let angle = item.between(least.into(), most.into())?;
    Some((joint, i16::try_from(angle).ok()?))
}

fn links(table: &Table) -> Option<Vec<Link>> {
    let Some(item) = table.optional("link") else {
        return Some(Vec::new());
    };
    whole(item.tables(Quantity::Links)?.iter().map(link))
}

fn link(table: &Table) -> Option<Link> {
    table.only(&["tie", "from", "to"]);
    let (tie, from, to) = (table.word("tie"), table.word("from"), table.word("to"));
    Some(Link { tie: tie?, from: from?, to: to? })
}

fn arrows(table: &Table) -> Option<Vec<Arrow>> {
    let Some(item) = table.optional("arrow") else {
        return Some(Vec::new());
    };
    whole(item.tables(Quantity::Arrows)?.iter().map(arrow))
}

fn arrow(table: &Table) -> Option<Arrow> {
    table.only(&["at", "right_cm", "up_cm", "toward_deg", "length_cm", "bend_deg"]);
    let number = |field, quantity| table.number(field, quantity).and_then(|n| i16::try_from(n).ok());
    let or_none = |field, quantity| {
        table.optional(field).map_or(Some(0), |item| item.number(quantity).and_then(|n| i16::try_from(n).ok()))
    };
    let at = table.word("at");
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
