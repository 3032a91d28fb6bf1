// What every chart stands in: its title, the room it has, and the place that is looked at.
import type {ComponentChildren} from 'preact';
import {useLayoutEffect, useRef, useState} from 'preact/hooks';

import {Pointer} from './pointer';
import type {Pointing} from './pointer';

import './chart.css';

/// A drawing of the width that there is, so that letters have their own size everywhere.
export interface Drawn {
    height: number;
    pointing: Pointing;
    parts: ComponentChildren;
}

const least = 280;

export function Frame({
    title,
    kind,
    draw,
    after,
}: {
    title: ComponentChildren;
    kind: string;
    draw: (width: number) => Drawn;
    after?: ComponentChildren;
}) {
    const figure = useRef<HTMLElement>(null);
    const [width, set] = useState(0);
    useLayoutEffect(() => {
        const told = () => set(Math.max(Math.floor(figure.current?.clientWidth ?? 0), least));
        const watch = new ResizeObserver(told);
        watch.observe(figure.current!);
        told();
        return () => watch.disconnect();
    }, []);
    const drawn = width > 0 ? draw(width) : null;
    return (
        <figure class={`chart ${kind}`} ref={figure}>
            <figcaption>{title}</figcaption>
            {drawn && (
                <Pointer pointing={drawn.pointing} width={width}>
                    <svg viewBox={`0 0 ${width} ${drawn.height}`} aria-hidden="true">
                        {drawn.parts}
                    </svg>
                </Pointer>
            )}
            {after}
        </figure>
    );
}
