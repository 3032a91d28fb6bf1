// The lender's view: every figure with its formula, inputs, rounding, rule, dates and source.
import {signal} from '@preact/signals';
import {createContext} from 'preact';
import {useContext, useEffect, useRef, useState} from 'preact/hooks';

import {has_workbook} from '#side/views';

import type {Figure, Recheck, TermCode} from '../answers';
import {ask_file, Refused} from '../engine';
import {brief, short_date} from '../figures';
import {file_name, hand_over} from '../files';
import {say} from '../language';
import {use_answer} from '../parts/asked';
import {estimate_words, terms_words} from '../parts/terms';
import {lost} from '../state/asking';
import {loan_name} from '../state/books';
import {answered, known, notice, tour} from '../state/signals';
import {Fold} from '../parts/fold';
import {Name} from '../parts/name';
import {Term} from '../parts/term';
import {WhatToKnow} from '../parts/what_to_know';

import './check.css';

/// The figures that are terms themselves, and told nowhere else.
const explained: Record<string, TermCode> = {
    earnest_money: 'earnest_money',
    option_deposit: 'option_deposit',
    base_loan: 'base_loan',
    ltv: 'ltv',
    contribution_cap: 'contribution_limit',
    amount_financed: 'amount_financed',
    finance_charge: 'finance_charge',
    total_interest_percentage: 'tip',
    total_of_payments: 'total_of_payments',
    apr: 'apr',
};

/// What a figure rests on, in one line.
function ground_words(figure: Figure): string {
    const words = [];
    if (figure.rounding) words.push(say.check.rounding({rounding: figure.rounding}));
    if (figure.rule) words.push(figure.rule);
    if (figure.effective) words.push(say.check.from({on: short_date(figure.effective)}));
    if (figure.until) {
        const on = short_date(figure.until);
        words.push(say.check.until({on, beyond: Boolean(figure.beyond_end)}));
    }
    if (figure.status) words.push(say.codes.grounds[figure.status]);
    if (figure.source) words.push(figure.source);
    return words.join('; ');
}

/// Shows a figure, whatever section it is in.
const ToFigure = createContext<(id: string) => void>(() => undefined);
/// The figure that is gone to, until it is on the screen.
const aimed_at = signal('');

function Inputs({figure, all}: {figure: Figure; all: Map<string, Figure>}) {
    const go = useContext(ToFigure);
    if (figure.inputs.length === 0) return null;
    return (
        <ul class="inputs" aria-label={say.check.inputs_of({figure: figure.name})}>
            {figure.inputs.map((id) => (
                <li key={id}>
                    <button class="input-link" onClick={() => go(id)}>
                        {brief(all.get(id)?.name ?? id)} <span>{all.get(id)?.shown}</span>
                    </button>
                </li>
            ))}
        </ul>
    );
}

function FigureRow({figure, all}: {figure: Figure; all: Map<string, Figure>}) {
    const ground = ground_words(figure);
    const row = useRef<HTMLLIElement>(null);
    const aimed = aimed_at.value === figure.id;
    useEffect(() => {
        if (!aimed) return;
        aimed_at.value = '';
        row.current?.scrollIntoView({block: 'center'});
        row.current?.focus({preventScroll: true});
    }, [aimed]);
    return (
        <li class="checked" id={`figure-${figure.id}`} tabIndex={-1} ref={row}>
            <p class="checked-head">
                <span class="checked-name">
                    <Term of={explained[figure.id]}>
                        <Name of={figure.name} />
                    </Term>
                </span>
                <span class="checked-value">{figure.shown}</span>
                <span class={figure.agrees ? 'agrees' : 'refused'}>
                    {figure.agrees
                        ? figure.formula
                            ? say.check.agrees
                            : ''
                        : say.check.does_not_agree}
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
        notice.value = say.check.saved({file: name});
    } catch (error) {
        if (error instanceof Refused) notice.value = error.problems[0]?.found ?? say.frame.refused;
        else lost();
    }
}

function matches(figure: Figure, wanted: string): boolean {
    const text = `${figure.name} ${figure.shown} ${figure.formula ?? ''} ${ground_words(figure)}`;
    return text.toLowerCase().includes(wanted.trim().toLowerCase());
}

type Sections = Recheck['sections'];

/// The sections with the figures that hold what is looked for.
function found_in(sections: Sections, wanted: string): Sections {
    return sections
        .map((section) => ({
            ...section,
            figures: section.figures.filter((one) => matches(one, wanted)),
        }))
        .filter(({figures}) => figures.length > 0);
}

function Figures({answer}: {answer: Recheck}) {
    const [wanted, want] = useState('');
    const [shown, show] = useState('');
    const all = new Map(
        answer.sections.flatMap((section) =>
            section.figures.map((figure): [string, Figure] => [figure.id, figure]),
        ),
    );
    const sections = found_in(answer.sections, wanted);
    const go = (id: string) => {
        const there = answer.sections.find(({figures}) => figures.some((one) => one.id === id));
        want('');
        show(there?.title ?? '');
        aimed_at.value = id;
    };
    return (
        <ToFigure.Provider value={go}>
            <p class="saves">{say.check.figures(answer)}</p>
            <div class="check-tools">
                <label class="field check-find">
                    <span>{say.check.find}</span>
                    <input
                        type="search"
                        autocomplete="off"
                        value={wanted}
                        onInput={(event) => want(event.currentTarget.value)}
                    />
                </label>
                {has_workbook && (
                    <button class="step" onClick={() => save_workbook(answer.scenario.terms.name)}>
                        {say.check.workbook}
                    </button>
                )}
            </div>
            {sections.length === 0 && <p class="home-line">{say.check.nothing_found}</p>}
            {/* One is open at a time, or all that hold what is looked for. */}
            {sections.map(({title, figures}, at) => (
                <Fold
                    key={title}
                    id={`section-${at}`}
                    class="check-section"
                    title={title}
                    says={say.check.in_section({count: figures.length})}
                    open={wanted.trim() !== '' || title === shown}
                    turn={() => show(title === shown ? '' : title)}
                >
                    <ul class="checked-list">
                        {figures.map((figure) => (
                            <FigureRow key={figure.id} figure={figure} all={all} />
                        ))}
                    </ul>
                </Fold>
            ))}
        </ToFigure.Provider>
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
    if (!answer) return <p class="waiting">{say.check.reckoning}</p>;
    if (!answer.scenario.available) {
        return (
            <p class="refused">
                {say.common.refused({
                    why: answer.scenario.refusals.map((one) => one.words).join('; '),
                })}
            </p>
        );
    }
    return (
        <>
            <Figures answer={answer} />
            <WhatToKnow all={answer.cautions} />
        </>
    );
}

export function CheckView() {
    const has = known.value?.questions.some((one) => one.name === 'recheck') ?? false;
    const {heading, scenario} = tour.value!;
    const {terms} = scenario;
    return (
        <div class="check-page">
            <h2>{say.check.title}</h2>
            <p class="home-line">
                {say.check.says({
                    loan: <Name of={loan_name(terms.name)} />,
                    terms: terms_words(terms),
                    estimate: estimate_words(heading),
                })}
            </p>
            {has ? <Answer /> : <p class="message">{say.check.no_recheck}</p>}
        </div>
    );
}
