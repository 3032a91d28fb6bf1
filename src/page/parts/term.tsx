// A term of the trade where a buyer meets it: a touch on its label shows what it means.
import {signal} from '@preact/signals';
import {createContext} from 'preact';
import type {ComponentChildren} from 'preact';
import {useContext, useEffect, useLayoutEffect, useRef} from 'preact/hooks';

import type {TermCode} from '../answers';
import {terms} from '../engine';
import type {ExplainedTerm} from '../engine';
import {language, say} from '../language';
import {gone} from '../state/signals';
import {capital} from '../words/phrase';

import './term.css';

/// By code; empty until they have come, and where they cannot be had.
const glossary = signal<Map<string, ExplainedTerm>>(new Map());

/// The label that was touched, until its card is closed.
const opened = signal<{of: TermCode; label: HTMLButtonElement} | null>(null);

/// Where the same terms were met before: inside of it they are plain text.
export const Again = createContext(false);

const card_id = 'term-card';

/// Words that no term explains have no code, and are plain.
export function Term({of, children}: {of?: TermCode; children: ComponentChildren}) {
    const label = useRef<HTMLButtonElement>(null);
    useEffect(() => {
        const element = label.current;
        return () => {
            if (opened.peek()?.label === element) opened.value = null;
        };
    }, []);
    const again = useContext(Again);
    if (again || !of || !glossary.value.has(of)) return <>{children}</>;
    const open = opened.value !== null && opened.value.label === label.current;
    return (
        <button
            ref={label}
            type="button"
            class="term"
            data-term={of}
            aria-haspopup="dialog"
            aria-expanded={open}
            aria-controls={open ? card_id : undefined}
            onClick={(event) => {
                event.preventDefault(); // in a label it is no touch of what is labeled
                opened.value = open ? null : {of, label: event.currentTarget};
            }}
        >
            <span>{children}</span>
        </button>
    );
}

/// "debt-to-income ratio (DTI)" as a sentence has it.
function plain_name(of: TermCode): string {
    return (glossary.value.get(of)?.name ?? '').replace(/ \(.*\)$/, '');
}

/// A sentence in which these terms are touched where it names them first.
export function Explained({text, terms: codes}: {text: string; terms: TermCode[]}) {
    let pieces: ComponentChildren[] = [text];
    for (const of of codes) {
        const name = plain_name(of).replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
        if (!name) continue;
        const named = new RegExp(`(^|[^\\p{L}])(${name}(?:e?s)?)(?!\\p{L})`, 'iu');
        const at = pieces.findIndex((one) => typeof one === 'string' && named.test(one));
        if (at < 0) continue;
        const piece = pieces[at] as string;
        const found = named.exec(piece)!;
        const from = found.index + found[1].length;
        const rest = piece.slice(from + found[2].length);
        const mark = /^[.,:;)]*/.exec(rest)![0];
        pieces = [
            ...pieces.slice(0, at),
            piece.slice(0, from),
            <span key={of} class="with-mark">
                <Term of={of}>{found[2]}</Term>
                {mark}
            </span>,
            rest.slice(mark.length),
            ...pieces.slice(at + 1),
        ];
    }
    return <>{pieces}</>;
}

/// The card goes; the focus is back on the label.
function close(): void {
    opened.peek()?.label.focus({preventScroll: true});
    opened.value = null;
}

/// Below the label, or above it where there is no room; above the bar's own, so that its figures
/// stay in sight. False where the label is out of sight.
function place(card: HTMLElement, label: HTMLElement): boolean {
    const gap = 6;
    const by = label.firstElementChild!.getBoundingClientRect();
    const bar = document.querySelector('.bar');
    const bar_top = bar?.getBoundingClientRect().top ?? innerHeight;
    const in_bar = bar?.contains(label) ?? false;
    const {offsetWidth: width, offsetHeight: height} = card;
    const most = document.documentElement.clientWidth - width - gap;
    const left = Math.max(gap, Math.min(by.left, most));
    const below = by.bottom + gap;
    const above = (in_bar ? bar_top : by.top) - gap - height;
    const top = !in_bar && below + height <= bar_top ? below : Math.max(gap, above);
    card.style.left = `${left}px`;
    card.style.top = `${top}px`;
    return by.width > 0 && by.bottom > 0 && (in_bar || by.top < bar_top);
}

function Card({term, label}: {term: ExplainedTerm; label: HTMLButtonElement}) {
    const card = useRef<HTMLDivElement>(null);
    useLayoutEffect(() => {
        const element = card.current!;
        place(element, label);
        element.focus({preventScroll: true});
        const follow = () => {
            if (!place(element, label)) opened.value = null;
        };
        const touched = (event: Event) => {
            const on = event.target as Node;
            if (!element.contains(on) && !label.contains(on)) close();
        };
        const pressed = (event: KeyboardEvent) => {
            if (event.key === 'Escape') close();
        };
        document.addEventListener('scroll', follow, true);
        addEventListener('resize', follow);
        document.addEventListener('pointerdown', touched, true);
        document.addEventListener('keydown', pressed);
        return () => {
            document.removeEventListener('scroll', follow, true);
            removeEventListener('resize', follow);
            document.removeEventListener('pointerdown', touched, true);
            document.removeEventListener('keydown', pressed);
        };
    }, [label]);
    /// Tab leads on from the label, as if the card stood behind it.
    const leave = (event: KeyboardEvent) => {
        if (event.key !== 'Tab') return;
        const inside = event.target === card.current;
        if (inside && !event.shiftKey) return;
        if (event.shiftKey) event.preventDefault();
        close();
    };
    return (
        <div
            ref={card}
            id={card_id}
            class="term-card"
            role="dialog"
            aria-labelledby="term-name"
            aria-describedby="term-meaning"
            tabIndex={-1}
            onKeyDown={leave}
        >
            <p class="term-name" id="term-name">
                {capital(term.name)}
            </p>
            <button type="button" class="term-close" aria-label={say.common.close} onClick={close}>
                ×
            </button>
            <p id="term-meaning">{term.meaning}</p>
            {term.source && <p class="term-source">{say.terms.source({source: term.source})}</p>}
        </div>
    );
}

/// Stands once on the page, outside of what terms are in; asks for what they mean.
export function TermCard() {
    useEffect(() => {
        let wanted = true;
        const learn = (all: ExplainedTerm[]) => {
            if (wanted) glossary.value = new Map(all.map((one) => [one.term, one]));
        };
        terms().then(learn, () => learn([]));
        return () => {
            wanted = false;
        };
    }, [language.value, gone.value]);
    const shown = opened.value;
    const term = shown && glossary.value.get(shown.of);
    return term ? <Card key={term.term} term={term} label={shown.label} /> : null;
}
