//! The rows of a card's lists in the form in which they are written, with conversions to and from the domain. The keys never
//! change.

use crate::codes::Code;
use crate::parts::{self, Date, DoseOut, ScheduleOut};
use exercises::alarm::{ClearedAlarm, Trouble};
use exercises::catalogue::{ExerciseId, Eyes, RungId, Surface};
use exercises::id::{ActivityId, AlarmId, ComplaintId, EntryRef, ItemId, LogId};
use exercises::plan::{Activity, Aftercare, Band, BodySide, Complaint, Item, Kilograms, Load, Phase, Side, StanceBaseline};
use exercises::score::Score;
use exercises::time::DayNumber;
use minicbor::bytes::ByteArray;
use minicbor::data::Type;
use minicbor::{Decode, Decoder, Encode, Encoder, decode, encode};

fn is_false(value: &bool) -> bool {
    !value
}

/// A weight in quarters of a kilogram, or a band.
#[derive(Encode, Decode)]
#[cbor(flat)]
enum LoadOut {
    #[n(0)]
    Weight(#[n(0)] u16),
    #[n(1)]
    Band(#[n(0)] Code<Band>),
}

impl From<Load> for LoadOut {
    fn from(load: Load) -> LoadOut {
        match load {
            Load::Weight(weight) => LoadOut::Weight(weight.quarters()),
            Load::Band(band) => LoadOut::Band(Code(band)),
        }
    }
}

impl LoadOut {
    /// The load; `None` for a weight that is out of range.
    fn load(self) -> Option<Load> {
        match self {
            LoadOut::Weight(quarters) => Kilograms::of_quarters(quarters).map(Load::Weight),
            LoadOut::Band(Code(band)) => Some(Load::Band(band)),
        }
    }
}

/// Whether an item asks for something that only cards from version 4 on can say.
pub(super) fn is_of_version_4(item: &Item) -> bool {
    let demands = item.load.is_some() || item.effort.is_some() || item.with_helper;
    parts::is_of_version_4(&item.schedule) || !item.phase.is_whole() || demands
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct ItemOut {
    #[n(0)]
    id: u8,
    #[n(1)]
    exercise: String,
    #[n(2)]
    content: u16,
    #[n(3)]
    rung: Option<String>,
    #[n(4)]
    side: Code<Side>,
    #[n(5)]
    dose: DoseOut,
    #[n(6)]
    schedule: ScheduleOut,
    #[n(7)]
    pain_limit: u8,
    #[n(8)]
    #[cbor(skip_if = "is_false")]
    may_step: bool,
    #[n(9)]
    serves: Option<u8>,
    #[n(10)]
    #[cbor(skip_if = "String::is_empty")]
    note: String,
    #[n(11)]
    first: Option<Date>,
    #[n(12)]
    last: Option<Date>,
    #[n(13)]
    load: Option<LoadOut>,
    #[n(14)]
    effort: Option<u8>,
    #[n(15)]
    #[cbor(skip_if = "is_false")]
    with_helper: bool,
}

impl From<&Item> for ItemOut {
    fn from(item: &Item) -> ItemOut {
        let Item {
            id,
            exercise,
            content,
            rung,
            side,
            dose,
            schedule,
            phase,
            pain_limit,
            may_step,
            serves,
            note,
            load,
            effort,
            with_helper,
        } = item;
        ItemOut {
            id: id.0,
            exercise: exercise.to_string(),
            content: *content,
            rung: rung.as_ref().map(RungId::to_string),
            side: Code(*side),
            dose: DoseOut(*dose),
            schedule: ScheduleOut::from(schedule),
            pain_limit: pain_limit.points(),
            may_step: *may_step,
            serves: serves.map(|complaint| complaint.0),
            note: note.clone(),
            first: phase.first.map(Date),
            last: phase.last.map(Date),
            load: load.map(LoadOut::from),
            effort: effort.map(Score::points),
            with_helper: *with_helper,
        }
    }
}

impl ItemOut {
    /// The item; `None` if an id is not valid, the schedule has impossible minutes, or the pain limit is above 10.
    pub(super) fn item(self) -> Option<Item> {
        let ItemOut {
            id,
            exercise,
            content,
            rung,
            side,
            dose,
            schedule,
            pain_limit,
            may_step,
            serves,
            note,
            first,
            last,
            load,
            effort,
            with_helper,
        } = self;
        let day = |day: Option<Date>| day.map(|Date(day)| day);
        Some(Item {
            id: ItemId(id),
            exercise: ExerciseId::new(exercise).ok()?,
            content,
            rung: rung.map(RungId::new).transpose().ok()?,
            side: side.0,
            dose: dose.0,
            schedule: schedule.schedule()?,
            phase: Phase { first: day(first), last: day(last) },
            // Two options: whether there is one, and whether it is in range.
            load: load.map_or(Some(None), |load| load.load().map(Some))?,
            effort: score(effort)?,
            with_helper,
            pain_limit: Score::new(pain_limit)?,
            may_step,
            serves: serves.map(ComplaintId),
            note,
        })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct ComplaintOut {
    #[n(0)]
    id: u8,
    #[n(1)]
    name: String,
    #[n(2)]
    side: Code<Side>,
    #[n(3)]
    pain: Option<u8>,
}

impl From<&Complaint> for ComplaintOut {
    fn from(Complaint { id, name, side, pain }: &Complaint) -> ComplaintOut {
        ComplaintOut { id: id.0, name: name.clone(), side: Code(*side), pain: pain.map(Score::points) }
    }
}

impl ComplaintOut {
    /// The complaint; `None` if the pain is above 10.
    pub(super) fn complaint(self) -> Option<Complaint> {
        let ComplaintOut { id, name, side: Code(side), pain } = self;
        Some(Complaint { id: ComplaintId(id), name, side, pain: score(pain)? })
    }
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct ActivityOut {
    #[n(0)]
    id: u8,
    #[n(1)]
    name: String,
    #[n(2)]
    rating: Option<u8>,
}

impl From<&Activity> for ActivityOut {
    fn from(Activity { id, name, rating }: &Activity) -> ActivityOut {
        ActivityOut { id: id.0, name: name.clone(), rating: rating.map(Score::points) }
    }
}

impl ActivityOut {
    /// The activity; `None` if the rating is above 10.
    pub(super) fn activity(self) -> Option<Activity> {
        let ActivityOut { id, name, rating } = self;
        Some(Activity { id: ActivityId(id), name, rating: score(rating)? })
    }
}

/// The rating, if there is one; `None` if it is above 10.
fn score(points: Option<u8>) -> Option<Option<Score>> {
    points.map(Score::try_from).transpose().ok()
}

#[derive(Encode, Decode)]
#[cbor(map)]
pub(super) struct BaselineOut {
    #[n(0)]
    leg: Code<BodySide>,
    #[n(1)]
    surface: Code<Surface>,
    #[n(2)]
    eyes: Code<Eyes>,
    #[n(3)]
    tenths: u16,
    #[n(4)]
    #[cbor(skip_if = "is_false")]
    capped: bool,
    /// Older cards do not have this key; [`exercises::plan::Plan::dated_baselines`] says how they are read.
    #[n(5)]
    taken: Option<Date>,
}

impl From<&StanceBaseline> for BaselineOut {
    fn from(StanceBaseline { taken, leg, surface, eyes, tenths, capped }: &StanceBaseline) -> BaselineOut {
        BaselineOut {
            leg: Code(*leg),
            surface: Code(*surface),
            eyes: Code(*eyes),
            tenths: *tenths,
            capped: *capped,
            taken: taken.map(Date),
        }
    }
}

impl BaselineOut {
    pub(super) fn baseline(self) -> StanceBaseline {
        let BaselineOut { leg: Code(leg), surface: Code(surface), eyes: Code(eyes), tenths, capped, taken } = self;
        StanceBaseline { taken: taken.map(|Date(day)| day), leg, surface, eyes, tenths, capped }
    }
}

/// A line of aftercare: one of the fixed list as its number, one that the clinician wrote as text.
pub(super) struct AftercareOut(Aftercare);

impl From<&Aftercare> for AftercareOut {
    fn from(line: &Aftercare) -> AftercareOut {
        AftercareOut(line.clone())
    }
}

impl AftercareOut {
    pub(super) fn aftercare(self) -> Aftercare {
        self.0
    }
}

impl<C> Encode<C> for AftercareOut {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, _: &mut C) -> Result<(), encode::Error<W::Error>> {
        match &self.0 {
            Aftercare::SorenessIsUsual => out.u8(0)?.ok(),
            Aftercare::KeepMoving => out.u8(1)?.ok(),
            Aftercare::GoEasy => out.u8(2)?.ok(),
            Aftercare::WarmthIfPleasant => out.u8(3)?.ok(),
            Aftercare::ContactIfWorse => out.u8(4)?.ok(),
            Aftercare::Own(text) => out.str(text)?.ok(),
        }
    }
}

impl<'b, C> Decode<'b, C> for AftercareOut {
    fn decode(input: &mut Decoder<'b>, _: &mut C) -> Result<Self, decode::Error> {
        if input.datatype()? == Type::String {
            return Ok(AftercareOut(Aftercare::Own(input.str()?.to_owned())));
        }
        match input.u8()? {
            0 => Ok(AftercareOut(Aftercare::SorenessIsUsual)),
            1 => Ok(AftercareOut(Aftercare::KeepMoving)),
            2 => Ok(AftercareOut(Aftercare::GoEasy)),
            3 => Ok(AftercareOut(Aftercare::WarmthIfPleasant)),
            4 => Ok(AftercareOut(Aftercare::ContactIfWorse)),
            _ => Err(decode::Error::message("an unknown line")),
        }
    }
}

#[derive(Encode, Decode)]
pub(super) struct ClearedOut(#[n(0)] ByteArray<8>, #[n(1)] u32);

impl ClearedOut {
    pub(super) fn entry(self) -> EntryRef {
        let ClearedOut(log, n) = self;
        EntryRef { log: LogId(log.into()), n }
    }
}

/// A cleared alarm: its name, what was wrong, and the day.
#[derive(Encode, Decode)]
pub(super) struct ClearedAlarmOut(#[n(0)] ByteArray<8>, #[n(1)] Option<Code<Trouble>>, #[n(2)] Option<u16>);

impl From<&ClearedAlarm> for ClearedAlarmOut {
    fn from(ClearedAlarm { id, seen }: &ClearedAlarm) -> ClearedAlarmOut {
        let (trouble, day) = seen.map(|(trouble, day)| (Code(trouble), day.0)).unzip();
        ClearedAlarmOut(ByteArray::from(id.0), trouble, day)
    }
}

impl ClearedAlarmOut {
    pub(super) fn alarm(self) -> ClearedAlarm {
        let ClearedAlarmOut(id, trouble, day) = self;
        let seen = trouble.zip(day).map(|(Code(trouble), day)| (trouble, DayNumber(day)));
        ClearedAlarm { id: AlarmId(id.into()), seen }
    }
}
