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

/// The sheet and the bar, or why there are none.
const is_there = () => page.querySelector('.paper, .message, .alone') !== null;

function take_over(): void {
    if (!is_there()) return;
    watch.disconnect();
    document.getElementById('page')!.replaceWith(page);
    const touched = handed.touched();
    if (touched) page.querySelectorAll<HTMLElement>(`.${touched[0]}`)[touched[1]]?.click();
    handed.touched = () => null;
}

const watch = new MutationObserver(take_over);
watch.observe(page, {childList: true, subtree: true});
render(<App />, page);
void open_home();
