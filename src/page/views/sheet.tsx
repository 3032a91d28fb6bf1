// The sheet to take home: the engine's own document, shown as it prints.
import {useLayoutEffect, useRef, useState} from 'preact/hooks';

import {ask_text} from '../engine';
import {say} from '../language';
import {SheetTools} from '#side/sheet_tools';
import {sheet_title} from '#side/words';
import {use_answer} from '../parts/asked';
import {answered, hand} from '../state/signals';

import './sheet.css';

/// What holds of the pages of paper is the window's, not a tree's: it stands there as long as the
/// sheet does.
function use_pages(style: CSSStyleSheet | null): void {
    useLayoutEffect(() => {
        if (!style) return undefined;
        const pages = new CSSStyleSheet();
        for (const rule of style.cssRules) {
            if (rule instanceof CSSPageRule) pages.insertRule(rule.cssText, pages.cssRules.length);
        }
        document.adoptedStyleSheets = [...document.adoptedStyleSheets, pages];
        return () => {
            document.adoptedStyleSheets = document.adoptedStyleSheets.filter(
                (one) => one !== pages,
            );
        };
    }, [style]);
}

/// In a tree of its own, so that neither the page's style nor its dark colors reach the paper. What
/// the parser makes of the text runs nothing; its style is taken out before, since the policy lets
/// none stand in a document.
function Paper({text}: {text: string}) {
    const place = useRef<HTMLDivElement>(null);
    const [style, set_style] = useState<CSSStyleSheet | null>(null);
    useLayoutEffect(() => {
        const host = place.current!;
        const root = host.shadowRoot ?? host.attachShadow({mode: 'open'});
        const [before, look, after] = text.split(/<\/?style>/, 3);
        const sheet = new DOMParser().parseFromString(before + after, 'text/html');
        const rules = new CSSStyleSheet();
        rules.replaceSync(look);
        root.adoptedStyleSheets = [rules];
        const paper = sheet.querySelector('main')!;
        const shown = document.createElement('article');
        shown.className = paper.className;
        shown.append(...paper.childNodes);
        root.replaceChildren(shown);
        set_style(rules);
    }, [text]);
    use_pages(style);
    return <div class="paper" ref={place} />;
}

export function SheetView() {
    const options = {scenario: hand.value};
    const {answer: text} = use_answer<string>('sheet', answered.value, options, ask_text);
    if (!text) return <p class="waiting">{say.sheet.writing}</p>;
    return (
        <div class="sheet-page">
            <div class="sheet-tools">
                <h2>{sheet_title()}</h2>
                <SheetTools />
                <button class="main-button" onClick={() => window.print()}>
                    {say.sheet.print}
                </button>
            </div>
            <Paper text={text} />
        </div>
    );
}
