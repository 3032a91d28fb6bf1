// A part of the page in one of its states.
import type {ComponentChild} from 'preact';

import type {Recorded} from './recorded';

export interface Place {
    set?: (of: Recorded) => void; ///< what the page knows in this state, against the buyer at rest
    draw: (of: Recorded) => ComponentChild;
    touch?: string[]; ///< what is touched, in order, to come to this state
}

/// By the name of the part's file, then by the state.
export type Places = Record<string, Record<string, Place>>;
