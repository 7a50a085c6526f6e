//! The shape of the file, before its words are understood.

use serde::Deserialize;
use toml::Spanned;

pub(super) type Word = Spanned<String>;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct TableShape {
    pub source: Word,
    #[serde(default)]
    pub row: Vec<Spanned<RowShape>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct RowShape {
    pub ages: Option<Word>,
    pub eyes: Option<Word>,
    pub surface: Option<Word>,
    pub feet: Option<Word>,
    pub arms: Option<Word>,
    pub statistic: Option<Word>,
    pub cap: Option<Spanned<CapShape>>,
    pub people: Option<u32>,
    pub mean: Option<Spanned<f64>>,
    pub sd: Option<Spanned<f64>>,
    pub median: Option<Spanned<f64>>,
}

#[derive(Deserialize)]
#[serde(untagged, expecting = "whole seconds from 1 to 600, or \"none\", belong here")]
pub(super) enum CapShape {
    Seconds(u16),
    Word(String),
}
