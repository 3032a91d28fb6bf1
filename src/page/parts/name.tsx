// A name as somebody wrote it: a very long one is cut, and its ellipsis opens the whole of it.
import {signal} from '@preact/signals';

import {brief} from '../figures';
import {say} from '../language';
import {Dialog} from './dialog';

import './name.css';

const opened = signal('');

/// One that no line of a phone holds.
const long_word = /\S{25}/;

/// The words, in which a word too long for its line breaks where it must.
export function Words({of: words, title}: {of: string; title?: string}) {
    if (!title && !long_word.test(words)) return <>{words}</>;
    return (
        <span class={long_word.test(words) ? 'long-word' : undefined} title={title}>
            {words}
        </span>
    );
}

export function Name({of: name}: {of: string | undefined}) {
    const words = name ?? '';
    const short = brief(words);
    if (short === words) return <Words of={words} />;
    return (
        <>
            <Words of={short.slice(0, -1)} title={words} />
            <button
                type="button"
                class="whole-name"
                aria-label={say.frame.whole_name}
                onClick={(event) => {
                    event.preventDefault(); // in a label it is no touch of what is named
                    opened.value = words;
                }}
            >
                …
            </button>
        </>
    );
}

/// Stands once on the page, outside of what names are in.
export function WholeName() {
    if (!opened.value) return null;
    return (
        <Dialog
            title={say.frame.whole_name}
            done={() => {
                opened.value = '';
            }}
        >
            <p class="whole-text">{opened.value}</p>
        </Dialog>
    );
}
