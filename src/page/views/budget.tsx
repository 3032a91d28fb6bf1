// What the buyer's means allow, what the builder's money does, what can wait until after closing.
import type {Cash} from '../answers';
import {without_means} from '../inquiry';
import {say} from '../language';
import {Afford} from '../parts/afford';
import {use_answer} from '../parts/asked';
import {BuildersMoney} from '../parts/builders_money';
import {Later} from '../parts/later';
import {Wishes} from '../parts/wishes';
import {answered, tour} from '../state/signals';
import {Name} from '../parts/name';
import {WhatToKnow} from '../parts/what_to_know';

import './budget.css';

/// Each part a question of its own, one open at a time, all of them for the way to pay in hand.
export function BudgetView() {
    const {heading, scenario} = tour.value!;
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
                })}
            </p>
            <div class="beyond">
                <Afford />
                <Wishes />
                <BuildersMoney />
                <Later />
            </div>
            {answer && <WhatToKnow all={answer.cautions} />}
        </div>
    );
}
