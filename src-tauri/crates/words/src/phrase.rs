//! Sentences made of domain values.

use crate::{Key, Words};
use exercises::alarm::Trouble;
use exercises::catalogue::{Eyes, Surface};
use exercises::history::Mark;
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{Aftercare, BodySide, Days, Pattern, Schedule, Side};
use exercises::time::MinuteOfDay;
use wire::clinic::{Outcome, Receipt};

impl Words {
    /// "09:00"; minutes past midnight wrap.
    pub fn minute(self, minute: u16) -> String {
        MinuteOfDay::on_the_clock(minute).to_string()
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
            Days(0) => self.text(Key::NoDay).to_owned(),
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
            Outcome::Filled { code, days: 0 } => (Key::ReceiptFilledOther, code, 0),
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

#[cfg(test)]
mod tests {
    use super::*;
    use exercises::catalogue::Lang;

    #[test]
    fn a_schedule_without_days_says_so() {
        let schedule = Schedule { days: Days(0), pattern: Pattern::At { times: vec![480] } };
        assert_eq!(Words::new(Lang::En).schedule(&schedule), "no day chosen, at 08:00");
        assert_eq!(Words::new(Lang::Es).schedule(&schedule), "ningún día elegido, a las 08:00");
    }

    #[test]
    fn no_receipt_counts_zero_days() {
        for lang in Lang::ALL {
            let outcome = Outcome::Filled { code: "K17".into(), days: 0 };
            let said = Words::new(lang).receipt(&Receipt { file: "a.age".into(), outcome });
            assert!(!said.contains('0') && said.contains("K17"), "{said}");
        }
    }
}
