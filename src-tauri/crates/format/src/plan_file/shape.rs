//! The shape of the file, before its words are understood.

use super::doses::WithDoses;
use super::item::ItemShape;
use serde::Deserialize;
use toml::Spanned;
use toml::value::Datetime;

pub(super) type Word = Spanned<String>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct PlanShape {
    pub review: Spanned<Datetime>,
    pub age: Option<Word>,
    #[serde(default)]
    pub absent: Vec<Word>,
    #[serde(default)]
    pub aftercare: Vec<Word>,
    #[serde(default)]
    pub clear: Vec<Word>,
    #[serde(default)]
    pub complaint: Vec<ComplaintShape>,
    #[serde(default)]
    pub activity: Vec<ActivityShape>,
    #[serde(default)]
    pub item: Vec<Spanned<WithDoses<ItemShape>>>,
    #[serde(default)]
    pub stance: Vec<StanceShape>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ComplaintShape {
    pub number: u8,
    pub name: String,
    pub side: Option<Word>,
    pub pain: Option<u8>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct ActivityShape {
    pub number: u8,
    pub name: String,
    pub rating: Option<u8>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct EveryShape {
    pub minutes: u16,
    pub from: Word,
    pub to: Word,
}

#[derive(Deserialize)]
#[serde(untagged, expecting = "\"workdays\", \"every-day\", or a list of mon, tue, wed, thu, fri, sat, sun belongs here")]
pub(super) enum DaysShape {
    Name(String),
    List(Vec<String>),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct StanceShape {
    pub leg: Word,
    pub surface: Word,
    pub eyes: Word,
    pub seconds: Spanned<f64>,
    #[serde(default)]
    pub capped: bool,
    pub taken: Option<Spanned<Datetime>>,
}
