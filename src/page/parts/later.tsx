// An option from the builder, financed or in cash, or done after the closing.
import {useState} from 'preact/hooks';

import type {Later as Answer, LaterPath, LaterScenario, Option} from '../answers';
import {cautions_beside} from '../answers';
import type {Options} from '../engine';
import {brief, dollars, is_zero, signed} from '../figures';
import {without_means} from '../inquiry';
import {answered, tour} from '../store';
import {unit_words} from '../words';
import {use_answer} from './asked';
import {LaterCosts, way_words} from './later_costs';
import {Select} from './loan_fields';
import {Typed} from './typed_field';
import {estimate_words, terms_words} from './terms';
import {Name} from './name';

/// The levels that the builder can be asked for.
function levels_of(option: Option): [string, string][] {
    if (option.kind !== 'levels') return [];
    return option.forms
        .filter((form) => form.state === 'offered' || form.state === 'chosen')
        .map((form) => [form.id, form.name]);
}

/// An option as a question names it: ID, ID:LEVEL or ID=NUMBER.
function named(option: Option, level: string, count: string): string {
    if (option.kind === 'levels') return `${option.id}:${level}`;
    return option.quantity?.asked ? `${option.id}=${count}` : option.id;
}

interface Asked {
    option: string;
    level: string;
    count: string;
    month: string;
    rate: string;
    months: string;
}

function Fields({
    options,
    option,
    asked,
    write,
}: {
    options: Option[];
    option: Option;
    asked: Asked;
    write: (members: Partial<Asked>) => void;
}) {
    const levels = levels_of(option);
    return (
        <div class="means later-fields">
            <Select
                label="Option"
                value={option.id}
                choices={options.map((one) => [
                    one.id,
                    one.picked ? `${brief(one.name)} (chosen)` : brief(one.name),
                ])}
                change={(value) => write({option: value, level: '', count: ''})}
            />
            {levels.length > 0 && (
                <Select
                    label="Level from the builder"
                    value={asked.level}
                    choices={levels}
                    change={(value) => write({level: value})}
                />
            )}
            {option.quantity?.asked && (
                <label class="field">
                    <span>How many</span>
                    <Typed
                        label="How many"
                        after={unit_words[option.quantity.unit]}
                        value={asked.count}
                        change={(value) => write({count: value})}
                    />
                </label>
            )}
            <label class="field">
                <span>Done with payment</span>
                <Typed
                    label="Done with which payment of the loan"
                    value={asked.month}
                    change={(value) => write({month: value})}
                />
            </label>
            <label class="field">
                <span>On a personal loan at</span>
                <Typed
                    label="Rate of a personal loan"
                    after="%"
                    value={asked.rate}
                    change={(value) => write({rate: value})}
                />
            </label>
            <label class="field">
                <span>for how long</span>
                <Typed
                    label="Months of a personal loan"
                    after="months"
                    value={asked.months}
                    change={(value) => write({months: value})}
                />
            </label>
        </div>
    );
}

/// What a way takes: paid at once after the closing it is the estimate, else a month and at closing.
function Taken({path, estimate, month}: {path: LaterPath; estimate: string; month: number}) {
    return path.way === 'after' ? (
        <>
            <span class="best-figure">about {dollars(estimate)}</span>
            <span class="faint">at once, with payment {month}</span>
        </>
    ) : (
        <>
            <span class="best-figure">{signed(path.a_month)} a month</span>
            <span class="faint">
                {[
                    path.months > 0 && `for ${path.months} months`,
                    !is_zero(path.at_closing) && `${signed(path.at_closing)} at closing`,
                ]
                    .filter(Boolean)
                    .join('; ')}
            </span>
        </>
    );
}

function Way({path, estimate, month}: {path: LaterPath; estimate: string; month: number}) {
    return (
        <li class="way">
            <span class="best-name">{way_words[path.way]}</span>
            {path.refusals.length > 0 ? (
                <span class="refused">
                    not to be had: {path.refusals.map((one) => one.words).join('; ')}
                </span>
            ) : (
                <Taken path={path} estimate={estimate} month={month} />
            )}
        </li>
    );
}

function Found({
    answer,
    item,
    one,
}: {
    answer: Answer;
    item: Answer['items'][number];
    one: LaterScenario;
}) {
    const general = tour.value!.cautions;
    return (
        <>
            <p>
                <strong>
                    <Name of={item.name} />
                    {item.level && `: ${item.level}`}
                </strong>
                , {signed(item.price)} from the builder.{' '}
                {item.estimate &&
                    `After closing about ${dollars(item.estimate)} by the estimate of the price ` +
                        `book. ${item.note}`}
            </p>
            {item.why_not && (
                <p class="refused">Not to be had from the builder here: {item.why_not}</p>
            )}
            <ul class="conditions">
                {cautions_beside(answer.cautions, general).map(({words}, i) => (
                    <li key={i}>{words}</li>
                ))}
            </ul>
            <p class="home-line">
                <Name of={one.terms.name} />: {dollars(one.monthly_without)} a month without it.{' '}
                {terms_words(one.terms)}. {estimate_words(tour.value!.heading)}
            </p>
            <ul class="bests">
                {one.ways.map((path) => (
                    <Way
                        key={path.way}
                        path={path}
                        estimate={item.estimate ?? ''}
                        month={answer.month}
                    />
                ))}
            </ul>
            <LaterCosts one={one} />
        </>
    );
}

function with_loan(asked: Asked): Options {
    return asked.rate || asked.months ? {'loan-rate': asked.rate, 'loan-months': asked.months} : {};
}

export function Later() {
    const [typed, set] = useState<Asked>({
        option: '',
        level: '',
        count: '',
        month: '1',
        rate: '',
        months: '',
    });
    const {areas, scenario} = tour.value!;
    const options = areas.flatMap((area) => area.options).filter((one) => one.later);
    const option =
        options.find((one) => one.id === typed.option) ??
        options.find((one) => one.picked) ??
        options[0];
    const hand = scenario.terms.name;
    const inquiry = without_means(answered.value);
    const chosen = option?.forms.find((form) => form.state === 'chosen')?.id;
    const asked: Asked = {
        ...typed,
        level: typed.level || chosen || (option && levels_of(option)[0]?.[0]) || '',
        count: typed.count || option?.quantity?.now || '',
    };
    // Of the ways to pay the one in hand alone: the costs of a single one fill a page.
    const alone = inquiry && {
        ...inquiry,
        scenarios: inquiry.scenarios.filter((one: any) => one.name === hand),
    };
    const half = Boolean(asked.rate) !== Boolean(asked.months);
    const {answer, problems} = use_answer<Answer>('later', option && !half ? alone : null, {
        option: option ? named(option, asked.level, asked.count) : '',
        month: asked.month,
        ...with_loan(asked),
    });
    const item = answer?.items[0];
    const one = item?.scenarios.find((each) => each.terms.name === hand);
    return (
        <section class="group" aria-labelledby="later">
            <h3 id="later" tabIndex={-1}>
                Now, or after the closing
            </h3>
            <p class="group-says">
                For options that the price book has an estimate for: the cost through each month,
                over the same home without it.
            </p>
            {option ? (
                <Fields
                    options={options}
                    option={option}
                    asked={asked}
                    write={(members) => set({...typed, ...members})}
                />
            ) : (
                <p class="note">The price book has no estimate for anything after the closing.</p>
            )}
            {half && <p class="note">A personal loan takes both, its rate and its months.</p>}
            {problems.map((each, i) => (
                <p key={i} class="wrong">
                    {each.found}; expected: {each.expected}
                </p>
            ))}
            {one && one.refusals.length > 0 && (
                <p class="refused">
                    Not to be had: {one.refusals.map((each) => each.words).join('; ')}
                </p>
            )}
            {answer && item && one && one.refusals.length === 0 && (
                <Found answer={answer} item={item} one={one} />
            )}
        </section>
    );
}
