// The page in another browser than the one that all other tests run in.
import {execFileSync} from 'node:child_process';
import {writeFileSync} from 'node:fs';
import {join} from 'node:path';

import {Firefox} from './bidi.mjs';
import {
    ask,
    bare,
    calm,
    check,
    count_questions,
    deadline,
    equal,
    five_sizes,
    kept_here,
    numbers_in,
    shots,
} from './support.mjs';

async function settled(firefox) {
    const end = Date.now() + deadline;
    while (!(await firefox.run(calm))) if (Date.now() > end) throw new Error('never settled');
}

async function view(firefox, place) {
    await firefox.run((at) => document.querySelectorAll('.view')[at].click(), place);
    await settled(firefox);
}

const kept = (firefox) => firefox.run(kept_here);

/// The figures that the page shows with the engine's own text beside them.
const figures_in = (firefox, where) =>
    firefox.run(
        (part) =>
            Array.from(document.querySelectorAll(`${part} [data-exact]`), (one) => [
                one.dataset.figure ?? '',
                one.dataset.exact,
            ]),
        where,
    );

const of_bar = {
    'contract_price': (tour) => tour.contract_price,
    'monthly.total': (tour) => tour.scenario.monthly.total,
    'cash.needed': (tour) => tour.scenario.cash.needed,
    'cash.to_close': (tour) => tour.scenario.cash.to_close,
};

/// The bar says what the command line says, and so does every row.
async function as_on_the_command_line(firefox, cases, name) {
    const {inquiry, hand} = await kept(firefox);
    const tour = ask(cases, 'tour', inquiry, ['--scenario', hand]);
    const bar = new Map(await figures_in(firefox, '.bar .figures'));
    for (const [figure, of] of Object.entries(of_bar))
        equal(`${name}: ${figure}`, bar.get(figure), of(tour));
    const known = numbers_in(tour);
    const shown = await figures_in(firefox, '.main');
    const strange = shown
        .map(([, exact]) => exact)
        .filter((one) => !known.has(bare(one.replace('-', ''))));
    check(`${name}: every row`, strange.length === 0, strange.slice(0, 8).join(', '));
    return shown.length;
}

/// Where a row stands that can be touched: of a group that is open, or alone.
const touchable = '.options .row:not(.fixed) input:not(:disabled)';

async function walks_and_touches(firefox, cases) {
    let [held, touched] = [0, 0];
    const areas = await firefox.run(
        () => document.querySelectorAll('.areas .area-link:not(.areas-top *)').length,
    );
    for (let area = 0; area < areas; area += 1) {
        await firefox.run(
            (at) => document.querySelectorAll('.areas .area-link:not(.areas-top *)')[at].click(),
            area,
        );
        await settled(firefox);
        await firefox.run(() =>
            document.querySelector('.group-head[aria-expanded="false"]')?.click(),
        );
        for (const place of [0, 1]) {
            const at = await firefox.run(
                (rows, which) => {
                    const free = [...document.querySelectorAll(rows)].filter(
                        (one) => one.type === 'checkbox' || !one.checked,
                    );
                    const row = free.at(-1 - which);
                    if (!row) return null;
                    row.scrollIntoView({block: 'center'});
                    const box = row.closest('.row').getBoundingClientRect();
                    return [box.left + box.width / 3, box.top + box.height / 2];
                },
                touchable,
                place,
            );
            if (!at) continue;
            const before = await kept(firefox);
            await firefox.click(...at);
            await settled(firefox);
            held += await as_on_the_command_line(firefox, cases, `area ${area}, touch ${place}`);
            if (JSON.stringify((await kept(firefox)).inquiry) !== JSON.stringify(before.inquiry))
                touched += 1;
        }
    }
    console.log(`  ${touched} touches, ${held} figures held against the command line`);
    check('twenty touches', touched >= 20, touched);
}

async function by_keys_alone(firefox, cases) {
    await firefox.run(() => document.activeElement.blur());
    const before = (await kept(firefox)).inquiry;
    let reached = false;
    for (let i = 0; i < 120 && !reached; i += 1) {
        await firefox.press('\uE004'); // Tab
        reached = await firefox.run(() =>
            document.activeElement.matches('.option.upgrade .row:not(.fixed) input'),
        );
    }
    check('Tab reaches an option', reached);
    const on = await firefox.run(() => document.activeElement.closest('.row').innerText);
    await firefox.press(' ');
    await settled(firefox);
    const after = (await kept(firefox)).inquiry;
    check('Space changes it', JSON.stringify(after) !== JSON.stringify(before), on);
    await as_on_the_command_line(firefox, cases, 'by keys');
}

async function every_view_at_five_sizes(firefox) {
    for (let place = 0; place < 7; place += 1) {
        await view(firefox, place);
        for (const [width, height] of five_sizes) {
            await firefox.size(width, height);
            await settled(firefox);
            const wide = await firefox.run(
                () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
            );
            check(
                `view ${place} at ${width} x ${height}: nothing runs out of it`,
                wide <= 0,
                `${wide} px`,
            );
            const shown = await firefox.run(() => {
                // The sheet stands in a tree of its own.
                const paper = document.querySelector('.paper')?.shadowRoot;
                return [document.querySelector('.main').innerText, paper?.textContent ?? ''].join(
                    '',
                ).length;
            });
            check(`view ${place} at ${width} x ${height} is drawn`, shown > 200, shown);
        }
    }
    await firefox.size(1180, 820);
}

async function sheet_on_paper(firefox) {
    await view(firefox, 5);
    // Firefox draws bold letters of a font of many weights as shapes: of them there is no text.
    const words = await firefox.run(() =>
        [...document.querySelector('.paper').shadowRoot.querySelectorAll('td, dd')]
            .filter((one) => Number(getComputedStyle(one).fontWeight) < 600)
            .map((one) => one.textContent)
            .filter((one) => /^\$[\d,.]+$/.test(one)),
    );
    check('figures to print', words.length > 10, words.length);
    const file = join(shots, 'sheet-firefox.pdf');
    writeFileSync(file, await firefox.print());
    const text = execFileSync('pdftotext', ['-layout', file, '-'], {encoding: 'utf8'});
    const lost = words.filter((one) => !text.includes(one));
    check(`${words.length} figures are on paper`, lost.length === 0, lost.join(', '));
    check('no buttons on paper', !/Undo|This buyer/.test(text));
    const pages = Number(
        /Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [file], {encoding: 'utf8'}))[1],
    );
    check('two or three sheets of paper', pages >= 2 && pages <= 3, pages);
}

export async function the_page_in_firefox({cases, server}) {
    const firefox = new Firefox();
    try {
        await firefox.start();
        await firefox.before_pages(count_questions);
        await firefox.size(1180, 820);
        await firefox.go(server.url);
        await settled(firefox);
        await as_on_the_command_line(firefox, cases, 'at first');
        await walks_and_touches(firefox, cases);
        await by_keys_alone(firefox, cases);
        await every_view_at_five_sizes(firefox);
        await sheet_on_paper(firefox);
        equal('nothing went wrong in Firefox', firefox.wrong().join('; '), '');
    } finally {
        await firefox.stop();
    }
}
