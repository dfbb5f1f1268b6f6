// Bandwright. SPDX-License-Identifier: Apache-2.0
// Small pieces of the form beside the model.

let numbers = 0;

function made(tag, properties, ...children) {
    const element = document.createElement(tag);
    Object.entries(properties || {}).forEach(([name, value]) => {
        if (name in element && typeof value !== 'string') {
            element[name] = value;
        } else {
            element.setAttribute(name === 'className' ? 'class' : name, value);
        }
    });
    element.append(...children);
    return element;
}

function button(words, work) {
    const element = made('button', { type: 'button' }, words);
    element.addEventListener('click', work);
    return element;
}

/** A group of things to set, under a heading. */
function group(words, ...children) {
    return made('fieldset', {}, made('legend', {}, words), ...children);
}

/** A slider with its value in words beside it. */
function slider(words, least, most, step, value, shown, work) {
    const id = 'turntable-field-' + ++numbers;
    const input = made('input', { type: 'range', id, min: String(least), max: String(most), step: String(step) });
    input.value = String(value);
    const output = made('output', { for: id });
    const tell = () => {
        output.textContent = shown(Number(input.value));
        input.setAttribute('aria-valuetext', output.textContent);
    };
    input.addEventListener('input', () => {
        tell();
        work(Number(input.value));
    });
    tell();
    const row = made('div', { className: 'turntable-slider' }, made('label', { for: id }, words), input, output);
    const set = (range, now) => {
        [input.min, input.max, input.step] = range.map(String);
        input.value = String(now);
        tell();
    };
    return { row, input, set };
}

/** One of several. */
function choice(words, options, work) {
    const name = 'turntable-choice-' + ++numbers;
    const inputs = options.map(([value]) => made('input', { type: 'radio', name, value }));
    const labels = options.map(([, text], at) => made('label', {}, inputs[at], ' ' + text));
    inputs[0].checked = true;
    inputs.forEach((input) => input.addEventListener('change', () => work(input.value)));
    const row = made('div', { className: 'turntable-choice', role: 'radiogroup', 'aria-label': words }, ...labels);
    const set = (value) => inputs.forEach((input) => { input.checked = input.value === value; });
    return { row, set };
}

export { button, choice, group, made, slider };
