// The terms that stand beside every payment: rate, APR, term, down payment, what may change.
import type {Heading, Terms} from '../answers';
import {date, dollars, is_zero, percent, term} from '../figures';

/// "−0.125": a credit.
export function minus(number: string): string {
    return number.replace('-', '−');
}

/// What a rate that changes may come to; empty where it is fixed.
export function change_words(terms: Terms): string {
    const rate = terms.adjustable;
    if (!rate) return '';
    const worst =
        rate.worst_case.find((step) => step.rate === rate.highest_rate) ??
        rate.worst_case[rate.worst_case.length - 1];
    return (
        `the rate holds for ${term(rate.initial_months)}, then may change every ` +
        `${rate.reset_months} months, up to ${percent(rate.highest_rate)}` +
        (worst
            ? `: at worst ${dollars(worst.payment)} principal and interest from payment ` +
              `${worst.from_payment}`
            : '')
    );
}

export function terms_words(terms: Terms): string {
    const changes = change_words(terms);
    return (
        `${percent(terms.rate)} note rate, ${minus(terms.points)} points, ` +
        `${terms.apr ? `APR ${percent(terms.apr)}` : 'APR not found'}, ${term(terms.months)}, ` +
        `${dollars(terms.down_payment)} down (${percent(terms.down_percent)})` +
        (is_zero(terms.extra_principal)
            ? ''
            : `, ${dollars(terms.extra_principal)} extra principal a month by choice`) +
        (changes ? `; ${changes}` : '')
    );
}

/// What every payment and rate beside it is.
export function estimate_words(heading: Heading): string {
    return (
        `Estimate as of ${date(heading.as_of)}, rates of ${date(heading.rates_date)}; not an ` +
        'approval or an offer to lend.'
    );
}
