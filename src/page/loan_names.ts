// Names of ways to pay: what one says of its terms follows them, what a person wrote beside stays.
import type {Program} from './answers';
import type {Inquiry} from './engine';
import {is_zero, short} from './figures';
import {entitlement_words, kind_words} from './words';
import type {Entitlement} from './words';

function down_words(down: Inquiry | undefined): string {
    if (!down) return '';
    if ('cash' in down) return 'all the cash there is';
    if (is_zero(down.percent ?? down.amount)) return 'nothing down';
    return 'percent' in down ? `${down.percent} % down` : `${short(down.amount)} down`;
}

function term_words(written: Inquiry): string {
    if (written.months && written.months % 12 !== 0) return `${written.months} months`;
    return `${written.months ? written.months / 12 : (written.years ?? 30)} years`;
}

/// What a name may say of the terms, always in the same order; empty: nothing.
function sayings(written: Inquiry, program?: Program): string[] {
    return [
        program ? program.name : '',
        (program && kind_words[program.kind]) ?? '',
        down_words(written.down),
        term_words(written),
        entitlement_words[written.use as Entitlement] ?? '',
        written.fee === 'cash' ? 'fee in cash' : '',
        written.buydown ? `bought down ${written.buydown}` : '',
        written.mi_premium === 'single' ? 'insurance paid up' : '',
    ];
}

const part = ', ';

/// The name after a change of terms. A part of it that told of a term as it was tells how it is now,
/// and goes where there is nothing left to tell; names of one inquiry stay apart.
export function name_after(
    before: Inquiry,
    after: Inquiry,
    taken: string[],
    [from, to]: [Program?, Program?] = [],
): string {
    const told = sayings(before, from);
    const tell = sayings(after, to);
    const parts = `${before.name}`
        .split(part)
        .map((words) => {
            const at = told.findIndex((one) => one.toLowerCase() === words.toLowerCase());
            return at < 0 ? words : tell[at];
        })
        .filter((words) => words !== '');
    const name = parts.join(part) || `${before.name}`;
    if (name === before.name || !taken.includes(name)) return name;
    for (let i = 2; ; i += 1) {
        if (!taken.includes(`${name} (${i})`)) return `${name} (${i})`;
    }
}
