// The bar that is always in sight: price, month, cash, and what the last touch changed.
import {brief, closing_name, dollars, signed, unsigned} from '../figures';
import {busy, buyer, change, problems, redo, take_in_hand, tour, undo} from '../store';
import {estimate_words, terms_words} from './terms';

/// The terms that stand beside the monthly figure.
function Terms() {
    const {heading, scenario} = tour.value!;
    const {terms} = scenario;
    return (
        <p class="terms">
            {terms.program_name}, {terms_words(terms)}. {estimate_words(heading)}
        </p>
    );
}

function Last() {
    const last = change.value;
    if (!last) {
        return (
            <p class="last" aria-live="polite" tabIndex={0}>
                Touch anything to put it in or take it out: what it changes stands here.
            </p>
        );
    }
    const touch = last.touch;
    return (
        <p class="last" aria-live="polite" tabIndex={0}>
            <strong>{last.what}</strong>
            {touch && (
                <span class="last-figures">
                    {touch.per_month !== undefined && `${signed(touch.per_month)} a month, `}
                    {signed(touch.price)} in price
                    {touch.cash_needed !== undefined && (
                        <>
                            , {signed(touch.cash_needed)} cash
                            {touch.cash_to_close !== touch.cash_needed && (
                                <span class="roomiest">
                                    {' '}
                                    ({signed(touch.cash_to_close ?? '')} at the closing)
                                </span>
                            )}
                        </>
                    )}
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
        <footer class={`bar ${stale}`} aria-label="What the home comes to" aria-busy={busy.value}>
            <dl class="figures">
                <div class="figure price">
                    <dt>Contract price</dt>
                    <dd data-figure="contract_price">{dollars(answer.contract_price)}</dd>
                </div>
                <div class="figure month">
                    <dt>A month</dt>
                    <dd data-figure="monthly.total">
                        {scenario.available ? dollars(scenario.monthly.total) : 'not to be had'}
                    </dd>
                </div>
                <div class="figure cash">
                    <dt>{closing_name(scenario.available ? scenario.cash.to_close : null)}</dt>
                    <dd data-figure="cash.to_close">
                        {scenario.available ? unsigned(scenario.cash.to_close) : '–'}
                    </dd>
                </div>
            </dl>
            <div class="hand">
                <label class="select">
                    <span class="sr">Way to pay in hand</span>
                    <select
                        value={scenario.terms.name}
                        onChange={(event) => take_in_hand(event.currentTarget.value)}
                    >
                        {(one.inquiry.scenarios ?? []).map((each: any) => (
                            <option key={each.name} value={each.name}>
                                {brief(each.name)}
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
                        title="Ctrl+Z"
                    >
                        Undo
                    </button>
                    <button
                        class="step"
                        disabled={one.future.length === 0}
                        onClick={redo}
                        title="Ctrl+Shift+Z"
                    >
                        Redo
                    </button>
                </div>
            </div>
        </footer>
    );
}
