// What has to be known beside the figures, as the engine says it.
import type {Caution} from '../answers';

export function Cautions({all}: {all: Caution[]}) {
    return (
        <section class="cautions" aria-label="What to know">
            {all.map(({words}, i) => (
                <p key={i}>{words}</p>
            ))}
        </section>
    );
}
