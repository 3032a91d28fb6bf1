// What sets a loan apart from the one shown, in a line: month, cash, when it has cost less, its catch.
import type {ComponentChildren} from 'preact';

import type {Compare, Scenario} from '../answers';
import {is_zero, rate_percent, rounded} from '../figures';
import {say} from '../language';
import {Amount} from './amount';

type One = Compare['scenarios'][number];

/// How much less or more, without its sign.
function move(amount: string) {
    if (is_zero(amount)) return null;
    return {
        amount: <Amount of={amount} write={(text) => rounded(text.replace('-', ''))} />,
        less: amount.startsWith('-'),
    };
}

/// From when to when it costs less than the loan shown, each time; or that it never does.
function order_words(one: One, answer: Compare): string | null {
    const name = one.terms.name;
    const order = answer.orders.find(
        ({first, second}) =>
            (first === name && second === answer.apart_from) ||
            (second === name && first === answer.apart_from),
    );
    if (!order) return null;
    const its = order.first === name ? 'first' : 'second';
    const words = say.loans.apart;
    if (order.stretches.length === 1 && order.stretches[0].cheaper === its)
        return words.always_less;
    const when = order.stretches.filter(({cheaper}) => cheaper === its).map((each) => each.when);
    return when.length > 0 ? words.costs_less({when: say.common.and(when)}) : words.never_less;
}

/// What a buyer would want to have known of it.
function catch_words({terms, mortgage_insurance: insurance}: Scenario): string | null {
    const words = say.loans.apart;
    if (terms.adjustable)
        return words.rises({highest: rate_percent(terms.adjustable.highest_rate)});
    if (insurance.whole_term) return words.insurance_whole;
    return null; // until when it is paid is told where the loan is opened
}

export function Apart({one, answer}: {one: One; answer: Compare}) {
    if (!one.available) {
        const why = one.refusals.map((each) => each.words).join('; ');
        return <span class="refused">{say.common.refused_beside({why})}</span>;
    }
    const words = say.loans.apart;
    const against = one.against_shown;
    const told: ComponentChildren[] = [];
    if (one.terms.name === answer.apart_from) told.push(words.shown);
    else if (!against.refusals) {
        told.push([
            words.month(move(against.per_month!)),
            ', ',
            words.cash(move(against.cash_needed!)),
        ]);
        told.push(order_words(one, answer));
    }
    told.push(catch_words(one));
    return <>{told.filter(Boolean).flatMap((part, at) => (at === 0 ? [part] : ['; ', part]))}</>;
}
