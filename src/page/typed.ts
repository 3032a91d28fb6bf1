// What a person types for an amount, a percent or a number, as the engine reads it.

const units = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/// "$1,250,000.50" as "1250000.50": the units that stand around the field are taken off, and commas
/// or spaces between whole groups of three. What is no such number stays as it was typed, and the
/// engine says what is wrong with it: "12,5" is never taken for 125.
export function plain_number(text: string, before = '', after = ''): string {
    const typed = text.trim();
    const bare = typed
        .replace(before ? new RegExp(`^(-?)\\s*${units(before)}\\s*`) : /^(-?)/, '$1')
        .replace(after ? new RegExp(`\\s*${units(after)}$`) : /$/, '');
    const match = /^(-?)(\d{1,3}(?:[,\s]\d{3})+|\d*)(?:\.(\d*))?$/.exec(bare);
    if (!match || !/\d/.test(bare)) return typed;
    const [, minus, whole, rest] = match;
    return minus + (whole.replace(/[,\s]/g, '') || '0') + (rest ? `.${rest}` : '');
}
