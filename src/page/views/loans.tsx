// The ways to pay side by side, each edited where it stands.
import {useEffect, useState} from 'preact/hooks';

import {month_parts} from '../answers';
import type {Compare, Program, Programs, Scenario} from '../answers';
import type {Inquiry, Problem} from '../engine';
import {dollars, is_zero, month, percent, size, term} from '../figures';
import {copy} from '../inquiry';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {MonthBar, MonthParts} from '../parts/month_bar';
import {minus, terms_words} from '../parts/terms';
import {YearsChart} from '../parts/years_chart';
import type {Curve} from '../parts/years_chart';
import {act, answered, buyer, problems, take_in_hand, tour} from '../store';

type Written = Record<string, any>;

/// One scenario of the inquiry changed; its name follows its terms where nobody named it.
function edit(index: number, members: Written, what: string): void {
    const one = buyer.value;
    if (!one) return;
    const next = copy(one.inquiry);
    const scenario = {...next.scenarios[index], ...members};
    for (const key of Object.keys(scenario)) if (scenario[key] === undefined) delete scenario[key];
    next.scenarios[index] = scenario;
    void act(next, {what: `${scenario.name}: ${what}`, touch: null, remarks: []}, true);
}

/// A text or number committed with Enter or by leaving; what was typed stays, right or wrong.
function Typed({
    value,
    label,
    wrong,
    change,
    mode = 'decimal',
    before,
    after,
}: {
    value: string;
    label: string;
    wrong?: Problem;
    change: (value: string) => void;
    mode?: 'decimal' | 'text';
    before?: string;
    after?: string;
}) {
    const [text, write] = useState(value);
    useEffect(() => write(value), [value]);
    const clean = () => (mode === 'decimal' ? text.trim().replace(/[$,%\s]/g, '') : text.trim());
    return (
        <span class="typed">
            {before && (
                <span class="unit" aria-hidden="true">
                    {before}
                </span>
            )}
            <input
                inputMode={mode}
                value={text}
                aria-label={label}
                aria-invalid={wrong ? 'true' : undefined}
                onInput={(event) => write(event.currentTarget.value)}
                onChange={() => {
                    if (clean() !== value) change(clean());
                }}
            />
            {after && (
                <span class="unit" aria-hidden="true">
                    {after}
                </span>
            )}
            {wrong && (
                <span class="wrong">
                    {wrong.found}; expected: {wrong.expected}
                </span>
            )}
        </span>
    );
}

function DownPayment({index, written, wrong}: {index: number; written: Written; wrong?: Problem}) {
    const down = written.down ?? {percent: '20'};
    const kind = 'percent' in down ? 'percent' : 'amount' in down ? 'amount' : 'cash';
    const terms = tour.value?.scenario.terms;
    const known: Written = {
        percent: terms?.down_percent ?? '5',
        amount: terms?.down_payment ?? '0',
        cash: buyer.value?.inquiry.cash ?? '0',
    };
    return (
        <fieldset class="field">
            <legend>Down payment</legend>
            <div class="pair">
                <Typed
                    label="Down payment"
                    value={String(down[kind])}
                    wrong={wrong}
                    before={kind === 'percent' ? undefined : '$'}
                    after={kind === 'percent' ? '%' : undefined}
                    change={(value) => edit(index, {down: {[kind]: value}}, 'down payment')}
                />
                <select
                    aria-label="Down payment given as"
                    value={kind}
                    onChange={(event) =>
                        edit(
                            index,
                            {down: {[event.currentTarget.value]: known[event.currentTarget.value]}},
                            'down payment',
                        )
                    }
                >
                    <option value="percent">of the price</option>
                    <option value="amount">in dollars</option>
                    <option value="cash">from this cash</option>
                </select>
            </div>
        </fieldset>
    );
}

function months_of(written: Written): number {
    return written.months ?? (written.years ?? 30) * 12;
}

/// The ladder of the program, term and lock that is written, or the nearest longer lock.
function ladder_of(program: Program | undefined, written: Written) {
    const lock = written.lock_days ?? 60;
    const same = program?.ladders.filter((one) => one.months === months_of(written)) ?? [];
    return same.find((one) => one.lock_days >= lock) ?? same[same.length - 1];
}

function rate_words(rate: Written): string {
    if ('quoted' in rate) return 'quoted';
    if ('note' in rate) return `note ${rate.note}`;
    return `points ${rate.points ?? '0'}`;
}

function RateField({
    index,
    written,
    program,
    wrong,
}: {
    index: number;
    written: Written;
    program?: Program;
    wrong?: Problem;
}) {
    const rate: Written = written.rate ?? {points: '0'};
    const ladder = ladder_of(program, written);
    const now = rate_words(rate);
    const choices = new Map<string, [string, Written]>([
        ['points 0', ['lowest without points', {points: '0'}]],
        ['points 1', ['lowest with up to 1 point', {points: '1'}]],
        ['points 2', ['lowest with up to 2 points', {points: '2'}]],
    ]);
    if (now.startsWith('points') && !choices.has(now)) {
        choices.set(now, [`lowest with up to ${rate.points} points`, rate]);
    }
    for (const rung of ladder?.rungs ?? []) {
        choices.set(`note ${rung.rate}`, [
            `${rung.rate} %, listed at ${minus(rung.points)} points`,
            {note: rung.rate},
        ]);
    }
    if (now.startsWith('note') && !choices.has(now)) choices.set(now, [`${rate.note} %`, rate]);
    choices.set('quoted', [
        'quoted by a lender…',
        {quoted: ladder?.rungs[0]?.rate ?? '6', points: '0'},
    ]);
    return (
        <fieldset class="field">
            <legend>Rate</legend>
            <select
                aria-label="Rate"
                value={now}
                onChange={(event) =>
                    edit(index, {rate: choices.get(event.currentTarget.value)![1]}, 'rate')
                }
            >
                {[...choices].map(([key, [words]]) => (
                    <option key={key} value={key}>
                        {words}
                    </option>
                ))}
            </select>
            {now === 'quoted' && (
                <div class="pair">
                    <Typed
                        label="Rate quoted"
                        value={String(rate.quoted)}
                        after="%"
                        wrong={wrong}
                        change={(value) => edit(index, {rate: {...rate, quoted: value}}, 'rate')}
                    />
                    <Typed
                        label="Points quoted"
                        value={String(rate.points ?? '0')}
                        after="points"
                        change={(value) => edit(index, {rate: {...rate, points: value}}, 'points')}
                    />
                </div>
            )}
            {wrong && now !== 'quoted' && (
                <span class="wrong">
                    {wrong.found}; expected: {wrong.expected}
                </span>
            )}
        </fieldset>
    );
}

function Select({
    label,
    value,
    choices,
    change,
}: {
    label: string;
    value: string;
    choices: [string, string][];
    change: (value: string) => void;
}) {
    return (
        <label class="field">
            <span>{label}</span>
            <select value={value} onChange={(event) => change(event.currentTarget.value)}>
                {choices.map(([key, words]) => (
                    <option key={key} value={key}>
                        {words}
                    </option>
                ))}
            </select>
        </label>
    );
}

function unique(values: number[]): number[] {
    return [...new Set(values)].sort((a, b) => a - b);
}

/// Another program: a term and a lock that it has, the rest as it was.
function to_program(index: number, written: Written, program: Program): void {
    const terms = unique(program.ladders.map((one) => one.months));
    const months = terms.includes(months_of(written))
        ? months_of(written)
        : terms[terms.length - 1];
    const members: Written = {
        program: program.id,
        months: undefined,
        years: months / 12,
        rate: {points: '0'},
    };
    if (program.kind !== 'conventional') members.mi_ends = undefined;
    if (program.kind !== 'va') members.use = undefined;
    if (!program.upfront_fee) members.fee = undefined;
    edit(index, members, program.name);
}

function More({index, written, program}: {index: number; written: Written; program?: Program}) {
    const locks = unique((program?.ladders ?? []).map((one) => one.lock_days));
    const lock = written.lock_days ?? 60;
    return (
        <details class="more">
            <summary>Lock, buydown and more</summary>
            <label class="field">
                <span>Name</span>
                <Typed
                    label="Name"
                    mode="text"
                    value={written.name}
                    change={(value) => {
                        if (value) rename(index, value);
                    }}
                />
            </label>
            <Select
                label="Rate lock"
                value={String(lock)}
                choices={unique([...locks, lock]).map((days) => [String(days), `${days} days`])}
                change={(value) => edit(index, {lock_days: Number(value)}, 'rate lock')}
            />
            <Select
                label="Temporary buydown"
                value={written.buydown ?? 'none'}
                choices={[
                    ['none', 'none'],
                    ['1-0', '1-0: one point off the first year'],
                    ['2-1', '2-1: two points off, then one'],
                    ['3-2-1', '3-2-1: three points off, two, one'],
                ]}
                change={(value) =>
                    edit(index, {buydown: value === 'none' ? undefined : value}, 'buydown')
                }
            />
            {program?.upfront_fee && (
                <Select
                    label={program.upfront_fee}
                    value={written.fee ?? 'financed'}
                    choices={[
                        ['financed', 'added to the loan'],
                        ['cash', 'paid in cash'],
                    ]}
                    change={(value) => edit(index, {fee: value}, program.upfront_fee)}
                />
            )}
            {program?.kind === 'conventional' && (
                <Select
                    label="Mortgage insurance ends"
                    value={written.mi_ends ?? 'automatic'}
                    choices={[
                        ['automatic', 'by itself, at 78 %'],
                        ['request', 'when asked for, at 80 %'],
                    ]}
                    change={(value) => edit(index, {mi_ends: value}, 'end of mortgage insurance')}
                />
            )}
            {program?.kind === 'va' && (
                <Select
                    label="VA loan benefit"
                    value={written.use ?? 'first'}
                    choices={[
                        ['first', 'first use'],
                        ['subsequent', 'used before'],
                        ['exempt', 'exempt from the fee'],
                    ]}
                    change={(value) => edit(index, {use: value}, 'use of the benefit')}
                />
            )}
        </details>
    );
}

function rename(index: number, name: string): void {
    const old = buyer.value?.inquiry.scenarios[index].name;
    if (buyer.value?.hand === old && buyer.value) buyer.value.hand = name;
    edit(index, {name}, 'renamed');
}

function remove(index: number): void {
    const one = buyer.value!;
    const next = copy(one.inquiry);
    const [gone] = next.scenarios.splice(index, 1);
    void act(next, {what: `${gone.name} taken away`, touch: null, remarks: []}, true);
}

function add(): void {
    const one = buyer.value!;
    const next = copy(one.inquiry);
    const base =
        next.scenarios.find((each: Written) => each.name === one.hand) ?? next.scenarios[0];
    const names = new Set(next.scenarios.map((each: Written) => each.name));
    let name = `${base.name}, another way`;
    for (let i = 2; names.has(name); ++i) name = `${base.name}, another way (${i})`;
    next.scenarios.push({...copy(base), name});
    void act(next, {what: `${name} added`, touch: null, remarks: []}, true);
}

function insurance_words(scenario: Scenario): string {
    const insurance = scenario.mortgage_insurance;
    if (insurance.payments === 0) return 'none';
    if (insurance.whole_term) return 'for the whole loan';
    const asked = insurance.on_request_date
        ? `; on request from ${month(insurance.on_request_date)}`
        : '';
    return `to ${month(insurance.last_date)}${asked}`;
}

/// All of them on one scale: what a month is made of, and what it takes to start.
function Overview({answer, hand, widest}: {answer: Compare; hand: string; widest: number}) {
    return (
        <div class="overview" role="radiogroup" aria-label="The way to pay that the bar shows">
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
                        <span class="row-title">{one.terms.name}</span>
                        {one.available ? (
                            <span class="terms">{terms_words(one.terms)}</span>
                        ) : (
                            <span class="refused">
                                not to be had: {one.refusals.map((each) => each.words).join('; ')}
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
                                {dollars(one.monthly.total)}
                                <small> a month</small>
                            </span>
                            <span class="effect-cash">
                                {dollars(one.cash.to_close)} cash to close
                            </span>
                        </span>
                    )}
                </label>
            ))}
            <p class="overview-key">
                {month_parts
                    .filter(([key]) =>
                        answer.scenarios.some((one) => one.available && !is_zero(one.monthly[key])),
                    )
                    .map(([key, name]) => (
                        <span key={key}>
                            <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                                <rect class={`part ${key}`} width="10" height="10" />
                            </svg>
                            {name}
                        </span>
                    ))}
            </p>
        </div>
    );
}

/// What a way to pay comes to a month, with the terms that stand beside it.
function Month({scenario, widest}: {scenario: Scenario; widest: number}) {
    if (!scenario.available) {
        return (
            <p class="refused">
                Not to be had: {scenario.refusals.map((one) => one.words).join('; ')}
            </p>
        );
    }
    return (
        <div class="loan-month">
            <p class="big-month">
                <span class="big">{dollars(scenario.monthly.total)}</span> a month
            </p>
            <p class="terms">{terms_words(scenario.terms)}</p>
            <MonthBar monthly={scenario.monthly} widest={widest} />
        </div>
    );
}

function Answer({scenario}: {scenario: Scenario}) {
    if (!scenario.available) return null;
    const rows: [string, string][] = [
        ['Cash to close', dollars(scenario.cash.to_close)],
        ['All cash, deposits too', dollars(scenario.cash.needed)],
        ['Loan', dollars(scenario.loan)],
        ['Mortgage insurance', insurance_words(scenario)],
        ['Paid in five years', dollars(scenario.paid_in_five_years)],
        ['Owed after five years', dollars(scenario.balance_after_five_years)],
        ['Paid over the loan', dollars(scenario.paid_over_loan)],
    ];
    const first = scenario.first_year;
    return (
        <>
            <MonthParts monthly={scenario.monthly} />
            {first.months > 0 && first.monthly.total !== scenario.monthly.total && (
                <p class="facts">
                    First {first.months} months: {dollars(first.monthly.total)} a month, while taxes
                    are on less than the finished home or a buydown pays a part.
                </p>
            )}
            <dl class="facts-list">
                {rows.map(([name, value]) => (
                    <div key={name}>
                        <dt>{name}</dt>
                        <dd>{value}</dd>
                    </div>
                ))}
            </dl>
        </>
    );
}

function wrong_at(index: number, member: string): Problem | undefined {
    return problems.value.find((one) => one.path?.startsWith(`/scenarios/${index}/${member}`));
}

function Card({
    index,
    written,
    scenario,
    programs,
    widest,
    only,
}: {
    index: number;
    written: Written;
    scenario?: Scenario;
    programs: Program[];
    widest: number;
    only: boolean;
}) {
    const program = programs.find((one) => one.id === written.program);
    const terms = unique((program?.ladders ?? []).map((one) => one.months));
    const months = months_of(written);
    const hand = tour.value?.scenario.terms.name === written.name;
    return (
        <article class={`loan ${hand ? 'in-hand' : ''}`} aria-label={written.name}>
            <label class="loan-head">
                <input
                    type="radio"
                    name="in-hand"
                    checked={hand}
                    onChange={() => take_in_hand(written.name)}
                />
                <span class="loan-name">{written.name}</span>
            </label>
            {scenario && <Month scenario={scenario} widest={widest} />}
            <div class="loan-terms">
                <Select
                    label="Program"
                    value={written.program}
                    choices={programs.map((one) => [one.id, one.name])}
                    change={(value) =>
                        to_program(
                            index,
                            written,
                            programs.find((one) => one.id === value)!,
                        )
                    }
                />
                <Select
                    label="Term"
                    value={String(months)}
                    choices={unique([...terms, months]).map((count) => [
                        String(count),
                        term(count),
                    ])}
                    change={(value) =>
                        edit(
                            index,
                            Number(value) % 12 === 0
                                ? {years: Number(value) / 12, months: undefined}
                                : {months: Number(value), years: undefined},
                            'term',
                        )
                    }
                />
                <DownPayment index={index} written={written} wrong={wrong_at(index, 'down')} />
                <RateField
                    index={index}
                    written={written}
                    program={program}
                    wrong={wrong_at(index, 'rate')}
                />
                <More index={index} written={written} program={program} />
            </div>
            <div class="loan-answer">{scenario && <Answer scenario={scenario} />}</div>
            {scenario && <p class="note">{scenario.terms.fine_print}</p>}
            {!only && (
                <button class="quiet" onClick={() => remove(index)}>
                    Take away
                </button>
            )}
        </article>
    );
}

const curves: [Curve, string, string][] = [
    [
        'spent_and_owed',
        'Spent and owed',
        'Cash, payments and insurance so far, and the balance still owed',
    ],
    ['balance', 'Balance', 'What is still owed'],
    ['paid', 'Paid so far', 'Everything paid so far, taxes and insurance too'],
];

function Years({answer, hand}: {answer: Compare; hand: string}) {
    const [curve, show] = useState<Curve>('spent_and_owed');
    const words = curves.find(([key]) => key === curve)!;
    return (
        <section class="group wide">
            <h3>Over the years</h3>
            <div class="segments" role="radiogroup" aria-label="What the lines show">
                {curves.map(([key, name]) => (
                    <label key={key} class="segment">
                        <input
                            type="radio"
                            name="curve"
                            checked={key === curve}
                            onChange={() => show(key)}
                        />
                        <span>{name}</span>
                    </label>
                ))}
            </div>
            <YearsChart scenarios={answer.scenarios} curve={curve} hand={hand} title={words[2]} />
            <YearsTable answer={answer} curve={curve} />
        </section>
    );
}

function YearsTable({answer, curve}: {answer: Compare; curve: Curve}) {
    const drawn = answer.scenarios.filter((one) => one.available && one.curve);
    const years = [...new Set(drawn.flatMap((one) => one.curve!.map((point) => point.year)))].sort(
        (a, b) => a - b,
    );
    return (
        <details class="more">
            <summary>The same as a table</summary>
            <div class="scroll" tabIndex={0} role="region" aria-label="Figures by year">
                <table>
                    <thead>
                        <tr>
                            <th scope="col">End of year</th>
                            {drawn.map((one) => (
                                <th scope="col" key={one.terms.name}>
                                    {one.terms.name}
                                </th>
                            ))}
                        </tr>
                    </thead>
                    <tbody>
                        {years.map((year) => (
                            <tr key={year}>
                                <th scope="row">{year === 0 ? 'closing' : year}</th>
                                {drawn.map((one) => (
                                    <td key={one.terms.name}>
                                        {dollars(
                                            one.curve!.find((point) => point.year === year)?.[
                                                curve
                                            ],
                                        )}
                                    </td>
                                ))}
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
        </details>
    );
}

function Crossings({answer}: {answer: Compare}) {
    if (answer.overtakes.length === 0) return null;
    return (
        <section class="group wide">
            <h3>Where one becomes the cheaper</h3>
            <p class="group-says">
                Cash, payments and insurance so far and the balance owed, of two loans on the same
                home.
            </p>
            <ul class="crossings">
                {answer.overtakes.map((one, i) => (
                    <li key={i}>
                        <span class="cross-when">from month {one.month}</span>
                        <span>
                            <strong>{one.cheaper_later}</strong> costs less than{' '}
                            {one.cheaper_at_first}, which costs less before.
                        </span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

function Points({answer}: {answer: Compare}) {
    if (answer.points.length === 0) return null;
    return (
        <section class="group wide">
            <h3>Points and what they pay back</h3>
            <ul class="crossings">
                {answer.points.map((one: any, i) => (
                    <li key={i}>
                        <span>
                            {one.scenario}: {percent(one.rate)} instead of{' '}
                            {percent(one.rate_without)} takes {dollars(one.extra_cash)} more cash
                            and saves {dollars(one.saved_monthly)} a month
                            {one.break_even
                                ? `; no dearer from month ${one.break_even}`
                                : '; it never pays back'}
                            .
                        </span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

export function LoansView() {
    const inquiry: Inquiry = buyer.value!.inquiry;
    const {answer} = use_answer<Compare>('compare', answered.value);
    const {answer: offered} = use_answer<Programs>('programs', answered.value);
    const widest = Math.max(
        1,
        ...(answer?.scenarios ?? [])
            .filter((one) => one.available)
            .map((one) => size(one.monthly.total)),
    );
    const hand = tour.value?.scenario.terms.name ?? '';
    const find = (name: string, index: number) =>
        answer?.scenarios.find((one) => one.terms.name === name) ?? answer?.scenarios[index];
    const scenarios: Written[] = inquiry.scenarios ?? [];
    return (
        <div class="loans-page">
            <h2>Ways to pay for the same home</h2>
            <p class="home-line">
                {tour.value?.heading.plan} on lot {tour.value?.heading.lot}, contract price{' '}
                {dollars(tour.value?.contract_price)}. The mark says which one the bar below shows;
                change any of them further down.
            </p>
            {answer && <Overview answer={answer} hand={hand} widest={widest} />}
            <div class="loans">
                {scenarios.map((written, index) => (
                    <Card
                        key={index}
                        index={index}
                        written={written}
                        scenario={find(written.name, index)}
                        programs={offered?.programs ?? []}
                        widest={widest}
                        only={scenarios.length === 1}
                    />
                ))}
                <button class="add-loan" onClick={add}>
                    Add another way to pay
                </button>
            </div>
            {answer && <Years answer={answer} hand={hand} />}
            {answer && <Crossings answer={answer} />}
            {answer && <Points answer={answer} />}
            {answer && <Cautions texts={answer.cautions} />}
        </div>
    );
}
