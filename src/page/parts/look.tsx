// How a thing that can be chosen looks: its picture, else its color. The name stands beside it.
import {useEffect, useRef, useState} from 'preact/hooks';

import {picture} from '../engine';
import {picture_address} from '../state/books';

import './look.css';

/// Both empty where the price book shows nothing of it.
interface Shown {
    picture: string;
    color: string;
}

export function has_look({picture: file, color}: Shown): boolean {
    return file !== '' || color !== '';
}

/// Fetched once it is near the screen; its room is there from the start.
function Picture({address, large}: {address: string; large: boolean}) {
    const room = useRef<HTMLSpanElement>(null);
    const [source, set_source] = useState<string | null>(null);
    const [failed, set_failed] = useState(false);
    useEffect(() => {
        let shown = true;
        const near = new IntersectionObserver(
            (entries) => {
                if (!entries.some((one) => one.isIntersecting)) return;
                near.disconnect();
                picture(address).then(
                    (found) => shown && set_source(found),
                    () => shown && set_failed(true),
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
    if (failed) return null;
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
                    onError={() => set_failed(true)}
                />
            )}
        </span>
    );
}

/// Nothing where there is nothing to show.
export function Look({of, large = false}: {of: Shown; large?: boolean}) {
    const address = picture_address(of.picture);
    if (address) return <Picture key={address} address={address} large={large} />;
    if (!of.color) return null;
    return (
        <svg class="look swatch" viewBox="0 0 32 32" aria-hidden="true">
            <rect x="0.5" y="0.5" width="31" height="31" rx="6" fill={of.color} />
        </svg>
    );
}
