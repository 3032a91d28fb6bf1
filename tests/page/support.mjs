// What the tests of the page share: a folder to serve, the program, a browser, a count of checks.
import {execFileSync, spawn} from 'node:child_process';
import {
    cpSync,
    existsSync,
    mkdirSync,
    mkdtempSync,
    readFileSync,
    rmSync,
    writeFileSync,
} from 'node:fs';
import {createRequire} from 'node:module';
import {tmpdir} from 'node:os';
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';
import {chromium} from 'playwright-core';

import {large_example} from './large.mjs';

export const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
export const program = process.env.QUOIN;
export const shots = join(process.env.QUOIN_BUILD, 'page-shots');
mkdirSync(shots, {recursive: true});

/// How often a touch is timed. More than a test run needs: by hand, for a longest one in a hundred.
const touches = Number(process.env.QUOIN_TOUCHES ?? 20);

/// Milliseconds until what is waited for will never come: a busy machine is no mistake of the page.
export const deadline = 120_000;

/// Widths and heights of a phone, a tablet and a desk.
/// A tablet and a phone, each held both ways, and a desk.
export const five_sizes = [
    [1180, 820],
    [820, 1180],
    [390, 844],
    [844, 390],
    [1440, 900],
];
export const sizes = [
    [390, 844],
    [820, 1180],
    [1440, 900],
];

let passed = 0;
const failed = [];

export function check(name, fine, detail = '') {
    if (fine) {
        passed += 1;
    } else {
        failed.push(name);
        console.log(`FAILED ${name}${detail ? `: ${detail}` : ''}`);
    }
}

export function equal(name, found, expected) {
    check(
        name,
        found === expected,
        `found ${JSON.stringify(found)}, expected ${JSON.stringify(expected)}`,
    );
}

export function summary() {
    console.log(`page: ${passed} passed, ${failed.length} failed`);
    return failed.length === 0;
}

const long_name =
    'Screened and roofed porch with a bench along its far side, ' +
    'Nichtsdestowenigergartenhausverbindungsgangdach';

/// A price book as large as any: 200 options, some with very long names.
function many() {
    const book = JSON.parse(readFileSync(join(root, 'tests/golden/data/book.json'), 'utf8'));
    book.community.place = 'venning-county';
    book.community.name = 'Two Hundred Options on the Long Road to the Other Side of the Meadow';
    for (let i = 0; i < 191; i += 1) {
        book.options.push({
            id: `extra-${i}`,
            name: i % 10 === 0 ? `${long_name} ${i}` : `Extra number ${i}`,
            area: i % 3 === 0 ? 'outside' : 'inside',
            price: `${100 + i}`,
        });
    }
    return book;
}

/// Nothing to choose at all.
function empty() {
    const book = JSON.parse(readFileSync(join(root, 'tests/golden/data/book.json'), 'utf8'));
    for (const member of ['included', 'options', 'incentives', 'model']) delete book[member];
    book.options = [];
    book.community.place = 'venning-county';
    book.community.name = 'Bare Land';
    return book;
}

function write(folder, book, inquiry) {
    mkdirSync(folder, {recursive: true});
    writeFileSync(join(folder, 'pricebook.json'), JSON.stringify(book));
    writeFileSync(join(folder, 'buyer.json'), JSON.stringify(inquiry));
}

/// The examples, a large price book and an empty one, with rates for all of them.
export function case_folder() {
    const folder = mkdtempSync(join(tmpdir(), 'quoin-page-'));
    cpSync(join(root, 'examples/oxbarrow-meadow'), join(folder, 'oxbarrow-meadow'), {
        recursive: true,
    });
    const cases = join(folder, 'oxbarrow-meadow/buyers/six-programs.json');
    const rates = join(folder, 'rates');
    cpSync(join(root, 'rates'), rates, {recursive: true});
    const inquiry = {
        ...JSON.parse(readFileSync(cases, 'utf8')),
        price_book: 'pricebook.json',
        plan: 'cabin',
        elevation: 'plain',
        lot: '1',
        wishes: [],
        requests: [],
        incentives: [],
        selections: [],
    };
    write(join(folder, 'many'), many(), {
        ...inquiry,
        buyer: 'Many',
        selections: ['flue'],
    });
    large_example(join(folder, 'oxbarrow-meadow'), join(folder, 'twice'));
    write(join(folder, 'empty'), empty(), {...inquiry, buyer: 'Bare'});
    return {folder, rates, six: cases};
}

export class Server {
    constructor(cases, port = 0) {
        this.cases = cases;
        this.port = port;
    }

    async start() {
        this.process = spawn(program, [
            'serve',
            this.cases.folder,
            '--rates',
            this.cases.rates,
            '--port',
            String(this.port),
        ]);
        let said = '';
        let wrong = '';
        this.process.stderr.on('data', (text) => {
            wrong += text;
        });
        await new Promise((resolve, reject) => {
            this.process.stdout.on('data', (text) => {
                said += text;
                if (said.includes('Ctrl-C')) resolve();
            });
            this.process.on('exit', () =>
                reject(new Error(`quoin serve has ended: ${said}${wrong}`)),
            );
        });
        this.wrong = wrong;
        this.url = /http:\/\/[^\s#]+/.exec(said)[0];
        this.port = Number(new URL(this.url).port);
        return this;
    }

    async stop() {
        this.process.removeAllListeners('exit');
        const ended = new Promise((resolve) => this.process.once('exit', resolve));
        this.process.kill('SIGTERM');
        return ended;
    }
}

/// The command line's answer to a question about an inquiry as the page has it.
export function ask(cases, question, inquiry, options = []) {
    const file = join(cases.folder, `asked-${process.pid}.json`);
    writeFileSync(file, JSON.stringify(inquiry));
    try {
        const text = execFileSync(
            program,
            [question, file, ...options, '--rates', cases.rates, '--json'],
            {encoding: 'utf8', maxBuffer: 1 << 28},
        );
        return JSON.parse(text);
    } finally {
        rmSync(file);
    }
}

/// Every amount and number written anywhere in an answer, without its sign.
export function numbers_in(value, found = new Set()) {
    if (typeof value === 'string' || typeof value === 'number') {
        for (const match of String(value).matchAll(/\d[\d,]*(\.\d+)?/g)) {
            found.add(bare(match[0]));
        }
    } else if (value && typeof value === 'object') {
        for (const one of Object.values(value)) numbers_in(one, found);
    }
    return found;
}

/// "$7,600" and "7600.00" are the same amount.
export function bare(text) {
    return text
        .replace(/[$,\s]/g, '')
        .replace(/(\.\d*?)0+$/, '$1')
        .replace(/\.$/, '');
}

/// "6" as rates are shown, with three places.
export function rate_shown(rate) {
    const [whole, rest = ''] = rate.split('.');
    return `${whole}.${rest.padEnd(3, '0')}%`;
}

export async function browser(settings = []) {
    // The whole browser draws a window and its own pages too: two thirds more time for each test.
    const path = ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium'].find(existsSync);
    return chromium.launch({executablePath: path, args: ['--no-sandbox', ...settings]});
}

/// Begins to count, in the page itself, what it asks and what of that is still under way.
export function count_questions() {
    const counts = {asked: [], under_way: 0};
    window.counts = counts;
    const counted =
        (own) =>
        async (...words) => {
            counts.under_way += 1;
            try {
                return await own(...words);
            } finally {
                counts.under_way -= 1;
            }
        };
    const fetch = counted(window.fetch.bind(window));
    window.fetch = (address, init) => {
        counts.asked.push(String(address));
        return fetch(address, init);
    };
    for (const way of ['json', 'blob']) {
        const read = Response.prototype[way];
        Response.prototype[way] = function () {
            return counted(() => read.call(this))();
        };
    }
}

/// A page that reports its own errors and anything its policy refused.
export async function open_page(context, url, wait = '.bar') {
    const page = await context.newPage();
    await page.addInitScript(count_questions);
    page.setDefaultTimeout(deadline);
    page.wrong = [];
    page.on('pageerror', (error) => page.wrong.push(error.message));
    page.on('console', (message) => {
        if (
            message.type() === 'error' &&
            !/Failed to load resource|net::ERR/.test(message.text())
        ) {
            page.wrong.push(message.text());
        }
    });
    await page.goto(url);
    await page.waitForSelector(wait);
    return page;
}

export async function view(page, name) {
    await page.click(`.view:has(.view-name:text-is("${name}"))`);
    const sign = {
        Tour: '.area-page',
        Loans: '.overview .row-price',
        Budget: '.means',
        Site: '.site-page',
        Schedule: '.years',
        Sheet: '.paper article',
        Check: '.check-section',
    }[name];
    await page.waitForSelector(sign);
    await settled(page);
}

/// Opens a part of the view that is shown, by the id of its title, unless it is open.
export async function open_part(page, part) {
    const closed = page.locator(`#${part} > [aria-expanded="false"]`);
    if ((await closed.count()) > 0) await closed.click();
    await page.waitForSelector(`#${part} > [aria-expanded="true"]`);
    await settled(page);
}

/// Opens a loan by its place, and gives what is open then.
export async function open_loan(page, index = 0) {
    await open_part(page, `loan-${index}`);
    return page.locator('.loan');
}

/// Opens every part of the view that is shown, one after the other, with all that is folded in it
/// if `whole`.
export async function in_every_part(page, act, whole = true) {
    const openers = page.locator('.main .fold-opener');
    for (let i = 0; i < (await openers.count()); i += 1) {
        if ((await openers.nth(i).getAttribute('aria-expanded')) === 'false')
            await openers.nth(i).click();
        await settled(page);
        for (const summary of await page.$$('.main details:not([open]) > summary'))
            if (whole) await summary.click();
        await settled(page);
        await act((await openers.nth(i).textContent()).slice(0, 40));
    }
}

/// The same by its place among the views, whatever the language.
export async function view_number(page, number) {
    await page.locator('.view').nth(number).click();
    await settled(page);
}

/// Until something holds in the page. (The page's policy forbids Playwright's own way to wait.)
export async function until(page, holds, argument) {
    const end = Date.now() + deadline;
    while (Date.now() < end) {
        if (await page.evaluate(holds, argument)) return;
        await page.waitForTimeout(30);
    }
    throw new Error(`in vain: ${JSON.stringify(argument)} ${holds}`);
}

/// In the page of any browser: whether every question is answered, and two frames later no other was
/// asked: an answer is painted, and what its painting asks is asked, within a frame.
export async function calm() {
    const {counts} = window;
    const asked = counts.asked.length;
    const frame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
    await frame();
    await frame();
    return (
        counts.under_way === 0 &&
        counts.asked.length === asked &&
        document.querySelector('.bar')?.getAttribute('aria-busy') === 'false'
    );
}

export const settled = (page) => until(page, calm);

/// Clicks an element, or types a value into it, and waits, in the page itself, for the frame after a
/// figure was painted anew. Of the frames until then, the idle ones are those that passed while no
/// question was under way: what the page itself takes, however slow the machine is.
export const painted = (page, {element, at = 0, value = null, figure}) =>
    page.evaluate(
        async ([selector, place, text, where]) => {
            const {counts} = window;
            const touched = document.querySelectorAll(selector)[place];
            const frame = () =>
                new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
            const tell = (kind) => touched.dispatchEvent(new Event(kind, {bubbles: true}));
            if (text !== null) {
                touched.value = text;
                tell('input');
                await frame(); // what was typed is drawn
            }
            const began = performance.now();
            let [idle, waiting] = [0, true];
            const tick = () => {
                if (!waiting) return;
                if (counts.under_way === 0) idle += 1;
                requestAnimationFrame(tick);
            };
            const changed = new Promise((resolve) => {
                new MutationObserver((_, observer) => {
                    observer.disconnect();
                    waiting = false;
                    resolve();
                }).observe(document.querySelector(where), {
                    characterData: true,
                    childList: true,
                    subtree: true,
                });
            });
            if (text === null) touched.click();
            else tell('change');
            requestAnimationFrame(tick);
            await changed;
            await frame();
            return {took: performance.now() - began, idle};
        },
        [element, at, value, figure],
    );

/// Paints a figure many times over: the page asks, and paints an answer, in the next frame at most.
/// How long it took is printed; it depends on the machine.
export async function paints_soon(page, what, step) {
    const all = [];
    for (let i = 0; i < touches; i += 1) {
        all.push(await painted(page, await step(i)));
        await settled(page);
    }
    const sorted = all.map((one) => one.took).sort((a, b) => a - b);
    const at = (share) => sorted[Math.ceil(sorted.length * share) - 1].toFixed(1);
    console.log(
        `  ${what}, ${all.length} times: median ${at(0.5)} ms, p99 ${at(0.99)} ms, ` +
            `longest ${at(1)} ms`,
    );
    check(
        `${what}: the page itself takes a frame at most`,
        all.every((one) => one.idle <= 1),
        all.map((one) => one.idle).join(),
    );
}

/// The buyer that the page shows, as the page keeps it: once the frame is painted.
export const kept = (page) => page.evaluate(kept_here);

/// In the page of any browser.
export async function kept_here() {
    await new Promise((done) => requestAnimationFrame(() => setTimeout(() => setTimeout(done))));
    const {current} = JSON.parse(sessionStorage.getItem('quoin.open'));
    return JSON.parse(localStorage.getItem(`quoin.buyer.${current}`));
}

/// Opens every option of the area that is shown: its levels, and what is known of it.
export async function unfold(page) {
    const closed = page.locator('.opener[aria-expanded="false"]');
    for (let left = await closed.count(); left > 0; left -= 1) await closed.first().click();
}

/// The control of an option, a level or a choice of the area that is shown.
export async function control(page, name) {
    const found = page.locator(`.row:has(.row-title:text-is("${name}")) input`).first();
    if ((await found.count()) === 0) await unfold(page);
    return found;
}

export async function touch(page, name) {
    await (await control(page, name)).click();
}

/// The areas of the home, in their order.
export const areas_of = (page) =>
    page.$$eval('.areas .area-link:not(.areas-top *) span:first-child', (all) =>
        all.map((one) => one.textContent),
    );

/// Into an area of the home, or to what was chosen in all of them: beside the tour or, where there
/// is no room for that, out of the sheet that the bar opens.
export async function walk(page, name) {
    const beside = await page.locator('.areas').isVisible();
    if (!beside) await page.click('.open-areas');
    await page.click(
        `${beside ? '.areas' : '.areas-sheet'} .area-link:has(span:text-is("${name}"))`,
    );
    await settled(page); // the options of that area are asked about
}

/// Looks at the home under another of its loans.
export async function take_loan(page, name) {
    await page.click('.choose-loan:visible, .change-loan:visible');
    await page.waitForSelector('.dialog[open]');
    await page.locator('.loan-choice').filter({hasText: name}).first().click();
    await settled(page);
}

export async function open_buyer(page, name) {
    await page.click('button:text-is("Open…")');
    await page.click(`.dialog .row-button:has(span:text-is("${name}"))`);
    await settled(page);
}

/// Opens an inquiry as a file.
export async function open_file(page, inquiry) {
    await page.click('button:text-is("Open…")');
    await page.setInputFiles('.file-button input', {
        name: 'buyer.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(inquiry)),
    });
    await page.waitForSelector('.dialog', {state: 'detached'});
    await settled(page);
}

/// The words of a part of the page, those of the sheet with it, which stands in a tree of its own.
export const words_of = (page, where) =>
    page.$eval(where, (element) => {
        const words = (one) =>
            one.nodeType === Node.TEXT_NODE
                ? one.data
                : Array.from((one.shadowRoot ?? one).childNodes, words).join('');
        return words(element).replace(/\u00a0/g, ' ');
    });

/// A part of the page as it is read, but each figure as exact as the engine told it.
export const exactly = (page, where) =>
    page.$eval(where, (element) => {
        const figures = Array.from(element.querySelectorAll('[data-exact]'));
        const shown = figures.map((one) => one.firstChild.data);
        for (const one of figures) {
            const [sign] = /^[+\u2212]?/.exec(one.textContent);
            const [whole, rest] = one.dataset.exact.replace('-', '').split('.');
            one.firstChild.data = `${sign}$${Number(whole).toLocaleString('en-US')}.${rest}`;
        }
        const words = element.textContent;
        figures.forEach((one, at) => {
            one.firstChild.data = shown[at];
        });
        return words.replace(/\u00a0/g, ' ');
    });

/// Every amount and percent that can be read in a part of the page, in drawings too.
const figures_of = (page, where) =>
    page.$eval(where, (element) => {
        // What is told along an axis is a place on a scale, no figure.
        const axes = Array.from(element.querySelectorAll('.axis'), (axis) => {
            const place = document.createComment('');
            axis.replaceWith(place);
            return () => place.replaceWith(axis);
        });
        const rounded = Array.from(element.querySelectorAll('[data-exact]'), (one) => [
            one.textContent,
            ` $${one.dataset.exact.replace('-', '')} `,
        ]);
        const sheet = element.querySelector('.paper')?.shadowRoot.querySelector('article');
        const text =
            rounded.reduce((words, pair) => words.replace(...pair), element.innerText) +
            (sheet?.innerText ?? '') +
            Array.from(element.querySelectorAll('svg text'), (one) => ` ${one.textContent}`).join(
                '',
            );
        for (const put_back of axes) put_back();
        return [
            ...text.replace(/\u00a0/g, ' ').matchAll(/\$\d[\d,]*(?:\.\d+)?|\d[\d,]*(?:\.\d+)?%/g),
        ].map((match) => match[0]);
    });

/// Each of them is one of the known.
export async function all_known(page, where, known, name) {
    const found = await figures_of(page, where);
    const strange = found.filter((one) => !known.has(bare(one.replace('%', ''))));
    check(
        `${name}: ${found.length} figures are the engine's`,
        found.length > 0 && strange.length === 0,
        `not in any answer: ${strange.slice(0, 8).join(', ')} (of ${found.length})`,
    );
    return found.length;
}

/// Opens, in what is shown, the first of each kind of thing that is closed.
export async function open_some(page) {
    const closed = [
        '.main .group-head[aria-expanded="false"]',
        '.main .row-more[aria-expanded="false"]',
        '.main .year-button[aria-expanded="false"]',
        '.main .fold-opener[aria-expanded="false"]',
        '.main details:not([open]) > summary',
    ];
    let opened = 0;
    for (const kind of closed) {
        const one = page.locator(kind).first();
        if (!(await one.count())) continue;
        await one.click();
        opened += 1;
    }
    await settled(page);
    return opened;
}

/// Presses Tab until the focused element matches; says whether its focus can be seen.
async function tab_to(page, selector, most = 120) {
    for (let i = 0; i < most; i += 1) {
        await page.keyboard.press('Tab');
        const found = await page.evaluate((wanted) => {
            const focused = document.activeElement;
            if (!focused?.matches(wanted)) return null;
            const style = getComputedStyle(focused);
            const beside = focused.nextElementSibling
                ? getComputedStyle(focused.nextElementSibling)
                : null;
            return [style, beside].some(
                (one) => one && one.outlineStyle !== 'none' && parseFloat(one.outlineWidth) >= 2,
            );
        }, selector);
        if (found !== null) return {reached: true, visible: found};
    }
    return {reached: false, visible: false};
}

export async function reach(page, selector, name) {
    const {reached, visible} = await tab_to(page, selector);
    check(`Tab reaches ${name}`, reached);
    check(`its focus can be seen: ${name}`, visible);
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/// Nothing that axe calls serious or worse.
export async function serious(page, name) {
    await page.evaluate(axe);
    const result = await page.evaluate(() =>
        window.axe.run(document, {resultTypes: ['violations']}),
    );
    const bad = result.violations.filter((one) => ['serious', 'critical'].includes(one.impact));
    check(
        `axe: ${name}`,
        bad.length === 0,
        bad
            .map(
                (one) =>
                    `${one.id}: ${one.nodes
                        .slice(0, 3)
                        .map((node) => node.html.slice(0, 140))
                        .join(' | ')}`,
            )
            .join('; '),
    );
}
