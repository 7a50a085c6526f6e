//! What the person asked of the shell, one after the other.

use std::collections::VecDeque;
use std::future::Future;
use std::pin::Pin;

/// What is done with an answer once it is there.
pub type Answered = Box<dyn FnOnce()>;
/// A question on its way, and then its answer.
pub type Asking = Pin<Box<dyn Future<Output = Answered>>>;

struct Request {
    /// The command's name and its argument, to know the same question again.
    question: String,
    /// `None` once it is on its way.
    asking: Option<Asking>,
}

/// Questions in the order in which they were asked. The first may be on its way; no other is.
#[derive(Default)]
pub struct Requests(VecDeque<Request>);

impl Requests {
    /// Whether no question is on its way and none waits.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Whether this question is on its way or waits already.
    pub fn has(&self, question: &str) -> bool {
        self.0.iter().any(|request| request.question == question)
    }

    /// Puts a question at the end.
    pub fn push(&mut self, question: String, asking: Asking) {
        self.0.push_back(Request { question, asking: Some(asking) });
    }

    /// The first question, which is on its way from now on; `None` if it is already, and if there is none.
    pub fn begin(&mut self) -> Option<Asking> {
        self.0.front_mut()?.asking.take()
    }

    /// Forgets the question that was on its way.
    pub fn end(&mut self) {
        self.0.pop_front();
    }
}
