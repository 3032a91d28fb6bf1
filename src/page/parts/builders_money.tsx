// What a builder's money can do: every split that is worth a thought, drawn, told and put to use.
import {useState} from 'preact/hooks';

import type {Credit, CreditScenario, Mix, Quote} from '../answers';
import {cautions_beside} from '../answers';
import type {Inquiry} from '../engine';
import {
    closing_amount,
    closing_words,
    dollars,
    is_zero,
    percent,
    rate_percent,
    term,
    unless_zero,
} from '../figures';
import {without_means} from '../inquiry';
import {say} from '../language';
import {without_money} from '../money';
import {stays_open} from '../opened';
import {loan_name} from '../state/books';
import {set_ask} from '../state/changing';
import {answered, buyer, tour} from '../state/signals';
import {use_answer} from './asked';
import {Cautions} from './cautions';
import {CreditChart} from './credit_chart';
import type {Named} from './credit_chart';
import {Split} from './credit_split';
import {PartFold} from './fold';
import {Typed} from './typed_field';
import {estimate_words, terms_words} from './terms';
import {Name} from './name';
import {Explained} from './term';

import './bests.css';
import './mixes.css';
import './builders_money.css';

/// The amount to begin with: the one incentive that the inquiry uses, where there is one.
function incentive_of(inquiry: Inquiry, quote: Quote | null): string {
    if (!quote || (inquiry.incentives ?? []).length !== 1) return '';
    if (quote.credits.length === 1) return quote.credits[0].amount;
    return is_zero(quote.incentives) ? '' : quote.incentives;
}

/// "7 years", or "the whole loan" where it ends no later.
function over(years: number, one: CreditScenario): string {
    return years * 12 >= one.terms.months ? say.money.whole_loan : term(years * 12);
}

type Years = 3 | 5 | 7 | 10 | 30;

/// The years that a loan of this term is told over: a shorter one ends before the last of them.
function told(one: CreditScenario): Years[] {
    const years = Object.keys(one.without.cost_over_years).map((each) => Number(each) as Years);
    const end = years.findIndex((count) => count * 12 >= one.terms.months);
    return end < 0 ? years : years.slice(0, end + 1);
}

function named_of(one: CreditScenario, years: number): Named[] {
    const best: [string, string, Mix | null][] = [
        ['lowest_payment', say.money.lowest_payment, one.lowest_payment],
        ['least_cash', say.money.least_cash, one.least_cash],
        ['least_cost', say.money.least_cost({years: over(years, one)}), one.least_cost],
    ];
    const uses = one.each_use.map((each): [string, string, Mix | null] => [
        each.use,
        each.use === 'off_price'
            ? say.money.all_off_price({use: each.name})
            : say.money.all_to({use: each.name}),
        each.mix,
    ]);
    return [...best, ...uses]
        .filter(([, , mix]) => mix !== null)
        .map(([key, name, mix], i) => ({
            key,
            name,
            mix: mix!,
            best: best.some((b) => b[0] === key),
        }));
}

function Fields({amount, instead, uses}: {amount: string; instead: boolean; uses: boolean}) {
    const asks = buyer.value!.asks;
    return (
        <div class="means">
            <label class="field">
                <span>{say.money.amount}</span>
                <Typed
                    label={say.money.amount}
                    before="$"
                    value={amount}
                    change={(value) => set_ask('amount', value)}
                />
            </label>
            <label class="field">
                <span>{say.money.years}</span>
                <Typed
                    label={say.money.years_label}
                    after={say.money.years_unit}
                    value={asks.years ?? '7'}
                    change={(value) => set_ask('years', value)}
                />
            </label>
            {uses && (
                <label class="tick-box">
                    <input
                        type="checkbox"
                        checked={instead}
                        onChange={(event) =>
                            set_ask('instead', event.currentTarget.checked ? 'yes' : 'no')
                        }
                    />
                    <span>{say.money.instead}</span>
                </label>
            )}
        </div>
    );
}

function Bests({
    named,
    chosen,
    choose,
}: {
    named: Named[];
    chosen: string;
    choose: (key: string) => void;
}) {
    const headline: Record<string, (mix: Mix) => string> = {
        lowest_payment: (mix) => say.common.monthly({amount: dollars(mix.monthly_now)}),
        least_cash: (mix) => closing_words(mix.cash_to_close),
        least_cost: (mix) => dollars(mix.cost_over_asked_years),
    };
    return (
        <div class="bests" role="radiogroup" aria-label={say.money.bests}>
            {named
                .filter((one) => one.best)
                .map((one) => (
                    <label key={one.key} class="segment">
                        <input
                            type="radio"
                            name="best"
                            checked={one.key === chosen}
                            onChange={() => choose(one.key)}
                        />
                        <span>
                            <span class="best-name">{one.name}</span>
                            <span class="best-figure">{headline[one.key](one.mix)}</span>
                        </span>
                    </label>
                ))}
        </div>
    );
}

function MixRow({
    name,
    mix,
    years,
    pick,
    on,
}: {
    name: string;
    mix: Mix;
    years: Years[];
    pick?: () => void;
    on: boolean;
}) {
    return (
        <tr class={on ? 'today' : ''}>
            <th scope="row">
                {pick ? (
                    <button class="mix-button" aria-pressed={on} onClick={pick}>
                        {name}
                    </button>
                ) : (
                    name
                )}
            </th>
            <td>{rate_percent(mix.rate)}</td>
            <td>{mix.apr ? rate_percent(mix.apr) : '–'}</td>
            <td>{dollars(mix.monthly_now)}</td>
            <td>{dollars(mix.monthly_after_three_years)}</td>
            <td>{closing_amount(mix.cash_to_close)}</td>
            {years.map((count) => (
                <td key={count}>{dollars(mix.cost_over_years[count])}</td>
            ))}
            <td>{is_zero(mix.over_cap) ? '–' : dollars(mix.over_cap)}</td>
            <td>{is_zero(mix.without_use) ? '–' : dollars(mix.without_use)}</td>
        </tr>
    );
}

function MixTable({
    one,
    rows,
    label,
}: {
    one: CreditScenario;
    rows: {key: string; name: string; mix: Mix; pick?: () => void; on: boolean}[];
    label: string;
}) {
    const years = told(one);
    return (
        <div class="scroll" tabIndex={0} role="region" aria-label={label}>
            <table class="mixes">
                <thead>
                    <tr>
                        <th scope="col">{say.money.table.split}</th>
                        <th scope="col">{say.common.note_rate}</th>
                        <th scope="col">{say.common.apr}</th>
                        <th scope="col">{say.money.table.month_now}</th>
                        <th scope="col">{say.money.table.after_three_years}</th>
                        <th scope="col">{say.common.cash_to_close}</th>
                        {years.map((count) => (
                            <th scope="col" key={count}>
                                {say.money.table.cost_over({years: over(count, one)})}
                            </th>
                        ))}
                        <th scope="col">{say.money.table.lost_to_cap}</th>
                        <th scope="col">{say.money.table.nothing_to_pay}</th>
                    </tr>
                </thead>
                <tbody>
                    {rows.map((row) => (
                        <MixRow {...row} key={row.key} years={years} />
                    ))}
                </tbody>
            </table>
        </div>
    );
}

/// What others may give at most, and how much of it is taken.
function cap_words(one: CreditScenario): string {
    const cap = one.contribution_cap;
    if (!cap) return say.money.no_cap;
    return say.money.cap({
        percent: percent(cap.percent),
        of: cap.of,
        amount: dollars(cap.amount),
        concessions_alone: cap.concessions_alone,
        taken: unless_zero(cap.taken),
    });
}

/// What the money hangs on, in neutral words.
function Conditions({quote}: {quote: Quote | null}) {
    return (
        <ul class="conditions">
            {quote?.incentive_conditions.map((text) => (
                <li key={text}>{text}</li>
            ))}
            {quote?.incentive_lenders.map((text) => (
                <li key={text}>{say.money.lender({lender: text})}</li>
            ))}
            <li>{say.money.any_lender}</li>
        </ul>
    );
}

/// The first of the list that every incentive of the price book may be used for.
function first_open(named: Named[], answer: Credit): Named {
    return (
        (answer.any_incentive && named.find((one) => one.mix.every_incentive_allows)) || named[0]
    );
}

function Found({
    answer,
    one,
    bare,
    instead,
}: {
    answer: Credit;
    one: CreditScenario;
    bare: Inquiry;
    instead: boolean;
}) {
    const named = named_of(one, answer.years);
    const open = first_open(named, answer);
    const [touched, choose] = useState('');
    const key = touched || open.key;
    const dot = /^frontier-(\d+)$/.exec(key);
    const chosen: Named =
        (dot && one.frontier[Number(dot[1])]
            ? {key, name: say.money.a_split_between, mix: one.frontier[Number(dot[1])], best: false}
            : named.find((each) => each.key === key)) ?? named[0];
    const barred = one.each_use.filter((each) => !each.mix);
    const row = (each: {key: string; name: string; mix: Mix}) => ({
        ...each,
        pick: () => choose(each.key),
        on: each.key === chosen.key,
    });
    return (
        <>
            <p class="home-line">
                {say.money.without_it({
                    loan: <Name of={loan_name(one.terms.name)} />,
                    month: dollars(one.without.monthly_now),
                    closing: closing_words(one.without.cash_to_close),
                    terms: terms_words(one.terms),
                    estimate: estimate_words(tour.value!.heading),
                    cap: cap_words(one),
                })}
            </p>
            <Bests named={named} chosen={chosen.key} choose={choose} />
            {answer.any_incentive && (
                <p class="facts">
                    {say.money.allowed({
                        uses: answer.allowed_uses.map((use) => say.codes.uses[use]),
                        first: open.mix.every_incentive_allows ? open.name : null,
                    })}
                </p>
            )}
            {!one.least_cash && <p class="note">{say.money.all_cash_down}</p>}
            <div class="two drawn">
                <CreditChart one={one} named={named} chosen={chosen} choose={choose} />
                <Split
                    name={chosen.name}
                    mix={chosen.mix}
                    amount={answer.amount}
                    years={over(answer.years, one)}
                    inquiry={bare}
                    scenario={one.terms.name}
                    instead={instead}
                />
            </div>
            <MixTable
                one={one}
                label={say.money.table.each}
                rows={[
                    {key: 'without', name: say.money.table.without, mix: one.without, on: false},
                    ...named.map(row),
                ]}
            />
            {barred.length > 0 && (
                <p class="facts">
                    {barred
                        .map((each) => say.money.why_not({use: each.name, why: each.why_not!}))
                        .join('; ')}
                    .
                </p>
            )}
            <details class="more" {...stays_open('money:best')}>
                <summary>{say.money.table.best_count({count: one.frontier.length})}</summary>
                <MixTable
                    one={one}
                    label={say.money.table.best}
                    rows={one.frontier.map((mix, i) =>
                        row({
                            key: `frontier-${i}`,
                            name: say.money.table.split_name({
                                off_price: dollars(mix.off_price),
                                buydown: mix.buydown,
                                in_cash: say.codes.paid_in_cash[mix.paid_in_cash],
                            }),
                            mix,
                        }),
                    )}
                />
            </details>
        </>
    );
}

export function BuildersMoney() {
    return (
        <PartFold
            view="budget"
            part="builders-money"
            title={say.money.title}
            says={say.afford.parts.builders_money}
        >
            <WhatItDoes />
        </PartFold>
    );
}

function WhatItDoes() {
    const {asks, uses: before} = buyer.value!;
    const bare = without_money(answered.value!, before);
    const inquiry = without_means(bare)!;
    const {answer: quote} = use_answer<Quote>('quote', inquiry);
    const uses = (inquiry.incentives ?? []).length > 0;
    const instead = uses && asks.instead !== 'no';
    const amount = asks.amount ?? incentive_of(inquiry, instead ? quote : null);
    const hand = tour.value!.scenario.terms.name;
    const {answer, problems} = use_answer<Credit>('credit', amount ? inquiry : null, {
        amount,
        scenario: hand,
        years: asks.years || '7',
        ...(instead ? {instead: 'yes'} : {}),
    });
    const one = answer?.scenarios.find((each) => each.terms.name === hand);
    const general = tour.value!.cautions;
    return (
        <>
            <p class="home-line">
                <Explained
                    text={say.money.says}
                    terms={['closing_costs', 'points', 'temporary_buydown', 'upfront_fee']}
                />
            </p>
            <Fields amount={amount} instead={instead} uses={uses} />
            {uses && <Conditions quote={quote} />}
            {problems.map((each, i) => (
                <p key={i} class="wrong">
                    {say.common.wrong(each)}
                </p>
            ))}
            {!amount && <p class="note">{say.money.no_amount}</p>}
            {one && one.refusals.length > 0 && (
                <p class="refused">
                    {say.common.refused({why: one.refusals.map((each) => each.words).join('; ')})}
                </p>
            )}
            {amount && one && one.refusals.length === 0 && (
                <Found answer={answer!} one={one} bare={bare} instead={instead} />
            )}
            {amount && answer && <Cautions all={cautions_beside(answer.cautions, general)} />}
        </>
    );
}
