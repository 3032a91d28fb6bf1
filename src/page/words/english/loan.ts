// One way to pay: what it comes to, and the fields of its terms.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const insurance = {
    paid_up: 'paid up at closing',
    none: 'none',
    whole_loan: 'for the whole loan',
    to: ({last}: Texts<'last'>) => `to ${last}`,
    to_or_on_request: ({last, request}: Texts<'last' | 'request'>) =>
        `to ${last}; on request from ${request}`,
};

const rates = {
    lowest: 'lowest without points',
    up_to_points: ({points}: Texts<'points'>) =>
        points === '1' ? 'lowest with up to 1 point' : `lowest with up to ${points} points`,
    listed: ({rate, points}: Texts<'rate' | 'points'>) => `${rate}%, listed at ${points} points`,
    noted: ({rate}: Texts<'rate'>) => `${rate}%`,
    quoted: 'quoted by a lender…',
    rate_quoted: 'Rate quoted',
    points_quoted: 'Points quoted',
    points_unit: 'points',
};

const downs = {
    given_as: 'Down payment given as',
    percent: 'of the value',
    amount: 'in dollars',
    cash: 'from this cash',
};

const buydowns = {
    'none': 'none',
    '1-0': '1-0: one point off the first year',
    '2-1': '2-1: two points off, then one',
    '3-2-1': '3-2-1: three points off, two, one',
};

const fees = {financed: 'added to the loan', cash: 'paid in cash'};

const premiums = {
    monthly: 'with each payment',
    single: 'at closing, in a single premium',
    financed: 'in a single premium, added to the loan',
};

const insurance_ends = {
    automatic: 'by itself, at 78%',
    request: 'when asked for, at 80%',
};

/// What was changed in a loan, after its name.
const changed = {
    term: 'term',
    down: 'down payment',
    rate: 'rate',
    points: 'points',
    lock: 'rate lock',
    buydown: 'buydown',
    premium: 'premium of mortgage insurance',
    insurance_ends: 'end of mortgage insurance',
    benefit: 'use of the benefit',
    name: 'renamed',
};

export const loan = {
    insurance,
    rates,
    downs,
    buydowns,
    fees,
    premiums,
    insurance_ends,
    changed,
    change: ({loan, what}: Texts<'loan' | 'what'>) => `${loan}: ${what}`,
    taken_away: ({loan}: Texts<'loan'>) => `${loan} taken away`,
    added: ({loan}: Texts<'loan'>) => `${loan} added`,

    month: ({amount, big}: Parts<'amount'> & Marks<'big'>) => rich`${big(amount)} a month`,
    all_cash: 'All cash, deposits too',
    paid_in_five_years: 'Paid in five years',
    owed_after_five_years: 'Owed after five years',
    paid_over_loan: 'Paid over the loan',
    paid_off_with: 'Paid off with payment',
    first_months: ({months, amount}: {months: number; amount: string}) =>
        `First ${months} months: ${amount} a month, while taxes are on less than the finished ` +
        'home or a buydown pays a part.',
    take_away: 'Take away',

    program: 'Program',
    rate: 'Rate',
    more: 'Lock, buydown and more',
    name: 'Name',
    lock: 'Rate lock',
    lock_days: ({days}: {days: number}) => `${days} days`,
    buydown: 'Temporary buydown',
    insurance_paid: 'Mortgage insurance is paid',
    insurance_ends_when: 'Mortgage insurance ends',
    benefit: 'VA loan benefit',
};
