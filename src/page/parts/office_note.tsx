// A note of the price book for the desk: nowhere while the buyer looks on.
import {say} from '../language';
import {facing} from '../state/signals';

import './office_note.css';

export function OfficeNote({of}: {of: {office_note?: string}}) {
    if (!of.office_note || facing.value) return null;
    return (
        <span class="office-note">
            <span class="office-note-mark">{say.common.for_the_desk}</span> {of.office_note}
        </span>
    );
}
