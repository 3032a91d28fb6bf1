// What has to be known beside the figures of a view, behind one line: rate, APR, term, date and that
// it is an estimate stand beside every payment already. On paper all of it is said.
import type {Caution} from '../answers';
import {say} from '../language';
import {opened} from '../opened';
import {Cautions} from './cautions';
import {KeptFold} from './fold';

const kept = 'fold:what-to-know';

export function WhatToKnow({all}: {all: Caution[]}) {
    if (all.length === 0) return null;
    return (
        <>
            <KeptFold
                id="what-to-know"
                kept={kept}
                class="what-to-know"
                title={say.frame.what_to_know}
                says={say.frame.what_to_know_says}
            >
                <Cautions all={all} />
            </KeptFold>
            {!opened.value.has(kept) && (
                <div class="paper-alone">
                    <Cautions all={all} />
                </div>
            )}
        </>
    );
}
