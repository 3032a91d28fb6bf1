// Three sizes, light and dark, and paper. The pictures are for people to look at.
import {execFileSync} from 'node:child_process';
import {readdirSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';

import {
    check,
    equal,
    kept,
    open_page,
    program,
    root,
    settled,
    shots,
    sizes,
    view,
    view_number,
    until,
    areas_of,
    walk,
    words_of,
    in_every_part,
} from './support.mjs';

const views = ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check'];

/// Things to press that are smaller than a finger, or run out of the page.
const misfits = (page) =>
    page.evaluate(() => {
        const seen = (one) =>
            one.getClientRects().length > 0 && getComputedStyle(one).visibility === 'visible';
        const small = Array.from(
            document.querySelectorAll(
                'button, select, .row-label, summary, .segment, ' +
                    'input:not([type=radio]):not([type=checkbox]):not([type=file])',
            ),
        )
            .filter((one) => seen(one) && one.getBoundingClientRect().height < 43.5)
            .map(
                (one) =>
                    `${one.tagName}.${one.className} ${Math.round(one.getBoundingClientRect().height)} px`,
            );
        const wide = document.documentElement.scrollWidth - innerWidth;
        const bar = document.querySelector('.bar').getBoundingClientRect();
        return {
            small,
            wide,
            bar: Math.round(bar.height),
            sight: bar.bottom <= innerHeight + 1 && bar.top > 0,
        };
    });

export async function every_view_at_every_size({server, chrome}) {
    for (const [width, height] of sizes) {
        for (const colorScheme of ['light', 'dark']) {
            const context = await chrome.newContext({
                viewport: {width, height},
                colorScheme,
                hasTouch: width < 1000,
            });
            const page = await open_page(context, server.url);
            for (const name of views) {
                await view(page, name);
                const where = `${name} at ${width} x ${height}, ${colorScheme}`;
                await page.screenshot({
                    path: join(shots, `${name.toLowerCase()}-${width}-${colorScheme}.png`),
                });
                await in_every_part(page, async (part) => {
                    const found = await misfits(page);
                    check(
                        `${where}, ${part}: nothing runs out`,
                        found.wide <= 0,
                        `${found.wide} px`,
                    );
                    check(
                        `${where}, ${part}: big enough to touch`,
                        found.small.length === 0,
                        found.small.slice(0, 4).join('; '),
                    );
                    const wider = await page.$$eval(
                        '.rate-moves .scroll',
                        (all) => all.filter((one) => one.scrollWidth > one.clientWidth + 1).length,
                    );
                    equal(`${where}, ${part}: no rates to push sideways`, wider, 0);
                });
                const {small, wide, bar, sight} = await misfits(page);
                check(`${where}: nothing runs out of the page`, wide <= 0, `${wide} px`);
                check(
                    `${where}: big enough to touch`,
                    small.length === 0,
                    small.slice(0, 4).join('; '),
                );
                if (name === 'Schedule') {
                    const tables = '.scroll:has(.years)';
                    const wider = await page.$$eval(
                        tables,
                        (all) => all.filter((one) => one.scrollWidth > one.clientWidth + 1).length,
                    );
                    equal(`${where}: no table to push sideways`, wider, 0);
                }
                check(
                    `${where}: the bar is in sight and leaves room`,
                    sight && bar < height * 0.34,
                    `${bar} px`,
                );
            }
            await context.close();
        }
    }
}

/// Of the opening tour: the rows that stand whole above the bar, the highest of the closed ones, how
/// high the bar is, and the smallest letters in sight.
const first_screen = (page) =>
    page.evaluate(() => {
        const bar = document.querySelector('.bar').getBoundingClientRect();
        const rows = Array.from(
            document.querySelectorAll('.option .single, .option .group-head'),
            (one) => one.getBoundingClientRect(),
        );
        const words = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        let smallest = Infinity;
        while (words.nextNode()) {
            const {parentElement: by, data} = words.currentNode;
            if (!data.trim() || by.getClientRects().length === 0) continue;
            smallest = Math.min(smallest, parseFloat(getComputedStyle(by).fontSize));
        }
        return {
            bar: Math.round(bar.height),
            above: rows.filter(({bottom}) => bottom <= bar.top).length,
            all: rows.length,
            highest: Math.round(Math.max(...rows.map(({height}) => height))),
            smallest,
            wide: document.documentElement.scrollWidth - innerWidth,
        };
    });

export async function the_first_screen_has_room({server, chrome}) {
    for (const locale of ['en-US', 'es-US']) {
        for (const [width, height, bar, rows] of [
            [1180, 820, 96, 8],
            [820, 1180, 120, 9],
            [390, 844, 120, 5],
            [844, 390, 64, 0],
            [1440, 900, 96, 8],
        ]) {
            const context = await chrome.newContext({
                viewport: {width, height},
                locale,
                hasTouch: width < 1200,
            });
            const page = await open_page(context, server.url);
            await settled(page);
            for (const [i, area] of (await areas_of(page)).entries()) {
                if (i > 0) await walk(page, area);
                const seen = await first_screen(page);
                const where = `${locale}, ${width} x ${height}, ${area}`;
                check(`${where}: the bar`, seen.bar <= bar, `${seen.bar} px of ${bar}`);
                check(
                    `${where}: rows in sight`,
                    seen.above >= Math.min(rows, seen.all),
                    `${seen.above} of ${seen.all}`,
                );
                check(`${where}: a closed row`, seen.highest <= 64, `${seen.highest} px`);
                check(`${where}: the smallest letters`, seen.smallest >= 12, `${seen.smallest} px`);
                check(`${where}: nothing runs out of the page`, seen.wide <= 0, `${seen.wide} px`);
            }
            await context.close();
        }
    }
}

/// Pictures in sight, and where the names of a group's closed rows begin.
const beside_names = (page) =>
    page.evaluate(() => {
        const group = document.querySelector('.options:has(.single)');
        const names = [...group.querySelectorAll('.single .row-name, .group-head .row-name')];
        return {
            images: [...document.querySelectorAll('.options .picture img')].map((one) => ({
                drawn: one.complete && one.naturalWidth > 0,
                silent: one.alt === '',
                box: [one.clientWidth, one.clientHeight],
            })),
            rooms: group.querySelectorAll('.look').length,
            lefts: [...new Set(names.map((one) => Math.round(one.getBoundingClientRect().left)))],
        };
    });

const in_the_kitchen = async (page) => {
    await walk(page, (await areas_of(page))[4]);
    await settled(page);
};

const all_are_drawn = () =>
    [...document.querySelectorAll('.options .picture')]
        .filter((room) => room.getBoundingClientRect().top < innerHeight)
        .every((room) => {
            const one = room.querySelector('img');
            return one?.complete && one.naturalWidth > 0;
        });

export async function pictures_stand_beside_the_names({server, chrome}) {
    for (const [width, height] of sizes) {
        const context = await chrome.newContext({viewport: {width, height}});
        const page = await open_page(context, server.url);
        await in_the_kitchen(page);
        await until(page, all_are_drawn);
        const seen = await beside_names(page);
        const where = `at ${width} px`;
        check(`pictures ${where}`, seen.images.length > 3, seen.images.length);
        check(
            `named once, in words, ${where}`,
            seen.images.every((one) => one.silent),
        );
        check(
            `each four to three ${where}`,
            seen.images.every(({box: [wide, high]}) => Math.abs(wide * 3 - high * 4) <= 4),
            JSON.stringify(seen.images.map((one) => one.box)),
        );
        const {rooms, lefts} = seen;
        equal(`names begin under each other ${where}`, lefts.length, 1);
        await page.click('.row-more');
        await settled(page);
        await until(page, all_are_drawn);
        const large = await page.locator('.more .picture.large img').boundingBox();
        check(`the opened one is larger ${where}`, large?.width > 200, large?.width);

        // None to be had: no room is left for any.
        const other = await chrome.newContext({viewport: {width, height}});
        await other.route('**/api/pictures/*', (route) => route.fulfill({status: 404}));
        const bare = await open_page(other, server.url);
        await in_the_kitchen(bare);
        await until(bare, () => !document.querySelector('.options .picture'));
        const without = await beside_names(bare);
        equal(`of ${rooms} pictures no room is kept ${where}`, without.rooms, 0);
        check(
            `names begin further left ${where}`,
            without.lefts.length === 1 && without.lefts[0] < lefts[0] - 40,
            `${without.lefts} and ${lefts}`,
        );
        equal(`nothing went wrong ${where}`, [...page.wrong, ...bare.wrong].join('; '), '');
        await other.close();
        await context.close();
    }
}

export async function colors_are_shown_as_they_are({server, chrome}) {
    const context = await chrome.newContext({viewport: {width: 1180, height: 820}});
    const page = await open_page(context, server.url);
    await in_the_kitchen(page);
    await page.locator('.option.choice .group-head').last().click();
    const shown = await page.$$eval('.opened .row .swatch rect', (all) =>
        all.map((one) => getComputedStyle(one).fill),
    );
    check('as many colors as choices', shown.length > 1, shown.length);
    equal('each its own', new Set(shown).size, shown.length);
    equal('nothing went wrong', page.wrong.join('; '), '');
    await context.close();
}

export async function bars_share_one_scale({server, chrome}) {
    for (const [width, height] of sizes) {
        const context = await chrome.newContext({viewport: {width, height}});
        const page = await open_page(context, server.url);
        await view(page, 'Loans');
        const boxes = await page.$$eval('.overview .month-bar', (bars) =>
            bars.map((bar) =>
                [bar.getBoundingClientRect().left, bar.getBoundingClientRect().width]
                    .map(Math.round)
                    .join(' wide '),
            ),
        );
        equal(`all bars at ${width} px lie on one scale`, new Set(boxes).size, 1);
        equal(`one for each way to pay at ${width} px`, boxes.length, 6);
        await context.close();
    }
}

export async function the_tour_at_three_sizes({server, chrome}) {
    for (const [width, height] of sizes) {
        const context = await chrome.newContext({viewport: {width, height}});
        const page = await open_page(context, server.url);
        const areas = await areas_of(page);
        let touched = 0;
        for (const area of areas) {
            await walk(page, area);
            const row = page.locator('.option.upgrade .row:not(.on):not(.fixed) input').first();
            if ((await row.count()) === 0) continue;
            const before = (await kept(page)).inquiry.selections.length;
            await row.click();
            await until(
                page,
                (count) => {
                    const {current} = JSON.parse(sessionStorage.getItem('quoin.open'));
                    return (
                        JSON.parse(localStorage.getItem(`quoin.buyer.${current}`)).inquiry
                            .selections.length !== count
                    );
                },
                before,
            );
            touched += 1;
        }
        check(
            `the tour at ${width} px: a touch in most areas`,
            touched >= 6,
            `${touched} of ${areas.length}`,
        );
        await page.screenshot({path: join(shots, `tour-touched-${width}.png`)});
        equal(`the tour at ${width} px: no errors`, page.wrong.length, 0);
        await context.close();
    }
}

/// Of a PDF: how many pages, and what can be read on each.
function pages_of(path) {
    const count = Number(
        /Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [path], {encoding: 'utf8'}))[1],
    );
    const text = execFileSync('pdftotext', ['-layout', path, '-'], {encoding: 'utf8'});
    return {count, pages: text.split('\f').map((one) => one.replace(/\s+/g, ' '))};
}

/// Two sides of Letter paper, each with its number.
function two_sides(path, of, name) {
    const {count, pages} = pages_of(path);
    equal(`${name}: pages`, count, 2);
    for (const number of [1, 2]) {
        const foot = `${number} ${of} 2`;
        check(`${name}: "${foot}" at the foot`, pages[number - 1]?.trimEnd().endsWith(foot));
    }
    return pages.join(' ');
}

/// What the command writes, in a browser of its own.
export async function sheets_of_every_buyer({chrome}) {
    const folder = join(root, 'examples/oxbarrow-meadow/buyers');
    const context = await chrome.newContext();
    const page = await context.newPage();
    for (const file of readdirSync(folder).sort()) {
        for (const [language, of] of [
            ['en', 'of'],
            ['es', 'de'],
        ]) {
            const name = `sheet-${file.replace('.json', '')}-${language}`;
            const html = join(shots, `${name}.html`);
            const words = ['sheet', join(folder, file), '-o', html, '--language', language];
            execFileSync(program, [...words, '--force']);
            await page.goto(`file://${html}`);
            const path = join(shots, `${name}.pdf`);
            await page.pdf({path, preferCSSPageSize: true, printBackground: true});
            two_sides(path, of, name);
            const letters = await page.$$eval('.sheet *', (all) =>
                all
                    .filter((one) => !one.closest('svg') && one.firstChild?.nodeType === 3)
                    .map((one) => parseFloat(getComputedStyle(one).fontSize)),
            );
            check(`${name}: letters on a screen`, Math.min(...letters) >= 16, `${letters}`);
            await page.emulateMedia({media: 'print'});
            const printed = await page.$eval('.sheet', (one) => getComputedStyle(one).fontSize);
            equal(`${name}: letters on paper, 9 pt`, printed, '12px');
            await page.emulateMedia({media: null});
        }
    }
    await context.close();
}

export async function one_sheet_on_the_page_and_from_the_command({server, chrome}) {
    for (const [locale, language] of [
        ['en-US', 'en'],
        ['es-US', 'es'],
    ]) {
        const context = await chrome.newContext({locale, colorScheme: 'dark'});
        const page = await open_page(context, server.url);
        await view_number(page, 5);
        await page.waitForSelector('.paper article');
        const {inquiry, hand} = await kept(page);
        const html = join(shots, `sheet-of-the-page-${language}.html`);
        const asked = join(shots, 'sheet-of-the-page.json');
        const price_book = join(root, 'examples/oxbarrow-meadow/pricebook.json');
        writeFileSync(asked, JSON.stringify({...inquiry, price_book}));
        const words = ['sheet', asked, '-o', html, '--scenario', hand, '--language', language];
        execFileSync(program, [...words, '--force']);
        const other = await context.newPage();
        await other.goto(`file://${html}`);
        const flat = (text) => text.replace(/\s+/g, ' ').trim();
        const written = flat(await words_of(other, '.sheet'));
        check(`${language}: it says much`, written.length > 3000, `${written.length}`);
        equal(`${language}: the same words`, flat(await words_of(page, '.paper')), written);
        const paper = await page.$eval(
            '.paper',
            (one) => getComputedStyle(one.shadowRoot.querySelector('article')).backgroundColor,
        );
        equal(`${language}: white paper in the dark`, paper, 'rgb(255, 255, 255)');
        equal(`${language}: no errors`, page.wrong.length, 0);
        await context.close();
    }
}

export async function on_paper({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Sheet');
    const price = await page.textContent('.bar [data-figure="contract_price"]');
    const path = join(shots, 'sheet-Letter.pdf');
    await page.pdf({path, preferCSSPageSize: true, printBackground: true});
    const flat = two_sides(path, 'of', 'Letter');
    const hand = (await kept(page)).hand;
    for (const words of [
        'Teasel plan, lot 7',
        hand,
        price,
        'a month, with taxes and insurance',
        'APR',
        'an approval or an offer to lend',
        'Cash to close',
        'permit',
        'You may choose any lender',
        'Licensed loan originator',
        'Main floor',
        'Lot 7',
        '50 ft',
    ]) {
        check(`Letter: "${words}" is on paper`, flat.includes(words), flat.slice(0, 600));
    }
    check('no buttons on paper', !flat.includes('Undo') && !flat.includes('This buyer…'));
    await view(page, 'Loans');
    const rules = await page.evaluate(() => document.adoptedStyleSheets.length);
    equal('the paper of the sheet is gone with it', rules, 0);
    execFileSync('pdftoppm', ['-r', '60', '-png', path, join(shots, 'sheet-Letter')]);
}
