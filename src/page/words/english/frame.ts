// The frame: its views, what stands in the way, the bar of figures.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

const views = {
    tour: {name: 'Tour', says: 'room by room'},
    loans: {name: 'Loans', says: 'side by side'},
    budget: {name: 'Budget', says: 'what you can afford'},
    site: {name: 'Site', says: 'lots and plans'},
    schedule: {name: 'Schedule', says: 'year by year'},
    sheet: {name: 'Sheet', says: 'to print'},
    check: {name: 'Check', says: 'for the lender'},
};

export const frame = {
    own_name: 'English',
    languages_label: 'Language',
    views,
    views_label: 'Views',
    title: ({community}: Texts<'community'>) => `${community} – quoin`,
    skip: 'Skip to the content',
    book: ({builder, version}: Texts<'builder' | 'version'>) => `${builder}. Price book ${version}`,
    book_ended: ({on}: Texts<'on'>) => `ended on ${on}`,
    opening: 'Opening the price book…',
    working: 'Pricing the home…',
    comes_back: 'The home comes back here once that is fixed.',

    gone:
        'The quoin program does not answer. Start it again where it was started (quoin serve), ' +
        'and this page goes on by itself. Nothing you typed is lost.',
    keeps_nothing: 'This browser cannot save anything. Save the buyer as a file before you leave.',
    nothing_changed: ({why}: Texts<'why'>) => `Nothing was changed: ${why}.`,
    found_expected: ({found, expected}: Texts<'found' | 'expected'>) => `${found}: ${expected}`,
    stale: 'The figures below are from before this change. What to fix:',
    no_answer: 'This inquiry cannot be answered as it is. What to fix:',
    problem: ({found, expected, advice}: Texts<'found' | 'expected' | 'advice'>) =>
        `${found}. ${expected && `Expected: ${expected}. `}${advice}`,
    refused: 'The program could not make this file.',

    code_title: 'Access code',
    code_asked:
        'Other computers can reach this program, so it asks for a code. It printed the code when ' +
        'it started.',
    code_wrong:
        'That is not the right code. Look for it after #code= in the address that the program ' +
        'printed. Each start of the program makes a new code.',
    code: 'Code',
    code_open: 'Open',

    whose_home: 'Whose home?',
    no_home: 'No home to show yet',
    no_home_why:
        'No price book in the folder that quoin serves has a home to price. A home needs an ' +
        'available lot that a plan fits, and rates in force on its days. To see the examples, ' +
        'start quoin serve without a folder.',

    bar_label: 'Price, payment and cash of this home',
    in_hand: 'Loan shown',
    change_loan: 'Change this loan…',
    undo_keys: 'Ctrl+Z',
    redo_keys: 'Ctrl+Shift+Z',
    figures_under: ({loan}: Texts<'loan'>) => `Figures for ${loan}`,
    loan: 'Loan…',
    /// What the last touch changed, besides the month: cash is not told where there is no loan.
    sums: ({price, cash}: Parts<'price' | 'cash'>) =>
        rich`${price} in price${cash && rich` · ${cash} cash`}`,

    whole_name: 'Full name',
    what_to_know: 'What to know',
    what_to_know_says: 'estimates, rates and rules behind these figures',
};
