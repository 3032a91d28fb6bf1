// The lots in a row along the street, as wide as they are, and the plans that fit them.
import type {Elevation, Lot, Move, Plan, Site} from '../answers';
import {brief, capital, is_zero, plain, short, signed, size} from '../figures';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {Name} from '../parts/name';
import {terms_words} from '../parts/terms';
import {answered, move, tour} from '../store';
import {grade_words} from '../words';

function measure(lot: {measures: {name: string; value: string}[]}, name: string): number {
    return size(lot.measures.find((one) => one.name === name)?.value);
}

function names_of(lots: Lot[]): string {
    return lots.map((lot) => lot.id).join(', ');
}

function take_lot(lot: Lot): void {
    move((inquiry) => ({...inquiry, lot: lot.id}), `Lot ${lot.id}`, lot);
}

function take_plan(plan: Plan, elevation: Elevation): void {
    const what = `Plan ${plan.name}, elevation ${elevation.name}`;
    move((inquiry) => ({...inquiry, plan: plan.id, elevation: elevation.id}), what, elevation);
}

/// Parcels as wide as the price book says, the ground under the house as it falls, the house of the
/// plan in hand where it fits. No map: lots stand in the order of the list.
function Street({answer}: {answer: Site}) {
    const plan = answer.plans.find((one) => one.chosen);
    const house = plan ? measure(plan, 'house_width_ft') : 0;
    const known = answer.lots.some((lot) => measure(lot, 'width_ft') > 0);
    const width_of = (lot: Lot) => measure(lot, 'width_ft') || 70;
    const depth_of = (lot: Lot) => measure(lot, 'rear_setback_ft') || 30;
    const most = window.innerWidth < 640 ? 4 : 8;
    const count = Math.ceil(answer.lots.length / most);
    const each = Math.ceil(answer.lots.length / Math.max(count, 1));
    const rows = Array.from({length: count}, (_, row) =>
        answer.lots.slice(row * each, (row + 1) * each),
    );
    return (
        <figure class="street">
            {rows.map((row, r) => {
                const total = row.reduce((sum, lot) => sum + width_of(lot), 0);
                const deepest = Math.max(...answer.lots.map(depth_of));
                let at = 0;
                return (
                    <svg
                        key={r}
                        viewBox={`0 0 ${total} ${deepest + 64}`}
                        role="img"
                        aria-label={`Lots ${names_of(row)}; each is listed below`}
                    >
                        {row.map((lot) => {
                            const x = at;
                            const width = width_of(lot);
                            at += width;
                            const state = lot.chosen ? 'chosen' : lot.can_be_had ? 'free' : 'taken';
                            return (
                                <g
                                    key={lot.id}
                                    class={`parcel ${state} ${state === 'free' ? 'tap' : ''}`}
                                    onClick={() => {
                                        if (lot.can_be_had && !lot.chosen) take_lot(lot);
                                    }}
                                >
                                    <rect
                                        class="ground"
                                        x={x + 1}
                                        y={deepest - depth_of(lot) + 1}
                                        width={width - 2}
                                        height={depth_of(lot) + 50}
                                        rx="2"
                                    />
                                    {(lot.fits || !known) &&
                                        house > 0 &&
                                        house < width &&
                                        state !== 'taken' && (
                                            <rect
                                                class="house"
                                                x={x + (width - house) / 2}
                                                y={deepest + 1}
                                                width={house}
                                                height="36"
                                                rx="1.5"
                                            />
                                        )}
                                    <text
                                        class="lot-id"
                                        x={x + width / 2}
                                        y={deepest + 24}
                                        text-anchor="middle"
                                    >
                                        {lot.id}
                                    </text>
                                    <text
                                        class="lot-state"
                                        x={x + width / 2}
                                        y={deepest - 4}
                                        text-anchor="middle"
                                    >
                                        {lot.status === 'free'
                                            ? lot.fits
                                                ? ''
                                                : 'too small'
                                            : lot.status}
                                    </text>
                                </g>
                            );
                        })}
                        <rect class="road" x="0" y={deepest + 54} width={total} height="10" />
                    </svg>
                );
            })}
            <figcaption>
                Widths and depths behind the house as in the price book, in the order of its list;
                not a survey.
            </figcaption>
        </figure>
    );
}

function Fallen({list}: {list: {name: string; why: string}[]}) {
    if (list.length === 0) return null;
    return (
        <span class="row-note bites">
            would be left behind:{' '}
            {list.map((one) => `${brief(one.name)} (${brief(one.why)})`).join('; ')}
        </span>
    );
}

/// What the move comes to, whole: the home without what is left behind.
function Moving({move}: {move: Move | null}) {
    if (!move) return null;
    if (move.refusals) {
        return (
            <span class="effect refused">{move.refusals.map((one) => one.words).join('; ')}</span>
        );
    }
    return (
        <span class="effect">
            <span class="effect-month">
                {signed(move.per_month ?? '')}
                <small> a month</small>
            </span>
            <span class="effect-cash">{signed(move.price, short)} in price</span>
            <span class="effect-cash">{signed(move.cash_needed ?? '')} cash</span>
        </span>
    );
}

function LotRow({lot}: {lot: Lot}) {
    const can = lot.can_be_had || lot.chosen;
    return (
        <div class={`row ${lot.chosen ? 'on' : ''} ${can ? '' : 'fixed'}`}>
            <label class="row-label">
                <input
                    type="radio"
                    name="lot"
                    checked={lot.chosen}
                    disabled={!can}
                    onChange={() => {
                        if (!lot.chosen) take_lot(lot);
                    }}
                />
                <span class="row-name">
                    <span class="row-title">Lot {lot.id}</span>
                    <span class="row-note">
                        {[
                            grade_words[lot.grade],
                            ...lot.measures.map((one) => one.words),
                            ...(lot.flood_zone ? ['in the flood zone'] : []),
                        ].join(' · ')}
                    </span>
                    {lot.note && <span class="row-note">{lot.note}</span>}
                    {!lot.chosen && lot.can_be_had && <Fallen list={lot.falls_out} />}
                </span>
                <span class="row-money">
                    <span class="row-price">
                        {is_zero(lot.premium) ? 'no premium' : `premium ${short(lot.premium)}`}
                    </span>
                    {lot.move ? (
                        <Moving move={lot.move} />
                    ) : (
                        <span class="effect">
                            {lot.chosen
                                ? 'yours'
                                : lot.status !== 'free'
                                  ? lot.status
                                  : 'your plan does not fit'}
                        </span>
                    )}
                </span>
            </label>
        </div>
    );
}

function PlanCard({plan, answer}: {plan: Plan; answer: Site}) {
    return (
        <article class="option" aria-label={plan.name}>
            <h4 class="option-name">
                <Name of={plan.name} />
            </h4>
            <p class="option-text">
                {capital(plan.style)}, {plain(plan.square_feet)} sq ft, {plan.bedrooms} bedrooms,{' '}
                {plan.bathrooms} baths. From {short(plan.base_price)}. {plan.note}
            </p>
            {!plan.fits && (
                <p class="note">Does not fit lot {answer.lot}: choose another lot first.</p>
            )}
            <div class="rows" role="radiogroup" aria-label={`Elevation of the ${plan.name}`}>
                {plan.elevations.map((elevation) => {
                    const on = plan.chosen && elevation.id === answer.elevation;
                    return (
                        <div
                            key={elevation.id}
                            class={`row ${on ? 'on' : ''} ${plan.fits ? '' : 'fixed'}`}
                        >
                            <label class="row-label">
                                <input
                                    type="radio"
                                    name="plan"
                                    checked={on}
                                    disabled={!plan.fits}
                                    onChange={() => {
                                        if (!on) take_plan(plan, elevation);
                                    }}
                                />
                                <span class="row-name">
                                    <span class="row-title">
                                        <Name of={elevation.name} />
                                    </span>
                                    <span class="row-note">{elevation.note}</span>
                                    {elevation.move && <Fallen list={elevation.falls_out} />}
                                </span>
                                <span class="row-money">
                                    <span class="row-price">
                                        {is_zero(elevation.price)
                                            ? 'no extra cost'
                                            : short(elevation.price)}
                                    </span>
                                    {on ? (
                                        <span class="effect">yours</span>
                                    ) : (
                                        <Moving move={elevation.move} />
                                    )}
                                </span>
                            </label>
                        </div>
                    );
                })}
            </div>
        </article>
    );
}

export function SiteView() {
    const hand = tour.value!.scenario.terms.name;
    const {answer} = use_answer<Site>('site', answered.value, {scenario: hand});
    if (!answer) return <p class="waiting">Walking the street…</p>;
    return (
        <div class="site-page">
            <h2>Where it stands, and which home</h2>
            <p class="home-line">{answer.note}</p>
            <Street answer={answer} />
            <div class="two">
                <section class="group">
                    <h3>Lots</h3>
                    <p class="group-says">
                        The premium is part of the contract price. What moving there changes is
                        figured with {terms_words(answer.terms)}.
                    </p>
                    <div class="rows">
                        {answer.lots.map((lot) => (
                            <LotRow key={lot.id} lot={lot} />
                        ))}
                    </div>
                </section>
                <section class="group">
                    <h3>Plans and elevations</h3>
                    <p class="group-says">
                        What you have chosen goes along where it still applies.
                    </p>
                    {answer.plans.map((plan) => (
                        <PlanCard key={plan.id} plan={plan} answer={answer} />
                    ))}
                </section>
            </div>
            <Cautions all={answer.cautions} />
        </div>
    );
}
