// An option from the builder, financed or in cash, or done after the closing.
import {signal} from '@preact/signals';

import type {Later as Answer, LaterPath, LaterScenario, Option} from '../answers';
import {cautions_beside} from '../answers';
import type {Options} from '../engine';
import {brief, dollars, is_zero, signed} from '../figures';
import {without_means} from '../inquiry';
import {say} from '../language';
import {loan_name} from '../state/books';
import {answered, buyer, tour} from '../state/signals';
import {use_answer} from './asked';
import {PartFold} from './fold';
import {LaterCosts} from './later_costs';
import {Select} from './loan_fields';
import {Typed} from './typed_field';
import {strong} from './marks';
import {estimate_words, terms_words} from './terms';
import {Name} from './name';

import './bests.css';
import './mixes.css';
import './later.css';

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
                label={say.later.fields.option}
                value={option.id}
                choices={options.map((one) => [
                    one.id,
                    one.picked ? say.later.fields.chosen({name: brief(one.name)}) : brief(one.name),
                ])}
                change={(value) => write({option: value, level: '', count: ''})}
            />
            {levels.length > 0 && (
                <Select
                    label={say.later.fields.level}
                    value={asked.level}
                    choices={levels}
                    change={(value) => write({level: value})}
                />
            )}
            {option.quantity?.asked && (
                <label class="field">
                    <span>{say.later.fields.how_many}</span>
                    <Typed
                        label={say.later.fields.how_many}
                        after={say.codes.units[option.quantity.unit]}
                        value={asked.count}
                        change={(value) => write({count: value})}
                    />
                </label>
            )}
            <label class="field">
                <span>{say.later.fields.month}</span>
                <Typed
                    label={say.later.fields.month_label}
                    value={asked.month}
                    change={(value) => write({month: value})}
                />
            </label>
            <label class="field">
                <span>{say.later.fields.rate}</span>
                <Typed
                    label={say.later.fields.rate_label}
                    after="%"
                    value={asked.rate}
                    change={(value) => write({rate: value})}
                />
            </label>
            <label class="field">
                <span>{say.later.fields.months}</span>
                <Typed
                    label={say.later.fields.months_label}
                    after={say.later.fields.months_unit}
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
            <span class="best-figure">{say.later.about({amount: dollars(estimate)})}</span>
            <span class="faint">{say.later.at_once({payment: month})}</span>
        </>
    ) : (
        <>
            <span class="best-figure">{say.common.monthly({amount: signed(path.a_month)})}</span>
            <span class="faint">
                {[
                    path.months > 0 && say.later.for_months(path),
                    !is_zero(path.at_closing) &&
                        say.later.at_closing({amount: signed(path.at_closing)}),
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
            <span class="best-name">{say.later.ways[path.way]}</span>
            {path.refusals.length > 0 ? (
                <span class="refused">
                    {say.common.refused_beside({
                        why: path.refusals.map((one) => one.words).join('; '),
                    })}
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
                {say.later.item({
                    option: <Name of={item.name} />,
                    level: item.level,
                    price: signed(item.price),
                    estimate: item.estimate
                        ? {amount: dollars(item.estimate), note: `${item.note}`}
                        : null,
                    strong,
                })}
            </p>
            {item.why_not && <p class="refused">{say.later.not_here({why: item.why_not})}</p>}
            <ul class="conditions">
                {cautions_beside(answer.cautions, general).map(({words}, i) => (
                    <li key={i}>{words}</li>
                ))}
            </ul>
            <p class="home-line">
                {say.later.without_it({
                    loan: <Name of={loan_name(one.terms.name)} />,
                    month: dollars(one.monthly_without),
                    terms: terms_words(one.terms),
                    estimate: estimate_words(tour.value!.heading),
                })}
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
    return (
        <PartFold view="budget" part="later" title={say.later.title} says={say.afford.parts.later}>
            <NowOrLater />
        </PartFold>
    );
}

const nothing_asked: Asked = {option: '', level: '', count: '', month: '1', rate: '', months: ''};
/// What was typed last, and for whom: it stays while another part is open.
const asked_last = signal({buyer: '', asked: nothing_asked});

function NowOrLater() {
    const {key} = buyer.value!;
    const typed = asked_last.value.buyer === key ? asked_last.value.asked : nothing_asked;
    const set = (asked: Asked) => {
        asked_last.value = {buyer: key, asked};
    };
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
        <>
            <p class="home-line">{say.later.says}</p>
            {option ? (
                <Fields
                    options={options}
                    option={option}
                    asked={asked}
                    write={(members) => set({...typed, ...members})}
                />
            ) : (
                <p class="note">{say.later.no_estimates}</p>
            )}
            {half && <p class="note">{say.later.both}</p>}
            {problems.map((each, i) => (
                <p key={i} class="wrong">
                    {say.common.wrong(each)}
                </p>
            ))}
            {one && one.refusals.length > 0 && (
                <p class="refused">
                    {say.common.refused({why: one.refusals.map((each) => each.words).join('; ')})}
                </p>
            )}
            {answer && item && one && one.refusals.length === 0 && (
                <Found answer={answer} item={item} one={one} />
            )}
        </>
    );
}
