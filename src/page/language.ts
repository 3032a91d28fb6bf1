// The language in hand, and what the page says in it.
import {effect, signal} from '@preact/signals';

import {catalogues} from './words/catalogue';
import type {Language, Words} from './words/catalogue';

const stored = 'quoin.language';

function kept(): Language {
    try {
        const chosen = localStorage.getItem(stored);
        if (chosen !== null && chosen in catalogues) return chosen as Language;
    } catch {
        /* keeps nothing */
    }
    return 'en';
}

/// Kept in this browser once another is chosen.
export const language = signal<Language>(kept());

effect(() => {
    document.documentElement.lang = language.value;
    if (language.value === kept()) return;
    try {
        localStorage.setItem(stored, language.value);
    } catch {
        /* chosen for this visit */
    }
});

/// say.tour.title: an entry in the language in hand. What reads it is drawn again in another one, so
/// it is read where something is shown, and never while a file is loaded.
export const say: Words = new Proxy({} as Words, {
    get: (_, area) => catalogues[language.value][area as keyof Words],
});

/// For names that were written into an inquiry, perhaps while another language was in hand.
export const every_language: Words[] = Object.values(catalogues);
