// The start of the page at home: the one inquiry of the file, with what was changed of it.
import {batch, signal} from '@preact/signals';

import {Refused, cases} from '../engine';
import type {Inquiry} from '../engine';
import {watch_place, view, view_in_address} from '../place';
import {act} from '../state/changing';
import {failed} from '../state/asking';
import {buyers, facing, gone, known, notice, problems} from '../state/signals';
import {show} from '../state/who';
import {keep_all} from '../state/writing';
import {with_changes} from '../changes';
import {handed} from './handed';
import {keep_against, kept_changes} from './keeping';
import {know_sheet_of} from './reach';
import {said} from './say';
import {keep_text} from './store';
import {is_past} from './words';

/// What the desk sent.
export const sent = signal<Inquiry>({});

/// What this file holds: what was sent or, in a copy, what it was copied with.
const in_file = () => with_changes(sent.value, handed.state);

function put(inquiry: Inquiry, hand: string): void {
    const key = 'home';
    const one = {key, inquiry, hand, area: '', asks: {}, uses: [], past: [], future: []};
    buyers.value = [one];
    show(key, true);
}

/// One buyer, who looks at what is theirs.
function begin(inquiry: Inquiry): void {
    sent.value = inquiry;
    know_sheet_of(inquiry);
    const before = in_file();
    keep_against(before);
    const kept = kept_changes();
    facing.value = true;
    document.documentElement.classList.toggle('past', is_past());
    put(with_changes(before, kept?.changes ?? null), kept?.hand ?? handed.facts.hand ?? '');
    view.value = view_in_address() ?? 'sheet';
    watch_place();
    window.addEventListener('pagehide', keep_all);
    document.addEventListener('visibilitychange', keep_all);
}

const again = 3000; // milliseconds

export async function open_home(): Promise<void> {
    try {
        known.value = await cases();
    } catch (error) {
        if (error instanceof Refused) failed(error);
        else gone.value = true;
        if (gone.value) window.setTimeout(() => void open_home(), again);
        return;
    }
    gone.value = false;
    const inquiry = known.value.price_books.flatMap((book) => book.inquiries)[0]?.inquiry;
    if (inquiry) begin(inquiry);
    else problems.value = [{id: '', found: said().no_home, expected: '', advice: ''}];
}

/// One touch, and a step back undoes it.
export function back_to_sent(): void {
    void act(sent.value, {what: said().back_done, touch: null, remarks: []}, true);
}

/// As the file came.
export function forget_changes(): void {
    const inquiry = in_file();
    batch(() => {
        put(inquiry, handed.facts.hand);
        notice.value = said().forgotten;
    });
    keep_all();
    for (const name of ['', '.language']) keep_text(name, null);
}
