// What another lot, plan or loan changes is said where it is touched, and names follow the figures.
import {
    ask,
    bare,
    check,
    equal,
    exactly,
    kept,
    open_page,
    settled,
    take_loan,
    unfold,
    until,
    view,
    walk,
    words_of,
    open_loan,
} from './support.mjs';

const plain_spaces = (text) => text.replace(/\u00a0/g, ' ');
const last = (page) => exactly(page, '.last');
const amount = (text) =>
    text.replace(/^(-?)(\d+)/, (_, minus, whole) => {
        const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
        return `${minus ? '\u2212' : '+'}$${grouped}`;
    });

export async function a_lot_says_what_it_changes({cases, server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry, hand} = await kept(page);
    const answer = ask(cases, 'site', inquiry, ['--scenario', hand]);
    const lot = answer.lots.find((one) => one.id === '12');
    await view(page, 'Site');
    const row = page.locator('.row:has(.row-title:text-is("Lot 12"))');
    const beside = plain_spaces(await row.textContent());
    check(
        'the month is said before the touch',
        beside.includes(amount(lot.move.per_month)),
        `${amount(lot.move.per_month)} is not in ${beside}`,
    );
    await row.locator('input').click();
    await page.waitForSelector('.last-remarks');
    await settled(page);
    const said = await last(page);
    for (const figure of ['per_month', 'cash_needed']) {
        check(`${figure} in the bar`, said.includes(amount(lot.move[figure])), said);
    }
    const deck = lot.falls_out.find((one) => one.option === 'deck');
    check(
        'the bar says why the deck is left behind',
        said.includes(`${deck.name} (${deck.why})`) && !said.includes('an option of this plan'),
        said,
    );
    const tour = ask(cases, 'tour', (await kept(page)).inquiry, ['--scenario', hand]);
    equal(
        'the month is what was said',
        bare(await page.textContent('.bar [data-figure="monthly.total"]')),
        bare(tour.scenario.monthly.total),
    );
}

const card = (page) => page.locator('.loan');

export async function a_loan_says_what_it_changes({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_loan(page);
    const before = (await kept(page)).inquiry;
    const down = card(page).locator('input[aria-label="Down payment"]');
    await down.fill('10');
    await down.press('Enter');
    await until(page, () => document.querySelector('.last-figures') !== null);
    await settled(page);
    const {inquiry, hand} = await kept(page);
    const [old] = before.scenarios;
    const [now] = inquiry.scenarios;
    equal('the name follows the down payment', now.name, 'Conventional, 10% down, 30 years');
    equal('and stays in hand', hand, now.name);
    const compared = ask(cases, 'compare', {
        ...inquiry,
        scenarios: [
            {...old, name: 'a'},
            {...now, name: 'b'},
        ],
    });
    const difference = compared.scenarios[1].against_first;
    const said = await last(page);
    for (const figure of ['per_month', 'cash_needed']) {
        check(`${figure} in the bar`, said.includes(amount(difference[figure])), said);
    }
    await view(page, 'Sheet');
    const paper = await words_of(page, '.paper');
    check('the sheet says ten', paper.includes('Conventional, 10% down, 30 years'));
    check('and five nowhere', !paper.includes('Conventional, 5% down'));
    await page.click('.steps .back');
    await settled(page);
    const back = await kept(page);
    equal('the name goes back with it', back.inquiry.scenarios[0].name, old.name);
    equal('in hand as before', back.hand, old.name);
}

export async function a_written_name_stays({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_loan(page);
    await card(page).locator('.loan-terms summary').click();
    const name = card(page).locator('input[aria-label="Name"]');
    await name.fill('The way we like');
    await name.press('Enter');
    await settled(page);
    const down = card(page).locator('input[aria-label="Down payment"]');
    await down.fill('15');
    await down.press('Enter');
    await until(page, () => document.querySelector('.last-figures') !== null);
    equal('what a person wrote', (await kept(page)).inquiry.scenarios[0].name, 'The way we like');
}

export async function another_loan_in_hand_says_the_difference({cases, server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry} = await kept(page);
    const [first, second] = inquiry.scenarios;
    await take_loan(page, second.name);
    await until(page, () => document.querySelector('.last-figures') !== null);
    const compared = ask(cases, 'compare', {...inquiry, scenarios: [first, second]});
    const {per_month} = compared.scenarios[1].against_first;
    check('the month', (await last(page)).includes(amount(per_month)), await last(page));
}

export async function levels_say_differences({cases, server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry, hand} = await kept(page);
    const tour = ask(cases, 'tour', inquiry, ['--scenario', hand]);
    let seen = 0;
    for (const area of tour.areas) {
        await walk(page, area.name);
        for (const option of area.options.filter((one) => one.kind === 'levels')) {
            const article = page.locator(`article[aria-label="${option.name}"]`);
            if ((await article.count()) === 0) continue; // none of it goes with this home
            await article.locator('.opener').click();
            const on = await article.locator('.row.on').count();
            check(`${option.name}: one level at most looks chosen`, on <= 1, `${on}`);
            for (const form of option.forms) {
                if (!form.touch || form.state === 'chosen') continue;
                const row = article.locator(`.row:has(.row-title:text-is("${form.name}"))`);
                const price = bare(await row.locator('.row-price').textContent());
                equal(
                    `${option.name}, ${form.name}: the price is the difference`,
                    price.replace(/^\+/, '').replace('\u2212', '-'),
                    bare(form.touch.price),
                );
                seen += 1;
            }
        }
    }
    check('levels to compare', seen > 10, `${seen}`);
    const kitchen = tour.areas.find((area) => area.id === 'kitchen');
    const {name} = kitchen.options.find((one) => one.id === 'kitchen-counters');
    await walk(page, kitchen.name);
    const counters = page.locator(`article[aria-label="${name}"]`);
    await unfold(page);
    await counters.locator('.row:not(.on) input:not([disabled])').last().click();
    await settled(page);
    equal('over a package one level looks chosen', await counters.locator('.row.on').count(), 1);
}

export async function the_answer_to_a_touch_is_whole({server, chrome}) {
    for (const [width, height] of [
        [1180, 820],
        [820, 1180],
        [1024, 768],
        [1440, 900],
        [390, 844],
    ]) {
        const context = await chrome.newContext({viewport: {width, height}, hasTouch: true});
        const page = await open_page(context, server.url);
        const row = page.locator(
            '.row:has(.row-title:text-is("Screened porch, 14 x 14 ft")) input',
        );
        await row.click();
        await settled(page);
        const cut = await page.evaluate(() => {
            const box = document.querySelector('.last').getBoundingClientRect();
            const figures = document.querySelector('.last-month').getBoundingClientRect();
            const bar = document.querySelector('.bar').getBoundingClientRect();
            const out = Array.from(document.querySelectorAll('.steps button')).filter((one) => {
                const at = one.getBoundingClientRect();
                // Where there is no room for it, it is in the dialog of the loan, or beside the tour.
                if (at.width === 0) return !one.matches('.again, .choose-loan, .open-areas');
                return at.right > innerWidth || at.bottom > bar.bottom || at.top < bar.top;
            });
            return {
                figures: figures.bottom <= box.bottom + 1 && figures.top >= box.top - 1,
                out: out.map((one) => one.textContent).join(),
                bar: bar.height / innerHeight,
            };
        });
        check(`at ${width} x ${height} the month of a touch is in sight`, cut.figures);
        equal(`at ${width} x ${height} Undo and Redo are in the bar`, cut.out, '');
        check(`at ${width} x ${height} the bar leaves room`, cut.bar < 0.34, `${cut.bar}`);
        await context.close();
    }
}
