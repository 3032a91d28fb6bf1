// What is said otherwise at the desk than at home.
import type {Heading} from '../answers';
import {today} from '../days';
import {short_date} from '../figures';
import {say} from '../language';

/// No question is answered.
export function gone_words(): string {
    return say.frame.gone;
}

/// Over the sheet.
export const sheet_title = (): string => say.sheet.title;

/// Of which day the figures are.
export function as_of_words({as_of}: Heading): string {
    return short_date(as_of);
}

/// That the price book has ended, beside the community.
export function ended_words({price_book_expires: on}: Heading): string | null {
    return on < today() ? say.frame.book_ended({on: short_date(on)}) : null;
}
