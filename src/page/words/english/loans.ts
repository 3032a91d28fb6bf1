// The loans side by side, over the years, and what moves if the rate does.
import {rich} from '../phrase';
import type {Marks, Part, Parts, Texts} from '../phrase';

const curves = {
    spent_and_owed: {
        name: 'Paid plus owed',
        says: 'Cash, payments and insurance so far, plus the balance you still owe',
    },
    balance: {name: 'Balance', says: 'The balance you still owe'},
    paid: {name: 'Paid so far', says: 'Everything paid so far, with taxes and insurance'},
};

const years = {
    title: 'Over the years',
    lines_label: 'What the lines show',
    curves,
    as_table: 'Show as a table',
    table: 'Figures by year',
    end_of_year: 'End of year',
    year: ({year}: {year: number}) => `year ${year}`,
    shown: 'the loan shown',
    larger_scale: 'On a larger scale',
    at_closing: 'At closing',
    after: ({year}: {year: number}) => `End of year ${year}`,
    against: ({what, name}: Texts<'what' | 'name'>) =>
        `${what}: how much more or less than with the loan shown, ${name}.`,
    chart: ({title}: Texts<'title'>) => `${title}. The table below has the same figures.`,
};

const crossings = {
    title: 'Which loan costs less, and when',
    says:
        'Two loans on the same home, compared by cash, payments and insurance so far, plus the ' +
        'balance still owed.',
    against: ({first, second, faint}: Parts<'first' | 'second'> & Marks<'faint'>) =>
        rich`${first} ${faint('compared with')} ${second}`,
    cheaper: ({when, loan}: Parts<'when' | 'loan'>) => rich`${when} ${loan}`,
    same: ({when}: Parts<'when'>) => rich`${when} both cost the same`,
};

const points = {
    title: 'When points pay for themselves',
    pay_back: ({
        loan,
        rate,
        rate_without,
        cash,
        saved,
        when,
    }: Texts<'loan' | 'rate' | 'rate_without' | 'cash' | 'saved' | 'when'>) =>
        `${loan}: a rate of ${rate} instead of ${rate_without} takes ${cash} more cash and saves ` +
        `${saved} a month; ${when}.`,
};

const rates = {
    title: 'If the rate moves before closing',
    says: ({loan, terms, estimate}: Parts<'loan' | 'terms' | 'estimate'>) =>
        rich`${loan}: here every rate on the rate sheet moves by the same step. Only a rate lock keeps a rate. The loan today: ${terms}. ${estimate}`,
    table: 'Monthly payment and cash at each rate',
    today: ({rate}: Texts<'rate'>) => `${rate} (today)`,
    lock: 'Rate lock',
    lock_points: 'Points at this rate',
    lock_cash: 'Change in cash',
    days: ({days, in_hand}: {days: number; in_hand: boolean}) =>
        `${days} days${in_hand ? ' (yours)' : ''}`,
    ends: ({on, too_soon}: Texts<'on'> & {too_soon: boolean}) =>
        `ends ${on}${too_soon ? ', before closing' : ''}`,
    not_offered: 'not offered at this rate',
};

/// How much less or more than under the loan shown; null where it is the same.
type Move = {amount: Part; less: boolean} | null;

/// What sets a loan apart from the one shown, in a line.
const apart = {
    title: 'Compared with the loan marked',
    shown: 'marked above',
    month: (move: Move) =>
        move ? rich`${move.amount} ${move.less ? 'less' : 'more'} a month` : rich`the same payment`,
    cash: (move: Move) =>
        move ? rich`${move.amount} ${move.less ? 'less' : 'more'} cash` : rich`the same cash`,
    /// By when, in the engine's words: "from payment 65 on".
    costs_less: ({when}: Texts<'when'>) => `costs less ${when}`,
    always_less: 'always costs less',
    never_less: 'never costs less',
    insurance_whole: 'mortgage insurance to the end',
    rises: ({highest}: Texts<'highest'>) => `rate can rise to ${highest}`,
};

export const loans = {
    apart,
    title: 'Loans for this home',
    overview: 'The loan that the bar shows',
    years_say: 'which loan costs less, and when',
    rates_say: 'payment and cash at other rates',
    add: 'Add another loan',
    years,
    crossings,
    points,
    rates,
};
