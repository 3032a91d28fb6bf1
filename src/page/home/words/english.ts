// What only the file that was taken home says, in English.
import type {Texts} from '../../words/phrase';

export const english = {
    damaged:
        'This file is damaged: part of it was lost or changed on its way. Do not go by its ' +
        'figures. Ask the sales office for a new one.',
    too_old:
        'Here you can read the sheet. To change options and loans, open this file in a browser ' +
        'of today: Chrome, Edge, Firefox or Safari.',

    gone: 'The figures cannot be worked out here right now. The page tries again by itself.',
    no_home: 'This file holds no home that can be priced. Ask the sales office for a new one.',

    as_of: ({
        day,
        rates_ended,
        book_ended,
    }: Texts<'day'> & {rates_ended: string | null; book_ended: string | null}) => {
        const ended = [
            rates_ended && `rates ended ${rates_ended}`,
            book_ended && `prices ended ${book_ended}`,
        ].filter(Boolean);
        return ended.length > 0 ? `as of ${day} (${ended.join(', ')})` : day;
    },

    sheet: 'Your sheet',
    menu: 'This file…',
    menu_title: 'This file',
    back: 'Back to what was sent',
    back_done: 'Back to what the sales office sent',

    copy: 'Save a copy',
    copy_says: 'a new file with your changes, for you or somebody you trust',
    copied: ({file}: Texts<'file'>) => `Saved as ${file}. It opens with your changes.`,
    send: 'Send to the sales office',
    send_says: 'a small file with what you changed: options, lot and loans',
    send_name: 'With the name',
    sent: ({file}: Texts<'file'>) =>
        `Saved as ${file}. Send it to the sales office. It holds what you changed. It does not ` +
        'hold income, debts, credit score or cash.',
    send_nothing: 'Nothing is changed yet, so there is nothing to send.',
    forget: 'Forget my changes',
    forget_says: 'erases them from this browser; the file stays as it came',
    forgotten: 'Your changes are erased from this browser.',
    licenses: 'Licenses',
    licenses_says: 'of the free software and letters in this file',

    long: {
        fit: 'Looking for what fits…',
        credit: 'Trying other credit scores…',
        other: 'Working…',
    },
    stop: 'Stop',
    stopped: 'Stopped',
    stopped_advice: 'Change something and it starts again.',
};
