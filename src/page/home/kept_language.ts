// The language that was chosen at home, or that of the file.
import {handed} from './handed';
import {kept_text, keep_text} from './store';

export const kept_language = (): string | null => kept_text('.language') ?? handed.language;

export const keep_language = (one: string): void => void keep_text('.language', one);
