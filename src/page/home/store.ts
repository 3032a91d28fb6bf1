// The browser's storage, as far as this file may use it: what lies under its own name.
import {handed} from './handed';

const mine = () => `quoin.home.${handed.facts.hash}${handed.state_id && `.${handed.state_id}`}`;

export function kept_text(name: string): string | null {
    try {
        return localStorage.getItem(mine() + name);
    } catch {
        return null;
    }
}

/// Says whether the browser has room and leave to keep it; null: it is erased.
export function keep_text(name: string, text: string | null): boolean {
    try {
        if (text === null) localStorage.removeItem(mine() + name);
        else localStorage.setItem(mine() + name, text);
        return true;
    } catch {
        return false;
    }
}
