// The fields of one way to pay, each changing the inquiry where it stands.
import type {Program, TermCode} from '../answers';
import type {Problem} from '../engine';
import {copy} from '../inquiry';
import {say} from '../language';
import {name_after, shown_name} from '../loan_names';
import {change_terms} from '../state/changing';
import {buyer, tour} from '../state/signals';
import {plain_number} from '../typed';
import {points_words} from './terms';
import {Term} from './term';
import {Typed} from './typed_field';
import {brief, rate_percent} from '../figures';
import {stays_open} from '../opened';

import './loan_fields.css';

export type Written = Record<string, any>;

/// One scenario of the inquiry changed. What its name says of its terms follows them.
export function edit(
    index: number,
    members: Written,
    what: string,
    programs: [Program?, Program?] = [],
): void {
    const one = buyer.value;
    if (!one) return;
    const next = copy(one.inquiry);
    const before: Written = next.scenarios[index];
    const scenario = {...before, ...members};
    for (const key of Object.keys(scenario)) if (scenario[key] === undefined) delete scenario[key];
    if (members.name === undefined) {
        const others = next.scenarios.filter((each: Written) => each !== before);
        const taken = others.map((each: Written) => each.name);
        scenario.name = name_after(before, scenario, taken, programs);
    }
    next.scenarios[index] = scenario;
    const change = say.loan.change({loan: brief(shown_name(scenario.name, scenario)), what});
    change_terms(next, index, {what: change, touch: null, remarks: []});
}

/// A percent is one whatever the field is set to, and so are dollars.
function down_of(kind: string, value: string, typed: string): Written {
    if (kind !== 'percent' && typed.includes('%')) return {percent: plain_number(typed, '', '%')};
    if (kind === 'percent' && typed.includes('$')) return {amount: plain_number(typed, '$')};
    return {[kind]: value};
}

export function DownPayment({
    index,
    written,
    wrong,
}: {
    index: number;
    written: Written;
    wrong?: Problem;
}) {
    const down = written.down ?? {percent: '20'};
    const kind = 'percent' in down ? 'percent' : 'amount' in down ? 'amount' : 'cash';
    const known = (as: string): string => {
        const terms = tour.value?.scenario.terms;
        if (as === 'cash') return buyer.value?.inquiry.cash ?? '0';
        return (as === 'percent' ? terms?.down_percent : terms?.down_payment) ?? '5';
    };
    return (
        <fieldset class="field">
            <legend>
                <Term of="down_payment">{say.common.down_payment}</Term>
            </legend>
            <div class="pair">
                <Typed
                    label={say.common.down_payment}
                    value={String(down[kind])}
                    wrong={wrong}
                    before={kind === 'percent' ? undefined : '$'}
                    after={kind === 'percent' ? '%' : undefined}
                    change={(value, typed) =>
                        edit(index, {down: down_of(kind, value, typed)}, say.loan.changed.down)
                    }
                />
                <select
                    aria-label={say.loan.downs.given_as}
                    value={kind}
                    onChange={(event) =>
                        edit(
                            index,
                            {down: {[event.currentTarget.value]: known(event.currentTarget.value)}},
                            say.loan.changed.down,
                        )
                    }
                >
                    <option value="percent">{say.loan.downs.percent}</option>
                    <option value="amount">{say.loan.downs.amount}</option>
                    <option value="cash">{say.loan.downs.cash}</option>
                </select>
            </div>
        </fieldset>
    );
}

export function months_of(written: Written): number {
    return written.months ?? (written.years ?? 30) * 12;
}

/// The ladder of the program, term and lock that is written, or the nearest longer lock.
function ladder_of(program: Program | undefined, written: Written) {
    const lock = written.lock_days ?? 60;
    const same = program?.ladders.filter((one) => one.months === months_of(written)) ?? [];
    return same.find((one) => one.lock_days >= lock) ?? same[same.length - 1];
}

/// What stands for a rate in the list of them.
function rate_key(rate: Written): string {
    if ('quoted' in rate) return 'quoted';
    if ('note' in rate) return `note:${rate.note}`;
    return `points:${rate.points ?? '0'}`;
}

export function RateField({
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
    const now = rate_key(rate);
    const words = say.loan.rates;
    const choices = new Map<string, [string, Written]>([
        ['points:0', [words.lowest, {points: '0'}]],
        ['points:1', [words.up_to_points({points: '1'}), {points: '1'}]],
        ['points:2', [words.up_to_points({points: '2'}), {points: '2'}]],
    ]);
    if (now.startsWith('points') && !choices.has(now)) {
        choices.set(now, [words.up_to_points({points: `${rate.points}`}), rate]);
    }
    for (const rung of ladder?.rungs ?? []) {
        choices.set(`note:${rung.rate}`, [
            words.listed({rate: rate_percent(rung.rate), points: points_words(rung.points)}),
            {note: rung.rate},
        ]);
    }
    if (now.startsWith('note') && !choices.has(now))
        choices.set(now, [words.noted({rate: rate_percent(`${rate.note}`)}), rate]);
    choices.set('quoted', [words.quoted, {quoted: ladder?.rungs[0]?.rate ?? '6', points: '0'}]);
    return (
        <fieldset class="field">
            <legend>
                <Term of="interest_rate">{say.loan.rate}</Term>
            </legend>
            <select
                aria-label={say.loan.rate}
                value={now}
                onChange={(event) =>
                    edit(
                        index,
                        {rate: choices.get(event.currentTarget.value)![1]},
                        say.loan.changed.rate,
                    )
                }
            >
                {[...choices].map(([key, [said]]) => (
                    <option key={key} value={key}>
                        {said}
                    </option>
                ))}
            </select>
            {now === 'quoted' && (
                <div class="pair">
                    <Typed
                        label={words.rate_quoted}
                        value={String(rate.quoted)}
                        after="%"
                        wrong={wrong}
                        change={(value) =>
                            edit(index, {rate: {...rate, quoted: value}}, say.loan.changed.rate)
                        }
                    />
                    <Typed
                        label={words.points_quoted}
                        value={String(rate.points ?? '0')}
                        after={words.points_unit}
                        change={(value) =>
                            edit(index, {rate: {...rate, points: value}}, say.loan.changed.points)
                        }
                    />
                </div>
            )}
            {wrong && now !== 'quoted' && <span class="wrong">{say.common.wrong(wrong)}</span>}
        </fieldset>
    );
}

export function Select({
    label,
    value,
    choices,
    change,
    explained,
}: {
    label: string;
    value: string;
    choices: [string, string][];
    change: (value: string) => void;
    explained?: TermCode;
}) {
    // What is touched is the term or the list: a label would make one of the other.
    const Field = explained ? 'div' : 'label';
    return (
        <Field class="field">
            <span>
                <Term of={explained}>{label}</Term>
            </span>
            <select
                aria-label={label}
                value={value}
                onChange={(event) => change(event.currentTarget.value)}
            >
                {choices.map(([key, words]) => (
                    <option key={key} value={key}>
                        {words}
                    </option>
                ))}
            </select>
        </Field>
    );
}

export function unique(values: number[]): number[] {
    return [...new Set(values)].sort((a, b) => a - b);
}

/// Another program: a term and a lock that it has, the rest as it was.
export function to_program(
    index: number,
    written: Written,
    program: Program,
    before?: Program,
): void {
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
    const {choices} = program;
    for (const member of ['mi_ends', 'mi_premium', 'use'] as const) {
        if (!choices.includes(member)) members[member] = undefined;
    }
    const premium = choices.includes('mi_premium') && written.mi_premium === 'single';
    if (!choices.includes('fee') && !premium) members.fee = undefined;
    edit(index, members, program.name, [before, program]);
}

/// How a loan pays its mortgage insurance.
function premium_of(written: Written): string {
    if (written.mi_premium !== 'single') return 'monthly';
    return written.fee === 'financed' ? 'financed' : 'single';
}

export function More({
    index,
    written,
    program,
}: {
    index: number;
    written: Written;
    program?: Program;
}) {
    const locks = unique((program?.ladders ?? []).map((one) => one.lock_days));
    const lock = written.lock_days ?? 60;
    const choices = program?.choices ?? [];
    return (
        <details class="more" {...stays_open(`loan-more:${index}`)}>
            <summary>{say.loan.more}</summary>
            <label class="field">
                <span>{say.loan.name}</span>
                <Typed
                    label={say.loan.name}
                    mode="text"
                    value={shown_name(written.name, written)}
                    change={(value) => {
                        if (value) rename(index, value);
                    }}
                />
            </label>
            <Select
                label={say.loan.lock}
                explained="rate_lock"
                value={String(lock)}
                choices={unique([...locks, lock]).map((days) => [
                    String(days),
                    say.loan.lock_days({days}),
                ])}
                change={(value) => edit(index, {lock_days: Number(value)}, say.loan.changed.lock)}
            />
            <Select
                label={say.loan.buydown}
                explained="temporary_buydown"
                value={written.buydown ?? 'none'}
                choices={Object.entries(say.loan.buydowns)}
                change={(value) =>
                    edit(
                        index,
                        {buydown: value === 'none' ? undefined : value},
                        say.loan.changed.buydown,
                    )
                }
            />
            {program && choices.includes('fee') && (
                <Select
                    label={program.upfront_fee}
                    explained="upfront_fee"
                    value={written.fee ?? 'financed'}
                    choices={Object.entries(say.loan.fees)}
                    change={(value) => edit(index, {fee: value}, program.upfront_fee)}
                />
            )}
            {choices.includes('mi_premium') && (
                <Select
                    label={say.loan.insurance_paid}
                    explained="mortgage_insurance"
                    value={premium_of(written)}
                    choices={Object.entries(say.loan.premiums)}
                    change={(value) =>
                        edit(
                            index,
                            {
                                mi_premium: value === 'monthly' ? undefined : 'single',
                                fee: value === 'financed' ? value : undefined,
                            },
                            say.loan.changed.premium,
                        )
                    }
                />
            )}
            {choices.includes('mi_ends') && written.mi_premium !== 'single' && (
                <Select
                    label={say.loan.insurance_ends_when}
                    value={written.mi_ends ?? 'automatic'}
                    choices={Object.entries(say.loan.insurance_ends)}
                    change={(value) =>
                        edit(index, {mi_ends: value}, say.loan.changed.insurance_ends)
                    }
                />
            )}
            {choices.includes('use') && (
                <Select
                    label={say.loan.benefit}
                    value={written.use ?? 'first'}
                    choices={Object.entries(say.codes.entitlements)}
                    change={(value) => edit(index, {use: value}, say.loan.changed.benefit)}
                />
            )}
        </details>
    );
}

function rename(index: number, name: string): void {
    edit(index, {name}, say.loan.changed.name);
}
