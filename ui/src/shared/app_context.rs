//! The shared state of all screens: the language, the state of the program, the last failure.

use leptos::prelude::*;
use leptos::task::spawn_local;
use wire::app::AppState;
use wire::{Command, Failure};
use words::{Key, Locale, Words};

use super::requests::{Answered, Requests};
use crate::invoke;

/// The shared state of all screens. It lives as long as the window.
#[derive(Clone, Copy)]
pub struct AppContext {
    /// The state of the program; `None` until the shell has answered.
    pub state: RwSignal<Option<AppState>>,
    /// The last failure; it stays until it is closed or a command succeeds.
    pub fault: RwSignal<Option<Failure>>,
    /// Whether a command has not been answered yet.
    pub busy: RwSignal<bool>,
    requests: StoredValue<Requests, LocalStorage>,
}

impl AppContext {
    /// The state before anything is known.
    pub fn new() -> AppContext {
        AppContext {
            state: RwSignal::new(None),
            fault: RwSignal::new(None),
            busy: RwSignal::new(false),
            requests: StoredValue::new_local(Requests::default()),
        }
    }

    /// The context of this window.
    pub fn current() -> AppContext {
        expect_context()
    }

    /// The texts of the chosen language.
    pub fn words(self) -> Words {
        let known = self.state.with(|state| state.as_ref().map(|state| (Locale::closest(&state.locale), state.pseudo)));
        let (locale, pseudo) = known.unwrap_or_else(|| (Some(systems_locale()), false));
        Words::new(locale.unwrap_or(Locale::En)).in_pseudo(pseudo)
    }

    /// The texts, for parts that are redrawn when another language is chosen.
    pub fn words_shown(self) -> Memo<Words> {
        Memo::new(move |_| self.words())
    }

    /// A text without values.
    pub fn text(self, key: Key) -> &'static str {
        self.words().text(key)
    }

    /// Calls a command for the person; a failure is shown at the top of the screen. While one is running, another press has no
    /// effect.
    pub fn request<C: Command + 'static>(self, args: C::Args, then: impl FnOnce(C::Reply) + 'static)
    where
        C::Args: 'static,
    {
        let key = format!("{} {}", C::NAME, serde_json::json!(&args));
        if self.requests.with_value(|requests| requests.has(&key)) {
            return;
        }
        // What failed before it stays in sight: the person did not know of it when they pressed.
        let waits = self.requests.with_value(|requests| !requests.is_empty());
        let sending = async move {
            let answer = invoke::call::<C>(&args).await;
            let answered: Answered = Box::new(move || match answer {
                Ok(reply) => {
                    if !waits {
                        self.fault.set(None);
                    }
                    then(reply);
                }
                Err(failure) => self.fault.set(Some(failure)),
            });
            answered
        };
        self.requests.update_value(|requests| requests.push(key, Box::pin(sending)));
        self.busy.set(true);
        spawn_local(self.send());
    }

    /// Sends what waits, one after the other, unless that is being done already.
    async fn send(self) {
        while let Some(sending) = self.requests.try_update_value(Requests::begin).flatten() {
            let answered = sending.await;
            self.requests.update_value(Requests::end);
            if self.requests.with_value(Requests::is_empty) {
                self.busy.set(false);
            }
            answered();
        }
    }

    /// Calls a command in the background; a failure is shown, and nothing waits for the result.
    pub fn query<C: Command + 'static>(self, args: C::Args, then: impl FnOnce(C::Reply) + 'static)
    where
        C::Args: 'static,
    {
        self.query_or_none::<C>(args, move |reply| {
            if let Some(reply) = reply {
                then(reply);
            }
        });
    }

    /// Like [`AppContext::query`], but `then` is also called after a failure, with `None`.
    pub fn query_or_none<C: Command + 'static>(self, args: C::Args, then: impl FnOnce(Option<C::Reply>) + 'static)
    where
        C::Args: 'static,
    {
        spawn_local(async move {
            match invoke::call::<C>(&args).await {
                Ok(reply) => then(Some(reply)),
                Err(failure) => {
                    self.fault.set(Some(failure));
                    then(None);
                }
            }
        });
    }
}

/// The system's language, as the shell notes it in the page: for texts that are shown before the shell has answered, or if it
/// cannot.
fn systems_locale() -> Locale {
    let noted = js_sys::Reflect::get(&window(), &"systemLanguage".into()).ok().and_then(|language| language.as_string());
    noted.and_then(|tag| Locale::closest(&tag)).unwrap_or(Locale::En)
}
