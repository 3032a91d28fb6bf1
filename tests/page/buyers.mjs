// Buyers one after the other: a new one, one among many, two couples at one desk, and what only the
// desk reads.
import {execFileSync} from 'node:child_process';
import {join} from 'node:path';

import {
    check,
    equal,
    kept,
    open_buyer,
    open_page,
    program,
    root,
    settled,
    take_loan,
    touch,
    unfold,
    until,
    view,
    view_number,
    walk,
} from './support.mjs';

const views = ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check'];
const tab = (page) => page.textContent('.tab[aria-current]');

async function ask_new(page) {
    await page.click('button:text-is("Open…")');
    await page.click('.dialog .begin');
    await page.waitForSelector('.new-buyer select >> nth=1');
    await until(page, () => document.querySelectorAll('.new-buyer select')[1].options.length > 1);
}

async function new_buyer(page, name) {
    await ask_new(page);
    await page.fill('.new-buyer input', name);
    await page.click('.new-buyer .main-button');
    await page.waitForSelector('.dialog', {state: 'detached'});
    await settled(page);
}

const turn = async (page) => {
    await page.click('button:text-is("This buyer…")');
    await page.click('.dialog button:has-text("Turn the screen")');
    await settled(page);
};

export async function a_new_buyer_is_asked_three_things({server, context}) {
    const page = await open_page(context, server.url);
    await ask_new(page);
    const field = (label) => page.locator(`.new-buyer .field:has(span:text-is("${label}")) select`);
    const labels = await page.$$eval('.new-buyer .field > span', (all) =>
        all.map((one) => one.textContent),
    );
    equal('a name, the home, the loan', labels.length, 4);
    equal('filled in', await page.inputValue('.new-buyer input'), 'New buyer');
    const seen = await page.evaluate(() => {
        const {bottom} = document.querySelector('.new-steps').getBoundingClientRect();
        return bottom <= innerHeight;
    });
    check('on one screen', seen);
    const lots = () =>
        field('Lot')
            .locator('option')
            .evaluateAll((all) => all.map((o) => o.value));
    const site = execFileSync(
        program,
        [
            'site',
            join(root, 'examples/oxbarrow-meadow/buyers/six-programs.json'),
            '--rates',
            join(root, 'rates'),
            '--json',
        ],
        {encoding: 'utf8', maxBuffer: 1 << 26},
    );
    const known = JSON.parse(site).lots.filter((lot) => lot.status === 'free');
    for (const plan of ['comfrey', 'teasel']) {
        await field('Plan').selectOption(plan);
        const fitting = known.filter((lot) => lot.every_plan || lot.plans.includes(plan));
        equal(`lots for ${plan}`, (await lots()).join(), fitting.map((lot) => lot.id).join());
    }
    const lot = (await lots()).at(-1);
    await field('Lot').selectOption(lot);
    await field('Loan to start with').selectOption('FHA, fixed rate, 3.5% down');
    await page.fill('.new-buyer input', 'Couple Alder');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.dialog', {state: 'detached'});
    await settled(page);
    const {inquiry, hand} = await kept(page);
    equal('the name', await tab(page), 'Couple Alder');
    equal('the home', `${inquiry.plan} ${inquiry.lot}`, `teasel ${lot}`);
    equal('the loan in hand', hand, 'FHA, fixed rate, 3.5% down');
    check('that the bar tells', (await page.textContent('.bar')).includes('FHA'));
    await ask_new(page);
    equal('nobody has the next name', await page.inputValue('.new-buyer input'), 'New buyer');
    await field('Plan').selectOption('comfrey');
    await page.click('.new-buyer .step:has-text("Skip")');
    await settled(page);
    const bare = (await kept(page)).inquiry;
    const books = await (await context.request.get(`${server.url}api/cases`)).json();
    const {first} = books.price_books.find((one) => one.community === 'Oxbarrow Meadow');
    equal('the bare home as it comes', `${bare.plan} ${bare.lot}`, `${first.plan} ${first.lot}`);
    equal('no errors in the page', page.wrong.join(), '');
}

export async function many_buyers_are_found_by_name({server, context}) {
    const page = await open_page(context, server.url);
    for (const name of ['Alder', 'Birch', 'Cedar', 'Élan', 'Fir', 'Hazel', 'Juniper', 'Larch'])
        await new_buyer(page, name);
    await page.click('.tab:text-is("Birch")');
    await settled(page);
    await page.click('.tab:text-is("Larch")');
    await settled(page);
    await page.click('button:text-is("Open…")');
    const names = () =>
        page.$$eval('.kept-name .cut', (all) => all.map((one) => one.textContent).join());
    const first = await names();
    check('the last one in hand first', first.startsWith('Birch,Juniper,'), first);
    equal('so many at first', first.split(',').length, 8);
    const told = await page.textContent('.kept-name:has-text("Birch") .faint');
    check('with plan and lot', /^Sorrel, lot 4 · .*open now$/.test(told), told);
    check('and no figure', !(await page.textContent('.dialog')).includes('$'));
    await page.fill('.find-buyer', 'elan');
    equal('by what is typed', await names(), 'Élan');
    await page.fill('.find-buyer', 'x');
    check('or that nobody is', (await page.textContent('.dialog')).includes('Nobody here'));
    await page.fill('.find-buyer', 'ced');
    await page.click('.kept-name');
    await settled(page);
    equal('who was touched is in hand', await tab(page), 'Cedar');
    equal('and in the window once', await page.locator('.tab:text-is("Cedar")').count(), 1);
}

/// All that a page has, seen or not, that somebody could read.
const whole_page = (page) =>
    page.evaluate(() =>
        [
            document.title,
            location.href,
            JSON.stringify(history.state),
            JSON.stringify({...sessionStorage}),
            document.documentElement.outerHTML,
            ...Array.from(document.querySelectorAll('input, select'), (one) => one.value),
        ].join('\n'),
    );

/// The first couple: a name, a wish, a search, opened rows, every view.
async function first_couple(page) {
    await new_buyer(page, 'Couple Alder');
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    await take_loan(page, 'FHA');
    await page.click('.opener >> nth=0');
    for (let i = 1; i < views.length; i += 1) await view_number(page, i);
    await view_number(page, 0);
    await page.click('.find-button');
    await page.fill('.find-option input', 'porch');
    await turn(page);
    await page.click('.turn-back');
    await settled(page);
    await page.click('button:text-is("This buyer…")');
    await page.click('.row-button:has-text("Put away")');
    await settled(page);
}

export async function two_couples_in_a_row({server, context}) {
    const page = await open_page(context, server.url);
    await first_couple(page);
    await new_buyer(page, 'Couple Birch');
    const second = JSON.stringify((await kept(page)).inquiry);
    await turn(page);
    const nothing = async (where) => {
        const text = await whole_page(page);
        const own = (await page.locator('.paper').count()) > 0; // the sheet has the name of its buyer
        for (const word of ['Alder', 'Buyer 1', ...(own ? [] : ['Birch'])])
            check(`${where}: no ${word}`, !text.includes(word), text.split(word)[0].slice(-120));
        check(`${where}: not what was looked for`, !/value="porch|^porch$/m.test(text));
    };
    for (const [at, name] of views.slice(0, 5).entries()) {
        await view_number(page, at);
        await nothing(name);
        const open = await page.$$eval(
            'input:not([type=radio], [type=checkbox], [type=file])',
            (all) => all.filter((one) => one.autocomplete !== 'off').length,
        );
        equal(`${name}: the browser fills in nothing`, open, 0);
    }
    await view_number(page, 0);
    equal('no row is open', await page.locator('.opener[aria-expanded="true"]').count(), 0);
    for (let i = 0; i < 3; i += 1) await page.keyboard.press('Control+z');
    await settled(page);
    await nothing('undone');
    equal('there is nothing to undo', JSON.stringify((await kept(page)).inquiry), second);
    for (let i = 0; i < 12; i += 1) {
        await page.goBack();
        if (!page.url().startsWith(server.url)) break;
        await settled(page);
        await nothing(`${i + 1} back`);
    }
    await page.goto(server.url);
    await page.waitForSelector('.bar');
    await settled(page);
    await nothing('loaded again');
    await page.emulateMedia({media: 'print'});
    await nothing('on paper');
    await page.emulateMedia({media: 'screen'});
    await page.click('.turn-back');
    equal('the desk has its own', (await page.locator('.tab').allTextContents()).length, 2);
    equal('no errors in the page', page.wrong.join(), '');
}

/// The notes of the example, as the desk asks for them.
function office_notes() {
    const asked = (question) =>
        JSON.parse(
            execFileSync(
                program,
                [
                    question,
                    join(root, 'examples/oxbarrow-meadow/buyers/six-programs.json'),
                    '--office-notes',
                    '--rates',
                    join(root, 'rates'),
                    '--json',
                ],
                {encoding: 'utf8', maxBuffer: 1 << 26},
            ),
        );
    const options = asked('tour').areas.flatMap((area) => area.options);
    return [...options, ...options.flatMap((one) => one.forms), ...asked('site').lots].flatMap(
        (one) => one.office_note ?? [],
    );
}

export async function office_notes_stay_at_the_desk({server, context}) {
    const notes = office_notes();
    check('the example has some', notes.length >= 3, `${notes.length}`);
    const page = await open_page(context, server.url);
    const bodies = [];
    page.on('response', (response) => {
        if (response.url().includes('/api/')) bodies.push(response.text().catch(() => ''));
    });
    const read = new Set();
    const look = async () => {
        const html = await page.content();
        for (const note of notes) if (html.includes(note.replace('&', '&amp;'))) read.add(note);
    };
    for (const area of ['Outside and structure', 'Kitchen']) {
        await walk(page, area);
        await unfold(page);
        await look();
    }
    await view(page, 'Site');
    await page.click('[data-lot="9"]');
    await look();
    equal('at the desk each is read', read.size, notes.length);
    read.clear();
    await turn(page);
    bodies.length = 0;
    await look();
    for (const name of views) {
        await view(page, name);
        await look();
    }
    await view(page, 'Tour');
    for (const area of ['Outside and structure', 'Kitchen']) {
        await walk(page, area);
        await unfold(page);
        await look();
    }
    await walk(page, 'Outside and structure');
    await touch(page, 'Triple pane, low-E');
    await settled(page);
    await look();
    equal('none while the buyer looks on', [...read].join(), '');
    const told = (await Promise.all(bodies)).join('\n');
    check('there were answers', told.includes('"question"'));
    check('none of them told one', !told.includes('office_note'));
    check(
        'nor any note',
        notes.every((note) => !told.includes(note)),
    );
    await page.reload();
    await page.waitForSelector('.bar');
    await settled(page);
    await look();
    equal('nor after a reload', [...read].join(), '');
}

const top = (page) => page.evaluate(() => Math.round(scrollY));
const near = (name, found, expected) =>
    check(name, Math.abs(found - expected) <= 50, `found ${found}, expected ${expected}`);

async function down(page, by) {
    await page.mouse.move(700, 450);
    await page.mouse.wheel(0, by);
    await until(page, (least) => scrollY >= least, by - 5);
    await page.waitForTimeout(300); // kept a moment after the last of it
    return top(page);
}

export async function the_page_opens_where_it_was_left({server, context}) {
    const page = await open_page(context, server.url);
    await open_buyer(page, 'Buyer 4');
    await page.setViewportSize({width: 1180, height: 620});
    await walk(page, 'Kitchen');
    const row = '.option:has(.row-title:text-is("Kitchen countertops")) .opener';
    await page.click(row);
    const in_tour = await down(page, 260);
    // Without going up to it first, as a click of the mouse would.
    await page.evaluate(() => document.querySelectorAll('.view')[1].click());
    await page.click('.loan-row .fold-opener >> nth=0');
    await page.waitForSelector('.loan .big');
    await settled(page);
    equal('the address says it', new URL(page.url()).hash, '#loans');
    const in_loans = await down(page, 400);
    await page.reload();
    await page.waitForSelector('.loan .big');
    await settled(page);
    equal('the buyer', await tab(page), 'Buyer 4');
    near('as far down', await top(page), in_loans);
    const in_the_tour = async (there, name) => {
        await there.waitForSelector('.area-page');
        await settled(there);
        equal(`${name}: the area`, await there.textContent('#area-title'), 'Kitchen');
        equal(`${name}: the row`, await there.getAttribute(row, 'aria-expanded'), 'true');
        near(`${name}: as far down`, await top(there), in_tour);
    };
    await page.goBack();
    await in_the_tour(page, 'one step back');
    equal('the plain address', new URL(page.url()).hash, '');
    await page.goForward();
    await page.waitForSelector('.loan .big');
    await settled(page);
    equal('one step forward', new URL(page.url()).hash, '#loans');
    near('as far down as before', await top(page), in_loans);
    await page.goBack();
    await in_the_tour(page, 'back again');
    await page.reload();
    await page.waitForSelector('.bar');
    await in_the_tour(page, 'a reload');
    await page.close();
    const other = await open_page(context, server.url, '.start');
    await other.setViewportSize({width: 1180, height: 620});
    await other.click('.kept-name >> nth=0');
    await other.waitForSelector('.bar');
    equal('a new window: the last one first', await tab(other), 'Buyer 4');
    await in_the_tour(other, 'a new window');
    equal('no errors in the page', other.wrong.join(), '');
}

export async function an_address_opens_its_view_in_the_language_of_before({server, context}) {
    const page = await open_page(context, `${server.url}#schedule`, '.years');
    equal('the view', await page.textContent('.view[aria-current] .view-name'), 'Schedule');
    await page.click('.language:text-is("Español")');
    await settled(page);
    await page.click('.view >> nth=2');
    await page.waitForSelector('.budget-page .means');
    await settled(page);
    await page.close();
    const again = await open_page(context, server.url, '.start');
    equal('the language', await again.evaluate(() => document.documentElement.lang), 'es');
    await again.click('.kept-name');
    await again.waitForSelector('.budget-page .means');
    equal('the view that was left', new URL(again.url()).hash, '#budget');
    await again.goBack();
    await settled(again);
    equal('no view is blank', (await again.textContent('.main')).trim().length > 30, true);
}
