//! Why a paper cannot be made.

use exercises::catalogue::ExerciseId;

/// Why a paper cannot be made.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PaperError {
    /// The plan has an exercise that the catalogue does not know.
    #[error("the catalogue has no exercise {0}")]
    UnknownExercise(ExerciseId),
    /// A code has so many modules that they would be too small to be read from paper.
    #[error("a code with {modules} modules a side does not fit")]
    CodeTooLarge {
        /// Modules a side, with the quiet zone.
        modules: usize,
    },
    /// A fault of this crate: a font that cannot be read, or a file that is not as PDF/UA asks.
    #[error("the PDF could not be made: {0}")]
    Internal(String),
}
