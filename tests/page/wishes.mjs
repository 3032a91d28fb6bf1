// The wishes: on the list from the tour and from the Budget view, the choice that fits held against
// the command line, put into the home and taken back.
import {
    all_known,
    ask,
    bare,
    check,
    equal,
    kept,
    paints_soon,
    numbers_in,
    open_file,
    open_page,
    Server,
    settled,
    until,
    view,
    walk,
    open_part,
} from './support.mjs';

const field = (page, name) => page.getByLabel(name, {exact: true});

async function type(page, name, value) {
    await field(page, name).fill(value);
    await field(page, name).press('Enter');
}

/// The part with what fits, and in it the list that it is chosen from.
async function open_list(page) {
    await open_part(page, 'wishes');
    const closed = page.locator('details:not([open]) > summary:text-is("Change the wish list")');
    if (await closed.count()) await closed.click();
    await settled(page);
}

const wishes = async (page) => (await kept(page)).inquiry.wishes.map((one) => one.option);

const fit_options = (hand, monthly, cash, lots) => [
    '--monthly',
    monthly,
    '--cash',
    cash,
    '--scenario',
    hand,
    ...(lots ? ['--lots'] : []),
];

/// The answer of the command line for what stands on the page, once the page shows it.
async function fits(page, cases, monthly, cash, lots = false) {
    const {inquiry, hand} = await kept(page);
    const answer = ask(cases, 'fit', inquiry, fit_options(hand, monthly, cash, lots));
    const one = answer.scenarios[0];
    const home = one.homes.find((each) => each.lot === one.best_lot);
    await until(
        page,
        (price) => document.querySelector('.fit')?.textContent.replace(/[$,]/g, '').includes(price),
        home.price,
    );
    return {answer, home, inquiry};
}

export async function wishes_that_fit({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    for (const [monthly, cash, lots] of [
        ['4150', '60000', false],
        ['4150', '28000', true],
        ['3600', '60000', false],
        ['9000', '200000', false],
    ]) {
        const where = `${monthly} a month, ${cash}${lots ? ', every lot' : ''}`;
        await type(page, 'Monthly payment, at most', monthly);
        await type(page, 'Cash needed, at most', cash);
        if (
            lots !==
            (await page.getByLabel('On every available lot that the plan fits').isChecked())
        ) {
            await page.getByLabel('On every available lot that the plan fits').click();
        }
        const {answer, home} = await fits(page, cases, monthly, cash, lots);
        await all_known(page, '.fit', numbers_in(answer), where);
        const shown = await page.$$eval('.fit section:first-child .fit-list .row-title', (all) =>
            all.map((one) => one.textContent),
        );
        equal(
            `${where}: what fits`,
            shown.slice(0, home.chosen.length).join('; '),
            home.chosen.map((one) => one.name + (one.level ? `: ${one.level}` : '')).join('; '),
        );
        const text = await page.textContent('.fit');
        for (const left of home.left_out) {
            check(`${where}: ${left.wish.name} is told`, text.includes(left.wish.name));
        }
        check(`${where}: proven`, home.proven, JSON.stringify(home.most_worth));
        check(
            `${where}: how sure`,
            text.includes(home.fits ? 'Proven: no other choice is worth more' : 'Nothing fits'),
            text.slice(0, 200),
        );
    }
}

export async function wishes_are_put_in_and_taken_back({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    await type(page, 'Monthly payment, at most', '4150');
    await type(page, 'Cash needed, at most', '60000');
    const before = (await kept(page)).inquiry;
    const {home} = await fits(page, cases, '4150', '60000');
    await page.click('button:text-is("Add these to the home")');
    await until(
        page,
        (price) =>
            document
                .querySelector('[data-figure="contract_price"]')
                ?.textContent.replace(/[$,]/g, '') === price,
        home.price,
    );
    const after = (await kept(page)).inquiry;
    const picked = after.selections.map((one) => (typeof one === 'string' ? one : one.option));
    for (const one of home.chosen) {
        check(`${one.name} is in the home`, picked.includes(one.id.split(':')[0]));
    }
    equal(
        'the month is the one that was told',
        bare(await page.textContent('.bar [data-figure="monthly.total"]')),
        bare(home.scenario.monthly.total),
    );
    await page.click('.steps .back');
    await settled(page);
    equal('taken back', JSON.stringify((await kept(page)).inquiry), JSON.stringify(before));
}

export async function wishes_are_changed({server, context}) {
    const page = await open_page(context, server.url);
    const first = await wishes(page);
    const card = page.locator('.option[aria-label="Lawn irrigation"]');
    await walk(page, 'Yard and driveway');
    await card.locator('.opener').click();
    await card.locator('.wish-button').click();
    await settled(page);
    equal('from the tour', (await wishes(page)).join(), [...first, 'irrigation'].join());
    await view(page, 'Budget');
    await open_list(page);
    await field(page, 'Lawn irrigation: higher on the list').click();
    await settled(page);
    equal('higher', (await wishes(page)).at(-2), 'irrigation');
    await page.locator('.wish:has-text("Lawn irrigation") .tick-box input').click();
    await settled(page);
    const now = (await kept(page)).inquiry.wishes;
    equal('must have', now.find((one) => one.option === 'irrigation').must, true);
    equal('ranks run from one', now.map((one) => one.rank).join(), now.map((_, i) => i + 1).join());
    await type(page, 'Worth: Lawn irrigation', 'much');
    await until(page, () => document.querySelector('.wish .wrong') !== null);
    check(
        'a worth that is none is told',
        (await page.textContent('.wish .wrong')).includes('much'),
        await page.textContent('.wish .wrong'),
    );
    await type(page, 'Worth: Lawn irrigation', '7.5');
    await until(page, () => document.querySelector('.wish .wrong') === null);
    await field(page, 'Remove: Lawn irrigation').click();
    await settled(page);
    equal('off the list', (await wishes(page)).join(), first.join());
    for (let left = (await wishes(page)).length; left > 0; --left) {
        await page.locator('.wish button[aria-label^="Remove: "]').first().click();
        await settled(page);
    }
    check(
        'an empty list says what to do',
        (await page.textContent('.budget-page')).includes('No wishes yet'),
    );
    await page.click('button:text-is("Add to the wish list")');
    await settled(page);
    equal('added here', (await wishes(page)).length, 1);
}

export async function wishes_by_key({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    const first = await wishes(page);
    await page.locator('.wish-moves button[aria-label$="lower on the list"]').first().focus();
    await page.keyboard.press('Enter');
    await settled(page);
    equal('moved by key', (await wishes(page)).slice(0, 2).join(), [first[1], first[0]].join());
    const focus = await page.evaluate(() => document.activeElement.getAttribute('aria-label'));
    check('the focus goes with the wish', focus?.endsWith('lower on the list'), focus);
    await page.keyboard.press('Enter');
    await settled(page);
    equal('and again', (await wishes(page))[2], first[0]);
}

export async function wishes_keep_shared_ranks_and_quantities({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    const ranks = async () => (await kept(page)).inquiry.wishes.map((one) => one.rank).join();
    const before = await ranks();
    await page.locator('.wish .tick-box input').first().click();
    await settled(page);
    equal('a must-have changes no rank', await ranks(), before);
    await page.selectOption('.wish-add select', 'garage-opener');
    await page.click('button:text-is("Add to the wish list")');
    await settled(page);
    await type(page, 'Quantity: Garage door opener', '2');
    await settled(page);
    equal('its quantity', (await kept(page)).inquiry.wishes.at(-1).quantity, '2');
    await type(page, 'Quantity: Garage door opener', '99');
    await until(page, () => document.querySelector('.wish .wrong') !== null);
    check(
        'more than there can be is told',
        (await page.textContent('.wish .wrong')).includes('99'),
        await page.textContent('.wish .wrong'),
    );
}

export async function wishes_out_of_order_in_their_file({server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry} = await kept(page);
    const written = [...inquiry.wishes].reverse();
    await open_file(page, {...inquiry, wishes: written});
    await view(page, 'Budget');
    await open_list(page);
    const names = await page.$$eval('.wish .step[aria-label$=": higher on the list"]', (all) =>
        all.map((one) => one.getAttribute('aria-label').replace(': higher on the list', '')),
    );
    equal('the first wish stands first', await page.textContent('.wish-rank'), '1');
    for (const at of [0, 1, names.length - 1]) {
        await type(page, `Worth: ${names[at]}`, 'much');
        await until(page, () => document.querySelector('.wish .wrong') !== null);
        const told = await page.$$eval('.wish', (all) =>
            all.map((one, i) => (one.querySelector('.wrong') ? i : -1)).filter((i) => i >= 0),
        );
        equal(`the message is beside ${names[at]}`, told.join(), `${at}`);
        await type(page, `Worth: ${names[at]}`, '');
        await until(page, () => document.querySelector('.wish .wrong') === null);
    }
    equal(
        'the file keeps its order',
        JSON.stringify((await kept(page)).inquiry.wishes),
        JSON.stringify(written),
    );
    await field(page, `Remove: ${names[1]}`).click();
    await settled(page);
    equal(
        'the one that is taken off is the one that was pressed',
        (await wishes(page)).join(),
        written
            .filter((one) => one.rank !== inquiry.wishes[1].rank)
            .map((one) => one.option)
            .join(),
    );
}

const gone = '.message.bad:has-text("does not answer")';

export async function wishes_while_the_program_is_away({cases, context}) {
    const server = await new Server(cases).start();
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    await type(page, 'Monthly payment, at most', '4150');
    await type(page, 'Cash needed, at most', '60000');
    const {home: before} = await fits(page, cases, '4150', '60000');
    await server.stop();
    const names = await page.$$eval('.wish button[aria-label^="Remove: "]', (all) =>
        all.map((one) => one.getAttribute('aria-label').slice('Remove: '.length)),
    );
    await type(page, `Worth: ${names[4]}`, '40');
    await page.waitForSelector(gone);
    await page.locator('.wish .tick-box input').nth(4).click();
    await field(page, `${names[0]}: lower on the list`).click();
    await page.selectOption('.wish-add select', 'irrigation');
    await page.click('button:text-is("Add to the wish list")');
    await field(page, `Remove: ${names[5]}`).click();
    equal('what was typed stays', await field(page, `Worth: ${names[4]}`).inputValue(), '40');
    const typed = (await kept(page)).inquiry.wishes;
    equal('it is kept', [typed[4].weight, typed[4].must].join(), '40,true');
    equal('so are the order, the new and the old', typed.length, names.length);
    check('the answer of before is still there', (await page.textContent('.fit')).length > 100);
    const again = await new Server(cases, server.port).start();
    await page.waitForSelector(gone, {state: 'detached'});
    const {home} = await fits(page, cases, '4150', '60000');
    check('which is another answer', home.price !== before.price, home.price);
    await again.stop();
}

export async function limits_of_wishes_while_the_program_is_away({cases, context}) {
    const server = await new Server(cases).start();
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    await type(page, 'Cash needed, at most', '60000');
    await type(page, 'Monthly payment, at most', '4150');
    const {home: before} = await fits(page, cases, '4150', '60000');
    await server.stop();
    await type(page, 'Monthly payment, at most', '4300'); // asks about nothing but the wishes
    await page.waitForSelector(gone);
    equal('it stays as typed', await field(page, 'Monthly payment, at most').inputValue(), '4300');
    const again = await new Server(cases, server.port).start();
    await page.waitForSelector(gone, {state: 'detached'});
    const {home} = await fits(page, cases, '4300', '60000');
    check('which is another answer', home.price !== before.price, home.price);
    await again.stop();
}

/// Which bit of a Gray code changes with its nth step: every step leads to a list never seen.
function bit_of(step) {
    let bit = 0;
    while ((step >> bit) % 2 === 0) bit += 1;
    return bit;
}

export async function from_a_touch_of_a_wish_to_what_fits({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    await page.selectOption('.wish-add select', 'irrigation');
    await page.click('button:text-is("Add to the wish list")');
    await settled(page);
    await type(page, 'Monthly payment, at most', '4300');
    await type(page, 'Cash needed, at most', '60000');
    await fits(page, cases, '4300', '60000');
    await paints_soon(page, 'a touch of a wish to the painted choice', (i) => ({
        element: '.wish .tick-box input',
        at: bit_of(i + 1),
        figure: '.fit',
    }));
}

/// The home's own month and cash let nothing more in: the limits begin where a wish fits, and say so.
export async function wishes_begin_at_limits_where_one_fits({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_list(page);
    const {inquiry, hand} = await kept(page);
    const {scenario} = ask(cases, 'tour', inquiry, ['--scenario', hand]);
    const own = [scenario.monthly.total, inquiry.cash];
    const first = ask(cases, 'fit', inquiry, fit_options(hand, ...own)).scenarios[0].homes[0];
    equal('nothing fits within its own', first.chosen.length, 0);
    const {limit_monthly, limit_cash} = first.next;
    await until(
        page,
        (limit) =>
            document.querySelector('[aria-label="Monthly payment, at most"]').value === limit,
        limit_monthly,
    );
    equal('the cash', await field(page, 'Cash needed, at most').inputValue(), limit_cash);
    const {home} = await fits(page, cases, limit_monthly, limit_cash);
    check('one fits at least', home.chosen.length >= 1, home.chosen.length);
    const words = (await page.textContent('[aria-labelledby="wishes"]')).replace(/\u00a0/g, ' ');
    check('it says so', words.includes('The limits begin'), words);
    check('and what raised them', words.includes(`${first.next.wish.name}:`), words);
    await type(page, 'Monthly payment, at most', '9000');
    await fits(page, cases, '9000', limit_cash);
    equal('the other stays', await field(page, 'Cash needed, at most').inputValue(), limit_cash);
}
