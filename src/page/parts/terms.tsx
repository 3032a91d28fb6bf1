// The terms that stand beside every payment: rate, APR, term, down payment, what may change.
import type {Heading, Terms} from '../answers';
import {date, dollars, percent, term, unless_zero} from '../figures';
import {say} from '../language';

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
    return say.terms.change({
        holds: term(rate.initial_months),
        every_months: rate.reset_months,
        highest: percent(rate.highest_rate),
        worst: worst ? {payment: dollars(worst.payment), from: worst.from_payment} : null,
    });
}

export function terms_words(terms: Terms): string {
    return say.terms.line({
        rate: percent(terms.rate),
        points: minus(terms.points),
        apr: terms.apr && percent(terms.apr),
        term: term(terms.months),
        down: dollars(terms.down_payment),
        down_percent: percent(terms.down_percent),
        extra: unless_zero(terms.extra_principal),
        change: change_words(terms),
    });
}

/// What every payment and rate beside it is.
export function estimate_words(heading: Heading): string {
    return say.terms.estimate({as_of: date(heading.as_of), rates: date(heading.rates_date)});
}
