// The lots in a row along the street, as wide as they are, and the plans that fit them.
import type {Elevation, Lot, Move, Plan, Site} from '../answers';
import {brief, is_zero, plain, short, signed, size} from '../figures';
import {say} from '../language';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {Look} from '../parts/look';
import {Name} from '../parts/name';
import {Explained} from '../parts/term';
import {small} from '../parts/marks';
import {terms_words} from '../parts/terms';
import {answered, move, tour} from '../store';

function measure(lot: {measures: {name: string; value: string}[]}, name: string): number {
    return size(lot.measures.find((one) => one.name === name)?.value);
}

function names_of(lots: Lot[]): string {
    return lots.map((lot) => lot.id).join(', ');
}

function take_lot(lot: Lot): void {
    move((inquiry) => ({...inquiry, lot: lot.id}), say.common.lot({lot: lot.id}), lot);
}

function take_plan(plan: Plan, elevation: Elevation): void {
    const what = say.site.plan_taken({plan: plan.name, elevation: elevation.name});
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
                        aria-label={say.site.street({lots: names_of(row)})}
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
                                                : say.site.too_small
                                            : say.site.states[lot.status]}
                                    </text>
                                </g>
                            );
                        })}
                        <rect class="road" x="0" y={deepest + 54} width={total} height="10" />
                    </svg>
                );
            })}
            <figcaption>{say.site.street_says}</figcaption>
        </figure>
    );
}

function Fallen({list}: {list: {name: string; why: string}[]}) {
    if (list.length === 0) return null;
    return (
        <span class="row-note bites">
            {say.site.left_behind({
                names: list
                    .map((one) => say.common.because({name: brief(one.name), why: brief(one.why)}))
                    .join('; '),
            })}
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
                {say.common.monthly_small({amount: signed(move.per_month ?? ''), small})}
            </span>
            <span class="effect-cash">
                {say.common.in_price({amount: signed(move.price, short)})}
            </span>
            <span class="effect-cash">
                {say.common.cash({amount: signed(move.cash_needed ?? '')})}
            </span>
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
                    <span class="row-title">{say.common.lot({lot: lot.id})}</span>
                    <span class="row-note">
                        {[
                            say.codes.grades[lot.grade],
                            ...lot.measures.map((one) => one.words),
                            ...(lot.flood_zone ? [say.site.flood_zone] : []),
                        ].join(' · ')}
                    </span>
                    {lot.note && <span class="row-note">{lot.note}</span>}
                    {!lot.chosen && lot.can_be_had && <Fallen list={lot.falls_out} />}
                </span>
                <span class="row-money">
                    <span class="row-price">
                        {is_zero(lot.premium)
                            ? say.site.no_premium
                            : say.site.premium({amount: short(lot.premium)})}
                    </span>
                    {lot.move ? (
                        <Moving move={lot.move} />
                    ) : (
                        <span class="effect">
                            {lot.chosen
                                ? say.common.yours
                                : lot.status !== 'free'
                                  ? say.site.states[lot.status]
                                  : say.site.plan_does_not_fit}
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
                {say.site.plan({
                    style: plan.style,
                    square_feet: plain(plan.square_feet),
                    bedrooms: plan.bedrooms,
                    baths: plan.bathrooms,
                    price: short(plan.base_price),
                    note: plan.note,
                })}
            </p>
            {!plan.fits && <p class="note">{say.site.does_not_fit({lot: answer.lot})}</p>}
            <div
                class="rows elevations"
                role="radiogroup"
                aria-label={say.site.elevations_of({plan: plan.name})}
            >
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
                                <Look of={elevation} large />
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
                                            ? say.common.no_extra_cost
                                            : short(elevation.price)}
                                    </span>
                                    {on ? (
                                        <span class="effect">{say.common.yours}</span>
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
    if (!answer) return <p class="waiting">{say.site.walking}</p>;
    return (
        <div class="site-page">
            <h2>{say.site.title}</h2>
            <p class="home-line">{answer.note}</p>
            <Street answer={answer} />
            <div class="two">
                <section class="group">
                    <h3>{say.site.lots}</h3>
                    <p class="group-says">
                        <Explained
                            text={say.site.lots_say({terms: terms_words(answer.terms)})}
                            terms={['lot_premium', 'contract_price', 'apr']}
                        />
                    </p>
                    <div class="rows">
                        {answer.lots.map((lot) => (
                            <LotRow key={lot.id} lot={lot} />
                        ))}
                    </div>
                </section>
                <section class="group">
                    <h3>
                        <Explained text={say.site.plans} terms={['plan', 'elevation']} />
                    </h3>
                    <p class="group-says">{say.site.plans_say}</p>
                    {answer.plans.map((plan) => (
                        <PlanCard key={plan.id} plan={plan} answer={answer} />
                    ))}
                </section>
            </div>
            <Cautions all={answer.cautions} />
        </div>
    );
}
