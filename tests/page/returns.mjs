// Coming back: a reload, the next day, a buyer closed by mistake, a link, a price book that moved on.
import {cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';

import {
    ask,
    bare,
    check,
    equal,
    kept,
    open_buyer,
    open_file,
    open_page,
    Server,
    settled,
    until,
    view,
    touch,
    in_every_part,
    open_part,
} from './support.mjs';

const tab = (page) => page.textContent('.tab[aria-current]');
const price = (page) => page.textContent('.bar [data-figure="contract_price"]');
const selected = async (page) =>
    (await kept(page)).inquiry.selections.map((one) =>
        typeof one === 'string' ? one : one.option,
    );

/// A list of names, and not one figure.
async function names_alone(page, name, names) {
    await page.waitForSelector('.start');
    const shown = await page.$$eval('.kept-name .cut', (all) =>
        all.map((one) => one.innerText.trim()),
    );
    equal(`${name}: the names`, shown.join(), names.join());
    const text = await page.evaluate(() => document.body.innerText);
    check(`${name}: nobody's figures`, !/\$\s?\d/.test(text), /.*\$\s?\d.*/.exec(text)?.[0]);
    equal(`${name}: no bar`, await page.locator('.bar').count(), 0);
}

export async function a_reload_the_same_buyer_a_new_window_names({server, context}) {
    const page = await open_page(context, server.url);
    const first = await tab(page);
    await open_buyer(page, 'Buyer 4');
    await open_buyer(page, 'Buyer 2');
    await page.click('.tab:text-is("Buyer 4")');
    await view(page, 'Loans');
    await page.reload();
    await page.waitForSelector('.overview .row-price');
    equal('the same buyer', await tab(page), 'Buyer 4');
    equal('on the same view', await page.textContent('.view[aria-current] .view-name'), 'Loans');
    equal('beside the others', await page.locator('.tab').count(), 3);
    const other = await open_page(context, server.url, '.start');
    await names_alone(other, 'a new window', ['Buyer 4', 'Buyer 2', first]);
    await other.click('.kept-name:has-text("Buyer 2")');
    await settled(other);
    equal('the one that was touched', await tab(other), 'Buyer 2');
    equal('and nobody else', await other.locator('.tab').count(), 1);
    await other.close();
    await page.clock.setFixedTime(new Date(Date.now() + 86_400_000));
    await page.evaluate(() => window.dispatchEvent(new Event('focus')));
    await names_alone(page, 'the next morning', ['Buyer 2', 'Buyer 4', first]);
    await page.click('.kept-name:has-text("Buyer 4")');
    await settled(page);
    await page.clock.setFixedTime(new Date(Date.now() + 2 * 86_400_000));
    await page.reload();
    await names_alone(page, 'a reload the next day', ['Buyer 4', 'Buyer 2', first]);
    equal('no errors in the page', page.wrong.join(), '');
}

export async function a_buyer_closed_is_brought_back({server, context}) {
    const page = await open_page(context, server.url);
    const keys = () => page.evaluate(() => Object.keys(localStorage).sort().join());
    await open_buyer(page, 'Buyer 4');
    await page.click('.tab >> nth=0');
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    const before = [await tab(page), await price(page), await keys()];
    const close = async () => {
        await page.click('button:text-is("This buyer…")');
        await page.click('.row-button:has-text("Close this buyer")');
        await page.waitForSelector('.message.closed');
    };
    const is_back = async (name) => {
        await page.waitForSelector('.message.closed', {state: 'detached'});
        await settled(page);
        const now = [await tab(page), await price(page), await keys()];
        equal(`${name}: all is as before`, now.join(' '), before.join(' '));
        equal(`${name}: in its place`, await page.textContent('.tab >> nth=0'), before[0]);
    };
    await close();
    check('erased at once', (await keys()) !== before[2] && (await tab(page)) === 'Buyer 4');
    check('it says who', (await page.textContent('.message.closed')).includes(before[0]));
    await page.click('.message.closed button:text-is("Undo")');
    await is_back('by the button');
    await page.click('.steps .back');
    await settled(page);
    check('its own steps too', !(await selected(page)).includes('windows'));
    await page.click('.steps button:text-is("Redo")');
    await settled(page);
    await close();
    await page.keyboard.press('Control+z');
    await is_back('by key');
    await page.click('.tab >> nth=1');
    await settled(page);
    await close();
    await page.click('.message.closed button:text-is("Close")');
    await settled(page);
    await close();
    await page.waitForSelector('.start');
    await page.click('.message.closed button:text-is("Undo")');
    await page.waitForSelector('.bar');
    equal('the last one too', await tab(page), before[0]);
    await close();
    await page.reload();
    await page.waitForSelector('.bar');
    check('closed stays closed', !(await keys()).includes(before[2].split(',')[0]), await keys());
}

const in_link = (home) => `#home=${Buffer.from(JSON.stringify(home)).toString('base64url')}`;

export async function a_link_begins_with_nobody({server, context, chrome}) {
    await context.grantPermissions(['clipboard-read', 'clipboard-write'], {origin: server.url});
    const page = await open_page(context, server.url);
    await page.click('button:text-is("This buyer…")');
    await page.click('.row-button:has-text("Copy a link")');
    await page.waitForSelector('.message:has-text("clipboard")');
    const said = await page.textContent('.message');
    for (const words of ['income', 'debts', 'credit score', 'cash', 'only on this computer'])
        check(`the copy says: ${words}`, said.includes(words), said);
    const link = await page.evaluate(() => navigator.clipboard.readText());
    const books = await (await context.request.get(`${server.url}api/cases`)).json();
    const first = books.price_books.find((one) => one.community === 'Oxbarrow Meadow').first;
    const there = await chrome.newContext();
    const other = await open_page(there, link);
    const {inquiry} = await kept(other);
    equal(
        'the ways to pay of the desk',
        JSON.stringify(inquiry.scenarios),
        JSON.stringify(first.scenarios),
    );
    equal("its score, which is nobody's", inquiry.score, first.score);
    const told = await other.textContent('.message');
    for (const words of ['ncome', 'debts', 'credit score', 'cash', `score of ${first.score}`])
        check(`the link says: ${words}`, told.includes(words), told);
    await view(other, 'Loans');
    await other.waitForSelector('.overview .row-price');
    equal('every way has its figures', await other.locator('.overview .refused').count(), 0);
    await there.close();
}

export async function a_damaged_link_or_code_leads_on({server, chrome}) {
    const home = {
        price_book: 'oxbarrow-meadow/pricebook.json',
        plan: 'teasel',
        elevation: 'orchard',
        lot: '7',
    };
    const whole = in_link({...home, selections: ['walk-out']});
    for (const [what, fragment] of [
        ['cut off', whole.slice(0, -9)],
        ['other letters', '#home=%%%'],
        ['nothing', '#home='],
        ['null', in_link(null)],
        ['a number for a list', in_link({...home, selections: 7})],
        ['a list of nothing', in_link({...home, selections: [null]})],
    ]) {
        const context = await chrome.newContext();
        const page = await open_page(context, server.url + fragment);
        check(
            `a link with ${what} is told`,
            (await page.textContent('.message')).includes('damaged or was cut off'),
        );
        check(`${what}: it leaves the address`, !page.url().includes('#'), page.url());
        equal(`${what}: no errors`, page.wrong.join(), '');
        await page.reload();
        await page.waitForSelector('.bar');
        await context.close();
    }
    const context = await chrome.newContext();
    const sold = in_link({...home, lot: '700', selections: ['fireplace', {option: 'gold-roof'}]});
    const page = await open_page(context, server.url + sold, '.way-on');
    const words = await page.textContent('.way-on');
    check('what has gone is told', words.includes('gold roof') && words.includes('lot 700'), words);
    await page.click('.way-on .main-button');
    await page.waitForSelector('.bar');
    check('and the rest goes on', (await selected(page)).includes('fireplace'));
    for (const code of ['%', '%E2%82%AC', '', 'a%20b']) {
        const coded = await open_page(await chrome.newContext(), `${server.url}#code=${code}`);
        check(`the code "${code}" is in nobody's way`, !coded.url().includes('code'), coded.url());
        await coded.context().close();
    }
    await context.close();
}

export async function a_code_that_is_wrong_is_told({server, context}) {
    await context.route('**/api/**', async (route) => {
        if (route.request().headers()['quoin-code'] === 'right') await route.continue();
        else await route.fulfill({status: 401, json: {problems: [{id: 'x', found: 'no code'}]}});
    });
    const page = await open_page(context, `${server.url}#code=%E2%82%AC%`, 'form input');
    await page.waitForSelector('.wrong');
    await page.fill('form input', 'wröng');
    await page.click('.main-button');
    await page.waitForSelector('.wrong');
    await page.fill('form input', 'right');
    await page.click('.main-button');
    await page.waitForSelector('.bar');
    await page.reload();
    await page.waitForSelector('.bar');
}

/// The same folder, its price book changed meanwhile.
function change_book(cases, change) {
    const file = join(cases.folder, 'oxbarrow-meadow/pricebook.json');
    const book = JSON.parse(readFileSync(file, 'utf8'));
    change(book);
    writeFileSync(file, JSON.stringify(book));
}

export async function a_price_book_that_moved_on({cases, context}) {
    const folder = mkdtempSync(join(tmpdir(), 'quoin-moved-'));
    cpSync(cases.folder, folder, {recursive: true});
    const mine = {folder, rates: join(folder, 'rates')};
    const before = await new Server(mine).start();
    const page = await open_page(context, before.url);
    const {inquiry} = await kept(page);
    const old = {
        price: await price(page),
        month: await page.textContent('.bar [data-figure="monthly.total"]'),
    };
    const restart = async (change) => {
        await server.stop();
        change_book(mine, change);
        server = await new Server(mine, before.port).start();
        await page.reload();
        await page.waitForSelector('.way-on');
        return (await page.textContent('.way-on')).replace(/\u00a0/g, ' ');
    };
    let server = before;
    const words = await restart((book) => {
        book.options = book.options.filter((one) => one.id !== 'charging-outlet');
        book.incentives.find((one) => one.id === 'winter-start').expires = '2026-11-20';
    });
    check(
        'what is sold no longer',
        words.includes('No longer sold: 240-volt charging outlet.'),
        words,
    );
    check(
        'an incentive that has ended, by name',
        words.includes('Winter start (only for contracts signed by November 20, 2026)'),
        words,
    );
    check('no ids', !/charging-outlet|winter-start/.test(words), words);
    const next = {
        ...inquiry,
        selections: inquiry.selections.filter((one) => one !== 'charging-outlet'),
        incentives: [],
    };
    const tour = ask(mine, 'tour', next);
    const cells = await page.$$eval('.before-after td', (all) => all.map((one) => one.textContent));
    const shown = new Set(cells.map((one) => bare(one)));
    for (const [name, amount] of [
        ['the old price', old.price],
        ['the old month', old.month],
        ['the new price', tour.contract_price],
        ['the new month', tour.scenario.monthly.total],
        ['the new cash', tour.scenario.cash.to_close],
    ])
        check(`${name} is told`, shown.has(bare(amount)), `${amount}: ${cells.join(' ')}`);
    check('its terms stand beside', /APR .* Not an approval/.test(words), words);
    await page.click('.view:has(.view-name:text-is("Loans"))');
    check('no view is blank', (await page.textContent('.main')).trim().length > 30);
    await page.click('.way-on .main-button:text-is("Leave them out and go on")');
    await page.waitForSelector('.bar');
    await settled(page);
    equal('the new price', bare(await price(page)), bare(tour.contract_price));
    equal('the rest stays', JSON.stringify((await kept(page)).inquiry), JSON.stringify(next));
    const ended = await restart((book) => {
        book.expires = '2026-11-22';
    });
    check(
        'prices that ended, by name',
        ended.includes('The prices of Oxbarrow Meadow ended on November 22, 2026'),
        ended,
    );
    equal('never dated back by itself', (await kept(page)).inquiry.as_of, '2026-11-24');
    await page.click('button:text-is("Open…")');
    check(
        'a new buyer is told too',
        (await page.textContent('.dialog')).includes('These prices ended on November 22, 2026'),
    );
    await page.keyboard.press('Escape');
    await server.stop();
    rmSync(folder, {recursive: true});
    equal('no errors in the page', page.wrong.join(), '');
}

export async function a_file_about_what_is_not_sold({server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry} = await kept(page);
    const file = {
        ...inquiry,
        buyer: 'From a file',
        selections: [...inquiry.selections, 'gold-roof'],
    };
    await page.click('button:text-is("Open…")');
    await page.setInputFiles('.file-button input', {
        name: 'buyer.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(file)),
    });
    await page.waitForSelector('.way-on');
    const words = await page.textContent('.way-on');
    check('it is named', words.includes('No longer sold: “gold roof”'), words);
    equal('no old total is made up', await page.locator('.before-after thead th').count(), 1);
    await page.click('.way-on .main-button:text-is("Leave it out and go on")');
    await page.waitForSelector('.bar');
    equal(
        'the rest',
        JSON.stringify((await kept(page)).inquiry),
        JSON.stringify({...inquiry, buyer: 'From a file'}),
    );
    await open_file(page, {...inquiry, price_book: 'other/pricebook.json'});
    check(
        'a price book that is not here: which are',
        (await page.textContent('.message')).includes('Price books here: Oxbarrow Meadow'),
        await page.textContent('.message'),
    );
}

export async function a_new_buyer_is_told_one_thing({server, context}) {
    const page = await open_page(context, server.url);
    check('an example is called one', (await page.textContent('.welcome')).includes('An example'));
    await page.click('button:text-is("Open…")');
    await page.click('.dialog .row-button:has-text("A new buyer")');
    await page.click('.new-buyer .main-button');
    await page.waitForSelector('.tab[aria-current]:text-is("New buyer")');
    await settled(page);
    const text = await page.textContent('body');
    check('nothing is called filled in', !text.includes('already filled in'));
    equal('one message', await page.locator('.message, .welcome').count(), 1);
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    check('nor later', !(await page.textContent('body')).includes('already filled in'));
    await page.click('.view:has(.view-name:text-is("Budget"))');
    await page.waitForSelector('.note:has-text("Type your income")');
    let budget = '';
    await in_every_part(page, async () => {
        budget += await page.textContent('.budget-page');
    });
    await open_part(page, 'later');
    await page.waitForSelector('[aria-labelledby="later"] .way');
    await open_part(page, 'afford');
    check(
        'an empty Budget speaks as people do',
        !/"(income|cash|monthly|debts)"|inquiry|expected:/.test(budget),
        /.{60}("(income|cash|monthly|debts)"|inquiry|expected:).{60}/.exec(budget)?.[0],
    );
    await page.getByLabel('Available cash', {exact: true}).fill('$90,000');
    await page.getByLabel('Available cash', {exact: true}).press('Enter');
    await page.waitForSelector('.allowed .big');
    await until(
        page,
        () => !document.querySelector('.budget-page').textContent.includes('Type your income or'),
    );
}

export async function a_name_as_long_as_can_be({cases, server, chrome}) {
    // No name of a file is longer: the engine refuses it.
    const long = (word) => `${word} ${'long-drawn-out '.repeat(8)}`.slice(0, 119) + 'n';
    const one_word = (word) => `${word}${'-'.padEnd(119, 'W')}`.slice(0, 119) + 'n';
    const folder = mkdtempSync(join(tmpdir(), 'quoin-long-'));
    cpSync(cases.folder, folder, {recursive: true});
    const mine = {folder, rates: join(folder, 'rates')};
    change_book(mine, (book) => {
        book.community.name = long('Meadow');
        book.plans.find((one) => one.id === 'teasel').name = one_word('Teasel');
        book.plans.find((one) => one.id === 'sorrel').name = long('Sorrel');
        book.incentives[0].name = long('Winter');
        book.incentives[1].name = one_word('Money');
        for (const [id, name] of [
            ['windows', long],
            ['fireplace', one_word],
        ]) {
            const option = book.options.find((one) => one.id === id);
            option.name = name(`Option ${id}`);
            if (option.levels) option.levels[0].name = name('Level');
        }
    });
    const there = await new Server(mine).start();
    for (const [width, height] of [
        [390, 844],
        [1440, 900],
    ]) {
        const context = await chrome.newContext({viewport: {width, height}});
        const page = await open_page(context, there.url);
        const {inquiry} = await kept(page);
        inquiry.scenarios[0].name = long('Way');
        inquiry.scenarios[1].name = one_word('Other');
        await open_file(page, {...inquiry, buyer: one_word('Buyer'), prepared_by: long('Desk')});
        for (const name of ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check']) {
            await view(page, name);
            const found = await page.evaluate(() => ({
                wide: document.documentElement.scrollWidth - innerWidth,
                longest: Math.max(
                    ...Array.from(
                        document.querySelectorAll('.top *, .main h3, .main h4, .row-title, .bar *'),
                        (one) => one.innerText?.length ?? 0,
                    ),
                ),
            }));
            const where = `${name} at ${width}`;
            check(`${where}: nothing runs out of the page`, found.wide <= 0, `${found.wide} px`);
            check(`${where}: names are cut`, found.longest < 1500, `${found.longest} letters`);
        }
        await view(page, 'Loans');
        const before = JSON.stringify((await kept(page)).inquiry);
        await page.locator('.overview-row .whole-name').first().click();
        const whole = await page.textContent('dialog[open] .whole-text');
        equal(`the whole name at ${width}`, whole, long('Way'));
        await page.keyboard.press('Escape');
        equal('to look is no touch', JSON.stringify((await kept(page)).inquiry), before);
        equal(`no errors at ${width}`, page.wrong.join(), '');
        await context.close();
    }
    await there.stop();
    rmSync(folder, {recursive: true});
}

export async function the_buyer_looks_on({server, context}) {
    const page = await open_page(context, server.url);
    await open_buyer(page, 'Buyer 4');
    const names = await page.$$eval('.tab', (all) => all.map((one) => one.textContent));
    check('several buyers are open', names.length > 1, names.join());
    const said = async () =>
        [await page.title(), await page.locator('body').innerText()].join('\n');
    check('at the desk their names stand there', (await said()).includes(names[0]));
    await page.click('button:text-is("This buyer…")');
    await page.click('.dialog button:has-text("Turn the screen")');
    for (const view_name of ['Tour', 'Loans', 'Budget', 'Site', 'Schedule']) {
        await view(page, view_name);
        await settled(page);
        const words = await said();
        check(
            `${view_name}: nobody's name`,
            names.every((one) => !words.includes(one)),
        );
        check(`${view_name}: nothing for the agent`, !words.includes('For the sales agent'));
        equal(
            `${view_name}: no rank`,
            (await page.locator('.wish-rank').allTextContents()).join(''),
            '',
        );
    }
    await page.reload();
    await page.waitForSelector('.bar');
    const after = await said();
    check(
        'nor after a reload',
        names.every((one) => !after.includes(one)),
    );
    equal('no list of names to open', await page.locator('.tab').count(), 0);
    await page.click('.turn-back');
    equal('back at the desk', await page.locator('.tab').count(), names.length);
}
