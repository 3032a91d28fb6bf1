// The bar that is always in sight: price, month, cash, and what the last touch changed.
import {brief, closing_name, dollars, signed, unsigned} from '../figures';
import {say} from '../language';
import {shown_name} from '../loan_names';
import {busy, buyer, change, problems, redo, take_in_hand, tour, undo} from '../store';
import {marked} from './marks';
import {Explained, Term} from './term';
import {estimate_words, terms_words} from './terms';

/// The terms that stand beside the monthly figure.
function Terms() {
    const {heading, scenario} = tour.value!;
    const {terms} = scenario;
    return (
        <p class="terms">
            <Explained
                text={say.terms.of_loan({
                    loan: terms.program_name,
                    terms: terms_words(terms),
                    estimate: estimate_words(heading),
                })}
                terms={['points', 'apr']}
            />
        </p>
    );
}

function told(change: string | undefined): string | null {
    return change === undefined ? null : signed(change);
}

function Last() {
    const last = change.value;
    if (!last) {
        return (
            <p class="last" aria-live="polite" tabIndex={0}>
                {say.frame.untouched}
            </p>
        );
    }
    const touch = last.touch;
    return (
        <p class="last" aria-live="polite" tabIndex={0}>
            <strong>{last.what}</strong>
            {touch && (
                <span class="last-figures">
                    {say.frame.changed({
                        month: told(touch.per_month),
                        price: signed(touch.price),
                        cash: told(touch.cash_needed),
                        at_closing:
                            touch.cash_needed !== undefined &&
                            touch.cash_to_close !== touch.cash_needed
                                ? signed(touch.cash_to_close ?? '')
                                : null,
                        roomy: marked('roomiest'),
                    })}
                </span>
            )}
            {last.remarks.length > 0 && (
                <span class="last-remarks"> {last.remarks.join('; ')}</span>
            )}
        </p>
    );
}

export function Bar() {
    const answer = tour.value;
    const one = buyer.value;
    if (!answer || !one) return null;
    const scenario = answer.scenario;
    const stale = problems.value.length > 0 ? 'stale' : '';
    return (
        <footer class={`bar ${stale}`} aria-label={say.frame.bar_label} aria-busy={busy.value}>
            <dl class="figures">
                <div class="figure price">
                    <dt>
                        <Term of="contract_price">{say.common.contract_price}</Term>
                    </dt>
                    <dd data-figure="contract_price">{dollars(answer.contract_price)}</dd>
                </div>
                <div class="figure month">
                    <dt>
                        <Term of="monthly_payment">{say.common.a_month}</Term>
                    </dt>
                    <dd data-figure="monthly.total">
                        {scenario.available
                            ? dollars(scenario.monthly.total)
                            : say.common.not_to_be_had}
                    </dd>
                </div>
                <div class="figure cash">
                    <dt>
                        <Term of="cash_to_close">
                            {closing_name(scenario.available ? scenario.cash.to_close : null)}
                        </Term>
                    </dt>
                    <dd data-figure="cash.to_close">
                        {scenario.available ? unsigned(scenario.cash.to_close) : '–'}
                    </dd>
                </div>
            </dl>
            <div class="hand">
                <label class="select">
                    <span class="sr">{say.frame.in_hand}</span>
                    <select
                        value={scenario.terms.name}
                        onChange={(event) => take_in_hand(event.currentTarget.value)}
                    >
                        {(one.inquiry.scenarios ?? []).map((each: any) => (
                            <option key={each.name} value={each.name}>
                                {brief(shown_name(each.name, each))}
                            </option>
                        ))}
                    </select>
                </label>
                {scenario.available ? (
                    <Terms />
                ) : (
                    <p class="terms refused">
                        {scenario.refusals.map((one) => one.words).join('; ')}
                    </p>
                )}
            </div>
            <div class="touch">
                <Last />
                <div class="steps">
                    <button
                        class="step"
                        disabled={one.past.length === 0}
                        onClick={undo}
                        title={say.frame.undo_keys}
                    >
                        {say.common.undo}
                    </button>
                    <button
                        class="step"
                        disabled={one.future.length === 0}
                        onClick={redo}
                        title={say.frame.redo_keys}
                    >
                        {say.common.redo}
                    </button>
                </div>
            </div>
        </footer>
    );
}
