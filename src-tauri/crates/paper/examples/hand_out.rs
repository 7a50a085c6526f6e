//! Prints the demo's plans into a folder, to look at them: hand-out and diary of each, in both languages and sizes of paper.
//!
//! `cargo run -p paper --example hand_out -- FOLDER [pseudo]`
//!
//! The codes have the size of those of a card, but no device takes them, since nobody has signed them.

use chrono::{Days, NaiveDate};
use exercises::catalogue::Catalogue;
use exercises::id::PlanId;
use exercises::plan::{Header, Plan};
use paper::{Diary, HandOut, Paper};
use pictures::qr::Code;
use std::error::Error;
use std::path::Path;
use words::{Locale, Words};

/// The demo's plans, beside this crate.
const PLANS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../../demo/plans");

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let out = words.first().ok_or("a folder to write into")?;
    let pseudo = words.iter().any(|word| word == "pseudo");
    let catalogue = format::catalogue::embedded().map_err(|faults| format!("{faults:?}"))?;
    let today = NaiveDate::from_ymd_opt(2027, 3, 1).ok_or("a date")?;
    std::fs::create_dir_all(out)?;
    for file in std::fs::read_dir(PLANS)? {
        let file = file?.path();
        let text = std::fs::read_to_string(&file)?;
        let name = file.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let plan = plan(&text, today)?;
        print(&Path::new(out).join(name), &plan, &text, (&catalogue, pseudo))?;
    }
    Ok(())
}

fn plan(text: &str, today: NaiveDate) -> Result<Plan, Box<dyn Error>> {
    let review = today + Days::new(42);
    let text = text.replace("REVIEW", &review.to_string());
    let prescription = format::plan_file::read(&text, today).map_err(|fault| format!("{fault:?}"))?;
    let header = Header::first(PlanId([1; 8]), "Practice by the Mill", today).with_phone(Some("+00 123 456 78".to_owned()));
    Ok(Plan { header, prescription })
}

/// The codes of bytes as large as a card: one, or several where one is too small.
fn codes(text: &str) -> Result<Vec<Code>, Box<dyn Error>> {
    let bytes = text.as_bytes();
    if let Ok(code) = Code::of(&format::card::to_text(bytes)) {
        return Ok(vec![code]);
    }
    let frames = format::frames::split_card(bytes).map_err(|fault| format!("{fault:?}"))?;
    Ok(frames.iter().map(|frame| Code::of(frame)).collect::<Result<_, _>>()?)
}

fn print(to: &Path, plan: &Plan, text: &str, (catalogue, pseudo): (&Catalogue, bool)) -> Result<(), Box<dyn Error>> {
    let codes = codes(text)?;
    for (locale, paper, size) in [(Locale::En, Paper::A4, "en-a4"), (Locale::Es, Paper::Letter, "es-letter")] {
        let words = Words::new(locale).in_pseudo(pseudo);
        let (patient, codes) = (Some("K17"), &codes[..]);
        let hand_out = paper::hand_out(&HandOut { plan, catalogue, patient, codes }, paper, words)?;
        let first = Some(plan.header.issued);
        let diary = paper::diary(&Diary { plan, catalogue, patient, first }, paper, words)?;
        std::fs::write(to.with_extension(format!("{size}.pdf")), hand_out)?;
        std::fs::write(to.with_extension(format!("diary.{size}.pdf")), diary)?;
    }
    Ok(())
}
