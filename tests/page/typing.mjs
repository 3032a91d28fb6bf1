// What is typed is never lost: not to an answer that is late, not to one that comes while typing,
// not before the page has painted.
import {
    Server,
    equal,
    kept,
    open_buyer,
    open_page,
    settled,
    unfold,
    view,
    open_part,
} from './support.mjs';

/// Answers of the tour are held back until they are let go.
async function hold(context) {
    let free;
    const held = new Promise((resolve) => {
        free = resolve;
    });
    await context.route('**/api/tour**', async (route) => {
        await held;
        await route.continue();
    });
    return free;
}

/// What a quick hand does before the page has painted: all that the page does itself in between is
/// done, and no frame passes. Each step is what is touched, and what is typed into it; `keeps` is
/// typed and not committed.
const before_a_frame = (page, steps) =>
    page.evaluate(async (all) => {
        const done = async () => {
            for (let i = 0; i < 50; i += 1) await null;
        };
        for (const {at, types, keeps} of all) {
            const touched = document.querySelector(at);
            const tell = async (kind) => {
                touched.dispatchEvent(new Event(kind, {bubbles: true}));
                await done();
            };
            if (types === undefined && keeps === undefined) touched.click();
            await done();
            if (types === undefined && keeps === undefined) continue;
            touched.value = types ?? keeps;
            await tell('input');
            if (types !== undefined) await tell('change');
        }
    }, steps);

const named = (label) => `input[aria-label="${label}"]`;
const field = (page, name) => page.getByLabel(name, {exact: true});

async function type(page, name, value) {
    await field(page, name).fill(value);
    await field(page, name).press('Enter');
}

const options_part = 'Winter start toward options';
const costs_part = 'Winter start toward closing costs';
const in_parts = '.incentive:has(input[aria-label]) input, .incentive-uses label:last-child input';

export async function typed_before_the_page_has_painted({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_part(page, 'incentives');
    await page.click('.incentive:has-text("Winter start") label:text-is("not used")');
    await settled(page);
    await before_a_frame(page, [{at: in_parts}, {at: named(options_part), types: '$5,000'}]);
    await settled(page);
    const amounts = async () =>
        (await kept(page)).inquiry.incentives.map((one) => one.amount).join();
    equal('into a field that has just come', await amounts(), '5000');
    await before_a_frame(page, [
        {at: named(options_part), types: '5100'},
        {at: named(costs_part), types: '2000'},
        {at: named(options_part), types: '5200'},
        {at: named(costs_part), keeps: '2100'},
    ]);
    await settled(page);
    equal('and again, before it was drawn', await amounts(), '5200,2000');
    equal('not committed yet', await field(page, costs_part).inputValue(), '2100');
    await view(page, 'Tour');
    const lights = '.stepper input';
    for (const area of await page.locator('.area-link').all()) {
        await area.click();
        await unfold(page);
        if ((await page.locator(lights).count()) > 0) break;
    }
    const before = await page.locator(lights).first().inputValue();
    const [one, two] = [Number(before) + 1, Number(before) + 2].map(String);
    await before_a_frame(page, [
        {at: lights, types: one},
        {at: lights, types: two},
    ]);
    await settled(page);
    equal('a number of an option', await page.locator(lights).first().inputValue(), two);
    equal(
        'in the home',
        (await kept(page)).inquiry.selections.some((pick) => pick.quantity === two),
        true,
    );
}

export async function typed_before_the_use_of_an_incentive_is_answered({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_part(page, 'incentives');
    const use = (words) =>
        page.click(`.incentive:has-text("Winter start") label:text-is("${words}")`);
    await use('not used');
    await settled(page);
    const free = await hold(context);
    await use('all toward closing costs');
    await use('in parts');
    await type(page, options_part, '5000');
    free();
    await settled(page);
    equal(
        'what was chosen before stays, without the part',
        JSON.stringify((await kept(page)).inquiry.incentives),
        JSON.stringify([
            {id: 'winter-start', use: 'options', amount: '5000'},
            {id: 'winter-start', use: 'closing_costs'},
        ]),
    );
    equal('and is told', await field(page, costs_part).inputValue(), '2500.00');
}

export async function typed_while_another_tab_changes_it({server, context}) {
    const one = await open_page(context, server.url);
    const two = await open_page(context, server.url, '.start');
    await two.click('.kept-name');
    await settled(two);
    await view(one, 'Budget');
    await view(two, 'Budget');
    await field(one, 'Gross monthly income').focus();
    await one.keyboard.press('End');
    await one.keyboard.type('0');
    await type(two, 'Gross monthly income', '8000');
    await type(two, 'Monthly debt payments', '410');
    await field(one, 'Monthly debt payments').evaluate(
        (debts) =>
            new Promise((resolve) => {
                const look = () => (debts.value === '410' ? resolve() : setTimeout(look, 20));
                look();
            }),
    );
    equal('typing goes on', await field(one, 'Gross monthly income').inputValue(), '99500');
    await one.keyboard.press('Enter');
    await settled(one);
    const {income, debts} = (await kept(one)).inquiry;
    equal('and is what counts', income.monthly, '99500');
    equal('beside what the other changed', debts.monthly, '410');
}

export async function typed_while_a_move_is_asked({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Site');
    let free = await hold(context);
    await page.locator('.row:has(.row-title:text-is("Lot 12")) input').click();
    await page.click('.view:has(.view-name:text-is("Loans"))');
    await page.click('#loan-0 > button');
    await page.locator('.loan').getByLabel('Down payment', {exact: true}).fill('8');
    await page.keyboard.press('Enter');
    free();
    await page.waitForSelector('.last-remarks');
    await settled(page);
    const {inquiry} = await kept(page);
    equal('the lot', inquiry.lot, '12');
    equal('and the down payment', JSON.stringify(inquiry.scenarios[0].down), '{"percent":"8"}');

    await view(page, 'Site');
    free = await hold(context);
    await page.locator('.row:has(.row-title:text-is("Lot 7")) input').click();
    await page.click('button:text-is("Open…")');
    await page.click('.dialog .row-button:has(span:text-is("Buyer 4"))');
    const other = JSON.stringify((await kept(page)).inquiry);
    free();
    await settled(page);
    equal('another buyer does not move', JSON.stringify((await kept(page)).inquiry), other);
}

export async function typed_while_money_is_put_to_use({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_part(page, 'builders-money');
    await page.click('.mix-button:text-is("All off the price")');
    await page.waitForSelector('.split-use .main-button:enabled');
    const free = await hold(context);
    await page.click('.split-use .main-button');
    await page.click('#afford > button');
    await type(page, 'Gross monthly income', '12345');
    await type(page, 'Monthly debt payments', '321');
    free();
    await settled(page);
    const {inquiry} = await kept(page);
    equal('the income', inquiry.income.monthly, '12345');
    equal('the debts', inquiry.debts.monthly, '321');
    equal('the money', inquiry.incentives[0].use, 'options');
}
