// A part of a view under its title, opened by a touch anywhere on it: what decides is said closed.
import type {ComponentChildren} from 'preact';

import {is_open, opened, set_open, turn_part} from '../opened';
import type {View} from '../place';
import './fold.css';

/// Turns something that is taller or gone above: what was touched stays where the hand is.
function in_place(touched: Element, turn: () => void): void {
    const top = touched.getBoundingClientRect().top;
    const stay = () => {
        const moved = touched.getBoundingClientRect().top - top;
        if (Math.abs(moved) > 1) window.scrollBy(0, moved);
    };
    turn();
    // Again a frame later: the browser may have held on to another part itself.
    requestAnimationFrame(() => {
        stay();
        requestAnimationFrame(stay);
    });
}

export function Fold({
    id,
    title,
    says,
    open,
    turn,
    class: name = '',
    level: Title = 'h3',
    children,
}: {
    id: string; ///< of its title
    title: ComponentChildren;
    says?: ComponentChildren; ///< in a line, what is inside or how it stands
    open: boolean;
    turn: () => void;
    class?: string;
    level?: 'h3' | 'h4';
    children: ComponentChildren;
}) {
    return (
        <section class={`fold ${name}`} aria-labelledby={id}>
            <Title id={id} tabIndex={-1}>
                <button
                    class="opener fold-opener"
                    aria-expanded={open}
                    onClick={(event) => in_place(event.currentTarget, turn)}
                >
                    <span class="fold-title">{title}</span>
                    {says && <span class="fold-says">{says}</span>}
                    <span class="chevron" aria-hidden="true" />
                </button>
            </Title>
            {open && <div class="fold-inside">{children}</div>}
        </section>
    );
}

/// Found open again where it was left.
export function KeptFold({
    kept,
    ...rest
}: {
    kept: string; ///< what it is remembered by
} & Omit<Parameters<typeof Fold>[0], 'open' | 'turn'>) {
    const open = opened.value.has(kept);
    return <Fold open={open} turn={() => set_open(kept, !open)} {...rest} />;
}

/// One of the parts of a view, of which one at a time is open.
export function PartFold({
    view,
    part,
    ...rest
}: {view: View; part: string} & Omit<Parameters<typeof Fold>[0], 'id' | 'open' | 'turn'>) {
    return (
        <Fold id={part} open={is_open(view, part)} turn={() => turn_part(view, part)} {...rest} />
    );
}
