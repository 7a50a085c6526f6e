//! Writes a sheet with the figures of the shipped exercises as SVG to standard output, for checking them while they are
//! drawn.
//!
//! `cargo run -p format --example figure_sheet -- [dark] [rungs | trials] [EXERCISE | FILE.toml ...] > sheet.svg`

use exercises::catalogue::{Catalogue, Exercise, Figure, Lang};
use exercises::figure::{Paint, Shape, Size, Stage};
use exercises::run::SetUp;
use format::catalogue::{Fault, TextFile, embedded, read, text_file_name};
use std::fmt::Write as _;

const PHASES: [f64; 5] = [0.0, 0.25, 0.5, 0.75, 1.0];
const CELL: Size = Size { width: 300.0, height: 300.0 };
const GAP: f64 = 24.0;

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let has = |word: &str| words.iter().any(|given| given == word);
    let asked: Vec<_> = words.iter().filter(|word| !["dark", "rungs", "trials"].contains(&word.as_str())).collect();
    match catalogue(&asked) {
        Ok(catalogue) => {
            print!("{}", sheet(&figures(&catalogue, has("rungs") || has("trials")), has("dark"), has("trials")));
        }
        Err(faults) => faults.iter().for_each(|fault| eprintln!("{}: {:?}", fault.file, fault.fault)),
    }
}

/// The shipped exercises whose id begins with one of the words, and the exercises of the files named; all exercises if there
/// are no words.
fn catalogue(words: &[&String]) -> Result<Catalogue, Vec<Fault>> {
    let mut catalogue = embedded()?;
    let begins = |id: &str| words.is_empty() || words.iter().any(|word| id.starts_with(word.as_str()));
    catalogue.exercises.retain(|exercise| begins(exercise.id.as_str()));
    for file in words.iter().filter(|word| word.ends_with(".toml")) {
        catalogue.exercises.push(from_file(file)?);
    }
    Ok(catalogue)
}

/// An exercise from a file, with the texts of the language files next to it.
fn from_file(file: &str) -> Result<Exercise, Vec<Fault>> {
    let text = std::fs::read_to_string(file).expect("a file that can be read");
    let beside = Lang::ALL.into_iter().map(|lang| (lang, text_file_name(file, lang)));
    let texts: Vec<(Lang, String, String)> = beside
        .filter(|(_, name)| std::path::Path::new(name).exists())
        .map(|(lang, name)| {
            let text = std::fs::read_to_string(&name).expect("a file that can be read");
            (lang, name, text)
        })
        .collect();
    let texts: Vec<TextFile> = texts.iter().map(|(lang, name, text)| TextFile { lang: *lang, name, text }).collect();
    read(file, &text, &texts)
}

/// The figure of each exercise, or of each of its rungs.
fn figures(catalogue: &Catalogue, rungs: bool) -> Vec<(String, Figure)> {
    let of_rungs = |exercise: &Exercise| {
        let rungs = exercise.ladders.iter().flat_map(|ladder| &ladder.rungs);
        rungs.map(|rung| (format!("{} {}", exercise.id, rung.id), exercise.figure(&rung.id))).collect::<Vec<_>>()
    };
    let own = |exercise: &Exercise| vec![(exercise.id.to_string(), exercise.poses.clone())];
    catalogue.exercises.iter().flat_map(|exercise| if rungs { of_rungs(exercise) } else { own(exercise) }).collect()
}

/// A row for each figure: moments of the movement, or the places of the phone during a balance trial.
fn sheet(figures: &[(String, Figure)], dark: bool, trials: bool) -> String {
    let width = GAP + PHASES.len() as f64 * (CELL.width + GAP);
    let height = GAP + figures.len() as f64 * (CELL.height + GAP);
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">"
    );
    let paper = colour(Paint::Ground, dark);
    let _ = write!(svg, "<rect width=\"{width}\" height=\"{height}\" fill=\"{paper}\"/>");
    for (row, (name, figure)) in figures.iter().enumerate() {
        let y = GAP + row as f64 * (CELL.height + GAP);
        let pictures: Vec<Vec<Shape>> = match trials {
            true => SetUp::ALL.iter().map(|set_up| Stage::of_trial(figure, *set_up, CELL).draw(1.0)).collect(),
            false => {
                let stage = Stage::new(figure, CELL);
                PHASES.iter().map(|phase| stage.draw(*phase)).collect()
            }
        };
        for (column, picture) in pictures.iter().enumerate() {
            let x = GAP + column as f64 * (CELL.width + GAP);
            let _ = write!(svg, "<g transform=\"translate({x} {y})\">");
            svg.extend(picture.iter().map(|shape| painted(shape, dark)));
            svg.push_str("</g>");
        }
        let ink = colour(Paint::NearArm, dark);
        let _ = write!(svg, "<text x=\"{GAP}\" y=\"{}\" font-size=\"13\" fill=\"{ink}\">{name}</text>", y + 4.0);
    }
    svg + "</svg>"
}

fn painted(shape: &Shape, dark: bool) -> String {
    let (d, colour) = (shape.svg_path(), colour(shape.paint, dark));
    match shape.stroke {
        None => format!("<path d=\"{d}\" fill=\"{colour}\"/>"),
        Some(stroke) => {
            let dash = stroke.dash.map_or(String::new(), |(on, off)| format!(" stroke-dasharray=\"{on:.1} {off:.1}\""));
            let width = stroke.width;
            format!(
                "<path d=\"{d}\" fill=\"none\" stroke=\"{colour}\" stroke-width=\"{width:.1}\" stroke-linecap=\"round\" stroke-linejoin=\"round\"{dash}/>"
            )
        }
    }
}

fn colour(paint: Paint, dark: bool) -> &'static str {
    let (light, night) = match paint {
        Paint::Near => ("#768D84", "#9DB4AB"),
        Paint::NearArm => ("#20292E", "#EDE8DE"),
        Paint::Eyes => ("#20292E", "#14191C"),
        Paint::Far => ("#C9D2CC", "#46545A"),
        Paint::Ground => ("#FAF7F1", "#14191C"),
        Paint::Furniture => ("#D9D2C4", "#3A454A"),
        Paint::Held => ("#B07C22", "#E3B864"),
        Paint::Phone => ("#85590A", "#E3B864"),
        Paint::Plumb => ("#B07C22", "#E3B864"),
        Paint::Arrow => ("#85590A", "#E3B864"),
    };
    if dark { night } else { light }
}
