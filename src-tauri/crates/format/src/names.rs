//! The names under which choices stand in files that people write or read.

use exercises::alarm::Trouble;
use exercises::catalogue::Arms;
use exercises::catalogue::Feet;
use exercises::catalogue::{Eyes, Surface};
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{Aftercare, AgeBand, BodySide, Risk, Side};
use exercises::run::{RunEnd, SetUp, TrialEnd};

/// A choice whose values have names.
pub(crate) trait Named: Sized + Clone + 'static {
    /// Names with their values.
    const NAMES: &'static [(&'static str, Self)];
}

/// The value of a name.
pub(crate) fn find<T: Named>(name: &str) -> Option<T> {
    T::NAMES.iter().find(|(known, _)| *known == name).map(|(_, value)| value.clone())
}

/// The name of a value; empty for one that has its own words.
pub(crate) fn name<T: Named + PartialEq>(value: &T) -> &'static str {
    T::NAMES.iter().find(|(_, known)| known == value).map_or("", |(name, _)| name)
}

/// All names, for a person to choose from.
pub(crate) fn all<T: Named>() -> Vec<String> {
    T::NAMES.iter().map(|(name, _)| (*name).to_owned()).collect()
}

macro_rules! named {
    ($($choice:ident { $($name:literal = $value:ident),+ $(,)? })+) => {
        $(impl Named for $choice {
            const NAMES: &'static [(&'static str, Self)] = &[$(($name, $choice::$value)),+];
        })+
    };
}

named! {
    Side { "left" = Left, "right" = Right, "both" = Both, "neither" = Neither }
    BodySide { "left" = Left, "right" = Right }
    Surface { "firm" = Firm, "folded-towel" = FoldedTowel, "cushion" = Cushion, "foam" = Foam }
    Eyes { "open" = Open, "closed" = Closed }
    Feet { "bare" = Bare, "covered" = Covered }
    Arms { "crossed" = Crossed, "on-hips" = OnHips, "free" = Free }
    AgeBand {
        "under-18" = Under18,
        "18-39" = From18,
        "40-49" = From40,
        "50-59" = From50,
        "60-64" = From60,
        "65-69" = From65,
        "70-79" = From70,
        "80-plus" = From80,
    }
    Risk {
        "high-fall-risk" = HighFallRisk,
        "vertigo-or-fainting" = VertigoOrFainting,
        "numb-feet" = NumbFeet,
        "neurological-unsteadiness" = NeurologicalUnsteadiness,
        "partial-weight-bearing" = PartialWeightBearing,
        "fresh-injury" = FreshInjury,
        "severe-osteoporosis" = SevereOsteoporosis,
        "sedatives-or-alcohol" = SedativesOrAlcohol,
        "severe-visual-loss" = SevereVisualLoss,
        "cognitive-impairment" = CognitiveImpairment,
        "late-pregnancy" = LatePregnancy,
    }
    Aftercare {
        "soreness-is-usual" = SorenessIsUsual,
        "keep-moving" = KeepMoving,
        "go-easy" = GoEasy,
        "warmth-if-pleasant" = WarmthIfPleasant,
        "contact-if-worse" = ContactIfWorse,
    }
    Trouble {
        "heart-or-breath" = HeartOrBreath,
        "head-or-neck" = HeadOrNeck,
        "nerve" = Nerve,
        "bladder-or-bowel" = BladderOrBowel,
        "fell" = Fell,
        "nearly-fell" = NearlyFell,
        "too-much-pain" = TooMuchPain,
        "other" = Other,
    }
    Barrier {
        "forgot" = Forgot,
        "no-time" = NoTime,
        "no-place" = NoPlace,
        "pain" = Pain,
        "not-sure-how" = NotSureHow,
        "felt-fine" = FeltFine,
        "no-help" = NoHelp,
        "unwell" = Unwell,
        "no-support" = NoSupport,
        "other" = Other,
        "rather-not-say" = RatherNotSay,
    }
    DayOffReason { "ill" = Ill, "travelling" = Travelling, "holiday" = Holiday, "other" = Other }
    RunEnd { "going" = Going, "completed" = Completed, "stopped" = Stopped, "trouble" = Trouble }
    SetUp { "on-support" = OnSupport, "at-breastbone" = AtBreastbone, "in-pocket" = InPocket }
    TrialEnd { "touch" = Touch, "target" = Target, "cut-off" = CutOff }
}
