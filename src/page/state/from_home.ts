// What a buyer changed at home, come to the desk: nothing of it is trusted but what is asked for. It
// is figured here, on the buyer in hand, as of the day that was sent and as of today.
import {signal} from '@preact/signals';

import type {Tour} from '../answers';
import {with_changes} from '../changes';
import type {Changes} from '../changes';
import {Refused} from '../engine';
import type {Inquiry} from '../engine';
import {mended, redated} from '../mending';
import type {Book, Loss} from '../mending';
import {say} from '../language';

import {failed, tour_of} from './asking';
import {buyer, known, notice} from './signals';
import type {Buyer} from './signals';
import {open} from './who';

/// A home and what had to go from it, since it is not to be had.
interface Figured {
    inquiry: Inquiry;
    answer: Tour;
    losses: Loss[];
}

export interface FromHome {
    sent: Tour;
    theirs: Figured;
    today: Figured | null; ///< null: they are as of today, or of the last day of the book
}

export const from_home = signal<FromHome | null>(null);

export const changes_format = 'quoin/changes/1';

async function figured(of: Buyer, inquiry: Inquiry, book: Book): Promise<Figured | null> {
    const answer_of = (asked: Inquiry) => tour_of({...of, inquiry: asked}, '');
    try {
        return {inquiry, answer: await answer_of(inquiry), losses: []};
    } catch (error) {
        if (!(error instanceof Refused)) throw error;
        const found = await mended(inquiry, error.problems, book, answer_of);
        return found && {inquiry: found.next, answer: found.answer, losses: found.losses};
    }
}

/// Of what the file says, what may be asked for; a loan keeps the score that the desk knows.
function asked_for(one: Buyer, changes: Changes): Inquiry {
    const next = with_changes(one.inquiry, changes);
    const own: {name: string; score?: unknown}[] = one.inquiry.scenarios ?? [];
    next.scenarios = (Array.isArray(next.scenarios) ? next.scenarios : []).map((loan: any) => {
        const {score: _left, ...rest} = loan;
        const known_score = own.find(({name}) => name === loan.name)?.score;
        return known_score === undefined ? rest : {...rest, score: known_score};
    });
    return next;
}

/// The changes that a file holds, held against the buyer in hand, who stays as they are.
export async function take_from_home(file: Record<string, any>): Promise<void> {
    const one = buyer.value;
    const book = known.value?.price_books.find((each) => each.id === one?.inquiry.price_book);
    if (!one || !book || typeof file.changes !== 'object' || file.changes === null) {
        notice.value = say.from_home.whose;
        return;
    }
    try {
        const sent = await tour_of(one, '');
        const theirs = await figured(one, asked_for(one, file.changes), book);
        if (!theirs) {
            notice.value = say.from_home.not_answered;
            return;
        }
        const later = redated(theirs.inquiry, book);
        const today = later && (await figured(one, later[0], book));
        from_home.value = {sent, theirs, today};
    } catch (error) {
        failed(error);
    }
}

/// Beside the buyer it came from.
export function open_beside({inquiry}: Figured): void {
    open(inquiry);
    notice.value = say.from_home.opened;
}
