// Every figure on the page is one that the command line gives for the same inquiry.
import {readFileSync} from 'node:fs';

import {
    all_known,
    ask,
    bare,
    check,
    control,
    equal,
    kept,
    numbers_in,
    open_buyer,
    open_page,
    rate_shown,
    settled,
    take_loan,
    unfold,
    until,
    view,
    walk,
    words_of,
    open_loan,
    open_part,
    in_every_part,
} from './support.mjs';

/// All that the command line says about an inquiry, as a set of numbers.
function known_numbers(cases, inquiry, hand, extra) {
    const one = ['--scenario', hand];
    const known = new Set(['0']);
    for (const [question, options] of [
        ['tour', one],
        ['quote', []],
        ['compare', one],
        ['cash', one],
        ['site', []],
        ['programs', []],
        ['recheck', one],
        ['shift', one],
        ['schedule', extra ? [...one, '--extra', extra] : one],
    ]) {
        numbers_in(ask(cases, question, inquiry, options), known);
    }
    return known;
}

const plain_spaces = (text) => text.replace(/\u00a0/g, ' ');

async function bar_is(page, cases, name) {
    await settled(page);
    const {inquiry, hand} = await kept(page);
    const tour = ask(cases, 'tour', inquiry, ['--scenario', hand]);
    const shown = async (figure) => bare(await page.textContent(`.bar [data-figure="${figure}"]`));
    equal(`${name}: contract price`, await shown('contract_price'), bare(tour.contract_price));
    equal(`${name}: month`, await shown('monthly.total'), bare(tour.scenario.monthly.total));
    equal(`${name}: cash needed`, await shown('cash.needed'), bare(tour.scenario.cash.needed));
    const back = tour.scenario.cash.to_close.startsWith('-');
    equal(
        `${name}: cash to close`,
        `${(await page.textContent('.bar .closing')).replace(/[\s\u00a0]*\$.*/, '')} ${await shown('cash.to_close')}`,
        `${back ? 'Cash back at closing' : 'Cash to close'} ${bare(tour.scenario.cash.to_close).replace('-', '')}`,
    );
    const terms = plain_spaces(await page.textContent('.bar .terms'));
    for (const [what, text] of [
        ['rate', rate_shown(tour.scenario.terms.rate)],
        ['APR', `APR ${rate_shown(tour.scenario.terms.apr)}`],
        ['down payment', `(${tour.scenario.terms.down_percent}%)`],
        ['what is in it', 'taxes and insurance included'],
        ['not an offer', 'not an approval or an offer to lend'],
    ]) {
        check(
            `${name}: ${what} beside the month`,
            terms.includes(text),
            `${text} is not in "${terms}"`,
        );
    }
    return {inquiry, hand, tour};
}

/// The parts of each view that tell a payment or a rate, with what opens them.
const told = {
    Loans: [['.overview'], ['.loan', 'loan-0'], ['.rate-moves', 'rates']],
    Budget: [
        ['.allowed', 'afford'],
        ['.reach', 'afford'],
        ['.fit', 'wishes'],
        ['[aria-labelledby="builders-money"]', 'builders-money'],
        ['[aria-labelledby="later"]', 'later'],
    ],
    Schedule: [['.main .home-line']],
    Sheet: [['.paper']],
    Check: [['.main .home-line']],
};

export async function an_estimate_says_so_beside_every_payment({server, context}) {
    const page = await open_page(context, server.url);
    for (const [name, parts] of Object.entries(told)) {
        await view(page, name);
        for (const [part, opener] of parts) {
            if (opener) await open_part(page, opener);
            await until(
                page,
                (where) => {
                    const place = document.querySelector(where);
                    return /\$\d/.test((place?.shadowRoot ?? place)?.textContent ?? '');
                },
                part,
            );
            const words = (await words_of(page, part)).toLowerCase();
            for (const beside of [
                'estimate as of november 24, 2026',
                'rates of november 20, 2026',
                /not (a loan estimate, )?an approval or an offer to lend/,
                'apr',
                'years',
                /down( payment|, |\s\()/,
            ])
                check(
                    `${name}, ${part}: ${beside} stands there`,
                    beside instanceof RegExp ? beside.test(words) : words.includes(beside),
                    words.slice(0, 300),
                );
        }
    }
}

export async function figures_of_every_view({cases, server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry, hand, tour} = await bar_is(page, cases, 'first sight');
    const known = known_numbers(cases, inquiry, hand);
    let seen = 0;
    for (const area of tour.areas) {
        await walk(page, area.name);
        seen += await all_known(page, '.area', known, `tour, ${area.name}`);
    }
    for (const name of ['Loans', 'Site', 'Schedule', 'Sheet', 'Check']) {
        await view(page, name);
        await in_every_part(page, async (part) => {
            seen += await all_known(page, '.main', known, `${name.toLowerCase()}, ${part}`);
        });
        for (const details of await page.$$('details:not([open]) > summary')) await details.click();
        if (name === 'Schedule')
            for (const year of (await page.$$('.year-button')).slice(0, 3)) await year.click();
        seen += await all_known(page, '.main', known, name.toLowerCase());
    }
    console.log(`  ${seen} figures held against the command line`);
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function figures_after_touches({cases, server, context}) {
    const page = await open_page(context, server.url);
    for (const [area, option] of [
        ['Outside and structure', 'Triple pane, low-E'],
        ['Kitchen', null],
        ['Basement', null],
        ['Heating, energy and wiring', null],
    ]) {
        await walk(page, area);
        const row = option
            ? await control(page, option)
            : page.locator('.option.upgrade .row:not(.on):not(.fixed) input').first();
        if ((await row.count()) === 0) continue;
        const before = await kept(page);
        await row.click();
        const {inquiry, hand} = await bar_is(page, cases, `after a touch in ${area}`);
        check(
            `a touch in ${area} changed the inquiry`,
            JSON.stringify(inquiry.selections) !== JSON.stringify(before.inquiry.selections),
        );
        const was = ask(cases, 'tour', before.inquiry, ['--scenario', hand]);
        await all_known(
            page,
            '.last-figures',
            numbers_in(was),
            `what the touch in ${area} changed`,
        );
    }
    await walk(page, 'Great room and dining');
    await unfold(page);
    const more = page.locator('.stepper button:text-is("+")').first();
    const before = await kept(page);
    await more.click();
    await page.waitForSelector('.last-figures');
    const {inquiry, hand} = await bar_is(page, cases, 'one more of it');
    const changed = inquiry.selections.find(
        (one, i) => JSON.stringify(one) !== JSON.stringify(before.inquiry.selections[i]),
    );
    const scenario = before.inquiry.scenarios.find((one) => one.name === hand);
    const adds = ask(cases, 'adds', {...before.inquiry, scenarios: [scenario]}, [
        `${changed.option}=${changed.quantity}`,
    ]);
    await all_known(page, '.last-figures', numbers_in(adds.items), 'what one more of it changed');
}

export async function figures_under_other_loans({cases, server, context}) {
    const page = await open_page(context, server.url);
    const {inquiry} = await kept(page);
    for (const scenario of inquiry.scenarios) {
        await take_loan(page, scenario.name);
        await bar_is(page, cases, scenario.name);
    }
    await view(page, 'Loans');
    const card = await open_loan(page);
    await card.getByLabel('Down payment', {exact: true}).fill('12.5');
    await card.getByLabel('Down payment', {exact: true}).press('Enter');
    await settled(page);
    await card.getByLabel('Interest rate', {exact: true}).selectOption({index: 4});
    await settled(page);
    await card.locator('.loan-terms summary').click();
    await card.getByLabel('Temporary buydown').selectOption('2-1');
    await settled(page);
    const now = await kept(page);
    equal('the down payment is in the inquiry', now.inquiry.scenarios[0].down.percent, '12.5');
    equal('the buydown is in the inquiry', now.inquiry.scenarios[0].buydown, '2-1');
    await all_known(page, '.loan', known_numbers(cases, now.inquiry, now.hand), 'the edited loan');
    await card.getByLabel('Down payment given as').selectOption('amount');
    await settled(page);
    await card.getByLabel('Program').selectOption('fha');
    await settled(page);
    await page.click('.add-loan');
    await settled(page);
    equal(
        'another loan',
        (await kept(page)).inquiry.scenarios.length,
        inquiry.scenarios.length + 1,
    );
    await bar_is(page, cases, 'after editing loans');
}

export async function every_figure_with_its_ground({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Check');
    const {inquiry, hand} = await kept(page);
    const recheck = ask(cases, 'recheck', inquiry, ['--scenario', hand]);
    const open = page.locator('.checked');
    equal('no section is open at first', await open.count(), 0);
    let shown = 0;
    for (const opener of await page.locator('.check-section .fold-opener').all()) {
        await opener.click();
        shown += await open.count();
        equal(
            'one at a time',
            await page.locator('.check-section .fold-opener[aria-expanded="true"]').count(),
            1,
        );
        equal('and agrees', await page.locator('.checked .refused').count(), 0);
    }
    equal('every figure is there', shown, recheck.figures);
    const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.click('text=Workbook for a spreadsheet'),
    ]);
    const bytes = readFileSync(await download.path());
    check('the workbook is a zip', bytes.subarray(0, 2).toString() === 'PK', bytes.length);
    check('its name', download.suggestedFilename().endsWith('.xlsx'));
    await page.fill('.check-find input', 'level payment');
    check('found by its formula', (await page.locator('.checked').count()) > 0);
    await page.locator('.input-link').first().click();
    await until(page, () => document.activeElement.matches('.checked'));
    equal(
        'an input leads to its figure, and what was looked for goes',
        await page.inputValue('.check-find input'),
        '',
    );
}

export async function figures_on_other_days({cases, server, context}) {
    const page = await open_page(context, server.url);
    const month = await page.textContent('.bar [data-figure="monthly.total"]');
    await page.click('button:text-is("This buyer…")');
    await page.getByLabel('Closing').fill('2027-06-02');
    await page.getByLabel('Credit score').fill('661');
    await page.click('.dialog button:text-is("Use these")');
    await page.waitForSelector('dialog[open]', {state: 'detached'});
    const {inquiry} = await bar_is(page, cases, 'another closing and score');
    equal('the closing is in the inquiry', inquiry.closing, '2027-06-02');
    equal('the score is in the inquiry', inquiry.score, 661);
    check(
        'a lower score moves the month',
        month !== (await page.textContent('.bar [data-figure="monthly.total"]')),
    );
}

export async function a_rate_that_changes_says_how_far({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await (await open_loan(page)).getByLabel('Program').selectOption('conventional-5-6');
    const {inquiry, hand, tour} = await bar_is(page, cases, 'an adjustable rate');
    const terms = plain_spaces(await page.textContent('.bar .terms'));
    const {highest_rate: highest, worst_case: worst} = tour.scenario.terms.adjustable;
    check(
        'its ceiling stands beside the month',
        terms.includes(`up to ${rate_shown(highest)}`),
        terms,
    );
    const step = worst.find((one) => one.rate === highest);
    await page.click('.choose-loan');
    await page.waitForSelector('.dialog[open]');
    const whole = await page.textContent('.dialog .note');
    check('and the worst payment', bare(whole).includes(bare(step.payment)), whole);
    await page.keyboard.press('Escape');
    await view(page, 'Schedule');
    await page.click('.tick-box input');
    await settled(page);
    const known = known_numbers(cases, inquiry, hand);
    numbers_in(ask(cases, 'schedule', inquiry, ['--scenario', hand, '--worst-case']), known);
    await all_known(page, '.main', known, 'the worst case, year by year');
}

export async function figures_with_extra_principal({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Schedule');
    await page.fill('.controls input', '1,250.50');
    await page.press('.controls input', 'Enter');
    await page.waitForSelector('.saves');
    const {inquiry, hand} = await kept(page);
    await all_known(
        page,
        '.main',
        known_numbers(cases, inquiry, hand, '1250.50'),
        'with extra principal',
    );
}

export async function figures_of_a_large_book({cases, server, context}) {
    const page = await open_page(context, server.url);
    await open_buyer(page, 'Many');
    const {inquiry, hand, tour} = await bar_is(page, cases, 'two hundred options');
    equal(
        'two hundred options',
        tour.areas.reduce((sum, area) => sum + area.options.length, 0),
        200,
    );
    const known = known_numbers(cases, inquiry, hand);
    for (const area of tour.areas) {
        await walk(page, area.name);
        await all_known(page, '.area', known, `two hundred options, ${area.name}`);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        check(`long names stay within the page, ${area.name}`, wide <= 0, `${wide} px too wide`);
    }
}

export async function incentives_used_another_way({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_part(page, 'incentives');
    const use = async (words) => {
        await page.click(`.incentive:has-text("Winter start") label:text-is("${words}")`);
        await settled(page);
        return (await bar_is(page, cases, `Winter start ${words}`)).inquiry.incentives;
    };
    const first = (await kept(page)).inquiry.incentives;
    equal(
        'all toward options',
        JSON.stringify(await use('all toward options')),
        JSON.stringify([{id: 'winter-start', use: 'options'}]),
    );
    equal('not used', JSON.stringify(await use('not used')), '[]');
    await page.click('.incentive:has-text("Winter start") label:text-is("in parts")');
    await page.fill('.incentive-parts label:has-text("options") input', '5,000');
    await page.fill('.incentive-parts label:has-text("closing costs") input', '2500');
    await page.keyboard.press('Tab');
    await until(page, () => document.querySelectorAll('.incentive-parts').length === 1);
    await settled(page);
    const {inquiry} = await bar_is(page, cases, 'Winter start in parts');
    equal(
        'in parts',
        JSON.stringify(inquiry.incentives),
        JSON.stringify([
            {id: 'winter-start', use: 'options', amount: '5000'},
            {id: 'winter-start', use: 'closing_costs', amount: '2500'},
        ]),
    );
    check(
        'what is not given here says why',
        (await page.textContent('.incentive:has-text("Price cut on lots")')).includes(
            'not on this lot',
        ),
    );
    while (await page.locator('.steps .back').isEnabled()) {
        await page.click('.steps .back');
        await settled(page);
    }
    equal('undone', JSON.stringify((await kept(page)).inquiry.incentives), JSON.stringify(first));
}

const part = (page, use) => page.locator(`.incentive-parts label:has-text("${use}") input`);

/// Parts of an incentive, the second typed when the answer to the first is there, or comes while it
/// is typed: what was typed is never lost, and stays in the digits it was typed in.
export async function parts_of_an_incentive_however_slow_the_answer({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_part(page, 'incentives');
    const parts = async (options, costs) =>
        equal(
            `${options} and ${costs}`,
            JSON.stringify((await kept(page)).inquiry.incentives),
            JSON.stringify([
                {id: 'winter-start', use: 'options', amount: options},
                {id: 'winter-start', use: 'closing_costs', amount: costs},
            ]),
        );
    await page.click('.incentive:has-text("Winter start") label:text-is("not used")');
    await settled(page);
    await page.click('.incentive:has-text("Winter start") label:text-is("in parts")');
    await part(page, 'options').fill('$5,000');
    await part(page, 'options').press('Enter');
    await settled(page);
    await part(page, 'closing costs').fill('2500');
    await part(page, 'closing costs').press('Enter');
    await settled(page);
    await parts('5000', '2500');
    let free;
    const held = new Promise((resolve) => {
        free = resolve;
    });
    await context.route('**/api/tour**', async (route) => {
        await held;
        await route.continue();
    });
    await part(page, 'options').fill('4000');
    await part(page, 'options').press('Enter');
    await part(page, 'closing costs').fill('2600');
    free();
    await settled(page);
    equal('typed meanwhile', await part(page, 'closing costs').inputValue(), '2600');
    await part(page, 'closing costs').press('Enter');
    await settled(page);
    await parts('4000', '2600');
}
