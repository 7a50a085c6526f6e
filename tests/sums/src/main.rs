//! `sums minute` prints the trial of a minute as CSV; `sums size` what two years hold; `sums texts` all results.

use std::process::ExitCode;

fn main() -> ExitCode {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    match asked.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        ["minute"] => print!("{}", sums::minute_csv()),
        ["size"] => println!("{}", sums::Years::new().size()),
        ["texts"] => print!("{}", sums::texts()),
        _ => {
            eprintln!("usage: sums minute|size|texts");
            return ExitCode::from(2);
        }
    }
    ExitCode::SUCCESS
}
