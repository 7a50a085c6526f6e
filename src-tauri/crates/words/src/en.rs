//! English.

use crate::Key;

/// What each key says.
pub fn text(key: Key) -> &'static str {
    match key {
        Key::AppName => "Carryover",
        Key::Yes => "Yes",
        Key::No => "No",
        Key::Cancel => "Cancel",
        Key::Back => "Back",
        Key::Continue => "Continue",
        Key::Close => "Close",
        Key::Save => "Save",
        Key::ChooseSide => "What will you do here?",
        Key::SidePatient => "I do exercises",
        Key::SidePatientWhat => {
            "Take the card from your clinic, be reminded, be guided, and bring a sealed summary to the next visit."
        }
        Key::SideClinic => "I prescribe exercises",
        Key::SideClinicWhat => "Make plans, hand them over as a card, and read what came back.",
        Key::SideWarning => "On an employer's computer, whoever administers it can read what you log here.",
        Key::AtIsSet => "Time is set to {time}",

        Key::Left => "left",
        Key::Right => "right",
        Key::LeftSide => "left side",
        Key::RightSide => "right side",
        Key::BothSides => "both sides",
        Key::LeftLeg => "left leg",
        Key::RightLeg => "right leg",
        Key::EyesOpen => "eyes open",
        Key::EyesClosed => "eyes closed",
        Key::Firm => "firm floor",
        Key::FoldedTowel => "folded towel",
        Key::Cushion => "cushion",
        Key::Foam => "foam",

        Key::DoseHold => "{n|# hold|# holds} of {s} seconds",
        Key::DoseReps => "{n|# repetition|# repetitions}",
        Key::DoseRepsSets => "{sets|# set|# sets} of {n|# repetition|# repetitions}",
        Key::DoseBalance => "{n|# trial|# trials} of up to {s} seconds",
        Key::EveryMinutes => "every {n} minutes from {from} to {to}",
        Key::EveryHour => "every hour from {from} to {to}",
        Key::AtTimes => "at {times}",
        Key::Workdays => "Monday to Friday",
        Key::EveryDay => "every day",
        Key::NoDay => "no day chosen",
        Key::Monday => "Monday",
        Key::Tuesday => "Tuesday",
        Key::Wednesday => "Wednesday",
        Key::Thursday => "Thursday",
        Key::Friday => "Friday",
        Key::Saturday => "Saturday",
        Key::Sunday => "Sunday",
        Key::AboutSeconds => "About {n} seconds",
        Key::AboutMinutes => "About {n|a minute|# minutes}",

        Key::MarkDone => "done in full",
        Key::MarkPartly => "{done} of {of}",
        Key::MarkLeftOut => "left out: {reason}",
        Key::MarkExcused => "excused: {reason}",
        Key::MarkHeldBack => "held back",
        Key::MarkPassedBy => "passed by",
        Key::MarkDue => "due now",
        Key::MarkToCome => "to come",
        Key::MarkNoSuchHour => "this hour does not exist today",

        Key::BarrierForgot => "forgot",
        Key::BarrierNoTime => "no time, could not get away",
        Key::BarrierNoPlace => "not in a suitable place",
        Key::BarrierPain => "it hurt, or I feared it would",
        Key::BarrierNotSureHow => "not sure how",
        Key::BarrierFeltFine => "felt fine, no need",
        Key::BarrierNoHelp => "did not seem to help",
        Key::BarrierUnwell => "tired or unwell",
        Key::BarrierNoSupport => "no support or space near",
        Key::BarrierOther => "something else",
        Key::BarrierRatherNotSay => "rather not say",
        Key::ExcuseIll => "ill",
        Key::ExcuseTravelling => "travelling",
        Key::ExcuseHoliday => "on holiday",
        Key::ExcuseOther => "other",

        Key::TroubleHeartOrBreath => "Chest pain, short of breath, faint, cold sweat",
        Key::TroubleHeadOrNeck => "Sudden unusual headache or neck pain, double vision, slurred speech, numb face",
        Key::TroubleNerve => "New weakness or numbness in an arm or a leg",
        Key::TroubleBladderOrBowel => "Numb between the legs, new trouble with bladder or bowel, both legs weak",
        Key::TroubleFell => "I fell",
        Key::TroubleNearlyFell => "I nearly fell",
        Key::TroubleTooMuchPain => "Too much pain",
        Key::TroubleOther => "Something else is wrong",

        Key::AftercareSoreness => "Mild soreness for a day or two is usual.",
        Key::AftercareMoving => "Keep moving as usual, within comfort.",
        Key::AftercareEasy => "No heavy lifting or sport until the day after tomorrow.",
        Key::AftercareWarmth => "Warmth may be used if it feels good.",
        Key::AftercareContact => {
            "If pain grows, or numbness or weakness is new, contact your clinic; if it is urgent, your local emergency number."
        }

        Key::ReminderTitle => "Time for a short break",
        Key::ReminderBody => "{takes}.",
        Key::ReminderOpen => "Open",
        Key::ReminderLater => "In 10 minutes",
        Key::ReminderLeaveOut => "Leave it out",
        Key::Quit => "Quit",

        // terminal
        Key::IdentityWarning => {
            "Whoever has this key can read every summary sealed for this clinic. Keep it offline, and only if you need it."
        }
        Key::ReceiptNew => "{file}: {code}, {days|# new day|# new days}.",
        Key::ReceiptFilled => "{file}: {code}, {days|# day|# days} known more fully.",
        Key::ReceiptFilledOther => "{file}: {code}, no new day; a note or other details were added.",
        Key::ReceiptKnown => "{file}: {code}, nothing new; nothing was changed.",

        // clinic: door
        Key::ClinicDoorStart => "Set up your clinic",
        Key::ClinicDoorStartWhat => {
            "Plan cards are signed by this clinic, and summaries are sealed for it. Its keys stay on this computer, locked by a passphrase."
        }
        Key::ClinicName => "Clinic's name",
        Key::ClinicNameHint => "Patients see it on their screen.",
        Key::Passphrase => "Passphrase",
        Key::PassphraseAgain => "Passphrase again",
        Key::PassphraseHint => "12 characters or more. Several words are good.",
        Key::PassphraseShow => "Show the passphrase",
        Key::PassphraseDiffers => "The two are not the same.",
        Key::PassphraseLost => {
            "A lost passphrase cannot be recovered. Without it nobody can open this clinic's plans and summaries again, neither you nor we. Write it down and lock it away."
        }
        Key::ClinicStart => "Set up the clinic",
        Key::ClinicDoorOpen => "Open the clinic's store",
        Key::ClinicDoorOpenWhat => "The patients, plans and summaries in it are sealed until then.",
        Key::ClinicOpen => "Open",
        Key::ClinicOpening => "This takes a moment.",
        Key::Fingerprint => "Fingerprint",
        Key::FingerprintWhat => "The patient's screen shows the same when the card is taken.",

        // clinic: patients
        Key::Patients => "Patients",
        Key::PatientsNone => {
            "No patient yet. Add one under a code of your own choosing, such as the number in your records."
        }
        Key::PatientsFind => "Find by code or name",
        Key::PatientAdd => "Add patient",
        Key::PatientCode => "Code",
        Key::PatientCodeHint => "1 to 12 letters, digits and hyphens.",
        Key::PatientName => "Name (may stay empty)",
        Key::PatientNameHint => "Stays in this store; never on a card or in a summary.",
        Key::ReceiveSummaries => "Receive summaries",
        Key::ReceiveWhat => {
            "Choose the files that patients saved for the visit, or photos of the codes that they showed; several at once if you like."
        }
        Key::ChooseFiles => "Choose files",
        Key::ReviewOn => "review on {date}",
        Key::ReviewToday => "review today",
        Key::ReviewWas => "review was due on {date}",
        Key::PlanNone => "no plan yet",
        Key::SummaryUntil => "summary up to {date}",
        Key::SummaryNone => "no summary yet",
        Key::AlarmsOpen => "{n|# alarm|# alarms} not cleared",

        // clinic: plan
        Key::PlanFirst => "First plan",
        Key::PlanNext => "Next plan",
        Key::PlanReview => "Review",
        Key::PlanOf => "Plan {revision} for {who}",
        Key::PlanCarried => "Carried over from plan {revision}.",
        Key::PlanDay => "A full day: {n|# time|# times}, {takes}.",
        Key::PlanEmpty => "Nothing in the plan yet. A press on an exercise puts it in with its usual dose.",
        Key::ProposalsTake => "Take all proposals",
        Key::Proposed => "proposed",
        Key::StopTakesOut => "takes it out of this plan",
        Key::TakeOut => "Take out",
        Key::MoveUp => "Up",
        Key::MoveDown => "Down",
        Key::MoreOfItem => "Times, limits, note",
        Key::Catalogue => "Exercises",
        Key::CatalogueFind => "Find an exercise",
        Key::CatalogueNone => "No exercise has these words.",
        Key::CatalogueAdd => "Add {name}",
        Key::InPlan => "in the plan",
        Key::RegionNeckUpperBack => "Neck and upper back",
        Key::RegionShoulder => "Shoulder",
        Key::RegionWristHand => "Wrist and hand",
        Key::RegionLowBack => "Lower back",
        Key::RegionHip => "Hip",
        Key::RegionKnee => "Knee",
        Key::RegionAnkle => "Ankle and foot",
        Key::Rung => "Rung",
        Key::SideLabel => "Side",
        Key::DoseHolds => "Holds",
        Key::DoseHoldSeconds => "Seconds each",
        Key::DoseRest => "Rest, seconds",
        Key::DoseTrials => "Trials",
        Key::DoseTarget => "Up to, seconds",
        Key::DoseSets => "Sets",
        Key::DoseRepetitions => "Repetitions",
        Key::DoseTempoUp => "Out, seconds",
        Key::DoseTempoHold => "Stay, seconds",
        Key::DoseTempoDown => "Back, seconds",
        Key::StepLess => "{what}: less",
        Key::StepMore => "{what}: more",
        Key::When => "When",
        Key::WhenEvery => "Again and again",
        Key::WhenAt => "At set times",
        Key::EveryLabel => "Every",
        Key::EveryOption => "{n} minutes",
        Key::FromLabel => "From",
        Key::ToLabel => "To",
        Key::TimesLabel => "Times",
        Key::TimesHint => "Such as 8:00, 13:00, 18:00.",
        Key::DaysLabel => "Days",
        Key::PainLimit => "Pain limit",
        Key::PainLimitHint => "Above it the patient stops, and it shows here as an alarm.",
        Key::MayStep => "May offer the next step by itself",
        Key::MayStepHint => "By the same rules, at most one step a week. Else only you change it.",
        Key::ServesLabel => "Serves",
        Key::ServesNone => "no one complaint",
        Key::NoteLabel => "Note to the patient",
        Key::NoteCount => "{n} of {most} characters",
        Key::Complaints => "Complaints",
        Key::ComplaintAdd => "Add complaint",
        Key::ComplaintName => "What hurts",
        Key::SideNone => "no side",
        Key::PainToday => "Pain today",
        Key::NotAsked => "not asked",
        Key::Activities => "Activities that the patient names",
        Key::ActivityAdd => "Add activity",
        Key::ActivityName => "Hard to do, in the patient's words",
        Key::RatingToday => "Today, 0 to 10",
        Key::BalanceAtHome => "Balance at home",
        Key::BalanceAtHomeWhat => "Practice alone needs these three. Local rules and your own judgement come first.",
        Key::AgeBand => "Age",
        Key::AgeUnder18 => "under 18",
        Key::AgeBetween => "{from} to {to}",
        Key::AgeFrom80 => "80 and more",
        Key::AgeNone => "choose",
        Key::RiskTitle => "Considered and absent",
        Key::StanceToday => "Seconds on one leg today, eyes open, firm floor",
        Key::StanceCapped => "you ended it, not the foot",
        Key::StanceEarlier => "earlier {s} s",
        Key::Aftercare => "For the first two days",
        Key::AftercareOwn => "A line of your own",
        Key::NextVisit => "Next visit",
        Key::InWeeks => "{n|# week|# weeks}",
        Key::DateLabel => "Date",
        Key::AlarmsToClear => "Alarms to clear",
        Key::AlarmClear => "Clear it on this card",
        Key::AlarmClearWhat => "What is not cleared stays held back on the patient's side.",
        Key::IssueCard => "Issue plan card",
        Key::IssueNotYet => "Before it can be issued",
        Key::IssueReady => "Nothing stands against it.",
        Key::PlanFull => "A plan holds at most {most} exercises. Take one out to add another.",
        Key::NamedFull => "At most {most} can be listed.",
        Key::OverMidnight => "This goes through the night: from {from} to {to} on the next day.",
        Key::RoundTheClock => "This goes round the clock, day and night, from {from}.",
        Key::UnreadTimes => "The times “{typed}” cannot be read; write them like 8:00, 13:00, 18:00.",
        Key::UnreadTimesNone => "No time is given; write times like 8:00, 13:00, 18:00.",
        Key::UnreadStance => "“{typed}” is no number of seconds from 0 to 600; write it like 12.4.",
        Key::UnreadVisit => "The date of the next visit is missing.",
        Key::UnreadHere => "{where}: {what}",
        Key::DraftResumed => "Draft of {date} resumed.",
        Key::DraftResumedAnew => {
            "Draft of {date} resumed. What speaks against balance and the seconds on one leg are asked anew today."
        }
        Key::DraftDiscard => "Discard draft",
        Key::DraftDiscardAsk => "Discard everything that was changed in this draft?",
        Key::DraftDiscardYes => "Yes, discard it",
        Key::DraftDiscardNo => "No, keep it",
        Key::FoldNone => "none",
        Key::FoldLines => "{n|# line|# lines}",

        // clinic: what a plan lacks
        Key::ProblemUnknown => "This program's catalogue does not have it in this edition.",
        Key::ProblemRung => "Choose a rung.",
        Key::ProblemDose => "The dose is out of range.",
        Key::ProblemSide => "Choose a side.",
        Key::ProblemSchedule => "Choose one day and one time at least.",
        Key::ProblemServes => "It serves a complaint that the plan no longer has.",
        Key::ProblemStance => "Today's seconds on one leg are missing for a side prescribed.",
        Key::ProblemStanceShort => "Under five seconds with eyes open: not for practice alone.",
        Key::ProblemGate => {
            "A softer surface or closed eyes wait for 30 s with eyes open on the firm floor, today and at an earlier visit."
        }
        Key::ProblemSoftClosed => "No soft surface with closed eyes alone from 65 years on.",
        Key::ProblemTicks => "{n|# line|# lines} of the list not ticked yet.",

        // clinic: issued
        Key::IssuedTitle => "Plan card for {who}",
        Key::IssuedRevision => "plan {revision}",
        Key::IssuedWhat => "The patient photographs the code, or takes the picture, the text or the file.",
        Key::IssuedWarning => "Whoever photographs this card can use it. Show it to the patient only.",
        Key::IssuedCode => "The card as a code",
        Key::IssuedText => "The card as text",
        Key::IssuedCopy => "Copy text",
        Key::IssuedCopied => "Copied.",
        Key::IssuedFiles => "Written to",
        Key::IssuedVersion => "QR version {n}",
        Key::IssuedTooLarge => "Too large for one code. Hand over the file or the text.",

        // clinic: review
        Key::ReviewEmpty => {
            "At the visit the patient opens Record, saves a sealed summary and hands the file over. Receive it here."
        }
        Key::ReviewFigures => "More figures",
        Key::ReviewOther => "Other conditions, and times at the visits",
        Key::ChartDays => "{name}, day by day",
        Key::ChartLine => "{name}, 0 to 10 by day",
        Key::ChartStance => "Seconds by day, both legs",
        Key::ChartAtVisit => "rated at the visit",

        // patient: places
        Key::PlacesLabel => "Places",
        Key::PlaceNow => "Now",
        Key::PlacePlan => "Plan",
        Key::PlaceRecord => "Record",
        Key::SomethingWrong => "Something is wrong",
        Key::SideStays => "This device keeps the choice.",

        // patient: now
        Key::Begin => "Begin",
        Key::InTenMinutes => "In 10 minutes",
        Key::LeaveItOut => "Leave it out",
        Key::HowToDoIt => "How to do it",
        Key::HowToOf => "How to do it: {name}",
        Key::DidItAlready => "I already did it",
        Key::DueSoon => "Due at {time}; you can begin now.",
        Key::PutOffUntil => "Put off: reminder at {time}.",
        Key::RemindsAt => "reminder at {time}",
        Key::NothingNow => "Nothing to do now",
        Key::NextAt => "Next: {name}, at {time}",
        Key::AheadMinutes => "In {n|a minute|# minutes}.",
        Key::AheadHours => "In about {n|an hour|# hours}.",
        Key::NextTomorrow => "Next: tomorrow at {time}.",
        Key::NextOn => "Next: {day} at {time}.",
        Key::AllDone => "Done for today",
        Key::DayOver => "That was today",
        Key::DoneOf => "{done} of {of} done.",
        Key::DayOff => "Nothing is planned today",
        Key::DayExcused => "Today is left out",
        Key::Over => "This plan has ended",
        Key::OverWhat => "It ran until {date}. Take your record to the visit; a new card starts the next plan.",
        Key::Stopped => "Your plan is on hold",
        Key::StoppedSince => "You said: {what}.",
        Key::OnlyNewCard => "Only a new card from your clinic lets you go on.",
        Key::WhatToDo => "What to do",
        Key::RowNow => "now",
        Key::DayLabel => "Today, by time",
        Key::AfterTheVisit => "After the visit",
        Key::NotNow => "Not now",
        Key::DoOneNow => "Do one now",
        Key::WhichOne => "Which one?",
        Key::ExtraWhat => "Where one is due, this counts for it; else it is extra.",
        Key::HeldBackSince => "Held back since you said: {what}.",
        Key::LeaveOutWhy => "Why leave it out?",
        Key::LeaveOutDays => "Leave out whole days",
        Key::LeaveOutDaysWhat => {
            "Nothing is asked for and no reminder comes. Your clinic sees that these days were left out."
        }
        Key::LastDayOff => "From today; last day off",
        Key::OnlyToday => "today",
        Key::WhyDays => "Why?",
        Key::WhyDaysSaves => "Why? The answer saves it.",

        // patient: questions
        Key::HowDidItGo => "How did it go?",
        Key::AskPain => "Pain now: {name}",
        Key::PainLeast => "no pain",
        Key::PainMost => "the worst you can think of",
        Key::AskActivity => "How well can you do this: {name}?",
        Key::ActivityLeast => "cannot",
        Key::ActivityMost => "as before",
        Key::AskSettled => "Yesterday it hurt: {name}. Had it settled by this morning?",
        Key::RatherNotAnswer => "Rather not answer",

        // patient: how
        Key::BeforeYouBegin => "Before you begin",
        Key::BeCareful => "Take care",
        Key::StopAtOnce => "Stop at once if",
        Key::IfInDoubt => "If you are not sure whether this is right for you, ask your clinic first.",
        Key::ReadBegin => "I have read this. Begin",
        Key::OnThisRung => "On this step: {change}",
        Key::Purpose => "What it is for",
        Key::ShouldFeel => "What you should feel",
        Key::ShouldNotFeel => "What you should not feel",
        Key::Mistakes => "Common mistakes",
        Key::StopAbove => "Stop if pain goes above {n} of 10.",

        // patient: a run
        Key::GetReady => "Get ready",
        Key::Hold => "Hold",
        Key::Rest => "Rest",
        Key::ChangeSides => "Rest, and change sides",
        Key::Paused => "Paused",
        Key::PausedAsleep => "Paused: the device slept",
        Key::WhenReady => "When you are ready",
        Key::BeatUp => "Out",
        Key::BeatKeep => "Stay",
        Key::BeatDown => "Back",
        Key::HoldOf => "Hold {n} of {of}",
        Key::NextHoldOf => "Next: hold {n} of {of}",
        Key::SetOf => "Set {n} of {of}",
        Key::NextSetOf => "Next: set {n} of {of}",
        Key::TryOf => "trial {n} of {of}",
        Key::PartOf => "{n} of {of}",
        Key::OfSo => "of {of}",
        Key::HalfWay => "Half-way",
        Key::Pause => "Pause",
        Key::GoOn => "Go on",
        Key::Stop => "Stop",
        Key::MoreRest => "30 seconds more",
        Key::NextNow => "Go on now",
        Key::SoundOn => "Sound: on",
        Key::SoundVoice => "Sound: with voice",
        Key::SoundOff => "Sound: off",
        Key::ThatFailed => "That one failed",
        Key::TakeItBack => "It did not fail",
        Key::Done => "Done",
        Key::StoppedHere => "Stopped here",
        Key::DoneHolds => "{done} of {of|# hold|# holds} held to the end.",
        Key::DoneReps => "{done} of {of|# repetition|# repetitions}.",
        Key::DoneTries => "{done} of {of|# trial|# trials}.",
        Key::DoneFailed => "{n} did not work out.",
        Key::PartsLabel => "Part by part",
        Key::PartHeld => "held in full",
        Key::PartHeldSo => "{s} of {of} s",
        Key::PartCounted => "{n} of {of}",
        Key::PartCutOff => "cut off, not measured",
        Key::PartNot => "not done",
        Key::SaveAgain => "Save again",
        Key::CannotBeGuided => "This exercise cannot be guided: its dose does not fit it. Please tell your clinic.",

        // patient: balance
        Key::StandOnLeft => "Left leg",
        Key::StandOnRight => "Right leg",
        Key::SupportNear => "A worktop or a sturdy chair stands within reach, the floor is clear and dry.",
        Key::PhoneOnSupport => "Lay the phone on it.",
        Key::HandOverPhone => "Hold a hand over the screen. Touch it when your foot comes down.",
        Key::WherePhone => "Where is the phone?",
        Key::OnTheSupport => "On the support",
        Key::OnTheSupportWhat => "A hand rests over it; a touch ends the trial.",
        Key::AtTheBreastbone => "At the breastbone",
        Key::AtTheBreastboneWhat => "Held flat with one hand. Sway is measured, a touch ends the trial.",
        Key::InAPocket => "In a waist pocket",
        Key::InAPocketWhat => "Close to the body. Sway is measured, you are asked afterwards.",
        Key::NoMotionSensor => "This device has no motion sensor that can be read: the phone lies on the support.",
        Key::SensorNotAllowed => {
            "The motion sensor was not allowed. Lay the phone on the support, or allow the sensor in the system's settings."
        }
        Key::SensorSilent => "The motion sensor gave nothing in the last trial. Its time is what was touched.",
        Key::PhoneAtBreastbone => "Hold the phone flat against your breastbone, the screen away from you.",
        Key::OtherHandNear => "Keep the other hand just over the support. Touch the screen when your foot comes down.",
        Key::PhoneInPocket => {
            "After you start, put the phone upright into a tight pocket or pouch at the waist, the screen away from you."
        }
        Key::HandsNear => "Arms as you were shown, support within reach. Sounds begin and end it; then you are asked.",
        Key::StandUntilSound => "Stand until the sound",
        Key::HoldAskedAfter => "Take hold if you need to. You are asked afterwards.",
        Key::SeemsTouched => "It seems that your foot touched. Touch the screen if it did.",
        Key::AskTouchedAt => "Did your foot touch the floor after about {s} seconds?",
        Key::AskTouched => "Did your foot touch the floor, or did you take hold?",
        Key::AskTouchedElse => "Did it touch at another moment, or did you take hold?",
        Key::AskTouchedWhen => "After about how many seconds?",
        Key::NotSure => "Not sure",
        Key::ToBeConfirmed => "to be confirmed: it may have been {s} s",
        Key::ToBeConfirmedLeast => "to be confirmed: it may have been {s} s or more",
        Key::SwayTitle => "Sway",
        Key::SwayFigures => "What the sensor measured",
        Key::SwaySide => "side to side",
        Key::SwayRound => "all round",
        Key::SwayPath => "path a second",
        Key::TouchDowns => "the foot touched {n|once|# times}",
        Key::SwayOwnOnly => {
            "Compare it only with your own, with the phone in the same place. It does not say how likely a fall is."
        }
        Key::NotMeasuredBecause => "Not measured: {why}",
        Key::WhyNotSensor => "the sensor gave nothing",
        Key::WhyNotSlow => "the sensor is too slow, or left gaps",
        Key::WhyNotMoved => "the phone slipped or turned",
        Key::WhyNotShort => "the trial was too short",
        Key::WhyNotQuiet => "the movement was smaller than the sensor can show",
        Key::WhyNotOdd => "the sensor's values make no sense",
        Key::StepOn => "On {step}?",
        Key::StepBackTo => "Back {step}?",
        Key::BeginAsBefore => "Begin as before",
        Key::StepTake => "Begin with this step",
        Key::StepAllowed => "Your clinician leaves it to you.",
        Key::StartCount => "Start the count",
        Key::WhenReadyStart => "Nothing starts before you press.",
        Key::RestFor => "Rest: {s} s. You may also go on now.",
        Key::LiftAtTone => "Lift the foot at the rising tone",
        Key::TouchWhenDown => "Touch anywhere when your foot comes down",
        Key::TouchTakesBack => "Support within reach. A touch goes back.",
        Key::AnyTouchEnds => "Take hold if you need to, then touch: that ends the trial.",
        Key::TryOver => "Trial over",
        Key::LastTry => "Last trial: {s} s",
        Key::SecondsShort => "{s} s",
        Key::AtLeastSeconds => "{s} s, the aim",
        Key::SecondsOrMore => "{s} s or more",
        Key::BestToday => "Best",
        Key::MiddleToday => "Middle value",
        Key::MiddleWeek => "Middle value, last 7 days",
        Key::NoOwnYet => "not known yet",
        Key::OneTryVaries => "One trial says little: times vary from day to day. The record shows where they go.",
        Key::OwnAndAim => "your middle value this week: {own} s; aim {aim} s",
        Key::OnlyAim => "aim {aim} s",

        // patient: trouble
        Key::WhatIsWrong => "What is wrong?",
        Key::NothingIsWrong => "Nothing is wrong, go back",
        Key::UrgentAnyway => "If it is urgent, do not answer questions here: call your local emergency number.",
        Key::DuringWhich => "During which exercise?",
        Key::NotDuringOne => "Not during an exercise",
        Key::HeldBackTitle => "What stops now",
        Key::HeldBackPlan => "All exercises and reminders are stopped.",
        Key::HeldBackBalance => "All balance exercises are stopped. The others go on.",
        Key::HeldBackExercise => "This exercise is stopped. The others go on.",
        Key::NotedForVisit => {
            "It is noted, and your clinic finds it in your next summary. A summary is not a message: nobody reads it before the visit."
        }
        Key::NoDiagnosis => {
            "This program does not diagnose. What your clinic or the emergency service tells you comes first."
        }
        Key::StopSitDown => "Stop and sit down.",
        Key::StopNow => "Stop now.",
        Key::CallEmergency => "Call your local emergency number now, or have somebody call.",
        Key::NotAlone => "Do not stay alone, and do not drive yourself.",
        Key::NerveToday => "Contact your clinic or an urgent care service today.",
        Key::NerveSudden => {
            "If it came suddenly, grows, or comes with trouble speaking or seeing: call your local emergency number now."
        }
        Key::EmergencyToday => "This must be looked at today in an emergency department, even if it does not hurt.",
        Key::CannotGetThere => "If you cannot get there, call your local emergency number.",
        Key::StayDown => "Stay down until you feel steady. Get up slowly, with a hand on the support.",
        Key::FellBadly => {
            "If you hit your head, cannot stand, or something may be broken: call your local emergency number now."
        }
        Key::TellClinicFall => "Contact your clinic before you practise balance again, even if nothing hurts.",
        Key::SitAndRest => "Sit down and rest until you feel steady.",
        Key::StopThisOne => "Stop this exercise. Rest in a position that is comfortable.",
        Key::ContactClinic => "Contact your clinic before you do it again.",
        Key::SevereUrgent => {
            "If it is severe, does not ease, or comes with new weakness or numbness: your local emergency number or an urgent care service."
        }

        // patient: card
        Key::NoPlanTitle => "Take your plan card",
        Key::NoPlanWhat => "Your clinic gives it to you: a code on paper or on a screen, a file, or a text.",
        Key::CardFile => "Card picture or file",
        Key::CardFileWhat => "A sharp, straight photograph of the whole code, or the file that you were sent.",
        Key::CardText => "Card text",
        Key::ReadTheCard => "Read the card",
        Key::OnThisCard => "What is on this card",
        Key::ClinicCode => "Fingerprint: {code}",
        Key::NewClinic => {
            "Compare it with the paper or the clinic's screen. From now on only this clinic can change this plan."
        }
        Key::KnownClinic => "You know this clinic from an earlier card.",
        Key::Replaces => "It replaces revision {old} by revision {new}. What you did so far is kept.",
        Key::VisitOn => "Next visit: {date}",
        Key::ForComplaint => "For: {name}",
        Key::FitYourDay => "Fit it to your day: {name}",
        Key::From => "From",
        Key::To => "To",
        Key::TimeNumber => "Time {n}",
        Key::TimesADay => "{n|once a day|# times a day}",
        Key::TimesDiffer => "Choose a different time for each.",
        Key::WhoPhotographs => "Who photographs this card can use it as you can: keep it to yourself.",
        Key::TakeThisPlan => "Take this plan",
        Key::RemindersAhead => {
            "You are reminded at these times by a short notification that says nothing medical. Your system may ask whether you allow it."
        }
        Key::CameraOpen => "Scan the code with the camera",
        Key::CameraClose => "Close the camera",
        Key::CameraHow => "Hold the whole code in the picture, straight and near. It is read by itself.",
        Key::CameraSees => "What the camera sees",
        Key::CameraRefused => "No camera could be opened. Choose a picture of the code, or type its text.",
        Key::CameraUnknown => "There is no camera to scan with here. Choose a picture of the code, or type its text.",
        Key::SampleLook => "Look around with a sample plan",
        Key::SampleWhat => "No card yet? See how a plan feels and try an exercise. Nothing of it is kept.",
        Key::SampleIs => "Sample plan: nothing is kept.",
        Key::SampleLeave => "Leave it",
        Key::SampleClinic => "Sample, by nobody",
        Key::SampleBack => "upper back",
        Key::SampleAnkle => "ankle gives way",
        Key::SampleMeeting => "sit through a long meeting",
        Key::AnotherCard => "Another card",
        Key::TakeNewCard => "Take a new card",

        // patient: plan
        Key::MyComplaints => "What it is about",
        Key::MyActivities => "Activities that you named",
        Key::Baselines => "Seconds on one leg at the visit",
        Key::PainThen => "pain {n} of 10",
        Key::OfTen => "{n} of 10",
        Key::Revision => "Revision {n}.",

        // patient: record
        Key::DoneWhen => "Done, and when in the day",
        Key::DonePlainly => "{k} of {n} done.",
        Key::ExtraPlainly => "{n|# extra session|# extra sessions}.",
        Key::ClockBehind => {
            "The last entry here is of {day}, but this device says that today is {today}. Check the device's date; nothing is lost."
        }
        Key::BalanceTitle => "Balance",
        Key::PainTitle => "Pain, 0 to 10",
        Key::ActivitiesTitle => "Activities, 0 to 10",
        Key::NothingYet => "Nothing is recorded yet. The first exercise that you do shows here.",

        // patient: visit
        Key::ForTheVisit => "For the visit",
        Key::VisitWhat => {
            "A sealed file that only your clinic can open. You choose what period it covers, and you see what is in it."
        }
        Key::HandedOver => "What is handed over",
        Key::NotHandedOver => {
            "Not handed over: your name, the exact time of what you did (only its hour, and how long after a reminder), your place, or which device you use."
        }
        Key::InDays => "{n|# day|# days}: from {from} to {until}, counted from the plan's start",
        Key::InSlots => "{item}: how each of {n|# time|# times} went, with the reasons for what was left out",
        Key::InRuns => "{n|# exercise run|# exercise runs}: how much of the dose, and the hour of the day",
        Key::InTrials => "{n|# balance trial|# balance trials} with their seconds",
        Key::InPain => "{n|# rating|# ratings} of pain",
        Key::InSettled => "{n|# answer|# answers} about the morning after",
        Key::InRated => "{n|# rating|# ratings} of your activities",
        Key::InAlarms => "Something was wrong on {day}: {what}",
        Key::InDelays => "By week: how long after the reminder you began",
        Key::InCorrections => "{n|One entry|# entries} that you put right",
        Key::FramesShow => "Show it as codes",
        Key::FramesTitle => "The summary as a code",
        Key::FramesWhat => {
            "{n|The clinic photographs this code.|The clinic photographs each code, in any order.} Turn the screen's brightness up."
        }
        Key::FrameOf => "Code {n} of {of}",
        Key::FrameNext => "Next code",
        Key::FrameBefore => "Code before",
        Key::FramesTurn => "Show them in turn",
        Key::FramesStay => "Stay on this code",
        Key::CorrectTitle => "Put something right",
        Key::CorrectWhat => {
            "Press what is wrong. What you said first stays in the record on this device. Your clinic sees what counts now, and that it was put right."
        }
        Key::CorrectNone => "Nothing of the last {n|day|# days} can be put right.",
        Key::CorrectOpen => "Was something entered by mistake?",
        Key::CorrectTakeOut => "A mistake: take it out",
        Key::CorrectNotDone => "I did not do this",
        Key::CorrectChange => "Change it",
        Key::CorrectStands => "Back to what I said first",
        Key::CorrectAlarm => "Note that it was a mistake",
        Key::CorrectEarlier => "Show earlier days",
        Key::CorrectDays => "Save these days",
        Key::CorrectAlarmNoted => "Noted as raised by mistake. What it stopped stays stopped.",
        Key::CorrectedTo => "Now: {now}.",
        Key::CorrectedOut => "Taken out.",
        Key::CorrectedNotDone => "Not done.",
        Key::SaidPain => "Pain, {of}: {score} of 10",
        Key::SaidPainAfter => "Pain, {of}, after {item}: {score} of 10",
        Key::SaidSettled => "{of}: settled by the morning",
        Key::SaidNotSettled => "{of}: not settled by the morning",
        Key::SaidRated => "{of}: {score} of 10",
        Key::SaidLeftOut => "{item}, {day}: left out, {reason}",
        Key::SaidExcused => "{from} to {until} off: {why}",
        Key::SaidRun => "{item}: {done} of {of} done",
        Key::SaidTrouble => "Something was wrong: {what}",
        Key::SaidTroubleDuring => "Something was wrong during {item}: {what}",
        Key::InTaken => "On which day you took a card, and the times that you agreed on",
        Key::NoteOptional => "Note for the clinic (optional)",
        Key::SaveSealed => "Save sealed summary",
        Key::Sealed => "Saved",
        Key::SealedWhat => "Take this file to the visit or send it to your clinic. Nobody else can read it.",

        // patient: reminders
        Key::RemindersTitle => "Reminders",
        Key::RemindersWhat => {
            "Only one waits at a time, and it goes when its time has passed. If you followed the last one, the next makes no sound."
        }
        Key::QuietTitle => "Quiet times, every day",
        Key::QuietWhat => {
            "No reminder comes in them. One that falls into a quiet time comes at its end, if it is not too late then."
        }
        Key::QuietSpan => "{from} to {to}",
        Key::QuietAdd => "Add a quiet time",
        Key::QuietTakeOut => "Take it out",
        Key::QuietAdded => "Saved: no reminders from {span}.",
        Key::QuietTakenOut => "Taken out: {span}.",
        Key::QuietNone => "None so far.",
        Key::MeetingTitle => "In a meeting",
        Key::MeetingWhat => "No reminders until it is over. It ends by itself.",
        Key::MeetingMinutes => "{n|# minute|# minutes}",
        Key::MeetingHours => "{n|# hour|# hours}",
        Key::MeetingUntil => "In a meeting until {time}.",
        Key::MeetingEnd => "It is over",
        Key::SilentUntil => "No reminder until {time}.",
        Key::SilentAlways => "Quiet times fill the whole day: no reminder comes.",
        Key::NextReminder => "Next reminder: {day}, {time}.",
        Key::NoReminder => "No reminder in the next two weeks.",

        // patient: own data
        Key::MineTitle => "What is yours",
        Key::MineSave => "Save all of it",
        Key::MineWhat => {
            "Your plans and everything that you recorded, as text and as tables, in a folder of its own. Anyone who gets the folder can read it."
        }
        Key::MineSaved => "Saved in {folder}.",
        Key::CalendarTitle => "Another calendar",
        Key::CalendarSave => "Save the times for a calendar",
        Key::CalendarWhat => {
            "A file that a phone's calendar can open, to remind you where this program is not. It says nothing about exercises, and nothing comes back from it. Try one reminder first; some calendars leave them out."
        }
        Key::CalendarSaved => "Saved as {file}.",
        Key::EraseTitle => "Erase everything",
        Key::EraseWhat => {
            "Your plans, everything that you recorded, and your settings go from this device for good. Files that you saved stay, and so does what your clinic has already."
        }
        Key::EraseFirst => "If you want to keep it, save it first. For a new start you need a card from your clinic.",
        Key::EraseAsk => "Erase everything, for good?",
        Key::EraseSure => "Yes, erase everything",
        Key::EraseKeep => "No, keep it",
        Key::Erased => "Everything is erased.",

        // patient: while the window is closed
        Key::StayTitle => "While the window is closed",
        Key::StayAtLogin => "Open when I log in to this computer",
        Key::StayAtLoginWhat => "Without showing the window, so that reminders come.",
        Key::StayInTray => {
            "While you follow a plan, closing the window leaves Carryover in the tray, so that reminders come. To end it, choose Quit there."
        }
        Key::StayEnds => {
            "This desktop has no tray. When you close the window, Carryover asks whether to go on in the background, so that reminders come."
        }
        Key::ClosingTitle => "Close and stop reminders?",
        Key::ClosingWhat => {
            "This desktop has no tray in which Carryover could go on. In the background, with its window minimised, it still reminds you. Closed, it does not remind you until you open it again."
        }
        Key::ClosingKeep => "Keep it in the background",
        Key::ClosingEnd => "Close and stop reminders",
        Key::TrayMeeting => "In a meeting for {n|# hour|# hours}",
        Key::TrayDue => "Due now, until {time}.",
        Key::TrayNext => "Next at {time}.",
        // patient ends
    }
}
