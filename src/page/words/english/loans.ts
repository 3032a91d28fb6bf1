// The ways to pay side by side, over the years, and what moves if the rate does.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

const curves = {
    spent_and_owed: {
        name: 'Spent and owed',
        says: 'Cash, payments and insurance so far, and the balance still owed',
    },
    balance: {name: 'Balance', says: 'What is still owed'},
    paid: {name: 'Paid so far', says: 'Everything paid so far, taxes and insurance too'},
};

const years = {
    title: 'Over the years',
    lines_label: 'What the lines show',
    curves,
    as_table: 'The same as a table',
    table: 'Figures by year',
    end_of_year: 'End of year',
    year: ({year}: {year: number}) => `year ${year}`,
    chart: ({title}: Texts<'title'>) => `${title}; the same figures stand in the table below`,
};

const crossings = {
    title: 'Which has cost less, and when',
    says: 'Cash, payments and insurance so far and the balance owed, of two loans on the same home.',
    against: ({first, second, faint}: Parts<'first' | 'second'> & Marks<'faint'>) =>
        rich`${first} ${faint('against')} ${second}`,
    cheaper: ({when, loan}: Parts<'when' | 'loan'>) => rich`${when} ${loan}`,
    same: ({when}: Parts<'when'>) => rich`${when} both cost the same`,
};

const points = {
    title: 'Points and what they pay back',
    pay_back: ({
        loan,
        rate,
        rate_without,
        cash,
        saved,
        when,
    }: Texts<'loan' | 'rate' | 'rate_without' | 'cash' | 'saved' | 'when'>) =>
        `${loan}: ${rate} instead of ${rate_without} takes ${cash} more cash and saves ${saved} ` +
        `a month ; ${when}.`,
};

const rates = {
    title: 'If the rate moves before the closing',
    says: ({loan, terms, estimate}: Parts<'loan' | 'terms' | 'estimate'>) =>
        rich`${loan}: every rate of the sheet moved by the same step. Only a lock keeps a rate. As it stands ${terms}. ${estimate}`,
    table: 'Month and cash by rate',
    today: ({rate}: Texts<'rate'>) => `${rate} (today)`,
    lock: 'Lock',
    lock_points: 'Points at this rate',
    lock_cash: 'Change in cash',
    days: ({days, in_hand}: {days: number; in_hand: boolean}) =>
        `${days} days${in_hand ? ' (in hand)' : ''}`,
    ends: ({on, too_soon}: Texts<'on'> & {too_soon: boolean}) =>
        `to ${on}${too_soon ? ', before the closing' : ''}`,
    not_offered: 'not offered at this rate',
};

export const loans = {
    title: 'Ways to pay for the same home',
    home_line: ({plan, lot, price}: Parts<'plan' | 'lot' | 'price'>) =>
        rich`${plan} on lot ${lot}, contract price ${price}. The mark says which one the bar below shows; change any of them further down.`,
    overview: 'The way to pay that the bar shows',
    to_close: ({amount}: Texts<'amount'>) => `${amount} cash to close`,
    back_at_closing: ({amount}: Texts<'amount'>) => `${amount} back at closing`,
    add: 'Add another way to pay',
    years,
    crossings,
    points,
    rates,
};
