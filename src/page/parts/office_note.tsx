// A note of the price book for the desk: nowhere while the buyer looks on.
import './office_note.css';

import {say} from '../language';
import {facing} from '../store';

export function OfficeNote({of}: {of: {office_note?: string}}) {
    if (!of.office_note || facing.value) return null;
    return (
        <span class="office-note">
            <span class="office-note-mark">{say.common.for_the_desk}</span> {of.office_note}
        </span>
    );
}
