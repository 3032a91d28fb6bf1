// What a visitor does: put in, take out, step back, move, keep, share.
import {readFileSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';

import {
    ask,
    check,
    equal,
    exactly,
    kept,
    open_buyer,
    open_page,
    settled,
    touch,
    unfold,
    until,
    view,
    open_loan,
} from './support.mjs';

const option_ids = (inquiry) =>
    inquiry.selections.map((one) => (typeof one === 'string' ? one : one.option));

export async function a_first_visit({server, context}) {
    const began = Date.now();
    const page = await open_page(context, server.url);
    console.log(`  a filled example after ${Date.now() - began} ms`);
    const asked = await page.evaluate(() => window.counts.asked);
    equal(
        'a filled example is the answer to the second question',
        asked
            .slice(0, 2)
            .map((one) => one.split('?')[0])
            .join(),
        '/api/cases,/api/tour',
    );
    check('it says what to touch', (await page.textContent('.welcome')).includes('touch any line'));
    await page.click('.welcome button');
    await page.reload();
    await page.waitForSelector('.bar');
    equal('the welcome is said once', await page.locator('.welcome').count(), 0);
}

export async function put_in_take_out_step_back({server, context}) {
    const page = await open_page(context, server.url);
    const first = (await kept(page)).inquiry;
    const price = await page.textContent('.bar [data-figure="contract_price"]');
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    check('put in', option_ids((await kept(page)).inquiry).includes('windows'));
    check('the bar says what it was', (await page.textContent('.last')).includes('Triple pane'));
    await touch(page, 'Double pane, low-E');
    await settled(page);
    check(
        'taken out by the included level',
        !option_ids((await kept(page)).inquiry).includes('windows'),
    );
    equal(
        'the price is back',
        await page.textContent('.bar [data-figure="contract_price"]'),
        price,
    );
    await page.click('.steps .back');
    await settled(page);
    check('one step back', option_ids((await kept(page)).inquiry).includes('windows'));
    await page.click('.steps button:text-is("Redo")');
    await page.click('.steps .back');
    await page.click('.steps .back');
    await settled(page);
    equal('back at the start', JSON.stringify((await kept(page)).inquiry), JSON.stringify(first));
    equal('nothing further back', await page.isDisabled('.steps .back'), true);
}

export async function what_excludes_bites({server, context}) {
    const page = await open_page(context, server.url);
    const porch = page.locator('.row:has(.row-title:text-is("Screened porch, 14 x 14 ft"))');
    check(
        'says what it takes the place of',
        (await porch.textContent()).includes('replaces: Rear deck'),
    );
    await porch.locator('input').click();
    await settled(page);
    const ids = option_ids((await kept(page)).inquiry);
    check('the deck has gone', !ids.includes('deck'), ids.join());
    check('the bar says so', (await page.textContent('.last')).includes('replaced: Rear deck'));
    check(
        'what cannot be had is listed with its reason',
        (await page.textContent('.barred')).includes('only on elevation'),
    );
}

export async function choices_at_no_cost({server, context}) {
    const page = await open_page(context, server.url);
    const colors = page.locator('article[aria-label="Exterior colors"]');
    await colors.locator('.opener').click();
    const chosen = () => colors.locator('input:checked').count();
    equal('one is chosen', await chosen(), 1);
    await colors.locator('.row:has-text("Oat") input').click();
    await settled(page);
    const picks = (await kept(page)).inquiry.selections;
    equal(
        'the default can be taken',
        picks.find((one) => one.option === 'exterior-colors').choice,
        'oat',
    );
    equal('and it alone', await chosen(), 1);
    equal('at no cost', (await exactly(page, '.last-figures')).includes('$0.00'), true);
}

export async function another_lot_and_plan({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Site');
    check(
        'says beforehand what would fall out',
        (await page.textContent('.row:has(.row-title:text-is("Lot 12"))')).includes(
            'would be removed',
        ),
    );
    await page.locator('.row:has(.row-title:text-is("Lot 12")) input').click();
    await page.waitForSelector('.last-remarks');
    await settled(page);
    let now = (await kept(page)).inquiry;
    equal('the lot', now.lot, '12');
    check(
        'walk-out and deck fell out, the rest stayed',
        !option_ids(now).includes('walk-out') &&
            !option_ids(now).includes('deck') &&
            option_ids(now).includes('fireplace'),
        option_ids(now).join(),
    );
    const said = await page.textContent('.last-remarks');
    check(
        'the bar names them',
        said.includes('Rear deck') && said.includes('Walk-out basement'),
        said,
    );
    await page.click('.steps .back');
    await settled(page);
    now = (await kept(page)).inquiry;
    check('one step brings all of it back', now.lot === '7' && option_ids(now).includes('deck'));
    await page.locator('article[aria-label="Comfrey"] .row-label').first().click();
    await until(page, () => document.querySelector('.last')?.textContent.includes('Comfrey'));
    await settled(page);
    now = (await kept(page)).inquiry;
    equal('the plan', now.plan, 'comfrey');
    equal('no problems are left', await page.locator('.message.bad').count(), 0);
}

export async function a_lot_is_taken_on_the_map({cases, server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry, hand} = await kept(page);
    const answer = ask(cases, 'site', inquiry, ['--scenario', hand]);
    await view(page, 'Site');
    equal('every lot is on the map', await page.locator('.site-map .lot').count(), 12);
    const card = page.locator('.lot-card');
    check('at first the lot in hand', (await card.textContent()).includes('Lot 7'));
    const asked = await page.evaluate(() => window.counts.asked.length);
    await page.locator('.site-map .lot[data-lot="6"] .lot-line').click();
    await until(page, () => document.querySelector('.lot-card')?.textContent.includes('Lot 6'));
    const lot = answer.lots.find((one) => one.id === '6');
    const said = (await card.textContent()).replace(/\u00a0/g, ' ');
    for (const what of [lot.note, ...lot.measures.map((one) => one.words), 'daylight'])
        check(`the card says "${what}"`, said.includes(what), said);
    check('and what would fall out', said.includes('would be removed'), said);
    equal('looking asks nothing', await page.evaluate(() => window.counts.asked.length), asked);
    equal('nor takes it', (await kept(page)).inquiry.lot, '7');
    equal(
        'it is marked',
        await page.locator('.site-map .lot[aria-pressed="true"]').getAttribute('data-lot'),
        '6',
    );
    await card.locator('button:text-is("Take this lot")').click();
    await page.waitForSelector('.last-remarks');
    await settled(page);
    equal('taken', (await kept(page)).inquiry.lot, '6');
    equal(
        'and drawn so',
        await page.locator('.site-map .lot.chosen').getAttribute('data-lot'),
        '6',
    );
    equal('no button to take it again', await card.locator('button').count(), 0);
    await page.locator('.site-map .lot[data-lot="2"]').focus();
    await page.keyboard.press('Enter');
    await until(page, () => document.querySelector('.lot-card')?.textContent.includes('Lot 2'));
    check('a sold lot says so', (await card.textContent()).includes('sold'));
    equal('and cannot be taken', await card.locator('button').count(), 0);
    equal('nothing is refused', page.wrong.join('; '), '');
}

export async function buyers_side_by_side({server, context}) {
    const page = await open_page(context, server.url);
    await open_buyer(page, 'Buyer 4');
    equal('two tabs', await page.locator('.tab').count(), 2);
    equal('the other home', (await kept(page)).inquiry.plan, 'comfrey');
    await page.click('.tab >> nth=0');
    await settled(page);
    equal('back at the first', (await kept(page)).inquiry.plan, 'teasel');
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    await page.reload();
    await page.waitForSelector('.bar');
    equal('both are there after a reload', await page.locator('.tab').count(), 2);
    check('with what was touched', option_ids((await kept(page)).inquiry).includes('windows'));
}

export async function a_new_buyer_on_a_price_book({server, context}) {
    const page = await open_page(context, server.url);
    await page.click('button:text-is("Open…")');
    await page.click('.dialog .row-button:has-text("A new buyer")');
    await page.click('.new-buyer .main-button');
    await page.waitForSelector('.tab[aria-current]:text-is("New buyer")');
    await settled(page);
    check('what is assumed is said', (await page.textContent('.message')).includes('assumed'));
    const {inquiry} = await kept(page);
    equal('nothing is chosen', inquiry.selections, undefined);
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    equal('the first touch', option_ids((await kept(page)).inquiry).join(), 'windows');
}

export async function files({cases, server, context}) {
    const page = await open_page(context, server.url);
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    const inquiry = (await kept(page)).inquiry;
    await page.click('button:text-is("This buyer…")');
    const coming = page.waitForEvent('download');
    await page.click('.row-button:has-text("Save as a file")');
    const saved = await (await coming).path();
    equal(
        'the file is the inquiry',
        JSON.stringify(JSON.parse(readFileSync(saved, 'utf8'))),
        JSON.stringify(inquiry),
    );
    const file = join(cases.folder, 'opened.json');
    writeFileSync(
        file,
        JSON.stringify({
            ...inquiry,
            buyer: 'From a file',
            lot: '9',
            price_book: '../pricebook.json',
        }),
    );
    await page.click('button:text-is("Open…")');
    await page.setInputFiles('.file-button input', file);
    await page.waitForSelector('.tab:text-is("From a file")');
    await settled(page);
    equal('opened', (await kept(page)).inquiry.lot, '9');
    writeFileSync(file, 'no JSON');
    await page.click('button:text-is("Open…")');
    await page.setInputFiles('.file-button input', file);
    await page.waitForSelector('.message:has-text("not an inquiry file")');
}

export async function a_link_holds_nothing_private({server, context, chrome}) {
    await context.grantPermissions(['clipboard-read', 'clipboard-write'], {origin: server.url});
    const page = await open_page(context, server.url);
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    const {inquiry} = await kept(page);
    await page.click('button:text-is("This buyer…")');
    await page.click('.row-button:has-text("Copy a link")');
    await page.waitForSelector('.message:has-text("clipboard")');
    const link = await page.evaluate(() => navigator.clipboard.readText());
    const held = JSON.parse(Buffer.from(link.split('#home=')[1], 'base64url').toString());
    equal(
        'the link holds the home alone',
        Object.keys(held).sort().join(),
        'elevation,lot,plan,price_book,selections',
    );
    const there = await chrome.newContext();
    const other = await open_page(there, link);
    const opened = (await kept(other)).inquiry;
    equal(
        'the same selections',
        JSON.stringify(opened.selections),
        JSON.stringify(inquiry.selections),
    );
    check(
        'no income, debts or cash',
        !('income' in opened) && !('debts' in opened) && !('cash' in opened),
    );
    check('the link is gone from the address', !other.url().includes('#home'));
    await there.close();
}

export async function amounts_as_people_write_them({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    const down = (await open_loan(page)).getByLabel('Down payment', {exact: true});
    const written = async () => JSON.stringify((await kept(page)).inquiry.scenarios[0].down);
    const type = async (field, text) => {
        await field.fill(text);
        await field.press('Enter');
        await settled(page);
    };
    await type(down, '12.5%');
    equal('a percent with its sign', await written(), '{"percent":"12.5"}');
    await type(down, '$40,000');
    equal('dollars where a percent stood', await written(), '{"amount":"40000"}');
    await type(down, ' 10% ');
    equal('and a percent where dollars stood', await written(), '{"percent":"10"}');
    await type(down, '12,5');
    await page.waitForSelector('.loan .wrong');
    equal('a comma that groups nothing is no number', await down.inputValue(), '12,5');
    await type(down, '5');
    await view(page, 'Budget');
    await type(page.getByLabel('Gross monthly income', {exact: true}), '$ 9,950.50');
    equal('an income', (await kept(page)).inquiry.income.monthly, '9950.50');
    await page.click('.means-more > summary');
    await type(page.getByLabel('Months of payments to keep in reserve'), '2 months');
    equal('a number with its unit', (await kept(page)).asks.reserves, '2');
    await page.click('button:text-is("This buyer…")');
    await page.locator('.facts-form label:has-text("Available cash") input').fill('$121,500');
    await page.click('.dialog button:text-is("Use these")');
    await settled(page);
    equal('cash among the facts', (await kept(page)).inquiry.cash, '121500');
    await view(page, 'Tour');
    await page.click('.area-link:has(.dot) >> nth=0');
    const spend = page.locator('.allowance input');
    for (const area of await page.locator('.area-link').all()) {
        await area.click();
        await unfold(page);
        if ((await spend.count()) > 0) break;
    }
    await type(spend.first(), '$2,700');
    const picks = (await kept(page)).inquiry.selections;
    check(
        'an allowance',
        picks.some((one) => one.spend === '2700'),
        JSON.stringify(picks),
    );
}
