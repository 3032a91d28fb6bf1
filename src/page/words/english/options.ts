// An option: what a touch on it brings and changes, its number, its budget, what is known of it.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const options = {
    taking_it_out: 'taking it out:',
    cash_in_all: ({amount, roomy}: Parts<'amount'> & Marks<'roomy'>) =>
        rich`${amount} cash${roomy(' in all')}`,
    takes_out: ({names}: Texts<'names'>) => `takes out with it: ${names}`,
    brings_along: ({names}: Texts<'names'>) => `brings along: ${names}`,
    takes_the_place: ({names}: Texts<'names'>) => `takes the place of: ${names}`,
    yours_at: ({price}: Texts<'price'>) => `yours, ${price}`,
    included: 'included',
    comes_in: ({package_name}: Texts<'package_name'>) => `comes in ${package_name}`,
    without: 'Without',

    fewer: ({name}: Texts<'name'>) => `Fewer: ${name}`,
    more: ({name}: Texts<'name'>) => `More: ${name}`,
    how_many: ({name}: Texts<'name'>) => `${name}, how many`,
    limits: ({unit, limits}: Texts<'unit' | 'limits'>) => `${unit} ${limits}`,

    allowance: ({budget}: Texts<'budget'>) =>
        `${budget} is in the price. What is spent above it is charged.`,
    to_spend: 'To spend',
    to_spend_on: ({name}: Texts<'name'>) => `To spend on ${name}`,
    within_allowance: ({name}: Texts<'name'>) => `${name}: within the allowance`,

    /// How many come with it; a unit of none: single things.
    counted: ({count, unit}: Texts<'count'> & {unit: string | null}) =>
        `${count} ${unit ?? 'of them'}`,
    agreed: 'in the contract already',
    choose_before: ({stage}: Texts<'stage'>) => `choose before: ${stage.toLowerCase()}`,
    work: ({trades}: Texts<'trades'>) => `${trades} work: permit and licensed trade`,
    brings: ({parts}: Texts<'parts'>) => `Brings ${parts}`,
    later: ({estimate, note}: Texts<'estimate' | 'note'>) =>
        `After closing instead: about ${estimate}. ${note}`,
    later_each: ({estimate, unit, note}: Texts<'estimate' | 'note'> & {unit: string | null}) =>
        `After closing instead: about ${estimate}${unit ? ` a ${unit}` : ' each'}. ${note}`,

    /// What the last touch did.
    taken_out: ({name}: Texts<'name'>) => `${name}, taken out`,
    and_with_it: ({names}: Texts<'names'>) => `and with it ${names}`,
    together_with: ({names}: Texts<'names'>) => `together with ${names}`,
    instead_of: ({names}: Texts<'names'>) => `instead of ${names}`,
    left_behind: ({names}: Texts<'names'>) => `left behind: ${names}`,
    all_goes_along: 'everything chosen goes along',
};
