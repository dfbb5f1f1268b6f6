// Bandwright. SPDX-License-Identifier: Apache-2.0
// For a class: large type, and one cell after the other. Everything stays as live as it was, and the ring stays beside the text.
import { made, button } from '/asset/model/form.js';

/** Further than a hand trembles, CSS px. */
const SWIPE = 60;

const FORTH = new Set(['ArrowRight', 'ArrowDown', ' ']);
const BACK = new Set(['ArrowLeft', 'ArrowUp']);

class Present {
    /** @param cells gives the cells of the open notebook, or nothing */
    constructor(cells, say, changed) {
        this.cells = cells;
        this.say = say;
        this.changed = changed;
        this.on = false;
        this.at = 0;
        this.back = button('Back', () => this.step(-1));
        this.forth = button('Next', () => this.step(1));
        this.count = made('span', { className: 'desk-count' });
        this.bar = made('div', { className: 'desk-steps', role: 'group', 'aria-label': 'Steps', hidden: true },
            this.back, this.count, this.forth, button('Stop', () => this.cells()?.stop()), button('End', () => this.leave()));
        document.body.append(this.bar);
        // What a hand-held clicker sends turns the steps wherever the cursor is: before a cell hears of it.
        document.addEventListener('keydown', (event) => this.click(event), { capture: true });
        document.addEventListener('keydown', (event) => this.key(event));
        this.swipes(document.getElementById('sheet'));
    }

    /** The cells that are steps: what a page only keeps is none. */
    steps() {
        const cells = this.cells();
        return cells ? cells.order.map((id) => cells.cells.get(id)).filter((cell) => cell && cell.kind !== 'raw') : [];
    }

    begin() {
        if (!this.steps().length) {
            this.say('Open a notebook first.');
            return;
        }
        this.on = true;
        this.at = 0;
        document.documentElement.classList.add('is-presented');
        this.bar.hidden = false;
        this.changed(true);
        this.show(true);
    }

    leave() {
        if (!this.on) {
            return;
        }
        const cell = this.steps()[this.at];
        this.on = false;
        document.documentElement.classList.remove('is-presented');
        this.bar.hidden = true;
        document.querySelectorAll('.desk-cell').forEach((box) => box.classList.remove('is-ahead', 'is-now'));
        this.changed(false);
        this.say('');
        cell?.box.scrollIntoView({ block: 'center' });
    }

    step(by) {
        const last = this.steps().length - 1;
        const next = Math.max(0, Math.min(last, this.at + by));
        if (next === this.at) {
            this.say(by > 0 ? 'This is the last step.' : 'This is the first step.');
            return;
        }
        this.at = next;
        this.show(true);
    }

    /** What is ahead is not shown; a cell that is made now is the step at hand. */
    show(moved = false) {
        if (!this.on) {
            return;
        }
        const steps = this.steps();
        if (!moved) {
            const held = steps.findIndex((cell) => cell.box.contains(document.activeElement));
            const now = steps.indexOf(this.now);
            this.at = held >= 0 ? Math.max(held, now) : now >= 0 ? now : Math.min(this.at, steps.length - 1);
        }
        this.now = steps[this.at];
        document.querySelectorAll('.desk-cell.desk-raw').forEach((box) => box.classList.add('is-ahead'));
        steps.forEach((cell, place) => {
            cell.box.classList.toggle('is-ahead', place > this.at);
            cell.box.classList.toggle('is-now', place === this.at);
        });
        this.count.textContent = `${this.at + 1} of ${steps.length}`;
        this.back.disabled = this.at === 0;
        this.forth.disabled = this.at === steps.length - 1;
        if (moved && this.now) {
            this.now.box.tabIndex = -1;
            this.now.box.focus({ preventScroll: true });
            this.now.box.scrollIntoView({ block: this.now.box.offsetHeight > window.innerHeight * 0.7 ? 'start' : 'end' });
            this.say(`Step ${this.at + 1} of ${steps.length}.`);
        }
    }

    key(event) {
        if (!this.on || event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented) {
            return;
        }
        if (event.key === 'Escape') {
            event.preventDefault();
            this.leave();
            return;
        }
        // Arrows and space belong to what is being used.
        const used = event.target.closest('.cm-editor, input, select, textarea, button, canvas, summary');
        if (!used && (FORTH.has(event.key) || BACK.has(event.key))) {
            event.preventDefault();
            this.step(FORTH.has(event.key) ? 1 : -1);
        }
    }

    click(event) {
        if (this.on && (event.key === 'PageDown' || event.key === 'PageUp') && !event.ctrlKey && !event.altKey && !event.metaKey) {
            event.preventDefault();
            event.stopPropagation();
            this.step(event.key === 'PageDown' ? 1 : -1);
        }
    }

    swipes(sheet) {
        let from = null;
        sheet.addEventListener('touchstart', (event) => {
            const one = event.touches.length === 1 && !event.target.closest('.cm-editor, .frame, table');
            from = one ? { x: event.touches[0].clientX, y: event.touches[0].clientY } : null;
        }, { passive: true });
        sheet.addEventListener('touchend', (event) => {
            if (!this.on || !from) {
                return;
            }
            const x = event.changedTouches[0].clientX - from.x;
            const y = event.changedTouches[0].clientY - from.y;
            if (Math.abs(x) > SWIPE && Math.abs(x) > 2 * Math.abs(y)) {
                this.step(x < 0 ? 1 : -1);
            }
            from = null;
        }, { passive: true });
    }
}

export { Present };
