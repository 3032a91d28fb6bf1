// One way to pay: its month, its terms to change, what it comes to.
import {useEffect} from 'preact/hooks';

import type {Compare, Program, Scenario} from '../answers';
import type {Problem} from '../engine';
import {brief, closing_name, dollars, is_zero, month, term, unsigned} from '../figures';
import {copy} from '../inquiry';
import {is_open, open_part, sought, turn_part} from '../opened';
import {say} from '../language';
import {shown_name} from '../loan_names';
import {act, take_in_hand} from '../state/changing';
import {buyer, hand, heading, problems} from '../state/signals';
import {FactsList} from './facts_list';
import type {FactRow} from './facts_list';
import {Fold} from './fold';
import {CashParts} from './cash_parts';
import {Apart} from './loan_apart';
import {
    DownPayment,
    More,
    RateField,
    Select,
    edit,
    months_of,
    to_program,
    unique,
} from './loan_fields';
import type {Written} from './loan_fields';
import {MonthBar, MonthParts} from './month_bar';
import {marked} from './marks';
import {estimate_words, terms_words} from './terms';
import {Name} from './name';
import {Explained} from './term';
import './loan_card.css';

function remove(index: number): void {
    const one = buyer.value!;
    const next = copy(one.inquiry);
    const [gone] = next.scenarios.splice(index, 1);
    const what = say.loan.taken_away({loan: brief(shown_name(gone.name, gone))});
    open_part('loans', '');
    void act(next, {what, touch: null, remarks: []}, true);
}

/// The part of the view that a loan is, by its place: its name follows its terms.
export const loan_part = (index: number) => `loan-${index}`;

function insurance_words(scenario: Scenario): string {
    const insurance = scenario.mortgage_insurance;
    const words = say.loan.insurance;
    if (insurance.paid_up) return words.paid_up;
    if (insurance.payments === 0) return words.none;
    if (insurance.whole_term) return words.whole_loan;
    const [last, request] = [month(insurance.last_date), month(insurance.on_request_date)];
    return request ? words.to_or_on_request({last, request}) : words.to({last});
}

/// What a way to pay comes to a month, with the terms that stand beside it.
function Month({scenario, widest}: {scenario: Scenario; widest: number}) {
    if (!scenario.available) {
        return (
            <p class="refused">
                {say.common.refused({why: scenario.refusals.map((one) => one.words).join('; ')})}
            </p>
        );
    }
    return (
        <div class="loan-month">
            <p class="big-month">
                {say.loan.month({amount: dollars(scenario.monthly.total), big: marked('big')})}
            </p>
            <p class="terms">
                <Explained
                    text={say.terms.beside({
                        terms: terms_words(scenario.terms),
                        estimate: estimate_words(heading.value!),
                    })}
                    terms={['points', 'apr']}
                />
            </p>
            <MonthBar monthly={scenario.monthly} widest={widest} />
        </div>
    );
}

function Answer({scenario, index}: {scenario: Scenario; index: number}) {
    if (!scenario.available) return null;
    const rows: FactRow[] = [
        [closing_name(scenario.cash.to_close), unsigned(scenario.cash.to_close), 'cash_to_close'],
        [say.loan.all_cash, dollars(scenario.cash.needed), 'cash_needed'],
        [say.common.loan, dollars(scenario.loan), 'loan_amount'],
        [say.common.mortgage_insurance, insurance_words(scenario)],
        [say.loan.paid_in_five_years, dollars(scenario.paid_in_five_years)],
        [say.loan.owed_after_five_years, dollars(scenario.balance_after_five_years)],
        [say.loan.paid_over_loan, dollars(scenario.paid_over_loan)],
    ];
    if (!is_zero(scenario.terms.extra_principal)) {
        rows.push([say.loan.paid_off_with, String(scenario.payments)]);
    }
    const first = scenario.first_year;
    return (
        <>
            <MonthParts monthly={scenario.monthly} />
            {first.months > 0 && first.monthly.total !== scenario.monthly.total && (
                <p class="facts">
                    {say.loan.first_months({
                        months: first.months,
                        amount: dollars(first.monthly.total),
                        bought_down: scenario.temporary_buydown !== null,
                    })}
                </p>
            )}
            <FactsList rows={rows} />
            <CashParts scenario={scenario} index={index} />
        </>
    );
}

function wrong_at(index: number, member: string): Problem | undefined {
    return problems.value.find((one) => one.path?.startsWith(`/scenarios/${index}/${member}`));
}

interface Shown {
    index: number;
    written: Written;
    scenario?: Scenario;
    programs: Program[];
    widest: number;
    only: boolean;
}

/// A row that says what sets the loan apart; all of it where it is opened, or is wrong somewhere.
export function Loan({
    answer,
    ...shown
}: Shown & {scenario?: Compare['scenarios'][number]; answer: Compare | null}) {
    const {index, written, scenario} = shown;
    const part = loan_part(index);
    const wrong = wrong_at(index, '') !== undefined;
    const gone_to = sought.value === part && answer !== null;
    useEffect(() => {
        if (!gone_to) return;
        sought.value = '';
        const title = document.getElementById(part);
        title?.scrollIntoView({block: 'start'});
        title?.querySelector('button')?.focus({preventScroll: true});
    }, [gone_to]);
    return (
        <Fold
            id={part}
            class="loan-row"
            level="h4"
            title={<Name of={shown_name(written.name, written)} />}
            says={answer && scenario && <Apart one={scenario} answer={answer} />}
            open={wrong || is_open('loans', part)}
            turn={() => turn_part('loans', part)}
        >
            <Card {...shown} />
        </Fold>
    );
}

export function Card({index, written, scenario, programs, widest, only}: Shown) {
    const program = programs.find((one) => one.id === written.program);
    const terms = unique((program?.ladders ?? []).map((one) => one.months));
    const months = months_of(written);
    const in_hand = hand.value === written.name;
    return (
        <article
            class={`loan ${in_hand ? 'in-hand' : ''}`}
            aria-label={brief(shown_name(written.name, written))}
        >
            {scenario && <Month scenario={scenario} widest={widest} />}
            <div class="loan-terms">
                <Select
                    label={say.loan.program}
                    value={written.program}
                    choices={programs.map((one) => [one.id, one.name])}
                    change={(value) =>
                        to_program(
                            index,
                            written,
                            programs.find((one) => one.id === value)!,
                            program,
                        )
                    }
                />
                <Select
                    label={say.common.term}
                    explained="loan_term"
                    value={String(months)}
                    choices={unique([...terms, months]).map((count) => [
                        String(count),
                        term(count),
                    ])}
                    change={(value) =>
                        edit(
                            index,
                            Number(value) % 12 === 0
                                ? {years: Number(value) / 12, months: undefined}
                                : {months: Number(value), years: undefined},
                            say.loan.changed.term,
                        )
                    }
                />
                <DownPayment index={index} written={written} wrong={wrong_at(index, 'down')} />
                <RateField
                    index={index}
                    written={written}
                    program={program}
                    wrong={wrong_at(index, 'rate')}
                />
                <More index={index} written={written} program={program} />
            </div>
            <div class="loan-answer">
                {scenario && <Answer scenario={scenario} index={index} />}
            </div>
            {scenario && <p class="note">{scenario.terms.fine_print}</p>}
            <p class="loan-steps">
                {!in_hand && (
                    <button class="step" onClick={() => take_in_hand(written.name)}>
                        {say.loan.take_in_hand}
                    </button>
                )}
                {!only && (
                    <button class="quiet" onClick={() => remove(index)}>
                        {say.loan.take_away}
                    </button>
                )}
            </p>
        </article>
    );
}
