//! Sentences made from domain values.

use crate::date::{names_of, upper};
use crate::{Key, Words};
use chrono::NaiveDate;
use exercises::alarm::Trouble;
use exercises::catalogue::{Equipment, Exercise, Eyes, Surface};
use exercises::history::Mark;
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{Aftercare, BodySide, Days, Item, Pattern, Phase, PhaseState, Schedule, Side, Weekdays};

impl Words {
    /// The exercise's name; empty if it has no texts at all.
    pub fn exercise_name(self, exercise: &Exercise) -> &str {
        exercise.text(self.lang()).map(|texts| texts.name.as_str()).unwrap_or_default()
    }

    /// "Monday to Friday, every hour from 09:00 to 17:00".
    pub fn schedule(self, schedule: &Schedule) -> String {
        let times = self.pattern(&schedule.pattern);
        if schedule.is_as_needed() { times } else { self.days_and_times(&self.days(schedule.days), &times) }
    }

    /// "every day, at 18:00, from 1 December to 20 December".
    pub fn due(self, item: &Item) -> String {
        let times = self.schedule(&item.schedule);
        self.phase(item.phase).map_or_else(|| times.clone(), |phase| self.times_in_phase(&times, &phase))
    }

    /// "from 1 December to 20 December"; `None` for the whole plan.
    pub fn phase(self, phase: Phase) -> Option<String> {
        match (phase.first, phase.last) {
            (None, None) => None,
            (Some(first), None) => Some(self.phase_from(&self.date(first))),
            (None, Some(last)) => Some(self.phase_until(&self.date(last))),
            (Some(first), Some(last)) => Some(self.phase_from_to(&self.date(first), &self.date(last))),
        }
    }

    /// The same text at the beginning of a line.
    pub fn at_line_start(self, text: &str) -> String {
        upper(text)
    }

    /// What is to be known of a phase on `today`, by itself: "From 1 December", "Ended on 20 December"; `None` if it is the whole plan.
    pub fn phase_on(self, phase: Phase, today: NaiveDate) -> Option<String> {
        match phase.on(today) {
            PhaseState::Over(last) => Some(self.phase_ended(&self.date(last))),
            PhaseState::ToCome(_) => self.phase(phase).map(|said| upper(&said)),
            PhaseState::Now => phase.last.map(|last| upper(&self.phase_until(&self.date(last)))),
        }
    }

    /// "every hour from 09:00 to 17:00".
    pub fn pattern(self, pattern: &Pattern) -> String {
        match pattern {
            Pattern::Every { minutes: 60, from, to } => self.every_hour(&self.minute(*from), &self.minute(*to)),
            Pattern::Every { minutes, from, to } => self.every_minutes(minutes, &self.minute(*from), &self.minute(*to)),
            Pattern::At { times } => {
                let times: Vec<String> = times.iter().map(|time| self.minute_inline(*time)).collect();
                self.at_times(&self.list(&times))
            }
            Pattern::AsNeeded => self.text(Key::WhenAsNeeded).to_owned(),
        }
    }

    /// "Monday to Friday", "every other day", "3 times a week, on any days".
    pub fn days(self, days: Days) -> String {
        match days {
            Days::ALL => self.text(Key::EveryDay).to_owned(),
            Days::On(Weekdays::NONE) => self.text(Key::NoDay).to_owned(),
            Days::WORKDAYS => self.text(Key::Workdays).to_owned(),
            Days::On(some) => self.list(&some.iter().map(|day| self.text(names_of(day).0).to_owned()).collect::<Vec<_>>()),
            Days::EveryNth { n, .. } => self.every_days(n),
            Days::TimesAWeek { n, .. } => self.times_a_week(n),
        }
    }

    /// "About 40 seconds", "About a minute", at the beginning of a line.
    pub fn takes(self, seconds: u32) -> String {
        match duration(seconds) {
            Duration::Seconds(n) => self.about_seconds(n),
            Duration::Minutes(n) => self.about_minutes(n),
        }
    }

    /// "about 40 seconds", within a sentence.
    pub fn takes_inline(self, seconds: u32) -> String {
        match duration(seconds) {
            Duration::Seconds(n) => self.about_seconds_inline(n),
            Duration::Minutes(n) => self.about_minutes_inline(n),
        }
    }

    /// "left", "right", "both sides", "left and right in turn"; empty if there are no sides.
    pub fn side(self, side: Side) -> &'static str {
        match side {
            Side::Left => self.text(Key::Left),
            Side::Right => self.text(Key::Right),
            Side::Both => self.text(Key::BothSides),
            Side::Alternating => self.text(Key::SidesInTurn),
            Side::Neither => "",
        }
    }

    /// "left leg".
    pub fn leg(self, leg: BodySide) -> &'static str {
        self.text(match leg {
            BodySide::Left => Key::LeftLeg,
            BodySide::Right => Key::RightLeg,
        })
    }

    /// "firm floor".
    pub fn surface(self, surface: Surface) -> &'static str {
        self.text(match surface {
            Surface::Firm => Key::Firm,
            Surface::FoldedTowel => Key::FoldedTowel,
            Surface::Cushion => Key::Cushion,
            Surface::Foam => Key::Foam,
        })
    }

    /// "eyes open".
    pub fn eyes(self, eyes: Eyes) -> &'static str {
        self.text(match eyes {
            Eyes::Open => Key::EyesOpen,
            Eyes::Closed => Key::EyesClosed,
        })
    }

    /// "a chair that does not slide".
    pub fn equipment(self, equipment: Equipment) -> &'static str {
        self.text(match equipment {
            Equipment::Chair => Key::EquipmentChair,
            Equipment::Table => Key::EquipmentTable,
            Equipment::Worktop => Key::EquipmentWorktop,
            Equipment::Wall => Key::EquipmentWall,
            Equipment::Mat => Key::EquipmentMat,
            Equipment::Pillow => Key::EquipmentPillow,
            Equipment::Towel => Key::EquipmentTowel,
            Equipment::Cushion => Key::EquipmentCushion,
            Equipment::Foam => Key::EquipmentFoam,
            Equipment::SturdyShoes => Key::EquipmentSturdyShoes,
            Equipment::Bag => Key::EquipmentBag,
            Equipment::LightWeight => Key::EquipmentLightWeight,
            Equipment::Band => Key::EquipmentBand,
            Equipment::Stick => Key::EquipmentStick,
            Equipment::Step => Key::EquipmentStep,
            Equipment::Strap => Key::EquipmentStrap,
            Equipment::Door => Key::EquipmentDoor,
            Equipment::Doorway => Key::EquipmentDoorway,
            Equipment::Handrail => Key::EquipmentHandrail,
            Equipment::Hammer => Key::EquipmentHammer,
            Equipment::RubberBand => Key::EquipmentRubberBand,
        })
    }

    /// "You need: a chair that does not slide and a pillow."; `None` if nothing is needed.
    pub fn needs(self, equipment: &[Equipment]) -> Option<String> {
        let all: Vec<String> = equipment.iter().map(|one| self.equipment(*one).to_owned()).collect();
        (!all.is_empty()).then(|| self.you_need(&self.list(&all)))
    }

    /// What happened to a slot.
    pub fn mark(self, mark: Mark) -> String {
        let key = match mark {
            Mark::Partly(share) => {
                // "0 of 1" would read as if nothing had been done.
                let begun_alone = share.done == 0 || share.of == 1;
                return if begun_alone {
                    self.text(Key::MarkPartlyAlone).to_owned()
                } else {
                    self.mark_partly(share.done, share.of)
                };
            }
            Mark::Skipped(reason) => return self.mark_skipped(self.barrier(reason)),
            Mark::DayOff(why) => return self.mark_day_off(self.day_off_reason(why)),
            Mark::Done => Key::MarkDone,
            Mark::Paused => Key::MarkPaused,
            Mark::NotDone => Key::MarkNotDone,
            Mark::Due => Key::MarkDue,
            Mark::ToCome => Key::MarkLater,
            Mark::NoSuchHour => Key::MarkNoSuchHour,
        };
        self.text(key).to_owned()
    }

    /// A reason for skipping a slot.
    pub fn barrier(self, barrier: Barrier) -> &'static str {
        self.text(match barrier {
            Barrier::Forgot => Key::SkipReasonForgot,
            Barrier::NoTime => Key::SkipReasonNoTime,
            Barrier::NoPlace => Key::SkipReasonNoPlace,
            Barrier::Pain => Key::SkipReasonPain,
            Barrier::NotSureHow => Key::SkipReasonNotSureHow,
            Barrier::FeltFine => Key::SkipReasonFeltFine,
            Barrier::NoHelp => Key::SkipReasonNoHelp,
            Barrier::Unwell => Key::SkipReasonUnwell,
            Barrier::NoSupport => Key::SkipReasonNoSupport,
            Barrier::Other => Key::SkipReasonOther,
            Barrier::RatherNotSay => Key::SkipReasonRatherNotSay,
        })
    }

    /// The reason for days off.
    pub fn day_off_reason(self, why: DayOffReason) -> &'static str {
        self.text(match why {
            DayOffReason::Ill => Key::DayOffIll,
            DayOffReason::Travelling => Key::DayOffTravelling,
            DayOffReason::Holiday => Key::DayOffHoliday,
            DayOffReason::Other => Key::DayOffOther,
        })
    }

    /// A complaint.
    pub fn trouble(self, trouble: Trouble) -> &'static str {
        self.text(match trouble {
            Trouble::HeartOrBreath => Key::TroubleHeartOrBreath,
            Trouble::HeadOrNeck => Key::TroubleHeadOrNeck,
            Trouble::Nerve => Key::TroubleNerve,
            Trouble::BladderOrBowel => Key::TroubleBladderOrBowel,
            Trouble::Fell => Key::TroubleFell,
            Trouble::NearlyFell => Key::TroubleNearlyFell,
            Trouble::TooMuchPain => Key::TroubleTooMuchPain,
            Trouble::Other => Key::TroubleOther,
            Trouble::Limb => Key::TroubleLimb,
            Trouble::Dizzy => Key::TroubleDizzy,
            Trouble::Unwell => Key::TroubleUnwell,
            Trouble::PainAboveLimit => Key::TroublePainAboveLimit,
        })
    }

    /// A line of aftercare.
    pub fn aftercare(self, line: &Aftercare) -> String {
        let key = match line {
            Aftercare::Own(text) => return text.clone(),
            Aftercare::SorenessIsUsual => Key::AftercareSoreness,
            Aftercare::KeepMoving => Key::AftercareMoving,
            Aftercare::GoEasy => Key::AftercareEasy,
            Aftercare::WarmthIfPleasant => Key::AftercareWarmth,
            Aftercare::ContactIfWorse => Key::AftercareContact,
        };
        self.text(key).to_owned()
    }
}

/// A duration in the unit in which it is shown.
enum Duration {
    Seconds(u32),
    Minutes(u32),
}

/// Below 55 seconds in steps of five seconds, otherwise in minutes.
fn duration(seconds: u32) -> Duration {
    if seconds < 55 { Duration::Seconds(seconds.div_ceil(5) * 5) } else { Duration::Minutes((seconds + 30) / 60) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    #[test]
    fn a_schedule_without_days_says_so() {
        let schedule = Schedule { days: Days::On(Weekdays::NONE), pattern: Pattern::At { times: vec![480] } };
        assert_eq!(Words::new(Locale::En).schedule(&schedule), "no day chosen, at 08:00");
        assert_eq!(Words::new(Locale::Es).schedule(&schedule), "ningún día elegido, a las 08:00");
    }

    #[test]
    fn what_is_needed_is_a_sentence_and_each_thing_has_its_own_name() {
        let needs = |locale| Words::new(locale).needs(&[Equipment::Chair, Equipment::Pillow]);
        assert_eq!(needs(Locale::En).as_deref(), Some("You need: a chair that does not slide and a pillow."));
        assert_eq!(needs(Locale::Es).as_deref(), Some("Necesita: una silla que no resbale y una almohada."));
        assert_eq!(Words::new(Locale::En).needs(&[]), None);
        for locale in Locale::ALL {
            let all = Equipment::ALL.map(|one| Words::new(*locale).equipment(one));
            assert_eq!(std::collections::BTreeSet::from(all).len(), Equipment::ALL.len());
        }
    }
}
