//! Where the program stands when its window opens.

use serde::Serialize;
use tauri::State;

use crate::home::Session;

/// What the first screen needs.
#[derive(Serialize)]
pub struct Situation {
    /// The moment taken for now, RFC 3339, when one was given on the command line.
    at: Option<String>,
}

/// Where the program stands.
#[tauri::command]
pub async fn situation(session: State<'_, Session>) -> Result<Situation, String> {
    Ok(Situation { at: session.at.map(|at| at.to_rfc3339()) })
}
