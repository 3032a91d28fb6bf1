// What is said otherwise at home than at the desk.
import type {Heading} from '../answers';
import {today} from '../days';
import {short_date} from '../figures';
import {handed} from './handed';
import {said} from './say';

/// No question is answered.
export function gone_words(): string {
    return said().gone;
}

/// Over the sheet.
export const sheet_title = (): string => said().sheet;

/// As it is written into a copy, which is read on other days.
export const as_of_written = ({as_of}: Heading): string => short_date(as_of);

const is_over = (last: string) => last !== '' && last < today();

/// Whether prices or rates have ended: the month is shown so.
export const is_past = (): boolean =>
    is_over(handed.facts.rates_end) || is_over(handed.facts.book_end);

/// Of which day the figures are. The clock of whoever looks adds words to it, and changes nothing.
export function as_of_words({as_of}: Heading): string {
    const {rates_end, book_end} = handed.facts;
    const ended = (last: string) => (is_over(last) ? short_date(last) : null);
    return said().as_of({
        day: short_date(as_of),
        rates_ended: ended(rates_end),
        book_ended: ended(book_end),
    });
}

/// That the price book has ended stands beside the month.
export function ended_words(_heading: Heading): string | null {
    return null;
}
