// What a builder's money can do, and the names of the credits that the page writes for it.
import {rich} from '../phrase';
import type {Parts, Texts} from '../phrase';

export type CreditUse =
    'points' | 'temporary_buydown' | 'closing_costs' | 'upfront_fee' | 'prepaids';

const credit_names: Record<CreditUse, string> = {
    points: 'Builder credit for points',
    temporary_buydown: 'Builder credit for a temporary buydown',
    closing_costs: 'Builder credit for closing costs',
    upfront_fee: 'Builder credit for the upfront fee',
    prepaids: 'Builder credit for prepaids',
};

/// What a split of the money goes to.
const shares = {
    off_price: 'off the price',
    points: ({rate, points}: Texts<'rate' | 'points'>) => `points: ${rate} with ${points}`,
    buydown: ({buydown}: Texts<'buydown'>) => `${buydown} temporary buydown`,
    closing_costs: 'closing costs',
    /// The cents of a financed fee are in cash too.
    fee_financed: 'upfront fee',
    fee_in_cash: ({fee}: Texts<'fee'>) => `${fee}, in cash`,
    prepaids: 'prepaids',
    without_use: 'unused, nothing left to pay',
    over_cap: 'lost, over the limit',
};

const table = {
    split: 'Split',
    month_now: 'Monthly payment now',
    after_three_years: 'After three years',
    cost_over: ({years}: Texts<'years'>) => `Cost over ${years}`,
    lost_to_cap: 'Over the limit',
    nothing_to_pay: 'Unused',
    each: 'Each split in figures',
    best: 'Every split that no other beats',
    best_count: ({count}: {count: number}) => `Every split that no other beats (${count})`,
    without: 'Without the money',
    split_name: ({
        off_price,
        buydown,
        in_cash,
    }: Texts<'off_price'> & {buydown: string | null; in_cash: string | null}) =>
        `${off_price} off the price` +
        (buydown ? `, ${buydown} buydown` : '') +
        (in_cash ? `, ${in_cash} in cash` : ''),
};

const chart = {
    title:
        'Each dot is a split that no other beats on payment, cash and cost all at once. The line ' +
        'joins those with the lowest payment now for their cash; faint dots cost less over the ' +
        'years.',
    label: 'Cash to close and monthly payment now. The table below has the same figures.',
    stands_at: ({name, month, closing}: Texts<'name' | 'month' | 'closing'>) =>
        `${name}: ${month}, ${closing}`,
    without: 'without the money',
};

/// One split, and its way into the inquiry.
const split = {
    month_after_three_years: 'Payment after three years',
    all_cash: 'Cash needed',
    as_now: 'The money is used this way now.',
    use: 'Use it this way',
    take_out: 'Stop using it',
    used: ({loan}: Texts<'loan'>) => `Builder's money used this way with ${loan}`,
    taken_out: "Builder's money no longer used",
    not_off_price:
        'Money off the price has to be an incentive from the price book. No incentive here can be ' +
        'used this way.',
    not_so: ({why}: Texts<'why'>) =>
        `The price book does not let you use its incentive this way: ${why}.`,
};

export const money = {
    credit_names,
    shares,
    table,
    chart,
    split,

    title: "What the builder's money can do",
    says:
        'The same money can come off the price. It can also pay closing costs, points, a ' +
        'temporary buydown, or an upfront fee or insurance premium in cash. See each use alone ' +
        'and in a split.',
    amount: 'The builder gives',
    no_amount: 'Enter what the builder gives.',
    years: 'Look at the cost over',
    years_label: 'Years to look at the cost over',
    years_unit: 'years',
    instead: 'In place of the incentives used now, not on top of them',

    whole_loan: 'the whole loan',
    lowest_payment: 'Lowest payment now',
    least_cash: 'Least cash to close',
    least_cost: ({years}: Texts<'years'>) => `Lowest cost over ${years}`,
    all_off_price: ({use}: Texts<'use'>) => `All ${use}`,
    all_to: ({use}: Texts<'use'>) => `All to ${use}`,
    a_split_between: 'A split in between',
    /// Which split is open first, and why.
    allowed: ({uses, first}: {uses: string[]; first: string | null}) =>
        (uses.length > 0
            ? `Every incentive here may go toward ${uses.join(', ')}`
            : 'The incentives here share no use') +
        (first ? `, so “${first}” is open first.` : '.'),
    bests: 'The best of all splits',

    /// What others may give at most, and how much of it is taken.
    no_cap: 'This loan has no limit on contributions from the seller and other interested parties.',
    cap: ({
        percent,
        of,
        amount,
        concessions_alone,
        taken,
    }: Texts<'percent' | 'amount'> & {
        of: 'price' | 'value';
        concessions_alone: boolean;
        taken: string | null;
    }) =>
        'The seller and other interested parties may contribute up to ' +
        `${percent} of the ${of}, ${amount}` +
        (concessions_alone ? ', counting prepaids, buydowns and the funding fee alone' : '') +
        (taken ? `. Of that, ${taken} is already used.` : '.'),
    without_it: ({
        loan,
        month,
        closing,
        terms,
        estimate,
        cap,
    }: Parts<'loan' | 'month' | 'closing' | 'terms' | 'estimate' | 'cap'>) =>
        rich`${loan}, without the money: ${month} a month and ${closing}. ${terms}. ${estimate} ${cap}`,
    all_cash_down: 'The down payment takes all the cash you have, however the money is split.',
    why_not: ({use, why}: Texts<'use' | 'why'>) => `${use}: ${why}`,
    lender: ({lender}: Texts<'lender'>) => `Depends on the lender: ${lender}.`,
    any_lender:
        'You may choose any lender. If the money depends on one lender, compare the whole cost of ' +
        'that loan with another loan without the money.',
};
