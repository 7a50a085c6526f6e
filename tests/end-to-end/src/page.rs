//! Scripts that find elements on the page by their visible words or their labels.

use serde_json::{Value, json};

/// Functions that the scripts share: a text without the accents of the made-up language, the words of an element as they are read,
/// and whether it is visible.
const SIGHT: &str = r"
    const plain = (text) => text.replace(/([àèìòù])\1/gi, (vowels) => vowels[0].normalize('NFD')[0]).replace(/\s+/g, ' ').trim();
    const words = (element) => plain(element.getAttribute('aria-label') ?? element.innerText ?? element.textContent);
    const seen = (element) => element.checkVisibility({ visibilityProperty: true }) && element.getClientRects().length > 0;
";

/// Finds an element that can be pressed, has exactly these words, is visible and enabled.
const PRESSABLE: &str = r"
    const kinds = 'button, a[href], summary, label, option, [role=button], [role=tab], [role=radio], [role=checkbox]';
    return [...document.querySelectorAll(kinds)].filter((element) => words(element) === arguments[0] && seen(element) && !element.disabled);
";

/// Finds the field under or next to a label with exactly these words.
const FIELD: &str = r"
    const own = (label) => label.control ?? label.querySelector('input, select, textarea');
    const direct = (label) => plain([...label.childNodes].filter((node) => node !== own(label)).map((node) => node.textContent).join(' '));
    // A label may contain a hint below the field; then its name is in a span of its own.
    const name = (label) => plain(label.querySelector(':scope > span')?.textContent ?? '');
    const labelled = [...document.querySelectorAll('label')].filter((label) => [direct(label), name(label)].includes(arguments[0])).map(own);
    const named = [...document.querySelectorAll('input, select, textarea')].filter((field) => plain(field.getAttribute('aria-label') ?? '') === arguments[0]);
    return [...labelled, ...named].filter((field) => field && !field.disabled);
";

/// All visible words, separated by spaces.
const TEXT: &str = r"
    const drawn = [...document.querySelectorAll('svg text')].filter(seen).map((text) => text.textContent);
    return plain([document.body.innerText, ...drawn].join(' '));
";

/// Finds elements that are wider than the page, and elements that are too small to be pressed with a finger: less than 44 CSS pixels
/// in either direction (WCAG 2.2, 2.5.5). Links within a sentence are excluded, as in that rule.
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

/// Finds problems with large text: words broken in the middle, words beyond their button, a header that leaves the page little
/// space, and, while an exercise is done, seconds and buttons that are not visible.
const CRAMPED: &str = r"
    const name = (element) => `${element.localName}.${element.className.baseVal ?? element.className} '${words(element).slice(0, 40)}'`;
    const found = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
        const node = walk.currentNode;
        const parent = node.parentElement;
        if (!seen(parent) || parent.closest('svg, script, style, option, .heard, .broken')) continue;
        const button = parent.closest('button')?.getBoundingClientRect();
        for (const { 0: word, index } of node.data.matchAll(/\S+/g)) {
            const range = document.createRange();
            range.setStart(node, index);
            range.setEnd(node, index + word.length);
            const boxes = [...range.getClientRects()].filter((box) => box.width > 0);
            const lines = new Set(boxes.map((box) => Math.round(box.top)));
            if (lines.size > 1 && word.length <= 12) found.push(`broken: '${word}' in ${name(parent)}`);
            const beyond = (box) => box.left < button.left - 1 || box.right > button.right + 1 || box.top < button.top - 1 || box.bottom > button.bottom + 1;
            if (button && boxes.some(beyond)) found.push(`beyond its button: '${word}' in ${name(parent)}`);
        }
    }
    const box = (element) => element.getBoundingClientRect();
    const high = [...document.querySelectorAll('.bar')].filter(seen).filter((bar) => box(bar).height > innerHeight / 4);
    const run = [...document.querySelectorAll('.run .controls button, .run .seconds, .run .foot, .page-foot button')].filter(seen);
    const out = run.filter((element) => box(element).left < 0 || box(element).top < 0 || box(element).right > innerWidth + 1 || box(element).bottom > innerHeight + 1);
    return [...found, ...high.map((bar) => 'too high: ' + name(bar)), ...out.map((element) => 'out of sight: ' + name(element))];
";

/// Finds the focused element, and why it cannot be seen. A whole page as such is not a control and needs no outline.
const FOCUS: &str = r"
    const it = document.activeElement ?? document.body;
    const box = (it.type === 'radio' ? it.closest('label') ?? it : it).getBoundingClientRect();
    // For a text field of several lines, the line that is being written must be visible.
    const bottom = it.localName === 'textarea' ? box.top + 24 : box.bottom;
    const style = (element) => getComputedStyle(element);
    const outlined = [it, it.closest('label')].some((one) => one && style(one).outlineStyle !== 'none' && parseFloat(style(one).outlineWidth) > 0);
    const within = box.left >= 0 && box.top >= 0 && box.right <= innerWidth + 1 && bottom <= innerHeight + 1;
    const over = document.elementFromPoint((box.left + box.right) / 2, (box.top + bottom) / 2);
    const covered = over && !it.contains(over) && !over.contains(it);
    const unseen = it.localName === 'main' || it === document.body ? '' : !seen(it) ? 'not drawn'
        : !within ? `out of sight: ${JSON.stringify(box)}` : covered ? `behind ${over.localName}.${over.className}` : !outlined ? 'no outline' : '';
    const label = it.labels?.[0]?.innerText ?? '';
    const told = ['TEXTAREA', 'INPUT', 'SELECT'].includes(it.tagName) ? plain(it.getAttribute('aria-label') ?? label) : words(it);
    return { tag: it.tagName, words: told.slice(0, 200), unseen };
";

/// Numbers and counts the stops of the Tab key. A group of radio buttons has one stop.
const STOPS: &str = r"
    const kinds = 'button, a[href], summary, input, select, textarea, [tabindex]';
    const groups = new Set();
    const stops = [...document.querySelectorAll(kinds)].filter((element) => {
        if (!seen(element) || element.disabled || element.tabIndex < 0) return false;
        if (element.type !== 'radio') return true;
        const first = !groups.has(element.name);
        groups.add(element.name);
        return first;
    });
    stops.forEach((element, number) => { element.dataset.stop = number; });
    return stops.length;
";

/// Records what the next press hits: this element, or something else, on which it then has no effect. Pressing a label also presses its
/// field.
pub const WATCH: &str = "
    const wanted = arguments[0];
    window.hit = null;
    window.wanted = wanted;
    window.watch?.abort();
    window.watch = new AbortController();
    const note = (event) => {
        const first = window.hit === null;
        window.hit = window.hit || wanted.contains(event.target);
        if (first && !window.hit) {
            event.preventDefault();
            event.stopImmediatePropagation();
        }
    };
    window.addEventListener('click', note, { capture: true, signal: window.watch.signal });
";

/// Whether something else was hit; null as long as nothing was. An option of a list is chosen without a click, so nothing is hit then.
pub const MISSED: &str = "
    const { hit, wanted } = window;
    if (hit === null && wanted?.isConnected && wanted.localName !== 'option') return null;
    window.watch?.abort();
    return hit === false;
";

/// The number of the focused stop.
pub const NUMBER: &str = "const it = document.activeElement; const stop = it?.type === 'radio' ? document.querySelector(`[name='${it.name}'][data-stop]`) : it;
    return stop?.dataset.stop === undefined ? null : Number(stop.dataset.stop);";

/// The script that finds the focused element.
pub fn focus() -> String {
    [SIGHT, FOCUS].concat()
}

/// The script that counts the stops of the Tab key.
pub fn stops() -> String {
    [SIGHT, STOPS].concat()
}

/// The script that finds elements that do not fit.
pub fn misfits() -> String {
    [SIGHT, MISFITS].concat()
}

/// The script that finds problems with large text.
pub fn cramped() -> String {
    [SIGHT, CRAMPED].concat()
}

/// The script that finds an element that can be pressed.
pub fn pressable() -> String {
    [SIGHT, PRESSABLE].concat()
}

/// The script that finds an element that can be pressed and whose words contain these.
pub fn pressable_part() -> String {
    [SIGHT, &PRESSABLE.replace("words(element) === arguments[0]", "words(element).includes(arguments[0])")].concat()
}

/// The script that finds a field.
pub fn field() -> String {
    [SIGHT, FIELD].concat()
}

/// The script that returns the visible words.
pub fn text() -> String {
    [SIGHT, TEXT].concat()
}

/// The argument for scripts that search by words.
pub fn named(words: &str) -> [Value; 1] {
    [json!(words)]
}
