// The buyers: who is open, whom to open, what is known of one, and what can be done with it.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

/// What an inquiry says of the buyer and the days, with what is to be known of it.
const facts = {
    buyer: 'Name: any name will do',
    as_of: 'As of: the day of prices and rates',
    contract: 'Contract date',
    closing: 'Closing date',
    score: 'Credit score: changes rate and insurance',
    cash: 'Available cash: never in a link or log',
    prepared_by: 'Prepared by',
    originator: 'Licensed loan originator',
};

export const buyers = {
    unnamed: 'Buyer',
    tabs: 'Buyers',
    this_one: 'This buyer',
    menu: 'This buyer…',
    open: 'Open…',
    open_title: 'Open a buyer',
    closed: ({name}: Parts<'name'>) => rich`${name} is closed and erased from this browser.`,

    turn: 'Turn the screen to the buyer',
    turn_says: "hides other buyers' names, ranks of wishes and what is for the agent",
    turn_back: 'Back to the desk',
    copy: 'Make a copy',
    copy_says: 'to try something else beside it',
    save: 'Save as a file',
    save_says: 'the whole inquiry; the command line reads it too',
    saved: ({file}: Texts<'file'>) =>
        `Saved as ${file}. Income, debts and cash in the inquiry are in the file too. Keep it ` +
        'private.',
    link: 'Copy a link to the home',
    link_says: 'plan, lot and choices; no income, debts, credit score or cash',
    put_away: 'Put away for now',
    put_away_says: 'off the screen; the name stays under Open…',
    close: 'Close this buyer',
    close_says: 'erases it from this browser',

    linked: ({where}: Texts<'where'>) =>
        'A link to this home is on the clipboard. It holds the plan, lot and choices. It does not ' +
        `hold a name, income, debts, credit score or cash. ${where}`,
    link_opens_here: 'It opens only on this computer, while quoin is running.',
    link_opens_at: ({host}: Texts<'host'>) =>
        `It opens anywhere that can reach ${host}, while quoin is running there.`,
    link_damaged: 'The link is damaged or was cut off. Copy the whole link again.',
    link_no_book: ({books}: Texts<'books'>) =>
        `The link is for a price book that is not here. Price books here: ${books}.`,
    link_no_home: ({community}: Texts<'community'>) =>
        `No home in ${community} can be priced here today.`,
    link_name: 'Home from a link',
    from_link: ({score, closing}: Texts<'score' | 'closing'>) =>
        'This home came from a link: its plan, lot and choices. Income, debts, credit score and ' +
        `cash are never in a link. A score of ${score} and a closing on ${closing} are assumed: ` +
        'set your own under This buyer…',

    kept: 'Saved in this browser',
    kept_line: ({plan, lot, on}: Texts<'plan' | 'lot' | 'on'>) => `${plan}, lot ${lot} · ${on}`,
    open_here: 'open now',
    find: 'Find a buyer by name',
    found: ({count}: {count: number}) =>
        count === 0 ? 'Nobody here has that name.' : count === 1 ? '1 buyer' : `${count} buyers`,
    show_all: ({count}: {count: number}) => `Show all ${count}`,

    new_one: 'A new buyer',
    new_default: 'New buyer',
    new_name: 'Name: any name will do',
    new_plan: 'Plan',
    new_lot: 'Lot',
    new_loan: 'Loan to start with',
    plan: ({name, style, bedrooms, baths}: Texts<'name' | 'style' | 'bedrooms' | 'baths'>) =>
        `${name} · ${style ? `${style}, ` : ''}${bedrooms} ` +
        `${bedrooms === '1' ? 'bedroom' : 'bedrooms'}, ${baths} ${baths === '1' ? 'bath' : 'baths'}`,
    start: 'Start',
    start_bare: 'Skip these questions',
    open_file: 'Open an inquiry file…',
    no_books: 'none',
    no_file: ({file}: Texts<'file'>) =>
        `${file} is not an inquiry file: it holds no JSON that can be read.`,
    file_no_book: ({file, books}: Texts<'file' | 'books'>) =>
        `${file} is for a price book that is not here. Price books here: ${books}.`,
    kept_no_book: ({community}: {community: string | null}) =>
        `The price book${community ? ` of ${community}` : ''} is not here.`,

    facts,
    facts_changed: 'Buyer and dates',
    use_facts: 'Use these',
};
