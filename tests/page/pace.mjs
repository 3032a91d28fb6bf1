// A thousand touches in a slow browser: how long each takes to be painted, and what of it takes how
// long. By hand (tests/page/run speed): times depend on the machine.
import {open_buyer, open_page, settled, view, view_number, areas_of} from './support.mjs';

const touches = Number(process.env.QUOIN_TOUCHES ?? 1000);
/// How much slower than this machine the browser is made; the program is not.
const slower = Number(process.env.QUOIN_SLOWER ?? 4);

/// Milliseconds in which nobody asks the page anything: looking would slow it.
const undisturbed = 400;

/// The same touches every time.
function dice(seed = 20261128) {
    let state = seed;
    return (sides) => {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        return Math.floor((state / 2 ** 32) * sides);
    };
}

/// In the page: a touch begins at the timestamp of its event, and whatever it changes is painted when
/// the task runs that was posted in the frame after the change.
function watch_painting() {
    const now = () => performance.now();
    const clock = {began: 0, answered: 0, parsed: 0, changed: 0, painted: 0, long: 0, nodes: 0};
    window.pace = clock;
    for (const kind of ['click', 'change'])
        addEventListener(
            kind,
            (event) => {
                if (clock.began === 0) clock.began = event.timeStamp;
            },
            true,
        );
    Response.prototype.json = async function () {
        const text = await this.text();
        clock.answered = now();
        const value = JSON.parse(text);
        clock.parsed = now();
        return value;
    };
    let waiting = false;
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
        waiting = false;
        clock.painted = now();
        if (clock.first === 0) clock.first = clock.painted;
    };
    new MutationObserver((all) => {
        if (clock.began === 0) return;
        clock.changed = now();
        clock.nodes += all.length;
        if (waiting) return;
        waiting = true;
        requestAnimationFrame(() => channel.port2.postMessage(0));
    }).observe(document, {
        subtree: true,
        childList: true,
        characterData: true,
        attributes: true,
    });
}

const begin = (page) =>
    page.evaluate(() => {
        performance.clearResourceTimings();
        Object.assign(window.pace, {
            began: 0,
            answered: 0,
            parsed: 0,
            changed: 0,
            painted: 0,
            first: 0,
            nodes: 0,
        });
    });

const read = (page) =>
    page.evaluate(() => {
        const asked = performance
            .getEntriesByType('resource')
            .filter((one) => one.name.includes('/api/') && !one.name.includes('/pictures/'));
        const last = asked.at(-1);
        return {
            ...window.pace,
            asked: asked.length,
            server: last ? last.responseEnd - last.requestStart : 0,
            sent: last ? last.requestStart : 0,
            bytes: asked.reduce((sum, one) => sum + one.encodedBodySize, 0),
        };
    });

/// Clicks where a person would and as slowly, so that what the pointer lights up is drawn before.
async function click(page, locator) {
    await locator.scrollIntoViewIfNeeded();
    const box = await locator.boundingBox();
    await settled(page);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.waitForTimeout(120);
    await page.mouse.down();
    await page.waitForTimeout(80);
    await begin(page);
    await page.mouse.up();
}

/// One of those there are, or null.
async function one_of(page, roll, selector) {
    const all = page.locator(selector);
    const count = await all.count();
    return count === 0 ? null : all.nth(roll(count));
}

const into_an_area = async (page, roll) => {
    if (!(await page.locator('.tour-page').count())) await view_number(page, 0);
    const links = page.locator('.areas .area-link:not(.areas-top *)');
    await links.nth(roll(await links.count())).click();
    await settled(page);
};

/// Opens a group of the area and gives one of its rows that are not on.
const in_a_group = async (page, roll, kind) => {
    for (let tries = 0; tries < 12; tries += 1) {
        const rows = `.option.${kind} .opened .row:not(.on):not(.fixed) .row-label`;
        if (!(await page.locator(`.option.${kind}`).count())) {
            await into_an_area(page, roll);
            continue;
        }
        const closed = page.locator(`.option.${kind} .opener[aria-expanded="false"]`);
        if (!(await page.locator(rows).count()) && (await closed.count())) {
            await closed.first().click();
            await settled(page);
        }
        const found = await one_of(page, roll, rows);
        if (found) return found;
        await into_an_area(page, roll);
    }
    return null;
};

/// Each gets what to touch ready, touches it, and says whether it did.
const kinds = {
    'option': async (page, roll) => {
        if (roll(4) === 0 || !(await page.locator('.tour-page').count()))
            await into_an_area(page, roll);
        const row = await one_of(page, roll, '.option.upgrade .single .row:not(.fixed) .row-label');
        if (!row) return into_an_area(page, roll);
        await click(page, row);
        return true;
    },
    'level': async (page, roll) => {
        const row = await in_a_group(page, roll, 'levels');
        if (!row) return false;
        await click(page, row);
        return true;
    },
    'choice': async (page, roll) => {
        const row = await in_a_group(page, roll, 'choice');
        if (!row) return false;
        await click(page, row);
        return true;
    },
    'lot': async (page, roll) => {
        if (!(await page.locator('.site-page').count())) await view(page, 'Site');
        const row = await one_of(
            page,
            roll,
            '.row:has(input[name="lot"]:not(:checked):not(:disabled)) .row-label',
        );
        if (!row) return false;
        await click(page, row);
        return true;
    },
    'loan': async (page, roll) => {
        await page.click('.choose-loan:visible, .change-loan:visible');
        await page.waitForSelector('.dialog[open]');
        await settled(page);
        await click(page, await one_of(page, roll, '.loan-choice:not(:has(:checked))'));
        return true;
    },
    'down payment': async (page, roll) => {
        if (!(await page.locator('.loan').count())) await view(page, 'Loans');
        const field = page.locator('.loan.in-hand').getByLabel('Down payment', {exact: true});
        if (!(await field.count())) return false;
        await field.fill(`${5 + roll(40) / 4}`);
        await settled(page);
        await begin(page);
        await field.press('Enter');
        return true;
    },
    'undo': async (page) => {
        const back = page.locator('.steps .back');
        if (!(await back.isEnabled())) return false;
        await click(page, back);
        return true;
    },
};

/// Of a hundred touches, how many are of each kind.
const mix = {
    'option': 50,
    'level': 15,
    'choice': 8,
    'undo': 12,
    'loan': 6,
    'down payment': 5,
    'lot': 4,
};
const order = Object.entries(mix).flatMap(([kind, count]) => Array(count).fill(kind));

const at = (sorted, share) => sorted[Math.min(sorted.length, Math.ceil(sorted.length * share)) - 1];
function line(name, all) {
    const sorted = [...all].sort((a, b) => a - b);
    return `${name.padEnd(28)} ${[0.5, 0.9, 0.99, 1].map((share) => (at(sorted, share) ?? 0).toFixed(1).padStart(8)).join('')}`;
}

/// Touches the page that is open, and prints what it took.
async function touched(page, what, count) {
    const slow = await page.context().newCDPSession(page);
    await slow.send('Emulation.setCPUThrottlingRate', {rate: slower});
    const roll = dice();
    const seen = [];
    while (seen.length < count) {
        const kind = order[roll(order.length)];
        if ((await kinds[kind](page, roll)) !== true) continue;
        await page.waitForTimeout(undisturbed);
        await settled(page);
        const one = await read(page);
        if (one.painted === 0) continue; // nothing to see: a row that cannot be had
        seen.push({kind, ...one, took: one.painted - one.began});
        if (await page.locator('.dialog[open]').count()) {
            await page.keyboard.press('Escape');
            await settled(page);
        }
    }
    console.log(
        `  ${what}: ${count} touches, ${slower} times slower; ms: median, 9 of 10, 99 of 100, longest`,
    );
    console.log(
        `  ${line(
            'touch to last paint',
            seen.map((one) => one.took),
        )}`,
    );
    console.log(
        `  ${line(
            'touch to first paint',
            seen.map((one) => one.first - one.began),
        )}`,
    );
    for (const kind of Object.keys(mix)) {
        const mine = seen.filter((one) => one.kind === kind);
        console.log(
            `  ${line(
                `  ${kind} (${mine.length})`,
                mine.map((one) => one.took),
            )}`,
        );
    }
    const answered = seen.filter((one) => one.asked > 0);
    console.log(
        `  ${line(
            'before it is asked',
            answered.map((one) => one.sent - one.began),
        )}`,
    );
    console.log(
        `  ${line(
            'program, and the way',
            answered.map((one) => one.server),
        )}`,
    );
    console.log(
        `  ${line(
            'until it is all here',
            answered.map((one) => one.answered - one.sent - one.server),
        )}`,
    );
    console.log(
        `  ${line(
            'answer read',
            answered.map((one) => one.parsed - one.answered),
        )}`,
    );
    console.log(
        `  ${line(
            'page drawn anew',
            answered.map((one) => one.changed - one.parsed),
        )}`,
    );
    console.log(
        `  ${line(
            'laid out and painted',
            seen.map((one) => one.painted - one.changed),
        )}`,
    );
    console.log(
        `  ${line(
            'changes of the document',
            seen.map((one) => one.nodes),
        )}`,
    );
    console.log(
        `  ${line(
            'kB that travel',
            seen.map((one) => one.bytes / 1000),
        )}`,
    );
    if (process.env.QUOIN_SLOWEST)
        for (const one of [...seen].sort((a, b) => b.took - a.took).slice(0, 12))
            console.log(JSON.stringify(one));
}

const tablet = {viewport: {width: 1180, height: 820}, hasTouch: true};

export async function a_thousand_touches({server, chrome}) {
    const context = await chrome.newContext(tablet);
    await context.addInitScript(watch_painting);
    const page = await open_page(context, server.url);
    await settled(page);
    await touched(page, 'the example', touches);
    await context.close();
}

export async function a_thousand_touches_of_a_large_book({server, chrome}) {
    const context = await chrome.newContext(tablet);
    await context.addInitScript(watch_painting);
    const page = await open_page(context, server.url);
    await open_buyer(page, 'Twice as many');
    await touched(page, 'a hundred and fifty options', touches);
    await context.close();
}

/// From nothing to the first screen that has all its figures.
export async function first_screen_filled({server, chrome}) {
    const all = [];
    for (let i = 0; i < 10; i += 1) {
        const context = await chrome.newContext(tablet);
        await context.addInitScript(() => {
            window.filled = 0;
            new MutationObserver((_, observer) => {
                if (!document.querySelector('.bar .figures') || !document.querySelector('.option'))
                    return;
                observer.disconnect();
                requestAnimationFrame(() =>
                    setTimeout(() => {
                        window.filled = performance.now();
                    }),
                );
            }).observe(document, {subtree: true, childList: true});
        });
        const page = await context.newPage();
        const slow = await context.newCDPSession(page);
        await slow.send('Emulation.setCPUThrottlingRate', {rate: slower});
        await page.goto(server.url);
        let filled = 0;
        while (!filled) {
            await page.waitForTimeout(100);
            filled = await page.evaluate(() => window.filled);
        }
        all.push(filled);
        await context.close();
    }
    console.log(`  ${line('first screen filled, 10 times', all)}`);
}
