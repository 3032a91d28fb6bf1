// The highest price that the buyer's means allow, and what stands in the way of a higher one.
import type {Afford as Answer, AffordScenario, Site} from '../answers';
import {cautions_beside} from '../answers';
import type {Options} from '../engine';
import {brief, dollars, is_zero, percent} from '../figures';
import {without_means} from '../inquiry';
import {answered, buyer, move, set_ask, tour} from '../store';
import {ask_by_scenario, use_answer} from './asked';
import {Cautions} from './cautions';
import {IncomeMoves} from './income_moves';
import {Rooms, holds_no_ratio, limits_words} from './limits';
import {Typed} from './typed_field';
import {Means} from './means';
import {Reach} from './reach';
import {estimate_words, minus, terms_words} from './terms';
import {Name} from './name';

/// The options of a question that are set.
export function options_set(asks: Record<string, string>, names: string[]): Options {
    return Object.fromEntries(names.filter((name) => asks[name]).map((name) => [name, asks[name]]));
}

/// The limit that binds, and where the one behind it stands.
function Binds({one}: {one: AffordScenario}) {
    if (one.binds.length === 0) return null;
    const why = one.refusals.map((each) => each.words).join('; ');
    return (
        <p>
            <strong>What binds:</strong> {limits_words(one.binds, one.ratios)}
            {why && ` (${why})`}.{' '}
            {one.next_price &&
                `Without it, up to ${dollars(one.next_price)}` +
                    (one.next_binds.length > 0
                        ? `; there ${limits_words(one.next_binds, one.ratios)} binds.`
                        : '.')}
        </p>
    );
}

function step_words(step: NonNullable<AffordScenario['step']>): string {
    if (step.refusals.length > 0) {
        const why = step.refusals.map((each) => each.words).join('; ');
        return `A home of ${dollars(step.price)} is not to be had so: ${why}.`;
    }
    const parts: string[] = [];
    if (!is_zero(step.more_cash)) parts.push(`${dollars(step.more_cash)} more cash`);
    const or_debts = step.debts_suffice ? `, or ${dollars(step.less_debts)} less in debts` : '';
    const after_tax = !is_zero(step.more_after_tax);
    if (!is_zero(step.more_income)) {
        parts.push(`${dollars(step.more_income)} more income a month${after_tax ? '' : or_debts}`);
    }
    if (after_tax) {
        parts.push(`${dollars(step.more_after_tax)} more a month after taxes${or_debts}`);
    }
    if (parts.length === 0) return `A home of ${dollars(step.price)} takes nothing more.`;
    const lower = step.lower_rate;
    const instead = lower
        ? ` Instead of all that a note rate of ${percent(lower.rate)} at ${minus(lower.points)} points would do.`
        : '';
    return `A home of ${dollars(step.price)} takes ${parts.join(', and ')}.${instead}`;
}

function Step({one}: {one: AffordScenario}) {
    if (!one.step) return null;
    return (
        <div class="further">
            <p>
                <strong>A step further:</strong> {step_words(one.step)}
            </p>
            <label class="field">
                <span>Step in price</span>
                <Typed
                    label="Step in price"
                    before="$"
                    value={buyer.value!.asks.step ?? '5000'}
                    change={(value) => set_ask('step', value)}
                />
            </label>
        </div>
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
            <h4>Homes within it</h4>
            <p class="group-says">
                Without options, on free lots. A touch takes one over; what is chosen goes along
                where it applies.
            </p>
            {one.plans.length === 0 && <p>No home of the price book.</p>}
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
                                        `Plan ${plan}, elevation ${elevation}, lot ${each.lot}`,
                                    )
                                }
                            >
                                <span class="home-row">
                                    <span class="row-title">{plan}</span>
                                    <span class="row-price">
                                        <small>from </small>
                                        {dollars(each.price)}
                                    </span>
                                </span>
                                <span class="faint">
                                    elevation {elevation} on lot {each.lot}
                                    {each.homes > 1 &&
                                        `; ${each.homes} combinations of elevation and lot`}
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
                    Ratios {automated && !one.ratios.automated && 'of automated underwriting, '}
                    {one.ratios.status}: {one.ratios.source}.
                </p>
            )}
            {one.residual_income && (
                <p class="facts">
                    Residual income {one.residual_income.status}: {one.residual_income.source}.
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
                    <Name of={one.terms.name} />
                </h4>
                {one.price && one.scenario ? (
                    <>
                        <p>
                            Up to <span class="big">{dollars(one.price)}</span>
                            {holds_no_ratio(one) && ', the income held to no ratio'}
                        </p>
                        <p class="terms">
                            {dollars(one.scenario.monthly.total)} a month and{' '}
                            {dollars(one.scenario.cash.needed)} of cash there.{' '}
                            {terms_words(one.terms)}. {estimate_words(tour.value!.heading)}
                        </p>
                    </>
                ) : (
                    <p>
                        <strong class="refused">No price fits.</strong>{' '}
                        {one.refusals.map((each) => `${each.words}. `)}
                        {one.rooms.length > 0 &&
                            `At ${dollars(one.least_price)}, the least of the price book, it would be:`}
                    </p>
                )}
                <Rooms one={one} />
                <Binds one={one} />
                <Step one={one} />
                <Ground one={one} automated={automated} />
                {one.terms.fine_print && <p class="note">{one.terms.fine_print}</p>}
            </section>
            <Homes one={one} />
        </div>
    );
}

export function Afford() {
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
        <section class="group" aria-labelledby="afford">
            <h3 id="afford" tabIndex={-1}>
                How much home
            </h3>
            <Means />
            {!means && (
                <p class="note">
                    Type an income or the cash there is, and the home that they allow stands here.
                </p>
            )}
            {problems
                .filter((one) => !one.path)
                .map((one, i) => (
                    <p key={i} class="wrong">
                        {one.found}; expected: {one.expected}
                    </p>
                ))}
            {answer && <Reach answer={answer} home={home} hand={hand} />}
            {looked && <Looked one={looked} automated={answer!.automated} />}
            <IncomeMoves scenario={hand} />
            {answer && <Cautions all={cautions_beside(answer.cautions, cautions)} />}
        </section>
    );
}
