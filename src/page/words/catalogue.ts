// The languages that the page speaks: one catalogue each, with the entries of the English one.
import {english} from './english';
import type {Rich} from './phrase';
import {spanish} from './spanish';

/// An entry as every language has it: text, or the same values made into text or a marked sentence.
type Entry<T> = T extends string
    ? string
    : T extends (...values: infer Values) => infer Said
      ? (...values: Values) => Said extends string ? string : Rich
      : {[Name in keyof T]: Entry<T[Name]>};

export type Words = Entry<typeof english>;

export const catalogues = {en: english, es: spanish} satisfies Record<string, Words>;

export type Language = keyof typeof catalogues;
