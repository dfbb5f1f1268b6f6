// Bandwright. SPDX-License-Identifier: Apache-2.0
// A cell's text under CodeMirror: what it knows of the language it asks the desk, only colours are found here.
import { autocompletion, closeCompletion, completionStatus } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap, undoDepth } from '@codemirror/commands';
import { HighlightStyle, StreamLanguage, bracketMatching, syntaxHighlighting } from '@codemirror/language';
import { setDiagnostics } from '@codemirror/lint';
import { EditorState, Prec, Transaction } from '@codemirror/state';
import { EditorView, drawSelection, hoverTooltip, keymap } from '@codemirror/view';
import { tags } from '@lezer/highlight';
import { ask } from './ask.js';

const nonce = document.querySelector('meta[name="bandwright-nonce"]').content;

const STATEMENT = /^(?:title|profile|band|cut|stone-row|prongs|metal|stone-material|forget|show|view|vary|what-if|option|find|measured|explain|require|limit|quote|export|sheet)(?![\p{L}\p{N}-])/u;
const NUMBER = /^(?:(?:US|UK|ISO|JP|CH|DE) (?:[A-Z](?![\p{L}\p{N}])(?: \d\/\d)?|\d+(?: \d+\/\d+|\/\d+|\.\d+)?)|\d+(?: \d+\/\d+|\/\d+|\.\d+)?(?: ?(?:mm|cm|inch|um|deg|kg|g|ct|pt|%)(?![\p{L}\p{N}]))?)/u;

const ring = StreamLanguage.define({
    name: 'ring',
    token(stream) {
        if (stream.sol() && stream.match(STATEMENT)) {
            return 'keyword';
        }
        if (stream.match(/^#.*/)) {
            return 'comment';
        }
        if (stream.match(/^["“”„][^"“”„]*["“”„]?/)) {
            return 'string';
        }
        if (stream.match(/^because\b/)) {
            return 'keyword';
        }
        if (stream.match(NUMBER)) {
            return 'number';
        }
        if (!stream.match(/^[\p{L}_][\p{L}\p{N}_-]*/u)) {
            stream.next();
        }
        return null;
    },
});

const colours = HighlightStyle.define([
    { tag: tags.keyword, color: 'var(--accent)', fontWeight: '600' },
    { tag: tags.comment, color: 'var(--comment)', fontStyle: 'italic' },
    { tag: tags.string, color: 'var(--string)' },
    { tag: tags.number, color: 'var(--number)' },
]);

const look = EditorView.theme({
    '&': { backgroundColor: 'transparent', color: 'inherit', fontSize: 'inherit' },
    '.cm-content': { fontFamily: 'ui-monospace, "Cascadia Mono", Menlo, Consolas, "DejaVu Sans Mono", monospace', padding: '0.6rem 0', caretColor: 'var(--ink)' },
    // The frame of the whole text shows where the cursor is.
    '&.cm-focused': { outline: 'none' },
    '.cm-cursor': { borderLeftColor: 'var(--ink)' },
    '.cm-tooltip': { backgroundColor: 'var(--ground)', color: 'var(--ink)', border: '1px solid var(--quiet)' },
    '.cm-tooltip-autocomplete ul li[aria-selected]': { backgroundColor: 'var(--accent)', color: 'var(--ground)' },
    '.cm-said': { padding: '0.4rem 0.6rem', maxWidth: '32rem', whiteSpace: 'pre-wrap' },
    '.cm-selectionBackground, &.cm-focused .cm-selectionBackground': { backgroundColor: 'var(--remark-ground) !important' },
});

/**
 * @param cell whose text it is: its notebook, id and kind
 * @param heard called with the text at every change, and {@code keys} by what a person wants
 */
function editor(parent, cell, source, heard, keys) {
    const words = (at) => ({ name: cell.notebook, source: view.state.doc.toString(), at });
    const completions = async (context) => {
        if (cell.kind !== 'code') {
            return null;
        }
        if (!context.explicit && !context.matchBefore(/[\p{L}-]{2,}/u)) {
            return null;
        }
        const found = await ask('complete', words(context.pos)).catch(() => null);
        if (!found) {
            return null;
        }
        return { from: found.from, to: found.to, options: found.options.map(({ label, detail }) => ({ label, detail })) };
    };
    const hover = hoverTooltip(async (shown, at) => {
        if (cell.kind !== 'code') {
            return null;
        }
        const found = await ask('explain', words(at)).catch(() => null);
        if (!found?.text) {
            return null;
        }
        return { pos: at, above: true, create: () => {
            const dom = document.createElement('div');
            dom.className = 'cm-said';
            dom.textContent = found.text;
            return { dom };
        } };
    });
    const own = Object.entries(keys).map(([key, run]) => ({ key, run: () => run() !== false }));
    const view = new EditorView({
        parent,
        state: EditorState.create({
            doc: source,
            extensions: [
                EditorView.cspNonce.of(nonce), look, history(), drawSelection(), bracketMatching(), EditorView.lineWrapping,
                cell.kind === 'code' ? [ring, syntaxHighlighting(colours), autocompletion({ override: [completions], activateOnTypingDelay: 150 }), hover] : [],
                // Tab stays the browser's: the keyboard is never caught in a cell.
                Prec.high(keymap.of(own)), keymap.of([...defaultKeymap, ...historyKeymap]),
                EditorView.contentAttributes.of({ 'aria-label': cell.label }),
                EditorView.updateListener.of((update) => {
                    if (update.docChanged && !view.quiet) {
                        heard(update.state.doc.toString());
                    }
                }),
            ],
        }),
    });
    return view;
}

/** Marks what is to be said of a text under its places. */
function mark(view, told) {
    const length = view.state.doc.length;
    const marks = told.filter((one) => one.from !== undefined).map((one) => ({
        from: Math.min(one.from, length),
        to: Math.min(Math.max(one.to, one.from), length),
        severity: one.severity === 'error' ? 'error' : one.severity === 'warning' ? 'warning' : 'info',
        message: [one.message, one.expected && `expected ${one.expected}`, one.try && `try ${one.try}`].filter(Boolean).join('\n'),
    }));
    view.dispatch(setDiagnostics(view.state, marks));
}

/** Puts another text in, not as a person's typing. */
function put(view, source) {
    if (view.state.doc.toString() === source) {
        return;
    }
    view.quiet = true;
    view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: source }, annotations: Transaction.addToHistory.of(false) });
    view.quiet = false;
}

function isChoosing(view) {
    return completionStatus(view.state) === 'active' && closeCompletion(view);
}

/** Whether what was typed on this page can be taken back in the cell itself. */
function hasPast(view) {
    return undoDepth(view.state) > 0;
}

export { editor, hasPast, isChoosing, mark, put };
