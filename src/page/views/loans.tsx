// The loans side by side, each edited where it stands.
import {months_of, parts_of} from '../answers';
import type {Compare, Programs} from '../answers';
import type {Inquiry} from '../engine';
import {closing_words, dollars, size} from '../figures';
import {copy} from '../inquiry';
import {say} from '../language';
import {open_part} from '../opened';
import {shown_name} from '../loan_names';
import {use_answer} from '../parts/asked';
import {Incentives} from '../parts/incentives';
import {Loan, loan_part} from '../parts/loan_card';
import type {Written} from '../parts/loan_fields';
import {OverTheYears} from '../parts/loan_years';
import {small} from '../parts/marks';
import {MonthBar} from '../parts/month_bar';
import {RateMoves} from '../parts/rate_moves';
import {estimate_words, terms_at_a_glance} from '../parts/terms';
import {loan_name} from '../state/books';
import {act, take_in_hand} from '../state/changing';
import {answered, buyer, hand, tour} from '../state/signals';
import {Name} from '../parts/name';
import {Term} from '../parts/term';
import {use_shared} from '../parts/use_shared';
import {WhatToKnow} from '../parts/what_to_know';

import '../parts/overview.css';
import './loans.css';

function add(): void {
    const one = buyer.value!;
    const next = copy(one.inquiry);
    const base =
        next.scenarios.find((each: Written) => each.name === one.hand) ?? next.scenarios[0];
    const names = new Set(next.scenarios.map((each: Written) => each.name));
    const fresh = say.loan_names.another_way({name: base.name});
    let name = fresh;
    for (let i = 2; names.has(name); ++i) name = say.common.numbered({name: fresh, number: i});
    next.scenarios.push({...copy(base), name});
    open_part('loans', loan_part(next.scenarios.length - 1));
    void act(
        next,
        {what: say.loan.added({loan: shown_name(name, base)}), touch: null, remarks: []},
        true,
    );
}

/// All of them on one scale: what a month is made of, and what it takes to start.
function Overview({answer, hand, widest}: {answer: Compare; hand: string; widest: number}) {
    return (
        <div class="overview" role="radiogroup" aria-label={say.loans.overview}>
            {answer.scenarios.map((one) => (
                <label
                    key={one.terms.name}
                    class={`row overview-row ${one.terms.name === hand ? 'on' : ''}`}
                >
                    <input
                        type="radio"
                        name="hand-above"
                        checked={one.terms.name === hand}
                        onChange={() => take_in_hand(one.terms.name)}
                    />
                    <span class="overview-name">
                        <span class="row-title">
                            <Name of={loan_name(one.terms.name)} />
                        </span>
                        {one.available ? (
                            <span class="terms">{terms_at_a_glance(one.terms)}</span>
                        ) : (
                            <span class="refused">
                                {say.common.refused_beside({
                                    why: one.refusals.map((each) => each.words).join('; '),
                                })}
                            </span>
                        )}
                    </span>
                    {one.available && (
                        <span class="overview-bar">
                            <MonthBar monthly={one.monthly} widest={widest} />
                        </span>
                    )}
                    {one.available && (
                        <span class="overview-money">
                            <span class="row-price">
                                {say.common.monthly_small({
                                    amount: dollars(one.monthly.total),
                                    small,
                                })}
                            </span>
                            <span class="effect-cash">{closing_words(one.cash.to_close)}</span>
                        </span>
                    )}
                </label>
            ))}
            <p class="facts">{estimate_words(answer.heading)}</p>
            <p class="overview-key">
                {parts_of(months_of(answer.scenarios)).map(({key, name, color, term}) => (
                    <span key={key}>
                        <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                            <rect class={`part ${color}`} width="10" height="10" />
                        </svg>
                        <Term of={term}>{name}</Term>
                    </span>
                ))}
            </p>
        </div>
    );
}

export function LoansView() {
    const inquiry: Inquiry = buyer.value!.inquiry;
    const in_hand = hand.value;
    const {answer} = use_answer<Compare>(
        'compare',
        answered.value,
        in_hand ? {scenario: in_hand} : {},
    );
    const {answer: offered} = use_answer<Programs>('programs', answered.value);
    const widest = Math.max(
        1,
        ...(answer?.scenarios ?? [])
            .filter((one) => one.available)
            .map((one) => size(one.monthly.total)),
    );
    const find = (name: string, index: number) =>
        answer?.scenarios.find((one) => one.terms.name === name) ?? answer?.scenarios[index];
    // A loan that was not touched is not drawn again.
    const scenarios: Written[] = use_shared(inquiry.scenarios ?? []);
    return (
        <div class="loans-page">
            <h2>{say.loans.title}</h2>
            <p class="home-line">
                {say.common.home_line({
                    plan: <Name of={tour.value?.heading.plan} />,
                    lot: tour.value?.heading.lot,
                })}
            </p>
            {answer && <Overview answer={answer} hand={in_hand} widest={widest} />}
            <section class="apart" aria-labelledby="apart">
                <h3 id="apart">{say.loans.apart.title}</h3>
                {scenarios.map((written, index) => (
                    <Loan
                        key={index}
                        index={index}
                        written={written}
                        scenario={find(written.name, index)}
                        answer={answer}
                        programs={offered?.programs ?? []}
                        widest={widest}
                        only={scenarios.length === 1}
                    />
                ))}
                <button class="step add-loan" onClick={add}>
                    {say.loans.add}
                </button>
            </section>
            <div class="beyond">
                <Incentives />
                {answer && <OverTheYears answer={answer} />}
                <RateMoves scenario={in_hand} />
            </div>
            {answer && <WhatToKnow all={answer.cautions} />}
        </div>
    );
}
