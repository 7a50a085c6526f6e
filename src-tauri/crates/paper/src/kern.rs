//! Kerning: how much closer two letters stand than their widths say, from the font's own table (OpenType, GPOS, pair adjustment).

use skrifa::raw::tables::gpos::{PairPos, PositionSubtables};
use skrifa::raw::types::Tag;
use skrifa::raw::{FontRef, ReadError, TableProvider};
use skrifa::{GlyphId, GlyphId16};
use std::cell::RefCell;
use std::collections::BTreeMap;

/// The pairs of a font.
pub struct Kerning {
    tables: Vec<Vec<PairPos<'static>>>,
    units_per_em: f32,
    /// Pairs that were looked up: a text has the same ones again and again.
    known: RefCell<BTreeMap<(GlyphId, GlyphId), f32>>,
}

impl Kerning {
    /// The pairs of a font; none if it has no such table or one that cannot be read.
    pub fn of(font: &FontRef<'static>) -> Kerning {
        let units_per_em = font.head().map_or(1000.0, |head| f32::from(head.units_per_em()));
        Kerning { tables: tables(font).unwrap_or_default(), units_per_em, known: RefCell::default() }
    }

    /// How much further apart two letters stand, in ems: usually below zero.
    pub fn between(&self, left: GlyphId, right: GlyphId) -> f32 {
        *self.known.borrow_mut().entry((left, right)).or_insert_with(|| self.looked_up(left, right))
    }

    fn looked_up(&self, left: GlyphId, right: GlyphId) -> f32 {
        // Of each lookup the first subtable that knows the pair holds.
        let in_lookup = |lookup: &Vec<PairPos<'static>>| lookup.iter().find_map(|table| value(table, left, right));
        let units: i32 = self.tables.iter().filter_map(in_lookup).map(i32::from).sum();
        units as f32 / self.units_per_em
    }
}

/// The subtables of each lookup that the feature "kern" names.
fn tables(font: &FontRef<'static>) -> Result<Vec<Vec<PairPos<'static>>>, ReadError> {
    let gpos = font.gpos()?;
    let features = gpos.feature_list()?;
    let mut places = Vec::new();
    for record in features.feature_records().iter().filter(|record| record.feature_tag() == Tag::new(b"kern")) {
        let feature = record.feature(features.offset_data())?;
        places.extend(feature.lookup_list_indices().iter().map(|place| place.get()));
    }
    places.sort_unstable();
    places.dedup();
    let lookups = gpos.lookup_list()?;
    let mut tables = Vec::new();
    for place in places {
        if let PositionSubtables::Pair(pairs) = lookups.lookups().get(usize::from(place))?.subtables()? {
            tables.push(pairs.iter().collect::<Result<Vec<_>, _>>()?);
        }
    }
    Ok(tables)
}

/// What a table says of a pair; `None` if it does not know it.
fn value(table: &PairPos<'static>, left: GlyphId, right: GlyphId) -> Option<i16> {
    match table {
        PairPos::Format1(single) => {
            let set = single.pair_sets().get(usize::from(single.coverage().ok()?.get(left)?)).ok()?;
            let right = GlyphId16::try_from(right).ok()?;
            let pair = set.pair_value_records().iter().filter_map(Result::ok).find(|pair| pair.second_glyph() == right)?;
            Some(pair.value_record1().x_advance().unwrap_or_default())
        }
        PairPos::Format2(classes) => {
            classes.coverage().ok()?.get(left)?;
            let (first, second) = (classes.class_def1().ok()?.get(left), classes.class_def2().ok()?.get(right));
            let row = classes.class1_records().get(usize::from(first)).ok()?;
            let pair = row.class2_records().get(usize::from(second)).ok()?;
            Some(pair.value_record1().x_advance().unwrap_or_default())
        }
    }
}
