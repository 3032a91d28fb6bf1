// What only the file that was taken home says: one catalogue a language.
import type {Language} from '../../words/catalogue';
import {english} from './english';
import {spanish} from './spanish';

type Entry<T> = T extends string
    ? string
    : T extends (...values: infer Values) => string
      ? (...values: Values) => string
      : {[Name in keyof T]: Entry<T[Name]>};

export type HomeWords = Entry<typeof english>;

export const home_words: Record<Language, HomeWords> = {en: english, es: spanish};
