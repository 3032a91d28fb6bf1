// The Budget view: what means allow, what the builder's money does, now or later; held against the
// command line, by key, at three sizes, and when things go wrong.
import {join} from 'node:path';

import {
    Server,
    all_known,
    ask,
    check,
    equal,
    kept,
    numbers_in,
    open_file,
    open_page,
    paints_soon,
    rate_shown,
    reach,
    serious,
    shots,
    sizes,
    take_loan,
    until,
    view,
    walk,
    open_part,
    settled,
} from './support.mjs';

const money = (amount) => {
    const [whole, cents] = amount.replace('-', '').split('.');
    const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
    return `${amount.startsWith('-') ? '−' : ''}$${grouped}.${cents}`;
};

/// Cash to close, of which no less than none is told: what comes back is said in words.
const closing = (amount) => money(amount.replace('-', ''));

/// Until a part of the page reads as it should.
const reads = (page, where, text) =>
    until(
        page,
        ([selector, wanted]) =>
            document
                .querySelector(selector)
                ?.textContent.replace(/\u00a0/g, ' ')
                .includes(wanted),
        [where, text],
    );

const field = (page, name) => page.getByLabel(name, {exact: true});

/// A list to choose from, by the words above it.
const choice = (page, name) => page.locator(`.field:has(> span:text-is("${name}")) select`);

async function type(page, name, value) {
    await field(page, name).fill(value);
    await field(page, name).press('Enter');
}

async function open_budget(context, server, part = 'afford') {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_part(page, part);
    return page;
}

/// What the lender's rules ask besides.
const ask_more = (page) => page.click('.means-more:not([open]) > summary');

const of_hand = (answer, hand) => answer.scenarios.find((one) => one.terms.name === hand);

/// The inquiry with one way to pay alone.
const alone = (inquiry, hand) => ({
    ...inquiry,
    scenarios: inquiry.scenarios.filter((one) => one.name === hand),
});

const credit_options = (hand, amount, instead, years = '7') => [
    '--amount',
    amount,
    '--scenario',
    hand,
    '--years',
    years,
    ...(instead ? ['--instead'] : []),
];

async function open_details(page) {
    for (const summary of await page.$$('.main details:not([open]) > summary'))
        await summary.click();
}

async function reach_is(page, answer, name) {
    for (const [i, one] of answer.scenarios.entries()) {
        const row = `.reach .overview-row:nth-of-type(${i + 1})`;
        await reads(page, row, one.price ? `up to ${money(one.price)}` : 'no price fits');
        const text = (await page.textContent(row)).replace(/\u00a0/g, ' ');
        check(`${name}: the row of ${one.terms.name}`, text.startsWith(one.terms.name), text);
        if (!one.price) continue;
        check(
            `${name}: month, rate, APR, term and down payment beside ${one.terms.name}`,
            [
                `${money(one.scenario.monthly.total)} a month`,
                `${rate_shown(one.terms.rate)} interest rate`,
                `APR ${rate_shown(one.terms.apr)}`,
                `${one.terms.months / 12} years`,
                `${money(one.terms.down_payment)} down`,
            ].every((words) => text.includes(words)),
            text,
        );
    }
}

export async function budget_means_are_the_command_lines({cases, server, context}) {
    const page = await open_budget(context, server);
    let {inquiry, hand} = await kept(page);
    await reach_is(page, ask(cases, 'afford', inquiry), 'as opened');
    await type(page, 'Gross monthly income', '8,412.50');
    await type(page, 'Monthly debt payments', '655');
    await type(page, 'Available cash', '64000');
    await ask_more(page);
    await type(page, 'Months of payments to keep in reserve', '2');
    await page.click('.by-limit > summary');
    await type(page, 'Step in price', '12500');
    await page.getByText('As if automated underwriting').click();
    ({inquiry, hand} = await kept(page));
    equal('income is in the inquiry', inquiry.income.monthly, '8412.50');
    equal('debts are in the inquiry', inquiry.debts.monthly, '655');
    equal('cash is in the inquiry', inquiry.cash, '64000');
    const options = ['--reserves', '2', '--step', '12500', '--automated'];
    const answer = ask(cases, 'afford', inquiry, options);
    await reach_is(page, answer, 'after typing');
    const one = of_hand(answer, hand);
    await reads(page, '.further', money(one.step.price));
    const rooms = await page.$$eval('.room', (list) => list.map((each) => each.textContent));
    equal('a bar for each limit', rooms.length, one.rooms.length);
    for (const [i, room] of one.rooms.entries())
        check(
            `needed and most of ${room.limit}`,
            rooms[i].includes(`takes ${money(room.needed)}; the most is ${money(room.most)}`),
            rooms[i],
        );
    const homes = await page.$$eval('.within-reach .row-price', (list) =>
        list.map((each) => each.textContent),
    );
    equal(
        'homes within it',
        homes.join(),
        one.plans.map((each) => `from ${money(each.price)}`).join(),
    );
    const known = numbers_in(answer, new Set(['0']));
    numbers_in(ask(cases, 'tour', inquiry, ['--scenario', hand]).contract_price, known);
    await all_known(page, 'section[aria-labelledby="afford"]', known, 'how much home');
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function budget_income_moves_are_the_command_lines({cases, server, context}) {
    const page = await open_budget(context, server);
    await type(page, 'Gross monthly income', '9000');
    const {inquiry, hand} = await kept(page);
    await page.click('summary:text-is("If your income changes before closing")');
    const {ratios} = of_hand(ask(cases, 'shift', inquiry, []), hand);
    await reads(page, '.incomes', money(ratios.incomes[0].income));
    const rows = await page.$$eval('.incomes tbody tr', (list) =>
        list.map((row) => [...row.cells].map((cell) => cell.textContent.replace(/\u00a0/g, ' '))),
    );
    equal('a row for each income', rows.length, ratios.incomes.length);
    for (const [i, one] of ratios.incomes.entries()) {
        const rate = one.highest_rate.to_a_thousandth;
        const [income, front, back, within, up_to] = rows[i];
        check(`income ${one.by}`, income.startsWith(money(one.income)), income);
        equal(`housing at ${one.by}`, front, `${one.front}%`);
        equal(`with debts at ${one.by}`, back, `${one.back}%`);
        equal(`within at ${one.by}`, within, one.within ? 'within limits' : 'over the limit');
        equal(`rate at ${one.by}`, up_to, rate ? rate_shown(rate) : 'no rate');
    }
    await reads(page, 'section[aria-labelledby="afford"]', money(ratios.least_income));
    await type(page, 'Gross monthly income', '');
    await reads(page, 'section[aria-labelledby="afford"]', 'Type your income to see this');
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function budget_credit_is_the_command_lines({cases, server, context}) {
    const page = await open_budget(context, server, 'builders-money');
    const {inquiry, hand} = await kept(page);
    const part = 'section[aria-labelledby="builders-money"]';
    for (const [amount, instead, years] of [
        ['7500.00', true, '7'],
        ['18250', true, '4'],
        ['18250', false, '4'],
    ]) {
        await type(page, 'The builder gives', amount);
        await type(page, 'Years to look at the cost over', years);
        await page.getByLabel('In place of the incentives').setChecked(instead);
        const answer = ask(cases, 'credit', inquiry, credit_options(hand, amount, instead, years));
        const one = of_hand(answer, hand);
        const name = `credit of ${amount}${instead ? ' instead' : ''}`;
        await reads(page, '.bests .segment:nth-child(1)', money(one.lowest_payment.monthly_now));
        await reads(page, '.bests .segment:nth-child(2)', closing(one.least_cash.cash_to_close));
        await reads(
            page,
            '.bests .segment:nth-child(3)',
            money(one.least_cost.cost_over_asked_years),
        );
        await reads(page, '.mixes tbody tr:first-child', closing(one.without.cash_to_close));
        equal(
            `${name}: a dot for each split`,
            await page.locator('.mark.dot').count(),
            one.frontier.length,
        );
        await open_details(page);
        const known = numbers_in(one, new Set(['0']));
        await all_known(page, part, known, name);
        await page.$$eval(`${part} details[open] > summary`, (all) =>
            all.forEach((each) => each.click()),
        );
    }
    const words = await page.textContent(part);
    check('any lender', words.includes('may choose any lender'));
    check('the condition of the incentive', words.includes('within 21 days of the contract'));
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function budget_later_is_the_command_lines({cases, server, context}) {
    const page = await open_budget(context, server, 'later');
    const {inquiry, hand} = await kept(page);
    const part = 'section[aria-labelledby="later"]';
    await choice(page, 'Option').selectOption('charging-outlet');
    await type(page, 'Done with which payment of the loan', '9');
    await type(page, 'Rate of a personal loan', '11.5');
    await reads(page, part, 'needs both a rate and a number of months');
    await type(page, 'Months of a personal loan', '48');
    const options = ['--month', '9', '--loan-rate', '11.5', '--loan-months', '48'];
    const answer = ask(cases, 'later', inquiry, ['charging-outlet', ...options]);
    const one = of_hand(answer.items[0], hand);
    equal('four ways', one.ways.length, 4);
    for (const [i, path] of one.ways.entries()) {
        const card = `.way:nth-child(${i + 1})`;
        await reads(page, card, path.way === 'after' ? 'about $1,900.00' : money(path.a_month));
        await reads(
            page,
            `${part} tbody tr:nth-child(6) td:nth-of-type(${i + 1})`,
            money(path.cost[120]),
        );
    }
    for (const even of one.break_even) await reads(page, '.break-even', even.when);
    await page.click(`${part} details > summary`);
    await reads(page, `${part} details tbody tr:nth-child(38)`, money(one.ways[0].cost[37]));
    const words = await page.textContent(part);
    check('permit and licensed trade', words.includes('needs a permit and a licensed trade'));
    await page.locator('input[name="later-span"]').last().check();
    await until(page, () => document.querySelectorAll('details tbody tr').length > 300);
    await all_known(page, part, numbers_in(answer, new Set(['0'])), 'now or later');
    await choice(page, 'Option').selectOption('deck');
    await choice(page, 'Choice from the builder').selectOption('treated');
    const deck = ask(cases, 'later', alone(inquiry, hand), ['deck:treated', ...options]);
    await reads(page, `${part} .way`, money(deck.items[0].scenarios[0].ways[0].a_month));
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function budget_later_of_several_is_the_command_lines({cases, server, context}) {
    const page = await open_budget(context, server, 'later');
    const {inquiry, hand} = await kept(page);
    const part = 'section[aria-labelledby="later"]';
    await type(page, 'Rate of a personal loan', '9');
    await type(page, 'Months of a personal loan', '24');
    const loan = ['--loan-rate', '9', '--loan-months', '24'];
    const estimates = {};
    for (const [option, count] of [
        ['second-color', '1'],
        ['second-color', '4'],
        ['recessed-lights', null], // as many as are chosen
        ['recessed-lights', '12'],
        ['rear-sod', '500'],
        ['rear-sod', '5000'],
    ]) {
        await choice(page, 'Option').selectOption(option);
        if (count) await type(page, 'How many', count);
        const chosen = inquiry.selections.find((one) => one.option === option)?.quantity;
        const asked = `${option}=${count ?? chosen}`;
        const item = ask(cases, 'later', alone(inquiry, hand), [asked, ...loan]).items[0];
        const ways = item.scenarios[0].ways;
        await reads(page, part, `${money(item.price)} from the builder`);
        await reads(page, part, `After closing, about ${money(item.estimate)} by the estimate`);
        await reads(page, '.way:nth-child(1)', money(ways[0].a_month));
        await reads(page, '.way:nth-child(3)', `about ${money(item.estimate)}`);
        await reads(page, '.way:nth-child(4)', money(ways[3].a_month));
        estimates[asked] = item.estimate;
    }
    equal('an estimate for one, four times', estimates['second-color=4'], '600.00');
    equal('an estimate for one, as often as chosen', estimates['recessed-lights=8'], '2080.00');
    equal('an estimate for all stays', estimates['rear-sod=500'], estimates['rear-sod=5000']);
    await view(page, 'Tour');
    await walk(page, 'Great room and dining');
    await page.locator('.option:has-text("ecessed") .opener').click();
    const card = await page.textContent('.option:has-text("ecessed")');
    check('on the tour it is told as one', card.includes('about $260 each'), card);
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

/// The bar reads what a split of the money promised.
async function put_to_use(page, mix, name) {
    await page.click('.split-card .main-button:not([disabled])');
    await reads(page, '.last', "Builder's money used this way");
    await reads(page, '.bar [data-figure="cash.to_close"]', closing(mix.cash_to_close));
    check(`${name}: the bar has the cash it promised`, true);
}

export async function budget_money_put_to_use({cases, server, context}) {
    const page = await open_budget(context, server, 'builders-money');
    const {inquiry, hand} = await kept(page);
    const asked = async (amount, instead) =>
        of_hand(ask(cases, 'credit', inquiry, credit_options(hand, amount, instead)), hand);
    await page.click('.mix-button:text-is("All to closing costs and prepaids")');
    await reads(page, '.split-card', 'used this way now');
    await page.click('.mix-button:text-is("All to points")');
    await reads(page, '.split-card', 'does not let you use its incentive this way');
    await page.click('.mix-button:text-is("All off the price")');
    const off = (await asked('7500.00', true)).each_use[0].mix;
    await put_to_use(page, off, 'off the price');
    equal(
        'as a use of the incentive',
        JSON.stringify((await kept(page)).inquiry.incentives),
        JSON.stringify([{id: 'winter-start', use: 'options', amount: off.off_price}]),
    );
    await page.click('.steps .back');
    await reads(page, '.last', 'One step back');
    await page.getByLabel('In place of the incentives').setChecked(false);
    await type(page, 'The builder gives', '7000');
    const points = (await asked('7000', false)).each_use.find((one) => one.use === 'points').mix;
    await page.click('.mix-button:text-is("All to points")');
    await reads(page, '.split-card', closing(points.cash_to_close));
    await put_to_use(page, points, 'points on top');
    const now = (await kept(page)).inquiry;
    equal('as a credit', now.credits[0].amount, points.pays.points);
    equal('with its rate', now.scenarios[0].rate.note, points.rate);
    await reads(page, '.bar [data-figure="monthly.total"]', money(points.monthly_now));
    equal(
        'the incentive stays',
        JSON.stringify(now.incentives),
        JSON.stringify(inquiry.incentives),
    );
}

export async function budget_money_pays_a_premium({cases, server, context}) {
    const page = await open_budget(context, server, 'builders-money');
    const {inquiry} = await kept(page);
    await page.getByLabel('In place of the incentives').setChecked(false);
    for (const [name, member, value, words] of [
        ['Conventional, 10% down, 15 years', 'mi_premium', 'single', 'single premium'],
        ['FHA, 3.5% down, 30 years', 'fee', 'cash', 'Upfront mortgage insurance premium'],
    ]) {
        await take_loan(page, name);
        await type(page, 'The builder gives', '9600');
        const answer = ask(cases, 'credit', inquiry, credit_options(name, '9600', false));
        const use = of_hand(answer, name).each_use.find((one) => one.use === 'upfront_fee');
        check(`${name}: ${words}`, use.name.includes(words), use.name);
        await split(page, `All to ${use.name}`);
        await put_to_use(page, use.mix, use.name);
        const written = (await kept(page)).inquiry;
        const now = written.scenarios.find((one) => one.name === name);
        equal(`${name}: ${member}`, now[member], value);
        const uses = written.credits.map((one) => one.uses.join()).join('; ');
        equal(`${name}: one credit`, uses, 'upfront_fee');
        await page.click('button:text-is("Stop using it")');
        await reads(page, '.last', 'no longer used');
        equal(
            `${name}: as it was`,
            JSON.stringify((await kept(page)).inquiry),
            JSON.stringify(inquiry),
        );
    }
}

const split = (page, name) => page.click(`.mix-button:text-is("${name}")`);

export async function budget_money_used_again_takes_the_place(task) {
    const {cases, server, context} = task;
    const page = await open_budget(context, server, 'builders-money');
    const {inquiry, hand} = await kept(page);
    const now = async () => (await kept(page)).inquiry;
    const asked = (instead) =>
        of_hand(ask(cases, 'credit', inquiry, credit_options(hand, '7000', instead)), hand);
    const mix = (use, instead = false) =>
        asked(instead).each_use.find((one) => one.use === use).mix;
    await page.getByLabel('In place of the incentives').setChecked(false);
    await type(page, 'The builder gives', '7000');
    await split(page, 'All to points');
    await put_to_use(page, mix('points'), 'points');
    const points = await now();
    await reads(page, '.split-card', 'used this way now');
    await split(page, 'All to closing costs and prepaids');
    await page.waitForSelector('.split-card .main-button:not([disabled])');
    await split(page, 'All to points');
    await reads(page, '.split-card', 'used this way now');
    equal('the same again changes nothing', JSON.stringify(await now()), JSON.stringify(points));
    await split(page, 'All to closing costs and prepaids');
    await put_to_use(page, mix('costs'), 'costs in place of points');
    const costs = await now();
    const given = costs.credits.reduce((sum, one) => sum + Number(one.amount), 0);
    check('7000 dollars are given, once', given <= 7000, JSON.stringify(costs.credits));
    equal('nothing to points', costs.credits.filter((one) => /points/.test(one.uses)).length, 0);
    equal(
        'the rate is back',
        JSON.stringify(costs.scenarios[0].rate),
        JSON.stringify(inquiry.scenarios[0].rate),
    );
    await page.click('.steps .back');
    await reads(page, '.last', 'One step back');
    await split(page, 'All to points');
    await reads(page, '.split-card', 'used this way now');
    await page.reload();
    await view(page, 'Budget');
    await open_part(page, 'builders-money');
    await split(page, 'All off the price');
    await page.getByLabel('In place of the incentives').setChecked(true);
    await put_to_use(page, mix('off_price', true), 'off the price in place of points');
    equal('no credit is left', (await now()).credits, undefined);
    await page.click('button:text-is("Stop using it")');
    await reads(page, '.last', 'no longer used');
    equal('as it was', JSON.stringify(await now()), JSON.stringify(inquiry));
    await a_file_with_the_money_in_it(task, costs, hand, mix('buydown_1_0'));
}

/// Nobody remembers how such a file came to be, but its credits say what they are.
async function a_file_with_the_money_in_it({server, chrome}, costs, hand, buydown) {
    const context = await chrome.newContext();
    const page = await open_page(context, server.url);
    await open_file(page, costs);
    await view(page, 'Budget');
    await open_part(page, 'builders-money');
    await page.getByLabel('In place of the incentives').setChecked(false);
    await type(page, 'The builder gives', '7000');
    await split(page, 'All to 1-0 temporary buydown');
    await put_to_use(page, buydown, 'a buydown in place of what a file has');
    const {credits} = (await kept(page)).inquiry;
    equal('one credit', credits.map((one) => one.uses.join()).join('; '), 'temporary_buydown');
    await context.close();
}

export async function budget_a_home_is_taken_over({cases, server, context}) {
    const page = await open_budget(context, server);
    const {inquiry, hand} = await kept(page);
    const plan = of_hand(ask(cases, 'afford', inquiry), hand).plans[0];
    await page.click('.within-reach .row-button');
    await reads(page, '.last', `lot ${plan.lot}`);
    const now = (await kept(page)).inquiry;
    equal(
        'plan, elevation and lot',
        [now.plan, now.elevation, now.lot].join(),
        [plan.plan, plan.elevation, plan.lot].join(),
    );
    await until(page, () => document.querySelector('.last-remarks') !== null);
    await page.click('.steps .back');
    await reads(page, '.last', 'One step back');
    equal('and back', JSON.stringify((await kept(page)).inquiry), JSON.stringify(inquiry));
}

export async function budget_nothing_fits({cases, server, context}) {
    const page = await open_budget(context, server);
    await type(page, 'Gross monthly income', '700');
    const {inquiry, hand} = await kept(page);
    const one = of_hand(ask(cases, 'afford', inquiry), hand);
    equal('no price fits', one.price, null);
    await reads(page, '.allowed', `No price fits.`);
    await reads(page, '.allowed', `At ${money(one.least_price)}`);
    const miss = one.rooms.find((room) => room.room.startsWith('-'));
    await reads(page, '.room.over', `${money(miss.room.slice(1))} a month too much`);
    await type(page, 'Gross monthly income', '');
    await until(page, () => document.querySelectorAll('.room').length === 1);
    equal('a limit without its figure is not told', (await kept(page)).inquiry.income, undefined);
}

export async function budget_a_limit_not_heard_of({server, context}) {
    await context.route('**/api/afford*', async (route) => {
        const answer = await (await route.fetch()).json();
        for (const one of answer.scenarios) {
            one.rooms.push({
                limit: 'residual_income',
                needed: '1.00',
                most: '2.00',
                room: '1.00',
            });
            one.rooms.push({
                limit: 'age_of_roof',
                needed: '1.00',
                most: '2.00',
                room: '1.00',
            });
            one.binds = ['age_of_roof'];
        }
        await route.fulfill({json: answer});
    });
    const page = await open_budget(context, server);
    await reads(page, '.allowed', 'age of roof');
    check('known by name', (await page.textContent('.rooms')).includes('left to live on'));
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function budget_wrong_means_and_steps_back({cases, server, context}) {
    const page = await open_budget(context, server);
    const before = await kept(page);
    await ask_more(page);
    await type(page, 'Monthly income taxes', 'much');
    await page.waitForSelector('.means .wrong');
    equal('beside its own field alone', await page.locator('.means .wrong').count(), 1);
    await type(page, 'Monthly income taxes', '');
    await page.waitForSelector('.means .wrong', {state: 'detached'});
    for (const wrong of ['lots', '-5']) {
        await type(page, 'Gross monthly income', wrong);
        await page.waitForSelector('.means .wrong');
        equal(`${wrong} stays`, await field(page, 'Gross monthly income').inputValue(), wrong);
    }
    await type(page, 'Months of payments to keep in reserve', '99');
    await page.waitForSelector('.message.bad');
    await page.click('.message.bad button:text-is("One step back")');
    await page.click('.message.bad button:text-is("One step back")');
    await page.waitForSelector('.message.bad', {state: 'detached'});
    await reads(page, 'section[aria-labelledby="afford"] .fold-inside > .wrong', '--reserves 99');
    await type(page, 'Months of payments to keep in reserve', '0');
    await type(page, 'Gross monthly income', '7000');
    await reach_is(page, ask(cases, 'afford', (await kept(page)).inquiry), 'a right one');
    await page.click('.steps .back');
    await reach_is(page, ask(cases, 'afford', before.inquiry), 'undone');
    equal(
        'the inquiry is back',
        JSON.stringify((await kept(page)).inquiry),
        JSON.stringify(before.inquiry),
    );
}

export async function budget_the_program_ends_while_typing({cases, context}) {
    const server = await new Server(cases).start();
    const page = await open_budget(context, server);
    await server.stop();
    await type(page, 'Gross monthly income', '8800');
    await page.waitForSelector('.message.bad:has-text("does not answer")');
    await type(page, 'Monthly debt payments', '250');
    const {inquiry} = await kept(page);
    equal('income is kept', inquiry.income.monthly, '8800');
    equal('debts are kept', inquiry.debts.monthly, '250');
    const again = await new Server(cases, server.port).start();
    await page.waitForSelector('.message.bad', {state: 'detached'});
    await reach_is(page, ask(cases, 'afford', inquiry), 'once it is back');
    await again.stop();
}

export async function budget_a_link_holds_no_means({server, context}) {
    await context.grantPermissions(['clipboard-read', 'clipboard-write'], {
        origin: server.url,
    });
    const page = await open_budget(context, server);
    const typed = ['8765.43', '321.09', '76543.21', '11'];
    await type(page, 'Gross monthly income', typed[0]);
    await type(page, 'Monthly debt payments', typed[1]);
    await type(page, 'Available cash', typed[2]);
    await ask_more(page);
    await type(page, 'Months of payments to keep in reserve', typed[3]);
    await page.click('button:text-is("This buyer…")');
    await page.click('.row-button:has-text("Copy a link")');
    await page.waitForSelector('.message:has-text("clipboard")');
    const link = await page.evaluate(() => navigator.clipboard.readText());
    const held = Buffer.from(link.split('#home=')[1], 'base64url').toString();
    check('there is a home in it', held.includes('"plan":"teasel"'), held);
    for (const one of [...typed.slice(0, 3), 'income', 'debts', 'cash', 'asks'])
        check(`no ${one} in the link`, !held.includes(one), held);
    check('nor in the address', !/8765|321|76543/.test(page.url()), page.url());
    check(
        'it says where they stay',
        (await page.textContent('.means')).includes('stays in this browser'),
    );
}

export async function budget_by_key({server, context}) {
    const page = await open_page(context, server.url);
    await reach(page, '.view:nth-child(3)', 'Budget');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.means');
    await settled(page);
    await reach(page, '#afford > button', 'the part that is open');
    await reach(page, 'input[aria-label="Gross monthly income"]', 'income');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('9100');
    await page.keyboard.press('Enter');
    await until(page, () => document.querySelector('.last-name')?.textContent.includes('income'));
    equal('Enter commits it', (await kept(page)).inquiry.income.monthly, '9100');
    await reach(page, '.means-more > summary', 'what is asked besides');
    await page.keyboard.press('Enter');
    await reach(page, '.means input[type="checkbox"]', 'automated underwriting');
    await page.keyboard.press('Space');
    await reads(page, '.allowed', 'automated underwriting');
    await reach(page, '.each-loan > summary', 'all of them');
    await page.keyboard.press('Enter');
    await reach(page, '.reach input[type="radio"]', 'the ways to pay');
    await page.keyboard.press('ArrowDown');
    const second = (await kept(page)).inquiry.scenarios[1].name;
    await reads(page, '.allowed h4', second);
    equal('an arrow looks at the next', (await kept(page)).hand, second);
    await page.evaluate(() => document.querySelector('#afford').focus());
    await reach(page, '.within-reach .row-button', 'a home within it');
    await reach(page, '#builders-money > button', 'another part');
    await page.keyboard.press('Enter');
    equal('one part at a time', await page.locator('.means-more').count(), 0);
    await reach(page, 'input[aria-label="The builder gives"]', "the builder's money");
    await reach(page, '.bests input', 'the bests');
    await page.keyboard.press('ArrowDown');
    await reads(page, '.split-card h4', 'Lowest cost over 7 years');
    await reach(page, '.mix-button', 'a split of the table');
    await reach(page, '#later > button', 'the last part');
    await page.keyboard.press('Enter');
    await reach(page, 'section[aria-labelledby="later"] select', 'an option for later');
    await reach(page, 'section[aria-labelledby="later"] summary', 'month by month');
    await page.keyboard.press('Enter');
    await until(page, () => document.querySelectorAll('details[open] tbody tr').length > 100);
}

export async function budget_a_price_that_no_ratio_bounds_leaves_the_scale({server, context}) {
    const page = await open_budget(context, server);
    await ask_more(page);
    await page.click('summary:text-is("Each of your loans on one scale")');
    await page.click('label:has-text("As if automated underwriting had accepted the loan")');
    await page.waitForSelector('.reach-binds:has-text("past the end of this scale")');
    const rows = await page.$$eval('.reach .overview-row', (all) =>
        all.map((row) => ({
            words: row.innerText,
            width: Number(row.querySelector('.reach-part').getAttribute('width')),
        })),
    );
    for (const {words, width} of rows) {
        const name = words.split('\n')[0];
        const past = words.includes('past the end of this scale');
        equal(`${name}: past the scale`, past, name.startsWith('USDA'));
        check(`${name}: its bar is on the scale`, width <= 100 && width > 50, `${width}`);
        check(`${name}: held to no ratio`, !past || words.includes('held to no ratio'), words);
    }
    equal('one for each way to pay', rows.length, 6);
}

export async function budget_at_three_sizes({server, context}) {
    const page = await open_budget(context, server, 'later');
    await type(page, 'Rate of a personal loan', '11.5');
    await type(page, 'Months of a personal loan', '60');
    const whole = {
        'afford': '.allowed .big',
        'wishes': '.fit',
        'builders-money': '.mark.dot',
        'later': '.way:nth-child(4)', // what was typed is still there
    };
    for (const [width, height] of sizes) {
        await page.setViewportSize({width, height});
        for (const colorScheme of ['light', 'dark']) {
            await page.emulateMedia({colorScheme});
            for (const [part, there] of Object.entries(whole)) {
                await open_part(page, part);
                await page.waitForSelector(there);
                await open_details(page);
                const where = `budget, ${part} at ${width}, ${colorScheme}`;
                const wide = await page.evaluate(
                    () => document.documentElement.scrollWidth - innerWidth,
                );
                check(`${where}: nothing runs out of the page`, wide <= 0, `${wide} px`);
                await serious(page, where);
                await page.screenshot({
                    path: join(shots, `budget-${part}-${width}-${colorScheme}.png`),
                    fullPage: true,
                });
            }
        }
    }
}

export async function budget_money_opens_on_what_every_incentive_allows({cases, server, context}) {
    const page = await open_budget(context, server, 'builders-money');
    const {inquiry, hand} = await kept(page);
    const loans = inquiry.scenarios.map((one) => one.name);
    for (const name of [hand, ...loans.filter((one) => one !== hand)]) {
        if (name !== hand) await take_loan(page, name);
        const answer = ask(cases, 'credit', inquiry, credit_options(name, '7500.00', true));
        const one = of_hand(answer, name);
        equal(`${name}: uses that are shared`, answer.allowed_uses.join(), 'closing_costs');
        check(`${name}: the lowest payment is not`, !one.lowest_payment.every_incentive_allows);
        const list = [
            ['Lowest payment now', one.lowest_payment],
            ['Least cash to close', one.least_cash],
            ['Lowest cost over 7 years', one.least_cost],
            ...one.each_use.map(({name: use, mix}) => [`All to ${use}`, mix]),
        ];
        const [first, mix] = list.find(([, each]) => each?.every_incentive_allows);
        await reads(page, '.split-card h4', first);
        await reads(page, '.split-card', closing(mix.cash_to_close));
        await reads(page, '.bests + .facts', `toward closing costs, so “${first}” is open first`);
        await page.click('.bests .segment:nth-child(1) input');
        await reads(page, '.split-card h4', 'Lowest payment now');
        await open_part(page, 'afford');
        await open_part(page, 'builders-money');
    }
}

export async function budget_from_a_field_to_figures({server, context}) {
    const page = await open_budget(context, server);
    await page.waitForSelector('.allowed .big');
    const typed = (name, figure, value_of) =>
        paints_soon(page, `${name} to painted figures`, (i) => ({
            element: `input[aria-label="${name}"]`,
            value: `${value_of(i)}`,
            figure,
        }));
    await typed('Gross monthly income', '.allowed .big', (i) => 6000 + 37 * i);
    await open_part(page, 'builders-money');
    await page.waitForSelector('.mark.dot');
    await typed('The builder gives', '.bests .best-figure', (i) => 5000 + 210 * i);
}
