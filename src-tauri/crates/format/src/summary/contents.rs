//! The contents of a summary as CBOR. The keys never change: a new part gets a new key, and an old key is never used again.

use super::SummaryFault;
use super::answers::{AlarmOut, DelayOut, DuringOut, MorningOut, PainOut, RatedOut, SettledOut, WellAgainOut};
use super::corrections::CorrectionsOut;
use super::former::FormerOut;
use super::runs::RunOut;
use super::slots::{ItemDayOut, TakenOut};
use super::wrong_clock::WrongClockOut;
use crate::cbor::{Malformed, MapIn, MapOut, bytes};
use exercises::id::{LogId, PlanId};
use exercises::plain_text::shown;
use exercises::summary::{ByWrongClock, FormerPart, MAX_DAYS, MAX_NOTE, Summary};
use exercises::time::DayNumber;
use minicbor::Decode;
use minicbor::bytes::ByteArray;

/// Largest number of cards taken within one plan.
const MAX_TAKEN: usize = 400;
/// Largest number of rows of item and day: every item on every day, and twice if a card was taken on the day.
const MAX_ITEM_DAYS: usize = 2 * 12 * MAX_DAYS as usize;
/// Largest number of runs: a hundred for each day.
pub(super) const MAX_RUNS: usize = 100 * MAX_DAYS as usize;
/// Largest number of answers of one kind: fifty for each day.
pub(super) const MAX_ANSWERS: usize = 50 * MAX_DAYS as usize;
/// Largest number of ids that a log had before: one for each time that it was copied, moved or put back.
const MAX_FORMER: usize = 1024;
/// Largest number of weeks.
const MAX_WEEKS: usize = 64;

impl From<Malformed> for SummaryFault {
    fn from(Malformed(field): Malformed) -> SummaryFault {
        SummaryFault::Malformed { field }
    }
}

/// Writes a summary's contents.
pub(super) fn write(summary: &Summary) -> Result<Vec<u8>, Malformed> {
    let Summary {
        plan,
        log,
        former,
        counter,
        from,
        until,
        taken,
        seen,
        days,
        runs,
        mornings,
        during,
        settled,
        well_again,
        rated,
        alarms,
        delays,
        note,
        corrections,
        wrong_clock,
    } = summary;
    let mut map = MapOut::default();
    map.put(0, "plan", &bytes(plan.0))?;
    map.put(1, "log", &bytes(log.0))?;
    map.put(2, "counter", counter)?;
    map.put(3, "from", &from.0)?;
    map.put(4, "until", &until.0)?;
    map.put_list(5, "taken", &rows::<_, TakenOut>(taken))?;
    map.put_list(6, "seen", &seen.iter().map(|day| day.0).collect::<Vec<u16>>())?;
    map.put_list(7, "days", &rows::<_, ItemDayOut>(days))?;
    map.put_list(8, "runs", &RunOut::list(runs))?;
    map.put_list(10, "settled", &rows::<_, SettledOut>(settled))?;
    map.put_list(11, "rated", &rows::<_, RatedOut>(rated))?;
    map.put_list(12, "alarms", &rows::<_, AlarmOut>(alarms))?;
    map.put_list(13, "delays", &rows::<_, DelayOut>(delays))?;
    map.put_some(14, "note", note.as_ref())?;
    map.put_some(15, "corrections", CorrectionsOut::of(corrections).as_ref())?;
    map.put_list(16, "mornings", &rows::<_, MorningOut>(mornings))?;
    map.put_list(17, "during", &rows::<_, DuringOut>(during))?;
    map.put_list(18, "well again", &rows::<_, WellAgainOut>(well_again))?;
    map.put_list(19, "former", &rows::<_, FormerOut>(former))?;
    map.put_some(20, "wrong clock", WrongClockOut::of(wrong_clock).as_ref())?;
    Ok(map.finish())
}

fn rows<'a, T, Row: From<&'a T>>(parts: &'a [T]) -> Vec<Row> {
    parts.iter().map(Row::from).collect()
}

/// Reads what [`write()`] wrote, ignoring keys that it does not know.
pub(super) fn read(plain: &[u8]) -> Result<Summary, Malformed> {
    let map = MapIn::split(plain, "contents")?;
    let log = LogId(map.need::<ByteArray<8>>(1, "log")?.into());
    // Version 1 has one list of pain: after a run it was asked about while doing its item, else about the morning.
    let pain = map.list::<PainOut, MAX_ANSWERS>(9, "pain")?;
    let (after, own): (Vec<PainOut>, Vec<PainOut>) = pain.into_iter().partition(PainOut::is_after_a_run);
    let mut mornings = valid(own, "pain", PainOut::morning)?;
    mornings.extend(list::<_, _, MAX_ANSWERS>(&map, 16, "mornings", MorningOut::morning)?);
    let mut during = valid(after, "pain", PainOut::during)?;
    during.extend(list::<_, _, MAX_ANSWERS>(&map, 17, "during", DuringOut::during)?);
    let former = list::<_, _, MAX_FORMER>(&map, 19, "former", FormerOut::part)?;
    let summary = Summary {
        plan: PlanId(map.need::<ByteArray<8>>(0, "plan")?.into()),
        log,
        former,
        counter: map.need(2, "counter")?,
        from: DayNumber(map.need(3, "from")?),
        until: DayNumber(map.need(4, "until")?),
        taken: list::<_, _, MAX_TAKEN>(&map, 5, "taken", TakenOut::taken)?,
        seen: map.list::<u16, { MAX_DAYS as usize }>(6, "seen")?.into_iter().map(DayNumber).collect(),
        days: list::<_, _, MAX_ITEM_DAYS>(&map, 7, "days", ItemDayOut::item_day)?,
        runs: RunOut::runs(map.list::<RunOut, MAX_RUNS>(8, "runs")?).ok_or(Malformed("runs"))?,
        mornings,
        during,
        well_again: list::<_, _, MAX_ANSWERS>(&map, 18, "well again", WellAgainOut::well_again)?,
        settled: list::<_, _, MAX_ANSWERS>(&map, 10, "settled", SettledOut::settled)?,
        rated: list::<_, _, MAX_ANSWERS>(&map, 11, "rated", RatedOut::rated)?,
        alarms: list::<_, _, MAX_ANSWERS>(&map, 12, "alarms", |row: AlarmOut| row.alarm(log))?,
        delays: list::<_, _, MAX_WEEKS>(&map, 13, "delays", DelayOut::delay)?,
        note: map.some::<String>(14, "note")?.map(|note| shown(&note).into_owned()),
        corrections: map.some(15, "corrections")?.map(CorrectionsOut::corrections).unwrap_or_default(),
        wrong_clock: match map.some::<WrongClockOut>(20, "wrong clock")? {
            Some(written) => written.wrong_clock().ok_or(Malformed("wrong clock"))?,
            None => ByWrongClock::default(),
        },
    };
    within_period(&summary)?;
    Ok(summary)
}

/// A list of rows; every row must be valid.
fn list<'b, Row: Decode<'b, ()>, T, const MAX: usize>(
    map: &MapIn<'b>,
    key: u8,
    field: &'static str,
    meaning: impl Fn(Row) -> Option<T>,
) -> Result<Vec<T>, Malformed> {
    valid(map.list::<Row, MAX>(key, field)?, field, meaning)
}

/// What rows mean; every row must be valid.
fn valid<Row, T>(rows: Vec<Row>, field: &'static str, meaning: impl Fn(Row) -> Option<T>) -> Result<Vec<T>, Malformed> {
    rows.into_iter().map(meaning).collect::<Option<_>>().ok_or(Malformed(field))
}

/// Checks that the period is valid, the note short enough, and every row within the period. Cards may have been taken before
/// it; alarms that no card has cleared are in every summary, whenever they were raised.
fn within_period(summary: &Summary) -> Result<(), Malformed> {
    let (from, until) = (summary.from, summary.until);
    let within = |day: DayNumber| (from..=until).contains(&day);
    let need = |holds: bool, field| if holds { Ok(()) } else { Err(Malformed(field)) };
    need(from <= until && until.days_since(from) < MAX_DAYS, "period")?;
    need(summary.note.as_ref().is_none_or(|note| note.chars().count() <= MAX_NOTE), "note")?;
    let rises = |parts: &[FormerPart]| parts[0].entries < parts[1].entries && parts[0].runs <= parts[1].runs;
    need(summary.former.windows(2).all(rises) && summary.former.iter().all(|part| part.entries > 0), "former")?;
    need(summary.taken.iter().all(|taken| taken.day <= until), "taken")?;
    need(summary.seen.iter().all(|day| within(*day)), "seen")?;
    need(summary.days.iter().all(|row| within(row.day)), "days")?;
    need(summary.runs.iter().all(|row| within(row.day)), "runs")?;
    need(summary.mornings.iter().all(|row| within(row.day)), "mornings")?;
    need(summary.during.iter().all(|row| within(row.day)), "during")?;
    need(summary.settled.iter().all(|row| within(row.day)), "settled")?;
    need(summary.rated.iter().all(|row| within(row.day)), "rated")?;
    need(summary.delays.iter().all(|row| (from.0 / 7..=until.0 / 7).contains(&row.week)), "delays")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::packed::unpack;
    use crate::summary::{Letter, MAX_CONTENTS};
    use exercises::id::ItemId;
    use exercises::score::Score;
    use exercises::summary::{DuringOn, RunOn};

    /// The contents of the frozen letter of version 2, unpacked.
    fn frozen() -> Vec<u8> {
        unpacked(include_bytes!("../../tests/frozen/summary-2.letter"))
    }

    fn unpacked(letter: &[u8]) -> Vec<u8> {
        let letter = Letter::parse(letter).expect("a letter");
        unpack(b"", &letter.body.packed, MAX_CONTENTS).expect("packed")
    }

    /// The packing may improve, but the packed contents must never change.
    #[test]
    fn a_summary_is_written_as_it_always_was() {
        assert_eq!(write(&read(&frozen()).expect("a summary")), Ok(frozen()));
    }

    /// The bytes of this key are as fixed as those of the frozen letters, in which no log had an id before.
    #[test]
    fn former_ids_are_written_as_they_always_were() {
        let mut summary = read(&frozen()).expect("a summary");
        let part = |byte, entries| FormerPart { log: LogId([byte; 8]), entries, runs: 2, until: DayNumber(7) };
        summary.former = vec![part(0xAB, 300), part(0xCD, 301)];
        let plain = write(&summary).expect("a summary");
        let key = b"\x13\x82\xa4\x00\x48\xab\xab\xab\xab\xab\xab\xab\xab\x01\x19\x01\x2c\x02\x02\x03\x07";
        assert!(plain.windows(key.len()).any(|part| part == key), "{plain:x?}");
        assert_eq!(read(&plain), Ok(summary.clone()));
        for parts in [vec![part(1, 0)], vec![part(1, 5), part(2, 5)], vec![part(1, 6), part(2, 5)]] {
            summary.former = parts;
            assert_eq!(read(&write(&summary).expect("written")), Err(Malformed("former")));
        }
    }

    /// The bytes of this key are as fixed as those of the frozen letters, in which no clock was wrong.
    #[test]
    fn what_a_wrong_clock_recorded_is_written_as_it_always_was() {
        let mut summary = read(&frozen()).expect("a summary");
        let score = Score::at_most_ten(7);
        summary.wrong_clock = ByWrongClock {
            during: vec![DuringOn { n: 300, day: DayNumber(1500), item: ItemId(2), score }],
            alarms: [301].into(),
            ..ByWrongClock::default()
        };
        let plain = write(&summary).expect("a summary");
        let key = b"\x14\xa5\x00\x80\x01\x80\x02\x81\xa4\x00\x19\x01\x2c\x01\x19\x05\xdc\x02\x02\x03\x07\x03\x80\x04\x81\x19\x01\x2d";
        assert!(plain.windows(key.len()).any(|part| part == key), "{plain:x?}");
        assert_eq!(read(&plain), Ok(summary.clone()));
        summary.wrong_clock.runs =
            summary.runs.iter().map(|run| RunOn { slot: None, day: DayNumber(1500), ..run.clone() }).collect();
        summary.wrong_clock.mornings = summary.mornings.clone();
        summary.wrong_clock.rated = summary.rated.clone();
        assert_eq!(
            read(&write(&summary).expect("a summary")),
            Ok(summary),
            "days of a wrong clock are not bound to the period"
        );
    }

    #[test]
    fn a_key_that_a_later_program_adds_is_ignored() {
        let mut plain = frozen();
        assert_eq!(plain[0], 0xB1, "a map of seventeen");
        plain[0] = 0xB2;
        plain.extend(b"\x18\x63\x82\x01\x61x");
        assert_eq!(read(&plain), read(&frozen()));
    }

    #[test]
    fn a_score_above_ten_is_refused() {
        // Maps of entry number, day, complaint or activity, and score.
        let first = || unpacked(include_bytes!("../../tests/frozen/summary-1.letter"));
        let ratings = [
            ("pain", first(), b"\xa4\x00\x03\x01\x07\x02\x01\x03\x0a"),
            ("mornings", frozen(), b"\xa4\x00\x03\x01\x07\x02\x01\x03\x0a"),
            ("rated", frozen(), b"\xa4\x00\x0a\x01\x08\x02\x01\x03\x07"),
        ];
        for (field, mut plain, rating) in ratings {
            let place = plain.windows(rating.len()).position(|window| window == rating).expect("the rating");
            plain[place + rating.len() - 1] = 11;
            assert_eq!(read(&plain), Err(Malformed(field)));
        }
    }

    #[test]
    fn contents_cut_or_changed_anywhere_are_never_read_wrongly_without_a_fault() {
        let (plain, known) = (frozen(), read(&frozen()));
        for at in 0..plain.len() {
            assert!(read(&plain[..at]).is_err(), "cut at {at}");
            let mut changed = plain.clone();
            changed[at] = changed[at].wrapping_add(1);
            assert_ne!(read(&changed), known, "byte {at} says nothing");
        }
    }
}
