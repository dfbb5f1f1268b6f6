// Bandwright. SPDX-License-Identifier: Apache-2.0
// A newcomer's way on the page, in a real browser. Arguments: modules, browser, link, folder for pictures. Prints "all is well" or what is not.
const [modules, executablePath, link, pictures] = process.argv.slice(2);
const { expect, launch, run, watch, weight } = require('./desk-browser.js');

run(async () => {
    const browser = await launch(modules, executablePath);
    const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce', bypassCSP: false });
    const page = await context.newPage();
    const origin = new URL(link).origin;
    watch(page, origin);
    const settled = (words) => page.waitForFunction((part) => document.querySelector('.desk-checks')?.textContent.includes(part), words, { timeout: 60000 });

    await page.goto(link);
    expect(new URL(page.url()).pathname === '/', 'the ticket stays in the address');
    await page.waitForSelector('#desk-files button[data-name="it.ipynb"]');
    await page.screenshot({ path: `${pictures}/folder.png` });
    await page.click('#desk-files button[data-name="it.ipynb"]');
    await page.waitForSelector('.desk-out table', { timeout: 60000 });
    await settled('checks');
    const first = await weight(page);
    expect(first > 0, 'no weight');
    await page.screenshot({ path: `${pictures}/open.png` });

    // A line is broken, read, and mended.
    const cell = page.locator('.desk-code .cm-content').first();
    await cell.click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type('\nbrand x {');
    await page.waitForSelector('.desk-told .trouble');
    expect((await page.locator('.desk-cell.is-bad').count()) === 1, 'the cell is not marked');
    expect(Math.abs(await weight(page) - first) < 1e-9, 'an unfinished line changes the ring');
    await page.screenshot({ path: `${pictures}/error.png` });
    for (let i = 0; i < 10; i++) {
        await page.keyboard.press('Backspace');
    }
    await page.waitForFunction(() => !document.querySelector('.desk-told .trouble'));

    // A width is changed in the text.
    await page.keyboard.press('Control+Home');
    const text = await cell.evaluate((element) => element.innerText);
    expect(text.includes('4 mm'), 'the text is not there');
    await page.locator('.desk-handle input[type=range]').first().focus();
    for (let i = 0; i < 5; i++) {
        await page.keyboard.press('ArrowRight');
    }
    await page.waitForFunction(() => [...document.querySelectorAll('.desk-difference')].some((one) => one.textContent.startsWith('+')));
    await page.screenshot({ path: `${pictures}/handle.png` });
    await page.locator('.desk-reason input').first().fill('she likes it wide');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.querySelector('.desk-code .cm-content').innerText.includes('she likes it wide'));
    expect(await weight(page) > first, 'the handle changes nothing');
    await settled('checks');

    // Another page of the same notebook hears of it, and a change there comes here.
    const other = await context.newPage();
    await other.goto(origin + '/');
    await other.waitForSelector('#desk-files button[data-name="it.ipynb"]');
    await other.click('#desk-files button[data-name="it.ipynb"]');
    await other.waitForSelector('.desk-code .cm-content');
    await other.locator('.desk-code .cm-content').first().click();
    await other.keyboard.press('Control+End');
    await other.keyboard.type('\n# from the other page');
    await page.waitForFunction(() => document.querySelector('.desk-code .cm-content').innerText.includes('from the other page'), null, { timeout: 20000 });
    await other.close();

    await page.click('.desk-tools button:has-text("Save")');
    await page.waitForFunction(() => document.getElementById('desk-said').textContent.includes('saved'));
    await page.setViewportSize({ width: 820, height: 1180 });
    await page.screenshot({ path: `${pictures}/tablet.png`, fullPage: true });
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.screenshot({ path: `${pictures}/dark.png` });
    await browser.close();
});
