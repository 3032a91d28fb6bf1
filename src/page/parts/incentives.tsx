// What the builder gives on this home, and what each of it is used for; changed in place.
import {useState} from 'preact/hooks';

import type {Incentive} from '../answers';
import {date, dollars, is_zero, short} from '../figures';
import {with_incentive} from '../inquiry';
import {act, buyer, tour} from '../store';
import {as_code, use_words} from '../words';
import type {Use} from '../words';
import {Typed} from './typed_field';
import {Name} from './name';

type Uses = {use: string; amount?: string}[];

function use_so(incentive: Incentive, uses: Uses, words: string): void {
    void act(with_incentive(buyer.value!.inquiry, incentive.id, uses), {
        what: `${incentive.name}: ${words}`,
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
        use_so(incentive, amounts, 'in parts');
    };
    return (
        <div class="incentive-parts">
            {incentive.uses.map((use) => (
                <label key={use} class="field">
                    <span>towards {use_words[use]}</span>
                    <Typed
                        label={`${incentive.name} towards ${use_words[use]}`}
                        before="$"
                        value={part_of(incentive, use)}
                        change={(value) => set(use, value)}
                    />
                </label>
            ))}
        </div>
    );
}

function One({incentive}: {incentive: Incentive}) {
    const in_parts = incentive.used.length > 1 || incentive.used.some((one) => one.amount);
    const [open, unfold] = useState(false);
    const parts = open || in_parts;
    const now = parts ? 'parts' : (incentive.used[0]?.use ?? '');
    const choices: [string, string][] = [
        ['', 'not used'],
        ...incentive.uses.map((use): [string, string] => [use, `all towards ${use_words[use]}`]),
    ];
    if (incentive.uses.length > 1) choices.push(['parts', 'in parts']);
    const choose = (how: string) => {
        unfold(how === 'parts');
        if (how === 'parts') return; // the amounts say the rest
        use_so(
            incentive,
            how === '' ? [] : [{use: how}],
            how === '' ? 'not used' : `towards ${use_words[how as Use]}`,
        );
    };
    const until = [
        incentive.expires && `signed by ${date(incentive.expires)}`,
        incentive.close_by && `closed by ${date(incentive.close_by)}`,
    ].filter(Boolean);
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
                <p class="terms">{dollars(incentive.left)} of it is not used.</p>
            )}
            <p class="terms">
                {[incentive.conditions, until.length > 0 && `To be ${until.join(', ')}.`]
                    .filter(Boolean)
                    .join(' ')}
            </p>
        </fieldset>
    );
}

export function Incentives() {
    const incentives = tour.value?.incentives ?? [];
    if (incentives.length === 0) return null;
    return (
        <section class="incentives" aria-labelledby="incentives-name">
            <h3 id="incentives-name">What the builder gives</h3>
            <p class="home-line">
                What it is used for changes every way to pay at once. Where one is tied to a lender,
                its terms say so; you may choose any lender.
            </p>
            <div class="incentive-list">
                {incentives.map((one) => (
                    <One key={one.id} incentive={one} />
                ))}
            </div>
        </section>
    );
}
