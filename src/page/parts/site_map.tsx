// The map of the lots as the engine draws it; a lot is touched, or chosen by Enter, to be looked at.
import {useEffect, useRef} from 'preact/hooks';

import {say} from '../language';

import './site_map.css';

export function SiteMap({
    svg,
    looked,
    look,
}: {
    svg: string;
    looked: string;
    look: (lot: string) => void;
}) {
    const sheet = useRef<HTMLDivElement>(null);
    useEffect(() => {
        for (const lot of sheet.current?.querySelectorAll<SVGElement>('.lot') ?? []) {
            lot.setAttribute('aria-pressed', String(lot.dataset.lot === looked));
            // Its number and its state are two words, as its label has them.
            for (const text of lot.querySelectorAll('text')) text.after(' ');
        }
    }, [svg, looked]);
    const touched = (event: Event) => {
        const lot = (event.target as Element).closest<SVGElement>('.lot');
        if (lot?.dataset.lot) look(lot.dataset.lot);
    };
    return (
        <figure class="map">
            <div
                ref={sheet}
                onClick={touched}
                onKeyDown={(event) => {
                    if (event.key !== 'Enter' && event.key !== ' ') return;
                    event.preventDefault();
                    touched(event);
                }}
                dangerouslySetInnerHTML={{__html: svg}}
            />
            <figcaption>{say.site.map_says}</figcaption>
        </figure>
    );
}
