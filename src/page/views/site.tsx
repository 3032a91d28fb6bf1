// The lots on their map and in a list, and the plans that fit them.

import type {Elevation, Lot, Move, Plan, Site} from '../answers';
import {brief, is_zero, plain, short, signed} from '../figures';
import {say} from '../language';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {Look, room_for} from '../parts/look';
import {Name} from '../parts/name';
import {OfficeNote} from '../parts/office_note';
import {Explained} from '../parts/term';
import {small} from '../parts/marks';
import {SiteMap} from '../parts/site_map';
import {terms_at_a_glance} from '../parts/terms';
import {opened, set_open} from '../opened';
import {desk_alone} from '../state/asking';
import {move} from '../state/moving';
import {answered, tour} from '../state/signals';

function take_lot(lot: Lot): void {
    move((inquiry) => ({...inquiry, lot: lot.id}), say.common.lot({lot: lot.id}), lot);
}

function take_plan(plan: Plan, elevation: Elevation): void {
    const what = say.site.plan_taken({plan: plan.name, elevation: elevation.name});
    move((inquiry) => ({...inquiry, plan: plan.id, elevation: elevation.id}), what, elevation);
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

/// How the ground falls, how large it is, and whether it can be under water.
function ground_of(lot: Lot): string {
    return [
        say.codes.grades[lot.grade],
        ...lot.measures.map((one) => one.words),
        ...(lot.flood_zone ? [say.site.flood_zone] : []),
    ].join(' · ');
}

function premium_of(lot: Lot): string {
    return is_zero(lot.premium)
        ? say.site.no_premium
        : say.site.premium({amount: short(lot.premium)});
}

/// Why a lot cannot be taken, or that it is the one in hand.
function standing_of(lot: Lot): string {
    if (lot.chosen) return say.common.yours;
    return lot.status !== 'free' ? say.site.states[lot.status] : say.site.plan_does_not_fit;
}

/// The lot that is looked at on the map: all that tells whether to take it.
function LotCard({lot}: {lot: Lot}) {
    return (
        <section class="lot-card" aria-live="polite" aria-label={say.common.lot({lot: lot.id})}>
            <h3 class="lot-card-name">{say.common.lot({lot: lot.id})}</h3>
            <p class="lot-card-ground">{ground_of(lot)}</p>
            {lot.note && <p class="lot-card-note">{lot.note}</p>}
            <OfficeNote of={lot} />
            <p class="lot-card-premium">{premium_of(lot)}</p>
            {lot.move ? <Moving move={lot.move} /> : <p class="effect">{standing_of(lot)}</p>}
            {lot.move && <Fallen list={lot.falls_out} />}
            {lot.can_be_had && !lot.chosen && (
                <button class="main-button" onClick={() => take_lot(lot)}>
                    {say.site.take}
                </button>
            )}
        </section>
    );
}

/// The map, with the lot that was touched last beside it, or the one in hand.
function Mapped({answer}: {answer: Site}) {
    const touched = answer.lots.find((one) => opened.value.has(`lot:${one.id}`));
    const lot = touched ?? answer.lots.find((one) => one.id === answer.lot);
    const touch = (id: string) => {
        if (touched) set_open(`lot:${touched.id}`, false);
        set_open(`lot:${id}`, true);
    };
    if (!answer.map) return null;
    return (
        <div class="mapped">
            <SiteMap svg={answer.map.svg} looked={lot?.id ?? ''} look={touch} />
            {lot && <LotCard lot={lot} />}
        </div>
    );
}

/// `note`: with its measures and what the book remarks on it, where no map tells them.
function LotRow({lot, note}: {lot: Lot; note: boolean}) {
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
                        {note ? ground_of(lot) : say.codes.grades[lot.grade]}
                    </span>
                    {note && lot.note && <span class="row-note">{lot.note}</span>}
                    {note && <OfficeNote of={lot} />}
                    {!lot.chosen && lot.can_be_had && <Fallen list={lot.falls_out} />}
                </span>
                <span class="row-money">
                    <span class="row-price">{premium_of(lot)}</span>
                    {lot.move ? (
                        <Moving move={lot.move} />
                    ) : (
                        <span class="effect">{standing_of(lot)}</span>
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
                class={`rows elevations ${room_for(plan.elevations)}`}
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
    const {answer} = use_answer<Site>('site', answered.value, {
        scenario: hand,
        ...desk_alone(),
    });
    if (!answer) return <p class="waiting">{say.site.walking}</p>;
    return (
        <div class="site-page">
            <h2>{say.site.title}</h2>
            <p class="home-line">{answer.note}</p>
            <Mapped answer={answer} />
            <div class="two">
                <section class="group">
                    <h3>{say.site.lots}</h3>
                    <p class="group-says">
                        <Explained
                            text={say.site.lots_say({terms: terms_at_a_glance(answer.terms)})}
                            terms={['lot_premium', 'contract_price', 'apr']}
                        />
                    </p>
                    <div class="rows">
                        {answer.lots.map((lot) => (
                            <LotRow key={lot.id} lot={lot} note={answer.map === null} />
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
