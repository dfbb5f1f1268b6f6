// Bandwright. SPDX-License-Identifier: Apache-2.0
// What is handed over: made by the program, kept by the browser. Nothing is written into the folder.
import { made, button } from '/asset/model/form.js';
import { ask } from './ask.js';
import { bytes } from './bench.js';

const THINGS = [
    ['sheet', 'Bench sheet (PDF)'],
    ['page', 'Handout to read on a screen'],
    ['paper', 'Handout for paper (PDF)'],
];

function keep(file, type, content) {
    const address = URL.createObjectURL(new Blob([content], { type }));
    const link = made('a', { href: address, download: file });
    document.body.append(link);
    link.click();
    link.remove();
    window.setTimeout(() => URL.revokeObjectURL(address), 60000);
}

/** The menu. {@code open} gives the open notebook, or nothing. */
function handouts(open, say) {
    const summary = made('summary', {}, 'Hand out');
    const programs = made('input', { type: 'checkbox', id: 'run-programs' });
    const asked = made('p', { className: 'desk-programs', hidden: true }, programs,
        made('label', { for: 'run-programs' }, 'run its cells in Java, which can do anything'));
    const give = async (what, words) => {
        const notebook = open();
        if (!notebook) {
            say('Open a notebook first.');
            return;
        }
        menu.open = false;
        summary.focus();
        say(`${words} is being made …`);
        try {
            await notebook.cells.flush();
            const given = await ask('hand-out', { name: notebook.name, what, programs: programs.checked });
            keep(given.file, given.type, bytes(given.bytes));
            say(`${given.file} is with your browser now; the folder is as it was.`);
        } catch (fault) {
            say(fault.message);
        }
    };
    const list = made('div', { className: 'desk-menu' },
        ...THINGS.map(([what, words]) => button(words, () => give(what, words))),
        made('p', {}, 'A handout leaves out cells tagged solution or teacher.'), asked);
    const menu = made('details', { className: 'desk-handouts' }, summary, list);
    menu.addEventListener('toggle', () => {
        asked.hidden = !open()?.cells.hasPrograms();
    });
    menu.addEventListener('keydown', (event) => {
        if (event.key === 'Escape' && menu.open) {
            menu.open = false;
            summary.focus();
            event.preventDefault();
            event.stopPropagation();
        }
    });
    document.addEventListener('pointerdown', (event) => {
        if (!menu.contains(event.target)) {
            menu.open = false;
        }
    });
    menu.addEventListener('focusout', (event) => {
        if (event.relatedTarget && !menu.contains(event.relatedTarget)) {
            menu.open = false;
        }
    });
    return menu;
}

export { handouts };
