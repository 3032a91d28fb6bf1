// The loan in hand, year by year.
import {rich} from '../phrase';
import type {Marks, Texts} from '../phrase';

export const schedule = {
    title: 'Payment schedule, year by year',
    loan: 'Loan',
    extra: 'Extra principal each month',
    worst_case: 'Every rate change as high as the loan allows',
    says: ({
        loan,
        terms,
        estimate,
        first_payment,
    }: Texts<'loan' | 'terms' | 'estimate' | 'first_payment'>) =>
        `Loan amount ${loan}: ${terms}. ${estimate} The first payment is due ` +
        `${first_payment}.`,
    years: 'Touch a year to see its months.',

    no_extra:
        'Extra principal lowers your balance each month. Enter an amount to see what it saves.',
    saves: ({
        extra,
        payments,
        fewer,
        last,
        interest,
        insurance,
        strong,
    }: Texts<'extra' | 'last' | 'interest'> & {
        payments: number;
        fewer: number;
        insurance: string | null;
    } & Marks<'strong'>) =>
        rich`${strong(`${extra} more each month`)}: ${payments} payments, ${fewer} fewer. The last is in ${last}. You pay ${interest} less interest${
            insurance && ` and ${insurance} less mortgage insurance`
        }.`,
    bought_down: ({amount, years}: {amount: string; years: {amount: string; year: number}[]}) =>
        `The temporary buydown pays ${amount} of these payments: ` +
        `${years.map((one) => `${one.amount} in year ${one.year}`).join(', ')}.`,

    chart: {
        title: 'The balance at the end of each year, and what each year pays.',
        label: 'Balance and payments by year. The table below has the same figures.',
        each_year: 'Paid each year',
    },
    table: 'Payments by year',
    year: 'Year',
    year_number: ({year}: {year: number}) => `Year ${year}`,
    year_to: ({month}: Texts<'month'>) => `to ${month}`,
    insurance_short: ({amount}: Texts<'amount'>) => `MI ${amount}`,
    principal_and_interest: 'Principal and interest',
    interest: 'Interest',
    principal: 'Principal',
    balance: 'Balance',
    shares: 'Shares',
    at_closing: 'At closing, from the lender credit',
    together: 'Total',
};
