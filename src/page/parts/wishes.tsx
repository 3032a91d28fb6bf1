// Which wishes fit within a month and the cash: the choice of the most worth, and why not the rest.
import type {Fit, FitHome, FitLeftOut, FitWish} from '../answers';
import type {Inquiry} from '../engine';
import {brief, dollars, is_zero, plain, signed} from '../figures';
import {without_means} from '../inquiry';
import {act, answered, buyer, move, set_ask, tour} from '../store';
import {wishes_of, with_choice} from '../wishes';
import {use_answer} from './asked';
import {Typed} from './typed_field';
import {estimate_words, terms_words} from './terms';
import {WishList} from './wish_list';
import {Name} from './name';

function named(wish: FitWish): string {
    return brief(wish.level ? `${wish.name}: ${wish.level}` : wish.name);
}

function Limits({monthly, cash}: {monthly: string; cash: string}) {
    const asks = buyer.value!.asks;
    return (
        <div class="means">
            <label class="field">
                <span>A month may come to</span>
                <Typed
                    label="A month may come to"
                    before="$"
                    value={monthly}
                    change={(value) => set_ask('fit_monthly', value)}
                />
            </label>
            <label class="field">
                <span>All the cash may come to</span>
                <Typed
                    label="All the cash may come to"
                    before="$"
                    value={cash}
                    change={(value) => set_ask('fit_cash', value)}
                />
            </label>
            <label class="tick-box">
                <input
                    type="checkbox"
                    checked={asks.fit_lots === 'yes'}
                    onChange={(event) =>
                        set_ask('fit_lots', event.currentTarget.checked ? 'yes' : '')
                    }
                />
                <span>On every free lot that the plan fits</span>
            </label>
        </div>
    );
}

/// What is over a limit, in words.
function over(monthly: string, cash: string): string {
    const parts = [];
    if (!is_zero(monthly)) parts.push(`${dollars(monthly)} a month`);
    if (!is_zero(cash)) parts.push(`${dollars(cash)} in cash`);
    return parts.join(' and ');
}

function why(left: FitLeftOut): string {
    if (left.reason === 'rule') return left.rule;
    if (left.reason === 'loan') return 'the loan could not be had';
    return `${over(left.over_monthly!, left.over_cash!)} too much`;
}

function LeftOut({home}: {home: FitHome}) {
    if (home.left_out.length === 0) return null;
    return (
        <section>
            <h4>Left out</h4>
            <ul class="fit-list">
                {home.left_out.map((left) => (
                    <li key={left.wish.id}>
                        <span class="row-title">{named(left.wish)}</span>
                        <span class="row-money">
                            {left.per_month && (
                                <span class="effect">
                                    <span class="effect-month">
                                        {signed(left.per_month)}
                                        <small> a month</small>
                                    </span>
                                    <span class="effect-cash">{signed(left.cash!)} cash</span>
                                </span>
                            )}
                        </span>
                        <span class="facts">
                            {why(left)}
                            {left.along.length > 0 && `; it needs ${left.along.join(', ')}`}
                            {left.instead_of.length > 0 &&
                                `; in place of ${left.instead_of.join(', ')}`}
                        </span>
                    </li>
                ))}
            </ul>
            {home.next && <p class="note">{next_words(home.next)}</p>}
        </section>
    );
}

function next_words(next: NonNullable<FitHome['next']>): string {
    const raise = over(next.raise_monthly, next.raise_cash);
    const words = `${named(next.wish)} would fit with ${raise} more`;
    if (!next.can_be_chosen) {
        return next.proven
            ? `${words}; within the limits no choice holds it.`
            : `${words}; the search found no choice within the limits that holds it.`;
    }
    const gained = next.gained.length > 0 ? `, and then ${next.gained.join(', ')} fits too` : '';
    return `${words}, or without ${next.give_up.join(', ')}${gained}.`;
}

/// How sure the choice is.
function proof(home: FitHome): string {
    return home.proven
        ? 'Proven: no other choice is worth more.'
        : `Best so far: no choice can be worth more than ${plain(home.most_worth)}, this one is worth ${plain(home.worth)}.`;
}

function put_in(home: FitHome): void {
    const one = buyer.value!;
    const names = [...home.chosen.map(named), ...home.needed.map((each) => each.name)];
    const what = `Put in: ${names.join(', ')}`;
    if (home.lot !== one.inquiry.lot) {
        const to = (inquiry: Inquiry) => ({...with_choice(inquiry, home), lot: home.lot});
        move(to, `${what}, on lot ${home.lot}`);
    } else {
        void act(with_choice(one.inquiry, home), {what, touch: null, remarks: []});
    }
}

function Chosen({home}: {home: FitHome}) {
    const scenario = home.scenario;
    return (
        <section>
            <h4>{home.fits ? 'What fits' : 'Nothing fits'}</h4>
            {!home.fits && (
                <p class="refused">
                    {home.barred ||
                        `The home with its must-haves alone is ${over(home.over_monthly, home.over_cash)} over.`}
                </p>
            )}
            <ul class="fit-list">
                {home.chosen.map((wish) => (
                    <li key={wish.id}>
                        <span class="row-title">{named(wish)}</span>
                        <span class="row-price">{dollars(wish.price)}</span>
                        {wish.must && <span class="facts">must have</span>}
                    </li>
                ))}
                {home.needed.map((one) => (
                    <li key={one.id}>
                        <span class="row-title">
                            <Name of={one.name} />
                        </span>
                        <span class="row-price">{dollars(one.price)}</span>
                        <span class="facts">needed by a wish</span>
                    </li>
                ))}
                {home.held.map((wish) => (
                    <li key={wish.id}>
                        <span class="row-title">{named(wish)}</span>
                        <span class="facts">in the home already</span>
                    </li>
                ))}
            </ul>
            {home.fits && home.chosen.length === 0 && (
                <p class="note">No wish fits within these limits: raise one of them.</p>
            )}
            {scenario?.available && (
                <p class="terms">
                    Then {dollars(home.price)}, {dollars(scenario.monthly.total)} a month,{' '}
                    {dollars(scenario.cash.needed)} in cash. {terms_words(scenario.terms)}.{' '}
                    {estimate_words(tour.value!.heading)}
                </p>
            )}
            {home.fits && <p class="facts">{proof(home)}</p>}
            {home.incentives_lost.length > 0 && (
                <p class="note">Not given on this lot: {home.incentives_lost.join(', ')}.</p>
            )}
            {home.fits && home.chosen.length > 0 && (
                <button class="step main-step" onClick={() => put_in(home)}>
                    Put these into the home
                </button>
            )}
        </section>
    );
}

export function Wishes() {
    const {inquiry, asks} = buyer.value!;
    const {scenario} = tour.value!;
    const monthly = asks.fit_monthly ?? (scenario.available ? scenario.monthly.total : '');
    const cash = asks.fit_cash ?? String(inquiry.cash ?? scenario.cash?.needed ?? '');
    const any = wishes_of(inquiry).length > 0;
    const lots = asks.fit_lots === 'yes';
    const {answer, problems} = use_answer<Fit>(
        'fit',
        any && monthly && cash ? without_means(answered.value) : null,
        {monthly, cash, scenario: scenario.terms.name, ...(lots ? {lots: 'yes'} : {})},
    );
    const one = answer?.scenarios[0];
    const home = one?.homes.find((each) => each.lot === one.best_lot) ?? one?.homes[0];
    return (
        <section class="group" aria-labelledby="wishes">
            <h3 id="wishes" tabIndex={-1}>
                Which wishes fit
            </h3>
            <p class="group-says">
                The dearest first. Of all that the price book lets stand together, the choice of the
                most worth within the limits.
            </p>
            <WishList />
            <Limits monthly={monthly} cash={cash} />
            {problems.map((each, i) => (
                <p key={i} class="wrong">
                    {each.found}; expected: {each.expected}
                </p>
            ))}
            {any && home && (
                <>
                    {lots && (
                        <p class="home-line">
                            {one!.homes.length} {one!.homes.length === 1 ? 'lot' : 'lots'} looked
                            at; the best is lot {home.lot}.
                        </p>
                    )}
                    <div class="two fit">
                        <Chosen home={home} />
                        <LeftOut home={home} />
                    </div>
                </>
            )}
        </section>
    );
}
