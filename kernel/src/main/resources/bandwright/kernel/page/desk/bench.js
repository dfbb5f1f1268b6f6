// Bandwright. SPDX-License-Identifier: Apache-2.0
// The ring beside the text: its model, its numbers with what has changed, its handles and its checks.
import { Viewer } from '/asset/model/viewer.js';
import { made, button } from '/asset/model/form.js';
import { ask } from './ask.js';

function bytes(text) {
    return Uint8Array.from(window.atob(text), (letter) => letter.charCodeAt(0));
}

/** Four digits that count are enough beside a text; the sheet has all. */
function figure(value) {
    return String(Number(value.toPrecision(5)));
}

class Bench {
    constructor(room, name, say, taken) {
        this.room = room;
        this.name = name;
        this.say = say;
        this.taken = taken;
        this.canvas = made('canvas', { tabindex: '0', role: 'img', 'aria-label': 'The ring; arrow keys turn it' });
        this.stage = made('div', { className: 'turntable-stage' }, this.canvas);
        const figure = made('figure', { className: 'turntable is-live desk-model' }, this.stage);
        this.views = made('div', { className: 'turntable-bar', role: 'group', 'aria-label': 'View' });
        this.numbers = made('div', { className: 'desk-numbers' });
        this.handles = made('div', { className: 'desk-handles' });
        this.checks = made('div', { className: 'desk-checks' }, made('p', {}, 'They are looked at when nothing else is at work.'));
        room.replaceChildren(
            made('h2', { className: 'desk-unseen' }, 'The ring'), this.views, figure,
            made('section', { 'aria-label': 'Numbers' }, made('h3', {}, 'Numbers'), this.numbers),
            made('section', { 'aria-label': 'Handles' }, made('h3', {}, 'Handles'), this.handles),
            made('section', { 'aria-label': 'Checks' }, made('h3', {}, 'Checks'), this.checks));
        this.before = new Map();
        this.rows = new Map();
        this.held = null;
        try {
            this.viewer = new Viewer(this.canvas, this.stage, 'bandwright desk ' + name);
            ['three-quarter', 'top', 'front', 'side'].forEach((side) => {
                this.views.append(button(side[0].toUpperCase() + side.slice(1), () => this.viewer.views.standard(side)));
            });
            this.canvas.addEventListener('keydown', (event) => this.key(event));
        } catch (fault) {
            this.stage.replaceChildren(made('p', {}, 'This browser cannot turn a model; "show ring" shows its picture.'));
        }
    }

    key(event) {
        const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
        const arrow = arrows[event.key];
        if (arrow && !event.ctrlKey && !event.altKey && !event.metaKey) {
            this.viewer.views.turn(arrow[0] * Math.PI / 36, arrow[1] * Math.PI / 36);
            event.preventDefault();
        }
    }

    /** Numbers at once; what has changed since the last step stands beside them with its difference. */
    tell(state, step = true) {
        const known = new Set(state.numbers.map((one) => one.key));
        const changed = state.numbers.some((one) => this.last?.get(one.key) !== one.value);
        if (step && changed) {
            this.before = this.last || new Map();
        }
        const table = state.numbers.map((one) => {
            const base = step ? this.before.get(one.key) : this.last?.get(one.key);
            const difference = one.value !== undefined && base !== undefined && base !== one.value ? one.value - base : null;
            const value = one.value === undefined ? one.words : `${figure(one.value)} ${one.unit}`;
            const sign = difference === null ? '' : `${difference > 0 ? '+' : '−'}${Number(Math.abs(difference).toPrecision(3))} ${one.unit}`;
            return made('tr', {}, made('th', { scope: 'row' }, one.name, one.value === undefined || !one.words ? '' : made('small', {}, ' ' + one.words)),
                ...(one.value === undefined ? [made('td', { colSpan: 2 }, value)]
                    : [made('td', {}, value), made('td', { className: 'desk-difference' }, sign)]));
        });
        if (step) {
            this.last = new Map(state.numbers.filter((one) => one.value !== undefined).map((one) => [one.key, one.value]));
        }
        const head = made('thead', {}, made('tr', {}, ...['what', 'now', 'changed by'].map((words) => made('th', { scope: 'col' }, words))));
        const required = state.requirements.map((one) => made('p', { className: one.result }, one.sentence));
        this.numbers.replaceChildren(
            known.size ? made('table', {}, head, made('tbody', {}, ...table)) : made('p', {}, 'No ring yet: a band needs a finger, a profile and a metal.'), ...required);
    }

    /** A slider for each definition with a range. */
    hold(handles) {
        if (this.held) {
            return;
        }
        const asked = JSON.stringify(handles);
        if (asked === this.shown) {
            return;
        }
        this.shown = asked;
        this.handles.replaceChildren(...(handles.length ? handles.map((one) => this.handle(one)) : [
            made('p', {}, 'A definition with "between … and …" becomes a handle here.')]));
    }

    handle(one) {
        const id = 'handle-' + one.name;
        const stops = one.stops.length ? one.stops : [one.low, one.value, one.high];
        const now = Math.max(0, stops.indexOf(one.value));
        const exact = stops.includes(one.value);
        const input = made('input', { type: 'range', id, min: '0', max: String(stops.length - 1), step: '1' });
        input.value = String(now);
        input.setAttribute('aria-valuetext', one.value);
        const output = made('output', { for: id }, one.value);
        const reason = made('input', { type: 'text', id: id + '-reason', autocomplete: 'off' });
        const keep = button('Keep it', () => this.take(one, stops[input.value], reason.value));
        const back = button('Back', () => release());
        const asked = made('div', { className: 'desk-reason', hidden: true },
            made('label', { for: id + '-reason' }, 'Because '), reason, keep, back);
        const release = () => {
            this.held = null;
            this.shown = '';
            this.taken(null);
        };
        input.addEventListener('input', () => {
            const value = stops[input.value];
            this.held = one.name;
            output.textContent = value;
            input.setAttribute('aria-valuetext', value);
            asked.hidden = false;
            this.attempt(one.name, value);
        });
        [input, reason].forEach((field) => field.addEventListener('keydown', (event) => {
            if (event.key === 'Enter' && this.held) {
                this.take(one, stops[input.value], reason.value);
            } else if (event.key === 'Escape' && this.held) {
                release();
            }
        }));
        return made('div', { className: 'desk-handle' }, made('label', { for: id }, one.name), input, output,
            exact ? '' : made('small', {}, ' between two steps'), asked);
    }

    /** As long as a handle is held: the newest value counts, older ones are let go. */
    async attempt(handle, value) {
        this.wanted = { handle, value };
        if (this.trying) {
            return;
        }
        this.trying = true;
        while (this.wanted) {
            const wanted = this.wanted;
            this.wanted = null;
            try {
                const state = await ask('try', { name: this.name, ...wanted, model: true });
                if (this.held) {
                    this.tell(state, false);
                    await this.load(state);
                }
            } catch (fault) {
                this.say(fault.message);
            }
        }
        this.trying = false;
    }

    async take(one, value, because) {
        try {
            const state = await ask('take', { name: this.name, handle: one.name, value, because });
            this.held = null;
            this.shown = '';
            this.taken(state);
            this.say(`${one.name} is ${value} now.`);
        } catch (fault) {
            this.say(fault.message);
        }
    }

    async load(state) {
        if (this.viewer && state.glb) {
            await this.viewer.load(bytes(state.glb), state.told, (at) => this.pick(at));
            this.canvas.setAttribute('aria-label', `${state.told.summary} Arrow keys turn it.`);
        }
    }

    /** A mark on the model was chosen: its check is read. */
    pick(at) {
        const line = this.checks.querySelectorAll('li')[at];
        if (line) {
            this.viewer.marks.choose(at);
            line.tabIndex = -1;
            line.focus();
        }
    }

    /** When all else is up to date: the model and the checks, which take longer. */
    async refresh(fingerprint) {
        if (fingerprint === this.fingerprint || this.held) {
            return;
        }
        this.fingerprint = fingerprint;
        try {
            await this.load(await ask('model', { name: this.name }));
            const found = await ask('checks', { name: this.name });
            // In the order and with the numbers of the marks on the model.
            const worst = found.findings.filter((one) => one.verdict === 'failed' || one.verdict === 'close');
            this.checks.replaceChildren(made('p', {}, found.summary || 'Nothing to check yet.'),
                ...(worst.length ? [made('ol', {}, ...worst.map((one) => made('li', { className: one.verdict === 'failed' ? 'failed' : '' },
                    made('b', {}, `${one.verdict}: ${one.title}, ${one.about}. `), one.sentence, '. ', one.advice)))] : []));
        } catch (fault) {
            this.say(fault.message);
        }
    }
}

export { Bench, bytes };
