// Which wishes fit within a month and the cash: the choice of the most worth, and why not the rest.
import type {Fit, FitHome, FitLeftOut, FitWish} from '../answers';
import type {Inquiry} from '../engine';
import {brief, dollars, plain, signed, unless_zero} from '../figures';
import {without_means} from '../inquiry';
import {language, say} from '../language';
import {stays_open} from '../opened';
import {act, set_ask} from '../state/changing';
import {move} from '../state/moving';
import {answered, buyer, facing, tour} from '../state/signals';
import {wishes_of, with_choice} from '../wishes';
import {use_answer} from './asked';
import {PartFold} from './fold';
import {Typed} from './typed_field';
import {small} from './marks';
import {estimate_words, terms_words} from './terms';
import {WishList} from './wish_list';
import {Name} from './name';

import './wishes.css';

function named(wish: FitWish): string {
    const {name, level} = wish;
    return brief(level ? say.common.with_form({name, form: level}) : name);
}

/// While the buyer looks on, by name: the engine's own order goes by the ranks.
function in_sight<T>(list: T[], wish_of: (one: T) => FitWish): T[] {
    if (!facing.value) return list;
    const name = (one: T) => named(wish_of(one));
    return [...list].sort((a, b) => name(a).localeCompare(name(b), language.value));
}

function Limits({monthly, cash}: {monthly: string; cash: string}) {
    const asks = buyer.value!.asks;
    // One of them typed, the other stays as it is shown.
    const set = (limits: {monthly: string; cash: string}) => {
        set_ask('fit_monthly', limits.monthly);
        set_ask('fit_cash', limits.cash);
    };
    return (
        <div class="means">
            <label class="field">
                <span>{say.wishes.month_may_come_to}</span>
                <Typed
                    label={say.wishes.month_may_come_to}
                    before="$"
                    value={monthly}
                    change={(value) => set({monthly: value, cash})}
                />
            </label>
            <label class="field">
                <span>{say.wishes.cash_may_come_to}</span>
                <Typed
                    label={say.wishes.cash_may_come_to}
                    before="$"
                    value={cash}
                    change={(value) => set({monthly, cash: value})}
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
                <span>{say.wishes.every_lot}</span>
            </label>
        </div>
    );
}

/// What is over a limit, where it is.
function over(monthly: string, cash: string) {
    return {monthly: unless_zero(monthly), cash: unless_zero(cash)};
}

function why(left: FitLeftOut): string {
    if (left.reason === 'rule') return left.rule;
    if (left.reason === 'loan') return say.wishes.by_the_loan;
    return say.wishes.too_much(over(left.over_monthly!, left.over_cash!));
}

function LeftOut({home}: {home: FitHome}) {
    if (home.left_out.length === 0) return null;
    return (
        <section>
            <h4>{say.wishes.left_out}</h4>
            <ul class="fit-list">
                {in_sight(home.left_out, (left) => left.wish).map((left) => (
                    <li key={left.wish.id}>
                        <span class="row-title">{named(left.wish)}</span>
                        <span class="row-money">
                            {left.per_month && (
                                <span class="effect">
                                    <span class="effect-month">
                                        {say.common.monthly_small({
                                            amount: signed(left.per_month),
                                            small,
                                        })}
                                    </span>
                                    <span class="effect-cash">
                                        {say.common.cash({amount: signed(left.cash!)})}
                                    </span>
                                </span>
                            )}
                        </span>
                        <span class="facts">
                            {say.wishes.left_out_why({
                                why: why(left),
                                needs: left.along.join(', '),
                                in_place_of: left.instead_of.join(', '),
                            })}
                        </span>
                    </li>
                ))}
            </ul>
            {home.next && <p class="note">{next_words(home.next)}</p>}
        </section>
    );
}

function next_words(next: NonNullable<FitHome['next']>): string {
    const one = {name: named(next.wish), raise: over(next.raise_monthly, next.raise_cash)};
    if (!next.can_be_chosen)
        return next.proven ? say.wishes.next_never(one) : say.wishes.next_not_found(one);
    return say.wishes.next_or({
        ...one,
        give_up: next.give_up.join(', '),
        gained: next.gained.join(', '),
    });
}

/// How sure the choice is.
function proof(home: FitHome): string {
    return home.proven
        ? say.wishes.proven
        : say.wishes.best_so_far({most: plain(home.most_worth), worth: plain(home.worth)});
}

function put_in(home: FitHome): void {
    const one = buyer.value!;
    const all = [...home.chosen.map(named), ...home.needed.map((each) => each.name)];
    const names = all.join(', ');
    if (home.lot !== one.inquiry.lot) {
        const to = (inquiry: Inquiry) => ({...with_choice(inquiry, home), lot: home.lot});
        move(to, say.wishes.were_put_in_on({names, lot: home.lot}));
    } else {
        const what = say.wishes.were_put_in({names});
        void act(with_choice(one.inquiry, home), {what, touch: null, remarks: []});
    }
}

function Chosen({home}: {home: FitHome}) {
    const scenario = home.scenario;
    return (
        <section>
            <h4>{home.fits ? say.wishes.fits : say.wishes.nothing_fits}</h4>
            {!home.fits && (
                <p class="refused">
                    {home.barred ||
                        say.wishes.over_already(over(home.over_monthly, home.over_cash))}
                </p>
            )}
            <ul class="fit-list">
                {in_sight(home.chosen, (wish) => wish).map((wish) => (
                    <li key={wish.id}>
                        <span class="row-title">{named(wish)}</span>
                        <span class="row-price">{dollars(wish.price)}</span>
                        {wish.must && <span class="facts">{say.common.must_have}</span>}
                    </li>
                ))}
                {home.needed.map((one) => (
                    <li key={one.id}>
                        <span class="row-title">
                            <Name of={one.name} />
                        </span>
                        <span class="row-price">{dollars(one.price)}</span>
                        <span class="facts">{say.wishes.needed}</span>
                    </li>
                ))}
                {in_sight(home.held, (wish) => wish).map((wish) => (
                    <li key={wish.id}>
                        <span class="row-title">{named(wish)}</span>
                        <span class="facts">{say.wishes.held}</span>
                    </li>
                ))}
            </ul>
            {home.fits && home.chosen.length === 0 && <p class="note">{say.wishes.none_fits}</p>}
            {scenario?.available && (
                <p class="terms">
                    {say.wishes.then({
                        price: dollars(home.price),
                        month: dollars(scenario.monthly.total),
                        cash: dollars(scenario.cash.needed),
                        terms: terms_words(scenario.terms),
                        estimate: estimate_words(tour.value!.heading),
                    })}
                </p>
            )}
            {home.fits && (home.proven || !facing.value) && <p class="facts">{proof(home)}</p>}
            {home.incentives_lost.length > 0 && (
                <p class="note">
                    {say.wishes.incentives_lost({names: home.incentives_lost.join(', ')})}
                </p>
            )}
            {home.fits && home.chosen.length > 0 && (
                <button class="step main-step" onClick={() => put_in(home)}>
                    {say.wishes.put_in}
                </button>
            )}
        </section>
    );
}

export function Wishes() {
    return (
        <PartFold
            view="budget"
            part="wishes"
            title={say.wishes.title}
            says={say.afford.parts.wishes}
        >
            <WhichFit />
        </PartFold>
    );
}

/// The limits at which a wish fits, where within the home's own month and cash none does.
function raised(answer: Fit | null) {
    const home = answer?.scenarios[0]?.homes[0];
    return home?.fits && home.chosen.length === 0 ? home.next : null;
}

/// Beneath what fits: it is asked more often than the list is changed.
function TheList() {
    return (
        <>
            <p class="home-line">{say.wishes.says}</p>
            <WishList />
        </>
    );
}

function WhichFit() {
    const {inquiry, asks} = buyer.value!;
    const {scenario} = tour.value!;
    const any = wishes_of(inquiry).length > 0;
    const lots = asks.fit_lots === 'yes';
    const own = {
        monthly: scenario.available ? scenario.monthly.total : '',
        cash: String(inquiry.cash ?? scenario.cash?.needed ?? ''),
    };
    const typed = asks.fit_monthly !== undefined || asks.fit_cash !== undefined;
    const {answer: first, problems: at_first} = use_answer<Fit>(
        'fit',
        any && !typed && own.monthly && own.cash ? without_means(answered.value) : null,
        {...own, scenario: scenario.terms.name},
    );
    const raise = typed ? null : raised(first);
    const monthly = asks.fit_monthly ?? raise?.limit_monthly ?? own.monthly;
    const cash = asks.fit_cash ?? raise?.limit_cash ?? own.cash;
    const {answer, problems} = use_answer<Fit>(
        'fit',
        any && monthly && cash && (typed || first || at_first.length > 0)
            ? without_means(answered.value)
            : null,
        {monthly, cash, scenario: scenario.terms.name, ...(lots ? {lots: 'yes'} : {})},
    );
    const one = answer?.scenarios[0];
    const home = one?.homes.find((each) => each.lot === one.best_lot) ?? one?.homes[0];
    return (
        <>
            {!any && <TheList />}
            <Limits monthly={monthly} cash={cash} />
            {raise && (
                <p class="note">
                    {say.wishes.raised({
                        month: dollars(own.monthly),
                        cash: dollars(own.cash),
                        name: named(raise.wish),
                        raise: over(raise.raise_monthly, raise.raise_cash),
                    })}
                </p>
            )}
            {problems.map((each, i) => (
                <p key={i} class="wrong">
                    {say.common.wrong(each)}
                </p>
            ))}
            {any && home && (
                <>
                    {lots && (
                        <p class="home-line">
                            {say.wishes.lots({count: one!.homes.length, best: home.lot})}
                        </p>
                    )}
                    <div class="two fit">
                        <Chosen home={home} />
                        <LeftOut home={home} />
                    </div>
                </>
            )}
            {any && (
                <details class="more" {...stays_open('wishes:list')}>
                    <summary>{say.wishes.change_them}</summary>
                    <TheList />
                </details>
            )}
        </>
    );
}
