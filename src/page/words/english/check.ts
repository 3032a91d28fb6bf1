// Where each figure comes from, for the lender.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

export const check = {
    title: 'Where each figure comes from',
    says: ({loan, terms, estimate}: Parts<'loan' | 'terms' | 'estimate'>) =>
        rich`For the lender. ${loan}: ${terms}. ${estimate}`,
    no_recheck:
        'This program cannot answer the question "recheck" yet. Until it can, the command line ' +
        'shows the parts of each figure: quoin quote, quoin cash and quoin schedule.',
    reckoning: 'Working out every figure a second time…',
    figures: ({figures, differences}: {figures: number; differences: number}) =>
        `${figures} figures, each worked out a second time from its formula in exact fractions: ` +
        (differences === 0 ? 'all agree to the last digit.' : `${differences} do not agree.`),

    workbook: 'Workbook for a spreadsheet',
    saved: ({file}: Texts<'file'>) =>
        `Saved as ${file}. It works out every figure again from its formula.`,
    find: 'Find a figure, a rule or a source',
    nothing_found: 'Nothing here matches that.',

    in_section: ({count}: {count: number}) => `${count} figures`,
    agrees: 'agrees',
    does_not_agree: 'does not agree',
    inputs_of: ({figure}: Texts<'figure'>) => `What goes into ${figure}`,
    rounding: ({rounding}: {rounding: number}) => `rounding ${rounding}`,
    from: ({on}: Texts<'on'>) => `from ${on}`,
    until: ({on, beyond}: Texts<'on'> & {beyond: boolean}) =>
        `before ${on}${beyond ? ', and still used: the data has no later one' : ''}`,
};
