// The language in hand, and what the page says in it.
import {effect, signal} from '@preact/signals';

import {keep_language, kept_language} from '#side/kept_language';

import {catalogues} from './words/catalogue';
import type {Language, Words} from './words/catalogue';

export const languages = Object.keys(catalogues) as Language[];

function known(name: string | null): Language | undefined {
    return languages.find((one) => one === name);
}

/// The one that was chosen here, or the browser's own where the page speaks it.
function first(): Language {
    let chosen: Language | undefined;
    try {
        chosen = known(kept_language());
    } catch {
        /* keeps nothing */
    }
    return chosen ?? known(navigator.language.toLowerCase().split('-')[0]) ?? 'en';
}

/// Kept in this browser once another is chosen.
export const language = signal<Language>(first());

effect(() => {
    document.documentElement.lang = language.value;
    if (language.value === first()) return;
    try {
        keep_language(language.value);
    } catch {
        /* chosen for this visit */
    }
});

/// say.tour.title: an entry in the language in hand. What reads it is drawn again in another one, so
/// it is read where something is shown, and never while a file is loaded.
export const say: Words = new Proxy({} as Words, {
    get: (_, area) => catalogues[language.value][area as keyof Words],
});

/// A language by its own name, for those who read no other.
export function own_name(one: Language): string {
    return catalogues[one].frame.own_name;
}

/// For names that were written into an inquiry, perhaps while another language was in hand.
export const every_language: Words[] = Object.values(catalogues);
