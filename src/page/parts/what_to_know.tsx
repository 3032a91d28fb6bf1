// What has to be known beside the figures of a view, behind one line: rate, APR, term, date and that
// it is an estimate stand beside every payment already. On paper all of it is said.
import {useState} from 'preact/hooks';

import type {Caution} from '../answers';
import {say} from '../language';
import {Cautions} from './cautions';
import {Fold} from './fold';

export function WhatToKnow({all}: {all: Caution[]}) {
    const [open, turn] = useState(false);
    if (all.length === 0) return null;
    return (
        <>
            <Fold
                id="what-to-know"
                class="what-to-know"
                title={say.frame.what_to_know}
                says={say.frame.what_to_know_says}
                open={open}
                turn={() => turn(!open)}
            >
                <Cautions all={all} />
            </Fold>
            {!open && (
                <div class="paper-alone">
                    <Cautions all={all} />
                </div>
            )}
        </>
    );
}
