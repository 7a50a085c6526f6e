//! What the person asked of the shell, one after the other.

use std::collections::VecDeque;
use std::future::Future;
use std::pin::Pin;

/// What is done with an answer once it is there.
pub type Answered = Box<dyn FnOnce()>;
/// A request on its way to the shell, and then its answer.
pub type Sending = Pin<Box<dyn Future<Output = Answered>>>;

struct Request {
    /// The command's name and its argument, to know the same request again.
    key: String,
    /// `None` once it is on its way.
    sending: Option<Sending>,
}

/// Requests in the order in which they were made. The first may be on its way; no other is.
#[derive(Default)]
pub struct Requests(VecDeque<Request>);

impl Requests {
    /// Whether no request is on its way and none waits.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Whether this request is on its way or waits already.
    pub fn has(&self, key: &str) -> bool {
        self.0.iter().any(|request| request.key == key)
    }

    /// Puts a request at the end.
    pub fn push(&mut self, key: String, sending: Sending) {
        self.0.push_back(Request { key, sending: Some(sending) });
    }

    /// The first request, which is on its way from now on; `None` if it is already, and if there is none.
    pub fn begin(&mut self) -> Option<Sending> {
        self.0.front_mut()?.sending.take()
    }

    /// Forgets the request that was on its way.
    pub fn end(&mut self) {
        self.0.pop_front();
    }
}
