// The way to the engine at the desk: the program that handed out the page, asked with its access code.

const code_key = 'quoin.code';

/// An access code given in the address is kept for this tab and taken out of the address bar; the
/// rest of the address stays.
export function take_code_from_address(): void {
    const match = /(^#|&)code=([^&]*)/.exec(location.hash);
    if (!match) return;
    try {
        set_code(decodeURIComponent(match[2]));
    } catch {
        set_code(match[2]); // a sign cut in two: the program will not take it, and the page asks
    }
    const rest = location.hash.replace(match[0], '').replace(/^#?&?/, '');
    history.replaceState(null, '', location.pathname + (rest ? `#${rest}` : ''));
}

let code_now = '';

/// Signs that no header can hold become question marks: refused, like any code that is wrong.
export function set_code(code: string): void {
    code_now = code.replace(/[^\x21-\x7e]/g, '?');
    try {
        sessionStorage.setItem(code_key, code_now);
    } catch {
        /* asked for again after a reload */
    }
}

/// The code that was given, right or wrong.
export function given_code(): string {
    try {
        return sessionStorage.getItem(code_key) ?? code_now;
    } catch {
        return code_now;
    }
}

/// What the engine answers to a question in its wire form.
export function reach(address: string, init: RequestInit): Promise<Response> {
    const code = given_code();
    if (code) (init.headers as Record<string, string>)['Quoin-Code'] = code;
    return fetch(address, init);
}
