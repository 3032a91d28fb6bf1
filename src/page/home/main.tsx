// Starts the page at home: behind the sheet that stands there, until its own is there in its place.
import '../tokens.css';
import '../base.css';

import {render} from 'preact';

import {App} from '../parts/app';
import {handed} from './handed';
import {open_home} from './start';

import '../large_text.css';
import './opening.css';

const sheet = new CSSStyleSheet();
sheet.replaceSync(new TextDecoder().decode(handed.parts['home.css']));
document.adoptedStyleSheets = [sheet];

const page = document.createElement('div');
page.id = 'page';

/// The sheet stays as it stands there, with the reason above it.
function stay(why: Element): void {
    document.documentElement.classList.remove('opens');
    const there = document.querySelector('#page > .messages')!;
    there.replaceChildren(...Array.from(why.children, (one) => one.cloneNode(true)));
}

function take_over(): void {
    const alone = page.querySelector('.alone .messages');
    if (alone) stay(alone);
    if (alone || !page.querySelector('.paper, .message')) return;
    watch.disconnect();
    document.documentElement.classList.add('opens');
    document.getElementById('page')!.replaceWith(page);
    const touched = handed.touched();
    if (touched) page.querySelectorAll<HTMLElement>(`.${touched[0]}`)[touched[1]]?.click();
}

const watch = new MutationObserver(take_over);
watch.observe(page, {childList: true, subtree: true});
render(<App />, page);
void open_home();
