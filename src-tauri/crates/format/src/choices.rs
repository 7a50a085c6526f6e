//! For each choice from a fixed list: the number of each value in cards and summaries, and its name in files that people
//! write or read.
//!
//! Numbers never change; new values are only added at the end.

use crate::codes::Coded;
use crate::names::Named;
use exercises::alarm::{Circumstance, Trouble};
use exercises::catalogue::{
    Arms, Basis, Contact, End, Equipment, Eyes, Factor, Feet, Furniture, Landmark, Posture, PrescriberFlag, Purpose, Region,
    Sidedness, Surface, Tie, View,
};
use exercises::closing::CloseReason;
use exercises::log::{Barrier, DayOffReason};
use exercises::plan::{Aftercare, AgeBand, Band, BodySide, Risk, Side};
use exercises::run::{RunEnd, SetUp, TrialEnd};
use exercises::summary::RunTiming;
use exercises::sway::{Flag, Reason, SourceKind};
use exercises::visit::{Advice, Moment};

macro_rules! coded {
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

macro_rules! named {
    ($($choice:ident { $($value:ident = $name:literal),+ $(,)? $(; without $nameless:pat)? })+) => {
        $(impl Named for $choice {
            const NAMES: &'static [(&'static str, Self)] = &[$(($name, $choice::$value)),+];
        }

        // A value that is missing in the list does not compile.
        const _: fn(&$choice) = |value| match value {
            $($choice::$value => (),)+
            $($nameless => (),)?
        };)+
    };
}

macro_rules! choices {
    ($($choice:ident { $($value:ident = $code:literal $name:literal),+ $(,)? })+) => {
        coded! { $($choice { $($value = $code),+ })+ }
        named! { $($choice { $($value = $name),+ })+ }
    };
}

choices! {
    Side { Left = 0 "left", Right = 1 "right", Both = 2 "both", Neither = 3 "neither", Alternating = 4 "alternating" }
    BodySide { Left = 0 "left", Right = 1 "right" }
    Band { Light = 0 "light", Medium = 1 "medium", Strong = 2 "strong", ExtraStrong = 3 "extra-strong" }
    Surface { Firm = 0 "firm", FoldedTowel = 1 "folded-towel", Cushion = 2 "cushion", Foam = 3 "foam" }
    Eyes { Open = 0 "open", Closed = 1 "closed" }
    AgeBand {
        Under18 = 0 "under-18",
        From18 = 1 "18-39",
        From40 = 2 "40-49",
        From50 = 3 "50-59",
        From60 = 4 "60-64",
        From65 = 5 "65-69",
        From70 = 6 "70-79",
        From80 = 7 "80-plus",
    }
    Risk {
        HighFallRisk = 0 "high-fall-risk",
        VertigoOrFainting = 1 "vertigo-or-fainting",
        NumbFeet = 2 "numb-feet",
        NeurologicalUnsteadiness = 3 "neurological-unsteadiness",
        PartialWeightBearing = 4 "partial-weight-bearing",
        FreshInjury = 5 "fresh-injury",
        SevereOsteoporosis = 6 "severe-osteoporosis",
        SedativesOrAlcohol = 7 "sedatives-or-alcohol",
        SevereVisualLoss = 8 "severe-visual-loss",
        CognitiveImpairment = 9 "cognitive-impairment",
        LatePregnancy = 10 "late-pregnancy",
    }
    Trouble {
        HeartOrBreath = 0 "heart",
        HeadOrNeck = 1 "neck",
        Nerve = 2 "nerve",
        BladderOrBowel = 3 "bladder",
        Fell = 4 "fell",
        NearlyFell = 5 "nearly-fell",
        TooMuchPain = 6 "pain",
        Other = 7 "other",
        Limb = 8 "limb",
        Dizzy = 9 "dizzy",
        Unwell = 10 "unwell",
        PainAboveLimit = 11 "pain-above-limit",
    }
    Barrier {
        Forgot = 0 "forgot",
        NoTime = 1 "no-time",
        NoPlace = 2 "no-place",
        Pain = 3 "pain",
        NotSureHow = 4 "not-sure-how",
        FeltFine = 5 "felt-fine",
        NoHelp = 6 "no-help",
        Unwell = 7 "unwell",
        NoSupport = 8 "no-support",
        Other = 9 "other",
        RatherNotSay = 10 "rather-not-say",
    }
    DayOffReason { Ill = 0 "ill", Travelling = 1 "travelling", Holiday = 2 "holiday", Other = 3 "other" }
    RunEnd { Going = 0 "going", Completed = 1 "completed", Stopped = 2 "stopped", Trouble = 3 "trouble" }
    SetUp { OnSupport = 0 "on-support", AtBreastbone = 1 "at-breastbone", InPocket = 2 "in-pocket" }
    Circumstance {
        BlowToTheHead = 0 "blow-to-the-head",
        ThinsTheBlood = 1 "thins-the-blood",
        CouldNotGetUp = 2 "could-not-get-up",
        SweatsOrWeightLoss = 3 "sweats-or-weight-loss",
    }
    RunTiming { InTime = 0 "in-time", Late = 1 "late", Moved = 2 "moved" }
    TrialEnd { Touch = 0 "touch", Target = 1 "target", CutOff = 2 "cut-off" }
}

// Choices that occur only in cards and summaries.
coded! {
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

// Choices that in cards and summaries are written in another form.
named! {
    Feet { Bare = "bare", Covered = "covered" }
    // A hand that is in use is neither chosen nor an instruction of an exercise.
    Arms { Crossed = "crossed", OnHips = "on-hips", Free = "free"; without Arms::HandInUse }
    Aftercare {
        SorenessIsUsual = "soreness-is-usual",
        KeepMoving = "keep-moving",
        GoEasy = "go-easy",
        WarmthIfPleasant = "warmth-if-pleasant",
        ContactIfWorse = "contact-if-worse"; without Aftercare::Own(_)
    }
}

// Only in the files of exercises.
named! {
    Region {
        NeckUpperBack = "neck-upper-back",
        Shoulder = "shoulder",
        Elbow = "elbow",
        WristHand = "wrist-hand",
        LowBack = "low-back",
        Hip = "hip",
        Knee = "knee",
        Ankle = "ankle",
        General = "general",
    }
    Purpose {
        Mobility = "mobility",
        Strength = "strength",
        Endurance = "endurance",
        Control = "control",
        Balance = "balance",
        Stretching = "stretching",
        EasingPain = "easing-pain",
        Calm = "calm",
        Activity = "activity",
        Function = "function",
    }
    PrescriberFlag {
        BloodPressure = "blood-pressure",
        Pregnancy = "pregnancy",
        BloodThinners = "blood-thinners",
        Osteoporosis = "osteoporosis",
        JointReplacement = "joint-replacement",
        UnhealedOperation = "unhealed-operation",
        Abdomen = "abdomen",
        HandOperation = "hand-operation",
        DislocatedShoulder = "dislocated-shoulder",
        CannotGetUp = "cannot-get-up",
    }
    Sidedness { None = "none", EachSide = "each-side", Alternating = "alternating" }
    Posture { Standing = "standing", Sitting = "sitting", Lying = "lying", Kneeling = "kneeling" }
    Equipment {
        Chair = "chair",
        Table = "table",
        Worktop = "worktop",
        Wall = "wall",
        Mat = "mat",
        Pillow = "pillow",
        Towel = "towel",
        Cushion = "cushion",
        Foam = "foam",
        SturdyShoes = "sturdy-shoes",
        Bag = "bag",
        LightWeight = "light-weight",
        Band = "band",
        Stick = "stick",
        Step = "step",
        Strap = "strap",
        Door = "door",
        Doorway = "doorway",
        Handrail = "handrail",
        Hammer = "hammer",
        RubberBand = "rubber-band",
    }
    Basis {
        Convention = "convention",
        StretchTime = "stretch-time",
        WorkingRange = "working-range",
        ShortHolds = "short-holds",
        EightToTwelve = "eight-to-twelve",
        NeckLowLoad = "neck-low-load",
        StanceTime = "stance-time",
        TendonHolds = "tendon-holds",
        GradedActivity = "graded-activity",
    }
    Factor {
        Surface = "surface",
        Base = "base",
        Support = "support",
        Lever = "lever",
        Range = "range",
        Load = "load",
        Position = "position",
    }
    View {
        Side = "side", Front = "front", Hand = "hand", Oblique = "oblique", Palm = "palm", Fist = "fist", Head = "head",
        Feet = "feet", Foot = "foot", Above = "above",
    }
    Furniture {
        Chair = "chair",
        Worktop = "worktop",
        Wall = "wall",
        Mat = "mat",
        Pillow = "pillow",
        FoldedTowel = "folded-towel",
        Cushion = "cushion",
        Foam = "foam",
        Table = "table",
        Bag = "bag",
        WallAhead = "wall-ahead",
        WallBeside = "wall-beside",
        Doorway = "doorway",
        Door = "door",
        Step = "step",
        Handrail = "handrail",
        Weight = "weight",
        Hammer = "hammer",
        TowelRoll = "towel-roll",
        RubberBand = "rubber-band",
        Mark = "mark",
    }
    Moment { Before = "before", After = "after", Once = "once" }
    CloseReason { Finished = "finished", SentOn = "sent-on", StoppedComing = "stopped-coming", Other = "other" }
    Advice { Talk = "talk", Ease = "ease", Reduce = "reduce", Progress = "progress", Keep = "keep" }
    Tie { Band = "band", Strap = "strap", Stick = "stick" }
    End {
        NearHand = "near-hand", FarHand = "far-hand", NearThigh = "near-thigh", FarThigh = "far-thigh",
        NearAnkle = "near-ankle", FarAnkle = "far-ankle", NearFoot = "near-foot", FarFoot = "far-foot", Head = "head",
        Pelvis = "pelvis", Door = "door",
    }
    Contact {
        Seat = "seat",
        UpperBack = "upper-back",
        FarSide = "far-side",
        NearSole = "near-sole",
        FarSole = "far-sole",
        NearToes = "near-toes",
        FarToes = "far-toes",
        NearHeel = "near-heel",
        FarHeel = "far-heel",
        NearHand = "near-hand",
        FarHand = "far-hand",
        NearHandSlides = "near-hand-slides",
        FarHandSlides = "far-hand-slides",
        NearHeelSlides = "near-heel-slides",
        LowBack = "low-back",
        Front = "front",
        NearKnee = "near-knee",
        FarKnee = "far-knee",
        FarElbow = "far-elbow",
    }
    Landmark {
        Chin = "chin",
        Crown = "crown",
        Shoulder = "shoulder",
        Elbow = "elbow",
        Hand = "hand",
        Pelvis = "pelvis",
        Knee = "knee",
        Heel = "heel",
        Toes = "toes",
    }
}
