// How a thing that can be chosen looks: its picture, else its color. The name stands beside it.
import {signal} from '@preact/signals';
import {useEffect, useRef, useState} from 'preact/hooks';

import {picture, picture_here} from '../engine';
import {picture_address} from '../state/books';

import './look.css';

/// Those that could not be had: no room is kept for them.
const not_had = signal<ReadonlySet<string>>(new Set());

/// Both empty where the price book shows nothing of it.
interface Shown {
    picture: string;
    color: string;
}

export function has_look({picture: file, color}: Shown): boolean {
    return has_picture({picture: file, color}) || color !== '';
}

function has_picture({picture: file}: Shown): boolean {
    const address = picture_address(file);
    return address !== null && !not_had.value.has(address);
}

/// The class of a group whose rows keep room for what some of them show.
export function room_for(group: Shown[]): string {
    if (group.some(has_picture)) return 'looks pictures';
    return group.some(has_look) ? 'looks' : '';
}

function give_up(address: string): void {
    not_had.value = new Set([...not_had.value, address]);
}

/// Fetched once it is near the screen; its room is there from the start.
function Picture({address, large}: {address: string; large: boolean}) {
    const room = useRef<HTMLSpanElement>(null);
    const [source, set_source] = useState(picture_here(address));
    useEffect(() => {
        if (source) return undefined;
        let shown = true;
        const near = new IntersectionObserver(
            (entries) => {
                if (!entries.some((one) => one.isIntersecting)) return;
                near.disconnect();
                picture(address).then(
                    (found) => shown && set_source(found),
                    () => give_up(address),
                );
            },
            {rootMargin: '300px'},
        );
        if (room.current) near.observe(room.current);
        return () => {
            shown = false;
            near.disconnect();
        };
    }, [address]);
    const [width, height] = large ? [320, 240] : [56, 42];
    return (
        <span ref={room} class={`look picture ${large ? 'large' : ''}`}>
            {source && (
                <img
                    src={source}
                    alt=""
                    width={width}
                    height={height}
                    decoding="async"
                    onError={() => give_up(address)}
                />
            )}
        </span>
    );
}

/// Nothing where there is nothing to show.
export function Look({of, large = false}: {of: Shown; large?: boolean}) {
    const address = picture_address(of.picture);
    if (address && !not_had.value.has(address))
        return <Picture key={address} address={address} large={large} />;
    if (!of.color) return null;
    return (
        <svg class="look swatch" viewBox="0 0 32 32" aria-hidden="true">
            <rect x="0.5" y="0.5" width="31" height="31" rx="6" fill={of.color} />
        </svg>
    );
}
