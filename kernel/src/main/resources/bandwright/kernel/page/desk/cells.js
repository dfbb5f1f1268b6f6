// Bandwright. SPDX-License-Identifier: Apache-2.0
// The cells of the open notebook: typed text goes to the desk at once, and what it answers is put beside it.
import { made, button } from '/asset/model/form.js';
import { ask } from './ask.js';
import { editor, isChoosing, mark, put } from './editor.js';

/** Long enough that a word is typed in one, short enough that nobody waits, ms. */
const PAUSE = 40;

const KINDS = { code: 'ring text', markdown: 'words', raw: 'kept as it is' };

class Cells {
    /** @param heard what else follows a change: numbers, handles */
    constructor(room, name, heard, say) {
        this.room = room;
        this.name = name;
        this.heard = heard;
        this.say = say;
        this.cells = new Map();
        this.undone = [];
        this.typed = new Map();
        this.turn = 0;
    }

    isJava(cell) {
        return cell.source.split('\n', 1)[0].trim() === 'java';
    }

    /** The notebook as the desk knows it now. */
    show(state) {
        this.order = state.cells.map((cell) => cell.id);
        const stay = new Set(this.order);
        this.cells.forEach((cell, id) => {
            if (!stay.has(id)) {
                cell.view.destroy();
                cell.box.remove();
                this.cells.delete(id);
                if (this.typed.delete(id)) {
                    this.say(`A cell was taken away by another page; what you typed last in it: ${cell.source}`);
                }
            }
        });
        let number = 0;
        let before = null;
        state.cells.forEach((told) => {
            number += told.kind === 'code' ? 1 : 0;
            let cell = this.cells.get(told.id);
            if (cell && cell.kind !== told.kind) {
                cell.view.destroy();
                cell.box.remove();
                cell = null;
            }
            if (!cell) {
                cell = this.make(told);
                this.cells.set(told.id, cell);
            }
            if ((before ? before.nextSibling : this.room.firstChild) !== cell.box) {
                this.room.insertBefore(cell.box, before ? before.nextSibling : this.room.firstChild);
            }
            before = cell.box;
            this.tell(cell, told, number);
        });
        this.heard(state);
    }

    make(told) {
        const cell = { id: told.id, kind: told.kind, source: told.source, revision: told.revision };
        cell.number = made('p', { className: 'step-number' });
        cell.text = made('div', { className: 'desk-text' });
        cell.told = made('div', { className: 'desk-told' });
        cell.out = made('div', { className: 'desk-out' });
        cell.state = made('span', { className: 'desk-state' });
        const acts = [
            ['Run', () => this.run(cell.id), told.kind === 'code'],
            ['Write', () => this.write(cell, true), told.kind === 'markdown'],
            ['Add below', () => this.insert(cell.id, 'code'), true],
            ['Words below', () => this.insert(cell.id, 'markdown'), true],
            ['Up', () => this.move(cell.id, -1), true],
            ['Down', () => this.move(cell.id, 1), true],
            ['Take away', () => this.remove(cell.id), true],
        ].filter(([, , shown]) => shown).map(([words, work]) => button(words, work));
        cell.bar = made('div', { className: 'desk-acts', role: 'group' }, cell.state, ...acts);
        cell.body = made('div', { className: 'step-body' }, cell.text, cell.told, cell.bar, cell.out);
        cell.box = made('section', { className: 'step desk-cell desk-' + told.kind }, cell.number, cell.body);
        cell.view = editor(cell.text, { notebook: this.name, kind: told.kind, label: KINDS[told.kind] }, told.source,
            (source) => this.type(cell, source), {
                'Mod-Enter': () => (cell.kind === 'code' ? this.run(cell.id) : cell.bar.querySelector('button').focus()),
                'Shift-Enter': () => { if (cell.kind === 'code') { this.run(cell.id); } this.focus(this.order[this.order.indexOf(cell.id) + 1]); },
                'Alt-ArrowUp': () => this.move(cell.id, -1),
                'Alt-ArrowDown': () => this.move(cell.id, 1),
                'Alt-Enter': () => this.insert(cell.id, 'code'),
                'Mod-Alt-f': () => this.format(cell),
                Escape: () => { if (!isChoosing(cell.view)) { cell.bar.querySelector('button').focus(); } },
            });
        if (told.kind === 'markdown') {
            // Words are read as they will look, and written where they stand.
            cell.out.addEventListener('dblclick', () => this.write(cell, true));
            cell.text.addEventListener('focusout', (event) => {
                if (!cell.text.contains(event.relatedTarget)) {
                    this.write(cell, false);
                }
            });
            this.write(cell, !told.source.trim());
        }
        return cell;
    }

    write(cell, written) {
        const open = written || !cell.source.trim();
        cell.box.classList.toggle('is-written', open);
        if (written) {
            cell.view.focus();
        }
    }

    tell(cell, told, number) {
        if (!this.typed.has(cell.id)) {
            // While something typed is not with the desk, the desk must know what it was typed upon.
            cell.revision = told.revision;
        }
        if (!this.typed.has(cell.id) && cell.source !== told.source) {
            cell.source = told.source;
            put(cell.view, told.source);
        }
        const name = told.kind === 'code' ? `Cell ${number}` : KINDS[told.kind];
        cell.box.setAttribute('aria-label', name);
        cell.bar.setAttribute('aria-label', `${name}: what to do with it`);
        cell.number.textContent = told.kind === 'code' ? String(number) : '';
        cell.asks = told.asks;
        cell.acts = told.acts;
        cell.stale = told.stale;
        if (told.kind === 'markdown') {
            cell.out.innerHTML = told.html;
        } else if (told.out !== undefined && !cell.out.childNodes.length) {
            cell.out.innerHTML = told.out;
        }
        if (told.told && !this.typed.has(cell.id)) {
            this.say_of(cell, told.told);
        }
        this.mark_state(cell);
    }

    mark_state(cell) {
        const bad = cell.bad ? 'has an error: what it said before still holds' : '';
        const old = cell.asks && cell.stale && cell.out.childNodes.length ? 'shows what no longer holds' : '';
        cell.state.textContent = bad || old;
        cell.box.classList.toggle('is-bad', Boolean(cell.bad));
        cell.box.classList.toggle('is-stale', Boolean(cell.asks && cell.stale));
        cell.out.setAttribute('aria-busy', String(Boolean(cell.working)));
    }

    /** Errors and remarks under the text, in words, each with what would be right. */
    say_of(cell, told) {
        cell.bad = told.some((one) => one.severity === 'error');
        mark(cell.view, told);
        cell.told.replaceChildren(...told.map((one) => {
            const line = made('p', { className: one.severity === 'error' ? 'trouble' : 'remark' },
                made('b', {}, one.severity + ': '), one.message, one.expected ? `; expected ${one.expected}` : '', one.advice ? `. ${one.advice}` : '');
            if (one.try !== undefined && one.tryFrom !== undefined) {
                line.append(' ', button(`Write ${one.try}`, () => {
                    cell.view.dispatch({ changes: { from: one.tryFrom, to: one.tryTo, insert: one.try } });
                    cell.view.focus();
                }));
            } else if (one.try !== undefined) {
                line.append(made('code', {}, ` try ${one.try}`));
            }
            return line;
        }));
    }

    type(cell, source) {
        cell.source = source;
        this.typed.set(cell.id, source);
        this.remember();
        window.clearTimeout(this.pause);
        this.pause = window.setTimeout(() => this.send(), PAUSE);
    }

    /** What is on its way to the desk is in the browser too, until the desk has it on the disk. */
    remember() {
        try {
            const waiting = [...this.typed].map(([id, source]) => ({ id, source }));
            if (waiting.length) {
                window.localStorage.setItem('bandwright ' + this.name, JSON.stringify(waiting));
            } else {
                window.localStorage.removeItem('bandwright ' + this.name);
            }
        } catch (fault) {
            // A browser without a store; the desk's draft is enough while it answers.
        }
    }

    /** What an earlier page could not bring to the desk. */
    async recover() {
        let waiting;
        try {
            waiting = JSON.parse(window.localStorage.getItem('bandwright ' + this.name)) || [];
        } catch (fault) {
            waiting = [];
        }
        waiting.filter(({ id, source }) => this.cells.has(id) && this.cells.get(id).source !== source).forEach(({ id, source }) => {
            // Nobody knows what it was typed upon: where the text is another now, both stay.
            const cell = this.cells.get(id);
            put(cell.view, source);
            cell.revision = -1;
            this.type(cell, source);
        });
    }

    async send() {
        if (this.sending) {
            this.again = true;
            return;
        }
        this.sending = true;
        const sent = new Map(this.typed);
        const changes = [...sent].map(([id, source]) => ({ do: 'type', id, source, base: this.cells.get(id)?.revision ?? 0 }));
        try {
            const state = await ask('change', { name: this.name, changes });
            sent.forEach((source, id) => {
                if (this.typed.get(id) === source) {
                    this.typed.delete(id);
                } else if (this.cells.has(id)) {
                    this.cells.get(id).revision = state.cells.find((one) => one.id === id)?.revision ?? 0;
                }
            });
            this.remember();
            this.show(state);
            if (state.conflicts.length) {
                this.say('Another page has changed the same cell. Both texts stay: yours stands below the other.');
            }
            this.follow();
        } catch (fault) {
            this.say(fault.message);
            window.clearTimeout(this.pause);
            if (fault.lost) {
                this.pause = window.setTimeout(() => this.send(), 2000);
            } else {
                // Told, and not to be had: the desk's text is shown again, what was typed stays in the browser's undo.
                sent.forEach((source, id) => this.typed.delete(id));
                this.remember();
                this.show(await ask('open', { name: this.name }));
            }
        } finally {
            this.sending = false;
            if (this.again) {
                this.again = false;
                this.send();
            }
        }
    }

    /** Shows anew what no longer holds, from the top, until something else is typed. Programs wait for a person. */
    async follow() {
        const turn = ++this.turn;
        for (const id of this.order) {
            const cell = this.cells.get(id);
            if (turn !== this.turn) {
                return;
            }
            if (cell && cell.kind === 'code' && cell.asks && cell.stale && !cell.bad && !cell.acts) {
                await this.answer(cell, turn);
            }
        }
        if (turn === this.turn) {
            this.settled();
        }
    }

    settled() {}

    async answer(cell, turn) {
        cell.working = true;
        this.mark_state(cell);
        try {
            const ran = await ask('answer', { name: this.name, id: cell.id, person: turn === undefined });
            if (turn !== undefined && turn !== this.turn) {
                return;
            }
            // Written by the desk from what it worked out, never from what was stored.
            cell.out.innerHTML = ran.html;
            cell.stale = ran.stale;
            this.say_of(cell, ran.told);
            this.heard(ran);
        } catch (fault) {
            this.say(fault.message);
        } finally {
            cell.working = false;
            this.mark_state(cell);
        }
    }

    async run(id) {
        const cell = this.cells.get(id);
        await this.flush();
        await this.answer(cell);
        if (this.isJava(cell)) {
            this.show(await ask('open', { name: this.name }));
        }
        this.follow();
    }

    async flush() {
        window.clearTimeout(this.pause);
        while (this.typed.size) {
            await this.send();
            if (this.typed.size) {
                await new Promise((done) => { window.setTimeout(done, 50); });
            }
        }
    }

    async runAll() {
        await this.flush();
        for (const id of [...this.order]) {
            const cell = this.cells.get(id);
            if (cell && cell.kind === 'code' && cell.source.trim()) {
                await this.answer(cell);
            }
        }
        this.say('All cells have run.');
        this.settled();
    }

    async act(change, undo) {
        await this.flush();
        try {
            const state = await ask('change', { name: this.name, changes: [change] });
            this.show(state);
            if (undo) {
                this.undone.push(undo);
            }
            this.follow();
            return state;
        } catch (fault) {
            this.say(fault.message);
            return null;
        }
    }

    async insert(after, kind, source = '') {
        const state = await this.act({ do: 'insert', after, kind, source });
        if (state) {
            this.undone.push(() => this.act({ do: 'remove', id: state.made }));
            this.focus(state.made);
        }
    }

    async move(id, by) {
        await this.act({ do: 'move', id, by }, () => this.act({ do: 'move', id, by: -by }));
        this.focus(id);
    }

    async remove(id) {
        const cell = this.cells.get(id);
        const at = this.order.indexOf(id);
        const { kind, source } = cell;
        const after = at > 0 ? this.order[at - 1] : null;
        const state = await this.act({ do: 'remove', id }, () => this.act({ do: 'insert', after, kind, source }));
        if (state) {
            this.say('The cell was taken away. "Take back" brings it again.');
            this.focus(this.order[Math.min(at, this.order.length - 1)]);
        }
    }

    /** Takes back the last thing done to a whole cell; typing is taken back in the cell itself. */
    async takeBack() {
        const undo = this.undone.pop();
        if (undo) {
            await undo();
        } else {
            this.say('There is nothing to take back; in a cell, Ctrl+Z takes back what was typed.');
        }
    }

    async format(cell) {
        const { source } = await ask('format', { source: cell.source });
        if (source !== cell.source) {
            cell.view.dispatch({ changes: { from: 0, to: cell.view.state.doc.length, insert: source } });
        }
    }

    focus(id) {
        const cell = this.cells.get(id);
        if (cell?.kind === 'markdown') {
            this.write(cell, true);
        }
        cell?.view.focus();
    }

    close() {
        this.turn++;
        this.cells.forEach((cell) => cell.view.destroy());
        this.room.replaceChildren();
    }
}

export { Cells };
