// The charts: round scales, words that do not lie on each other, and at each place the text of the
// answer.
import {
    ask,
    check,
    equal,
    five_sizes,
    kept,
    open_page,
    serious,
    settled,
    until,
    view,
    view_number,
    open_part,
} from './support.mjs';

/// The views with a chart, by their number among the views, for the names are in two languages; and
/// the part that has it, where the view has parts.
const with_chart = [
    ['Loans', 1, 'years'],
    ['Budget', 2, 'builders-money'],
    ['Budget', 2, 'later'],
    ['Schedule', 4],
];

const dollars = (amount) => {
    const [whole, cents] = amount.replace('-', '').split('.');
    const sign = amount.startsWith('-') ? '−' : '';
    return `${sign}$${whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',')}${cents ? `.${cents}` : ''}`;
};
const signed = (amount) => (/^-|^0(\.0*)?$/.test(amount) ? dollars(amount) : `+${dollars(amount)}`);

/// Every axis of a page, by its ticks; and every text of its charts with the room it takes.
const seen_in = (page) =>
    page.evaluate(() => {
        const axes = Array.from(document.querySelectorAll('.chart .axis'), (axis) => ({
            of: axis.dataset.axis,
            ticks: Array.from(axis.querySelectorAll('text'), (one) => ({
                value: Number(one.dataset.value),
                words: one.textContent,
            })),
        }));
        const charts = Array.from(document.querySelectorAll('.chart'), (chart) => {
            const {left, right} = chart.getBoundingClientRect();
            return {
                left,
                right,
                texts: Array.from(chart.querySelectorAll('svg text'), (one) => {
                    const box = one.getBoundingClientRect();
                    return {
                        words: one.textContent,
                        left: box.left,
                        right: box.right,
                        top: box.top,
                        bottom: box.bottom,
                        letters: parseFloat(getComputedStyle(one).fontSize),
                    };
                }),
            };
        });
        return {axes, charts};
    });

/// Steps of one, two or five, by tens: 5,000 but not 4,987.32.
function is_round(ticks) {
    const steps = ticks.slice(1).map((one, i) => one.value - ticks[i].value);
    const unit = 10 ** Math.floor(Math.log10(steps[0]) + 1e-9);
    const near = (a, b) => Math.abs(a - b) < unit * 1e-6;
    return (
        steps.every((step) => near(step, steps[0])) &&
        [1, 2, 5, 10].some((times) => near(times * unit, steps[0])) &&
        ticks.every(({value}) => near(Math.round(value / steps[0]) * steps[0], value))
    );
}

function years_are_round(ticks) {
    const last = Math.max(...ticks.map(({value}) => value));
    return (
        ticks.some(({value}) => value === 0) &&
        ticks.every(({value}) => value <= 1 || value === last || last <= 6 || value % 5 === 0)
    );
}

/// Texts that lie on each other by more than a hair.
function overlaps(texts) {
    const hair = 1;
    return texts.flatMap((one, i) =>
        texts
            .slice(i + 1)
            .filter(
                (other) =>
                    one.left + hair < other.right &&
                    other.left + hair < one.right &&
                    one.top + hair < other.bottom &&
                    other.top + hair < one.bottom,
            )
            .map((other) => `${one.words} | ${other.words}`),
    );
}

export async function charts_are_round_and_clear({server, chrome}) {
    for (const locale of ['en-US', 'es-US']) {
        for (const [width, height] of five_sizes) {
            const context = await chrome.newContext({viewport: {width, height}, locale});
            const page = await open_page(context, server.url);
            for (const [name, number, part] of with_chart) {
                await view_number(page, number);
                if (part) await open_part(page, part);
                await page.waitForSelector('.chart svg text');
                const {axes, charts} = await seen_in(page);
                const where = `${name}, ${width} x ${height}, ${locale}`;
                for (const {of, ticks} of axes) {
                    const words = ticks.map((one) => one.words).join(' ');
                    check(`${where}: at least two ticks`, ticks.length >= 2, words);
                    check(
                        `${where}: round ${of}s`,
                        of === 'year' ? years_are_round(ticks) : is_round(ticks),
                        words,
                    );
                    if (of === 'amount') check(`${where}: no cents`, !/\.\d/.test(words), words);
                }
                for (const {left, right, texts} of charts) {
                    const on = overlaps(texts);
                    check(`${where}: no words on others`, on.length === 0, on.join('; '));
                    const out = texts.filter((one) => one.left < left - 1 || one.right > right + 1);
                    check(
                        `${where}: no words out of the chart`,
                        out.length === 0,
                        out.map((one) => one.words).join('; '),
                    );
                    check(
                        `${where}: letters of 12 px at least`,
                        texts.every((one) => one.letters >= 12),
                    );
                }
            }
            equal(`${width} x ${height}, ${locale}: no errors`, page.wrong.join(), '');
            await context.close();
        }
    }
}

const figures = (page) =>
    page.$$eval('.chart .label-figure', (all) => all.map((one) => one.textContent));
const words_at = (page) => page.getAttribute('.plot', 'aria-valuetext');

/// Points at a share of the way across the drawing.
async function point_at(page, year, last) {
    const {x, y} = await page.$eval(
        '.plot svg',
        (svg, [at, end]) => {
            const box = svg.getBoundingClientRect();
            const unit = box.width / svg.viewBox.baseVal.width;
            const line = svg.querySelector('.tick line');
            const [left, right] = ['x1', 'x2'].map((name) => Number(line.getAttribute(name)));
            return {
                x: box.left + (left + ((right - left) * at) / end) * unit,
                y: box.top + box.height / 3,
            };
        },
        [year, last],
    );
    await page.mouse.move(x, y);
    await until(page, () => true);
}

async function loans_read(page, answer, curve, year, name) {
    const told = answer.scenarios.filter((one) => one.apart.length > 0);
    const others = told.filter((one) => one.terms.name !== answer.apart_from);
    const wanted = others.map((one) => signed(one.apart[year][curve])).sort();
    const found = (await figures(page)).filter((words) => words.includes('$')).sort();
    equal(name, found.join(' '), wanted.join(' '));
    const words = await words_at(page);
    check(
        `${name}: read out`,
        wanted.every((amount) => words.includes(` ${amount}`)),
        words,
    );
}

export async function a_chart_of_loans_reads_what_the_engine_says({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    await open_part(page, 'years');
    await page.waitForSelector('.plot');
    const {inquiry, hand} = await kept(page);
    const answer = ask(cases, 'compare', inquiry, ['--scenario', hand]);
    equal('held against the loan shown', answer.apart_from, hand);
    await loans_read(page, answer, 'spent_and_owed', 10, 'at first, year 10');
    await page.focus('.plot');
    for (const [key, year] of [
        ['Home', 0],
        ['ArrowRight', 1],
        ['ArrowUp', 2],
        ['PageUp', 7],
        ['ArrowLeft', 6],
        ['End', 30],
        ['ArrowRight', 30],
    ]) {
        await page.keyboard.press(key);
        await settled(page);
        await loans_read(page, answer, 'spent_and_owed', year, `${key}, year ${year}`);
    }
    for (const curve of ['balance', 'paid']) {
        await page
            .locator('input[name="curve"]')
            .nth(curve === 'balance' ? 1 : 2)
            .check();
        for (const year of [4, 22]) {
            await page.locator('.plot').scrollIntoViewIfNeeded();
            await point_at(page, year, 30);
            await settled(page);
            await loans_read(page, answer, curve, year, `${curve}, pointed at year ${year}`);
        }
    }
    await page.click('details:has-text("Show as a table") > summary');
    const rows = await page.$$eval('details[open] tbody tr', (all) =>
        all.map((row) => Array.from(row.cells, (one) => one.textContent)),
    );
    equal('the table goes through the longest loan', rows.length, 31);
    const [, ...cells] = rows[12];
    answer.scenarios.forEach((one, i) => {
        const own = one.curve[12] ? dollars(one.curve[12].paid) : '';
        const apart = one.terms.name === hand ? '' : signed(one.apart[12].paid);
        equal(`the table has it too, ${one.terms.name}`, cells[i], own + apart);
    });
    // Another loan shown is another line of zero.
    const other = inquiry.scenarios.find((one) => one.name !== hand).name;
    await page.click('.overview-row:not(.on)');
    await settled(page);
    const now = (await kept(page)).hand;
    equal('another loan is shown', now, other);
    const anew = ask(cases, 'compare', inquiry, ['--scenario', now]);
    await loans_read(page, anew, 'paid', 22, 'against another loan');
    await serious(page, 'loans with their charts');
    equal('no errors in the page', page.wrong.join(), '');
}

export async function a_picture_of_the_schedule_reads_its_rows({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Schedule');
    const {inquiry, hand} = await kept(page);
    const answer = ask(cases, 'schedule', inquiry, ['--scenario', hand]);
    await page.focus('.plot');
    await page.keyboard.press('Home');
    equal('the loan at the closing', (await figures(page))[0], dollars(answer.scenario.loan));
    for (const year of [1, 2, 3, 12, 30]) {
        if (year < 4) await page.keyboard.press('ArrowRight');
        else await point_at(page, year, 30);
        const row = answer.years[year - 1];
        await settled(page);
        equal(
            `year ${year}`,
            (await figures(page)).join(' '),
            [row.balance, row.mortgage_insurance, row.interest, row.principal]
                .map(dollars)
                .join(' '),
        );
    }
    await page.getByLabel('Extra principal each month').fill('400');
    await page.getByLabel('Extra principal each month').press('Enter');
    await settled(page);
    const sooner = ask(cases, 'schedule', inquiry, ['--scenario', hand, '--extra', '400']);
    await page.focus('.plot');
    await page.keyboard.press('End');
    await settled(page);
    equal(
        'it ends with the loan',
        await page.getAttribute('.plot', 'aria-valuenow'),
        `${sooner.years.length}`,
    );
    await serious(page, 'a schedule with its picture');
}

export async function a_frontier_reads_its_splits({cases, server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    await open_part(page, 'builders-money');
    await page.waitForSelector('.credit-chart .mark.dot');
    const {inquiry, hand} = await kept(page);
    const amount = await page.getByLabel('The builder gives').inputValue();
    const one = ask(cases, 'credit', inquiry, [
        ...['--amount', amount.replace(/,/g, ''), '--scenario', hand, '--years', '7', '--instead'],
    ]).scenarios.find((each) => each.terms.name === hand);
    const beaten = (mix) =>
        one.frontier.some((other) => {
            const cash = Number(other.cash_to_close) - Number(mix.cash_to_close);
            const month = Number(other.monthly_now) - Number(mix.monthly_now);
            return cash <= 0 && month <= 0 && (cash < 0 || month < 0);
        });
    equal(
        'the efficient splits',
        await page.locator('.mark.dot.efficient').count(),
        one.frontier.filter((mix) => !beaten(mix)).length,
    );
    const reads = async (mix, name) => {
        const words = await page.textContent('.chosen-words');
        check(`${name}: month`, words.includes(dollars(mix.monthly_now)), words);
        check(`${name}: cash`, words.includes(dollars(mix.cash_to_close)), words);
        equal(
            `${name}: read out`,
            await page.getAttribute('.credit-chart .plot', 'aria-valuetext'),
            words,
        );
    };
    const uses = one.each_use.map(({mix}) => mix);
    const first = [one.lowest_payment, one.least_cash, one.least_cost, ...uses];
    await reads(
        first.find((mix) => mix?.every_incentive_allows),
        'at first',
    );
    await page.focus('.credit-chart .plot');
    await page.keyboard.press('Home');
    const least = Math.min(...one.frontier.map((mix) => Number(mix.cash_to_close)));
    await reads(
        one.frontier.find((mix) => Number(mix.cash_to_close) === least),
        'the least cash',
    );
    await page.locator('.credit-chart .mark.dot.efficient').nth(4).click({force: true});
    const by_cash = one.frontier
        .filter((mix) => !beaten(mix))
        .sort((a, b) => Number(a.cash_to_close) - Number(b.cash_to_close));
    const at = await page.$$eval('.mark.dot', (dots) =>
        dots.indexOf(document.querySelectorAll('.mark.dot.efficient')[4]),
    );
    await reads(one.frontier[at], 'a dot that is touched');
    check('some are joined', by_cash.length >= 2, by_cash.length);
    await serious(page, 'a budget with its chart');
}

/// How far the colors of what is drawn stand from the ground: the least of them.
const contrasts = (page) =>
    page.evaluate(() => {
        const numbers = (color) => color.match(/[\d.]+/g).map(Number);
        const light = ([r, g, b]) => {
            const [x, y, z] = [r, g, b]
                .map((part) => part / 255)
                .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
            return 0.2126 * x + 0.7152 * y + 0.0722 * z;
        };
        const ground = light(numbers(getComputedStyle(document.body).backgroundColor));
        const shown = document.querySelectorAll(
            '.chart .curve, .chart .frontier, .chart .mark:not(.dot), .chart .mark.efficient, ' +
                '.chart .part, .chart .key, .chart text, .chart .chosen-ring',
        );
        return Array.from(shown, (one) => {
            const style = getComputedStyle(one);
            const drawn = one.matches('text, .part, .key, .mark:not(.use, .none)');
            const own = light(numbers(drawn ? style.fill : style.stroke));
            const [low, high] = [own, ground].sort((a, b) => a - b);
            return {what: one.getAttribute('class'), by: (high + 0.05) / (low + 0.05)};
        }).sort((a, b) => a.by - b.by);
    });

export async function charts_stand_out_from_their_ground({server, chrome}) {
    for (const theme of [
        {colorScheme: 'light'},
        {colorScheme: 'dark'},
        {colorScheme: 'light', forcedColors: 'active'},
        {colorScheme: 'dark', forcedColors: 'active'},
    ]) {
        const context = await chrome.newContext({viewport: {width: 1180, height: 820}, ...theme});
        const page = await open_page(context, server.url);
        for (const [name, , part] of with_chart) {
            await view(page, name);
            if (part) await open_part(page, part);
            await page.waitForSelector('.chart svg text');
            for (const media of ['screen', 'print']) {
                await page.emulateMedia({media, ...theme});
                const [least] = await contrasts(page);
                check(
                    `${name}, ${JSON.stringify(theme)}, ${media}: three to one`,
                    least.by >= 3,
                    `${least.what}: ${least.by.toFixed(2)}`,
                );
                check(`${name}, ${media}: it is drawn`, await page.isVisible('.chart svg'));
            }
            await page.emulateMedia({media: 'screen', ...theme});
        }
        await view(page, 'Loans');
        const dashes = await page.$$eval('.chart path.curve:not(.leader)', (all) =>
            all.map((one) => getComputedStyle(one).strokeDasharray),
        );
        equal('no two lines have the same dashes', new Set(dashes).size, dashes.length);
        await context.close();
    }
}
