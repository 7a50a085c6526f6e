//! A thousand exercises read: from the files of their authors, and as the window receives them.

use crate::finding::thousand;
use exercises::figure::{Size, Stage};
use wire::Command;
use wire::app::ShowCatalogue;

/// What the window receives.
type Sent = <ShowCatalogue as Command>::Reply;

/// The exercises as text.
pub struct Loading {
    files: Vec<String>,
    sent: String,
    stages: Vec<Stage>,
}

/// Figures that one screen of the catalogue shows at once.
const ON_A_SCREEN: usize = 24;
/// The size of each.
const SIZE: Size = Size { width: 120.0, height: 120.0 };

impl Loading {
    /// Writes a thousand exercises made from those of the catalogue.
    pub fn new() -> Loading {
        let exercises = thousand();
        let files = (exercises.iter().cloned())
            .map(|mut one| {
                one.texts.values_mut().for_each(|texts| texts.name = one.id.to_string());
                format::catalogue::write(&one)
            })
            .collect();
        let stages = exercises.iter().take(ON_A_SCREEN).map(|one| Stage::new(&one.level(None).figure(), SIZE)).collect();
        Loading { files, sent: serde_json::to_string::<Sent>(&exercises).expect("plain data"), stages }
    }

    /// Reads the files.
    pub fn read(&self) -> usize {
        self.files.iter().filter(|text| format::catalogue::read_own("own.toml", text).is_ok()).count()
    }

    /// Reads what the window receives.
    pub fn arrive(&self) -> usize {
        serde_json::from_str::<Sent>(&self.sent).map_or(0, |exercises| exercises.len())
    }

    /// Draws one moment of the figures on a screen.
    pub fn figures(&self) -> usize {
        self.stages.iter().map(|stage| stage.draw(0.4).len()).sum()
    }
}

impl Default for Loading {
    fn default() -> Loading {
        Loading::new()
    }
}
