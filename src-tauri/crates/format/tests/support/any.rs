//! Arbitrary plans, cards and summaries, of all values that the domain's types and a card or a summary can hold.

use chrono::{Days as Ahead, NaiveDate};
use exercises::alarm::{Circumstance, ClearedAlarm, Trouble};
use exercises::catalogue::{Dose, ExerciseId, Eyes, RungId, Surface, Tempo};
use exercises::history::Mark;
use exercises::id::{ActivityId, AlarmId, ComplaintId, ItemId, LogId, PlanId, RunId};
use exercises::log::{Barrier, DayOffReason};
use exercises::plain_text::is_hidden;
use exercises::plan::{
    Activity, Aftercare, AgeBand, Band, BodySide, Complaint, Days, Header, Item, Kilograms, Load, Pattern, Phase, Plan,
    Prescription, Risk, Schedule, Side, StanceBaseline, Weekdays,
};
use exercises::run::{RunEnd, SetUp, Share, Trial, TrialEnd};
use exercises::score::Score;
use exercises::summary::{
    AlarmOn, ByWrongClock, Corrections, DuringOn, FormerPart, ItemDay, MorningOn, RatedOn, RunOn, RunTiming, SettledOn,
    StanceOn, Summary, SwayOn, TakenOn, TallyOn, WeekDelay, WellAgainOn,
};
use exercises::sway::{ReportedFigures, SourceKind};
use exercises::time::DayNumber;
use format::card::{Card, FormerKey, MAX_FORMER, PairingSecret};
use proptest::collection::{btree_map, btree_set, vec};
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

fn day() -> impl Strategy<Value = NaiveDate> {
    let first = NaiveDate::from_ymd_opt(2020, 1, 1).expect("a date");
    any::<u16>().prop_map(move |ahead| first + Ahead::new(u64::from(ahead)))
}

/// A text of at most so many characters, without those that are not read.
fn text(most: usize) -> impl Strategy<Value = String> {
    vec(any::<char>().prop_filter("seen", |c| !is_hidden(*c) && *c != '\n'), 0..=most).prop_map(String::from_iter)
}

fn id() -> impl Strategy<Value = String> {
    "[a-z][a-z0-9]{0,9}(-[a-z0-9]{1,9}){0,2}"
}

fn rung() -> impl Strategy<Value = RungId> {
    id().prop_map(|id| RungId::new(id).expect("kebab case"))
}

fn side() -> impl Strategy<Value = Side> {
    select(vec![Side::Left, Side::Right, Side::Both, Side::Neither])
}

fn leg() -> impl Strategy<Value = BodySide> {
    select(vec![BodySide::Left, BodySide::Right])
}

fn surface() -> impl Strategy<Value = Surface> {
    select(vec![Surface::Firm, Surface::FoldedTowel, Surface::Cushion, Surface::Foam])
}

fn eyes() -> impl Strategy<Value = Eyes> {
    select(vec![Eyes::Open, Eyes::Closed])
}

fn schedule() -> impl Strategy<Value = Schedule> {
    let every = (1..1440_u16, 0..1440_u16, 0..1440_u16);
    let pattern = prop_oneof![
        every.prop_map(|(minutes, from, to)| Pattern::Every { minutes, from, to }),
        btree_set(0..1440_u16, 0..=12).prop_map(|times| Pattern::At { times: times.into_iter().collect() }),
    ];
    let days = prop_oneof![
        (0..128_u8).prop_map(|days| Days::On(Weekdays::from_bits(days).expect("seven bits"))),
        (any::<u8>(), day()).prop_map(|(n, from)| Days::EveryNth { n, from }),
        (any::<u8>(), day()).prop_map(|(n, from)| Days::TimesAWeek { n, from }),
    ];
    prop_oneof![
        8 => (days, pattern).prop_map(|(days, pattern)| Schedule { days, pattern }),
        1 => Just(Schedule::AS_NEEDED),
    ]
}

fn dose() -> impl Strategy<Value = Dose> {
    let tempo = any::<(u8, u8, u8)>().prop_map(|(up_s, hold_s, down_s)| Tempo { up_s, hold_s, down_s });
    prop_oneof![
        any::<(u8, u16, u16)>().prop_map(|(repetitions, hold_s, rest_s)| Dose::Hold { repetitions, hold_s, rest_s }),
        any::<(u8, u16, u16)>().prop_map(|(trials, target_s, rest_s)| Dose::Balance { trials, target_s, rest_s }),
        (any::<(u8, u8, u16)>(), tempo).prop_map(|((sets, repetitions, rest_s), tempo)| Dose::Reps {
            sets,
            repetitions,
            rest_s,
            tempo
        }),
    ]
}

fn item() -> impl Strategy<Value = Item> {
    let names = (any::<u8>(), id(), any::<u16>(), option::of(rung()));
    let rest = (side(), dose(), schedule(), score(), any::<bool>(), option::of(any::<u8>()), text(40));
    let load = prop_oneof![
        (1..=400_u16).prop_map(|quarters| Load::Weight(Kilograms::of_quarters(quarters).expect("within"))),
        select(Band::ALL.to_vec()).prop_map(Load::Band),
    ];
    let demands = (option::of(load), option::of(score()), any::<bool>());
    let phase = (option::of(day()), option::of(day())).prop_map(|(first, last)| Phase { first, last });
    (names, rest, phase, demands).prop_map(|(names, rest, phase, (load, effort, with_helper))| {
        let (side, dose, schedule, pain_limit, may_step, serves, note) = rest;
        let (id, exercise, content, rung) = names;
        Item {
            id: ItemId(id),
            exercise: ExerciseId::new(exercise).expect("kebab case"),
            content,
            rung,
            side,
            dose,
            load,
            effort,
            with_helper,
            schedule,
            phase,
            pain_limit,
            may_step,
            serves: serves.map(ComplaintId),
            note,
        }
    })
}

fn complaint() -> impl Strategy<Value = Complaint> {
    (any::<u8>(), text(60), side(), option::of(score())).prop_map(|(id, name, side, pain)| Complaint {
        id: ComplaintId(id),
        name,
        side,
        pain,
    })
}

fn activity() -> impl Strategy<Value = Activity> {
    (any::<u8>(), text(60), option::of(score())).prop_map(|(id, name, rating)| Activity { id: ActivityId(id), name, rating })
}

fn baseline() -> impl Strategy<Value = StanceBaseline> {
    let taken = (option::of(day()), leg(), surface(), eyes(), any::<u16>(), any::<bool>());
    taken.prop_map(|(taken, leg, surface, eyes, tenths, capped)| StanceBaseline {
        taken,
        leg,
        surface,
        eyes,
        tenths,
        capped,
    })
}

fn aftercare() -> impl Strategy<Value = Aftercare> {
    prop_oneof![
        Just(Aftercare::SorenessIsUsual),
        Just(Aftercare::KeepMoving),
        Just(Aftercare::GoEasy),
        Just(Aftercare::WarmthIfPleasant),
        Just(Aftercare::ContactIfWorse),
        text(120).prop_map(Aftercare::Own),
    ]
}

fn cleared() -> impl Strategy<Value = ClearedAlarm> {
    let seen = option::of((select(Trouble::ALL.to_vec()), any::<u16>().prop_map(DayNumber)));
    (any::<[u8; 8]>(), seen).prop_map(|(id, seen)| ClearedAlarm { id: AlarmId(id), seen })
}

pub fn plan() -> impl Strategy<Value = Plan> {
    let head = (any::<[u8; 8]>(), any::<u16>(), text(60), option::of("[0-9 +()/-]{1,30}"), day(), day(), day());
    let age = option::of(select(AgeBand::ALL.to_vec()));
    let who = (age, btree_set(select(Risk::ALL.to_vec()), 0..=11), option::of(day()), vec(cleared(), 0..=4));
    let lists = (
        vec(item(), 0..=12),
        vec(complaint(), 0..=5),
        vec(activity(), 0..=5),
        vec(baseline(), 0..=8),
        vec(aftercare(), 0..=8),
    );
    (head, who, lists).prop_map(|(head, who, lists)| {
        let (id, revision, clinic, phone, start, issued, review) = head;
        let (age, absent, confirmed, cleared) = who;
        let (items, complaints, activities, baselines, aftercare) = lists;
        Plan {
            header: Header { id: PlanId(id), revision, clinic, phone, start, issued },
            prescription: Prescription {
                review,
                age,
                absent,
                confirmed,
                items,
                complaints,
                activities,
                baselines,
                aftercare,
                cleared,
            },
        }
    })
}

/// An arbitrary card; its keys need not be valid keys.
pub fn card() -> impl Strategy<Value = Card> {
    let former = btree_map(any::<[u8; 32]>(), (any::<[u8; 32]>(), any::<[u8; 32]>()), 0..=MAX_FORMER);
    (plan(), any::<[[u8; 32]; 3]>(), vec("[ -~\n]{0,400}", 0..=3), former).prop_map(|(plan, keys, own, former)| {
        let [verify_key, recipient, secret] = keys;
        let other = former.into_iter().filter(|(key, _)| *key != verify_key);
        let former = other.map(|(key, (begin, end))| {
            let signature = [begin, end].concat().try_into().expect("twice 32 bytes");
            FormerKey { key, signature }
        });
        Card { plan, verify_key, recipient, pairing_secret: PairingSecret::new(secret), own, former: former.collect() }
    })
}

fn share() -> impl Strategy<Value = Share> {
    any::<(u32, u32)>().prop_map(|(a, b)| Share { done: a.min(b), of: a.max(b) })
}

fn mark() -> impl Strategy<Value = Mark> {
    prop_oneof![
        Just(Mark::Done),
        share().prop_map(Mark::Partly),
        select(Barrier::ALL.to_vec()).prop_map(Mark::Skipped),
        select(DayOffReason::ALL.to_vec()).prop_map(Mark::DayOff),
        Just(Mark::Paused),
        Just(Mark::NotDone),
        Just(Mark::Due),
        Just(Mark::ToCome),
        Just(Mark::NoSuchHour),
    ]
}

fn score() -> impl Strategy<Value = Score> {
    (0..=10_u8).prop_map(Score::at_most_ten)
}

fn day_number(from: u16, until: u16) -> impl Strategy<Value = DayNumber> {
    (from..=until).prop_map(DayNumber)
}

fn taken(until: u16) -> impl Strategy<Value = TakenOn> {
    let agreed = vec((any::<u8>().prop_map(ItemId), schedule()), 0..=3);
    (day_number(0, until), any::<u16>(), agreed).prop_map(|(day, revision, agreed)| TakenOn { day, revision, agreed })
}

fn item_day(from: u16, until: u16) -> impl Strategy<Value = ItemDay> {
    let slots = proptest::collection::btree_map(any::<u8>(), mark(), 0..=12);
    (day_number(from, until), any::<u8>(), any::<u16>(), slots).prop_map(|(day, item, revision, slots)| ItemDay {
        day,
        item: ItemId(item),
        revision,
        slots: slots.into_iter().collect(),
    })
}

fn sway() -> impl Strategy<Value = SwayOn> {
    let kind = select(vec![SourceKind::Native, SourceKind::Web, SourceKind::File]);
    let figures = (option::of(any::<u32>()), any::<u32>(), any::<u32>());
    let figures = figures.prop_map(|(rms_ml, rms_planar, path_per_s)| ReportedFigures { rms_ml, rms_planar, path_per_s });
    let facts = (any::<u8>(), any::<u8>(), any::<bool>(), any::<bool>());
    (kind, option::of(figures), facts).prop_map(|(kind, figures, (trial, touch_downs, gap, to_confirm))| SwayOn {
        trial,
        kind,
        touch_downs,
        figures,
        gap,
        to_confirm,
    })
}

fn stance() -> impl Strategy<Value = StanceOn> {
    let end = select(vec![TrialEnd::Touch, TrialEnd::Target, TrialEnd::CutOff]);
    let trial = (prop::option::of(leg()), any::<u32>(), end).prop_map(|(leg, held_ms, end)| Trial { leg, held_ms, end });
    let set_up = select(vec![SetUp::OnSupport, SetUp::AtBreastbone, SetUp::InPocket]);
    (set_up, surface(), eyes(), any::<u16>(), vec(trial, 0..=20), vec(sway(), 0..=20)).prop_map(
        |(set_up, surface, eyes, target_s, trials, sway)| StanceOn { set_up, surface, eyes, target_s, trials, sway },
    )
}

fn tally() -> impl Strategy<Value = TallyOn> {
    any::<(u16, u8, bool)>().prop_map(|(seconds, count, whole)| TallyOn { seconds, count, whole })
}

fn run(from: u16, until: u16) -> impl Strategy<Value = RunOn> {
    let end = select(vec![RunEnd::Going, RunEnd::Completed, RunEnd::Stopped, RunEnd::Trouble]);
    let head = (any::<u32>(), day_number(from, until), any::<u8>(), option::of(rung()), option::of(any::<u8>()), 0..24_u8);
    let timing = select(vec![RunTiming::InTime, RunTiming::Late, RunTiming::Moved]);
    let rest = (any::<bool>(), timing, end, share(), share(), option::of(stance()), option::of(tally()));
    (head, rest).prop_map(|((run, day, item, rung, slot, hour), (live, timing, end, dose, parts, stance, tally))| RunOn {
        run: RunId(run),
        day,
        item: ItemId(item),
        rung,
        slot,
        hour,
        live,
        timing,
        end,
        dose,
        parts,
        stance,
        tally,
    })
}

fn morning(from: u16, until: u16) -> impl Strategy<Value = MorningOn> {
    (any::<u32>(), day_number(from, until), any::<u8>(), score()).prop_map(|(n, day, of, score)| MorningOn {
        n,
        day,
        complaint: ComplaintId(of),
        score,
    })
}

fn during(from: u16, until: u16) -> impl Strategy<Value = DuringOn> {
    (any::<u32>(), day_number(from, until), any::<u8>(), score()).prop_map(|(n, day, of, score)| DuringOn {
        n,
        day,
        item: ItemId(of),
        score,
    })
}

fn well_again(from: u16, until: u16) -> impl Strategy<Value = WellAgainOn> {
    (any::<u32>(), day_number(from, until)).prop_map(|(n, day)| WellAgainOn { n, day })
}

fn settled(from: u16, until: u16) -> impl Strategy<Value = SettledOn> {
    (any::<u32>(), day_number(from, until), any::<u8>(), any::<bool>()).prop_map(|(n, day, of, settled)| SettledOn {
        n,
        day,
        complaint: ComplaintId(of),
        settled,
    })
}

fn rated(from: u16, until: u16) -> impl Strategy<Value = RatedOn> {
    (any::<u32>(), day_number(from, until), any::<u8>(), score()).prop_map(|(n, day, of, score)| RatedOn {
        n,
        day,
        activity: ActivityId(of),
        score,
    })
}

fn alarm(from: u16, until: u16) -> impl Strategy<Value = AlarmOn> {
    let about = (select(Trouble::ALL.to_vec()), option::of(any::<u8>()));
    let circumstances = btree_set(select(Circumstance::ALL.to_vec()), 0..=4);
    (any::<(u32, [u8; 8])>(), day_number(from, until), about, circumstances).prop_map(
        |((n, id), day, (trouble, item), circumstances)| AlarmOn {
            n,
            id: AlarmId(id),
            day,
            trouble,
            item: item.map(ItemId),
            circumstances,
        },
    )
}

fn delay(from: u16, until: u16) -> impl Strategy<Value = WeekDelay> {
    (from / 7..=until / 7, any::<u16>(), any::<[u16; 3]>()).prop_map(|(week, runs, mut delays)| {
        delays.sort_unstable();
        let [lower_s, median_s, upper_s] = delays;
        WeekDelay { week, runs, lower_s, median_s, upper_s }
    })
}

fn corrections() -> impl Strategy<Value = Corrections> {
    let entries = || btree_set(any::<u32>(), 0..=5);
    let all = (entries(), entries(), entries(), any::<u16>(), entries());
    all.prop_map(|(runs, gone, changed, days, alarms)| {
        let runs = runs.into_iter().map(RunId).collect();
        Corrections { runs, gone, changed, days, alarms }
    })
}

/// What a wrong clock recorded: its days are bound to no period.
fn wrong_clock() -> impl Strategy<Value = ByWrongClock> {
    let all = (
        vec(run(0, u16::MAX), 0..=3),
        vec(morning(0, u16::MAX), 0..=3),
        vec(during(0, u16::MAX), 0..=3),
        vec(rated(0, u16::MAX), 0..=3),
        btree_set(any::<u32>(), 0..=3),
    );
    all.prop_map(|(runs, mornings, during, rated, alarms)| ByWrongClock {
        runs,
        mornings,
        during,
        rated,
        alarms,
        ahead_days: 0,
    })
}

/// Former ids of a log: each has entries of its own.
fn former() -> impl Strategy<Value = Vec<FormerPart>> {
    vec((any::<[u8; 8]>(), 1..1000_u32, 0..100_u32, any::<u16>()), 0..=3).prop_map(|parts| {
        let (mut entries, mut runs) = (0, 0);
        let part = |(log, more, begun, until)| {
            (entries, runs) = (entries + more, runs + begun);
            FormerPart { log: LogId(log), entries, runs, until: DayNumber(until) }
        };
        parts.into_iter().map(part).collect()
    })
}

pub fn summary() -> impl Strategy<Value = Summary> {
    let period = (0..1000_u16, 0..400_u16).prop_map(|(from, length)| (from, from + length));
    period.prop_flat_map(|(from, until)| {
        let head = (any::<([u8; 8], [u8; 8], u32)>(), btree_set(from..=until, 0..=40), option::of(text(280)));
        let slots = (vec(taken(until), 0..=3), vec(item_day(from, until), 0..=20), vec(run(from, until), 0..=20));
        let answers = (
            vec(morning(from, until), 0..=20),
            vec(during(from, until), 0..=20),
            vec(well_again(from, until), 0..=3),
            vec(settled(from, until), 0..=5),
            vec(rated(from, until), 0..=5),
            vec(alarm(from, until), 0..=5),
            vec(delay(from, until), 0..=8),
        );
        let told = (corrections(), former(), wrong_clock());
        (head, slots, answers, told).prop_map(move |(head, slots, answers, (corrections, former, wrong_clock))| {
            let (taken, days, runs) = slots;
            let (mornings, during, well_again, settled, rated, alarms, delays) = answers;
            let ((plan, log, counter), seen, note) = head;
            Summary {
                plan: PlanId(plan),
                log: LogId(log),
                former,
                counter,
                from: DayNumber(from),
                until: DayNumber(until),
                taken,
                seen: seen.into_iter().map(DayNumber).collect(),
                days,
                runs,
                mornings,
                during,
                well_again,
                settled,
                rated,
                alarms,
                delays,
                note,
                corrections,
                wrong_clock,
            }
        })
    })
}
