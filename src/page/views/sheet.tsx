// The sheet to print: the home line by line, its month with every loan, cash, cautions.
import {months_of, parts_of} from '../answers';
import type {Cash, Quote, Scenario, TermCode} from '../answers';
import {
    brief,
    closing_amount,
    closing_name,
    date,
    dollars,
    is_zero,
    percent,
    plain,
    rate_percent,
    term,
    unsigned,
} from '../figures';
import {say} from '../language';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {change_words, points_cell} from '../parts/terms';
import {answered, loan_name, tour} from '../store';
import {Name, Words} from '../parts/name';
import {Term} from '../parts/term';

import './sheet.css';

function Head({answer}: {answer: Quote}) {
    const home = answer.heading;
    return (
        <header class="sheet-head">
            <p class="sheet-title">
                {say.sheet.home.at({
                    plan: <Name of={home.plan} />,
                    community: <Name of={home.community} />,
                })}
            </p>
            <p>
                {say.sheet.home.of_whom({
                    elevation: <Name of={home.elevation} />,
                    lot: home.lot,
                    buyer: <Name of={home.buyer || say.sheet.home.a_buyer} />,
                    builder: <Name of={home.builder} />,
                })}
            </p>
            <p class="faint">
                {say.sheet.home.days({
                    as_of: date(home.as_of),
                    version: home.price_book_version,
                    expires: date(home.price_book_expires),
                    contract: date(home.contract),
                    closing: date(home.closing),
                    rates: date(home.rates_date),
                    lender: home.lender,
                    samples: home.sample_rates,
                    prepared_by: brief(home.prepared_by || say.sheet.home.to_fill_in),
                    originator: brief(home.originator || say.sheet.home.to_fill_in),
                })}
            </p>
        </header>
    );
}

type Line = Quote['lines'][number];

function name_of(line: Line): string {
    const {name, detail} = line;
    if (line.kind === 'base') return say.sheet.home.base({plan: brief(name)});
    if (line.kind === 'elevation') return say.sheet.home.elevation({elevation: brief(name)});
    if (line.kind === 'lot') return say.sheet.home.lot({lot: name});
    return (
        brief(detail ? say.common.with_form({name, form: detail}) : name) +
        (line.work.length > 0 ? ' *' : '')
    );
}

function amount_of(line: Line): string {
    if (line.kind === 'choice') return say.common.no_cost;
    if (line.kind === 'in_package') return say.common.in_a_package;
    return dollars(line.amount);
}

function measure_of(line: Line): string {
    if (line.kind === 'choice' || line.kind === 'in_package') return '';
    if (line.quantity === '1' && line.unit === 'each') return '';
    return say.sheet.home.measure({
        quantity: plain(line.quantity),
        unit: line.unit === 'each' ? null : say.codes.units[line.unit],
        price: dollars(line.unit_price),
    });
}

function Home({answer}: {answer: Quote}) {
    let area = '';
    return (
        <section class="sheet-part">
            <h3>{say.sheet.home.title}</h3>
            <table class="lines">
                <tbody>
                    {answer.lines.map((line, i) => {
                        const title = line.area !== area && line.area;
                        area = line.area;
                        return [
                            title && (
                                <tr key={`a${i}`} class="area-row">
                                    <th scope="rowgroup" colSpan={2}>
                                        {title}
                                    </th>
                                </tr>
                            ),
                            <tr key={i}>
                                <td>
                                    <Words of={name_of(line)} />{' '}
                                    <span class="measure">{measure_of(line)}</span>
                                </td>
                                <td class="amount">{amount_of(line)}</td>
                            </tr>,
                        ];
                    })}
                </tbody>
                <tfoot>
                    <tr>
                        <th scope="row">
                            <Term of="contract_price">{say.common.contract_price}</Term>
                        </th>
                        <td class="amount" data-figure="contract_price">
                            {dollars(answer.contract_price)}
                        </td>
                    </tr>
                </tfoot>
            </table>
            {answer.requests.map((one) => (
                <p key={one.text} class="facts">
                    {say.sheet.home.request({
                        text: <Name of={one.text} />,
                        estimate: dollars(one.estimate),
                    })}
                </p>
            ))}
            {answer.open_choices.length > 0 && (
                <p class="facts">
                    {say.sheet.home.open_choices({
                        choices: answer.open_choices.map((one) => ({
                            name: one.name,
                            otherwise: one.default,
                        })),
                    })}
                </p>
            )}
            {answer.credits.map((one) => (
                <p key={`${one.id} ${one.use}`} class="facts">
                    {say.sheet.home.credit({
                        name: <Name of={one.name} />,
                        amount: dollars(one.amount),
                        use: say.codes.uses[one.use],
                    })}
                </p>
            ))}
            {answer.incentive_conditions.map((one) => (
                <p key={one} class="facts">
                    {one}
                </p>
            ))}
            {answer.incentive_lenders.map((one) => (
                <p key={one} class="facts">
                    {say.sheet.home.lender({lender: one})}
                </p>
            ))}
        </section>
    );
}

function Months({answer}: {answer: Quote}) {
    const all = answer.scenarios;
    const cell = (one: Scenario, text: string) => (one.available ? text : '–');
    const rows: [TermCode, string, (one: Scenario) => string][] = [
        ['interest_rate', say.common.note_rate, (one) => rate_percent(one.terms.rate)],
        [
            'apr',
            say.common.apr,
            (one) => (one.terms.apr ? rate_percent(one.terms.apr) : say.common.apr_not_found),
        ],
        ['loan_term', say.common.term, (one) => term(one.terms.months)],
        ['points', say.common.points, (one) => points_cell(one.terms.points)],
        [
            'down_payment',
            say.common.down_payment,
            ({terms}) =>
                say.sheet.month.down({
                    amount: dollars(terms.down_payment),
                    percent: percent(terms.down_percent),
                }),
        ],
        ['loan_amount', say.common.loan, (one) => cell(one, dollars(one.loan))],
        [
            'cash_to_close',
            say.common.cash_to_close,
            (one) => cell(one, one.available ? closing_amount(one.cash.to_close) : ''),
        ],
        [
            'cash_needed',
            say.common.all_cash_needed,
            (one) => cell(one, one.available ? dollars(one.cash.needed) : ''),
        ],
    ];
    return (
        <section class="sheet-part together">
            <h3>{say.sheet.month.title}</h3>
            <div class="scroll" tabIndex={0} role="region" aria-label={say.sheet.month.label}>
                <table class="months">
                    <thead>
                        <tr>
                            <th scope="col">
                                <span class="sr">{say.sheet.month.part}</span>
                            </th>
                            {all.map((one) => (
                                <th scope="col" key={one.terms.name}>
                                    {brief(loan_name(one.terms.name))}
                                </th>
                            ))}
                        </tr>
                    </thead>
                    <tbody>
                        {parts_of(months_of(all)).map(({key, name, term: code}) => (
                            <tr key={key}>
                                <th scope="row">
                                    <Term of={code}>{name}</Term>
                                </th>
                                {all.map((one) => (
                                    <td key={one.terms.name}>
                                        {cell(one, one.available ? dollars(one.monthly[key]) : '')}
                                    </td>
                                ))}
                            </tr>
                        ))}
                        <tr class="total">
                            <th scope="row">
                                <Term of="monthly_payment">{say.common.a_month}</Term>
                            </th>
                            {all.map((one) => (
                                <td key={one.terms.name}>
                                    {cell(one, one.available ? dollars(one.monthly.total) : '')}
                                </td>
                            ))}
                        </tr>
                        {rows.map(([code, name, text]) => (
                            <tr key={code}>
                                <th scope="row">
                                    <Term of={code}>{name}</Term>
                                </th>
                                {all.map((one) => (
                                    <td key={one.terms.name}>{text(one)}</td>
                                ))}
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
            {all
                .filter((one) => one.available && one.terms.adjustable)
                .map((one) => (
                    <p key={one.terms.name} class="facts">
                        {say.sheet.month.change({
                            loan: <Name of={loan_name(one.terms.name)} />,
                            change: change_words(one.terms),
                        })}
                    </p>
                ))}
            {all
                .filter((one) => !one.available)
                .map((one) => (
                    <p key={one.terms.name} class="facts">
                        {say.sheet.month.refused({
                            loan: <Name of={loan_name(one.terms.name)} />,
                            why: one.refusals.map((each) => each.words).join('; '),
                        })}
                    </p>
                ))}
        </section>
    );
}

/// What the cash is made of, in the order of the sheet.
const cash_parts = [
    'down_payment',
    'upfront_fee_in_cash',
    'points',
    'principal_reduction',
    'closing_costs',
    'prepaid_interest',
    'prepaid_bills',
    'initial_escrow_deposit',
    'temporary_buydown',
] as const;

/// Those of them that no row above explains.
const cash_terms: Partial<Record<(typeof cash_parts)[number], TermCode>> = {
    upfront_fee_in_cash: 'upfront_fee',
    closing_costs: 'closing_costs',
    prepaid_interest: 'prepaid_interest',
    prepaid_bills: 'prepaids',
    initial_escrow_deposit: 'escrow_account',
    temporary_buydown: 'temporary_buydown',
};

/// A row of them: its words, and its amount, which takes off what a lender gives.
function cash_part({scenario}: Cash, key: (typeof cash_parts)[number]): [string, string] {
    const amount = scenario.cash[key];
    const words = say.sheet.cash;
    if (key === 'points' && amount.startsWith('-')) return [words.lender_credit, unsigned(amount)];
    return key === 'upfront_fee_in_cash' && scenario.mortgage_insurance.paid_up
        ? [words.fee_in_cash({fee: scenario.upfront_fee.name}), dollars(amount)]
        : [words[key], dollars(amount)];
}

function CashPart({cash}: {cash: Cash}) {
    if (!cash.scenario.available) return null;
    const amounts = cash.scenario.cash;
    return (
        <section class="sheet-part together">
            <h3>
                {say.sheet.cash.title({loan: <Name of={loan_name(cash.scenario.terms.name)} />})}
            </h3>
            <div class="two">
                <table class="lines">
                    <tbody>
                        {cash_parts
                            .filter((key) => !is_zero(amounts[key]))
                            .map((key) => {
                                const [words, amount] = cash_part(cash, key);
                                return (
                                    <tr key={key}>
                                        <td>
                                            <Term of={cash_terms[key]}>{words}</Term>
                                        </td>
                                        <td class="amount">{amount}</td>
                                    </tr>
                                );
                            })}
                        {!is_zero(amounts.credits) && (
                            <tr>
                                <td>{say.sheet.cash.credits}</td>
                                <td class="amount">{dollars(amounts.credits)}</td>
                            </tr>
                        )}
                        <tr class="total">
                            <th scope="row">{say.common.all_cash_needed}</th>
                            <td class="amount">{dollars(amounts.needed)}</td>
                        </tr>
                        {!is_zero(amounts.deposits) && (
                            <tr>
                                <td>{say.sheet.cash.deposits}</td>
                                <td class="amount">{dollars(amounts.deposits)}</td>
                            </tr>
                        )}
                        <tr class="total">
                            <th scope="row">{closing_name(amounts.to_close)}</th>
                            <td class="amount">{unsigned(amounts.to_close)}</td>
                        </tr>
                    </tbody>
                </table>
                <table class="lines">
                    <caption>{say.sheet.cash.when}</caption>
                    <tbody>
                        {cash.calendar.map((day, i) => (
                            <tr key={i}>
                                <td>{say.sheet.cash.due({on: date(day.date), what: day.words})}</td>
                                <td class="amount">{closing_amount(day.amount)}</td>
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
            {!is_zero(cash.scenario.lender_credit_without_use) && (
                <p class="facts">
                    {say.sheet.cash.lender_credit_lost({
                        amount: dollars(cash.scenario.lender_credit_without_use),
                    })}
                </p>
            )}
        </section>
    );
}

export function SheetView() {
    const hand = tour.value!.scenario.terms.name;
    const {answer} = use_answer<Quote>('quote', answered.value);
    const {answer: cash} = use_answer<Cash>('cash', answered.value, {scenario: hand});
    if (!answer) return <p class="waiting">{say.sheet.writing}</p>;
    return (
        <div class="sheet-page">
            <div class="sheet-tools">
                <h2>{say.sheet.title}</h2>
                <button class="main-button" onClick={() => window.print()}>
                    {say.sheet.print}
                </button>
            </div>
            <div class="paper">
                <Head answer={answer} />
                <Home answer={answer} />
                <Months answer={answer} />
                {cash && <CashPart cash={cash} />}
                <Cautions all={answer.cautions} />
            </div>
        </div>
    );
}
