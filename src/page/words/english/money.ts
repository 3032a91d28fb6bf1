// What a builder's money can do, and the names of the credits that the page writes for it.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

export type CreditUse =
    'points' | 'temporary_buydown' | 'closing_costs' | 'upfront_fee' | 'prepaids';

const credit_names: Record<CreditUse, string> = {
    points: 'From the builder, for points',
    temporary_buydown: 'From the builder, for temporary buydown',
    closing_costs: 'From the builder, for closing costs',
    upfront_fee: 'From the builder, for upfront fee',
    prepaids: 'From the builder, for prepaids',
};

/// What a split of the money goes to.
const shares = {
    off_price: 'off the price',
    points: ({rate, points}: Texts<'rate' | 'points'>) => `points: ${rate} at ${points} points`,
    buydown: ({buydown}: Texts<'buydown'>) => `${buydown} temporary buydown`,
    closing_costs: 'closing costs',
    /// The cents of a financed fee are in cash too.
    fee_financed: 'upfront fee',
    fee_in_cash: ({fee}: Texts<'fee'>) => `${fee}, in cash`,
    prepaids: 'prepaids',
    without_use: 'finds nothing left to pay',
    over_cap: 'lost to the cap',
};

const table = {
    split: 'Split',
    month_now: 'A month now',
    after_three_years: 'After three years',
    cost_over: ({years}: Texts<'years'>) => `Cost over ${years}`,
    lost_to_cap: 'Lost to the cap',
    nothing_to_pay: 'Nothing to pay',
    each: 'Each split in figures',
    best: 'Every split that no other beats',
    best_count: ({count}: {count: number}) => `Every split that no other beats (${count})`,
    without: 'Without it',
    split_name: ({
        off_price,
        buydown,
        in_cash,
    }: Texts<'off_price'> & {buydown: string | null; in_cash: string | null}) =>
        `${off_price} off the price` +
        (buydown ? `, ${buydown} buydown` : '') +
        (in_cash ? `, ${in_cash}` : ''),
};

const chart = {
    title:
        'Each dot is a split that no other beats in month, cash and cost at once. Further left: ' +
        'less cash. Further down: a lower payment now.',
    label: 'Cash to close against the month now; the same figures stand in the table below',
    a_month: 'a month',
    cash_to_close: 'cash to close',
    one_use: 'one use by itself',
    without: 'without the money',
};

/// One split, and its way into the inquiry.
const split = {
    month_after_three_years: 'A month after three years',
    all_cash: 'All cash, deposits too',
    as_now: 'This is as it is used now.',
    use: 'Use it so',
    take_out: 'Take it out again',
    used: ({loan}: Texts<'loan'>) => `The builder's money used so under ${loan}`,
    taken_out: "The builder's money taken out again",
    not_off_price:
        'An inquiry holds money off the price only as an incentive of the price book that is used ' +
        'so.',
    not_so: ({why}: Texts<'why'>) =>
        `The price book does not let its incentive be used so: ${why}.`,
};

export const money = {
    credit_names,
    shares,
    table,
    chart,
    split,

    title: "What the builder's money can do",
    says:
        'The same money off the price, into closing costs, points, a temporary buydown, or an ' +
        'upfront fee or insurance premium paid in cash; by itself and split.',
    amount: 'The builder gives',
    no_amount: 'Type what the builder gives.',
    years: 'Cost looked at over',
    years_label: 'Years that the cost is looked at over',
    years_unit: 'years',
    instead: 'In place of the incentives that are used now, not on top of them',

    whole_loan: 'the whole loan',
    lowest_payment: 'Lowest payment now',
    least_cash: 'Least cash to close',
    least_cost: ({years}: Texts<'years'>) => `Least cost over ${years}`,
    all_off_price: ({use}: Texts<'use'>) => `All ${use}`,
    all_to: ({use}: Texts<'use'>) => `All to ${use}`,
    a_split_between: 'A split between',
    bests: 'The best of every split',
    to_close: ({amount}: Texts<'amount'>) => `${amount} to close`,

    /// What others may give at most, and how much of it is taken.
    no_cap: 'This loan has no limit on what interested parties may give.',
    cap: ({
        percent,
        of,
        amount,
        concessions_alone,
        taken,
    }: Texts<'percent' | 'of' | 'amount'> & {
        concessions_alone: boolean;
        taken: string | null;
    }) =>
        `Interested parties may give ${percent} of the ${of}, ${amount}` +
        (concessions_alone ? ', prepaids, buydowns and the funding fee alone counted' : '') +
        (taken ? `; ${taken} of it is taken already.` : '.'),
    without_it: ({
        loan,
        month,
        cash,
        terms,
        estimate,
        cap,
    }: Parts<'loan' | 'month' | 'cash' | 'terms' | 'estimate' | 'cap'>) =>
        rich`${loan}: ${month} a month and ${cash} to close without it. ${terms}. ${estimate} ${cap}`,
    all_cash_down: 'The down payment takes all the cash there is, whatever the split.',
    why_not: ({use, why}: Texts<'use' | 'why'>) => `${use}: ${why}`,
    lender: ({lender}: Texts<'lender'>) => `Depends on the lender: ${lender}.`,
    any_lender:
        'A buyer may choose any lender. Where the money hangs on one, set its whole cost beside ' +
        "another's without the money.",
};
