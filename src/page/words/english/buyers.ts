// The buyers: who is open, whom to open, what is known of one, and what can be done with it.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

/// What an inquiry says of the buyer and the days, with what is to be known of it.
const facts = {
    buyer: 'Name: a label; any will do',
    as_of: 'As of: the day of prices and rates',
    contract: 'Contract',
    closing: 'Closing',
    score: 'Credit score: moves rate and insurance',
    cash: 'Cash there is: in no link and no log',
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

    copy: 'Copy to a second one',
    copy_says: 'to try something beside it',
    save: 'Save as a file',
    save_says: 'the whole inquiry, for the command line too',
    saved: ({file}: Texts<'file'>) =>
        `Saved as ${file}. The file holds income, debts and cash where the inquiry does: keep it ` +
        'private.',
    link: 'Copy a link to the home',
    link_says: 'plan, lot and choices; no income, debts, credit score or cash',
    put_away: 'Put away for now',
    put_away_says: 'off the screen; the name stays under Open…',
    close: 'Close this buyer',
    close_says: 'erases what this browser kept of it',

    linked: ({where}: Texts<'where'>) =>
        'A link to this home is on the clipboard: plan, lot and choices alone. No name, income, ' +
        `debts, credit score or cash is in it. ${where}`,
    link_opens_here: 'It opens on this computer alone, while quoin runs.',
    link_opens_at: ({host}: Texts<'host'>) =>
        `It opens wherever ${host} can be reached, while quoin runs there.`,
    link_damaged: 'The link is damaged or was cut off: copy it again, all of it.',
    link_no_book: ({books}: Texts<'books'>) =>
        `The link is about a price book that is not here. Here is: ${books}.`,
    link_no_home: ({community}: Texts<'community'>) =>
        `No home of ${community} can be priced here today.`,
    link_name: 'Home from a link',
    from_link: ({score, closing}: Texts<'score' | 'closing'>) =>
        'From a link: plan, lot and choices. Income, debts, credit score and cash are never in a ' +
        `link. A score of ${score} and a closing on ${closing} are assumed: set them under This ` +
        'buyer…',

    kept: 'Kept in this browser',
    new_one: 'A new buyer',
    open_file: 'Open an inquiry file…',
    no_books: 'none',
    no_file: ({file}: Texts<'file'>) =>
        `${file} is not an inquiry file: it holds no JSON that can be read.`,
    file_no_book: ({file, books}: Texts<'file' | 'books'>) =>
        `The price book that ${file} is about is not here. Here is: ${books}.`,
    kept_no_book: ({community}: {community: string | null}) =>
        `The price book${community ? ` of ${community}` : ''} is not here.`,

    facts,
    facts_changed: 'Buyer and dates',
    use_facts: 'Use these',
};
