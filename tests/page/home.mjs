// The file that is taken home: opened from a disk, without a network, on any day, whole or damaged.
import {mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';

import {Firefox} from './bidi.mjs';
import {can_be_built, desk_at_home, home_file, home_in, with_home} from './home_file.mjs';
import {
    ask,
    check,
    count_questions,
    deadline,
    equal,
    five_sizes,
    kept,
    open_page,
    open_part,
    root,
    settled,
    shots,
    take_loan,
    touch,
    view,
    walk,
    words_of,
} from './support.mjs';

let [desk, sent] = [null, null];

/// What goes home with the example's buyer is written once.
function home_of_example(options) {
    desk ??= desk_at_home(join(root, 'examples/oxbarrow-meadow/buyers/six-programs.json'));
    sent ??= JSON.parse(readFileSync(desk.inquiry, 'utf8'));
    return home_file(desk, options);
}

/// Counts what a worker is asked, as `count_questions` does for a server.
function count_of_workers() {
    const {counts} = window;
    window.Worker = class extends Worker {
        constructor(...words) {
            super(...words);
            this.addEventListener('message', () => {
                counts.under_way -= 1;
            });
        }
        postMessage(message, ...rest) {
            if (message.address) {
                counts.asked.push(message.address);
                counts.under_way += 1;
            }
            super.postMessage(message, ...rest);
        }
    };
}

/// The file in a browser of its own that has no network: what it asks of any is noted.
async function opened(chrome, text, options = {}, prepare = async () => {}) {
    const folder = mkdtempSync(join(tmpdir(), 'quoin-home-'));
    const file = join(folder, 'home.html');
    writeFileSync(file, text);
    const context = await chrome.newContext({
        viewport: {width: 1180, height: 820},
        offline: true,
        ...options,
    });
    const page = await context.newPage();
    page.setDefaultTimeout(deadline);
    page.wrong = [];
    page.fetched = [];
    page.on('pageerror', (error) => page.wrong.push(error.message));
    page.on('console', (one) => one.type() === 'error' && page.wrong.push(one.text()));
    page.on('request', (one) => page.fetched.push(one.url()));
    if (options.javaScriptEnabled !== false) {
        await page.addInitScript(count_questions);
        await page.addInitScript(count_of_workers);
    }
    await prepare(page);
    await page.goto(`file://${file}`);
    const close = async () => {
        await context.close();
        rmSync(folder, {recursive: true});
    };
    return {page, close};
}

/// Until the page has taken over from the sheet that stood there.
const taken_over = (page) => page.waitForSelector('.bar [data-exact]');

async function with_file(chrome, text, act, options, prepare) {
    const {page, close} = await opened(chrome, text, options, prepare);
    try {
        await act(page);
    } finally {
        await close();
    }
}

/// A test of a file, where there is an engine for browsers to put into one.
const of_a_file =
    (test) =>
    async ({chrome}) => {
        if (!can_be_built) return console.log('  skipped: built without the engine for browsers');
        await test({chrome});
    };

const kept_at_home = (page) =>
    page.evaluate(async () => {
        await new Promise((done) =>
            requestAnimationFrame(() => setTimeout(() => setTimeout(done))),
        );
        const key = Object.keys(localStorage).find((one) => /^quoin\.home\.\w+$/.test(one));
        return JSON.parse(localStorage.getItem(key) ?? '{"changes":{},"hand":""}');
    });

const figures = (page) =>
    page.$$eval('.bar .figures [data-exact]', (all) =>
        Object.fromEntries(all.map((one) => [one.dataset.figure, one.dataset.exact])),
    );

/// The bar says what the command line says of what was sent, with what was changed of it.
async function as_on_the_command_line(page, name) {
    const {changes, hand} = await kept_at_home(page);
    const asked = {...sent, ...changes};
    const loan = hand || asked.scenarios[0].name;
    const told = ask(desk, 'tour', asked, ['--scenario', loan]);
    const {available, cash, monthly} = told.scenario;
    const of_loan = available && {
        'monthly.total': monthly.total,
        'cash.needed': cash.needed,
        'cash.to_close': cash.to_close,
    };
    equal(
        name,
        JSON.stringify(await figures(page)),
        JSON.stringify({contract_price: told.contract_price, ...of_loan}),
    );
}

async function figures_after_touches(page) {
    await as_on_the_command_line(page, 'as it was sent');
    await view(page, 'Tour');
    const areas = await page.$$eval('.areas .area-link:not(.areas-top *) span:first-child', (all) =>
        all.map((one) => one.textContent),
    );
    let done = 0;
    for (const area of areas) {
        await walk(page, area);
        const rows = page.locator('.row:has(.row-title) input:enabled:not(:checked)');
        if ((await rows.count()) === 0) continue;
        await rows.first().click();
        await settled(page);
        await as_on_the_command_line(page, `after a touch in ${area}`);
        done += 1;
    }
    check('an area has something to touch', done >= 4, `${done}`);
    for (const loan of sent.scenarios.slice(1)) {
        await take_loan(page, loan.name);
        await page.keyboard.press('Escape');
        await settled(page);
        await as_on_the_command_line(page, `under ${loan.name}`);
    }
}

export const at_home_figures_are_the_engines = of_a_file(async ({chrome}) => {
    await with_file(chrome, home_of_example(), async (page) => {
        await taken_over(page);
        equal('the sheet is in the file', await page.evaluate(() => window.counts.asked.filter((one) => /sheet/.test(one)).length), 0); // prettier-ignore
        await figures_after_touches(page);
        const keys = await page.evaluate(() => [
            ...Object.keys(localStorage),
            ...Object.keys(sessionStorage),
        ]);
        check('something is kept', keys.length > 0);
        check(
            'under a name of its own alone',
            keys.every((one) => one.startsWith('quoin.home.')),
            keys.join(),
        );
        const stored = await page.evaluate(() => Object.values(localStorage).join(' '));
        check('no name or income is kept', !/Buyer 1|9950|121000/.test(stored));
        check(
            'nothing is asked of a network',
            page.fetched.every((one) => /^(file|blob|data):/.test(one)),
            page.fetched.join(),
        );
        equal('nothing is wrong', page.wrong.join(), '');
    });
});

/// Every view of the page has what it needs in the file.
export const at_home_every_view_is_there = of_a_file(async ({chrome}) => {
    await with_file(chrome, home_of_example(), async (page) => {
        await taken_over(page);
        for (const name of ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Check', 'Sheet']) {
            await view(page, name);
            equal(`${name}: nothing stands in the way`, await page.$$eval('.message.bad', (all) => all.length), 0); // prettier-ignore
        }
        const menu = await page.textContent('.top');
        check('no others, nothing of the desk', !/This buyer|Open…/.test(menu), menu);
        equal('nothing is wrong', page.wrong.join(), '');
    });
});

/// In the page, before anything is unpacked, and whenever something moves afterwards.
function note_places() {
    window.moved = [];
    // Letters that a busy machine brings late may move words; nothing else does, and they do it once.
    let letters_at = Infinity;
    document.addEventListener('DOMContentLoaded', async () => {
        await Promise.all(Array.from(document.fonts, (one) => one.load()));
        requestAnimationFrame(() => setTimeout(() => (letters_at = performance.now())));
    });
    new PerformanceObserver((list) => {
        for (const one of list.getEntries())
            if (one.startTime > letters_at)
                window.moved.push(one.sources.map(({node}) => node?.className ?? '?').join());
    }).observe({type: 'layout-shift', buffered: true});
    window.places = () =>
        Object.fromEntries(
            ['.top', '.community', '.views', '.sheet-tools', '.paper', '.bar', '.terms'].map(
                (one) => {
                    const {x, y, width, height} = document
                        .querySelector(one)
                        .getBoundingClientRect();
                    return [one, [x, y, width, height].map((side) => Math.round(side)).join()];
                },
            ),
        );
    const note = () => {
        if (document.querySelector('html.opens:not(.waits) .terms'))
            window.before = window.places();
        else requestAnimationFrame(note);
    };
    document.addEventListener('DOMContentLoaded', note);
}

export const at_home_nothing_moves = of_a_file(async ({chrome}) => {
    for (const language of ['en', 'es'])
        for (const [width, height] of five_sizes) {
            const text = home_of_example({language});
            const name = `${language} ${width}x${height}`;
            await with_file(
                chrome,
                text,
                async (page) => {
                    await taken_over(page);
                    await settled(page);
                    const [before, after, moved] = await page.evaluate(() => [
                        window.before,
                        window.places(),
                        window.moved,
                    ]);
                    equal(`${name}: same places`, JSON.stringify(after), JSON.stringify(before));
                    equal(`${name}: nothing moved`, moved.join(' '), '');
                    await page.screenshot({path: join(shots, `home-${name}.png`)});
                },
                {viewport: {width, height}},
                (page) => page.addInitScript(note_places),
            );
        }
});

export const at_home_the_sheet_needs_no_script = of_a_file(async ({chrome}) => {
    const text = home_of_example();
    await with_file(
        chrome,
        text,
        async (page) => {
            // Playwright reads it from outside: nothing of the page itself runs.
            const bar = await page.locator('.bar').innerText();
            for (const one of ['$497,660', '$3,957.34', 'APR', '30 years', 'Estimate'])
                check(`the bar says ${one}`, bar.includes(one), bar);
            check('the sheet is there', await page.getByText('Teasel plan, lot 7').isVisible());
            for (const one of ['.views', '.steps', '.buyers', '.main-button'])
                equal(`${one} is not shown`, await page.locator(one).isVisible(), false);
            await page.screenshot({path: join(shots, 'home-without-scripts.png')});
        },
        {javaScriptEnabled: false},
    );
});

/// Ways in which a file is damaged on its way.
const damages = {
    'cut': (text) => text.slice(0, Math.floor(text.length * 0.8)),
    'cut before the end': (text) => text.slice(0, text.length - 400),
    'a byte of the engine': (text) => changed_at(text, text.length - 200_000),
    'a byte of the desk': (text) => changed_at(text, text.indexOf('id="quoin-home"') + 4000),
    'bytes lost': (text) => text.slice(0, text.length - 9000) + text.slice(text.length - 8990),
    'letters that are none': (text) =>
        text.slice(0, text.length - 9000) + '\u00e4?' + text.slice(text.length - 8998),
};

const changed_at = (text, at) =>
    text.slice(0, at) + (text[at] === 'A' ? 'B' : 'A') + text.slice(at + 1);

export const at_home_damage_is_told = of_a_file(async ({chrome}) => {
    const text = home_of_example();
    for (const [name, damage] of Object.entries(damages))
        await with_file(chrome, damage(text), async (page) => {
            await page.waitForSelector('.message.bad');
            const said = await page.textContent('.messages');
            check(`${name}: in English`, said.includes('This file is damaged'), said);
            check(`${name}: in Spanish`, said.includes('Este archivo está dañado'), said);
            equal(`${name}: no view opens`, await page.isVisible('.views'), false);
            check(
                `${name}: the sheet stays`,
                (await words_of(page, '.paper')).includes('Teasel plan'),
            );
            await page.screenshot({path: join(shots, 'home-damaged.png')});
        });
});

export const at_home_without_a_desk_the_sheet_stays = of_a_file(async ({chrome}) => {
    const text = home_of_example({without: /pricebook\.json$/});
    await with_file(chrome, text, async (page) => {
        await page.waitForSelector('.message.bad');
        const sheet = await words_of(page, '.paper');
        check('the sheet stays', sheet.includes('Teasel plan'), sheet.slice(0, 200));
        equal('no view opens', await page.isVisible('.views'), false);
        equal('nothing is wrong', page.wrong.join(), '');
    });
});

const days = {
    '2026-11-23': null,
    '2026-12-18': null,
    '2026-12-19': 'as of Nov 24, 2026 (rates ended Dec 18, 2026)',
    '2027-02-01': 'as of Nov 24, 2026 (rates ended Dec 18, 2026, prices ended Jan 31, 2027)',
    '2027-12-18': 'as of Nov 24, 2026 (rates ended Dec 18, 2026, prices ended Jan 31, 2027)',
};

export const at_home_a_clock_adds_words_alone = of_a_file(async ({chrome}) => {
    const facts = {rates_end: '2026-12-18', book_end: '2027-01-31'};
    const text = home_of_example({facts});
    const seen = new Set();
    for (const [day, words] of Object.entries(days))
        await with_file(
            chrome,
            text,
            async (page) => {
                await taken_over(page);
                await settled(page);
                const terms = await page.textContent('.bar .terms');
                if (words) check(`${day}: says so`, terms.includes(words), terms);
                else check(`${day}: no more`, !terms.includes('ended'), terms);
                seen.add(JSON.stringify(await figures(page)));
                await view(page, 'Loans');
                seen.add(JSON.stringify(await figures(page)));
                equal(`${day}: nothing is wrong`, page.wrong.join(), '');
            },
            {},
            (page) => page.clock.setFixedTime(new Date(`${day}T12:00:00`)),
        );
    equal('the same figures on every day', seen.size, 1);
});

/// What the page hands over at a touch, as text.
async function handed_over(page, act) {
    const [download] = await Promise.all([page.waitForEvent('download'), act()]);
    return readFileSync(await download.path(), 'utf8');
}

async function change_something(page) {
    await view(page, 'Tour');
    await touch(page, 'Triple pane, low-E');
    await settled(page);
}

const in_menu = async (page, name) => {
    await page.click('button:text-is("This file…")');
    await page.click(`.dialog .row-button:has(span:text-is("${name}"))`);
};

export const at_home_a_copy_has_the_changes = of_a_file(async ({chrome}) => {
    let [copy, wanted] = ['', ''];
    await with_file(chrome, home_of_example(), async (page) => {
        await taken_over(page);
        equal('nothing to go back to', await page.locator('.was-changed').count(), 0);
        await change_something(page);
        wanted = JSON.stringify(await figures(page));
        copy = await handed_over(page, () => in_menu(page, 'Save a copy'));
        equal('what was changed stands out', await page.locator('.was-changed').count(), 1);
        await page.click('.was-changed');
        await settled(page);
        await as_on_the_command_line(page, 'one touch leads back');
        equal('nothing is kept then', Object.keys((await kept_at_home(page)).changes).length, 0);
    });
    await with_file(chrome, copy, async (page) => {
        await taken_over(page);
        equal('the copy has the changes', JSON.stringify(await figures(page)), wanted);
        equal('they stand out in it', await page.locator('.was-changed').count(), 1);
        equal('the copy: nothing is wrong', page.wrong.join(), '');
    });
    await with_file(
        chrome,
        copy,
        async (page) => {
            const price = JSON.parse(wanted).contract_price.replace(/\.00$/, '');
            const bar = (await page.locator('.bar').innerText()).replaceAll(',', '');
            check('the copy says so without a script', bar.includes(price), bar);
        },
        {javaScriptEnabled: false},
    );
});

export const at_home_a_copy_speaks_as_it_was_saved = of_a_file(async ({chrome}) => {
    let copy = '';
    await with_file(chrome, home_of_example(), async (page) => {
        await taken_over(page);
        await page.click('.language[lang="es"]');
        await settled(page);
        copy = await handed_over(page, async () => {
            await page.click('.buyers .step');
            await page.click('.dialog .row-button >> nth=0');
        });
    });
    await with_file(chrome, copy, async (page) => {
        await taken_over(page);
        await settled(page);
        const sheet = await words_of(page, '.paper');
        check('its sheet is in Spanish', sheet.includes('Plano Teasel'), sheet.slice(0, 200));
        equal('so is the page', await page.textContent('.view[aria-current]'), 'Hoja');
        equal('nothing was changed in it', await page.locator('.was-changed').count(), 0);
        equal('nothing is wrong', page.wrong.join(), '');
    });
});

export const at_home_changes_go_to_the_desk = of_a_file(async ({chrome}) => {
    await with_file(chrome, home_of_example(), async (page) => {
        await taken_over(page);
        await in_menu(page, 'Send to the sales office');
        check('nothing to send', (await page.textContent('.messages')).includes('Nothing is'));
        await change_something(page);
        const text = await handed_over(page, () => in_menu(page, 'Send to the sales office'));
        const told = JSON.parse(text);
        equal('its format', told.format, 'quoin/changes/1');
        equal('what was changed, and no more', Object.keys(told.changes).join(), 'selections');
        check('a small file', text.length <= 20_000, `${text.length} bytes`);
        check('no name, income or cash', !/Buyer 1|9950|121000|742/.test(text), text);
        await page.click('button:text-is("This file…")');
        await page.check('.dialog .tick-box input');
        const named = await handed_over(page, () =>
            page.click('.dialog .row-button:has(span:text-is("Send to the sales office"))'),
        );
        equal('the name where it is wanted', JSON.parse(named).buyer, 'Buyer 1');
        await in_menu(page, 'Forget my changes');
        await settled(page);
        const left = await page.evaluate(() => Object.keys(localStorage).join());
        equal('nothing is kept', left, '');
    });
});

/// Here a search is never answered: the worker that has it is ended.
function no_search_ends() {
    window.Worker = class extends Worker {
        postMessage(message, ...rest) {
            if (!window.never || !/api\/fit/.test(message.address))
                super.postMessage(message, ...rest);
        }
    };
    window.never = true;
}

export const at_home_a_search_can_be_stopped = of_a_file(async ({chrome}) => {
    await with_file(
        chrome,
        home_of_example(),
        async (page) => {
            await taken_over(page);
            await page.click('.view:has(.view-name:text-is("Budget"))');
            await page.waitForSelector('.means');
            await open_part(page, 'wishes').catch(() => undefined);
            await page.waitForSelector('.at-work');
            await page.screenshot({path: join(shots, 'home-at-work.png')});
            await page.click('.at-work button');
            await page.waitForSelector('.at-work', {state: 'detached'});
            await page.evaluate(() => {
                window.never = false;
            });
            await as_on_the_command_line(page, 'all else goes on');
        },
        {},
        (page) => page.addInitScript(no_search_ends),
    );
});

/// In the page of any browser.
async function figures_here() {
    const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    while (!document.querySelector('.bar[aria-busy="false"] [data-exact]')) await frame();
    return Object.fromEntries(
        Array.from(document.querySelectorAll('.bar .figures [data-exact]'), (one) => [
            one.dataset.figure,
            one.dataset.exact,
        ]),
    );
}

/// In the page of any browser: goes into a view, touches its first option that is not chosen, and
/// waits until the price is another.
async function touch_here(price) {
    const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    const found = (selector) => document.querySelector(selector);
    document.querySelectorAll('.view')[1].click();
    const free = '.row:has(.row-title) input:enabled:not(:checked)';
    while (!found(free)) await frame();
    found(free).click();
    const shown = () => found('[data-figure="contract_price"]').dataset.exact;
    while (shown() === price) await frame();
}

export const at_home_in_firefox = of_a_file(async () => {
    const folder = mkdtempSync(join(tmpdir(), 'quoin-home-'));
    const file = join(folder, 'home.html');
    writeFileSync(file, home_of_example());
    const firefox = new Firefox();
    try {
        await firefox.start();
        await firefox.size(1180, 820);
        await firefox.go(`file://${file}`);
        const {contract_price} = await firefox.run(figures_here);
        equal('as it was sent', contract_price, '497660.00');
        await firefox.run(touch_here, contract_price);
        const after = await firefox.run(figures_here);
        const changes = await firefox.run(async () => {
            const frame = () =>
                new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
            while (!Object.keys(localStorage).some((one) => one.startsWith('quoin.home.')))
                await frame();
            return JSON.parse(Object.values(localStorage)[0]).changes;
        });
        const asked = {...sent, ...changes};
        const told = ask(desk, 'tour', asked, ['--scenario', sent.scenarios[0].name]);
        equal('after a touch', after['monthly.total'], told.scenario.monthly.total);
        equal('nothing went wrong in Firefox', firefox.wrong().join('; '), '');
    } finally {
        await firefox.stop();
        rmSync(folder, {recursive: true});
    }
});

/// What is touched before the page is there is done then; how long that takes is printed.
export const at_home_the_first_touch_is_answered = of_a_file(async ({chrome}) => {
    await with_file(
        chrome,
        home_of_example(),
        async (page) => {
            await page.waitForSelector('.overview .row-price');
            const took = await page.evaluate(() => performance.now());
            console.log(
                `  touched as it opens, answered after ${took.toFixed(0)} ms, 4 times slowed`,
            );
            equal('the view that was touched', await page.textContent('.view[aria-current]'), 'Loans'); // prettier-ignore
        },
        {},
        async (page) => {
            const session = await page.context().newCDPSession(page);
            await session.send('Emulation.setCPUThrottlingRate', {rate: 4});
            await page.addInitScript(() => {
                document.addEventListener('DOMContentLoaded', () => {
                    document.querySelectorAll('.view')[2].click();
                });
            });
        },
    );
});

/// All that is in it but the pictures of the home, which come on top.
export const at_home_the_file_is_small = of_a_file(async () => {
    const html = home_of_example();
    const home = home_in(html);
    const pictures = Object.keys(home.files).filter((name) => name.includes('/pictures/'));
    check('it has pictures', pictures.length > 50, pictures.length);
    for (const name of pictures) delete home.files[name];
    const kilobytes = (text) => (Buffer.byteLength(text) / 1000).toFixed(1);
    const bare = with_home(html, home);
    console.log(`  ${kilobytes(html)} kB, without its pictures ${kilobytes(bare)} kB`);
    check('800 kB without pictures', Buffer.byteLength(bare) <= 800_000, kilobytes(bare));
});

/// From the desk's own page: the file of the command, without what was not ticked.
export async function send_home_gives_the_commands_file({cases, server, context}) {
    if (!can_be_built) return console.log('  skipped: built without the engine for browsers');
    const page = await open_page(context, server.url);
    await view(page, 'Sheet');
    const send = async (ticks) => {
        await page.click('.sheet-tools .step');
        for (const name of ticks) await page.getByLabel(name, {exact: true}).check();
        const [download] = await Promise.all([
            page.waitForEvent('download'),
            page.click('.dialog .main-button'),
        ]);
        return [download.suggestedFilename(), readFileSync(await download.path(), 'utf8')];
    };
    const [name, html] = await send([]);
    equal('its name', name, 'buyer-1.html');
    const written = home_in(home_file(desk_at_home(cases.six)));
    equal('as the command writes it', JSON.stringify(home_in(html)), JSON.stringify(written));
    const {inquiry} = await kept(page);
    check('the buyer has an income', inquiry.income?.monthly !== undefined);
    const sent_without = home_in(html).files['examples/home/inquiry.json'];
    check('which stays', !sent_without.includes('"income"'));
    const [, told] = await send(['Income and household']);
    check(
        'and goes when ticked',
        home_in(told).files['examples/home/inquiry.json'].includes('"income"'),
    );
    check(
        'but nothing else',
        !home_in(told).files['examples/home/inquiry.json'].includes('"debts"'),
    );
}

/// What was changed at home is figured by the desk, beside what was sent; the buyer stays as they are.
export async function changes_from_home_are_figured_at_the_desk({cases, server, context}) {
    const page = await open_page(context, server.url);
    const before = await kept(page);
    const give = async (changes) => {
        await page.click('button:text-is("Open…")');
        await page.setInputFiles('.file-button input', {
            name: 'changes.json',
            mimeType: 'application/json',
            buffer: Buffer.from(JSON.stringify({format: 'quoin/changes/1', ...changes})),
        });
        await page.waitForSelector('.came-back');
        await settled(page);
        return page.$$eval('.came-back tbody td', (all) => all.map((one) => one.textContent));
    };
    const selections = [
        ...before.inquiry.selections.filter((one) => (one.option ?? one) !== 'cook-package'),
        'irrigation',
        'no-such-thing',
    ];
    const shown = await give({changes: {selections, contract_price: '1.00', buyer: 'Nobody'}});
    const without = {...before.inquiry, selections: selections.slice(0, -1)};
    const told = (inquiry) => ask(cases, 'tour', inquiry, ['--scenario', before.hand]);
    const day = new Date().toLocaleDateString('en-CA');
    const later = {...without, as_of: day, contract: [day, without.contract].sort().at(-1)};
    const dollars = (text) => `$${text.replace(/\B(?=(\d{3})+\.)/g, ',')}`;
    const columns = [told(before.inquiry), told(without), told(later)];
    equal(
        'price, month and cash: here, theirs, today',
        shown.join(' '),
        ['contract_price', 'monthly', 'cash']
            .flatMap((member) =>
                columns.map(({contract_price, scenario: {monthly, cash}}) =>
                    dollars({contract_price, monthly: monthly.total, cash: cash.needed}[member]),
                ),
            )
            .join(' '),
    );
    const words = await page.textContent('.dialog');
    check('what came', words.includes('Added: Lawn irrigation.'), words);
    check('what went', /Taken out: .*Cook's package/.test(words), words);
    await page.screenshot({path: join(shots, 'from-home.png')});
    check('what is not sold', words.includes('no such thing'), words);
    await page.click('.dialog .main-button');
    await settled(page);
    equal('a buyer of its own', await page.locator('.tab').count(), 2);
    const beside = await kept(page);
    check('with what was changed', JSON.stringify(beside.inquiry).includes('irrigation'));
    await page.locator('.tab').first().click();
    await settled(page);
    equal(
        'the first as before',
        JSON.stringify((await kept(page)).inquiry),
        JSON.stringify(before.inquiry),
    );
}
