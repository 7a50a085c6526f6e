//! The numbers under which choices travel, in cards and in summaries. Frozen: append only.
//!
//! A code that is not known is refused with the field that holds it, never read as something else.

use exercises::alarm::Trouble;
use exercises::catalogue::{Eyes, Surface};
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{AgeBand, Leg, Risk, Side};
use exercises::run::{RunEnd, SetUp, TrialEnd};
use exercises::sway::{Flag, Reason, SourceKind};
use minicbor::{Decode, Decoder, Encode, Encoder, decode, encode};

/// A choice with a number for each of its values.
pub(crate) trait Coded: Copy {
    /// The number.
    fn code(self) -> u8;
    /// The value of a number.
    fn of(code: u8) -> Option<Self>;
}

/// A choice as it is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Code<T>(pub T);

impl<C, T: Coded> Encode<C> for Code<T> {
    fn encode<W: encode::Write>(&self, out: &mut Encoder<W>, _: &mut C) -> Result<(), encode::Error<W::Error>> {
        out.u8(self.0.code())?.ok()
    }
}

impl<'b, C, T: Coded> Decode<'b, C> for Code<T> {
    fn decode(input: &mut Decoder<'b>, _: &mut C) -> Result<Self, decode::Error> {
        T::of(input.u8()?).map(Code).ok_or_else(|| decode::Error::message("an unknown code"))
    }
}

macro_rules! codes {
    ($($choice:ident { $($value:ident = $code:literal),+ $(,)? })+) => {
        $(impl Coded for $choice {
            fn code(self) -> u8 {
                match self {
                    $($choice::$value => $code,)+
                }
            }

            fn of(code: u8) -> Option<Self> {
                match code {
                    $($code => Some($choice::$value),)+
                    _ => None,
                }
            }
        })+
    };
}

codes! {
    Side { Left = 0, Right = 1, Both = 2, Neither = 3 }
    Leg { Left = 0, Right = 1 }
    Surface { Firm = 0, FoldedTowel = 1, Cushion = 2, Foam = 3 }
    Eyes { Open = 0, Closed = 1 }
    AgeBand { Under18 = 0, From18 = 1, From40 = 2, From50 = 3, From60 = 4, From65 = 5, From70 = 6, From80 = 7 }
    Risk {
        HighFallRisk = 0,
        VertigoOrFainting = 1,
        NumbFeet = 2,
        NeurologicalUnsteadiness = 3,
        PartialWeightBearing = 4,
        FreshInjury = 5,
        SevereOsteoporosis = 6,
        SedativesOrAlcohol = 7,
        SevereVisualLoss = 8,
        CognitiveImpairment = 9,
        LatePregnancy = 10,
    }
    Trouble {
        HeartOrBreath = 0,
        HeadOrNeck = 1,
        Nerve = 2,
        BladderOrBowel = 3,
        Fell = 4,
        NearlyFell = 5,
        TooMuchPain = 6,
        Other = 7,
    }
    Barrier {
        Forgot = 0,
        NoTime = 1,
        NoPlace = 2,
        Pain = 3,
        NotSureHow = 4,
        FeltFine = 5,
        NoHelp = 6,
        Unwell = 7,
        NoSupport = 8,
        Other = 9,
        RatherNotSay = 10,
    }
    DayOffReason { Ill = 0, Travelling = 1, Holiday = 2, Other = 3 }
    RunEnd { Going = 0, Completed = 1, Stopped = 2, Trouble = 3 }
    SetUp { OnSupport = 0, AtBreastbone = 1, InPocket = 2 }
    TrialEnd { Touch = 0, Target = 1, CutOff = 2 }
    SourceKind { Native = 0, Web = 1, File = 2 }
    Flag {
        NoDetection = 0,
        Gap = 1,
        PossibleClipping = 2,
        PhoneMoved = 3,
        MlApNotIdentified = 4,
        CoarseQuantisation = 5,
        Auto = 6,
        TapOnly = 7,
    }
    Reason {
        MarksInvalid = 0,
        PhoneNotWorn = 1,
        Hidden = 2,
        PermissionDenied = 3,
        NoSensor = 4,
        RecordTooLong = 5,
        RateTooLow = 6,
        TooMuchMissing = 7,
        SensorStalled = 8,
        GravityImplausible = 9,
        PhoneMoved = 10,
        WindowTooShort = 11,
        SignalBelowResolution = 12,
        ValuesImplausible = 13,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A choice's values under the numbers from 0 up to the first gap.
    fn all<T: Coded>() -> Vec<T> {
        (0..=u8::MAX).map_while(T::of).collect()
    }

    #[test]
    fn every_code_leads_back_to_its_value() {
        fn check<T: Coded + PartialEq + std::fmt::Debug>(values: usize) {
            let all = all::<T>();
            assert_eq!(all.len(), values, "no gap and no code forgotten: {all:?}");
            for value in all {
                assert_eq!(T::of(value.code()), Some(value));
            }
        }
        check::<Side>(4);
        check::<Leg>(2);
        check::<Surface>(4);
        check::<Eyes>(2);
        check::<AgeBand>(AgeBand::ALL.len());
        check::<Risk>(Risk::ALL.len());
        check::<Trouble>(Trouble::ALL.len());
        check::<Barrier>(Barrier::ALL.len());
        check::<DayOffReason>(DayOffReason::ALL.len());
        check::<RunEnd>(4);
        check::<SetUp>(3);
        check::<TrialEnd>(3);
        check::<SourceKind>(3);
        check::<Flag>(8);
        check::<Reason>(14);
    }

    #[test]
    fn the_lists_of_the_domain_stand_in_the_order_of_their_codes() {
        assert_eq!(all::<Risk>(), Risk::ALL);
        assert_eq!(all::<Trouble>(), Trouble::ALL);
        assert_eq!(all::<Barrier>(), Barrier::ALL);
        assert_eq!(all::<DayOffReason>(), DayOffReason::ALL);
        assert_eq!(all::<AgeBand>(), AgeBand::ALL);
    }

    #[test]
    fn an_unknown_code_is_refused() {
        assert!(minicbor::decode::<Code<Trouble>>(&[8]).is_err());
        assert!(minicbor::decode::<Code<Leg>>(&[2]).is_err());
    }
}
