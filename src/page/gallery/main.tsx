// Every part of the page in every state, one at a time: a page for whoever works on them, which the
// program does not carry.
import '../tokens.css';
import '../base.css';

import {batch} from '@preact/signals';
import {render} from 'preact';

import {TermCard} from '../parts/term';
import {view} from '../place';
import {
    answered,
    away,
    busy,
    buyers,
    change,
    closed,
    code_needed,
    current,
    facing,
    gone,
    known,
    looked_for,
    mending,
    notice,
    problems,
    tour,
} from '../state/signals';
import {open_part} from '../opened';
import type {Places} from './place';
import {record} from './recorded';
import type {Recorded} from './recorded';
import {of_the_frame} from './of_the_frame';
import {of_the_loans} from './of_the_loans';
import {of_the_tour} from './of_the_tour';

const places: Places = {...of_the_frame, ...of_the_tour, ...of_the_loans};

/// What is seen inside of another part's place, and of no use alone.
const inside: Record<string, string> = {
    'fold': 'afford',
    'later_costs': 'later',
    'lines_chart': 'later',
    'cash_parts': 'loan_card',
    'facts_list': 'loan_card',
    'languages': 'app',
    'loan_apart': 'loan_card',
    'loan_fields': 'loan_card',
    'marks': 'afford',
    'messages': 'app',
    'paper_head': 'app',
    'terms': 'loan_in_hand',
    'wish_list': 'wishes',
    'years_chart': 'loan_years',
    'chart/axis': 'schedule_chart',
    'chart/frame': 'schedule_chart',
    'chart/labels': 'credit_chart',
    'chart/pointer': 'schedule_chart',
};

/// The buyer of the example at rest.
function rest(of: Recorded): void {
    batch(() => {
        known.value = of.cases;
        buyers.value = [of.buyer];
        current.value = of.buyer.key;
        view.value = 'tour';
        tour.value = of.tour;
        answered.value = of.inquiry;
        for (const one of [gone, code_needed, busy, facing]) one.value = false;
        for (const one of [change, mending, closed]) one.value = null;
        problems.value = [];
        notice.value = '';
        away.value = [];
        looked_for.value = '';
        open_part('budget', 'afford');
        open_part('loans', '');
    });
}

const root = document.getElementById('gallery')!;
const recorded = record();

/// Draws a part in a state, and touches what leads there.
async function show(part: string, state: string): Promise<void> {
    const of = await recorded;
    render(null, root);
    rest(of);
    const place = places[part][state];
    batch(() => place.set?.(of));
    const whole = part === 'app';
    const Drawn = () => <>{place.draw(of)}</>;
    render(
        whole ? (
            <Drawn />
        ) : (
            <main class="main" data-part={part} data-state={state}>
                <Drawn />
                {part !== 'term' && <TermCard />}
            </main>
        ),
        root,
    );
    for (const touched of place.touch ?? []) {
        let found: HTMLElement | null = null;
        for (let i = 0; i < 100 && !found; i += 1) {
            await new Promise((later) => setTimeout(later, 30));
            found = root.querySelector<HTMLElement>(touched);
        }
        if (!found) throw new Error(`${part}, ${state}: nothing to touch at ${touched}`);
        found.click();
    }
}

Object.assign(window, {
    gallery: {
        places: Object.entries(places).flatMap(([part, states]) =>
            Object.entries(states).map(([state, place]) => ({
                part,
                state,
                touched: Boolean(place.touch),
            })),
        ),
        inside,
        show,
    },
});

const [part, state] = location.hash.slice(1).split('/');
if (places[part]?.[state]) void show(part, state);
