// How figures of an answer are written: commas and signs, never arithmetic.
import {say} from './language';

function grouped(digits: string): string {
    return digits.replace(/\B(?=(\d{3})+(?!\d))/g, ',');
}

/// "497660.00" as "$497,660.00"; "-12.50" as "−$12.50".
export function dollars(amount: string | null | undefined): string {
    if (amount === null || amount === undefined || amount === '') return '';
    const minus = amount.startsWith('-');
    const [whole, cents] = amount.replace('-', '').split('.');
    return `${minus ? '−' : ''}$${grouped(whole)}${cents ? `.${cents}` : ''}`;
}

/// The same without cents where they are none.
export function short(amount: string | null | undefined): string {
    return dollars(amount).replace(/\.00$/, '');
}

/// To the dollar from ten dollars on, half away from zero; what is less keeps its cents.
export function rounded(amount: string | null | undefined): string {
    const match = /^(-?)(\d{2,})\.(\d)\d*$/.exec(amount ?? '');
    if (!match) return short(amount);
    const [, minus, whole, tenth] = match;
    return short(`${minus}${BigInt(whole) + (tenth >= '5' ? 1n : 0n)}`);
}

/// With its sign: what a touch changes.
export function signed(amount: string, write = dollars): string {
    return is_zero(amount)
        ? write(amount)
        : amount.startsWith('-')
          ? write(amount)
          : `+${write(amount)}`;
}

/// Without its sign, where words say which way it goes.
export function unsigned(amount: string | null | undefined): string {
    return dollars((amount ?? '').replace('-', ''));
}

/// What is left after the deposits may be more than the closing takes.
export function closing_name(to_close: string | null | undefined): string {
    return to_close?.startsWith('-') ? say.common.back_at_closing : say.common.cash_to_close;
}

/// The cash to close in a row of its own, with words where it comes back.
export function closing_words(to_close: string): string {
    const amount = unsigned(to_close);
    const {back_at_closing, to_close: takes} = say.terms;
    return to_close.startsWith('-') ? back_at_closing({amount}) : takes({amount});
}

/// The same among amounts of cash to close.
export function closing_amount(to_close: string): string {
    const amount = unsigned(to_close);
    return to_close.startsWith('-') ? say.terms.back({amount}) : amount;
}

export function is_zero(amount: string | null | undefined): boolean {
    return !amount || /^-?0*(\.0*)?$/.test(amount);
}

/// "6" as "6.000%": rates have three places beside each other.
export function rate_percent(amount: string | null | undefined): string {
    if (!amount) return '';
    const [whole, rest = ''] = amount.split('.');
    return `${whole}.${rest.padEnd(3, '0')}%`;
}

/// "6.375" as "6.375%".
export function percent(amount: string | null | undefined): string {
    return amount ? `${amount}%` : '';
}

export function plain(number: string): string {
    const [whole, rest] = number.replace('-', '−').split('.');
    return rest ? `${grouped(whole)}.${rest}` : grouped(whole);
}

/// The numbers of a date as answers write it.
function day_of(text: string): {year: number; month: number; day: number} | null {
    const match = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
    if (!match) return null;
    const [year, month, day] = match.slice(1).map(Number);
    return {year, month, day};
}

/// "2026-11-24" as "November 24, 2026".
export function date(text: string | null | undefined): string {
    const day = day_of(text ?? '');
    return day ? say.figures.date(day) : (text ?? '');
}

/// The same where room is short: "Nov 24, 2026".
export function short_date(text: string | null | undefined): string {
    const day = day_of(text ?? '');
    return day ? say.figures.short_date(day) : (text ?? '');
}

/// "2038-08-01" as "August 2038".
export function month(text: string | null | undefined): string {
    const day = day_of(text ?? '');
    return day ? say.figures.month(day) : (text ?? '');
}

/// The same in a table: "Aug 2038".
export function short_month(text: string | null | undefined): string {
    const day = day_of(text ?? '');
    return day ? say.figures.short_month(day) : (text ?? '');
}

/// "30 years" of 360 months.
export function term(count: number): string {
    return say.figures.term(count);
}

/// An amount with something said of it; nothing of none.
export function unless_zero(amount: string): string | null {
    return is_zero(amount) ? null : dollars(amount);
}

/// The length of a bar: numbers are for drawing only.
export function size(amount: string | null | undefined): number {
    return amount ? Number(amount) : 0;
}

const longest_name = 80;

/// A name that is no longer than a few lines, with an ellipsis where it is cut.
export function brief(name: string): string {
    return name.length > longest_name ? `${name.slice(0, longest_name - 1).trimEnd()}…` : name;
}
