// Bandwright. SPDX-License-Identifier: Apache-2.0
// Opens a written page in Chromium and uses the model on it as a person would. Says "all is well" or what is not; leaves pictures.
// Arguments: the folder with node_modules, the browser, the page, a folder for pictures.
const fs = require('fs');
const [modules, executablePath, page, folder] = process.argv.slice(2);
const { chromium } = require(`${modules}/node_modules/playwright-core`);

const axe = fs.readFileSync(`${modules}/node_modules/axe-core/axe.min.js`, 'utf8');

const complaints = [];
const check = (what, holds) => {
    if (!holds) {
        complaints.push(what);
    }
};

async function main() {
    const browser = await chromium.launch({
        executablePath,
        args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--disable-quic', '--no-first-run'],
    });
    const context = await browser.newContext({ viewport: { width: 1280, height: 1000 }, reducedMotion: 'reduce', acceptDownloads: true });
    const tab = await context.newPage();
    tab.on('console', (message) => {
        if (['error', 'warning'].includes(message.type()) && !message.text().includes('GPU stall due to ReadPixels')) {
            complaints.push(`console: ${message.text()}`);
        }
    });
    tab.on('pageerror', (fault) => complaints.push(`page: ${fault.message}`));
    tab.on('request', (request) => {
        if (!request.url().startsWith('file:') && !request.url().startsWith('data:')) {
            complaints.push(`asked for ${request.url().slice(0, 80)}`);
        }
    });
    await tab.goto(`file://${page}`);
    const figure = tab.locator('figure.turntable').first();
    await tab.waitForSelector('figure.turntable.is-live', { timeout: 60000 });
    await figure.scrollIntoViewIfNeeded();
    const canvas = figure.locator('canvas');

    /** The picture as it is, and how many colours it has. */
    const look = () => figure.evaluate(async (element) => {
        await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        element.viewer.draw();
        const shown = element.querySelector('canvas');
        const copy = document.createElement('canvas');
        copy.width = 160;
        copy.height = 120;
        const pen = copy.getContext('2d');
        pen.drawImage(shown, 0, 0, 160, 120);
        const data = pen.getImageData(0, 0, 160, 120).data;
        const colours = new Set();
        let filled = 0;
        for (let at = 0; at < data.length; at += 4) {
            colours.add(data[at] >> 3 << 10 | data[at + 1] >> 3 << 5 | data[at + 2] >> 3);
            filled += data[at + 3] > 128 ? 1 : 0;
        }
        return { picture: shown.toDataURL(), colours: colours.size, filled };
    });
    const shot = (name) => figure.screenshot({ path: `${folder}/${name}.png` });
    const state = () => figure.evaluate((element) => JSON.stringify(element.viewer.views.state));
    const move = (slider, value) => slider.evaluate((input, now) => {
        input.value = String(now);
        input.dispatchEvent(new Event('input'));
    }, value);

    /** The whole page by the rules of WCAG 2.2, levels A and AA, as far as a program can judge them. */
    const accessible = async (when) => {
        const found = await tab.evaluate(async (text) => {
            if (!window.axe) {
                (0, eval)(text);
            }
            const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
            const result = await window.axe.run(document, { runOnly: rules });
            return result.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.target.join(' ')).slice(0, 3).join(', ')}`);
        }, axe).catch((fault) => [`axe did not run: ${fault.message}`]);
        check(`axe, ${when}: ${found.join('; ')}`, found.length === 0);
    };

    const start = await look();
    await accessible('loaded');
    check('the model is blank', start.colours > 60 && start.filled > 1000);
    await shot('start');

    // Turning by hand.
    const box = await canvas.boundingBox();
    await tab.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await tab.mouse.down();
    await tab.mouse.move(box.x + box.width / 2 + 90, box.y + box.height / 2 + 20, { steps: 4 });
    await tab.mouse.up();
    const turned = await look();
    check('dragging does not turn it', turned.picture !== start.picture);
    await figure.getByRole('button', { name: 'Reset' }).click();
    check('reset does not go back', (await look()).picture === start.picture);

    // The keyboard.
    await canvas.focus();
    for (const key of ['ArrowLeft', 'ArrowUp', '+', '-', 'Shift+ArrowLeft', '1', '2', '3', '4', 'o', 'p']) {
        const before = await state();
        await tab.keyboard.press(key);
        check(`the key ${key} does nothing`, (await state()) !== before || key === '1');
    }
    await tab.keyboard.press('r');
    check('the key r does not go back', (await look()).picture === start.picture);
    await tab.keyboard.press('Tab');
    check('the keyboard is trapped', await tab.evaluate(() => document.activeElement.tagName !== 'CANVAS'));

    // Standard views and projection.
    for (const name of ['Top', 'Front', 'Side', 'Three-quarter']) {
        await figure.getByRole('button', { name, exact: true }).click();
        await shot(name.toLowerCase());
    }
    await figure.getByRole('button', { name: 'Parallel' }).click();
    check('parallel is the same as perspective', (await look()).picture !== start.picture);
    await figure.getByRole('button', { name: 'Perspective' }).click();

    // Cutting, with caps.
    const cut = figure.getByRole('slider', { name: 'at' });
    await figure.getByRole('radio', { name: 'along it, at an angle' }).check();
    const capped = await look();
    check('the cut takes nothing', capped.filled < start.filled);
    await shot('cut-along');
    await accessible('cut');
    const bare = await figure.evaluate(async (element) => {
        element.viewer.cut.caps.forEach((cap) => { cap.visible = false; });
        element.viewer.draw();
        return element.querySelector('canvas').toDataURL();
    });
    check('the cut is not filled', bare !== capped.picture);
    await move(cut, 30);
    check('the cut does not turn', (await look()).picture !== capped.picture);
    await figure.getByRole('radio', { name: 'across the finger' }).check();
    await figure.getByRole('button', { name: 'Front' }).click();
    await shot('cut-across');
    await figure.getByRole('button', { name: 'Reset' }).click();

    // Taking apart.
    const apart = figure.getByRole('slider', { name: 'so far' });
    await move(apart, 100);
    const parted = await look();
    check('nothing is taken apart', parted.picture !== start.picture);
    const places = await figure.evaluate((element) => element.viewer.model.parts.map((part) => part.pieces[0].group.position.z));
    check('the collar is not farthest out', places[1] > places[2] && places[2] > places[0] && places[0] === 0);
    await shot('apart');
    await accessible('taken apart');
    await figure.getByRole('button', { name: 'Reset' }).click();

    // Hiding a part.
    await figure.getByRole('checkbox', { name: 'shank' }).uncheck();
    check('hiding does nothing', (await look()).filled < start.filled);
    await figure.getByRole('checkbox', { name: 'shank' }).check();

    // Words under the pointer, checks, text.
    const spot = await figure.evaluate((element) => {
        const at = element.querySelector('canvas').getBoundingClientRect();
        for (let x = 0.1; x < 0.9; x += 0.02) {
            const here = [at.left + x * at.width, at.top + 0.55 * at.height];
            if (element.viewer.under(...here) && document.elementFromPoint(...here).tagName === 'CANVAS') {
                return [here[0] + 4, here[1]];
            }
        }
        return null;
    });
    await tab.mouse.move(...spot);
    await shot('hover');
    await accessible('pointed at');
    const note = await figure.locator('.turntable-note').textContent();
    check(`the note says nothing of a weight: ${note}`, /weight\(\w+\) = [\d.]+ g/.test(note));
    const before = await state();
    const line = figure.locator('.turntable-checks button').first();
    if (await line.count()) {
        await line.click();
        check('a check does not turn the ring to it', (await state()) !== before);
        check('a check is not said', /^Check 1/.test(await figure.locator('.turntable-said').textContent()));
        await shot('check');
    }
    check('the model has no words', ((await canvas.getAttribute('aria-label')) || '').length > 40);

    // A picture to keep; the camera stays when the ring comes anew, and when the page does.
    await figure.getByRole('button', { name: 'Side', exact: true }).click();
    const [download] = await Promise.all([tab.waitForEvent('download'), figure.getByRole('button', { name: 'Save picture' }).click()]);
    check('the picture has no name', download.suggestedFilename().endsWith('.png'));
    await download.saveAs(`${folder}/saved.png`);
    const held = await state();
    await figure.evaluate(async (element) => {
        const data = JSON.parse(element.querySelector('script').textContent);
        const bytes = Uint8Array.from(atob(data.glb), (letter) => letter.charCodeAt(0));
        await element.viewer.load(bytes, data, () => {});
    });
    check('the camera moves when the ring changes', (await state()) === held);
    await look();
    await tab.reload();
    await tab.waitForSelector('figure.turntable.is-live', { timeout: 60000 });
    const close = (one, other) => Math.abs(one.theta - other.theta) < 1e-6 && Math.abs(one.phi - other.phi) < 1e-6;
    check('the camera moves when the page is opened again', close(JSON.parse(await state()), JSON.parse(held)));

    // In the dark, and on a telephone.
    await tab.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
    await figure.getByRole('button', { name: 'Three-quarter' }).click();
    await shot('dark');
    await accessible('in the dark');
    await tab.setViewportSize({ width: 390, height: 800 });
    await look();
    await shot('narrow');
    await accessible('narrow');
    check('the page is wider than a telephone', await tab.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    await browser.close();
}

main().catch((fault) => complaints.push(fault.stack)).then(() => {
    console.log(complaints.length ? complaints.join('\n') : 'all is well');
    process.exit(complaints.length ? 1 : 0);
});
