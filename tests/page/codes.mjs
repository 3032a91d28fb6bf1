// The page goes by codes and ids: words for people may say anything, and a kind that it has not
// heard of changes nothing.
import {check, equal, kept, open_page, settled, view, open_loan, open_part} from './support.mjs';

/// Answers to a question come changed, refusals too.
async function changed(context, question, change) {
    await context.route(`**/api/${question}*`, async (route) => {
        const response = await route.fetch();
        const answer = await response.json();
        change(answer);
        await route.fulfill({response, json: answer});
    });
}

export async function a_kind_of_program_not_heard_of({server, context}) {
    await changed(context, 'programs', (answer) => {
        for (const one of answer.programs) one.kind = 'cooperative';
    });
    const page = await open_page(context, server.url);
    await view(page, 'Loans');
    const card = await open_loan(page);
    await card.locator('.loan-terms summary').click();
    const asked = async () =>
        (await card.locator('.more .field > span:first-child').allTextContents()).join();
    check('of a conventional loan', (await asked()).includes('Mortgage insurance ends'));
    check('and no other', !(await asked()).includes('VA loan benefit'), await asked());
    await card.locator('label:has-text("Program") select').first().selectOption('va');
    await settled(page);
    const {inquiry} = await kept(page);
    equal('what is not asked goes', inquiry.scenarios[0].mi_ends, undefined);
    check('of the other program', (await asked()).includes('VA loan benefit'), await asked());
    check('no more', !(await asked()).includes('Mortgage insurance'), await asked());
    check('no errors in the page', page.wrong.length === 0, page.wrong.join('; '));
}

export async function cautions_in_other_words({server, context}) {
    await changed(context, 'tour', (answer) => {
        for (const one of answer.cautions ?? []) one.words = `Otherwise: ${one.code}`;
    });
    const page = await open_page(context, server.url);
    await view(page, 'Budget');
    const afford = await page.locator('.fold:has(#afford) .cautions').textContent();
    check('beside others too', !afford.includes('an estimate as of'), afford);
    await open_part(page, 'builders-money');
    const money = page.locator('.fold:has(#builders-money) .cautions');
    await money.waitFor();
    const words = await money.textContent();
    check('its own are told', words.includes('This money comes on top'), words);
    check('those of all answers are told once', !words.includes('an estimate as of'), words);
}

export async function problems_in_other_words({server, context}) {
    await changed(context, 'tour', (answer) => {
        for (const one of answer.problems ?? []) one.found = 'Otherwise: it cannot be said so';
    });
    await changed(context, 'site', (answer) => {
        for (const lot of answer.lots) lot.falls_out = [];
    });
    const page = await open_page(context, server.url);
    await view(page, 'Site');
    await page.locator('.row:has(.row-title:text-is("Lot 12")) input').click();
    await page.waitForSelector('.last-remarks');
    await settled(page);
    equal('the lot', (await kept(page)).inquiry.lot, '12');
    const said = await page.textContent('.last-remarks');
    check('by its name', said.includes('Rear deck'), said);
    check('and why', !said.includes('Otherwise'), said);
}
