//! Refusals in two texts: what is wrong, and what to do.

use crate::Words;
use exercises::catalogue::Lang;
use exercises::plan::Risk;
use exercises::plan::check::Problem;
use wire::Failure;

mod en;
mod es;

/// A refusal as a person reads it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Refusal {
    /// What is wrong, one sentence.
    pub fault: String,
    /// What to do, one sentence.
    pub advice: String,
}

impl Words {
    /// What is wrong and what to do.
    pub fn failure(self, failure: &Failure) -> Refusal {
        let (fault, advice) = match self.lang {
            Lang::En => en::failure(failure),
            Lang::Es => es::failure(failure),
        };
        Refusal { fault: self.owned_as_shown(fault), advice: self.owned_as_shown(advice) }
    }

    /// What keeps a plan from being issued or taken, one sentence.
    pub fn problem(self, problem: &Problem) -> String {
        self.owned_as_shown(match self.lang {
            Lang::En => en::problem(problem),
            Lang::Es => es::problem(problem),
        })
    }

    /// One line of the ticked list.
    pub fn risk(self, risk: Risk) -> &'static str {
        self.as_shown(match self.lang {
            Lang::En => en::risk(risk),
            Lang::Es => es::risk(risk),
        })
    }
}

/// "2, 3 and so on": the numbers with commas between them.
fn numbers(all: &[u8]) -> String {
    all.iter().map(u8::to_string).collect::<Vec<_>>().join(", ")
}

/// Joins the problems of a plan for a single sentence.
fn joined(problems: &[Problem], say: impl Fn(&Problem) -> String) -> String {
    problems.iter().map(say).collect::<Vec<_>>().join(" ")
}
