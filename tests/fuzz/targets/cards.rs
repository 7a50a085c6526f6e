//! Any contents of a card are either read or refused, also under a checksum that is right; what is read is checked, and a plan that can
//! be followed is shown. The first byte chooses the version.
#![no_main]

use exercises::history::History;
use exercises::id::LogId;
use exercises::log::Log;
use exercises::plan::check;
use exercises::time::Offsets;
use exercises::today::{Followed, compose};
use fuzz::CATALOGUE;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|input: &[u8]| {
    let Some((version, contents)) = input.split_first() else { return };
    let bytes = fuzz::card(version % 4, contents);
    if let Ok(text) = format::card::from_text(&format::card::to_text(&bytes)) {
        assert_eq!(text, bytes, "its text says the same");
    }
    let Ok(card) = format::card::open(&bytes) else { return };
    let card = card.into_card_after_checking_the_signature();
    let mut catalogue = CATALOGUE.clone();
    for own in &card.own {
        if let Ok(exercise) = format::catalogue::read("own exercise", own, &[]) {
            catalogue.exercises.retain(|known| known.id != exercise.id);
            catalogue.exercises.push(exercise);
        }
    }
    if !check::problems(&card.plan, &catalogue).is_empty() {
        return;
    }
    let payload = format::card::payload(&card).expect("what can be followed can be written");
    let again = format::card::open(&format::card::seal(&payload, &[0; 64])).expect("and read");
    assert_eq!(again.into_card_after_checking_the_signature().plan, card.plan);
    let zone = Offsets::fixed(3600);
    let now = zone.stamp(1_795_600_000_000);
    let history = History::fold(&Log { id: LogId([1; 8]), former: Vec::new(), entries: Vec::new() }, card.plan.header.id);
    let followed = Followed { plan: card.plan, taken: now, ahead: None, history };
    let _ = compose(&[(&followed, &catalogue)], now, &zone);
});
