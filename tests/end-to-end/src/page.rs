//! Finding things on the page as a person does: by the words on or beside them.

use serde_json::{Value, json};

/// Scripts share these: the words of an element as they are read, and whether it can be seen.
const SIGHT: &str = r"
    const words = (element) => (element.getAttribute('aria-label') ?? element.innerText ?? element.textContent).replace(/\s+/g, ' ').trim();
    const seen = (element) => element.checkVisibility({ visibilityProperty: true }) && element.getClientRects().length > 0;
";

/// Anything that can be pressed, with exactly these words, that is in sight and not switched off.
const PRESSABLE: &str = r"
    const kinds = 'button, a[href], summary, label, option, [role=button], [role=tab], [role=radio], [role=checkbox]';
    return [...document.querySelectorAll(kinds)].filter((element) => words(element) === arguments[0] && seen(element) && !element.disabled);
";

/// The field under or beside a label with exactly these words.
const FIELD: &str = r"
    const own = (label) => label.control ?? label.querySelector('input, select, textarea');
    const direct = (label) => [...label.childNodes].filter((node) => node !== own(label)).map((node) => node.textContent).join(' ').replace(/\s+/g, ' ').trim();
    // A label may say a hint below the field: then its name stands in a span of its own.
    const name = (label) => (label.querySelector(':scope > span')?.textContent ?? '').replace(/\s+/g, ' ').trim();
    const labelled = [...document.querySelectorAll('label')].filter((label) => [direct(label), name(label)].includes(arguments[0])).map(own);
    const named = [...document.querySelectorAll('input, select, textarea')].filter((field) => field.getAttribute('aria-label') === arguments[0]);
    return [...labelled, ...named].filter((field) => field && !field.disabled);
";

/// All words that are in sight, a space between any two.
const TEXT: &str = r"
    const drawn = [...document.querySelectorAll('svg text')].filter(seen).map((text) => text.textContent);
    return [document.body.innerText, ...drawn].join(' ').replace(/\s+/g, ' ');
";

/// What is wider than the page, and what is too small to be pressed with a finger: less than 44 CSS pixels in
/// either direction (WCAG 2.2, 2.5.5). Links within a sentence are left out, as there.
const MISFITS: &str = r"
    const wide = [...document.body.querySelectorAll('*')].filter(seen).filter((element) => {
        const box = element.getBoundingClientRect();
        return box.right > innerWidth + 1 && !element.closest('[data-scrolls], svg *');
    });
    const kinds = 'button, a.button, summary, select, input, [role=button], [role=tab], [role=radio]';
    const reach = (element) => (element.closest('label') ?? element).getBoundingClientRect();
    const small = [...document.querySelectorAll(kinds)].filter(seen).filter((element) => {
        const box = reach(element);
        return box.width < 44 || box.height < 44;
    });
    const name = (element) => `${element.localName}.${element.className.baseVal ?? element.className} '${words(element).slice(0, 40)}'`;
    return [...wide.map((element) => 'too wide: ' + name(element)), ...small.map((element) => 'too small to press: ' + name(element))];
";

/// The script that finds what does not fit.
pub fn misfits() -> String {
    [SIGHT, MISFITS].concat()
}

/// The script that finds what can be pressed.
pub fn pressable() -> String {
    [SIGHT, PRESSABLE].concat()
}

/// The script that finds what can be pressed and has these words among others.
pub fn pressable_part() -> String {
    [SIGHT, &PRESSABLE.replace("words(element) === arguments[0]", "words(element).includes(arguments[0])")].concat()
}

/// The script that finds a field.
pub fn field() -> String {
    FIELD.to_owned()
}

/// The script that reads the page.
pub fn text() -> String {
    [SIGHT, TEXT].concat()
}

/// The argument of the first two.
pub fn named(words: &str) -> [Value; 1] {
    [json!(words)]
}
