// The fields of one way to pay, each changing the inquiry where it stands.
import type {Program} from '../answers';
import type {Problem} from '../engine';
import {copy} from '../inquiry';
import {name_after} from '../loan_names';
import {buyer, change_terms, tour} from '../store';
import {plain_number} from '../typed';
import {entitlement_words} from '../words';
import {minus} from './terms';
import {Typed} from './typed_field';
import {brief} from '../figures';

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
    change_terms(next, index, {what: `${brief(scenario.name)}: ${what}`, touch: null, remarks: []});
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
                    change={(value, typed) =>
                        edit(index, {down: down_of(kind, value, typed)}, 'down payment')
                    }
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
                    <option value="percent">of the value</option>
                    <option value="amount">in dollars</option>
                    <option value="cash">from this cash</option>
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

function rate_words(rate: Written): string {
    if ('quoted' in rate) return 'quoted';
    if ('note' in rate) return `note ${rate.note}`;
    return `points ${rate.points ?? '0'}`;
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

export function Select({
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
            {program && choices.includes('fee') && (
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
            {choices.includes('mi_premium') && (
                <Select
                    label="Mortgage insurance is paid"
                    value={premium_of(written)}
                    choices={[
                        ['monthly', 'with each payment'],
                        ['single', 'at closing, in a single premium'],
                        ['financed', 'in a single premium, added to the loan'],
                    ]}
                    change={(value) =>
                        edit(
                            index,
                            {
                                mi_premium: value === 'monthly' ? undefined : 'single',
                                fee: value === 'financed' ? value : undefined,
                            },
                            'premium of mortgage insurance',
                        )
                    }
                />
            )}
            {choices.includes('mi_ends') && written.mi_premium !== 'single' && (
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
            {choices.includes('use') && (
                <Select
                    label="VA loan benefit"
                    value={written.use ?? 'first'}
                    choices={Object.entries(entitlement_words)}
                    change={(value) => edit(index, {use: value}, 'use of the benefit')}
                />
            )}
        </details>
    );
}

function rename(index: number, name: string): void {
    edit(index, {name}, 'renamed');
}
