// The language that was chosen at the desk; null: none was.
const stored = 'quoin.language';

export const kept_language = (): string | null => localStorage.getItem(stored);

export const keep_language = (one: string): void => localStorage.setItem(stored, one);
