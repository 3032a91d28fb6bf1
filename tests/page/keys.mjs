// The whole way without a mouse, and with a screen reader in mind.
import {
    check,
    equal,
    kept,
    open_buyer,
    open_page,
    open_some,
    reach,
    serious,
    settled,
    view,
    walk,
} from './support.mjs';

export async function keyboard_all_the_way({server, context}) {
    const page = await open_page(context, server.url);
    await page.keyboard.press('Tab');
    equal(
        'the first stop leads to the content',
        await page.evaluate(() => document.activeElement.className),
        'skip',
    );
    await page.keyboard.press('Enter');
    await reach(page, '.option.upgrade .row:not(.on) input[type="checkbox"]', 'an upgrade');
    const before = (await kept(page)).inquiry.selections.length;
    await page.keyboard.press('Space');
    await settled(page);
    equal('Space puts it in', (await kept(page)).inquiry.selections.length, before + 1);
    await page.keyboard.press('Control+z');
    await settled(page);
    equal('Ctrl+Z takes it back', (await kept(page)).inquiry.selections.length, before);
    await reach(page, '.choose-loan', 'the loan in hand');
    await page.keyboard.press('Enter');
    await reach(page, '.loan-choice input:checked', 'the one that is shown');
    await page.keyboard.press('ArrowDown');
    await settled(page);
    equal(
        'an arrow takes the next in hand',
        (await kept(page)).hand,
        (await kept(page)).inquiry.scenarios[1].name,
    );
    await page.evaluate(() => document.activeElement.blur());
    await reach(page, '.view:nth-child(2)', 'Loans');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.overview .row-price');
    await reach(page, '.loan-row .fold-opener', 'a loan');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.loan .big');
    await reach(page, '.loan input[aria-label="Down payment"]', 'a down payment');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('7.5');
    await page.keyboard.press('Enter');
    await settled(page);
    equal('Enter commits it', (await kept(page)).inquiry.scenarios[0].down.percent, '7.5');
}

export async function dialogs_by_key({server, context}) {
    const page = await open_page(context, server.url);
    await reach(page, '.buyers > .step', 'This buyer…');
    await page.keyboard.press('Enter');
    await page.waitForSelector('dialog[open]');
    await page.keyboard.press('Escape');
    await page.waitForSelector('dialog[open]', {state: 'detached'});
    check(
        'Escape closes and the focus is back',
        await page.evaluate(() => document.activeElement.textContent.startsWith('This buyer…')),
    );
}

/// Under axe: each view with something open in it, and what stands on no view of its own.
async function with_things_open(page, where) {
    for (const name of ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check']) {
        await view(page, name);
        const opened = await open_some(page);
        if (['Tour', 'Loans', 'Schedule', 'Check'].includes(name))
            check(`${name}: something is open, ${where}`, opened > 0);
        if (name === 'Site') await page.locator('.map .lot').nth(3).click();
        await serious(page, `${name} with something open, ${where}`);
    }
    await view(page, 'Tour');
    await walk(page, 'What you chose');
    await serious(page, `what was chosen, ${where}`);
    await walk(page, 'Floor plan');
    await serious(page, `the floor plan, ${where}`);
    await page.click('.find-button');
    await page.keyboard.type('counter');
    await page.waitForSelector('.found-count');
    await serious(page, `what was found, ${where}`);
}

export async function nothing_serious_for_axe({server, chrome}) {
    for (const [colorScheme, width] of [
        ['light', 1440],
        ['dark', 390],
    ]) {
        const context = await chrome.newContext({
            viewport: {width, height: 900},
            colorScheme,
        });
        const page = await open_page(context, server.url);
        await serious(page, `at first, ${colorScheme}, ${width} px`);
        await with_things_open(page, `${colorScheme}, ${width} px`);
        await page.click('button:text-is("Open…")');
        await serious(page, `a dialog, ${colorScheme}`);
        await page.keyboard.press('Escape');
        await open_buyer(page, 'Bare');
        await view(page, 'Tour');
        await serious(page, `an empty book, ${colorScheme}`);
        await page.click('button:text-is("This buyer…")');
        await page.locator('.dialog .row-button').filter({hasText: 'buyer'}).first().click();
        await page.waitForSelector('button:text-is("This buyer…")', {state: 'detached'});
        await settled(page);
        await serious(page, `facing the buyer, ${colorScheme}`);
        await context.close();
    }
}
