// Bandwright. SPDX-License-Identifier: Apache-2.0
// The page: the folder's notebooks, the open one, and the ring beside it.
import { made, button } from '/asset/model/form.js';
import { ask, page } from './ask.js';
import { Bench } from './bench.js';
import { Cells } from './cells.js';
import { handouts } from './handout.js';
import { Present } from './present.js';

const sheet = document.getElementById('sheet');
const files = document.getElementById('desk-files');
const room = document.getElementById('desk-bench');
const title = document.getElementById('desk-title');
const said = document.getElementById('desk-said');
const tools = document.querySelector('.desk-tools');

let open = null;

function say(sentence) {
    said.textContent = sentence;
}

async function folder() {
    const told = await ask('files', {});
    const list = told.files.map((name) => made('li', {}, link(name)));
    const name = made('input', { type: 'text', id: 'new-name', autocomplete: 'off' });
    name.value = 'ring.ipynb';
    const start = made('select', { id: 'new-start' }, ...told.starts.map((one) => made('option', { value: one }, one)));
    const make = button('Begin', async () => {
        try {
            const made_one = await ask('new', { name: name.value, start: start.value });
            await folder();
            await show(made_one.name);
        } catch (fault) {
            say(fault.message);
        }
    });
    files.replaceChildren(made('h2', {}, told.folder || 'Notebooks'), made('ul', {}, ...list),
        made('details', {}, made('summary', {}, 'A new one'), made('label', { for: 'new-name' }, 'Name'), name,
            made('label', { for: 'new-start' }, 'Begin with'), start, make));
    mark();
}

function link(name) {
    const one = button(name, () => show(name));
    one.dataset.name = name;
    return one;
}

function mark() {
    files.querySelectorAll('button[data-name]').forEach((one) => {
        if (open && one.dataset.name === open.name) {
            one.setAttribute('aria-current', 'page');
        } else {
            one.removeAttribute('aria-current');
        }
    });
}

async function show(name) {
    present.leave();
    if (open) {
        await open.cells.flush();
        open.cells.close();
    }
    try {
        const state = await ask('open', { name });
        room.hidden = false;
        let fingerprint = '';
        const bench = new Bench(room, name, say, async (taken) => {
            cells.show(taken || await ask('open', { name }));
            cells.follow();
        });
        const heard = (told) => {
            fingerprint = told.fingerprint;
            if (!bench.held) {
                bench.tell(told);
            }
            if (told.handles) {
                bench.hold(told.handles);
            }
            if (told.back !== undefined) {
                back.disabled = !told.back;
                again.disabled = !told.again;
            }
            title.textContent = told.title || name;
            document.title = `${told.title || name} – Bandwright`;
        };
        const cells = new Cells(sheet, name, heard, say);
        cells.settled = () => bench.refresh(fingerprint);
        cells.shown = () => present.show();
        open = { name, cells, bench };
        cells.show(state);
        mark();
        say(state.beside ? `${name} was written by another program since; what was typed here stands in ${state.beside}.` : state.recovered ? `${name} is open, with what was typed and not saved before the program ended.` : `${name} is open.`);
        await cells.recover();
        cells.follow();
    } catch (fault) {
        open = null;
        sheet.replaceChildren();
        room.hidden = true;
        say(fault.message);
    }
}

async function save() {
    if (!open) {
        return;
    }
    await open.cells.flush();
    try {
        await ask('save', { name: open.name });
        say(`${open.name} is saved.`);
    } catch (fault) {
        say(fault.message);
    }
}

function whole(work) {
    return () => (open ? work(open.cells) : say('Open a notebook first.'));
}

const present = new Present(() => open?.cells, say, (on) => presents.setAttribute('aria-pressed', String(on)));
const presents = button('Present', () => (present.on ? present.leave() : present.begin()));
presents.setAttribute('aria-pressed', 'false');
const back = button('Take back', whole((cells) => cells.go('back')));
const again = button('Do again', whole((cells) => cells.go('again')));
tools.append(
    button('Save', save), button('Run all', whole((cells) => cells.runAll())), button('Stop', whole((cells) => cells.stop())),
    back, again, button('Clear results', whole((cells) => cells.clear())), handouts(() => open, say), presents);

document.addEventListener('keydown', (event) => {
    if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 's') {
        event.preventDefault();
        save();
    }
    const back_wanted = (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
    if (back_wanted && open && !event.defaultPrevented && !event.target.closest('.cm-editor, input')) {
        event.preventDefault();
        open.cells.go(event.shiftKey ? 'again' : 'back');
    }
});

async function look() {
    if (open) {
        await open.cells.look();
        open.cells.follow();
    }
}

// Who comes back to this page may have changed the file elsewhere.
window.addEventListener('focus', async () => {
    const name = open?.name;
    const fresh = name && await ask('fresh', { name }).catch(() => ({}));
    if (fresh?.readAgain && open?.name === name) {
        say(`Another program has written ${name}: this is what it holds now. Take back brings what was here before.`);
        await look();
    }
});

const news = new EventSource('/events');
let heard_before = false;
news.addEventListener('open', () => {
    // What was told while nobody listened is looked up.
    if (heard_before) {
        look();
    }
    heard_before = true;
});
news.addEventListener('message', (event) => {
    const told = JSON.parse(event.data);
    if (open && told.changed === open.name && told.by !== page) {
        look();
    }
});

folder().catch((fault) => say(fault.message));
