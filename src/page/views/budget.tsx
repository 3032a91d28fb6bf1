// What the buyer's means allow, what the builder's money does, what can wait until after closing.
import type {Cash} from '../answers';
import {dollars} from '../figures';
import {without_means} from '../inquiry';
import {say} from '../language';
import {Afford} from '../parts/afford';
import {use_answer} from '../parts/asked';
import {BuildersMoney} from '../parts/builders_money';
import {Cautions} from '../parts/cautions';
import {Later} from '../parts/later';
import {Wishes} from '../parts/wishes';
import {answered, tour} from '../store';
import {Name} from '../parts/name';

import './budget.css';

/// The parts by the id of their heading.
const parts: [string, keyof typeof say.afford.parts][] = [
    ['afford', 'afford'],
    ['wishes', 'wishes'],
    ['builders-money', 'builders_money'],
    ['later', 'later'],
];

function go_to(id: string): void {
    const heading = document.getElementById(id);
    heading?.scrollIntoView({block: 'start'});
    heading?.focus({preventScroll: true});
}

/// One part below another, each a question of its own, all of them for the way to pay in hand.
export function BudgetView() {
    const {heading, contract_price: price, scenario} = tour.value!;
    const {answer} = use_answer<Cash>('cash', without_means(answered.value), {
        scenario: scenario.terms.name,
    });
    return (
        <div class="budget-page">
            <h2>{say.afford.page}</h2>
            <p class="home-line">
                {say.common.home_line({
                    plan: <Name of={heading.plan} />,
                    lot: heading.lot,
                    price: dollars(price),
                })}
            </p>
            <nav class="segments part-links" aria-label={say.afford.parts_label}>
                {parts.map(([id, part]) => (
                    <button key={id} class="step" onClick={() => go_to(id)}>
                        {say.afford.parts[part]}
                    </button>
                ))}
            </nav>
            <Afford />
            <Wishes />
            <BuildersMoney />
            <Later />
            {answer && <Cautions all={answer.cautions} />}
        </div>
    );
}
