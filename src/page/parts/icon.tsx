// A drawn sign beside or instead of a word: a button with one alone has the word for a reader.
const paths = {
    areas: 'M3 3h18v18H3zM3 11h9M12 3v5M12 15v6M12 11h3M19 11h2',
    undo: 'M9 5L4 10l5 5M4 10h10a6 6 0 0 1 0 12h-3',
    find: 'M10.5 4a6.5 6.5 0 1 0 0 13 6.5 6.5 0 0 0 0-13zM15.3 15.3L21 21',
};

export function Icon({of}: {of: keyof typeof paths}) {
    return (
        <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" width="22" height="22">
            <path
                d={paths[of]}
                fill="none"
                stroke="currentColor"
                stroke-width="2"
                stroke-linecap="round"
                stroke-linejoin="round"
            />
        </svg>
    );
}
