//! What may be typed by those who prescribe exercises.

use super::catalogue::{named, set};
use super::prescribing::{OwnExercise, PlanSet};
use super::visiting::VisitCommand;
use clap::{Subcommand, ValueEnum};
use exercises::catalogue::{Equipment, PrescriberFlag};
use exercises::closing::CloseReason;
use exercises::id::LogId;
use std::collections::BTreeSet;
use std::path::PathBuf;

/// For those who prescribe exercises.
#[derive(Subcommand)]
pub enum Clinic {
    /// Set up the clinic: create its keys, protected by a passphrase
    Start {
        /// The clinic's name, as patients will see it
        #[arg(long, default_value = "Clinic")]
        name: String,
        /// The clinic's telephone number, which its cards carry
        #[arg(long, value_name = "NUMBER")]
        phone: Option<String>,
        /// The clinic's saved keys, on a new computer: the key file, its text, or a photo of the sheet's code. Their passphrase becomes
        /// the clinic's
        #[arg(long, value_name = "FILE")]
        from_keys: Option<PathBuf>,
    },
    /// Change the passphrase. Older backups still open with the old one
    Passphrase {
        /// File that only you can read, or pipe, with the new passphrase in its first line; - for the standard input [default: ask]
        #[arg(long, value_name = "F", conflicts_with = "from_keys")]
        new_passphrase_file: Option<PathBuf>,
        /// Replace a forgotten passphrase by that of this clinic's saved keys, which --passphrase-file then names
        #[arg(long, value_name = "FILE")]
        from_keys: Option<PathBuf>,
    },
    /// Save the clinic's keys under a passphrase of their own, for a new computer or a forgotten passphrase
    Keys {
        /// The key file
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
        /// A page to print with the same as a code
        #[arg(long, value_name = "FILE.html")]
        sheet: Option<PathBuf>,
        /// File that only you can read, or pipe, with the passphrase for the saved keys; - for the standard input [default: ask]
        #[arg(long, value_name = "F")]
        new_passphrase_file: Option<PathBuf>,
    },
    /// List the clinicians, each of whom unlocks with a name and a passphrase of their own, or add or remove one
    Clinicians {
        /// Add a clinician of this name
        #[arg(long, value_name = "NAME", conflicts_with = "remove")]
        add: Option<String>,
        /// Your own name, to be said with the second clinician
        #[arg(long, value_name = "NAME", requires = "add")]
        own_name: Option<String>,
        /// Remove the clinician of this name. Whoever had the keys could have copied them: renewing the keys is the remedy
        #[arg(long, value_name = "NAME")]
        remove: Option<String>,
        /// File that only you can read, or pipe, with the first passphrase of the new one; - for the standard input [default: ask]
        #[arg(long, value_name = "F", requires = "add")]
        new_passphrase_file: Option<PathBuf>,
    },
    /// Renew the clinic's keys, for example because somebody may have copied them. Its security code changes; the former keys are kept, so
    /// that plans go on and summaries of older cards open. Save the keys again afterwards
    RenewKeys {
        /// Confirm it
        #[arg(long)]
        yes: bool,
    },
    /// Set the telephone number that the next cards carry, or show it
    Phone {
        /// The number; "" removes it
        number: Option<String>,
    },
    /// Add a patient under a code
    Add {
        /// 1 to 12 letters, digits and hyphens
        code: String,
        /// The patient's name; stays in this data folder unless `review --with-name` asks for it, never on a card or in a summary. While the command runs, other users and
        /// programs of this computer can read it here, and your shell may remember it: --name-file avoids both
        #[arg(long)]
        name: Option<String>,
        /// File that only you can read, or pipe, with the patient's name in its first line; - for the standard input, after the passphrase
        #[arg(long, value_name = "F", conflicts_with = "name")]
        name_file: Option<PathBuf>,
    },
    /// Issue a plan card: writes card.png, card.svg, card.txt and card.bin, or card-1.png and so on if it needs
    /// several codes. They are not encrypted: whoever has one of them can read the
    /// plan and use the card. Delete them when the patient has it
    Issue {
        /// The patient's code
        code: String,
        /// The plan file, as `example plan` prints one
        plan: PathBuf,
        /// Folder for the card
        #[arg(long, value_name = "DIR", required_unless_present = "check")]
        out: Option<PathBuf>,
        /// Issue nothing: say what prevents it, or how the card would be handed over
        #[arg(long, conflicts_with = "out")]
        check: bool,
    },
    /// Save the files of a card that was issued again
    Card {
        /// The patient's code
        code: String,
        /// The number of the plan; the newest one if it is left out
        #[arg(long, value_name = "NUMBER")]
        revision: Option<u16>,
        /// Folder for the card
        #[arg(long, value_name = "DIR")]
        out: PathBuf,
    },
    /// Save a plan for a patient as a PDF file: the hand-out, or a diary for whoever has no device
    Print {
        /// The patient's code
        code: String,
        /// The number of the plan; the newest one if it is left out
        #[arg(long, value_name = "NUMBER")]
        revision: Option<u16>,
        /// Four weeks to tick from today on, in place of the hand-out
        #[arg(long)]
        diary: bool,
        /// On US Letter, not on A4
        #[arg(long)]
        letter: bool,
        /// The file
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
    },
    /// Receive encrypted summaries: files, pictures (PNG, JPEG) of their codes, or folders with such files, in any order
    Receive {
        /// The files and pictures, and folders: of these and of four levels below, files that end in .age, .png, .jpg or .jpeg
        #[arg(required = true, value_name = "PATH")]
        paths: Vec<PathBuf>,
    },
    /// Show the review of a patient, or write it for a spreadsheet or a medical record
    Review {
        /// The patient's code
        #[arg(required_unless_present = "all", conflicts_with = "all")]
        code: Option<String>,
        /// All patients
        #[arg(long)]
        all: bool,
        /// As what
        #[arg(long = "as", value_enum, default_value = "text")]
        form: Form,
        /// The file to write instead of printing. It is not encrypted: delete it when the record has it
        #[arg(long, value_name = "FILE")]
        out: Option<PathBuf>,
        /// Put the patient's name into a FHIR file, where the clinic knows it. Otherwise only the code is in it
        #[arg(long)]
        with_name: bool,
        /// Of a PDF file: on US Letter, not on A4
        #[arg(long)]
        letter: bool,
    },
    /// Set the server of medical records on this computer to which reviews are handed over, or show it
    Server {
        /// Its address, such as http://127.0.0.1:8080/fhir; only addresses of this computer are taken
        #[arg(conflicts_with = "remove")]
        address: Option<String>,
        /// A file with the token that the server expects, which only you can read; - for the standard input
        #[arg(long, value_name = "FILE", requires = "address")]
        token_file: Option<PathBuf>,
        /// Hand nothing over any more
        #[arg(long)]
        remove: bool,
    },
    /// Hand over reviews to the server that is set, as an HL7 FHIR R4 transaction
    HandOver {
        /// The patient's code
        #[arg(required_unless_present = "all", conflicts_with = "all")]
        code: Option<String>,
        /// All patients, one after the other
        #[arg(long)]
        all: bool,
        /// With the patient's name, where the clinic knows it. Otherwise only the code is sent
        #[arg(long)]
        with_name: bool,
    },
    /// Save a letter at the end of a patient's treatment as a PDF file: the course from the first plan on, and what goes on
    ClosingLetter {
        /// The patient's code
        code: String,
        /// What you add to it, a paragraph for each
        #[arg(long, value_name = "TEXT")]
        text: Vec<String>,
        /// On US Letter, not on A4
        #[arg(long)]
        letter: bool,
        /// The file. It is not encrypted: delete it when the record has it
        #[arg(long, value_name = "FILE")]
        out: PathBuf,
    },
    /// List the patients whose case is open
    Patients {
        /// Those whose case is closed
        #[arg(long)]
        closed: bool,
    },
    /// Close a patient's case: it leaves the list and takes no new plan. Nothing is erased
    Close {
        /// The patient's code
        code: String,
        /// Why
        #[arg(long, value_parser = named::<CloseReason>)]
        reason: CloseReason,
        /// More about it; required if the reason is other
        #[arg(long, default_value = "")]
        words: String,
    },
    /// Open a closed case again
    Reopen {
        /// The patient's code
        code: String,
    },
    /// Give a patient another code or name. Plans that were issued go on; what was printed or exported keeps the old code
    Rename {
        /// The patient's code
        code: String,
        /// The code from now on
        #[arg(long, value_name = "CODE")]
        to: Option<String>,
        /// The name from now on; "" for none. While the command runs, other users and programs of this computer can read it here, and your
        /// shell may remember it: --name-file avoids both
        #[arg(long)]
        name: Option<String>,
        /// File that only you can read, or pipe, with the name in its first line; - for the standard input, after the passphrase
        #[arg(long, value_name = "F", conflicts_with = "name")]
        name_file: Option<PathBuf>,
    },
    /// Show the plans that were issued to a patient, the newest first, and what is different from the one before
    Plans {
        /// The patient's code
        code: String,
    },
    /// Say what to think of with a patient, or show it: conditions, and what is not there at home. It is named when a card is issued,
    /// prevents nothing, and is on no card
    Facts {
        /// The patient's code
        code: String,
        /// The conditions, with commas between, such as osteoporosis; "" for none. They replace those from before
        #[arg(long, value_name = "FLAGS", value_parser = set::<PrescriberFlag>)]
        flags: Option<BTreeSet<PrescriberFlag>>,
        /// What is not there, with commas between, such as mat; "" for nothing. It replaces what was said before
        #[arg(long, value_name = "THINGS", value_parser = set::<Equipment>)]
        lacks: Option<BTreeSet<Equipment>>,
    },
    /// Show what was found at a patient's visits, or note what was found today
    Visit {
        /// What to do
        #[command(subcommand)]
        what: VisitCommand,
    },
    /// Show what was entered of a diary that a patient keeps on paper, or enter days of it
    Diary {
        /// The patient's code
        code: String,
        /// The days, as `example diary` prints some; each takes the place of what was entered for it before
        file: Option<PathBuf>,
    },
    /// List the devices that a patient's summaries came from, or leave one out of the review
    Devices {
        /// The patient's code
        code: String,
        /// Leave this device out of the review
        #[arg(long, value_name = "DEVICE", conflicts_with = "include")]
        exclude: Option<LogId>,
        /// Take this device into the review again
        #[arg(long, value_name = "DEVICE")]
        include: Option<LogId>,
    },
    /// Remove a patient permanently, also from the automatic backups
    Remove {
        /// The patient's code
        code: String,
        /// Confirm it
        #[arg(long)]
        yes: bool,
        /// Keep the automatic backups, which still hold the patient
        #[arg(long)]
        keep_backups: bool,
    },
    /// Save the clinic's own table of published times for reviews, or show the saved one
    Norms {
        /// The table, as `example norms` prints one; it replaces the saved one
        file: Option<PathBuf>,
        /// Remove the saved table
        #[arg(long, conflicts_with = "file")]
        remove: bool,
    },
    /// The clinic's own exercises, which its plans can name like those of the program
    Exercise {
        /// What to do
        #[command(subcommand)]
        what: OwnExercise,
    },
    /// Sets: what the clinic prescribes often, to start plans from
    Set {
        /// What to do
        #[command(subcommand)]
        what: PlanSet,
    },
    /// The clinic's secret key (an age identity), with which any age tool can open its summaries
    Identity {
        /// Print it
        #[arg(long)]
        show: bool,
        /// Write a page to print with it, which is not encrypted
        #[arg(long, value_name = "FILE.html")]
        sheet: Option<PathBuf>,
    },
}

/// As what a review is shown or written.
#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Form {
    /// For people
    Text,
    /// For programs
    Json,
    /// For a spreadsheet: one value a line
    Csv,
    /// HL7 FHIR R4, a file to hand over (collection)
    Fhir,
    /// HL7 FHIR R4, for a server of records to take in (transaction)
    FhirTransaction,
    /// One or two pages for whoever treats the patient too, as a PDF file
    Pdf,
}
