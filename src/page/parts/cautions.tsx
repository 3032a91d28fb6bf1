// What has to be known beside the figures, as the engine says it.
import type {Caution} from '../answers';
import {say} from '../language';
import {facing} from '../state/signals';

import './cautions.css';

export function Cautions({all}: {all: Caution[]}) {
    return (
        <section class="cautions" aria-label={say.frame.what_to_know}>
            {all
                .filter(({code}) => code !== 'agent_license' || !facing.value)
                .map(({words}, i) => (
                    <p key={i}>{words}</p>
                ))}
        </section>
    );
}
