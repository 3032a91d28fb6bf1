// What was changed, in a small file for the desk: selections and loans, and a name only where it is
// wanted.
import {today} from '../days';
import {file_name, hand_over} from '../files';
import {buyer, notice, tour} from '../state/signals';
import {changes_of} from '../changes';
import {handed} from './handed';
import {said} from './say';
import {sent} from './start';

export function changes_file(with_name: boolean): File | null {
    const {inquiry} = buyer.value!;
    const changes = changes_of(inquiry, sent.value);
    if (!changes) return null;
    const told = {
        format: 'quoin/changes/1',
        file: handed.facts.hash,
        as_of: handed.facts.as_of,
        day: today(),
        ...(with_name ? {buyer: inquiry.buyer ?? ''} : {}),
        changes,
    };
    const name = file_name([tour.value!.heading.community, 'changes', today()].join(' '), 'json');
    return new File([`${JSON.stringify(told, null, 1)}\n`], name, {type: 'application/json'});
}

/// As the device sends files to others, or else into its downloads.
export async function send_changes(with_name: boolean): Promise<void> {
    const file = changes_file(with_name);
    if (!file) {
        notice.value = said().send_nothing;
        return;
    }
    if (navigator.canShare?.({files: [file]})) {
        try {
            return await navigator.share({files: [file]});
        } catch (error) {
            if ((error as Error).name === 'AbortError') return; // thought better of
        }
    }
    hand_over(file, file.name);
    notice.value = said().sent({file: file.name});
}
