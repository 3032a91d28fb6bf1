// The terms that stand beside every payment: rate, APR, term, down payment, what may change.
import type {Heading, Terms} from '../answers';
import {date, dollars, percent, rate_percent, short, term, unless_zero} from '../figures';
import {say} from '../language';

/// Less than none are a credit, which is said and has no minus.
function credit_in(points: string): string | null {
    return points.startsWith('-') ? points.slice(1) : null;
}

/// "0.5 points"; "lender credit of 0.125 points".
export function points_words(points: string): string {
    const credit = credit_in(points);
    return credit ? say.terms.points_credit({points: credit}) : say.terms.points({points});
}

/// The same in a row or a column of points.
export function points_cell(points: string): string {
    const credit = credit_in(points);
    return credit ? say.terms.points_back({points: credit}) : points;
}

/// What a rate that changes may come to; empty where it is fixed.
export function change_words(terms: Terms): string {
    const how = terms.adjustable;
    if (!how) return '';
    const worst =
        how.worst_case.find((step) => step.rate === how.highest_rate) ??
        how.worst_case[how.worst_case.length - 1];
    return say.terms.change({
        holds: term(how.initial_months),
        every_months: how.reset_months,
        highest: rate_percent(how.highest_rate),
        worst: worst ? {payment: dollars(worst.payment), from: worst.from_payment} : null,
    });
}

export function terms_words(terms: Terms): string {
    return say.terms.line({
        rate: rate_percent(terms.rate),
        points: points_words(terms.points),
        apr: terms.apr && rate_percent(terms.apr),
        term: term(terms.months),
        down: dollars(terms.down_payment),
        down_percent: percent(terms.down_percent),
        extra: unless_zero(terms.extra_principal),
        change: change_words(terms),
    });
}

/// The same where loans stand in rows: points, and what a rate may come to, are in the loan itself.
export function terms_at_a_glance(terms: Terms): string {
    return say.terms.at_a_glance({
        rate: rate_percent(terms.rate),
        highest: terms.adjustable && rate_percent(terms.adjustable.highest_rate),
        apr: terms.apr && rate_percent(terms.apr),
        term: term(terms.months),
        down: short(terms.down_payment),
        down_percent: percent(terms.down_percent),
        extra: unless_zero(terms.extra_principal),
    });
}

/// What every payment and rate beside it is.
export function estimate_words(heading: Heading): string {
    return say.terms.estimate({as_of: date(heading.as_of), rates: date(heading.rates_date)});
}
