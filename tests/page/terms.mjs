// What the words mean: a touch on a term's label opens its card, in each language.
import {readdirSync, readFileSync} from 'node:fs';
import {join} from 'node:path';

import {
    check,
    equal,
    open_page,
    root,
    serious,
    settled,
    sizes,
    view,
    unfold,
    open_loan,
    in_every_part,
} from './support.mjs';

/// The glossary as the program hands it out.
async function glossary(server, language) {
    const answer = await fetch(`${server.url}api/terms`, {headers: {'Accept-Language': language}});
    return (await answer.json()).terms;
}

const card = (page) => page.locator('.term-card');
const label = (page, code, where = '.main') => page.locator(`${where} .term[data-term="${code}"]`);
const focused = (page, code) =>
    page.evaluate((one) => document.activeElement.dataset.term === one, code);

/// In which languages the page asks what the words mean.
function terms_asked(page) {
    const asked = [];
    page.on('request', (request) => {
        if (request.url().endsWith('/api/terms')) asked.push(request.headers()['accept-language']);
    });
    return asked;
}

/// The page in a language, once it knows its terms.
async function open_in(context, server) {
    const page = await open_page(context, server.url);
    await page.waitForSelector('.bar .term');
    await settled(page);
    return page;
}

export async function terms_by_touch({server, chrome}) {
    for (const [locale, source] of [
        ['en-US', 'Source: '],
        ['es-US', 'Fuente: '],
    ]) {
        const context = await chrome.newContext({
            locale,
            viewport: {width: 390, height: 844},
            hasTouch: true,
        });
        const page = await open_in(context, server);
        const all = await glossary(server, locale.slice(0, 2));
        for (const code of ['contract_price', 'cash_to_close', 'apr']) {
            const {name, meaning, source: found} = all.find((one) => one.term === code);
            const where = `${locale}, ${code}`;
            const touched = label(page, code, '.bar');
            equal(`${where}: closed`, await touched.getAttribute('aria-expanded'), 'false');
            await touched.tap();
            equal(`${where}: open`, await touched.getAttribute('aria-expanded'), 'true');
            const said = await card(page).innerText();
            check(`${where}: its sentence`, said.includes(meaning), said);
            check(`${where}: its name`, said.toLowerCase().includes(name.toLowerCase()), said);
            check(`${where}: its source`, said.includes(`${source}${found}`), said);
            const box = await card(page).boundingBox();
            check(
                `${where}: within the window`,
                box.x >= 0 && box.x + box.width <= 390 && box.y >= 0 && box.y + box.height <= 844,
                JSON.stringify(box),
            );
            await touched.tap();
            equal(`${where}: a second touch closes it`, await card(page).count(), 0);
        }
        await label(page, 'contract_price', '.bar').tap();
        await label(page, 'apr', '.bar').tap();
        const {meaning} = all.find((one) => one.term === 'apr');
        equal(`${locale}: one at a time`, await card(page).count(), 1);
        check(`${locale}: the other one`, (await card(page).innerText()).includes(meaning));
        await page.touchscreen.tap(200, 300);
        equal(`${locale}: a touch elsewhere closes it`, await card(page).count(), 0);
        await label(page, 'apr', '.bar').tap();
        await page.locator('.term-close').tap();
        equal(`${locale}: its button closes it`, await card(page).count(), 0);
        check(`${locale}: no errors`, page.wrong.length === 0, page.wrong.join('; '));
        await context.close();
    }
}

export async function terms_by_key({server, context}) {
    const page = await open_in(context, server);
    const asked = terms_asked(page);
    for (const language of ['en', 'es']) {
        if (language === 'es') {
            await page.click('.language[lang="es"]');
            await settled(page);
        }
        const all = await glossary(server, language);
        for (const key of ['Enter', 'Space']) {
            await page.evaluate(() => document.activeElement.blur());
            await label(page, 'contract_price', '.bar').focus();
            await page.keyboard.press('Tab');
            check(`${language}: Tab leads on`, await focused(page, 'monthly_payment'));
            await page.keyboard.press(key);
            const {meaning} = all.find((one) => one.term === 'monthly_payment');
            const said = await card(page).innerText();
            check(`${language}: ${key} opens it`, said.includes(meaning), said);
            check(
                `${language}: the focus is in it`,
                await page.evaluate(() => document.activeElement.matches('.term-card')),
            );
            await page.keyboard.press('Escape');
            equal(`${language}: Escape closes it`, await card(page).count(), 0);
            check(`${language}: the focus is back`, await focused(page, 'monthly_payment'));
        }
        await page.keyboard.press('Enter');
        await page.keyboard.press('Tab');
        await page.keyboard.press('Tab');
        equal(`${language}: left by Tab it closes`, await card(page).count(), 0);
        check(`${language}: Tab goes on behind it`, await focused(page, 'cash_needed'));
    }
    equal('asked anew in Spanish alone', asked.join(), 'es');
    await page.click('.language[lang="en"]');
    await settled(page);
    equal('and kept', asked.join(), 'es');
    await view(page, 'Loans');
    await open_loan(page);
    await label(page, 'down_payment').first().click();
    await serious(page, 'the card of a term');
}

/// Rows that are higher with their terms than with plain words, and tables that scroll for them.
const moved_by_terms = (page) =>
    page.evaluate(() => {
        const tall = (one) => one.getBoundingClientRect().height;
        const wrong = [];
        for (const row of document.querySelectorAll('tr, dl > div, h3, .field')) {
            const terms = [...row.querySelectorAll('.term')];
            if (terms.length === 0) continue;
            const before = tall(row);
            const plain = terms.map((one) => [one, document.createElement('span')]);
            for (const [one, words] of plain) {
                words.textContent = one.textContent;
                one.replaceWith(words);
            }
            const after = tall(row);
            for (const [one, words] of plain) words.replaceWith(one);
            if (Math.abs(after - before) > 0.5)
                wrong.push(`${row.textContent.slice(0, 40)}: ${after} and ${before} px`);
        }
        const scrolls = [...document.querySelectorAll('.scroll')].filter(
            (one) => one.scrollHeight > one.clientHeight + 1,
        );
        return [...wrong, ...scrolls.map((one) => `${one.ariaLabel} scrolls`)];
    });

export async function terms_where_a_buyer_meets_them({server, chrome}) {
    const met = {
        Tour: ['option', 'decide_by'],
        Loans: [
            'cash_to_close',
            'down_payment',
            'prepaids',
            'escrow_account',
            'incentive',
            'mortgage_insurance',
            'apr',
            'points',
            'interest_rate',
            'rate_lock',
        ],
        Budget: ['dti', 'reserves', 'closing_costs', 'apr'],
        Site: ['lot_premium', 'plan', 'elevation'],
        Schedule: ['apr', 'loan_amount', 'extra_principal'],
        Check: ['ltv', 'finance_charge', 'tip'],
    };
    for (const [width, height] of sizes) {
        const context = await chrome.newContext({viewport: {width, height}});
        const page = await open_in(context, server);
        for (const [name, codes] of Object.entries(met)) {
            await view(page, name);
            if (name === 'Tour') await unfold(page);
            if (name === 'Check') await page.fill('.check-find input', 'a'); // opens its sections
            const there = [];
            const moved = [];
            const look = async () => {
                there.push(
                    ...(await page.$$eval('.main .term', (all) =>
                        all.map((one) => one.dataset.term),
                    )),
                );
                moved.push(...(await moved_by_terms(page)));
            };
            await look();
            await in_every_part(page, look, false);
            const missing = codes.filter((one) => !there.includes(one));
            check(`${name} at ${width} px: its terms`, missing.length === 0, missing.join());
            check(`${name} at ${width} px: no row is moved`, moved.length === 0, moved.join('; '));
        }
        await context.close();
    }
}

export async function terms_that_cannot_be_had({server, context}) {
    await context.route('**/api/terms', (route) => route.abort());
    const page = await open_page(context, server.url);
    await settled(page);
    equal('nothing to touch', await page.locator('.term').count(), 0);
    equal('the label is there', await page.textContent('.bar .price dt'), 'Contract price');
}

export async function terms_on_paper({server, context}) {
    const page = await open_in(context, server);
    await view(page, 'Loans');
    await open_loan(page);
    await label(page, 'apr').first().click();
    equal('a card on the screen', await card(page).isVisible(), true);
    await page.emulateMedia({media: 'print'});
    equal('no card on paper', await card(page).isVisible(), false);
    const looks = await page.$$eval('.main .term', (all) =>
        all.map((one) => {
            const [outside, inside] = [one, one.firstElementChild].map((each) =>
                getComputedStyle(each),
            );
            return [
                outside.paddingTop,
                outside.borderTopWidth,
                outside.backgroundColor,
                inside.textDecorationLine,
            ].join(' ');
        }),
    );
    equal('plain words', [...new Set(looks)].join(), '0px 0px rgba(0, 0, 0, 0) none');
}

/// What the sources name: of="apr", explained="apr", and lists of them in terms={[...]}.
function codes_named() {
    const folder = join(root, 'src/page');
    const named = new Map();
    for (const name of readdirSync(folder, {recursive: true})) {
        if (!name.endsWith('.tsx') || name.startsWith('node_modules')) continue;
        const text = readFileSync(join(folder, name), 'utf8');
        for (const [, code] of text.matchAll(/(?:<Term\s+of|explained)="([^"]*)"/g)) {
            named.set(code, name);
        }
        for (const [, list] of text.matchAll(/terms=\{\[([^\]]*)\]\}/g)) {
            for (const [, code] of list.matchAll(/'([^']*)'/g)) named.set(code, name);
        }
    }
    return named;
}

export async function every_term_is_known({server}) {
    const known = (await glossary(server, 'en')).map((one) => one.term);
    const types = readFileSync(join(root, 'src/page/answer_types.ts'), 'utf8');
    const typed = [...types.split('export type TermCode =')[1].matchAll(/'([^']*)'/g)];
    equal('the codes of the types', typed.map((one) => one[1]).join(), known.join());
    const named = [...codes_named()];
    check('terms are named', named.length > 20, `${named.length}`);
    const strange = named.filter(([code]) => !known.includes(code));
    check('each of them is known', strange.length === 0, strange.join('; '));
}
