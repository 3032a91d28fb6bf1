// What sets words of a sentence apart: an entry of the catalogue says where, these say how.
import type {Mark} from '../words/phrase';

export const strong: Mark = (words) => <strong>{words}</strong>;
export const small: Mark = (words) => <small>{words}</small>;

/// By a class of the style sheet.
export const marked =
    (by: string): Mark =>
    (words) => <span class={by}>{words}</span>;
