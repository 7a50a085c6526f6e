//! The names of all texts.

macro_rules! keys {
    ($($name:ident)*) => {
        /// The name of a text. What it says stands in one file for each language.
        #[allow(missing_docs, reason = "each key's meaning is its text in en.rs")]
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub enum Key { $($name),* }

        impl Key {
            /// All of them.
            pub const ALL: &'static [Key] = &[$(Key::$name),*];
        }
    };
}

keys! {
    // the house
    AppName Yes No Cancel Back Continue Close Save
    ChooseSide SidePatient SidePatientWhat SideClinic SideClinicWhat SideWarning
    AtIsSet

    // sides, surfaces, eyes
    Left Right BothSides LeftLeg RightLeg EyesOpen EyesClosed
    Firm FoldedTowel Cushion Foam

    // dose and time
    DoseHold DoseReps DoseRepsSets DoseBalance
    EveryMinutes EveryHour AtTimes Workdays EveryDay
    Monday Tuesday Wednesday Thursday Friday Saturday Sunday
    AboutSeconds AboutMinutes

    // how a slot went
    MarkDone MarkPartly MarkLeftOut MarkExcused MarkHeldBack MarkPassedBy MarkDue MarkToCome MarkNoSuchHour

    // reasons
    BarrierForgot BarrierNoTime BarrierNoPlace BarrierPain BarrierNotSureHow BarrierFeltFine BarrierNoHelp
    BarrierUnwell BarrierNoSupport BarrierOther BarrierRatherNotSay
    ExcuseIll ExcuseTravelling ExcuseHoliday ExcuseOther

    // trouble
    TroubleHeartOrBreath TroubleHeadOrNeck TroubleNerve TroubleBladderOrBowel
    TroubleFell TroubleNearlyFell TroubleTooMuchPain TroubleOther

    // aftercare
    AftercareSoreness AftercareMoving AftercareEasy AftercareWarmth AftercareContact

    // reminder
    ReminderTitle ReminderBody ReminderOpen ReminderLater ReminderLeaveOut
}
