// The sheet to print: the home line by line, its month under every way to pay, cash, cautions.
import {months_of, parts_of} from '../answers';
import type {Cash, Quote, Scenario} from '../answers';
import {brief, date, dollars, is_zero, percent, plain, term, unbroken} from '../figures';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {change_words, minus} from '../parts/terms';
import {answered, tour} from '../store';
import {unit_words, use_words} from '../words';
import {Name, Words} from '../parts/name';

function Head({answer}: {answer: Quote}) {
    const home = answer.heading;
    return (
        <header class="sheet-head">
            <p class="sheet-title">
                <Name of={home.plan} /> at <Name of={home.community} />
            </p>
            <p>
                Elevation <Name of={home.elevation} />, lot {home.lot}. For{' '}
                <Name of={home.buyer || 'a buyer'} />. <Name of={home.builder} />.
            </p>
            <p class="faint">
                As of {date(home.as_of)}; price book {home.price_book_version}, in force to{' '}
                {date(home.price_book_expires)}; contract {date(home.contract)}, closing{' '}
                {date(home.closing)}. Rates of {date(home.rates_date)} from {home.lender}
                {home.sample_rates && ' (samples)'}. Prepared by{' '}
                {brief(home.prepared_by || '______________')}. Licensed loan originator:{' '}
                {brief(home.originator || '______________')}.
            </p>
        </header>
    );
}

type Line = Quote['lines'][number];

function name_of(line: Line): string {
    if (line.kind === 'base') return `${brief(line.name)}, base price`;
    if (line.kind === 'elevation') return `Elevation ${brief(line.name)}`;
    if (line.kind === 'lot') return `Lot ${line.name}, premium`;
    return (
        brief(line.detail ? `${line.name}: ${line.detail}` : line.name) +
        (line.work.length > 0 ? ' *' : '')
    );
}

function amount_of(line: Line): string {
    if (line.kind === 'choice') return 'no cost';
    if (line.kind === 'in_package') return 'in a package';
    return dollars(line.amount);
}

function measure_of(line: Line): string {
    if (line.kind === 'choice' || line.kind === 'in_package') return '';
    if (line.quantity === '1' && line.unit === 'each') return '';
    const unit = line.unit === 'each' ? '' : ` ${unit_words[line.unit]}`;
    return `${plain(line.quantity)}${unit} × ${dollars(line.unit_price)}`;
}

function Home({answer}: {answer: Quote}) {
    let area = '';
    return (
        <section class="sheet-part">
            <h3>The home</h3>
            <table class="lines">
                <tbody>
                    {answer.lines.map((line, i) => {
                        const title = line.area !== area && line.area;
                        area = line.area;
                        return [
                            title && (
                                <tr key={`a${i}`} class="area-row">
                                    <th scope="rowgroup" colSpan={3}>
                                        {title}
                                    </th>
                                </tr>
                            ),
                            <tr key={i}>
                                <td>
                                    <Words of={name_of(line)} />
                                </td>
                                <td class="measure">{measure_of(line)}</td>
                                <td class="amount">{amount_of(line)}</td>
                            </tr>,
                        ];
                    })}
                </tbody>
                <tfoot>
                    <tr>
                        <th scope="row">Contract price</th>
                        <td />
                        <td class="amount" data-figure="contract_price">
                            {dollars(answer.contract_price)}
                        </td>
                    </tr>
                </tfoot>
            </table>
            {answer.requests.map((one) => (
                <p key={one.text} class="facts">
                    Asked for, to be confirmed, not in the price: <Name of={one.text} />
                    {one.estimate && `, estimated at ${dollars(one.estimate)}`}.
                </p>
            ))}
            {answer.open_choices.length > 0 && (
                <p class="facts">
                    Still to choose at no cost:{' '}
                    {answer.open_choices
                        .map((one) => `${one.name} (else ${one.default})`)
                        .join('; ')}
                    .
                </p>
            )}
            {answer.credits.map((one) => (
                <p key={`${one.id} ${one.use}`} class="facts">
                    <Name of={one.name} />: {dollars(one.amount)} towards {use_words[one.use]}.
                </p>
            ))}
            {answer.incentive_conditions.map((one) => (
                <p key={one} class="facts">
                    {one}
                </p>
            ))}
            {answer.incentive_lenders.map((one) => (
                <p key={one} class="facts">
                    This incentive is given only with a loan from {one}; you may choose any lender,
                    and then go without it.
                </p>
            ))}
        </section>
    );
}

function Months({answer}: {answer: Quote}) {
    const all = answer.scenarios;
    const cell = (one: Scenario, text: string) => (one.available ? text : '–');
    const rows: [string, (one: Scenario) => string][] = [
        ['Note rate', (one) => percent(one.terms.rate)],
        ['APR', (one) => (one.terms.apr ? percent(one.terms.apr) : 'not found')],
        ['Term', (one) => term(one.terms.months)],
        ['Points', (one) => minus(one.terms.points)],
        [
            'Down payment',
            (one) => `${dollars(one.terms.down_payment)} (${percent(one.terms.down_percent)})`,
        ],
        ['Loan', (one) => cell(one, dollars(one.loan))],
        ['Cash to close', (one) => cell(one, one.available ? dollars(one.cash.to_close) : '')],
        ['All cash needed', (one) => cell(one, one.available ? dollars(one.cash.needed) : '')],
    ];
    return (
        <section class="sheet-part together">
            <h3>The month, under each way to pay</h3>
            <div
                class="scroll"
                tabIndex={0}
                role="region"
                aria-label="The month under each way to pay"
            >
                <table class="months">
                    <thead>
                        <tr>
                            <th scope="col">
                                <span class="sr">Part</span>
                            </th>
                            {all.map((one) => (
                                <th scope="col" key={one.terms.name}>
                                    {unbroken(brief(one.terms.name))}
                                </th>
                            ))}
                        </tr>
                    </thead>
                    <tbody>
                        {parts_of(months_of(all)).map(({key, name}) => (
                            <tr key={key}>
                                <th scope="row">{name}</th>
                                {all.map((one) => (
                                    <td key={one.terms.name}>
                                        {cell(one, one.available ? dollars(one.monthly[key]) : '')}
                                    </td>
                                ))}
                            </tr>
                        ))}
                        <tr class="total">
                            <th scope="row">A month</th>
                            {all.map((one) => (
                                <td key={one.terms.name}>
                                    {cell(one, one.available ? dollars(one.monthly.total) : '')}
                                </td>
                            ))}
                        </tr>
                        {rows.map(([name, text]) => (
                            <tr key={name}>
                                <th scope="row">{name}</th>
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
                        <Name of={one.terms.name} />: {change_words(one.terms)}.
                    </p>
                ))}
            {all
                .filter((one) => !one.available)
                .map((one) => (
                    <p key={one.terms.name} class="facts">
                        <Name of={one.terms.name} /> is not to be had:{' '}
                        {one.refusals.map((each) => each.words).join('; ')}.
                    </p>
                ))}
        </section>
    );
}

const cash_words: [keyof Scenario['cash'], string][] = [
    ['down_payment', 'Down payment'],
    ['upfront_fee_in_cash', 'Upfront fee in cash'],
    ['points', 'Points'],
    ['principal_reduction', 'Principal reduced at closing'],
    ['closing_costs', 'Closing costs'],
    ['prepaid_interest', 'Prepaid interest'],
    ['prepaid_bills', 'Bills paid ahead'],
    ['initial_escrow_deposit', 'Initial escrow deposit'],
    ['temporary_buydown', 'Temporary buydown'],
];

function CashPart({cash}: {cash: Cash}) {
    if (!cash.scenario.available) return null;
    const amounts = cash.scenario.cash;
    return (
        <section class="sheet-part together">
            <h3>
                The cash: <Name of={cash.scenario.terms.name} />
            </h3>
            <div class="two">
                <table class="lines">
                    <tbody>
                        {cash_words
                            .filter(([key]) => !is_zero(amounts[key]))
                            .map(([key, name]) => (
                                <tr key={key}>
                                    <td>
                                        {key === 'upfront_fee_in_cash' &&
                                        cash.scenario.mortgage_insurance.paid_up
                                            ? `${cash.scenario.upfront_fee.name}, in cash`
                                            : name}
                                    </td>
                                    <td class="amount">{dollars(amounts[key])}</td>
                                </tr>
                            ))}
                        {!is_zero(amounts.credits) && (
                            <tr>
                                <td>Credits, taken off</td>
                                <td class="amount">{dollars(amounts.credits)}</td>
                            </tr>
                        )}
                        <tr class="total">
                            <th scope="row">All cash needed</th>
                            <td class="amount">{dollars(amounts.needed)}</td>
                        </tr>
                        {!is_zero(amounts.deposits) && (
                            <tr>
                                <td>Deposits, paid before</td>
                                <td class="amount">{dollars(amounts.deposits)}</td>
                            </tr>
                        )}
                        <tr class="total">
                            <th scope="row">To bring to the closing</th>
                            <td class="amount">{dollars(amounts.to_close)}</td>
                        </tr>
                    </tbody>
                </table>
                <table class="lines">
                    <caption>When</caption>
                    <tbody>
                        {cash.calendar.map((day, i) => (
                            <tr key={i}>
                                <td>
                                    {date(day.date)}, {day.words}
                                </td>
                                <td class="amount">{dollars(day.amount)}</td>
                            </tr>
                        ))}
                    </tbody>
                </table>
            </div>
            {!is_zero(cash.scenario.lender_credit_without_use) && (
                <p class="facts">
                    {dollars(cash.scenario.lender_credit_without_use)} of the lender credit is lost:
                    closing costs and prepaids do not come to as much.
                </p>
            )}
        </section>
    );
}

export function SheetView() {
    const hand = tour.value!.scenario.terms.name;
    const {answer} = use_answer<Quote>('quote', answered.value);
    const {answer: cash} = use_answer<Cash>('cash', answered.value, {scenario: hand});
    if (!answer) return <p class="waiting">Writing the sheet…</p>;
    return (
        <div class="sheet-page">
            <div class="sheet-tools">
                <h2>A sheet to take home</h2>
                <button class="main-button" onClick={() => window.print()}>
                    Print
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
