// How far each way to pay reaches: all of them on one scale, the home in hand marked on it.
import type {Afford, AffordScenario} from '../answers';
import {dollars, size} from '../figures';
import {say} from '../language';
import {loan_name} from '../state/books';
import {take_in_hand} from '../state/changing';
import {holds_no_ratio, limits_words} from './limits';
import {small} from './marks';
import {estimate_words, terms_words} from './terms';
import {Name} from './name';

import './overview.css';
import './month_bar.css';
import './reach.css';

/// The bar of one way to pay up to its highest price; the line is the home in hand.
function ReachBar({price, home, widest}: {price: string | null; home: string; widest: number}) {
    const at = (amount: string) => Math.min(size(amount) / widest, 1) * 100;
    const within = price !== null && size(price) >= size(home);
    return (
        <svg
            class="reach-bar"
            viewBox="0 0 100 10"
            preserveAspectRatio="none"
            role="img"
            aria-label={
                price
                    ? say.afford.reach.bar({price: dollars(price), within})
                    : say.afford.reach.no_price
            }
        >
            <rect class="reach-track" y="2" width="100" height="6" />
            {price && (
                <rect
                    class={`reach-part ${within ? 'within' : 'short'}`}
                    y="2"
                    width={at(price)}
                    height="6"
                />
            )}
            <line class="reach-home" x1={at(home)} x2={at(home)} y1="0" y2="10" />
        </svg>
    );
}

function Row({
    one,
    home,
    widest,
    on,
}: {
    one: AffordScenario;
    home: string;
    widest: number;
    on: boolean;
}) {
    const within = one.price !== null && size(one.price) >= size(home);
    return (
        <label class={`row overview-row ${on ? 'on' : ''}`}>
            <input
                type="radio"
                name="hand-reach"
                checked={on}
                onChange={() => take_in_hand(one.terms.name)}
            />
            <span class="overview-name">
                <span class="row-title">
                    <Name of={loan_name(one.terms.name)} />
                </span>
                {one.price ? (
                    <span class="terms">{terms_words(one.terms)}</span>
                ) : (
                    <span class="refused">
                        {one.refusals.length > 0
                            ? say.afford.reach.no_price_since({
                                  why: one.refusals.map((each) => each.words).join(': '),
                              })
                            : say.afford.reach.no_price}
                    </span>
                )}
            </span>
            <span class="overview-bar">
                <ReachBar price={one.price} home={home} widest={widest} />
                {one.price && one.binds.length > 0 && (
                    <span class="reach-binds">
                        {say.afford.reach.bound_by({
                            limits: limits_words(one.binds, one.ratios),
                            no_ratio: holds_no_ratio(one),
                            past_scale: size(one.price) > widest,
                        })}
                    </span>
                )}
            </span>
            {one.price && one.scenario && (
                <span class="overview-money">
                    <span class="row-price">
                        {say.common.up_to({amount: dollars(one.price), small})}
                    </span>
                    <span class="effect-cash">
                        {say.common.monthly({amount: dollars(one.scenario.monthly.total)})}
                    </span>
                    <span class={within ? 'reach-within' : 'reach-short'}>
                        {within ? say.afford.reach.within : say.afford.reach.short}
                    </span>
                </span>
            )}
        </label>
    );
}

export function Reach({answer, home, hand}: {answer: Afford; home: string; hand: string}) {
    // A price that no ratio bounds may be many times the others: its bar ends with the scale.
    const held = answer.scenarios.filter((one) => !holds_no_ratio(one));
    const scaled = held.length > 0 ? held : answer.scenarios;
    const widest = Math.max(size(home) * 1.08, ...scaled.map((one) => size(one.price)));
    return (
        <div class="overview reach" role="radiogroup" aria-label={say.afford.reach.label}>
            {answer.scenarios.map((one) => (
                <Row
                    key={one.terms.name}
                    one={one}
                    home={home}
                    widest={widest}
                    on={one.terms.name === hand}
                />
            ))}
            <p class="facts">{estimate_words(answer.heading)}</p>
            <p class="overview-key">
                <span>
                    <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                        <rect class="reach-part within" y="2" width="10" height="6" />
                    </svg>
                    {say.afford.reach.key_price}
                </span>
                <span>
                    <svg class="swatch" viewBox="0 0 10 10" aria-hidden="true">
                        <line class="reach-home" x1="5" x2="5" y1="0" y2="10" />
                    </svg>
                    {say.afford.reach.key_home({price: dollars(home)})}
                </span>
            </p>
        </div>
    );
}
