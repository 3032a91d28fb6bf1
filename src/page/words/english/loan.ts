// One loan: what it comes to, and the fields of its terms.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const insurance = {
    paid_up: 'paid in full at closing',
    none: 'none',
    whole_loan: 'for the whole loan',
    to: ({last}: Texts<'last'>) => `through ${last}`,
    to_or_on_request: ({last, request}: Texts<'last' | 'request'>) =>
        `through ${last}; at your request from ${request}`,
};

const rates = {
    lowest: 'lowest without points',
    up_to_points: ({points}: Texts<'points'>) =>
        points === '1' ? 'lowest with up to 1 point' : `lowest with up to ${points} points`,
    listed: ({rate, points}: Texts<'rate' | 'points'>) => `${rate} with ${points}`,
    noted: ({rate}: Texts<'rate'>) => rate,
    quoted: 'quoted by a lender…',
    rate_quoted: 'Quoted rate',
    points_quoted: 'Quoted points',
    points_unit: 'points',
};

const downs = {
    given_as: 'Down payment given as',
    percent: 'of the value',
    amount: 'in dollars',
    cash: 'from this much cash',
};

const buydowns = {
    'none': 'none',
    '1-0': '1-0: 1% lower in year one',
    '2-1': '2-1: 2% lower in year one, then 1%',
    '3-2-1': '3-2-1: 3% lower in year one, then 2%, then 1%',
};

const fees = {financed: 'added to the loan', cash: 'paid in cash'};

const premiums = {
    monthly: 'with each payment',
    single: 'at closing, as a single premium',
    financed: 'as a single premium, added to the loan',
};

const insurance_ends = {
    automatic: 'by itself, at 78%',
    request: 'when you ask, at 80%',
};

/// What was changed in a loan, after its name.
const changed = {
    term: 'loan term',
    down: 'down payment',
    rate: 'interest rate',
    points: 'points',
    lock: 'rate lock',
    buydown: 'temporary buydown',
    premium: 'mortgage insurance premium',
    insurance_ends: 'end of mortgage insurance',
    benefit: 'use of the VA benefit',
    name: 'renamed',
};

/// What cash is made of.
const cash = {
    title: 'What the cash needed is made of',
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
};

export const loan = {
    cash,
    insurance,
    rates,
    downs,
    buydowns,
    fees,
    premiums,
    insurance_ends,
    changed,
    change: ({loan, what}: Texts<'loan' | 'what'>) => `${loan}: ${what}`,
    taken_away: ({loan}: Texts<'loan'>) => `${loan} removed`,
    added: ({loan}: Texts<'loan'>) => `${loan} added`,

    month: ({amount, big}: Parts<'amount'> & Marks<'big'>) => rich`${big(amount)} a month`,
    all_cash: 'Cash needed, with deposits',
    paid_in_five_years: 'Paid in five years',
    owed_after_five_years: 'Owed after five years',
    paid_over_loan: 'Paid over the whole loan',
    paid_off_with: 'Paid off with payment',
    first_months: ({
        months,
        amount,
        bought_down,
    }: Texts<'amount'> & {months: number; bought_down: boolean}) =>
        `First ${months} months: ${amount} a month. ` +
        (bought_down
            ? 'The buydown pays part of the payment, and taxes may be lower until the finished ' +
              'home is assessed.'
            : 'Taxes are lower until the finished home is assessed.'),
    take_in_hand: 'Show this loan in the bar',
    take_away: 'Remove this loan',

    program: 'Program',
    rate: 'Interest rate',
    more: 'Rate lock, buydown and more',
    name: 'Name',
    lock: 'Rate lock',
    lock_days: ({days}: {days: number}) => `${days} days`,
    buydown: 'Temporary buydown',
    insurance_paid: 'Mortgage insurance is paid',
    insurance_ends_when: 'Mortgage insurance ends',
    benefit: 'VA loan benefit',
};
