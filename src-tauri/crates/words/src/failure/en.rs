//! Refusals in English.

use super::{joined, numbers};
use exercises::plan::Risk;
use exercises::plan::check::{Problem, TextPlace};
use wire::Failure;

/// Fault and advice.
pub fn failure(failure: &Failure) -> (String, String) {
    let (fault, advice): (String, &str) = match failure {
        Failure::CardForeign => {
            ("This is not a Carryover plan card.".into(), "Use the code, text or file that your clinic gave you.")
        }
        Failure::CardDamaged => (
            "The card is damaged: a part of it was changed.".into(),
            "Scan or copy it again; if that fails, ask the clinic for a new one.",
        ),
        Failure::CardCut => ("The card is cut off: a part of it is missing.".into(), "Scan or copy the whole card again."),
        Failure::CardNewer { found, known } => (
            format!("The card is of version {found}; this program reads up to {known}."),
            "Update the program, then take the card again.",
        ),
        Failure::CardTooBig => {
            ("This is too large to be a plan card.".into(), "Use the code, text or file that your clinic gave you.")
        }
        Failure::CardOtherClinic => (
            "The card speaks of a plan that you have from another clinic, but it is not signed by that clinic.".into(),
            "Do not take it; ask your clinic for a new card.",
        ),
        Failure::CardOld { revision, have } => (
            format!("The card is revision {revision}; you already follow revision {have}."),
            "Nothing to do; ask the clinic if you expected a newer card.",
        ),
        Failure::CardRefused(problems) => (
            format!("The card's plan cannot be followed here. {}", joined(problems, problem)),
            "Update the program, or ask the clinic for a new card.",
        ),
        Failure::NoCode => (
            "There is no readable code in this picture.".into(),
            "Take a sharp, straight picture of the whole code, or use the card's text.",
        ),
        Failure::NotAPicture => (
            "This file is neither a picture (PNG, JPEG) nor a card file.".into(),
            "Choose the picture, text or file of the card.",
        ),
        Failure::FileTooBig { file, most } => {
            (format!("{file} is larger than {most} bytes, the most that is read."), "Choose the right file.")
        }
        Failure::SummaryForeign => {
            ("This is not a sealed summary.".into(), "Ask the patient for the file that Carryover saved.")
        }
        Failure::SummaryDamaged => ("The summary is damaged or cut off.".into(), "Ask the patient to save it again."),
        Failure::SummaryOtherClinic => {
            ("The summary is sealed for another clinic.".into(), "Ask the patient for the one made for your plan.")
        }
        Failure::SummaryUnknownPlan => (
            "The summary belongs to a plan that this clinic does not have.".into(),
            "Check that this is the data folder from which the card was issued.",
        ),
        Failure::SummaryNotFromCard => (
            "The summary was not made by somebody who holds the plan card.".into(),
            "Do not use it; ask the patient to save a new one.",
        ),
        Failure::SummaryNumberTaken => (
            "Another summary of the same number came from that device before, as happens when its data was put back from a copy."
                .into(),
            "Ask the patient to save a new one and receive that.",
        ),
        Failure::SummaryNewer { found, known } => (
            format!("The summary is of version {found}; this program reads up to {known}."),
            "Update the program, then receive it again.",
        ),
        Failure::FramesTooMany { most } => (
            format!("The summary is too long to be shown as codes, which carry {most} bytes sealed."),
            "Choose fewer days, or save it as a file.",
        ),
        Failure::FramesMissing { have, of, missing } => (
            format!("Of the {of} codes of this summary {have} came; missing: {}.", numbers(missing)),
            "Take a picture of each one that is missing, then receive all of them together.",
        ),
        Failure::FrameDamaged => (
            "A code of this summary is damaged, or does not go with its others.".into(),
            "Take a new, sharp picture of each code, then receive all of them together.",
        ),
        Failure::NoSummaryCode => (
            "There is no readable code of a summary in this picture.".into(),
            "Take a sharp, straight picture of the whole code, or ask the patient for the sealed file.",
        ),
        Failure::NoSuchEntry { entry } => (
            format!("There is no entry {entry} that can be put right."),
            "Look at the list of what can be put right, and take a number from it.",
        ),
        Failure::CorrectionUnfit => (
            "This entry cannot be put right in that way.".into(),
            "Take it out, or give what belongs to it: a score, an answer, a reason or days.",
        ),
        Failure::FileMissing { file } => (format!("There is no file {file}."), "Check the path."),
        Failure::FileUnreadable { file } => (
            format!("{file} cannot be read."),
            "Check that it is what is asked for, a file or a folder, and that you may read it.",
        ),
        Failure::FileUnwritable { file } => {
            (format!("{file} cannot be written."), "Choose a folder that you may write to, with free space.")
        }
        Failure::HomeMissing { home } => {
            (format!("There is no data folder at {home}."), "Check the path, or start the program once to make it.")
        }
        Failure::HomeReadOnly { home } => (
            format!("The data folder {home} cannot be written to."),
            "Give yourself the right to write there, or choose another folder.",
        ),
        Failure::HomeFull { home } => (
            format!("There is no space left for the data folder {home}."),
            "Free some space, then try again; what was saved before is safe.",
        ),
        Failure::HomeDisk { home } => (
            format!("The disk refused to take or give what belongs to the data folder {home}."),
            "Check the disk and your limit on it, then try again; what was saved before is safe.",
        ),
        Failure::HomeIsFile { home } => (format!("{home} is a file, not a folder."), "Choose a folder for the data."),
        Failure::HomeNewer { home } => (
            format!("The data folder {home} was made by a newer version of this program."),
            "Update the program; nothing was changed.",
        ),
        Failure::HomeInUse { home } => {
            (format!("Another copy of the program has {home} open."), "Close the other copy first.")
        }
        Failure::HomeDamaged { home } => {
            (format!("The database in {home} is damaged."), "Keep the folder as it is and restore your last copy.")
        }
        Failure::HomeForeign { home } => {
            (format!("The database in {home} belongs to another program."), "Choose another folder.")
        }
        Failure::OtherRole => {
            ("This data folder is on the other side.".into(), "Use the folder of the right side with --home.")
        }
        Failure::OnlySample => {
            ("This is only a sample, of which nothing is kept.".into(), "Leave the sample first; then take your plan card.")
        }
        Failure::NoRole => (
            "This data folder has no side yet.".into(),
            "Choose at the first start whether you do exercises or prescribe them.",
        ),
        Failure::WrongPassphrase => ("The passphrase is wrong.".into(), "Try again; it cannot be recovered."),
        Failure::PassphraseMissing => (
            "No passphrase was given, and there is no terminal to ask for it.".into(),
            "Put it into the first line of a file and name that with --passphrase-file.",
        ),
        Failure::WeakPassphrase { least } => {
            (format!("The passphrase has fewer than {least} characters."), "Choose a longer one, such as several words.")
        }
        Failure::KeysDamaged => ("The clinic's keys are damaged.".into(), "Restore the data folder from your last copy."),
        Failure::ClinicNotStarted => ("This clinic has no keys yet.".into(), "Start the clinic first."),
        Failure::ClinicStarted => ("This clinic has its keys already.".into(), "Open it with its passphrase."),
        Failure::ClinicLocked => ("The clinic's store is locked.".into(), "Enter the passphrase."),
        Failure::NoSuchPatient { code } => {
            (format!("There is no patient under the code {code}."), "Check the code, or add the patient.")
        }
        Failure::CodeTaken { code } => (format!("The code {code} is taken."), "Choose another code."),
        Failure::CodeBad => ("A code is 1 to 12 letters, digits and hyphens.".into(), "Choose such a code."),
        Failure::PlanRefused(problems) => (joined(problems, problem), "Change the plan, then issue it."),
        Failure::NoPlan => ("There is no plan yet.".into(), "Take the card that your clinic gave you."),
        Failure::WhichPlan => ("You follow several plans.".into(), "Name the plan with --plan."),
        Failure::NoSuchItem => {
            ("The plan has no such exercise.".into(), "Look at the plan again; it may have been replaced.")
        }
        Failure::NoSuchSlot => {
            ("There is no such time in the plan.".into(), "Look at the day again; the plan may have been replaced.")
        }
        Failure::Paused(_) => (
            "This exercise is held back since you said that something was wrong.".into(),
            "Contact your clinic; only a new card from it opens the exercise again.",
        ),
        Failure::EmptyPeriod => {
            ("The period holds no day of the plan.".into(), "Choose a period from the plan's start to today.")
        }
        Failure::OutOfRange { least, most } => {
            (format!("The number must be {least} to {most}."), "Choose a number in that range.")
        }
        Failure::FolderOccupied { folder } => {
            (format!("The folder {folder} holds something already."), "Name a folder that is not there yet, or an empty one.")
        }
        Failure::QuietUnfit { most } => (
            format!("A quiet time needs a beginning and another end, such as 12:00-13:00, and there are at most {most}."),
            "Correct the quiet times; those before are still in force.",
        ),
        Failure::NothingAhead => (
            "Nothing falls due from now until the review date.".into(),
            "Take a new card first, or see on the Plan page what is held back.",
        ),
        Failure::NotConfirmed { home } => (
            format!(
                "This would erase for good what {home} holds: the plans, all that was recorded, the settings and the tie to your clinic; files that you saved yourself stay."
            ),
            "Export what you want to keep, then add --yes.",
        ),
        Failure::AtLoginRefused { detail } => (
            format!("The system did not let this be changed: {detail}"),
            "Look in the system's own settings for what opens at login.",
        ),
        Failure::TextUnfit { most } => (
            format!("The text is longer than {most} characters, or holds one that cannot be shown."),
            "Write it shorter, on one line.",
        ),
        Failure::NotUnderstood { file, line: 0, expected } => {
            (format!("{file} cannot be understood: {expected}."), "Correct it, then try again.")
        }
        Failure::NotUnderstood { file, line, expected } => {
            (format!("{file}, line {line}: {expected}."), "Correct the file.")
        }
        Failure::Internal { detail } => (
            format!("The program has a fault: {detail}."),
            "Start it again; what was saved is safe. If it comes back, report it.",
        ),
    };
    (fault, advice.to_owned())
}

/// One sentence.
pub fn problem(problem: &Problem) -> String {
    match problem {
        Problem::NoItem => "The plan has no exercise.".into(),
        Problem::TooMany => "The plan has more entries than it can hold.".into(),
        Problem::Text { what, most } => {
            let what = match what {
                TextPlace::Clinic => "clinic's name",
                TextPlace::Complaint => "name of a complaint",
                TextPlace::Activity => "name of an activity",
                TextPlace::Note => "note to an exercise",
                TextPlace::Aftercare => "line of aftercare",
            };
            format!("A {what} is empty or longer than {most} characters.")
        }
        Problem::SameNumber => "Two entries of the plan carry the same number.".into(),
        Problem::ReviewDate => "The review date must lie after today, within a year.".into(),
        Problem::Score => "A score is over 10.".into(),
        Problem::UnknownExercise(_, id) => format!("The exercise \"{id}\" is not in this program's catalogue."),
        Problem::OtherContent(_, id) => format!("The exercise \"{id}\" is known here in another edition."),
        Problem::UnknownRung(item, rung) if rung.is_empty() => format!("Exercise {item} needs a rung."),
        Problem::UnknownRung(_, rung) => format!("The rung \"{rung}\" is not in this program's catalogue."),
        Problem::Dose(item) => format!("The dose of exercise {item} is out of range."),
        Problem::Side(item) => format!("The side of exercise {item} does not fit it."),
        Problem::Schedule(item) => format!("The times of exercise {item} are empty or out of range."),
        Problem::Serves(item) => format!("Exercise {item} serves a complaint that the plan does not have."),
        Problem::AgeMissing => "Balance at home needs the age band.".into(),
        Problem::NotTicked(risks) => {
            let risks: Vec<&str> = risks.iter().map(|risk| self::risk(*risk)).collect();
            format!("Balance at home needs these to be ticked as absent: {}.", risks.join("; "))
        }
        Problem::NoStanceBaseline(item) => {
            format!("Exercise {item} needs today's stance time, eyes open on the firm floor, for each side prescribed.")
        }
        Problem::StanceTooShort(item) => {
            format!("Exercise {item}: under five seconds with eyes open, balance is not for practice alone.")
        }
        Problem::GateClosed(item) => {
            format!("Exercise {item}: a softer surface or closed eyes wait for thirty seconds on two days.")
        }
        Problem::SoftAndClosed(item) => {
            format!("Exercise {item}: no soft surface with closed eyes from 65 years on.")
        }
    }
}

/// One line of the ticked list.
pub fn risk(risk: Risk) -> &'static str {
    match risk {
        Risk::HighFallRisk => {
            "a fall with injury, two falls or more in a year, frailty, an hour on the floor, loss of consciousness"
        }
        Risk::VertigoOrFainting => "vertigo, a vestibular attack or fainting under study",
        Risk::NumbFeet => "neuropathy or numb feet",
        Risk::NeurologicalUnsteadiness => "Parkinson's disease or stroke with unsteadiness",
        Risk::PartialWeightBearing => "an orthosis or partial weight-bearing",
        Risk::FreshInjury => "a fresh fracture, operation or ligament tear",
        Risk::SevereOsteoporosis => "severe osteoporosis",
        Risk::SedativesOrAlcohol => "sedatives or alcohol",
        Risk::SevereVisualLoss => "severe loss of sight (closed eyes)",
        Risk::CognitiveImpairment => "cognitive impairment",
        Risk::LatePregnancy => "late pregnancy",
    }
}
