// The terms that stand beside every payment, and which way the cash goes at closing.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const terms = {
    points: ({points}: Texts<'points'>) => `${points} ${points === '1' ? 'point' : 'points'}`,
    points_credit: ({points}: Texts<'points'>) =>
        `lender credit of ${points} ${points === '1' ? 'point' : 'points'}`,
    points_back: ({points}: Texts<'points'>) => `${points} credit`, ///< among numbers of points

    /// What a rate that changes may come to.
    change: ({
        holds,
        every_months,
        highest,
        worst,
    }: Texts<'holds' | 'highest'> & {
        every_months: number;
        worst: {payment: string; from: number} | null;
    }) =>
        `the rate is fixed for ${holds}, then can change every ${every_months} months, up to ` +
        highest +
        (worst
            ? ` (at worst, ${worst.payment} principal and interest from payment ${worst.from} on)`
            : ''),
    line: ({
        rate,
        points,
        apr,
        term,
        down,
        down_percent,
        extra,
        change,
    }: Texts<'rate' | 'points' | 'term' | 'down' | 'down_percent'> & {
        apr: string | null;
        extra: string | null;
        change: string | null;
    }) =>
        `${rate} interest rate, ${points}, ${apr ? `APR ${apr}` : 'APR not found'}, ` +
        `${term}, ${down} down (${down_percent})` +
        (extra ? `, ${extra} extra principal a month by choice` : '') +
        (change ? `; ${change}` : ''),
    /// In a row among others: points are told where the loan is opened.
    at_a_glance: ({
        rate,
        highest,
        apr,
        term,
        down,
        down_percent,
        extra,
    }: Texts<'rate' | 'term' | 'down' | 'down_percent'> &
        Record<'highest' | 'apr' | 'extra', string | null>) =>
        `${rate}${highest ? ` at first, up to ${highest}` : ''}, ` +
        `${apr ? `APR ${apr}` : 'APR not found'}, ${term}, ${down} down (${down_percent})` +
        (extra ? `, ${extra} extra a month by choice` : ''),
    /// Below the bar's figures, where two lines of a phone have to do.
    in_short: ({
        loan,
        rate,
        highest,
        apr,
        term,
        down,
        down_percent,
        as_of,
        roomy,
    }: Texts<'loan' | 'rate' | 'term' | 'down' | 'down_percent' | 'as_of'> & {
        highest: string | null;
    } & Parts<'apr'> &
        Marks<'roomy'>) =>
        rich`${roomy(`${loan}: `)}${rate}${highest && ` at first, up to ${highest}`}, ${apr}, ${
            term
        }, ${down} down (${down_percent}), taxes and insurance included. Estimate, ${as_of}, not an ${roomy(
            'approval or an ',
        )}offer${roomy(' to lend')}`,
    /// What every payment and rate beside it is.
    estimate: ({as_of, rates}: Texts<'as_of' | 'rates'>) =>
        `Estimate as of ${as_of}, with rates of ${rates}. Not an approval or an offer to lend.`,
    /// A sentence about a loan, with its terms.
    beside: ({terms, estimate}: Texts<'terms' | 'estimate'>) => `${terms}. ${estimate}`,
    of_loan: ({loan, terms, estimate}: Texts<'loan' | 'terms' | 'estimate'>) =>
        `${loan}: ${terms}. ${estimate}`,

    /// What a closing takes, or gives back where the deposits were more.
    to_close: ({amount}: Texts<'amount'>) => `${amount} cash to close`,
    back_at_closing: ({amount}: Texts<'amount'>) => `${amount} cash back at closing`,
    /// The same among amounts of cash to close.
    back: ({amount}: Texts<'amount'>) => `${amount} back`,

    /// Of what a term means: the regulation that names it.
    source: ({source}: Texts<'source'>) => `Source: ${source}`,
};
