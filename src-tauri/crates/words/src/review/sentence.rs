//! The names of the review's sentences.

macro_rules! says {
    ($($name:ident)*) => {
        /// The name of a sentence of the review.
        #[derive(Debug, Clone, Copy, PartialEq, Eq)]
        pub(crate) enum Sentence { $($name),* }

        impl Sentence {
            /// All of them.
            #[cfg(test)]
            pub(crate) const ALL: &'static [Sentence] = &[$(Sentence::$name),*];
        }
    };
}

says! {
    // the six questions, and what stands around them
    QuestionAlarms QuestionDone QuestionPain QuestionWorking QuestionActivities QuestionBarriers QuestionNext Notes
    NoAlarm NoBarrier NoComplaint NoBalance NoActivity NoSummary NoPlan
    Since Exercises VisitToday VisitOn VisitWas Covered CoveredDevices Behind Corrected Revision
    SomeItem SomeComplaint SomeActivity NoLonger
    ProposalsOnly

    // alarms, in the clinician's words
    HeartOrBreath HeadOrNeck Nerve BladderOrBowel Fell NearlyFell TooMuchPain OtherTrouble
    AlarmOn AlarmDuring AlarmBetween BlocksPlan BlocksBalance BlocksExercise AlarmCleared AlarmSaidMistaken

    // adherence
    AsAgreed Partly Little NothingAsked
    SlotsDone WrittenIn WithExcused WithUnrecorded HeldBackSlots
    DoseSeconds DoseRepetitions DoseTrials DaysKept BrokeOff LongestPause LastDone NeverDone
    Extra StoppedOnce StoppedEarly CutOff HalfDays Delay
    LegendDone LegendPartly LegendPassedBy LegendLeftOut LegendExcused LegendHeldBack LegendNoRecord

    // change
    Better Worse NoClearChange NoCall
    PainBetter PainNoChange PainWorse PainLowBase PainFew PainNone AtVisits
    ActivityChanged ActivityNotAgain ActivityTogether

    // stance
    OnSupport AtBreastbone InPocket UpTo
    Rising Falling AtTheCap TooFewData
    StanceMoved StanceUnclear StanceWavers StanceCapped StanceFewDays StanceNoYardstick FromOwnSpread FromOlderAdults FromGiven
    SidesPercent SidesAtMost SidesAtLeast SidesCapped SidesNotComputed WithinError
    SwayLast SwayChanged SwayUnclear SwayFew SwayToConfirm SwayNotMeasured
    VisitStance VisitStanceCapped

    // norms
    NormBestOf NormMeanOf NormMedianOf NormBeside NormMean NormMeanSd NormMedian NormRowLine
    NormAges NormAgesFrom NormPeople NormCap NormNoCap
    NormBare NormCovered NormCrossed NormOnHips NormFree NormHandInUse
    NormNoVerdict NormSkew NormNearCap NormOwnAtCap
    NormNone NormSoft NormOther NormUnchecked NormNotATime NormNoRow NormNotKnown NormNotStated NormDiffers
    NormAge NormEyes NormSurface NormFeet NormArms NormStatistic NormTheCap
    NormsSource NormsNone NormsRemoved

    // next
    Advance Keep StepBack StopAndTalk
    ToHoldSeconds ToHolds ToRepetitions ToTarget ToTrials ToRung
    WhyAlarm WhyPainTooHigh WhyNotSettled WhyPainRising WhyMissedTwice WhyMetTwice WhyMetOnce WhyNotMet
    WhyPainBetween WhyPainUnanswered WhyMorningUnanswered WhyTooFewSessions WhyStepThisWeek
    WhyAtTheTop WhyGateClosed WhySoftAndClosed WhyEyesApart WhyUnknown
}
