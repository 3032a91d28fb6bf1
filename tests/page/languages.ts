// Another language says what the English one says, of the same values: the type checker holds it to
// that.
import type {Words} from '../../src/page/words/catalogue';
import {english} from '../../src/page/words/english';
import type {Texts} from '../../src/page/words/phrase';

const {common, codes} = english;

export const told_otherwise: Words = {
    ...english,
    common: {...common, close: 'Zu', cash: ({amount}) => `Geld: ${amount}`},
};

const {close: _close, ...without_entry} = common;
const {each: _each, ...without_code} = codes.units;

export const held_back: Words[] = [
    // @ts-expect-error: an entry is missing
    {...english, common: without_entry},
    // @ts-expect-error: a code has no word
    {...english, codes: {...codes, units: without_code}},
    // @ts-expect-error: asks for a value that no component gives
    {...english, common: {...common, cash: ({sum}: Texts<'sum'>) => sum}},
    // @ts-expect-error: text where a value has its place
    {...english, common: {...common, close: ({name}: Texts<'name'>) => name}},
];
