// Starts the page.
import './tokens.css';
import './base.css';

import {render} from 'preact';

import {take_code_from_address} from './engine';
import {App} from './parts/app';
import {open_page} from './state/start';

import './large_text.css';

take_code_from_address();
const root = document.getElementById('page')!;
root.replaceChildren();
render(<App />, root);
open_page();
