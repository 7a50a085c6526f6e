//! Keeps the focus where the person is. What has it may go from the page, because another page opens or because it is drawn
//! anew; keyboard and reader would then begin again at the top of the window (WCAG 2.2, 2.4.3).

use std::cell::RefCell;
use std::rc::Rc;

use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    Element, FocusOptions, HtmlElement, MutationObserver, MutationObserverInit, ScrollIntoViewOptions, ScrollLogicalPosition,
};

/// What can have the focus.
const KINDS: &str = "button, a[href], summary, input, select, textarea, [tabindex]";
/// What the keyboard goes to by itself.
const REACHED: &str = "button, a[href], summary, input, select, textarea";
/// The page that is shown.
const PAGE: &str = "main:not([hidden])";

/// What has the focus, and how to find the way back when it goes.
#[derive(Clone)]
struct FocusTarget {
    element: HtmlElement,
    /// The parts of the page in which it stands, from the inside outwards.
    within: Vec<HtmlElement>,
    /// The page's heading, and its words.
    heading: Option<(Element, String)>,
    name: String,
    /// Whether it is a page that had no heading yet.
    waits: bool,
}

type FocusKeeper = Rc<RefCell<Option<FocusTarget>>>;

/// Gives the focus to the element of that id, where it is on the page; without scrolling.
pub fn give_to(id: &str) {
    let found = document().get_element_by_id(id).and_then(|element| element.dyn_into::<HtmlElement>().ok());
    if let Some(element) = found.filter(is_there) {
        give(&element, true);
    }
}

/// The name of the element that has the focus, to find it again when its page is drawn anew.
pub fn name_of_focused() -> String {
    let focused = document().active_element().and_then(|element| element.dyn_into().ok());
    focused.filter(can_have_it).map(|element| name(&element)).unwrap_or_default()
}

/// Gives the focus to the element of the page with this name, without scrolling. Returns whether there is one, or none is looked for.
pub fn give_to_named(page: &HtmlElement, wanted: &str) -> bool {
    let found = named(page, wanted);
    if let Some(element) = &found {
        give(element, true);
    }
    found.is_some() || wanted.is_empty()
}

/// Watches over the focus for as long as the window lives.
pub fn keep() {
    let keeper = FocusKeeper::default();
    let (taken, left, changed) = (keeper.clone(), keeper.clone(), keeper);
    let took = window_event_listener(ev::focusin, move |event| {
        if let Some(element) = event.target().and_then(|target| target.dyn_into::<HtmlElement>().ok()) {
            taken.replace(Some(FocusTarget::of(element.clone())));
            request_animation_frame(move || bring_into_sight(&element));
        }
    });
    let lost = window_event_listener(ev::focusout, move |_| {
        let left = left.clone();
        // Whether it went by itself or was let go of is to be seen only afterwards.
        request_animation_frame(move || let_go(&left));
    });
    watch(move || restore(&changed));
    on_cleanup(move || {
        took.remove();
        lost.remove();
    });
}

/// Scrolls as far as needed to show the whole of what the keyboard has reached: the web view leaves at the edge what it shows in part.
fn bring_into_sight(element: &HtmlElement) {
    let by_keyboard = element.matches(&format!(":is({REACHED}):focus-visible")).unwrap_or_default();
    if by_keyboard {
        let options = ScrollIntoViewOptions::new();
        options.set_block(ScrollLogicalPosition::Nearest);
        element.scroll_into_view_with_scroll_into_view_options(&options);
    }
}

/// Calls `then` whenever something of the page goes, comes, is switched on or off, or begins or ceases to take the focus.
fn watch(then: impl Fn() + 'static) {
    let seen = Closure::<dyn Fn(JsValue, JsValue)>::new(move |_, _| then());
    let what = MutationObserverInit::new();
    what.set_child_list(true);
    what.set_subtree(true);
    what.set_attribute_filter(
        &["disabled", "hidden", "tabindex"].map(JsValue::from_str).into_iter().collect::<js_sys::Array>(),
    );
    // Kept for good: it ends with the window.
    let observer = MutationObserver::new(seen.into_js_value().unchecked_ref());
    if let (Ok(observer), Some(body)) = (observer, document().body()) {
        // Refused only for options that say nothing.
        let _ = observer.observe_with_options(&body, &what);
    }
}

/// A press beside everything lets go of the focus: then nothing brings it back.
fn let_go(keeper: &FocusKeeper) {
    let free = |target: &FocusTarget| can_have_it(&target.element) && !is_off(&target.element);
    let away = nothing_has_it() && document().has_focus().unwrap_or_default();
    if away && keeper.borrow().as_ref().is_some_and(free) {
        keeper.replace(None);
    }
}

fn restore(keeper: &FocusKeeper) {
    let Some(target) = keeper.borrow().clone() else { return };
    if target.waits && target.has_it() {
        if let Some(heading) = heading() {
            give(&heading, false);
        }
    } else if !can_have_it(&target.element) {
        target.hand_on(keeper);
    } else if nothing_has_it() && !is_off(&target.element) {
        give(&target.element, true);
    }
}

impl FocusTarget {
    fn of(element: HtmlElement) -> FocusTarget {
        let parts = std::iter::successors(element.parent_element(), |part| part.parent_element());
        let within = parts.take_while(|part| part.tag_name() != "BODY").filter_map(|part| part.dyn_into().ok()).collect();
        FocusTarget { within, heading: heading().map(with_words), name: name(&element), waits: false, element }
    }

    fn has_it(&self) -> bool {
        document().active_element().is_some_and(|active| active == *self.element)
    }

    /// To the same drawn anew, to the part of the page in which it stood, or to the page's heading.
    fn hand_on(&self, keeper: &FocusKeeper) {
        let other = document().active_element().and_then(|active| active.dyn_into().ok());
        // The web view may leave it where it was until it draws, although it cannot be there any longer.
        if other.is_some_and(|other: HtmlElement| other != self.element && other.tag_name() != "BODY" && is_there(&other)) {
            return;
        }
        let left: Vec<&HtmlElement> = self.within.iter().filter(|part| is_there(part)).collect();
        let page = left.iter().find(|part| part.tag_name() == "MAIN");
        if let Some(same) = page.and_then(|page| self.drawn_anew(page)) {
            return give(&same, true);
        }
        let part = left.iter().find(|part| matches!(part.tag_name().as_str(), "SECTION" | "FIELDSET" | "DETAILS"));
        if let Some(part) = part {
            return give(part, true);
        }
        if let Some(heading) = heading() {
            // The next page may have its heading in the same element.
            let same = self.heading == Some(with_words(heading.clone()));
            return give(&heading, same);
        }
        if let Some(page) = first(PAGE) {
            give(&page, true);
            if let Some(target) = keeper.borrow_mut().as_mut() {
                target.waits = true;
            }
        }
    }

    fn drawn_anew(&self, page: &HtmlElement) -> Option<HtmlElement> {
        named(page, &self.name)
    }
}

/// The first element of the page with this name that can take the focus.
fn named(page: &HtmlElement, wanted: &str) -> Option<HtmlElement> {
    let all = page.query_selector_all(KINDS).ok()?;
    let mut all = (0..all.length()).filter_map(|place| all.item(place)?.dyn_into::<HtmlElement>().ok());
    all.find(|element| !wanted.is_empty() && name(element) == wanted && is_there(element) && !is_off(element))
}

/// Its words, and those at the head of its part of the page: enough to know it again.
fn name(element: &HtmlElement) -> String {
    let own = element.get_attribute("aria-label").or_else(|| element.text_content()).unwrap_or_default();
    let label = element.closest("label").ok().flatten().and_then(|label| label.text_content());
    let part = element.closest("section, fieldset, details").ok().flatten();
    let head = part.and_then(|part| part.query_selector("h1, h2, h3, legend, summary").ok().flatten());
    let told = [own, label.unwrap_or_default(), head.and_then(|head| head.text_content()).unwrap_or_default()];
    told.concat().trim().to_owned()
}

fn with_words(heading: HtmlElement) -> (Element, String) {
    let words = heading.text_content().unwrap_or_default();
    (heading.into(), words)
}

fn heading() -> Option<HtmlElement> {
    first("main:not([hidden]) h1")
}

fn first(selector: &str) -> Option<HtmlElement> {
    document().query_selector(selector).ok().flatten()?.dyn_into().ok()
}

fn is_there(element: &HtmlElement) -> bool {
    element.is_connected() && element.get_client_rects().length() > 0
}

/// An element that is kept and changed may have been one that takes the focus, and be none now.
fn can_have_it(element: &HtmlElement) -> bool {
    is_there(element) && element.matches(KINDS).unwrap_or_default()
}

fn is_off(element: &HtmlElement) -> bool {
    element.has_attribute("disabled")
}

fn nothing_has_it() -> bool {
    document().active_element().is_none_or(|active| active.tag_name() == "BODY")
}

/// `still`: without scrolling, since the person is there already.
fn give(element: &HtmlElement, still: bool) {
    if element.tab_index() < 0 && !element.has_attribute("tabindex") {
        element.set_tab_index(-1);
    }
    let options = FocusOptions::new();
    options.set_prevent_scroll(still);
    // Refused only when it has gone again: then it is looked for again.
    let _ = element.focus_with_options(&options);
}
