// The loan in hand year by year, its months on demand, and what extra principal does.
import {useState} from 'preact/hooks';

import type {MonthRow, Row, Schedule} from '../answers';
import {brief, date, dollars, is_zero, month, short_month, size, unless_zero} from '../figures';
import {say} from '../language';
import {shown_name} from '../loan_names';
import {use_answer} from '../parts/asked';
import type {Options} from '../engine';
import {strong} from '../parts/marks';
import {ScheduleChart} from '../parts/schedule_chart';
import {Explained, Term} from '../parts/term';
import {estimate_words, terms_words} from '../parts/terms';
import {opened, set_open} from '../opened';
import {take_in_hand} from '../state/changing';
import {answered, tour} from '../state/signals';
import {plain_number} from '../typed';
import {WhatToKnow} from '../parts/what_to_know';

import './schedule.css';

function Months({rows}: {rows: MonthRow[]}) {
    return (
        <>
            {rows.map((row) => (
                <tr key={row.month} class="month-row">
                    <th scope="row">{short_month(row.due)}</th>
                    <td class="roomy-cell">{dollars(row.payment)}</td>
                    <td>{dollars(row.interest)}</td>
                    <td>{dollars(row.principal)}</td>
                    <td class="roomy-cell">{dollars(row.mortgage_insurance)}</td>
                    <td>{dollars(row.balance)}</td>
                    <td class="share" />
                </tr>
            ))}
        </>
    );
}

/// How much of a year's payment is interest and principal.
function Share({row}: {row: Row}) {
    const whole = size(row.payment) + size(row.mortgage_insurance);
    const part = (amount: string) => (whole > 0 ? (size(amount) / whole) * 100 : 0);
    return (
        <svg class="share-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
            <rect class="part interest" x="0" width={part(row.interest)} height="8" />
            <rect
                class="part principal"
                x={part(row.interest)}
                width={part(row.principal)}
                height="8"
            />
            <rect
                class="part mortgage_insurance"
                x={part(row.interest) + part(row.principal)}
                width={part(row.mortgage_insurance)}
                height="8"
            />
        </svg>
    );
}

function Table({answer}: {answer: Schedule}) {
    const is_open = (year: number) => opened.value.has(`year:${year}`);
    const flip = (year: number) => set_open(`year:${year}`, !is_open(year));
    return (
        <div class="scroll" tabIndex={0} role="region" aria-label={say.schedule.table}>
            <table class="years">
                <thead>
                    <tr>
                        <th scope="col">{say.schedule.year}</th>
                        <th scope="col" class="roomy-cell">
                            <Term of="principal_and_interest">
                                {say.schedule.principal_and_interest}
                            </Term>
                        </th>
                        <th scope="col">{say.schedule.interest}</th>
                        <th scope="col">{say.schedule.principal}</th>
                        <th scope="col" class="roomy-cell">
                            <Term of="mortgage_insurance">{say.common.mortgage_insurance}</Term>
                        </th>
                        <th scope="col">{say.schedule.balance}</th>
                        <th class="share">
                            <span class="sr">{say.schedule.shares}</span>
                        </th>
                    </tr>
                </thead>
                <tbody>
                    {answer.at_closing && (
                        <tr class="year-row">
                            <th scope="row">{say.schedule.at_closing}</th>
                            <td class="roomy-cell" />
                            <td />
                            <td>{dollars(answer.at_closing.principal)}</td>
                            <td class="roomy-cell" />
                            <td>{dollars(answer.at_closing.balance)}</td>
                            <td class="share" />
                        </tr>
                    )}
                    {answer.years.map((row) => [
                        <tr key={row.year} class="year-row">
                            <th scope="row">
                                <button
                                    class="year-button"
                                    aria-expanded={is_open(row.year!)}
                                    onClick={() => flip(row.year!)}
                                >
                                    {say.schedule.year_number({year: row.year!})}
                                    <span class="faint">
                                        {say.schedule.year_to({month: month(row.last_due)})}
                                    </span>
                                    {!is_zero(row.mortgage_insurance) && (
                                        <span class="narrow">
                                            {say.schedule.insurance_short({
                                                amount: dollars(row.mortgage_insurance),
                                            })}
                                        </span>
                                    )}
                                </button>
                            </th>
                            <td class="roomy-cell">{dollars(row.payment)}</td>
                            <td>{dollars(row.interest)}</td>
                            <td>{dollars(row.principal)}</td>
                            <td class="roomy-cell">{dollars(row.mortgage_insurance)}</td>
                            <td>{dollars(row.balance)}</td>
                            <td class="share">
                                <Share row={row} />
                            </td>
                        </tr>,
                        is_open(row.year!) && (
                            <Months
                                key={`m${row.year}`}
                                rows={answer.rows.slice((row.year! - 1) * 12, row.year! * 12)}
                            />
                        ),
                    ])}
                </tbody>
                <tfoot>
                    <tr>
                        <th scope="row">{say.schedule.together}</th>
                        <td class="roomy-cell" />
                        <td>{dollars(answer.total_interest)}</td>
                        <td>{dollars(answer.scenario.loan)}</td>
                        <td class="roomy-cell">{dollars(answer.total_insurance)}</td>
                        <td />
                        <td class="share" />
                    </tr>
                </tfoot>
            </table>
        </div>
    );
}

function Saves({answer}: {answer: Schedule}) {
    const saves = answer.extra;
    if (!saves)
        return (
            <p class="facts">
                <Explained text={say.schedule.no_extra} terms={['extra_principal']} />
            </p>
        );
    return (
        <p class="saves">
            {say.schedule.saves({
                extra: dollars(saves.extra),
                payments: saves.payments,
                fewer: saves.payments_saved,
                last: month(saves.last_due),
                interest: dollars(saves.interest_saved),
                insurance: unless_zero(saves.insurance_saved),
                strong,
            })}
        </p>
    );
}

/// What others pay of the payments shown, where they do.
function BoughtDown({answer}: {answer: Schedule}) {
    if (is_zero(answer.total_from_buydown)) return null;
    return (
        <p class="facts">
            {say.schedule.bought_down({
                amount: dollars(answer.total_from_buydown),
                years: answer.years
                    .filter((row) => !is_zero(row.from_buydown))
                    .map((row) => ({amount: dollars(row.from_buydown), year: row.year!})),
            })}
        </p>
    );
}

export function ScheduleView() {
    const [text, write] = useState('');
    const [extra, set] = useState('');
    const name = tour.value!.scenario.terms.name;
    const [worst, suppose] = useState(false);
    const changes = Boolean(tour.value!.scenario.terms.adjustable);
    const options: Options = {scenario: name};
    if (extra) options.extra = extra;
    if (worst && changes) options['worst-case'] = 'yes';
    const {answer, problems} = use_answer<Schedule>('schedule', answered.value, options);
    const commit = () => set(plain_number(text, '$'));
    const terms = answer?.scenario.terms;
    return (
        <div class="schedule-page">
            <h2>{say.schedule.title}</h2>
            <div class="controls">
                <label class="field">
                    <span>{say.schedule.loan}</span>
                    <select
                        value={name}
                        onChange={(event) => take_in_hand(event.currentTarget.value)}
                    >
                        {(answered.value?.scenarios ?? []).map((one: any) => (
                            <option key={one.name} value={one.name}>
                                {brief(shown_name(one.name, one))}
                            </option>
                        ))}
                    </select>
                </label>
                <form
                    class="field"
                    onSubmit={(event) => {
                        event.preventDefault();
                        commit();
                    }}
                >
                    <label>
                        <span>{say.schedule.extra}</span>
                        <span class="typed">
                            <span class="unit" aria-hidden="true">
                                $
                            </span>
                            <input
                                inputMode="decimal"
                                autocomplete="off"
                                value={text}
                                placeholder="0"
                                onInput={(event) => write(event.currentTarget.value)}
                                onChange={commit}
                            />
                        </span>
                    </label>
                </form>
                {changes && (
                    <label class="tick-box">
                        <input type="checkbox" checked={worst} onChange={() => suppose(!worst)} />
                        <span>{say.schedule.worst_case}</span>
                    </label>
                )}
            </div>
            {problems.map((one, i) => (
                <p key={i} class="wrong">
                    {say.common.wrong(one)}
                </p>
            ))}
            {answer && !answer.scenario.available && (
                <p class="refused">
                    {say.common.refused({
                        why: answer.scenario.refusals.map((one) => one.words).join('; '),
                    })}
                </p>
            )}
            {answer && terms && answer.scenario.available && (
                <>
                    <p class="home-line">
                        <Explained
                            text={say.schedule.says({
                                loan: dollars(answer.scenario.loan),
                                terms: terms_words(terms),
                                estimate: estimate_words(answer.heading),
                                first_payment: date(answer.scenario.first_payment),
                            })}
                            terms={['loan_amount', 'interest_rate', 'points', 'apr']}
                        />
                    </p>
                    <Saves answer={answer} />
                    <BoughtDown answer={answer} />
                    <ScheduleChart answer={answer} />
                    <p class="group-says">{say.schedule.years}</p>
                    <Table answer={answer} />
                    <WhatToKnow all={answer.cautions} />
                </>
            )}
        </div>
    );
}
