// Bandwright. SPDX-License-Identifier: Apache-2.0
// The program is killed while someone types. Arguments: modules, browser, java, class path, folder.
const fs = require('fs');
const { spawn } = require('child_process');
const [modules, executablePath, java, classes, folder] = process.argv.slice(2);
const { expect, launch, open, run, text } = require('./desk-browser.js');

function start(port) {
    const program = spawn(java, ['-cp', classes, 'bandwright.kernel.app.Main', 'page', folder, '--port', String(port)], { stdio: ['ignore', 'pipe', 'pipe'] });
    return new Promise((begun, failed) => {
        let words = '';
        const hear = (more) => {
            words += more;
            const found = words.match(/http:\S+/);
            if (found) {
                begun({ program, link: found[0] });
            }
        };
        program.stdout.on('data', hear);
        program.stderr.on('data', hear);
        program.on('exit', () => failed(new Error(`the program ended: ${words}`)));
    });
}

async function kill(program) {
    program.removeAllListeners('exit');
    const ended = new Promise((done) => { program.on('exit', done); });
    program.kill('SIGKILL');
    await ended;
}

run(async () => {
    let server = await start(0);
    const { port } = new URL(server.link);
    const browser = await launch(modules, executablePath);
    try {
        const page = await (await browser.newContext()).newPage();
        await page.goto(server.link);
        await open(page, 'it.ipynb');
        const type = async (words) => {
            await page.locator('.desk-code .cm-content').first().click();
            await page.keyboard.press('Control+End');
            await page.keyboard.type(words);
        };
        await type('\n# safe on the disk');
        await page.waitForFunction(() => !window.localStorage.getItem('bandwright it.ipynb'));
        const saved = fs.readFileSync(`${folder}/it.ipynb`, 'utf8');
        expect(!saved.includes('safe on the disk'), 'the notebook itself was written, unasked');
        await kill(server.program);

        // The program is gone: what is typed now is in the page, and in the browser should that go too.
        await type('\n# typed to nobody');
        await page.waitForFunction(() => document.getElementById('desk-said').textContent.includes('does not answer'));
        server = await start(port);
        await page.goto(server.link);
        await open(page, 'it.ipynb');
        await page.waitForFunction(() => document.querySelector('.desk-code .cm-content').innerText.includes('typed to nobody'));
        const typed = await text(page, 0);
        expect(typed.includes('# safe on the disk\n# typed to nobody'), `lost: ${typed}`);
        expect((await page.locator('.desk-cell').count()) === 1, 'a conflict with itself');
        await page.waitForFunction(() => !window.localStorage.getItem('bandwright it.ipynb'));
        await kill(server.program);

        // Another browser, after another start: all is there, and is taken back line by line.
        server = await start(0);
        const fresh = await (await browser.newContext()).newPage();
        await fresh.goto(server.link);
        await open(fresh, 'it.ipynb');
        expect((await text(fresh, 0)) === typed, 'another browser sees something else');
        await fresh.click('.desk-tools button:text-is("Take back")');
        await fresh.waitForFunction(() => !document.querySelector('.desk-code .cm-content').innerText.includes('typed to nobody'));
    } finally {
        await kill(server.program);
        await browser.close();
    }
});
