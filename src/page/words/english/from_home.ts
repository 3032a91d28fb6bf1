// What a buyer changed at home, come to the desk.
import type {Texts} from '../phrase';

export const from_home = {
    title: 'Changed at home',
    as_sent: ({on}: Texts<'on'>) => `As it is here, ${on}`,
    as_changed: 'As they changed it',
    as_of_today: ({on}: Texts<'on'>) => `The same, as of ${on}`,
    added: ({names}: Texts<'names'>) => `Added: ${names}.`,
    gone: ({names}: Texts<'names'>) => `Taken out: ${names}.`,
    not_sold: ({names}: Texts<'names'>) => `No longer available: ${names}.`,
    open: 'Open it beside this buyer',
    opened: 'Opened as a buyer of its own. The buyer it came from has not changed.',
    whose: 'Open the buyer that these changes belong to, then the file again.',
    not_answered: 'These changes do not go with this buyer’s home.',
};
