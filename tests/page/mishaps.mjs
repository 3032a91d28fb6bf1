// What goes wrong: the program ends, a number is no number, two tabs, a book with nothing in it.
import {
    Server,
    check,
    control,
    equal,
    kept,
    open_buyer,
    open_page,
    settled,
    touch,
    unfold,
    until,
    view,
    walk,
    open_loan,
    words_of,
} from './support.mjs';

export async function the_program_ends({cases, context}) {
    const server = await new Server(cases).start();
    const page = await open_page(context, server.url);
    await server.stop();
    await touch(page, 'Triple pane, low-E');
    await page.waitForSelector('.message.bad:has-text("does not answer")');
    check(
        'what was touched is kept',
        JSON.stringify((await kept(page)).inquiry.selections).includes('windows'),
    );
    const again = await new Server(cases, server.port).start();
    await page.waitForSelector('.message.bad', {state: 'detached'});
    await settled(page);
    check(
        'the touch is in the figures once it is back',
        await (await control(page, 'Triple pane, low-E')).isChecked(),
    );
    await again.stop();
}

export async function wrong_numbers_stay_and_are_told({server, context}) {
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    const field = (await open_loan(page)).getByLabel('Down payment', {exact: true});
    const month = await page.textContent('.bar [data-figure="monthly.total"]');
    for (const wrong of ['500', 'five', '-3']) {
        await field.fill(wrong);
        await field.press('Enter');
        await page.waitForSelector('.loan .wrong');
        equal(`${wrong} stays as typed`, await field.inputValue(), wrong);
        equal(
            `the figures of before stay with ${wrong}`,
            await page.textContent('.bar [data-figure="monthly.total"]'),
            month,
        );
        check(
            `the message names what is wrong with ${wrong}`,
            (await page.textContent('.message.bad')).length > 40,
        );
    }
    await field.fill('5');
    await field.press('Enter');
    await page.waitForSelector('.message.bad', {state: 'detached'});
    await view(page, 'Schedule');
    await page.fill('.controls input', 'lots');
    await page.press('.controls input', 'Enter');
    await page.waitForSelector('.main .wrong');
    await view(page, 'Tour');
    await walk(page, 'Great room and dining');
    await unfold(page);
    const many = page.locator('.stepper input').first();
    const was = await many.inputValue();
    await many.fill('9999');
    await many.press('Enter');
    await page.waitForSelector('.message:has-text("Nothing was changed")');
    await settled(page);
    equal(
        'a quantity out of bounds changes nothing',
        await page.locator('.stepper input').first().inputValue(),
        was,
    );
}

export async function an_inquiry_that_cannot_be_answered({server, context}) {
    const page = await open_page(context, server.url);
    await page.click('button:text-is("This buyer…")');
    await page.getByLabel('Credit score: ').fill('9999');
    await page.click('.dialog button:text-is("Use these")');
    await page.waitForSelector('.message.bad:has-text("before this change")');
    await page.reload();
    await page.waitForSelector('.message.bad:has-text("cannot be answered")');
    equal('no figures where there is no answer', await page.locator('.bar').count(), 0);
    await page.click('.message.bad button:text-is("One step back")');
    await page.waitForSelector('.bar');
    equal('back as it was', (await kept(page)).inquiry.score, 742);
    await page.click('button:text-is("This buyer…")');
    await page.getByLabel('As of: ').fill('2031-01-01');
    await page.click('.dialog button:text-is("Use these")');
    await page.waitForSelector('.way-on:has-text("ended on January 31, 2027")');
    await page.reload();
    await page.waitForSelector('.way-on:has-text("ended on January 31, 2027")');
    await page.click('.way-on button:text-is("One step back")');
    await page.waitForSelector('.bar');
    equal('and again', (await kept(page)).inquiry.as_of, '2026-11-24');
}

export async function two_tabs({server, context}) {
    const one = await open_page(context, server.url);
    const two = await open_page(context, server.url, '.start');
    await two.click('.kept-name');
    await settled(two);
    await touch(one, 'Triple pane, low-E');
    await settled(one);
    await until(two, () =>
        Array.from(
            document.querySelectorAll('.group-head.on .row-beside'),
            (level) => level.textContent,
        ).includes('Triple pane, low-E'),
    );
    await open_buyer(two, 'Buyer 4');
    const price = await one.textContent('.bar [data-figure="contract_price"]');
    await one.evaluate(() => window.addEventListener('storage', () => (window.heard = true)));
    await two.locator('.option.upgrade .row:not(.on):not(.fixed) input').first().click();
    await settled(two);
    await until(one, () => window.heard);
    await settled(one);
    equal(
        'another buyer in another tab leaves this one alone',
        await one.textContent('.bar [data-figure="contract_price"]'),
        price,
    );
    await one.reload();
    await one.waitForSelector('.bar');
    equal(
        'and after a reload',
        await one.textContent('.bar [data-figure="contract_price"]'),
        price,
    );
}

export async function a_book_with_nothing_in_it({server, context}) {
    const page = await open_page(context, server.url);
    await open_buyer(page, 'Bare');
    for (const name of ['Tour', 'Loans', 'Budget', 'Site', 'Schedule', 'Sheet', 'Check']) {
        await view(page, name);
        check(`${name} says something`, (await words_of(page, '.main')).trim().length > 30);
    }
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function markup_in_names_is_text({server, context}) {
    const page = await open_page(context, server.url);
    await page.click('button:text-is("This buyer…")');
    await page.fill('.dialog input >> nth=0', '<img src=x onerror=alert(1)>');
    await page.click('.dialog button:text-is("Use these")');
    await settled(page);
    equal(
        'a name is shown as it is',
        await page.textContent('.tab'),
        '<img src=x onerror=alert(1)>',
    );
    equal('and makes no element', await page.locator('.tab img').count(), 0);
    check('nothing was refused by the policy', page.wrong.length === 0, page.wrong.join('; '));
}

export async function an_access_code_is_asked_for({server, context}) {
    const seen = [];
    await context.route('**/api/**', async (route) => {
        const code = route.request().headers()['quoin-code'];
        seen.push(code);
        if (code === 'right') await route.continue();
        else
            await route.fulfill({
                status: 401,
                json: {problems: [{id: 'http-code-needed', found: 'no code'}]},
            });
    });
    const page = await open_page(context, server.url, 'form input');
    await page.fill('form input', 'right');
    await page.click('.main-button');
    await page.waitForSelector('.bar');
    check(
        'every later question carries it',
        seen.slice(1).every((code) => code === 'right'),
        seen.join(),
    );
    const other = await open_page(context, `${server.url}#code=right`, '.start');
    check(
        'a code in the address opens at once and leaves it',
        !other.url().includes('right'),
        other.url(),
    );
}

export async function a_program_without_recheck({server, context}) {
    await context.route('**/api/cases', async (route) => {
        const answer = await (await route.fetch()).json();
        answer.questions = answer.questions.filter((one) => one.name !== 'recheck');
        await route.fulfill({json: answer});
    });
    const page = await open_page(context, server.url);
    await page.click('.view:has(.view-name:text-is("Check"))');
    await page.waitForSelector('.main .message:has-text("cannot answer the question")');
}
