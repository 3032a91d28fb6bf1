// The frame: its views, what stands in the way, the bar of figures.
import {rich} from '../phrase';
import type {Marks, Texts} from '../phrase';

const views = {
    tour: {name: 'Tour', says: 'room by room'},
    loans: {name: 'Loans', says: 'ways to pay'},
    budget: {name: 'Budget', says: 'what it takes'},
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
    title: ({buyer, community}: Texts<'buyer' | 'community'>) => `${buyer}, ${community} – quoin`,
    skip: 'To the content',
    book: ({builder, version}: Texts<'builder' | 'version'>) => `${builder}. Price book ${version}`,
    book_ended: ({on}: Texts<'on'>) => `ended on ${on}`,
    opening: 'Opening the price book…',
    working: 'Working out the home…',
    comes_back: 'The home comes back here once that is settled.',

    gone:
        'The quoin program does not answer. Start it again where it was started (quoin serve); ' +
        'this page goes on by itself. Nothing you typed is lost.',
    keeps_nothing: 'This browser keeps nothing: save the buyer to a file before you leave.',
    nothing_changed: ({why}: Texts<'why'>) => `Nothing was changed: ${why}.`,
    found_expected: ({found, expected}: Texts<'found' | 'expected'>) => `${found}: ${expected}`,
    stale: 'The figures below are of before this change. What is in the way:',
    no_answer: 'This inquiry cannot be answered as it is. What is in the way:',
    problem: ({found, expected, advice}: Texts<'found' | 'expected' | 'advice'>) =>
        `${found}. ${expected && `Expected: ${expected}. `}${advice}`,
    refused: 'refused',

    code_title: 'Access code',
    code_asked:
        'This program listens beyond its own machine, so it asks for the code it printed when it ' +
        'was started.',
    code_wrong:
        'The code that was given is not this one. It stands after #code= in the address that the ' +
        'program printed; a new start of the program makes a new one.',
    code: 'Code',
    code_open: 'Open',

    whose_home: 'Whose home?',
    no_home: 'No home to show yet',
    no_home_why:
        'The folder that quoin serves has no price book that a home can be priced from: no free ' +
        'lot that a plan fits, or no rates in force on its days. Start quoin serve without a ' +
        'folder to see the examples.',

    bar_label: 'What the home comes to',
    in_hand: 'Way to pay in hand',
    undo_keys: 'Ctrl+Z',
    redo_keys: 'Ctrl+Shift+Z',
    figures_under: ({loan}: Texts<'loan'>) => `Figures under ${loan}`,
    untouched: 'Touch anything to put it in or take it out: what it changes stands here.',
    /// What the last touch changed: a month and cash are not told where there is no loan.
    changed: ({
        month,
        price,
        cash,
        at_closing,
        roomy,
    }: Texts<'price'> & {
        month: string | null;
        cash: string | null;
        at_closing: string | null;
    } & Marks<'roomy'>) =>
        rich`${month && `${month} a month, `}${price} in price${cash && `, ${cash} cash`}${
            at_closing && roomy(` (${at_closing} at the closing)`)
        }`,

    whole_name: 'The whole name',
    what_to_know: 'What to know',
};
