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
    Left Right LeftSide RightSide BothSides LeftLeg RightLeg EyesOpen EyesClosed
    Firm FoldedTowel Cushion Foam

    // dose and time
    DoseHold DoseReps DoseRepsSets DoseBalance
    EveryMinutes EveryHour AtTimes Workdays EveryDay NoDay
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
    Quit

    // terminal
    IdentityWarning ReceiptNew ReceiptFilled ReceiptFilledOther ReceiptKnown

    // clinic: door
    ClinicDoorStart ClinicDoorStartWhat ClinicName ClinicNameHint Passphrase PassphraseAgain PassphraseHint
    PassphraseShow PassphraseDiffers PassphraseLost ClinicStart ClinicDoorOpen ClinicDoorOpenWhat ClinicOpen
    ClinicOpening Fingerprint FingerprintWhat

    // clinic: patients
    Patients PatientsNone PatientsFind PatientAdd PatientCode PatientCodeHint PatientName PatientNameHint
    ReceiveSummaries ReceiveWhat ChooseFiles ReviewOn ReviewToday ReviewWas PlanNone SummaryUntil SummaryNone
    AlarmsOpen

    // clinic: plan
    PlanFirst PlanNext PlanReview PlanOf PlanCarried PlanDay PlanEmpty ProposalsTake Proposed StopTakesOut TakeOut MoveUp MoveDown
    MoreOfItem Catalogue CatalogueFind CatalogueNone CatalogueAdd InPlan RegionNeckUpperBack RegionShoulder
    RegionWristHand RegionLowBack RegionHip RegionKnee RegionAnkle Rung SideLabel DoseHolds DoseHoldSeconds DoseRest
    DoseTrials DoseTarget DoseSets DoseRepetitions DoseTempoUp DoseTempoHold DoseTempoDown StepLess StepMore When
    WhenEvery WhenAt EveryLabel EveryOption FromLabel ToLabel TimesLabel TimesHint DaysLabel PainLimit
    PainLimitHint MayStep MayStepHint ServesLabel ServesNone NoteLabel NoteCount Complaints ComplaintAdd ComplaintName
    SideNone PainToday NotAsked Activities ActivityAdd ActivityName RatingToday BalanceAtHome BalanceAtHomeWhat
    AgeBand AgeUnder18 AgeBetween AgeFrom80 AgeNone RiskTitle StanceToday StanceCapped StanceEarlier Aftercare
    AftercareOwn NextVisit InWeeks DateLabel AlarmsToClear AlarmClear AlarmClearWhat IssueCard IssueNotYet IssueReady
    FoldNone FoldLines PlanFull NamedFull OverMidnight RoundTheClock

    // clinic: what was typed and cannot be read
    UnreadTimes UnreadTimesNone UnreadStance UnreadVisit UnreadHere

    // clinic: a draft
    DraftResumed DraftResumedAnew DraftDiscard DraftDiscardAsk DraftDiscardYes DraftDiscardNo

    // clinic: what a plan lacks
    ProblemUnknown ProblemRung ProblemDose ProblemSide ProblemSchedule ProblemServes
    ProblemStance ProblemStanceShort ProblemGate ProblemSoftClosed ProblemTicks

    // clinic: issued
    IssuedTitle IssuedRevision IssuedWhat IssuedWarning IssuedCode IssuedText IssuedCopy IssuedCopied IssuedFiles IssuedVersion
    IssuedTooLarge

    // clinic: review
    ReviewEmpty ReviewFigures ReviewOther ChartDays ChartLine ChartStance ChartAtVisit

    // patient: places
    PlacesLabel PlaceNow PlacePlan PlaceRecord SomethingWrong SideStays

    // patient: now
    Begin InTenMinutes LeaveItOut HowToDoIt HowToOf DidItAlready DueSoon PutOffUntil RemindsAt NothingNow NextAt AheadMinutes
    AheadHours NextTomorrow NextOn AllDone DayOver DoneOf DayOff DayExcused Over OverWhat Stopped StoppedSince
    OnlyNewCard WhatToDo RowNow DayLabel AfterTheVisit NotNow DoOneNow WhichOne ExtraWhat HeldBackSince LeaveOutWhy
    LeaveOutDays LeaveOutDaysWhat LastDayOff OnlyToday WhyDays WhyDaysSaves

    // patient: a step that may be taken
    StepOn StepBackTo BeginAsBefore StepTake StepAllowed

    // patient: questions
    HowDidItGo AskPain PainLeast PainMost AskActivity ActivityLeast ActivityMost AskSettled RatherNotAnswer

    // patient: how
    BeforeYouBegin BeCareful StopAtOnce IfInDoubt ReadBegin OnThisRung Purpose ShouldFeel ShouldNotFeel Mistakes
    StopAbove

    // patient: a run
    GetReady Hold Rest ChangeSides Paused PausedAsleep WhenReady BeatUp BeatKeep BeatDown HoldOf NextHoldOf SetOf
    NextSetOf TryOf PartOf OfSo HalfWay Pause GoOn Stop MoreRest NextNow SoundOn SoundVoice SoundOff ThatFailed TakeItBack Done
    StoppedHere DoneHolds DoneReps DoneTries DoneFailed PartsLabel PartHeld PartHeldSo PartCounted PartCutOff PartNot
    SaveAgain CannotBeGuided

    // patient: balance
    StandOnLeft StandOnRight SupportNear PhoneOnSupport HandOverPhone StartCount WhenReadyStart RestFor LiftAtTone
    TouchWhenDown TouchTakesBack AnyTouchEnds TryOver LastTry SecondsShort AtLeastSeconds SecondsOrMore BestToday
    MiddleToday MiddleWeek NoOwnYet OneTryVaries OwnAndAim OnlyAim

    // patient: the phone during balance
    WherePhone OnTheSupport OnTheSupportWhat AtTheBreastbone AtTheBreastboneWhat InAPocket
    InAPocketWhat NoMotionSensor SensorNotAllowed SensorSilent PhoneAtBreastbone OtherHandNear
    PhoneInPocket HandsNear StandUntilSound HoldAskedAfter SeemsTouched AskTouchedAt
    AskTouched AskTouchedElse AskTouchedWhen NotSure ToBeConfirmed
    ToBeConfirmedLeast SwayTitle SwayFigures SwaySide SwayRound SwayPath TouchDowns
    SwayOwnOnly NotMeasuredBecause WhyNotSensor WhyNotSlow WhyNotMoved WhyNotShort
    WhyNotQuiet WhyNotOdd

    // patient: trouble
    WhatIsWrong NothingIsWrong UrgentAnyway DuringWhich NotDuringOne HeldBackTitle HeldBackPlan HeldBackBalance
    HeldBackExercise NotedForVisit NoDiagnosis StopSitDown StopNow CallEmergency NotAlone NerveToday NerveSudden
    EmergencyToday CannotGetThere StayDown FellBadly TellClinicFall SitAndRest StopThisOne ContactClinic SevereUrgent

    // patient: card
    NoPlanTitle NoPlanWhat CardFile CardFileWhat CardText ReadTheCard OnThisCard ClinicCode NewClinic KnownClinic
    Replaces VisitOn ForComplaint FitYourDay From To TimeNumber TimesADay TimesDiffer WhoPhotographs TakeThisPlan
    AnotherCard TakeNewCard
    RemindersAhead CameraOpen CameraClose CameraHow CameraSees CameraRefused CameraUnknown
    SampleLook SampleWhat SampleIs SampleLeave SampleClinic SampleBack SampleAnkle SampleMeeting

    // patient: plan
    MyComplaints MyActivities Baselines PainThen OfTen Revision

    // patient: record
    DoneWhen DonePlainly ExtraPlainly ClockBehind BalanceTitle PainTitle ActivitiesTitle NothingYet

    // patient: visit
    ForTheVisit VisitWhat HandedOver NotHandedOver InDays InSlots InRuns InTrials InPain InSettled InRated InAlarms
    InDelays InCorrections InTaken NoteOptional SaveSealed Sealed SealedWhat

    // patient: the summary as codes
    FramesShow FramesTitle FramesWhat FrameOf FrameNext FrameBefore FramesTurn FramesStay

    // patient: putting right
    CorrectTitle CorrectWhat CorrectNone CorrectOpen CorrectTakeOut CorrectNotDone CorrectChange CorrectStands CorrectAlarm
    CorrectEarlier CorrectDays CorrectAlarmNoted CorrectedTo CorrectedOut CorrectedNotDone SaidPain SaidPainAfter SaidSettled SaidNotSettled SaidRated
    SaidLeftOut SaidExcused SaidRun SaidTrouble SaidTroubleDuring

    // patient: reminders
    RemindersTitle RemindersWhat QuietTitle QuietWhat QuietSpan QuietAdd QuietTakeOut QuietAdded QuietTakenOut QuietNone MeetingTitle
    MeetingWhat MeetingMinutes MeetingHours MeetingUntil MeetingEnd SilentUntil SilentAlways NextReminder NoReminder

    // patient: own data
    MineTitle MineSave MineWhat MineSaved CalendarTitle CalendarSave CalendarWhat CalendarSaved EraseTitle EraseWhat
    EraseFirst EraseAsk EraseSure EraseKeep Erased

    // patient: while the window is closed
    StayTitle StayAtLogin StayAtLoginWhat StayInTray StayEnds ClosingTitle ClosingWhat ClosingKeep ClosingEnd TrayMeeting TrayDue TrayNext
    // patient ends
}
