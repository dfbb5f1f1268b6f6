// Bandwright. SPDX-License-Identifier: Apache-2.0
// From keystroke to new weight. Arguments: modules, browser, link, names of notebooks. Prints the times, ms: measured, not judged.
const [modules, executablePath, link, ...names] = process.argv.slice(2);
const { expect, launch, open, run, watch, weight } = require('./desk-browser.js');

/**
 * Types a digit into the breadth's value, waits for another weight, and takes it away again.
 *
 * idle: whether all is up to date before each
 */
async function measure(page, times, idle) {
    return page.evaluate(async ([count, rests]) => {
        const pause = (ms) => new Promise((done) => { setTimeout(done, ms); });
        const rest = async () => {
            for (let quiet = 0; quiet < 10; quiet++) {
                await pause(100);
                if (document.querySelector('[aria-busy="true"], .is-stale')) {
                    quiet = 0;
                }
            }
        };
        const cell = () => [...document.querySelectorAll('.desk-numbers tr')].find((row) => row.textContent.includes('metal, finished'))?.querySelector('td').textContent;
        const line = [...document.querySelectorAll('.desk-code .cm-line')].find((one) => /^breadth\s*=/.test(one.textContent));
        const numbers = document.querySelector('.desk-numbers');
        const content = line.closest('.cm-content');
        const taken = [];
        const caret = () => {
            const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
            let at = line.textContent.indexOf('.') + 1;
            for (let node = walker.nextNode(); node; node = walker.nextNode()) {
                if (at <= node.length) {
                    document.getSelection().collapse(node, at);
                    return;
                }
                at -= node.length;
            }
        };
        content.focus();
        caret();
        for (let i = 0; i < count; i++) {
            if (rests) {
                await rest();
            }
            const was = cell();
            const changed = new Promise((done) => {
                const observer = new MutationObserver(() => {
                    if (cell() !== was) {
                        observer.disconnect();
                        done();
                    }
                });
                observer.observe(numbers, { childList: true, subtree: true, characterData: true });
            });
            const start = performance.now();
            // 4.6 mm becomes 4.16 mm, and 4.6 mm again.
            document.execCommand('insertText', false, String(1000 + 7 * i + (rests ? 3 : 0)).slice(1));
            await changed;
            taken.push(performance.now() - start);
            await pause(150);
            for (let back = 0; back < 3; back++) {
                document.execCommand('delete');
            }
            await pause(150);
        }
        return taken;
    }, [times, idle]);
}

run(async () => {
    const browser = await launch(modules, executablePath);
    const page = await (await browser.newContext({ viewport: { width: 1366, height: 768 } })).newPage();
    watch(page, new URL(link).origin);
    await page.goto(link);
    for (const name of names) {
        const begun = Date.now();
        await open(page, name);
        const opened = Date.now() - begun;
        await page.waitForFunction(() => document.querySelector('.desk-checks')?.textContent.includes('checks'), null, { timeout: 120000 });
        const settled = Date.now() - begun;
        expect(await weight(page) > 0, `${name}: no weight`);
        for (const [words, count, idle] of [['typed on', 41, false], ['all up to date before', 7, true]]) {
            const taken = (await measure(page, count, idle)).map(Math.round).sort((one, other) => one - other);
            console.error(`${name}: open ${opened}, all up to date ${settled}; key to weight, ${words}: least ${taken[0]}, median ${taken[(count - 1) / 2]}, most ${taken[count - 1]}`);
        }
        expect(await page.locator('.desk-told .trouble').count() === 0, `${name}: an error`);
    }
    await browser.close();
});
