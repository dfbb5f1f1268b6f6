// Bandwright. SPDX-License-Identifier: Apache-2.0
// What the scripts that try the page share: a browser, what must hold, and who judges accessibility.
const fs = require('fs');

const faults = [];

function expect(is, words) {
    if (!is) {
        faults.push(words);
    }
}

function launch(modules, executablePath) {
    const { chromium } = require(`${modules}/node_modules/playwright-core`);
    return chromium.launch({ executablePath, args: ['--no-sandbox', '--use-gl=swiftshader', '--enable-webgl', '--ignore-gpu-blocklist'] });
}

/** A judge: `await accessible(page, 'state')`. The page's own policy lets none in, so its context must bypass that. */
function judge(modules) {
    const axe = fs.readFileSync(`${modules}/node_modules/axe-core/axe.min.js`, 'utf8');
    return async (page, state) => {
        const found = await page.evaluate(async (text) => {
            if (!window.axe) {
                (0, eval)(text);
            }
            const result = await window.axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
            return result.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).slice(0, 3).join(', ')}`);
        }, axe).catch((fault) => [`axe did not run: ${fault.message}`]);
        expect(found.length === 0, `${state}: ${found.join('; ')}`);
    };
}

/** Nothing from elsewhere, and nothing goes wrong unheard. */
function watch(page, origin, allowed = () => false) {
    page.on('console', (message) => expect(message.type() !== 'error' || allowed(message.text()), `console: ${message.text()}`));
    page.on('pageerror', (fault) => expect(false, `page: ${fault.message}`));
    page.on('request', (request) => expect(request.url().startsWith(origin) || /^(data|blob):/.test(request.url()), `asks ${request.url()}`));
}

async function weight(page) {
    const row = page.locator('.desk-numbers tr', { hasText: 'metal, finished' });
    return parseFloat(await row.locator('td').first().textContent());
}

/** The text of the nth cell's editor, from 0. */
function text(page, at) {
    return page.evaluate((place) => document.querySelectorAll('.desk-cell .cm-content')[place]?.innerText ?? '', at);
}

async function open(page, name) {
    await page.waitForSelector(`#desk-files button[data-name="${name}"]`);
    await page.click(`#desk-files button[data-name="${name}"]`);
    await page.waitForFunction((words) => document.getElementById('desk-said').textContent.startsWith(words), name, { timeout: 60000 });
}

function said(page, words) {
    return page.waitForFunction((part) => document.getElementById('desk-said').textContent.includes(part), words, { timeout: 60000 });
}

function tool(page, words) {
    return page.click(`.desk-tools button:text-is("${words}")`);
}

/** Runs a script to its end and says what came of it. */
function run(work) {
    work().then(() => console.log(faults.length ? faults.join('\n') : 'all is well')).catch((fault) => {
        console.log([...faults, fault.stack].join('\n'));
        process.exit(1);
    });
}

module.exports = { expect, judge, launch, open, run, said, text, tool, watch, weight };
