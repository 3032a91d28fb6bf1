// The sheet to print.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

const home = {
    title: 'The home',
    at: ({plan, community}: Parts<'plan' | 'community'>) => rich`${plan} at ${community}`,
    of_whom: ({elevation, lot, buyer, builder}: Parts<'elevation' | 'lot' | 'buyer' | 'builder'>) =>
        rich`Elevation ${elevation}, lot ${lot}. For ${buyer}. ${builder}.`,
    a_buyer: 'a buyer',
    to_fill_in: '______________',
    days: ({
        as_of,
        version,
        expires,
        contract,
        closing,
        rates,
        lender,
        samples,
        prepared_by,
        originator,
    }: Texts<
        | 'as_of'
        | 'version'
        | 'expires'
        | 'contract'
        | 'closing'
        | 'rates'
        | 'lender'
        | 'prepared_by'
        | 'originator'
    > & {samples: boolean}) =>
        `Estimate as of ${as_of}. Not an approval or an offer to lend. Price book ${version}, ` +
        `good through ${expires}. Contract date: ` +
        `${contract}. Closing date: ${closing}. Rates of ${rates} from ${lender}` +
        `${samples ? ' (sample figures)' : ''}. Prepared by ${prepared_by}. Licensed loan ` +
        `originator: ${originator}.`,

    base: ({plan}: Texts<'plan'>) => `${plan}, base price`,
    elevation: ({elevation}: Texts<'elevation'>) => `Elevation ${elevation}`,
    lot: ({lot}: Texts<'lot'>) => `Lot ${lot}, lot premium`,
    measure: ({quantity, unit, price}: Texts<'quantity' | 'price'> & {unit: string | null}) =>
        `${quantity}${unit ? ` ${unit}` : ''} × ${price}`,
    request: ({text, estimate}: Parts<'text'> & {estimate: string | null}) =>
        rich`Requested, to be confirmed, not in the price: ${text}${
            estimate && `, estimated at ${estimate}`
        }.`,
    open_choices: ({choices}: {choices: {name: string; otherwise: string}[]}) =>
        'Still to choose at no cost: ' +
        `${choices.map((one) => `${one.name} (otherwise ${one.otherwise})`).join('; ')}.`,
    credit: ({name, amount, use}: Parts<'name' | 'amount' | 'use'>) =>
        rich`${name}: ${amount} toward ${use}.`,
    lender: ({lender}: Texts<'lender'>) =>
        `This incentive is given only with a loan from ${lender}. You may choose any lender, but ` +
        'then you go without it.',
};

const month = {
    title: 'Monthly payment with each loan',
    label: 'Monthly payment with each loan',
    part: 'Part',
    down: ({amount, percent}: Texts<'amount' | 'percent'>) => `${amount} (${percent})`,
    change: ({loan, change}: Parts<'loan' | 'change'>) => rich`${loan}: ${change}.`,
    refused: ({loan, why}: Parts<'loan' | 'why'>) => rich`${loan} is not available: ${why}.`,
};

const cash = {
    title: ({loan}: Parts<'loan'>) => rich`Cash needed: ${loan}`,
    down_payment: 'Down payment',
    upfront_fee_in_cash: 'Upfront fee in cash',
    fee_in_cash: ({fee}: Texts<'fee'>) => `${fee}, in cash`,
    points: 'Points',
    lender_credit: 'Less the lender credit',
    principal_reduction: 'Principal reduction',
    closing_costs: 'Closing costs',
    prepaid_interest: 'Prepaid interest',
    prepaid_bills: 'Other prepaids',
    initial_escrow_deposit: 'Initial escrow deposit',
    temporary_buydown: 'Temporary buydown',
    credits: 'Less credits',
    deposits: 'Less deposits already paid',
    when: 'When it is due',
    due: ({on, what}: Texts<'on' | 'what'>) => `${on}: ${what}`,
    lender_credit_lost: ({amount}: Texts<'amount'>) =>
        `${amount} of the lender credit is lost: closing costs and prepaids are less than the ` +
        'credit.',
};

export const sheet = {
    writing: 'Preparing the sheet…',
    title: 'A sheet to take home',
    print: 'Print',
    home,
    month,
    cash,
};
