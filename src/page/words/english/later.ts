// An option now from the builder, or after the closing.
import type {LaterPath} from '../../answers';
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const ways: Record<LaterPath['way'], string> = {
    financed: 'From the builder, in the loan',
    cash: 'From the builder, in cash',
    after: 'After closing, in cash',
    after_lent: 'After closing, on a personal loan',
};

/// Another way has cost more than this one, at times that the engine tells.
const than: Record<LaterPath['way'], (when: string) => string> = {
    financed: (when) => `than from the builder, in the loan, ${when}`,
    cash: (when) => `than from the builder, in cash, ${when}`,
    after: (when) => `than after closing, in cash, ${when}`,
    after_lent: (when) => `than after closing, on a personal loan, ${when}`,
};

const fields = {
    option: 'Option',
    chosen: ({name}: Texts<'name'>) => `${name} (chosen)`,
    level: 'Level from the builder',
    how_many: 'How many',
    month: 'Done with payment',
    month_label: 'Done with which payment of the loan',
    rate: 'On a personal loan at',
    rate_label: 'Rate of a personal loan',
    months: 'for how long',
    months_label: 'Months of a personal loan',
    months_unit: 'months',
};

const costs = {
    spans_label: 'How far the lines go',
    span: ({years}: {years: number}) => `${years} years`,
    whole_loan: 'The whole loan',
    chart: 'What it has taken over the home without it, and what is owed more',
    by_years: 'Costs through years',
    month_by_month: 'Month by month',
    by_months: 'Costs month by month',
    through: 'Cost through',
    the_closing: 'the closing',
    month: ({month}: {month: number}) => `month ${month}`,
    break_even: 'Where one has cost more',
};

export const later = {
    ways,
    than,
    fields,
    costs,

    title: 'Now, or after the closing',
    says:
        'For options that the price book has an estimate for: the cost through each month, over ' +
        'the same home without it.',
    no_estimates: 'The price book has no estimate for anything after the closing.',
    both: 'A personal loan takes both, its rate and its months.',
    item: ({
        option,
        level,
        price,
        estimate,
        strong,
    }: Parts<'option' | 'price'> & {
        level: string | null;
        estimate: {amount: string; note: string} | null;
    } & Marks<'strong'>) =>
        rich`${strong(rich`${option}${level && `: ${level}`}`)}, ${price} from the builder. ${
            estimate &&
            `After closing about ${estimate.amount} by the estimate of the price book. ` +
                estimate.note
        }`,
    not_here: ({why}: Texts<'why'>) => `Not to be had from the builder here: ${why}`,
    without_it: ({loan, month, terms, estimate}: Parts<'loan' | 'month' | 'terms' | 'estimate'>) =>
        rich`${loan}: ${month} a month without it. ${terms}. ${estimate}`,
    about: ({amount}: Texts<'amount'>) => `about ${amount}`,
    at_once: ({payment}: {payment: number}) => `at once, with payment ${payment}`,
    for_months: ({months}: {months: number}) => `for ${months} months`,
    at_closing: ({amount}: Texts<'amount'>) => `${amount} at closing`,
};
