//! What fuzzing once found, each input with what has to come of it. The inputs are in the form that the target's comment says.

use exercises::id::LogId;
use exercises::review;
use exercises::summary::union::unite;
use format::summary::Body;
use std::collections::BTreeMap;

const CARD: &[u8] = include_bytes!("frozen/card-2.bin");
/// Contents of two summaries of one plan; both devices say something about a slot that is not at the same place in both.
const TWO_DEVICES: &[u8] = include_bytes!("frozen/summaries-found-1.bin");
/// Where the log is in contents.
const LOG: std::ops::Range<usize> = 13..21;

#[test]
fn two_summaries_whose_slots_do_not_agree_are_reviewed() {
    let plan = format::card::open(CARD).expect("a card").into_card_after_checking_the_signature().plan;
    let catalogue = format::catalogue::embedded().expect("it ships with the program");
    let mut rest = TWO_DEVICES;
    let mut summaries = Vec::new();
    while let Some((length, after)) = rest.split_first_chunk() {
        let (contents, after) = after.split_at(after.len().min(u16::from_le_bytes(*length).into()));
        rest = after;
        let packed = miniz_oxide::deflate::compress_to_vec(contents, 1);
        let log = LogId(contents[LOG].try_into().expect("eight bytes"));
        let body = Body { plan: plan.header.id, log, counter: contents[LOG.end + 1].into(), packed, version: 2 };
        summaries.push(format::summary::read(&body).expect("the input was accepted when it was found"));
    }
    assert_eq!(summaries.len(), 2);
    let _ = unite(&summaries);
    let review = review::build(&BTreeMap::from([(1, plan.clone())]), &catalogue, &summaries).expect("a review");
    let days = |review: &review::Review| review.covered.map(|(from, until)| (until - from).num_days());
    let alone = review::build(&BTreeMap::from([(1, plan)]), &catalogue, &summaries[..1]).expect("a review");
    assert_eq!(days(&review), days(&alone), "the second covers the same days");
}
