// What the buyer's means allow, what the builder's money does, what can wait until after closing.
import type {Cash} from '../answers';
import {dollars} from '../figures';
import {without_means} from '../inquiry';
import {Afford} from '../parts/afford';
import {use_answer} from '../parts/asked';
import {BuildersMoney} from '../parts/builders_money';
import {Cautions} from '../parts/cautions';
import {Later} from '../parts/later';
import {Wishes} from '../parts/wishes';
import {answered, tour} from '../store';
import {Name} from '../parts/name';

/// The parts by the id of their heading.
const parts: [string, string][] = [
    ['afford', 'How much home'],
    ['wishes', 'Wishes'],
    ['builders-money', "The builder's money"],
    ['later', 'Now or later'],
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
            <h2>What it takes, and what it allows</h2>
            <p class="home-line">
                <Name of={heading.plan} /> on lot {heading.lot}, contract price {dollars(price)}.
            </p>
            <nav class="segments part-links" aria-label="Parts of this view">
                {parts.map(([id, name]) => (
                    <button key={id} class="step" onClick={() => go_to(id)}>
                        {name}
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
