// Bandwright. SPDX-License-Identifier: Apache-2.0
// What is typed, on its way to the desk: nothing of it is let go before the desk has it on the disk.
import { ask } from './ask.js';
import { put } from './editor.js';

/** What the cells of a notebook know of typing; they give {@code cells}, {@code show}, {@code look} and {@code follow}. */
class Typing {
    constructor(name, say) {
        this.name = name;
        this.say = say;
        this.cells = new Map();
        this.typed = new Map();
    }

    type(cell, source) {
        cell.source = source;
        this.typed.set(cell.id, source);
        this.remember();
        // At once; what is typed while this is on its way goes together with the next.
        window.clearTimeout(this.pause);
        this.pause = window.setTimeout(() => this.send(), 0);
    }

    /** What the desk may have for a cell's text, for all that this page knows. */
    known(id) {
        const cell = this.cells.get(id);
        return cell ? [cell.known, cell.sent].filter((one) => one !== undefined) : [];
    }

    /** What is on its way to the desk is in the browser too, until the desk has it on the disk. */
    remember() {
        try {
            const waiting = [...this.typed].map(([id, source]) => ({ id, source, known: this.known(id) }));
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
        waiting.filter(({ id, source }) => this.cells.has(id) && this.cells.get(id).source !== source).forEach(({ id, source, known }) => {
            // Where the text is another than the one it was typed upon, both stay.
            const cell = this.cells.get(id);
            put(cell.view, source);
            [cell.known, cell.sent] = known || [];
            this.type(cell, source);
        });
    }

    async send() {
        if (this.sending) {
            this.again = true;
            return;
        }
        this.sending = true;
        const sent = new Map([...this.typed].filter(([id]) => this.cells.has(id)));
        const changes = [...sent].map(([id, source]) => ({ do: 'type', id, source, known: this.known(id) }));
        sent.forEach((source, id) => { this.cells.get(id).sent = source; });
        try {
            const state = await ask('change', { name: this.name, changes });
            sent.forEach((source, id) => {
                if (this.typed.get(id) === source) {
                    this.typed.delete(id);
                } else if (this.cells.has(id)) {
                    this.cells.get(id).known = state.cells.find((one) => one.id === id)?.source;
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
                await this.look();
            }
        } finally {
            this.sending = false;
            if (this.again) {
                this.again = false;
                this.send();
            }
        }
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
}

export { Typing };
