// The loan in hand, year by year.
import {rich} from '../phrase';
import type {Marks, Texts} from '../phrase';

export const schedule = {
    title: 'The loan, year by year',
    way_to_pay: 'Way to pay',
    extra: 'Extra principal each month',
    worst_case: 'Every change of the rate as high as the caps let it be',
    says: ({
        loan,
        terms,
        estimate,
        first_payment,
    }: Texts<'loan' | 'terms' | 'estimate' | 'first_payment'>) =>
        `Loan of ${loan}: ${terms}. ${estimate} First payment ${first_payment}. Touch a year for ` +
        'its months.',

    no_extra:
        'Extra principal goes to the balance each month; type an amount to see what it saves.',
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
        rich`${strong(`${extra} more each month`)}: ${payments} payments, ${fewer} fewer; the last in ${last}; ${interest} less interest${
            insurance && `, ${insurance} less mortgage insurance`
        }.`,
    bought_down: ({amount, years}: {amount: string; years: {amount: string; year: number}[]}) =>
        `The temporary buydown pays ${amount} of these payments: ` +
        `${years.map((one) => `${one.amount} in year ${one.year}`).join(', ')}.`,

    table: 'The loan year by year',
    year: 'Year',
    year_number: ({year}: {year: number}) => `Year ${year}`,
    year_to: ({month}: Texts<'month'>) => `to ${month}`,
    insurance_short: ({amount}: Texts<'amount'>) => `MI ${amount}`,
    principal_and_interest: 'Principal and interest',
    interest: 'Interest',
    principal: 'Principal',
    balance: 'Balance',
    shares: 'Shares',
    at_closing: 'At closing, by the lender credit',
    together: 'Together',
};
