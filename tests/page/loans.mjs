// The Loans view: rows that say what sets each loan apart, held against the command line; one part
// open at a time, which stays under the hand and is kept; the way from the bar to a loan's fields.
import {
    ask,
    check,
    equal,
    exactly,
    kept,
    open_loan,
    open_page,
    open_part,
    reach,
    settled,
    take_loan,
    view,
} from './support.mjs';

const dollars = (amount) =>
    `$${Number(amount.replace('-', '')).toLocaleString('en-US', {minimumFractionDigits: 2})}`;
const way = (amount) => (amount.startsWith('-') ? 'less' : 'more');

/// What a row has to say of a loan, in the engine's figures and times.
function apart_of(one, answer) {
    if (one.terms.name === answer.apart_from) return ['marked above'];
    const {per_month, cash_needed} = one.against_shown;
    const order = answer.orders.find(({first, second}) =>
        [first, second].every((name) => [one.terms.name, answer.apart_from].includes(name)),
    );
    const its = order.first === one.terms.name ? 'first' : 'second';
    const cheaper = order.stretches.filter((each) => each.cheaper === its);
    const times =
        cheaper.length === 0
            ? ['never costs less']
            : order.stretches.length === 1
              ? ['always costs less']
              : cheaper.map((each) => each.when);
    return [
        `${dollars(per_month)} ${way(per_month)} a month`,
        `${dollars(cash_needed)} ${way(cash_needed)} cash`,
        ...times,
        ...(one.mortgage_insurance.whole_term ? ['mortgage insurance to the end'] : []),
    ];
}

export async function loans_say_what_sets_them_apart({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    const {inquiry} = await kept(page);
    for (const name of inquiry.scenarios.map((one) => one.name)) {
        if ((await kept(page)).hand !== name) await take_loan(page, name);
        await settled(page);
        const answer = ask(cases, 'compare', inquiry, ['--scenario', name]);
        for (const [i, one] of answer.scenarios.entries()) {
            const words = await exactly(page, `#loan-${i}`);
            for (const each of apart_of(one, answer))
                check(`${one.terms.name} beside ${name}: ${each}`, words.includes(each), words);
        }
    }
    equal('no errors in the page', page.wrong.join(), '');
}

export async function one_loan_is_open_under_the_hand({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    const opener = (i) => page.locator(`#loan-${i} > button`);
    equal('all closed at first', await page.locator('.loan').count(), 0);
    for (const i of [0, 3, 5, 1]) {
        await opener(i).scrollIntoViewIfNeeded();
        const before = await opener(i).boundingBox();
        check(`loan ${i}: high enough to touch`, before.height >= 44, before.height);
        await opener(i).click();
        await page.waitForSelector(`#loan-${i} > [aria-expanded="true"]`);
        await settled(page);
        const after = await opener(i).boundingBox();
        check(`loan ${i}: it stays where it is`, Math.abs(after.y - before.y) <= 2, after.y);
        equal(`loan ${i}: alone`, await page.locator('.loan').count(), 1);
    }
    await opener(1).click();
    equal('closed again', await page.locator('.loan').count(), 0);
    await page.click('.add-loan');
    await settled(page);
    const added = (await kept(page)).inquiry.scenarios.length - 1;
    equal('one that is added is open', await opener(added).getAttribute('aria-expanded'), 'true');
}

export async function the_bar_leads_to_the_fields_of_its_loan({server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry} = await kept(page);
    await take_loan(page, inquiry.scenarios[2].name);
    await page.click('.choose-loan');
    await page.click('.dialog button:text-is("Change this loan…")');
    await page.waitForSelector('#loan-2 > [aria-expanded="true"]');
    await settled(page);
    check('its fields are there', await page.getByLabel('Down payment', {exact: true}).isVisible());
    equal('and no other', await page.locator('.loan').count(), 1);
    const focus = await page.evaluate(() => document.activeElement.parentElement.id);
    equal('the keys are at its row', focus, 'loan-2');
    const {y} = await page.locator('#loan-2').boundingBox();
    const {height} = page.viewportSize();
    check('in sight', y >= 0 && y < height / 2, y);
}

export async function the_open_part_is_kept({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_part(page, 'wishes');
    await view(page, 'Loans');
    await open_loan(page, 4);
    await view(page, 'Tour');
    await page.click('.view:has(.view-name:text-is("Budget"))');
    await page.waitForSelector('#wishes > [aria-expanded="true"]');
    equal('one part', await page.locator('.main .fold-opener[aria-expanded="true"]').count(), 1);
    await page.click('.view:has(.view-name:text-is("Loans"))');
    await page.waitForSelector('#loan-4 > [aria-expanded="true"]');
}

export async function a_loan_is_opened_by_key({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await reach(page, '#loan-3 > button', 'a loan');
    await page.keyboard.press('Enter');
    await reach(page, '.loan select', 'a field of it');
    await reach(page, '#years > button', 'the years');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.plot');
    equal('the loan is closed', await page.locator('.loan').count(), 0);
}
