//! Sentences made of domain values.

use crate::{Key, Words};
use exercises::alarm::Trouble;
use exercises::catalogue::{Dose, Eyes, Surface};
use exercises::history::Mark;
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{Aftercare, Days, Leg, Pattern, Schedule, Side};
use wire::clinic::{Outcome, Receipt};

impl Words {
    /// "09:00"; minutes past midnight wrap.
    pub fn minute(self, minute: u16) -> String {
        format!("{:02}:{:02}", minute / 60 % 24, minute % 60)
    }

    /// "3 holds of 10 seconds".
    pub fn dose(self, dose: Dose) -> String {
        match dose {
            Dose::Hold { repetitions, hold_s, .. } => self.fill(Key::DoseHold, &[("n", &repetitions), ("s", &hold_s)]),
            Dose::Balance { trials, target_s, .. } => self.fill(Key::DoseBalance, &[("n", &trials), ("s", &target_s)]),
            Dose::Reps { sets: 1, repetitions, .. } => self.fill(Key::DoseReps, &[("n", &repetitions)]),
            Dose::Reps { sets, repetitions, .. } => self.fill(Key::DoseRepsSets, &[("sets", &sets), ("n", &repetitions)]),
        }
    }

    /// "Monday to Friday, every hour from 09:00 to 17:00".
    pub fn schedule(self, schedule: &Schedule) -> String {
        format!("{}, {}", self.days(schedule.days), self.pattern(&schedule.pattern))
    }

    /// "every hour from 09:00 to 17:00".
    pub fn pattern(self, pattern: &Pattern) -> String {
        match pattern {
            Pattern::Every { minutes: 60, from, to } => {
                self.fill(Key::EveryHour, &[("from", &self.minute(*from)), ("to", &self.minute(*to))])
            }
            Pattern::Every { minutes, from, to } => {
                self.fill(Key::EveryMinutes, &[("n", minutes), ("from", &self.minute(*from)), ("to", &self.minute(*to))])
            }
            Pattern::At { times } => {
                let times: Vec<String> = times.iter().map(|time| self.minute(*time)).collect();
                self.fill(Key::AtTimes, &[("times", &times.join(", "))])
            }
        }
    }

    /// "Monday to Friday".
    pub fn days(self, days: Days) -> String {
        const NAMES_WIDTH: [Key; 7] =
            [Key::Monday, Key::Tuesday, Key::Wednesday, Key::Thursday, Key::Friday, Key::Saturday, Key::Sunday];
        match days {
            Days::ALL => self.text(Key::EveryDay).to_owned(),
            Days::WORKDAYS => self.text(Key::Workdays).to_owned(),
            Days(set) => {
                let names = NAMES_WIDTH.iter().enumerate().filter(|(bit, _)| set & (1 << bit) != 0);
                names.map(|(_, key)| self.text(*key)).collect::<Vec<_>>().join(", ")
            }
        }
    }

    /// "About 40 seconds", "About a minute".
    pub fn takes(self, seconds: u32) -> String {
        if seconds < 55 {
            self.fill(Key::AboutSeconds, &[("n", &(seconds.div_ceil(5) * 5))])
        } else {
            self.fill(Key::AboutMinutes, &[("n", &((seconds + 30) / 60))])
        }
    }

    /// "left", "right", "both sides"; empty where there are no sides.
    pub fn side(self, side: Side) -> &'static str {
        match side {
            Side::Left => self.text(Key::Left),
            Side::Right => self.text(Key::Right),
            Side::Both => self.text(Key::BothSides),
            Side::Neither => "",
        }
    }

    /// "left leg".
    pub fn leg(self, leg: Leg) -> &'static str {
        self.text(match leg {
            Leg::Left => Key::LeftLeg,
            Leg::Right => Key::RightLeg,
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

    /// How a slot went.
    pub fn mark(self, mark: Mark) -> String {
        let key = match mark {
            Mark::Partly(share) => {
                return self.fill(Key::MarkPartly, &[("done", &share.done), ("of", &share.of)]);
            }
            Mark::Skipped(reason) => return self.fill(Key::MarkLeftOut, &[("reason", &self.barrier(reason))]),
            Mark::DayOff(why) => return self.fill(Key::MarkExcused, &[("reason", &self.day_off_reason(why))]),
            Mark::Done => Key::MarkDone,
            Mark::Paused => Key::MarkHeldBack,
            Mark::NotDone => Key::MarkPassedBy,
            Mark::Due => Key::MarkDue,
            Mark::ToCome => Key::MarkToCome,
            Mark::NoSuchHour => Key::MarkNoSuchHour,
        };
        self.text(key).to_owned()
    }

    /// A reason for leaving a slot out.
    pub fn barrier(self, barrier: Barrier) -> &'static str {
        self.text(match barrier {
            Barrier::Forgot => Key::BarrierForgot,
            Barrier::NoTime => Key::BarrierNoTime,
            Barrier::NoPlace => Key::BarrierNoPlace,
            Barrier::Pain => Key::BarrierPain,
            Barrier::NotSureHow => Key::BarrierNotSureHow,
            Barrier::FeltFine => Key::BarrierFeltFine,
            Barrier::NoHelp => Key::BarrierNoHelp,
            Barrier::Unwell => Key::BarrierUnwell,
            Barrier::NoSupport => Key::BarrierNoSupport,
            Barrier::Other => Key::BarrierOther,
            Barrier::RatherNotSay => Key::BarrierRatherNotSay,
        })
    }

    /// Why days are off.
    pub fn day_off_reason(self, why: DayOffReason) -> &'static str {
        self.text(match why {
            DayOffReason::Ill => Key::ExcuseIll,
            DayOffReason::Travelling => Key::ExcuseTravelling,
            DayOffReason::Holiday => Key::ExcuseHoliday,
            DayOffReason::Other => Key::ExcuseOther,
        })
    }

    /// What is wrong.
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

    /// What a received file did.
    pub fn receipt(self, receipt: &Receipt) -> String {
        let (key, code, days) = match &receipt.outcome {
            Outcome::New { code, days } => (Key::ReceiptNew, code, *days),
            Outcome::Filled { code, days } => (Key::ReceiptFilled, code, *days),
            Outcome::Known { code } => (Key::ReceiptKnown, code, 0),
            Outcome::Refused(failure) => {
                let refusal = self.failure(failure);
                return format!("{}: {} {}", receipt.file, refusal.fault, refusal.advice);
            }
        };
        self.fill(key, &[("file", &receipt.file), ("code", code), ("days", &days)])
    }
}
