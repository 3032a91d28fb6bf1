// The bar that is always in sight: price, month, cash, and what the last touch changed.
import {signal} from '@preact/signals';

import {as_of_words} from '#side/words';

import type {Move} from '../answers';
import {
    closing_name,
    percent,
    rate_percent,
    rounded,
    short,
    signed,
    term,
    unsigned,
} from '../figures';
import {say} from '../language';
import {view} from '../place';
import {redo, undo} from '../state/changing';
import {
    busy,
    change,
    has_future,
    has_past,
    problems,
    somebody,
    tour,
    toured,
} from '../state/signals';
import {Amount} from './amount';
import {AreasButton} from './areas';
import {Icon} from './icon';
import {LoanInHand} from './loan_in_hand';
import {marked} from './marks';
import {Term} from './term';

import './bar.css';

const choosing = signal(false);

/// Opens the choice of the loan: among the steps or, on a small screen, behind the terms.
function LoanButton({class: name}: {class: string}) {
    return (
        <button
            class={name}
            aria-haspopup="dialog"
            onClick={() => {
                choosing.value = true;
            }}
        >
            {say.frame.loan}
        </button>
    );
}

/// The terms that stand beside the monthly figure; all of them are in the dialog of the loan.
function Terms() {
    const {heading, scenario} = tour.value!;
    const {terms} = scenario;
    if (!scenario.available) {
        return (
            <p class="terms refused">
                {scenario.refusals.map((one) => one.words).join('; ')}{' '}
                <LoanButton class="change-loan" />
            </p>
        );
    }
    return (
        <p class="terms">
            {say.terms.in_short({
                loan: terms.program_name,
                rate: rate_percent(terms.rate),
                highest: terms.adjustable && rate_percent(terms.adjustable.highest_rate),
                apr: (
                    <>
                        <Term of="apr">{say.common.apr}</Term>{' '}
                        {terms.apr ? rate_percent(terms.apr) : say.common.apr_not_found}
                    </>
                ),
                term: term(terms.months),
                down: short(terms.down_payment),
                down_percent: percent(terms.down_percent),
                as_of: as_of_words(heading),
                roomy: marked('terms-roomy'),
            })}{' '}
            <LoanButton class="change-loan" />
        </p>
    );
}

function MoveFigures({move}: {move: Move}) {
    const {per_month, price, cash_needed} = move;
    return (
        <span class="last-figures">
            {per_month !== undefined && (
                <strong class="last-month">
                    {say.common.monthly_part({
                        amount: <Amount of={per_month} write={(text) => signed(text, rounded)} />,
                    })}
                </strong>
            )}
            <span class="last-sums">
                {say.frame.sums({
                    price: <Amount of={price} write={(text) => signed(text, short)} />,
                    cash: cash_needed !== undefined && (
                        <Amount of={cash_needed} write={(text) => signed(text, rounded)} />
                    ),
                })}
            </span>
        </span>
    );
}

function Last() {
    const last = change.value;
    return (
        <div class="last" aria-live="polite">
            {last ? (
                <>
                    {last.touch && <MoveFigures move={last.touch} />}
                    <span class="last-name" title={last.what}>
                        {last.what}
                    </span>
                    {last.remarks.length > 0 && (
                        <p class="last-remarks">{last.remarks.join('; ')}</p>
                    )}
                </>
            ) : null}
        </div>
    );
}

function Figures() {
    const {contract_price, scenario} = tour.value!;
    const {available, cash, monthly} = scenario;
    return (
        <dl class="figures">
            <div class="figure price">
                <dt>
                    <Term of="contract_price">{say.common.contract_price}</Term>
                </dt>
                <dd>
                    <Amount of={contract_price} write={short} figure="contract_price" />
                </dd>
            </div>
            <div class="figure month">
                <dt>
                    <Term of="monthly_payment">{say.common.a_month}</Term>
                </dt>
                <dd>
                    {available ? (
                        <Amount of={monthly.total} figure="monthly.total" />
                    ) : (
                        say.common.not_to_be_had
                    )}
                </dd>
            </div>
            <div class="figure cash">
                <dt>
                    <Term of="cash_needed">{say.common.all_cash_needed}</Term>
                </dt>
                <dd>{available ? <Amount of={cash.needed} figure="cash.needed" /> : '–'}</dd>
                {available && (
                    <dd class="closing">
                        {say.common.of_it({
                            name: <Term of="cash_to_close">{closing_name(cash.to_close)}</Term>,
                            amount: (
                                <Amount
                                    of={cash.to_close}
                                    write={unsigned}
                                    figure="cash.to_close"
                                />
                            ),
                        })}
                    </dd>
                )}
            </div>
        </dl>
    );
}

export function Bar() {
    if (!toured.value || !somebody.value) return null;
    const stale = problems.value.length > 0 ? 'stale' : '';
    return (
        <footer class={`bar ${stale}`} aria-label={say.frame.bar_label} aria-busy={busy}>
            <Figures />
            <Last />
            <div class="steps">
                {view.value === 'tour' && <AreasButton />}
                <LoanButton class="step choose-loan" />
                <button
                    class="step back"
                    aria-label={say.common.undo}
                    disabled={!has_past.value}
                    onClick={undo}
                    title={say.frame.undo_keys}
                >
                    <Icon of="undo" />
                    <span class="step-word">{say.common.undo}</span>
                </button>
                <button
                    class="step again"
                    disabled={!has_future.value}
                    onClick={redo}
                    title={say.frame.redo_keys}
                >
                    {say.common.redo}
                </button>
            </div>
            <Terms />
            {choosing.value && (
                <LoanInHand
                    done={() => {
                        choosing.value = false;
                    }}
                />
            )}
        </footer>
    );
}
