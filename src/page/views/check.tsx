// The lender's view: every figure with its formula, inputs, rounding, rule, dates and source.
import {useState} from 'preact/hooks';

import type {Figure, Recheck} from '../answers';
import {ask_file, Refused} from '../engine';
import {brief, date} from '../figures';
import {file_name, hand_over} from '../files';
import {use_answer} from '../parts/asked';
import {Cautions} from '../parts/cautions';
import {estimate_words, terms_words} from '../parts/terms';
import {answered, known, lost, notice, tour} from '../store';
import {Name} from '../parts/name';

/// What a figure rests on, in one line.
function ground_words(figure: Figure): string {
    const words = [];
    if (figure.rounding) words.push(`rounding ${figure.rounding}`);
    if (figure.rule) words.push(figure.rule);
    if (figure.effective) words.push(`from ${date(figure.effective)}`);
    if (figure.until) {
        const beyond = figure.beyond_end ? ', and used on: a later one is not in the data' : '';
        words.push(`before ${date(figure.until)}${beyond}`);
    }
    if (figure.status) words.push(figure.status);
    if (figure.source) words.push(figure.source);
    return words.join('; ');
}

function to_figure(id: string): void {
    const row = document.getElementById(`figure-${id}`);
    row?.scrollIntoView({block: 'center'});
    row?.focus({preventScroll: true});
}

function Inputs({figure, all}: {figure: Figure; all: Map<string, Figure>}) {
    if (figure.inputs.length === 0) return null;
    return (
        <ul class="inputs" aria-label={`What ${figure.name} is reckoned from`}>
            {figure.inputs.map((id) => (
                <li key={id}>
                    <button class="input-link" onClick={() => to_figure(id)}>
                        {brief(all.get(id)?.name ?? id)} <span>{all.get(id)?.shown}</span>
                    </button>
                </li>
            ))}
        </ul>
    );
}

function FigureRow({figure, all}: {figure: Figure; all: Map<string, Figure>}) {
    const ground = ground_words(figure);
    return (
        <li class="checked" id={`figure-${figure.id}`} tabIndex={-1}>
            <p class="checked-head">
                <span class="checked-name">
                    <Name of={figure.name} />
                </span>
                <span class="checked-value">{figure.shown}</span>
                <span class={figure.agrees ? 'agrees' : 'refused'}>
                    {figure.agrees ? (figure.formula ? 'agrees' : '') : 'does not agree'}
                </span>
            </p>
            {figure.formula && <p class="formula">= {figure.formula}</p>}
            <Inputs figure={figure} all={all} />
            {ground && <p class="facts">{ground}</p>}
        </li>
    );
}

/// The same figures as live formulas, in a file for a spreadsheet.
async function save_workbook(scenario: string): Promise<void> {
    const inquiry = answered.value;
    if (!inquiry) return;
    try {
        const book = await ask_file('workbook', inquiry, {scenario});
        const name = file_name(`${inquiry.buyer ?? 'buyer'} ${scenario}`, 'xlsx');
        hand_over(book, name);
        notice.value = `Saved as ${name}. It recomputes every figure from its formula.`;
    } catch (error) {
        if (error instanceof Refused) notice.value = error.problems[0]?.found ?? 'refused';
        else lost();
    }
}

function matches(figure: Figure, wanted: string): boolean {
    const text = `${figure.name} ${figure.shown} ${figure.formula ?? ''} ${ground_words(figure)}`;
    return text.toLowerCase().includes(wanted.trim().toLowerCase());
}

function Figures({answer}: {answer: Recheck}) {
    const [wanted, want] = useState('');
    const all = new Map(
        answer.sections.flatMap((section) =>
            section.figures.map((figure): [string, Figure] => [figure.id, figure]),
        ),
    );
    const sections = answer.sections
        .map(({title, figures}) => ({
            title,
            figures: figures.filter((one) => matches(one, wanted)),
        }))
        .filter(({figures}) => figures.length > 0);
    return (
        <>
            <p class="saves">
                {answer.figures} figures, each reckoned a second time from its formula in exact
                fractions:{' '}
                {answer.differences === 0
                    ? 'all agree to the last digit.'
                    : `${answer.differences} do not agree.`}
            </p>
            <button class="step" onClick={() => save_workbook(answer.scenario.terms.name)}>
                Workbook for a spreadsheet
            </button>
            <label class="field find">
                <span>Find a figure, a rule or a source</span>
                <input
                    type="search"
                    value={wanted}
                    onInput={(event) => want(event.currentTarget.value)}
                />
            </label>
            {sections.length === 0 && <p class="home-line">Nothing here has that in it.</p>}
            {sections.map(({title, figures}) => (
                <section class="group wide" key={title}>
                    <h3>{title}</h3>
                    <ul class="checked-list">
                        {figures.map((figure) => (
                            <FigureRow key={figure.id} figure={figure} all={all} />
                        ))}
                    </ul>
                </section>
            ))}
        </>
    );
}

function Answer() {
    const terms = tour.value!.scenario.terms;
    const {answer, problems} = use_answer<Recheck>('recheck', answered.value, {
        scenario: terms.name,
    });
    if (problems.length > 0) {
        return <p class="refused">{problems.map((one) => one.found).join('; ')}</p>;
    }
    if (!answer) return <p class="waiting">Reckoning a second time…</p>;
    if (!answer.scenario.available) {
        return (
            <p class="refused">
                Not to be had: {answer.scenario.refusals.map((one) => one.words).join('; ')}
            </p>
        );
    }
    return (
        <>
            <Figures answer={answer} />
            <Cautions all={answer.cautions} />
        </>
    );
}

export function CheckView() {
    const has = known.value?.questions.some((one) => one.name === 'recheck') ?? false;
    const {heading, scenario} = tour.value!;
    const {terms} = scenario;
    return (
        <div class="check-page">
            <h2>Where each figure comes from</h2>
            <p class="home-line">
                For the lender, under <Name of={terms.name} />: {terms_words(terms)}.{' '}
                {estimate_words(heading)}
            </p>
            {has ? (
                <Answer />
            ) : (
                <p class="message">
                    This program does not answer the question "recheck" yet. Until it does, the
                    command line shows the parts of each figure: quoin quote, quoin cash and quoin
                    schedule.
                </p>
            )}
        </div>
    );
}
