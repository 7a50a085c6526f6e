//! An answer that was given.

use exercises::questions::Question;
use exercises::score::Score;
use wire::patient::QuestionAnswer;

/// An answer with its question, so that it can be asked again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Given {
    /// The question.
    pub question: Question,
    /// The answer, 0 to 10.
    pub score: Score,
}

impl Given {
    /// The answer as the shell takes it.
    pub fn answer(&self) -> QuestionAnswer {
        let score = self.score;
        match self.question {
            Question::Morning { plan, complaint, .. } => QuestionAnswer::Morning { plan, complaint, score },
            Question::During { plan, item, .. } => QuestionAnswer::During { plan, item, score },
            Question::Activity { plan, activity, .. } => QuestionAnswer::Activity { plan, activity, score },
        }
    }
}
