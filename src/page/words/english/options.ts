// An option: what a touch on it adds and changes, its number, its budget, what is known of it.
import {rich} from '../phrase';
import type {Option} from '../../answers';
import type {Unit} from './codes';
import type {Parts, Texts} from '../phrase';

/// Trades that need a permit or a license, as they stand before "work".
const trades: Record<Option['work'][number], string> = {
    gas: 'gas',
    wiring: 'electrical',
    plumbing: 'plumbing',
    structure: 'structural',
};

/// One of what is counted.
const per: Record<Unit, string> = {
    each: ' each',
    sq_ft: ' per sq ft',
    linear_ft: ' per linear ft',
};

export const options = {
    trades,
    taking_it_out: 'if removed:',
    rate_step: 'a rate changes too', ///< or a fee: it moves to another band
    cash_needed: ({amount}: Parts<'amount'>) => rich`${amount} cash needed`,
    more_of: ({name}: Texts<'name'>) => `More about ${name}`,
    none_of_it: 'none',
    takes_out: ({names}: Texts<'names'>) => `also removes: ${names}`,
    brings_along: ({names}: Texts<'names'>) => `also adds: ${names}`,
    takes_the_place: ({names}: Texts<'names'>) => `replaces: ${names}`,
    included: 'included',
    comes_in: ({package_name}: Texts<'package_name'>) => `part of ${package_name}`,
    without: 'Without',

    fewer: ({name}: Texts<'name'>) => `Fewer: ${name}`,
    more: ({name}: Texts<'name'>) => `More: ${name}`,
    how_many: ({name}: Texts<'name'>) => `${name}, how many`,
    limits: ({unit, limits}: Texts<'unit' | 'limits'>) => `${unit} ${limits}`,

    allowance: ({budget}: Texts<'budget'>) =>
        `The price includes ${budget} for this. You pay for anything above it.`,
    to_spend: 'You plan to spend',
    to_spend_on: ({name}: Texts<'name'>) => `You plan to spend on ${name}`,
    within_allowance: ({name}: Texts<'name'>) => `${name}: within the allowance`,

    /// How many come with it; a unit of none: single things.
    counted: ({count, unit}: Texts<'count'> & {unit: string | null}) =>
        unit ? `${count} ${unit}` : `${count} in all`,
    agreed: 'already in the contract',
    choose_before: ({stage}: Texts<'stage'>) => `decide by this stage: ${stage.toLowerCase()}`,
    work: ({trades}: Texts<'trades'>) => `${trades} work: needs a permit and a licensed trade`,
    brings: ({parts}: Texts<'parts'>) => `Comes with: ${parts}`,
    later: ({estimate, note}: Texts<'estimate' | 'note'>) =>
        `Later, after closing: about ${estimate}. ${note}`,
    later_each: ({estimate, unit, note}: Texts<'estimate' | 'note'> & {unit: Unit}) =>
        `Later, after closing: about ${estimate}${per[unit]}. ${note}`,

    /// What the last touch did.
    taken_out: ({name}: Texts<'name'>) => `${name}: removed`,
    and_with_it: ({names}: Texts<'names'>) => `also removed: ${names}`,
    together_with: ({names}: Texts<'names'>) => `also added: ${names}`,
    instead_of: ({names}: Texts<'names'>) => `replaced: ${names}`,
    left_behind: ({names}: Texts<'names'>) => `removed: ${names}`,
    all_goes_along: 'everything you chose stays',
};
