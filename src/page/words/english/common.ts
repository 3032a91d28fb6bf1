// What is said the same in several places.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const common = {
    contract_price: 'Contract price',
    a_month: 'Monthly payment',
    note_rate: 'Interest rate',
    apr: 'APR',
    apr_not_found: 'not found',
    cash_to_close: 'Cash to close',
    back_at_closing: 'Cash back at closing', ///< deposits of more than the closing takes
    all_cash_needed: 'Cash needed',
    down_payment: 'Down payment',
    loan: 'Loan amount',
    points: 'Points',
    term: 'Loan term',
    mortgage_insurance: 'Mortgage insurance',
    yours: 'yours',
    no_cost: 'no cost',
    no_extra_cost: 'no extra cost',
    for_the_desk: 'For the desk:',
    back: 'Back',
    in_a_package: 'in a package',
    must_have: 'must have',
    closing: 'closing', ///< on a scale of years

    close: 'Close',
    undo: 'Undo',
    redo: 'Redo',
    one_step_back: 'One step back',
    one_step_forward: 'One step forward',

    monthly: ({amount}: Texts<'amount'>) => `${amount} a month`,
    monthly_small: ({amount, small}: Parts<'amount'> & Marks<'small'>) =>
        rich`${amount}${small(' a month')}`,
    monthly_part: ({amount}: Parts<'amount'>) => rich`${amount} a month`,
    /// An amount that is part of the one above it.
    of_it: ({name, amount}: Parts<'name' | 'amount'>) => rich`${name} ${amount}`,
    in_price: ({amount}: Texts<'amount'>) => `${amount} in price`,
    cash: ({amount}: Texts<'amount'>) => `${amount} cash`,
    up_to: ({amount, small}: Parts<'amount'> & Marks<'small'>) => rich`${small('up to ')}${amount}`,
    from: ({amount, small}: Parts<'amount'> & Marks<'small'>) => rich`${small('from ')}${amount}`,
    lot: ({lot}: Texts<'lot'>) => `Lot ${lot}`,
    home_taken: ({plan, elevation, lot}: Texts<'plan' | 'elevation' | 'lot'>) =>
        `Plan ${plan}, elevation ${elevation}, lot ${lot}`,
    home_line: ({plan, lot}: Parts<'plan' | 'lot'>) => rich`${plan} on lot ${lot}`,

    /// What a chart comes to at a place: "End of year 5: …".
    at_a_place: ({place, lines}: {place: string; lines: Texts<'name' | 'amount'>[]}) =>
        `${place}: ${lines.map(({name, amount}) => `${name} ${amount}`).join('; ')}`,

    not_to_be_had: 'not available',
    refused: ({why}: Texts<'why'>) => `Not available: ${why}`,
    refused_beside: ({why}: Texts<'why'>) => `not available: ${why}`,
    wrong: ({found, expected}: Texts<'found' | 'expected'>) => `${found}; expected: ${expected}`,
    because: ({name, why}: Texts<'name' | 'why'>) => `${name} (${why})`,
    numbered: ({name, number}: {name: string; number: number}) => `${name} (${number})`,
    /// An option with its choice, an incentive with its use.
    with_form: ({name, form}: Texts<'name' | 'form'>) => `${name}: ${form}`,
    and: (each: string[]) =>
        each.length > 2
            ? `${each.slice(0, -1).join(', ')} and ${each[each.length - 1]}`
            : each.join(' and '),
};
