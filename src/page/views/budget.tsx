// What the buyer's means allow, what the builder's money does, what can wait until after closing.
import {dollars} from '../figures';
import {Afford} from '../parts/afford';
import {Cautions} from '../parts/cautions';
import {tour} from '../store';

/// One part below another, each a question of its own, all of them for the way to pay in hand.
export function BudgetView() {
    const {heading, contract_price: price, cautions} = tour.value!;
    return (
        <div class="budget-page">
            <h2>What it takes, and what it allows</h2>
            <p class="home-line">
                {heading.plan} on lot {heading.lot}, contract price {dollars(price)}.
            </p>
            <Afford />
            {/* Here stands which wishes fit: parts/wishes.tsx. */}
            <Cautions texts={cautions} />
        </div>
    );
}
