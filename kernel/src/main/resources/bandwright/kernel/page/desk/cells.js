// Bandwright. SPDX-License-Identifier: Apache-2.0
// The cells of the open notebook: typed text goes to the desk at once, and what it answers is put beside it.
import { made, button } from '/asset/model/form.js';
import { ask } from './ask.js';
import { editor, hasPast, isChoosing, mark, put } from './editor.js';
import { Typing } from './typing.js';

/** What takes longer is told to be at work, ms. */
const NOTICED = 500;

/** Between two keys of someone who types on, ms. */
const LULL = 300;

const KINDS = { code: 'ring text', markdown: 'words', raw: 'kept as it is' };

class Cells extends Typing {
    /** @param heard what else follows a change: numbers, handles */
    constructor(room, name, heard, say) {
        super(name, say);
        this.room = room;
        this.heard = heard;
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
        let before = null;
        state.cells.forEach((told) => {
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
            this.tell(cell, told);
        });
        this.heard(state);
        this.shown();
    }

    /** What else hangs on which cells there are. */
    shown() {}

    make(told) {
        const cell = { id: told.id, kind: told.kind, source: told.source, known: told.source };
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
                'Mod-z': () => (hasPast(cell.view) ? false : void this.go('back')),
                // While cells are shown to a class, the key leaves that.
                Escape: () => {
                    if (isChoosing(cell.view)) {
                        return true;
                    }
                    if (document.documentElement.classList.contains('is-presented')) {
                        return false;
                    }
                    cell.bar.querySelector('button').focus();
                    return true;
                },
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

    tell(cell, told) {
        if (!this.typed.has(cell.id)) {
            // While something typed is not with the desk, the desk must know what it was typed upon.
            cell.known = told.source;
        }
        if (!this.typed.has(cell.id) && cell.source !== told.source) {
            cell.source = told.source;
            put(cell.view, told.source);
        }
        const name = told.kind === 'code' ? `Cell ${told.number}` : KINDS[told.kind];
        cell.box.setAttribute('aria-label', name);
        cell.bar.setAttribute('aria-label', `${name}: what to do with it`);
        cell.number.textContent = told.kind === 'code' ? String(told.number) : '';
        cell.asks = told.asks;
        cell.acts = told.acts;
        cell.stale = told.stale;
        cell.silent = Boolean(told.silent);
        if (told.kind === 'markdown') {
            this.put_out(cell, told.html);
        } else if (cell.silent) {
            this.put_out(cell, '');
        } else if (told.out !== undefined && !cell.out.childNodes.length) {
            this.put_out(cell, told.out);
        }
        if (told.told && !this.typed.has(cell.id)) {
            this.say_of(cell, told.told);
        }
        this.mark_state(cell);
    }

    /** Written by the desk from what it worked out, never from what was stored. Pictures come in whole, so that nothing flickers. */
    async put_out(cell, html) {
        if (cell.html === html) {
            return;
        }
        cell.html = html;
        const fresh = document.createElement('template');
        fresh.innerHTML = html;
        const pictures = [...fresh.content.querySelectorAll('img')];
        if (pictures.length && cell.out.childNodes.length) {
            await Promise.all(pictures.map((one) => one.decode().catch(() => {})));
        }
        if (cell.html === html) {
            cell.out.replaceChildren(fresh.content);
            this.mark_state(cell);
        }
    }

    mark_state(cell) {
        const bad = cell.bad ? 'has an error: what it said before still holds' : '';
        const old = !cell.asks || !cell.stale ? '' : cell.out.childNodes.length ? 'shows what no longer holds' : cell.acts ? 'runs when you say so' : '';
        cell.state.textContent = cell.slow ? 'at work …' : bad || (cell.silent && cell.asks ? 'cleared: run it to see it again' : old);
        cell.box.classList.toggle('is-bad', Boolean(cell.bad));
        cell.box.classList.toggle('is-stale', Boolean(cell.asks && cell.stale && !cell.silent));
        cell.out.setAttribute('aria-busy', String(Boolean(cell.working)));
    }

    /** Errors and remarks under the text, in words, each with what would be right. */
    say_of(cell, told) {
        const same = JSON.stringify([told, cell.source]);
        if (same === cell.said) {
            return;
        }
        cell.said = told.length ? same : '[]';
        if (!told.length && !cell.told.childNodes.length) {
            return;
        }
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

    /** As the desk has it now. */
    async look() {
        try {
            this.show(await ask('open', { name: this.name }));
        } catch (fault) {
            this.say(fault.message);
        }
    }

    /** Shows anew what no longer holds, from the top, until something else is typed. Programs wait for a person. */
    async follow() {
        const turn = ++this.turn;
        // While someone types on, the processor is for the numbers.
        await new Promise((done) => { window.setTimeout(done, LULL); });
        for (const id of this.order) {
            const cell = this.cells.get(id);
            if (turn !== this.turn) {
                return;
            }
            if (cell && cell.kind === 'code' && cell.asks && cell.stale && !cell.bad && !cell.acts && !cell.silent) {
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
        const slow = window.setTimeout(() => {
            cell.slow = true;
            this.mark_state(cell);
        }, NOTICED);
        try {
            const ran = await ask('answer', { name: this.name, id: cell.id, person: turn === undefined });
            if (turn !== undefined && turn !== this.turn) {
                return;
            }
            if (ran.overtaken) {
                // The design is another by now; what follows the change asks again.
                return;
            }
            cell.silent = false;
            await this.put_out(cell, ran.html);
            cell.stale = ran.stale;
            this.say_of(cell, ran.told);
            this.heard(ran);
        } catch (fault) {
            this.say(fault.message);
        } finally {
            window.clearTimeout(slow);
            cell.slow = false;
            cell.working = false;
            this.mark_state(cell);
        }
    }

    async run(id) {
        const cell = this.cells.get(id);
        await this.flush();
        await this.answer(cell);
        if (this.isJava(cell)) {
            await this.look();
        }
        this.follow();
    }

    async runAll() {
        await this.flush();
        const turn = ++this.turn;
        for (const id of [...this.order]) {
            const cell = this.cells.get(id);
            if (turn !== this.turn) {
                return;
            }
            if (cell && cell.kind === 'code' && cell.source.trim()) {
                await this.answer(cell);
            }
        }
        this.say('All cells have run.');
        this.settled();
    }

    async act(change) {
        await this.flush();
        try {
            const state = await ask('change', { name: this.name, changes: [change] });
            this.show(state);
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
            this.focus(state.made);
        }
    }

    async move(id, by) {
        await this.act({ do: 'move', id, by });
        this.focus(id);
    }

    async remove(id) {
        const at = this.order.indexOf(id);
        if (await this.act({ do: 'remove', id })) {
            this.say('The cell was taken away. "Take back" brings it again.');
            this.focus(this.order[Math.min(at, this.order.length - 1)]);
        }
    }

    async clear() {
        if (await this.act({ do: 'clear' })) {
            this.say('What the cells showed was cleared away; "Run all" shows it again.');
        }
    }

    /** Takes back the last thing done to the notebook, or does it again: by this page, another, or an earlier start. */
    async go(way) {
        await this.flush();
        const before = new Map(this.order.map((id) => [id, this.cells.get(id).source]));
        try {
            const state = await ask(way, { name: this.name });
            this.show(state);
            this.say(way === 'back' ? 'Taken back.' : 'Done again.');
            const other = state.cells.find((cell) => before.get(cell.id) !== cell.source);
            if (other) {
                this.cells.get(other.id).box.scrollIntoView({ block: 'nearest' });
            }
            this.follow();
        } catch (fault) {
            this.say(fault.message);
        }
    }

    /** Ends what is being worked at, and what would follow it. */
    async stop() {
        this.turn++;
        try {
            await ask('stop', { name: this.name });
            this.say('Stopped. What no longer holds is marked; "Run" works it out.');
        } catch (fault) {
            this.say(fault.message);
        }
    }

    hasPrograms() {
        return [...this.cells.values()].some((cell) => cell.kind === 'code' && this.isJava(cell));
    }

    async format(cell) {
        try {
            const { source } = await ask('format', { source: cell.source });
            if (source !== cell.source) {
                cell.view.dispatch({ changes: { from: 0, to: cell.view.state.doc.length, insert: source } });
            }
        } catch (fault) {
            this.say(fault.message);
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
