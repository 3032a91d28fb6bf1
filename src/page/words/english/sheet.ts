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
        `As of ${as_of}; price book ${version}, in force to ${expires}; contract ${contract}, ` +
        `closing ${closing}. Rates of ${rates} from ${lender}${samples ? ' (samples)' : ''}. ` +
        `Prepared by ${prepared_by}. Licensed loan originator: ${originator}.`,

    base: ({plan}: Texts<'plan'>) => `${plan}, base price`,
    elevation: ({elevation}: Texts<'elevation'>) => `Elevation ${elevation}`,
    lot: ({lot}: Texts<'lot'>) => `Lot ${lot}, premium`,
    measure: ({quantity, unit, price}: Texts<'quantity' | 'price'> & {unit: string | null}) =>
        `${quantity}${unit ? ` ${unit}` : ''} × ${price}`,
    request: ({text, estimate}: Parts<'text'> & {estimate: string | null}) =>
        rich`Asked for, to be confirmed, not in the price: ${text}${
            estimate && `, estimated at ${estimate}`
        }.`,
    open_choices: ({choices}: {choices: {name: string; otherwise: string}[]}) =>
        'Still to choose at no cost: ' +
        `${choices.map((one) => `${one.name} (else ${one.otherwise})`).join('; ')}.`,
    credit: ({name, amount, use}: Parts<'name' | 'amount' | 'use'>) =>
        rich`${name}: ${amount} towards ${use}.`,
    lender: ({lender}: Texts<'lender'>) =>
        `This incentive is given only with a loan from ${lender}; you may choose any lender, and ` +
        'then go without it.',
};

const month = {
    title: 'The month, under each way to pay',
    label: 'The month under each way to pay',
    part: 'Part',
    down: ({amount, percent}: Texts<'amount' | 'percent'>) => `${amount} (${percent})`,
    change: ({loan, change}: Parts<'loan' | 'change'>) => rich`${loan}: ${change}.`,
    refused: ({loan, why}: Parts<'loan' | 'why'>) => rich`${loan} is not to be had: ${why}.`,
};

const cash = {
    title: ({loan}: Parts<'loan'>) => rich`The cash: ${loan}`,
    down_payment: 'Down payment',
    upfront_fee_in_cash: 'Upfront fee in cash',
    fee_in_cash: ({fee}: Texts<'fee'>) => `${fee}, in cash`,
    points: 'Points',
    principal_reduction: 'Principal reduced at closing',
    closing_costs: 'Closing costs',
    prepaid_interest: 'Prepaid interest',
    prepaid_bills: 'Bills paid ahead',
    initial_escrow_deposit: 'Initial escrow deposit',
    temporary_buydown: 'Temporary buydown',
    credits: 'Credits, taken off',
    deposits: 'Deposits, paid before',
    to_bring: 'To bring to the closing',
    when: 'When',
    due: ({on, what}: Texts<'on' | 'what'>) => `${on}, ${what}`,
    lender_credit_lost: ({amount}: Texts<'amount'>) =>
        `${amount} of the lender credit is lost: closing costs and prepaids do not come to as much.`,
};

export const sheet = {
    writing: 'Writing the sheet…',
    title: 'A sheet to take home',
    print: 'Print',
    home,
    month,
    cash,
};
