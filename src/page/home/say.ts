// What only the file that was taken home says, in the language in hand.
import {language} from '../language';
import {home_words} from './words/catalogue';
import type {HomeWords} from './words/catalogue';

export function said(): HomeWords {
    return home_words[language.value];
}
