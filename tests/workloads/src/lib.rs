//! The domain's computations on fixed inputs.
//!
//! [`texts()`] returns their results as text, every number with all its bits: native code and the web view must give the same.
//! [`Prepared`] has inputs of the size that a person with two years of practice has, so that each computation can be repeated while
//! it is timed. Nothing here is random.

mod finding;
mod loading;
mod prepared;
mod statistics;
mod texts;
mod trials;
mod years;

pub use finding::Finding;
pub use loading::Loading;
pub use prepared::Prepared;
pub use texts::texts;
pub use trials::{minute, minute_csv};
pub use years::Years;

/// [`texts()`], for the web view.
#[wasm_bindgen::prelude::wasm_bindgen(js_name = texts)]
pub fn texts_of_web() -> String {
    texts()
}
