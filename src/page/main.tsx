// Starts the page at the desk.
import './tokens.css';
import './base.css';

import {render} from 'preact';

import {take_code_from_address} from './desk/reach';
import {open_page} from './desk/start';
import {App} from './parts/app';

import './large_text.css';

take_code_from_address();
const root = document.getElementById('page')!;
root.replaceChildren();
render(<App />, root);
open_page();
