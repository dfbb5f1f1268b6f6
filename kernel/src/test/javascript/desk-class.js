// Bandwright. SPDX-License-Identifier: Apache-2.0
// A teacher's way on the page, and every state of it judged. Arguments: modules, browser, link, folder for pictures.
const fs = require('fs');
const [modules, executablePath, link, pictures] = process.argv.slice(2);
const { expect, judge, launch, open, run, said, text, tool, watch, weight } = require('./desk-browser.js');

run(async () => {
    const browser = await launch(modules, executablePath);
    const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce', bypassCSP: true, acceptDownloads: true });
    const page = await context.newPage();
    const origin = new URL(link).origin;
    let cut = false;
    watch(page, origin, (words) => cut && words.includes('ERR_'));
    const accessible = judge(modules);
    const picture = (name, whole = false) => page.screenshot({ path: `${pictures}/${name}.png`, fullPage: whole });
    const shown = () => page.locator('.desk-cell:visible').count();
    const cells = () => page.locator('.desk-cell').count();

    await page.goto(link);
    await page.waitForSelector('#desk-files button[data-name="class.ipynb"]');
    await page.click('summary:text-is("A new one")');
    await accessible(page, 'folder');
    await picture('folder-new');
    await open(page, 'class.ipynb');
    await page.waitForSelector('.desk-out table', { timeout: 60000 });
    await page.waitForFunction(() => document.querySelector('.desk-checks')?.textContent.includes('checks'), null, { timeout: 60000 });
    await accessible(page, 'open');
    await picture('class');
    const all = await cells();

    // Whole cells are taken away and come back, also after the page was loaded anew.
    const before = await text(page, 1);
    await page.locator('.desk-cell').nth(1).hover();
    await page.locator('.desk-cell').nth(1).locator('button:text-is("Take away")').click();
    await said(page, 'taken away');
    expect((await cells()) === all - 1, 'the cell stays');
    await page.reload();
    await open(page, 'class.ipynb');
    await tool(page, 'Take back');
    await said(page, 'Taken back');
    expect((await cells()) === all && (await text(page, 1)) === before, 'the cell does not come back');
    await tool(page, 'Do again');
    await said(page, 'Done again');
    expect((await cells()) === all - 1, 'it is not done again');
    await page.locator('body').press('Control+z');
    await page.waitForFunction((count) => document.querySelectorAll('.desk-cell').length === count, all);
    await tool(page, 'Clear results');
    await said(page, 'cleared away');
    expect((await page.locator('.desk-code .desk-out table').count()) === 0, 'results stay');
    await picture('cleared');
    await accessible(page, 'cleared');
    await tool(page, 'Take back');
    await page.waitForSelector('.desk-code .desk-out table');

    // What is handed over goes to the browser and not into the folder.
    await page.click('.desk-handouts summary');
    await accessible(page, 'menu');
    await picture('menu');
    for (const [words, file, start] of [['Bench sheet (PDF)', 'class.sheet.pdf', '%PDF'], ['Handout to read on a screen', 'class.handout.html', '<!DOCTYPE'], ['Handout for paper (PDF)', 'class.handout.pdf', '%PDF']]) {
        if (!(await page.locator('.desk-menu').isVisible())) {
            await page.click('.desk-handouts summary');
        }
        const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60000 }), page.click(`.desk-menu button:text-is("${words}")`)]);
        const content = fs.readFileSync(await download.path());
        expect(download.suggestedFilename() === file, `${words} is called ${download.suggestedFilename()}`);
        expect(content.subarray(0, start.length).toString() === start, `${words} is something else`);
        expect(!content.includes('only the teacher knows'), `${words} holds the solution`);
    }

    // For a class: one step after the other, and alive.
    await tool(page, 'Present');
    expect((await shown()) === 1, 'not one step is shown');
    await accessible(page, 'presented, first step');
    await picture('present-1');
    await page.keyboard.press('PageDown');
    await page.keyboard.press('ArrowRight');
    expect((await shown()) === 3, `after two steps ${await shown()} are shown`);
    await page.keyboard.press('ArrowLeft');
    expect((await shown()) === 2, 'no way back');
    await page.click('.desk-steps button:text-is("Next")');
    await page.keyboard.press('Escape');
    expect((await shown()) === all, 'Escape does not leave');
    await tool(page, 'Present');
    await page.keyboard.press('PageDown');
    const first = await weight(page);
    const editor = page.locator('.desk-cell.is-now .cm-content');
    await editor.click();
    await page.keyboard.press('Control+Home');
    for (let i = 0; i < 'breadth = '.length; i++) {
        await page.keyboard.press('ArrowRight');
    }
    await page.keyboard.press('Delete');
    await page.keyboard.type('6');
    await page.waitForFunction((was) => parseFloat([...document.querySelectorAll('.desk-numbers tr')].find((row) => row.textContent.includes('metal, finished')).querySelector('td').textContent) > was, first);
    expect((await shown()) === 2, 'typing changes the step');
    await page.keyboard.press('PageDown');
    expect((await shown()) === 3, 'a clicker does nothing while the cursor is in a cell');
    await page.waitForTimeout(1500);
    await picture('present-3');
    await page.emulateMedia({ media: 'print' });
    expect((await shown()) === all, 'print leaves out what is ahead');
    await page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
    await accessible(page, 'presented, dark');
    await picture('present-dark');
    await page.setViewportSize({ width: 820, height: 1180 });
    await accessible(page, 'presented, tablet');
    await picture('present-tablet');
    await page.setViewportSize({ width: 390, height: 844 });
    await picture('present-small');
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.keyboard.press('Escape');
    expect((await page.locator('.is-presented').count()) === 0, 'it is not left from inside of a cell');

    // A long cell is stopped.
    await page.locator('.desk-code .cm-content').last().click();
    await page.keyboard.press('Alt+Enter');
    await page.waitForFunction((count) => document.querySelectorAll('.desk-cell').length === count + 1, all);
    await page.keyboard.type('vary breadth from 3 mm to 8 mm step 0.0001 mm { surface(shank) }');
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => [...document.querySelectorAll('.desk-state')].some((one) => one.textContent.includes('at work')));
    await picture('working');
    await tool(page, 'Stop');
    await said(page, 'Stopped');
    await page.waitForFunction(() => !document.querySelector('.desk-out[aria-busy="true"]'), null, { timeout: 5000 });
    await picture('stopped');
    await accessible(page, 'stopped');
    await tool(page, 'Take back');

    // Two pages, one of them cut off for a while.
    const other = await context.newPage();
    await other.goto(`${origin}/`);
    await open(other, 'class.ipynb');
    cut = true;
    await page.route('**/desk/change', (route) => route.abort());
    await page.locator('.desk-code .cm-content').first().click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type('\n# mine');
    await said(page, 'does not answer');
    await other.locator('.desk-code .cm-content').first().click();
    await other.keyboard.press('Control+End');
    await other.keyboard.type('\n# theirs');
    await other.waitForTimeout(500);
    await page.unroute('**/desk/change');
    await said(page, 'Both texts stay');
    cut = false;
    const texts = await page.locator('.desk-cell .cm-content').allInnerTexts();
    expect(texts.some((one) => one.includes('# theirs') && !one.includes('# mine')), 'theirs is lost');
    expect(texts.some((one) => one.includes('# mine')), 'mine is lost');
    await picture('conflict');
    await accessible(page, 'conflict');
    await other.close();

    // A handle is held, and a line is wrong.
    await page.locator('.desk-handle input[type=range]').first().focus();
    await page.keyboard.press('ArrowRight');
    await page.waitForSelector('.desk-reason:visible');
    await accessible(page, 'handle');
    await page.keyboard.press('Escape');
    await page.locator('.desk-code .cm-content').first().click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type('\nband x {');
    await page.waitForSelector('.desk-told .trouble');
    await accessible(page, 'error');
    await page.setViewportSize({ width: 820, height: 1180 });
    await accessible(page, 'error, tablet');
    await picture('class-tablet');
    await page.setViewportSize({ width: 390, height: 844 });
    await accessible(page, 'error, small');
    await picture('class-small');
    await page.evaluate(() => window.scrollTo(0, 1200));
    await picture('class-small-below');
    await page.evaluate(() => window.scrollTo(0, 0));
    await page.click('.desk-handouts summary');
    await accessible(page, 'menu, small');
    await picture('menu-small');
    await page.keyboard.press('Escape');
    await page.setViewportSize({ width: 1366, height: 768 });
    await page.emulateMedia({ colorScheme: 'dark' });
    await accessible(page, 'dark');
    await picture('class-dark');
    await browser.close();
});
