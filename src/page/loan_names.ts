// Names of loans: what one says of its terms follows them, and is shown in the language in hand; what
// a person wrote beside stays.
import type {Program} from './answers';
import type {Inquiry} from './engine';
import {is_zero, short} from './figures';
import {every_language, say} from './language';
import type {Words} from './words/catalogue';
import type {Entitlement} from './words/english/codes';

function down_words(down: Inquiry | undefined, {loan_names}: Words): string {
    if (!down) return '';
    if ('cash' in down) return loan_names.all_the_cash;
    if (is_zero(down.percent ?? down.amount)) return loan_names.nothing_down;
    return 'percent' in down
        ? loan_names.percent_down({percent: `${down.percent}`})
        : loan_names.amount_down({amount: short(down.amount)});
}

/// What a name may say of the terms in a language, always in the same order; empty: nothing.
function sayings(words: Words, written: Inquiry, program?: Program): string[] {
    const {codes, figures, loan_names} = words;
    return [
        program ? program.name : '',
        (program && codes.programs[program.kind]) ?? '',
        down_words(written.down, words),
        figures.term(written.months ?? (written.years ?? 30) * 12),
        codes.entitlements[written.use as Entitlement] ?? '',
        written.fee === 'cash' ? loan_names.fee_in_cash : '',
        written.buydown ? loan_names.bought_down({buydown: written.buydown}) : '',
        written.mi_premium === 'single' ? loan_names.insurance_paid_up : '',
    ];
}

const part = ', ';

/// The name after a change of terms. A part of it that told of a term as it was tells how it is now,
/// in the language it was written in, and goes where there is nothing left to tell; names of one
/// inquiry stay apart.
export function name_after(
    before: Inquiry,
    after: Inquiry,
    taken: string[],
    [from, to]: [Program?, Program?] = [],
): string {
    const told = every_language.flatMap((words) => sayings(words, before, from));
    const tell = every_language.flatMap((words) => sayings(words, after, to));
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

/// "Conventional" is the same part of a name whichever program of that kind it is.
function shown_sayings(words: Words, written: Inquiry): string[] {
    return [...sayings(words, written), ...Object.values(words.codes.programs)];
}

/// "30 years (2)" as "30 years" and " (2)".
const numbered = /^(.*?)( \(\d+\))?$/;

/// A name as it is shown: what it says of its terms in another language is said in this one.
export function shown_name(name: string, written: Inquiry): string {
    const tell = shown_sayings(say, written);
    const told = [say, ...every_language].map((words) =>
        shown_sayings(words, written).map((one) => one.toLowerCase()),
    );
    const shown = (words: string) => {
        const at = told.map((each) => each.indexOf(words.toLowerCase())).find((one) => one >= 0);
        return at === undefined || told[0].includes(words.toLowerCase()) ? words : tell[at];
    };
    return name
        .split(part)
        .map((words) => {
            const [, bare, count = ''] = numbered.exec(words)!;
            return shown(bare) + count;
        })
        .join(part);
}
