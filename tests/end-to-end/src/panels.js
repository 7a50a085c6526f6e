// Shows screenshots side by side over the program's page, in frames like phones, each with its caption, in the page's fonts
// and colours. Arguments: [[PNG in base64, caption], ...], width and height of a screenshot. Returns the size of the whole.
const [panels, width, height] = arguments;
const make = (parent, name, style, text) => {
    const element = document.createElement(name);
    Object.assign(element.style, style);
    if (text !== undefined) element.textContent = text;
    parent.append(element);
    return element;
};
const [edge, between, bezel] = [38, 34, 10];
const whole = make(document.body, 'div', {
    position: 'fixed', top: '0', left: '0', zIndex: '9', display: 'flex', gap: `${between}px`, padding: `${edge}px`,
    color: 'var(--ink)', font: '600 27px/1.25 var(--type)',
});
const dark = matchMedia('(prefers-color-scheme: dark)').matches;
whole.style.background = dark ? '#0B0F11' : '#EEE8DC';
const loaded = panels.map(async ([picture, caption], at) => {
    const panel = make(whole, 'div', { width: `${width + 2 * bezel}px` });
    const line = make(panel, 'div', { display: 'flex', gap: '14px', alignItems: 'center', height: '72px', marginBottom: '22px' });
    make(line, 'span', {
        flex: 'none', width: '44px', height: '44px', borderRadius: '50%', background: 'var(--done)', color: 'var(--paper)',
        textAlign: 'center', lineHeight: '44px',
    }, `${at + 1}`);
    make(line, 'span', { textWrap: 'balance' }, caption);
    const phone = make(panel, 'div', {
        padding: `${bezel}px`, borderRadius: '44px', background: dark ? '#3A454A' : '#20292E',
        boxShadow: dark ? 'none' : '0 18px 40px -12px rgba(32, 41, 46, 0.35)',
    });
    const image = make(phone, 'img', { display: 'block', width: `${width}px`, height: `${height}px`, borderRadius: '34px' });
    image.src = `data:image/png;base64,${picture}`;
    await image.decode();
});
return Promise.all(loaded).then(() => [whole.offsetWidth, whole.offsetHeight]);
