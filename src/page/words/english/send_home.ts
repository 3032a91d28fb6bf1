// Sending home: the file for the buyer's own phone.
import type {Texts} from '../phrase';

export const send_home = {
    title: 'Send home',
    open: 'Send home…',
    menu_says: 'one file for their own phone: the sheet, this home, these loans',
    says:
        'One file with the sheet, this home and these loans. It opens on any phone, also without ' +
        'a network, and recalculates whatever they change.',
    stays:
        'Other buyers, office notes and who prepared it stay here. In place of the credit score ' +
        'goes the least one with the same figures.',
    along: 'Include, if the buyer agrees',
    privates: {
        score: 'Credit score',
        income: 'Income and household',
        debts: 'Debts',
        cash: 'Cash',
    },
    make: 'Make the file',
    saved: ({file}: Texts<'file'>) => `Saved as ${file}, to be sent as you would send a picture.`,
};
