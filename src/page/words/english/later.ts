// An option now from the builder, or after the closing.
import type {LaterPath} from '../../answers';
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const ways: Record<LaterPath['way'], string> = {
    financed: 'From the builder, in the loan',
    cash: 'From the builder, in cash',
    after: 'After closing, in cash',
    after_lent: 'After closing, with a personal loan',
};

/// Another way has cost more than this one, at times that the engine tells.
const than: Record<LaterPath['way'], (when: string) => string> = {
    financed: (when) => `more than from the builder, in the loan: ${when}`,
    cash: (when) => `more than from the builder, in cash: ${when}`,
    after: (when) => `more than after closing, in cash: ${when}`,
    after_lent: (when) => `more than after closing, with a personal loan: ${when}`,
};

const fields = {
    option: 'Option',
    chosen: ({name}: Texts<'name'>) => `${name} (chosen)`,
    level: 'Choice from the builder',
    how_many: 'How many',
    month: 'Done with payment number',
    month_label: 'Done with which payment of the loan',
    rate: 'Personal loan rate',
    rate_label: 'Rate of a personal loan',
    months: 'Personal loan term',
    months_label: 'Months of a personal loan',
    months_unit: 'months',
};

const costs = {
    spans_label: 'Years on the chart',
    span: ({years}: {years: number}) => `${years} years`,
    whole_loan: 'The whole loan',
    chart: 'What it has cost over the home without it, with what is still owed for it',
    by_years: 'Cost by year',
    month_by_month: 'Month by month',
    by_months: 'Cost month by month',
    through: 'Cost through',
    the_closing: 'closing',
    month: ({month}: {month: number}) => `month ${month}`,
    break_even: 'When one way has cost more',
};

export const later = {
    ways,
    than,
    fields,
    costs,

    title: 'Now, or after closing',
    says:
        'For options with an estimate in the price book. The cost is what each way has taken ' +
        'through each month, over the same home without the option.',
    no_estimates: 'The price book has no estimate for work after closing.',
    both: 'A personal loan needs both a rate and a number of months.',
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
            `After closing, about ${estimate.amount} by the estimate in the price book. ` +
                estimate.note
        }`,
    not_here: ({why}: Texts<'why'>) => `Not available from the builder here: ${why}`,
    without_it: ({loan, month, terms, estimate}: Parts<'loan' | 'month' | 'terms' | 'estimate'>) =>
        rich`${loan}: ${month} a month without it. ${terms}. ${estimate}`,
    about: ({amount}: Texts<'amount'>) => `about ${amount}`,
    at_once: ({payment}: {payment: number}) => `all at once, with payment ${payment}`,
    for_months: ({months}: {months: number}) => `for ${months} months`,
    at_closing: ({amount}: Texts<'amount'>) => `${amount} at closing`,
};
