// The page in another language: chosen by a touch or by the browser's own, kept, and asked for.
import {check, equal, kept, open_page, settled, sizes, until, in_every_part} from './support.mjs';

const lang_of = (page) => page.evaluate(() => document.documentElement.lang);
const view_names = (page) => page.locator('.view-name').allTextContents();

/// In which languages the page asks from now on.
function languages_asked(page) {
    const asked = [];
    page.on('request', (request) => {
        if (request.url().includes('/api/')) asked.push(request.headers()['accept-language']);
    });
    return asked;
}

export async function another_language_by_a_touch({server, context}) {
    const page = await open_page(context, server.url);
    equal('English at first', await lang_of(page), 'en');
    const english = await view_names(page);
    const before = JSON.stringify((await kept(page)).inquiry);
    const asked = languages_asked(page);
    await page.click('.language[lang="es"]');
    await settled(page);
    equal('Spanish then', await lang_of(page), 'es');
    equal('the view names', (await view_names(page))[1], 'Préstamos');
    check('asked anew, in Spanish', asked.length > 0 && asked.every((one) => one === 'es'), asked);
    await page.click('.choose-loan');
    await page.waitForSelector('.dialog[open]');
    equal(
        'what names of loans say of their terms',
        await page.locator('.loan-choice span').first().textContent(),
        'Convencional, 5% inicial, 30 años',
    );
    await page.keyboard.press('Escape');
    equal('the home is the same', JSON.stringify((await kept(page)).inquiry), before);
    equal(
        'what is chosen is told',
        await page.getAttribute('.language[lang="es"]', 'aria-pressed'),
        'true',
    );
    await page.reload();
    await page.waitForSelector('.bar');
    equal('kept', await lang_of(page), 'es');
    await page.locator('.language[lang="en"]').focus();
    await page.keyboard.press('Enter');
    await settled(page);
    equal('back by key', (await view_names(page)).join(), english.join());
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function the_language_of_the_browser_at_first({server, chrome}) {
    for (const [locale, lang] of [
        ['es-US', 'es'],
        ['es', 'es'],
        ['en-US', 'en'],
        ['fr-CA', 'en'],
    ]) {
        const context = await chrome.newContext({locale});
        const page = await open_page(context, server.url);
        equal(locale, await lang_of(page), lang);
        await context.close();
    }
}

export async function longer_words_have_room({server, chrome}) {
    for (const [width, height] of sizes) {
        const context = await chrome.newContext({
            viewport: {width, height},
            locale: 'es-US',
            hasTouch: width < 1000,
        });
        const page = await open_page(context, server.url);
        for (let i = 0; i < 7; i += 1) {
            await page.locator('.view').nth(i).click();
            await until(page, () => !document.querySelector('.main .waiting'));
            await settled(page);
            const found = await page.evaluate(() => ({
                lines: new Set(
                    [...document.querySelectorAll('.view')].map(
                        (one) => one.getBoundingClientRect().top,
                    ),
                ).size,
                wide: document.documentElement.scrollWidth - innerWidth,
                small: [...document.querySelectorAll('.language, .view, .step')]
                    .filter((one) => one.getClientRects().length > 0)
                    .filter((one) => one.getBoundingClientRect().height < 43.5)
                    .map((one) => one.textContent),
                cut: [...document.querySelectorAll('.view, .step, .language, dt, th, legend')]
                    .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0)
                    .filter((one) => getComputedStyle(one).display !== 'inline')
                    .map((one) => one.textContent),
            }));
            const where = `view ${i + 1} in Spanish at ${width} x ${height}`;
            check(`${where}: nothing runs out of the page`, found.wide <= 0, `${found.wide} px`);
            check(`${where}: big enough to touch`, found.small.length === 0, found.small.join());
            equal(`${where}: the views stand in one line`, found.lines, 1);
            check(`${where}: no label is cut`, found.cut.length === 0, found.cut.join());
        }
        await context.close();
    }
}

/// What a person reads or is read to of a page, each text once: of tour all areas, all opened.
async function texts_of(page) {
    const texts = new Set();
    const collect = async () => {
        for (const text of await page.evaluate(() => {
            const found = [];
            const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            for (let node = walk.nextNode(); node; node = walk.nextNode()) {
                if (node.parentElement.closest('script, style, noscript, .languages')) continue;
                found.push(node.data);
            }
            for (const one of document.querySelectorAll('[aria-label], [title], [placeholder]'))
                for (const name of ['aria-label', 'title', 'placeholder'])
                    found.push(one.getAttribute(name) ?? '');
            return found;
        }))
            texts.add(text.replace(/\s+/g, ' ').trim());
    };
    for (let i = 0; i < 6; i += 1) {
        await page.locator('.view').nth(i).click();
        await until(page, () => !document.querySelector('.main .waiting'));
        await settled(page);
        const areas = i === 0 ? await page.locator('.area-link').count() : 0;
        for (let area = 0; area <= areas; area += 1) {
            if (area > 0)
                await page
                    .locator('.area-link')
                    .nth(area - 1)
                    .click();
            await in_every_part(page, collect);
            await collect();
        }
    }
    return texts;
}

/// Names in both languages: what somebody wrote into an inquiry, and one word with a capital, as
/// plans and elevations have it.
const names = (inquiries) => (text) =>
    inquiries.includes(JSON.stringify(text).slice(1, -1)) ||
    /^([A-Z][a-z]+|APR|REF|Oxbarrow Lane|Ctrl.*)$/.test(text); // of a drawing, of the map

export async function nothing_is_said_in_one_language_alone({server, chrome}) {
    const said = [];
    for (const locale of ['en-US', 'es-US']) {
        const context = await chrome.newContext({locale, viewport: {width: 1440, height: 900}});
        said.push(await texts_of(await open_page(context, server.url)));
        await context.close();
    }
    const [english, spanish] = said;
    check('texts were found', english.size > 400 && spanish.size > 400, `${english.size}`);
    const is_name = names(await (await fetch(`${server.url}api/cases`)).text());
    const same = [...english].filter(
        (text) => spanish.has(text) && /[A-Za-z]{3,}/.test(text) && !is_name(text),
    );
    check('the same in both languages', same.length === 0, same.slice(0, 60).join(' | '));
}
