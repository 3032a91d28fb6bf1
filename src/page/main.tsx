// Starts the page.
import './parts/top.css';
import './views/check.css';
import './views/tour.css';
import './parts/areas.css';
import './parts/chosen.css';
import './parts/find.css';
import './parts/floor_plan.css';
import './parts/option_card.css';
import './parts/look.css';
import './parts/bar.css';
import './parts/chart/chart.css';
import './parts/credit_chart.css';
import './parts/schedule_chart.css';
import './app.css';

import {render} from 'preact';

import {take_code_from_address} from './engine';
import {App} from './parts/app';
import {open_page} from './store';

take_code_from_address();
const root = document.getElementById('page')!;
root.replaceChildren();
render(<App />, root);
open_page();
