// The highest price that the buyer's means allow, and what stands in the way of a higher one.
import type {Afford as Answer, AffordScenario, Site} from '../answers';
import {cautions_beside} from '../answers';
import type {Options} from '../engine';
import {brief, dollars, rate_percent, unless_zero} from '../figures';
import {without_means} from '../inquiry';
import {say} from '../language';
import {loan_name} from '../state/books';
import {set_ask} from '../state/changing';
import {move} from '../state/moving';
import {answered, buyer, tour} from '../state/signals';
import {ask_by_scenario, use_answer} from './asked';
import {Cautions} from './cautions';
import {PartFold} from './fold';
import {IncomeMoves} from './income_moves';
import {Rooms, holds_no_ratio, limits_words} from './limits';
import {small, strong} from './marks';
import {Typed} from './typed_field';
import {Means} from './means';
import {Reach} from './reach';
import {estimate_words, points_words, terms_at_a_glance} from './terms';
import {Name} from './name';
import {Explained} from './term';
import './afford.css';

/// The options of a question that are set.
export function options_set(asks: Record<string, string>, names: string[]): Options {
    return Object.fromEntries(names.filter((name) => asks[name]).map((name) => [name, asks[name]]));
}

/// The limit that binds.
function Binds({one}: {one: AffordScenario}) {
    if (one.binds.length === 0) return null;
    const why = one.refusals.map((each) => each.words).join('; ');
    return <p>{say.afford.binds({limits: limits_words(one.binds, one.ratios), why, strong})}</p>;
}

function step_words(step: NonNullable<AffordScenario['step']>): string {
    if (step.refusals.length > 0) {
        const why = step.refusals.map((each) => each.words).join('; ');
        return say.afford.step_refused({price: dollars(step.price), why});
    }
    return say.afford.step({
        price: dollars(step.price),
        cash: unless_zero(step.more_cash),
        income: unless_zero(step.more_income),
        after_tax: unless_zero(step.more_after_tax),
        less_debts: step.debts_suffice ? dollars(step.less_debts) : null,
    });
}

function Step({one}: {one: AffordScenario}) {
    if (!one.step) return null;
    return <p class="further">{say.afford.a_step_further({step: step_words(one.step), strong})}</p>;
}

/// What stands behind the limit that binds, and how far a step goes.
function Behind({one}: {one: AffordScenario}) {
    const lower = one.step?.refusals.length === 0 ? one.step.lower_rate : null;
    return (
        <>
            {one.next_price && (
                <p>
                    {say.afford.behind({
                        price: dollars(one.next_price),
                        limits: limits_words(one.next_binds, one.ratios),
                    })}
                </p>
            )}
            {lower && (
                <p>
                    {say.afford.instead({
                        rate: rate_percent(lower.rate),
                        points: points_words(lower.points),
                    })}
                </p>
            )}
            {one.step && (
                <label class="field">
                    <span>{say.afford.step_in_price}</span>
                    <Typed
                        label={say.afford.step_in_price}
                        before="$"
                        value={buyer.value!.asks.step ?? '5000'}
                        change={(value) => set_ask('step', value)}
                    />
                </label>
            )}
        </>
    );
}

/// Homes of the price book that are within it; a touch takes one over.
function Homes({one}: {one: AffordScenario}) {
    const {answer: site} = use_answer<Site>('site', without_means(answered.value));
    const name_of = (id: string, elevation: string): [string, string] => {
        const plan = site?.plans.find((each) => each.id === id);
        const found = plan?.elevations.find((each) => each.id === elevation);
        return [brief(plan?.name ?? id), brief(found?.name ?? elevation)];
    };
    return (
        <section class="within-reach">
            <h4>{say.afford.homes}</h4>
            <p class="group-says">{say.afford.homes_say}</p>
            {one.plans.length === 0 && <p>{say.afford.no_home}</p>}
            <ul class="choices">
                {one.plans.map((each) => {
                    const [plan, elevation] = name_of(each.plan, each.elevation);
                    return (
                        <li key={each.plan}>
                            <button
                                class="row-button"
                                onClick={() =>
                                    move(
                                        (inquiry) => ({
                                            ...inquiry,
                                            plan: each.plan,
                                            elevation: each.elevation,
                                            lot: each.lot,
                                        }),
                                        say.common.home_taken({plan, elevation, lot: each.lot}),
                                    )
                                }
                            >
                                <span class="home-row">
                                    <span class="row-title">{plan}</span>
                                    <span class="row-price">
                                        {say.common.from({amount: dollars(each.price), small})}
                                    </span>
                                </span>
                                <span class="faint">
                                    {say.afford.home({
                                        elevation,
                                        lot: each.lot,
                                        homes: each.homes,
                                    })}
                                </span>
                            </button>
                        </li>
                    );
                })}
            </ul>
        </section>
    );
}

function Ground({one, automated}: {one: AffordScenario; automated: boolean}) {
    return (
        <>
            {one.residual_income && <p class="facts">{one.residual_income.words}</p>}
            {one.ratios?.automated && <p class="facts">{one.ratios.automated}</p>}
            {one.ratios?.passed_by && <p class="facts">{one.ratios.passed_by}</p>}
            {one.ratios && (
                <p class="facts">
                    {say.afford.ratios({
                        status: say.codes.grounds[one.ratios.status],
                        source: one.ratios.source,
                        automated: automated && !one.ratios.automated,
                    })}
                </p>
            )}
            {one.residual_income && (
                <p class="facts">
                    {say.afford.residual_income({
                        status: say.codes.grounds[one.residual_income.status],
                        source: one.residual_income.source,
                    })}
                </p>
            )}
        </>
    );
}

/// The way to pay that is looked at, limit by limit.
function Looked({one, automated}: {one: AffordScenario; automated: boolean}) {
    return (
        <div class="two looked">
            <section class="allowed">
                <h4>
                    <Name of={loan_name(one.terms.name)} />
                </h4>
                {one.price && one.scenario ? (
                    <>
                        <p>
                            {say.afford.up_to({
                                price: <span class="big">{dollars(one.price)}</span>,
                                no_ratio: holds_no_ratio(one),
                            })}
                        </p>
                        <p class="terms">
                            <Explained
                                text={say.afford.at_that_price({
                                    month: dollars(one.scenario.monthly.total),
                                    cash: dollars(one.scenario.cash.needed),
                                    terms: terms_at_a_glance(one.terms),
                                    estimate: estimate_words(tour.value!.heading),
                                })}
                                terms={['cash_needed', 'apr']}
                            />
                        </p>
                    </>
                ) : (
                    <p>
                        {say.afford.no_price({
                            why: one.refusals.map((each) => each.words),
                            least: one.rooms.length > 0 ? dollars(one.least_price) : null,
                            refused: (words) => <strong class="refused">{words}</strong>,
                        })}
                    </p>
                )}
                <Binds one={one} />
                <Step one={one} />
                {one.rooms.length > 0 && (
                    <details class="more by-limit" open={!one.price}>
                        <summary>{say.afford.by_limit}</summary>
                        <Rooms one={one} />
                        <Behind one={one} />
                        <Ground one={one} automated={automated} />
                        {one.terms.fine_print && <p class="note">{one.terms.fine_print}</p>}
                    </details>
                )}
            </section>
            <Homes one={one} />
        </div>
    );
}

export function Afford() {
    return (
        <PartFold
            view="budget"
            part="afford"
            title={say.afford.title}
            says={say.afford.parts.afford}
        >
            <HowMuchHome />
        </PartFold>
    );
}

function HowMuchHome() {
    const {inquiry, asks} = buyer.value!;
    // Asked beside the tour, not after it: the figures follow a field sooner.
    const means = inquiry.income !== undefined || inquiry.cash !== undefined;
    const {answer: last, problems} = use_answer<Answer>(
        'afford',
        means ? inquiry : null,
        options_set(asks, ['reserves', 'step', 'automated']),
        ask_by_scenario,
    );
    const answer = means ? last : null;
    const {contract_price: home, scenario, cautions} = tour.value!;
    const hand = scenario.terms.name;
    const looked = answer?.scenarios.find((one) => one.terms.name === hand);
    return (
        <>
            <Means />
            {!means && <p class="note">{say.afford.no_means}</p>}
            {problems
                .filter((one) => !one.path)
                .map((one, i) => (
                    <p key={i} class="wrong">
                        {say.common.wrong(one)}
                    </p>
                ))}
            {looked && <Looked one={looked} automated={answer!.automated} />}
            {answer && (
                <details class="more each-loan">
                    <summary>{say.afford.each_loan}</summary>
                    <Reach answer={answer} home={home} hand={hand} />
                </details>
            )}
            <IncomeMoves scenario={hand} />
            {answer && <Cautions all={cautions_beside(answer.cautions, cautions)} />}
        </>
    );
}
