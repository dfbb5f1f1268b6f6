// Bandwright. SPDX-License-Identifier: Apache-2.0
// Puts a model to turn in the place of each picture that stands for one, with the form beside it.
import { Viewer } from './viewer.js';
import { button, choice, group, made, slider } from './form.js';

const VIEWS = [['three-quarter', 'Three-quarter'], ['top', 'Top'], ['front', 'Front'], ['side', 'Side']];
const KEYS = [
    ['Arrow keys', 'turn'], ['Shift and arrow keys', 'shift'], ['+ and -', 'nearer, farther'], ['1 to 4', 'standard views, in their order'],
    ['P, O', 'with perspective, parallel'], ['R', 'everything back to the start'], ['Esc', 'put the note away'],
];
const STEP = Math.PI / 36;

function bytes(text) {
    const packed = window.atob(text);
    const all = new Uint8Array(packed.length);
    for (let at = 0; at < all.length; at++) {
        all[at] = packed.charCodeAt(at);
    }
    return all;
}

function words(data) {
    const rows = data.parts.map((part) => made('tr', {},
        made('th', { scope: 'row' }, part.name), made('td', {}, part.material),
        made('td', {}, part.measures.map(([name, value]) => `${name} = ${value}`).join('; '))));
    const head = ['part', 'material', 'measures'].map((name) => made('th', { scope: 'col' }, name));
    const table = made('table', {}, made('caption', {}, 'Parts'), made('thead', {}, made('tr', {}, ...head)), made('tbody', {}, ...rows));
    const frame = made('div', { className: 'frame', role: 'region', 'aria-label': 'Parts', tabindex: '0' }, table);
    const keys = made('dl', {}, ...KEYS.map(([key, work]) => made('div', {}, made('dt', {}, key), made('dd', {}, work))));
    return made('details', {}, made('summary', {}, 'In words, and the keys'), made('p', {}, data.summary), frame,
        made('p', {}, 'With the model in focus:'), keys);
}

class Form {
    constructor(figure, data, viewer) {
        this.data = data;
        this.viewer = viewer;
        this.note = figure.querySelector('.turntable-note');
        this.said = made('p', { className: 'turntable-said', role: 'status' });
        this.boxes = data.parts.map(() => made('input', { type: 'checkbox' }));
        this.boxes.forEach((box, at) => {
            box.checked = true;
            box.addEventListener('change', () => viewer.show(viewer.model.parts[at], box.checked));
        });
        const half = data.width / 2;
        this.place = slider('at', -half, half, 0.05, 0, (value) => this.placed(value), (value) => viewer.cutBy(this.kind, value));
        this.place.input.disabled = true;
        this.kind = 'whole';
        this.kinds = choice('Cut', [['whole', 'whole'], ['across', 'across the finger'], ['along', 'along it, at an angle']], (kind) => this.cut(kind));
        this.apart = slider('so far', 0, 100, 1, 0, (value) => `${value} %`, (value) => this.takeApart(value / 100));
    }

    placed(value) {
        return this.kind === 'along' ? `${value} deg` : `${value.toFixed(2)} mm`;
    }

    cut(kind) {
        this.kind = kind;
        this.kinds.set(kind);
        this.place.input.disabled = kind === 'whole';
        const [least, most] = this.viewer.reach;
        this.place.set(kind === 'along' ? [0, 360, 1] : [Math.floor(least), Math.ceil(most), 0.05], 0);
        this.viewer.cutBy(kind, 0);
    }

    takeApart(share) {
        this.viewer.takeApart(share);
        if (this.kind === 'across') {
            const [least, most] = this.viewer.reach;
            this.place.set([Math.floor(least), Math.ceil(most), 0.05], this.viewer.cutValue);
        }
    }

    toolbar() {
        const views = VIEWS.map(([name, text]) => button(text, () => this.viewer.views.standard(name)));
        this.perspective = button('Perspective', () => this.project(false));
        this.parallel = button('Parallel', () => this.project(true));
        this.project(this.viewer.views.state.orthographic);
        const save = button('Save picture', () => this.save());
        const marks = this.data.marks.some((mark) => mark.at) ? [this.pointing()] : [];
        return made('div', { className: 'turntable-bar', role: 'group', 'aria-label': 'View' },
            made('span', {}, ...views), made('span', {}, this.perspective, this.parallel), made('span', {}, ...marks, button('Reset', () => this.reset()), save));
    }

    pointing() {
        const one = button('Point at checks', () => {
            this.viewer.marked = !this.viewer.marked;
            one.setAttribute('aria-pressed', String(this.viewer.marked));
            this.viewer.ask();
        });
        one.setAttribute('aria-pressed', 'true');
        return one;
    }

    project(orthographic) {
        this.viewer.views.project(orthographic);
        this.perspective.setAttribute('aria-pressed', String(!orthographic));
        this.parallel.setAttribute('aria-pressed', String(orthographic));
    }

    reset() {
        this.boxes.forEach((box, at) => {
            box.checked = true;
            this.viewer.show(this.viewer.model.parts[at], true);
        });
        this.apart.set([0, 100, 1], 0);
        this.viewer.takeApart(0);
        this.cut('whole');
        this.project(false);
        this.viewer.views.standard('three-quarter');
    }

    save() {
        const link = made('a', { href: this.viewer.picture(), download: this.data.title.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-') + '.png' });
        link.click();
        this.said.textContent = 'The picture was handed to the browser to be saved.';
    }

    panel() {
        const parts = this.data.parts.map((part, at) => {
            const swatch = made('span', { className: 'turntable-swatch', 'aria-hidden': 'true' });
            swatch.style.backgroundColor = part.colour;
            const first = part.stones ? `${part.measures[0][1]} stones` : part.measures[0][1];
            return made('li', {}, made('label', {}, this.boxes[at], swatch, made('b', {}, part.name), ` ${part.material}, ${first}`));
        });
        const ways = this.data.parts.filter((part) => part.way).map((part) => made('li', {}, made('b', {}, part.name), ` ${part.way.words}`));
        const panel = made('div', { className: 'turntable-panel' }, group('Parts', made('ul', {}, ...parts)),
            group('Cut', this.kinds.row, this.place.row));
        if (ways.length) {
            panel.append(group('Taken apart', this.apart.row, made('ul', { className: 'turntable-ways' }, ...ways)));
        }
        return panel;
    }

    checks() {
        if (!this.data.marks.length) {
            return [];
        }
        this.lines = this.data.marks.map((mark, at) => {
            const line = button(`${mark.verdict}: ${mark.title}`, () => this.pick(at));
            line.className = mark.verdict === 'failed' ? 'is-failed' : 'is-close';
            return made('li', {}, line, ` ${mark.sentence}`, made('small', {}, mark.about));
        });
        return [made('section', { className: 'turntable-checks', 'aria-label': 'Checks' }, made('h3', {}, 'Checks that failed or are close'),
            made('ol', {}, ...this.lines))];
    }

    /** A check was chosen: the ring turns to it, and it is said. */
    pick(at) {
        const mark = this.data.marks[at];
        const point = this.viewer.marks.point(at);
        this.viewer.marks.choose(at);
        this.lines.forEach((line, other) => line.classList.toggle('is-chosen', other === at));
        if (point) {
            this.viewer.views.face(point);
        }
        this.said.textContent = `Check ${at + 1}, ${mark.verdict}: ${mark.sentence}`;
    }

    /** What is under the pointer. */
    hover(event) {
        const found = event.buttons ? null : this.viewer.under(event.clientX, event.clientY);
        this.note.hidden = !found;
        if (!found) {
            return;
        }
        const part = found.part.told;
        const lines = part.measures.map(([name, value]) => made('div', {}, `${name} = ${value}`));
        const made_by = found.definition && this.data.features[found.definition];
        if (made_by) {
            lines.push(made('div', { className: 'turntable-face' }, `this face: ${found.definition}, ${made_by}`));
        }
        this.note.replaceChildren(made('b', {}, part.name), ` ${part.material}`, ...lines);
        const box = this.viewer.stage.getBoundingClientRect();
        const left = event.clientX - box.left;
        const top = event.clientY - box.top;
        this.note.style.left = `${Math.min(left + 14, Math.max(4, box.width - this.note.offsetWidth - 6))}px`;
        this.note.style.top = `${top + 18 + this.note.offsetHeight > box.height ? Math.max(4, top - this.note.offsetHeight - 8) : top + 18}px`;
    }

    key(event) {
        if (event.ctrlKey || event.altKey || event.metaKey) {
            return;
        }
        const views = this.viewer.views;
        const arrows = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
        const arrow = arrows[event.key];
        const key = event.key.toLowerCase();
        if (arrow && event.shiftKey) {
            views.shift(arrow[0], -arrow[1]);
        } else if (arrow) {
            views.turn(arrow[0] * STEP, arrow[1] * STEP);
        } else if (key === '+' || key === '=') {
            views.nearer(1.15);
        } else if (key === '-') {
            views.nearer(1 / 1.15);
        } else if (VIEWS[Number(key) - 1]) {
            views.standard(VIEWS[Number(key) - 1][0]);
        } else if (key === 'p' || key === 'o') {
            this.project(key === 'o');
        } else if (key === 'r') {
            this.reset();
        } else if (key === 'escape') {
            this.note.hidden = true;
        } else {
            return;
        }
        event.preventDefault();
    }
}

async function start(figure, number) {
    const data = JSON.parse(figure.querySelector('script').textContent);
    const picture = figure.querySelector('.paper');
    const canvas = made('canvas', { tabindex: '0', role: 'img', 'aria-label': `${data.summary} Arrow keys turn it.` });
    const note = made('div', { className: 'turntable-note', hidden: true });
    const stage = made('div', { className: 'turntable-stage' }, canvas, note);
    const room = made('div', { className: 'turntable-room' }, stage);
    picture.after(room);
    try {
        const viewer = new Viewer(canvas, stage, `bandwright ${document.title} ${number}`);
        const form = new Form(figure, data, viewer);
        await viewer.load(bytes(data.glb), data, (at) => form.pick(at));
        room.before(form.toolbar());
        room.append(form.panel());
        room.after(form.said, ...form.checks(), words(data));
        canvas.addEventListener('pointermove', (event) => form.hover(event));
        canvas.addEventListener('pointerleave', () => { note.hidden = true; });
        canvas.addEventListener('keydown', (event) => form.key(event));
        figure.classList.add('is-live');
        viewer.resize();
        figure.viewer = viewer;
    } catch (fault) {
        // No picture in three dimensions here: the one that stands for it stays.
        room.remove();
        figure.querySelectorAll('.turntable-bar, .turntable-said').forEach((element) => element.remove());
        picture.after(made('p', { className: 'turntable-said' }, 'This browser cannot turn the model (' + fault.message + '); this is its picture.'));
    }
}

document.querySelectorAll('figure.turntable').forEach((figure, number) => start(figure, number));

export {};
