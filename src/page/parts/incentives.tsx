// What the builder gives on this home, and what each of it is used for; changed in place.
import type {Incentive} from '../answers';
import {brief, date, dollars, is_zero, short} from '../figures';
import {as_code, with_incentive} from '../inquiry';
import {say} from '../language';
import {opened, set_open} from '../opened';
import {act} from '../state/changing';
import {buyer, tour} from '../state/signals';
import type {Use} from '../words/english/codes';
import {PartFold} from './fold';
import {Typed} from './typed_field';
import {Name} from './name';
import {Explained} from './term';

import './incentives.css';

type Uses = {use: string; amount?: string}[];

function use_so(incentive: Incentive, uses: Uses, words: string): void {
    void act(with_incentive(buyer.value!.inquiry, incentive.id, uses), {
        what: say.common.with_form({name: incentive.name, form: words}),
        touch: null,
        remarks: [],
    });
}

function written_for(incentive: Incentive, use: string) {
    const written: {id: string; use: string; amount?: unknown}[] =
        buyer.value!.inquiry.incentives ?? [];
    return written.find((one) => one.id === incentive.id && as_code(one.use) === use);
}

/// What goes to a use, as the inquiry holds it: what the engine made of it comes later, and in
/// other digits. Where the inquiry says no amount, what the engine gives.
function part_of(incentive: Incentive, use: string): string {
    const part = written_for(incentive, use);
    if (!part) return '';
    const given = incentive.used.find((one) => one.use === use)?.given ?? '';
    return String(part.amount ?? given);
}

/// An amount for each use: what is left empty gets nothing.
function Parts({incentive}: {incentive: Incentive}) {
    const set = (changed: string, value: string) => {
        const amounts: Uses = incentive.uses.flatMap((use) => {
            const amount = use === changed ? value : part_of(incentive, use);
            if (!is_zero(amount)) return [{use, amount}];
            // All that is left goes there, and no answer says yet how much that is.
            return use !== changed && written_for(incentive, use) ? [{use}] : [];
        });
        use_so(incentive, amounts, say.incentives.in_parts);
    };
    return (
        <div class="incentive-parts">
            {incentive.uses.map((use) => (
                <label key={use} class="field">
                    <span>{say.incentives.towards({use: say.codes.uses[use]})}</span>
                    <Typed
                        label={say.incentives.towards_of({
                            name: incentive.name,
                            use: say.codes.uses[use],
                        })}
                        before="$"
                        value={part_of(incentive, use)}
                        change={(value) => set(use, value)}
                    />
                </label>
            ))}
        </div>
    );
}

/// By when it has to be signed for and closed.
function until({expires, close_by}: Incentive): string {
    const [signed, closed] = [date(expires), date(close_by)];
    if (signed && closed) return say.incentives.signed_and_closed_by({signed, closed});
    if (signed) return say.incentives.signed_by({on: signed});
    return closed && say.incentives.closed_by({on: closed});
}

function One({incentive}: {incentive: Incentive}) {
    const in_parts = incentive.used.length > 1 || incentive.used.some((one) => one.amount);
    const parted = `incentive:${incentive.id}`;
    const open = opened.value.has(parted);
    const parts = open || in_parts;
    const now = parts ? 'parts' : (incentive.used[0]?.use ?? '');
    const choices: [string, string][] = [
        ['', say.incentives.not_used],
        ...incentive.uses.map((use): [string, string] => [
            use,
            say.incentives.all_towards({use: say.codes.uses[use]}),
        ]),
    ];
    if (incentive.uses.length > 1) choices.push(['parts', say.incentives.in_parts]);
    const choose = (how: string) => {
        set_open(parted, how === 'parts');
        if (how === 'parts') return; // the amounts say the rest
        use_so(
            incentive,
            how === '' ? [] : [{use: how}],
            how === ''
                ? say.incentives.not_used
                : say.incentives.towards({use: say.codes.uses[how as Use]}),
        );
    };
    return (
        <fieldset class="incentive">
            <legend>
                <Name of={incentive.name} />{' '}
                <span class="incentive-amount">{short(incentive.amount)}</span>
            </legend>
            {incentive.why_not ? (
                <p class="refused">{incentive.why_not}</p>
            ) : (
                <div class="incentive-uses">
                    {choices.map(([how, words]) => (
                        <label key={how}>
                            <input
                                type="radio"
                                name={`incentive-${incentive.id}`}
                                checked={how === now}
                                onChange={() => choose(how)}
                            />
                            {words}
                        </label>
                    ))}
                </div>
            )}
            {parts && !incentive.why_not && <Parts incentive={incentive} />}
            {incentive.used.length > 0 && !is_zero(incentive.left) && (
                <p class="terms">{say.incentives.left({amount: dollars(incentive.left)})}</p>
            )}
            <p class="terms">
                {[incentive.conditions, until(incentive)].filter(Boolean).join(' ')}
            </p>
        </fieldset>
    );
}

/// What is used, and what for.
function used_words(incentives: Incentive[]): string {
    const used = incentives.filter((one) => one.used.length > 0);
    if (used.length === 0) return say.incentives.none_used;
    return used
        .map((one) =>
            say.common.with_form({
                name: brief(one.name),
                form: say.common.and(
                    one.used.map(({given, use}) =>
                        say.incentives.given({amount: short(given), use: say.codes.uses[use]}),
                    ),
                ),
            }),
        )
        .join('; ');
}

export function Incentives() {
    const incentives = tour.value?.incentives ?? [];
    if (incentives.length === 0) return null;
    return (
        <PartFold
            view="loans"
            part="incentives"
            class="incentives"
            title={say.incentives.title}
            says={used_words(incentives)}
        >
            <p class="home-line">
                <Explained text={say.incentives.says} terms={['incentive']} />
            </p>
            <div class="incentive-list">
                {incentives.map((one) => (
                    <One key={one.id} incentive={one} />
                ))}
            </div>
        </PartFold>
    );
}
