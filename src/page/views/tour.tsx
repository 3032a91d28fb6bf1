// The tour: one area of the home at a time, what comes with it, what can be touched.
import {useEffect, useRef, useState} from 'preact/hooks';

import type {AddsItem, Area, Form, Option, Shown, Tour, Touch} from '../answers';
import {ask} from '../engine';
import {is_zero, plain, short, signed} from '../figures';
import {with_quantity, with_spend, without} from '../inquiry';
import {Cautions} from '../parts/cautions';
import {act, buyer, change, notice, touch, tour, walk_to} from '../store';

/// What a touch would change, beside what it is a touch on.
function Effect({how, taken}: {how: Touch; taken: boolean}) {
    if (how.refusals) {
        return (
            <span class="effect refused">{how.refusals.map((one) => one.words).join('; ')}</span>
        );
    }
    const month = how.per_month ?? '';
    const cash = how.cash_to_close ?? '';
    const nothing = is_zero(how.price) && is_zero(month) && is_zero(cash);
    if (nothing) return null;
    return (
        <span class="effect">
            {taken && <span class="effect-cash">taking it out:</span>}
            <span class="effect-month">
                {signed(month)}
                <small> a month</small>
            </span>
            <span class="effect-cash">
                {signed(cash)} cash<span class="roomy"> to close</span>
            </span>
        </span>
    );
}

function words_beside(how: Touch | null): string {
    if (!how) return '';
    const words = [];
    if (how.along.length > 0) {
        words.push(
            `${how.takes_out ? 'takes out with it' : 'brings along'}: ${how.along.join(', ')}`,
        );
    }
    if (how.instead_of.length > 0) words.push(`takes the place of: ${how.instead_of.join(', ')}`);
    return words.join('; ');
}

function price_of(option: Option, form: Form): string {
    if (form.state === 'in a package') return 'in a package';
    if (form.state === 'included') return option.kind === 'choice' ? 'no cost' : 'included';
    if (option.kind === 'choice') return 'no cost';
    if (!form.price) return '';
    return is_zero(form.price) ? 'no extra cost' : short(form.price);
}

/// One thing to touch: a row as wide as the page, its control at the left, its money at the right.
function Row({option, form, single}: {option: Option; form: Form; single: boolean}) {
    const on =
        form.state === 'chosen' ||
        form.state === 'in a package' ||
        (form.state === 'included' && !single);
    const held = form.state === 'in a package';
    const fixed = held || form.touch === null;
    const name = form.name || option.name;
    const beside = words_beside(form.touch);
    const tap = () => {
        if (form.touch) touch(option, form, form.touch);
    };
    return (
        <div class={`row ${on ? 'on' : ''} ${fixed ? 'fixed' : ''}`}>
            <label class="row-label">
                <input
                    type={single ? 'checkbox' : 'radio'}
                    name={option.id}
                    checked={on}
                    disabled={held}
                    onChange={(event) => {
                        if (form.state === 'chosen' && !single) return;
                        if (!form.touch) {
                            event.currentTarget.checked = on;
                            return;
                        }
                        tap();
                    }}
                />
                <span class="row-name">
                    <span class="row-title">{name}</span>
                    {single && option.text && <span class="row-note">{option.text}</span>}
                    {form.note && <span class="row-note">{form.note}</span>}
                    {held && <span class="row-note">comes in {form.why}</span>}
                    {beside && <span class="row-note bites">{beside}</span>}
                    {form.touch?.jumps.map((jump) => (
                        <span key={jump} class="row-note jump">
                            {jump}
                        </span>
                    ))}
                </span>
                <span class="row-money">
                    <span class="row-price">{price_of(option, form)}</span>
                    {form.touch && option.kind !== 'choice' && (
                        <Effect how={form.touch} taken={form.state === 'chosen'} />
                    )}
                </span>
            </label>
        </div>
    );
}

/// A number that the buyer says: committed with Enter, by leaving, or a step at a time.
function Stepper({option}: {option: Option}) {
    const quantity = option.quantity!;
    const [text, write] = useState(quantity.now);
    useEffect(() => write(quantity.now), [quantity.now, notice.value]); // refused: as it was
    const set = (value: string) => {
        if (value === quantity.now) return;
        void change_number(option, value, (inquiry) => with_quantity(inquiry, option, value));
    };
    const next = (sign: number) => {
        const places = Math.max(
            ...[quantity.step!, quantity.now].map((one) => (one.split('.')[1] ?? '').length),
        );
        const value = Number(text) + sign * Number(quantity.step);
        const within = Math.min(Math.max(value, Number(quantity.lowest)), Number(quantity.highest));
        write(within.toFixed(places));
        set(within.toFixed(places));
    };
    return (
        <div class="stepper">
            <button
                aria-label={`Fewer: ${option.name}`}
                onClick={() => next(-1)}
                disabled={Number(text) <= Number(quantity.lowest)}
            >
                −
            </button>
            <label>
                <span class="sr">{option.name}, how many</span>
                <input
                    inputMode="decimal"
                    value={text}
                    onInput={(event) => write(event.currentTarget.value)}
                    onChange={() => set(text.trim())}
                />
            </label>
            <button
                aria-label={`More: ${option.name}`}
                onClick={() => next(1)}
                disabled={Number(text) >= Number(quantity.highest)}
            >
                +
            </button>
            <span class="faint">
                {quantity.unit === 'each' ? '' : quantity.unit} {quantity.limits}
            </span>
        </div>
    );
}

/// A changed number: what it changes is asked of the home as it was.
async function change_number(
    option: Option,
    value: string,
    next: (inquiry: any) => any,
): Promise<void> {
    const one = buyer.value;
    const answer = tour.value;
    if (!one || !answer) return;
    const before = one.inquiry;
    const hand = before.scenarios?.find((each: any) => each.name === answer.scenario.terms.name);
    const chosen = option.forms.find((form) => form.state === 'chosen');
    const name = `${option.id}${chosen?.id ? `:${chosen.id}` : ''}=${value}`;
    const what = {what: `${option.name}: ${plain(value)}`, touch: null, remarks: []};
    const done = act(next(before), what);
    try {
        const adds = await ask<{items: AddsItem[]}>(
            'adds',
            {...before, scenarios: [hand]},
            {option: name},
        );
        await done;
        const item = adds.items[0];
        const added = item?.by_scenario?.[0];
        if (item && added?.available && change.value === what) {
            change.value = {
                ...what,
                touch: {
                    takes_out: false,
                    price: item.price,
                    per_month: added.per_month,
                    cash_to_close: added.cash_to_close,
                    jumps: [],
                    along: [],
                    instead_of: [],
                    brings: [],
                    drops: [],
                },
                remarks: added.jumps.map((jump) => jump.words),
            };
        }
    } catch {
        // The engine has said in act() what is wrong.
    }
}

function Allowance({option}: {option: Option}) {
    const [text, write] = useState(option.spend ?? '');
    useEffect(() => write(option.spend ?? ''), [option.spend, notice.value]);
    const set = () => {
        const value = text.trim().replace(/[$,]/g, '');
        if (value === (option.spend ?? '')) return;
        if (value === '') {
            void act(without(buyer.value!.inquiry, [option.id]), {
                what: `${option.name}: within the allowance`,
                touch: null,
                remarks: [],
            });
        } else {
            void change_number(option, value, (inquiry) => with_spend(inquiry, option, value));
        }
    };
    return (
        <div class="allowance">
            <p>{short(option.budget)} is in the price. What is spent above it is charged.</p>
            <label class="money-field">
                To spend <span aria-hidden="true">$</span>
                <input
                    inputMode="decimal"
                    value={text}
                    placeholder={option.budget ?? ''}
                    onInput={(event) => write(event.currentTarget.value)}
                    onChange={set}
                />
            </label>
        </div>
    );
}

function facts_of(option: Option): string[] {
    const facts = [];
    if (option.quantity && !option.quantity.asked) {
        facts.push(
            `${plain(option.quantity.now)} ` +
                (option.quantity.unit === 'each' ? 'of them' : option.quantity.unit),
        );
    }
    if (option.wish) facts.push(`wish ${option.wish}`);
    if (option.agreed) facts.push('in the contract already');
    if (option.cutoff) facts.push(`choose before: ${option.cutoff.toLowerCase()}`);
    if (option.work.length > 0)
        facts.push(`${option.work.join(', ')} work: permit and licensed trade`);
    return facts;
}

/// A level that no plan includes can also be left out.
function Without({option}: {option: Option}) {
    const chosen = option.forms.find((form) => form.state === 'chosen');
    const out = chosen?.touch ?? null;
    return (
        <div class={`row ${chosen ? '' : 'on'}`}>
            <label class="row-label">
                <input
                    type="radio"
                    name={option.id}
                    checked={!chosen}
                    onChange={() => {
                        if (chosen && out) touch(option, chosen, out);
                    }}
                />
                <span class="row-name">
                    <span class="row-title">Without</span>
                </span>
                <span class="row-money">{out && <Effect how={out} taken={false} />}</span>
            </label>
        </div>
    );
}

function OptionCard({option}: {option: Option}) {
    const can = option.forms.filter((form) => form.state !== 'not to be had');
    const single = option.kind === 'upgrade' || option.kind === 'package';
    const included = option.forms.some(
        (form) => form.state === 'included' || (form.touch?.takes_out && form.state === 'offered'),
    );
    const held = option.forms.some((form) => form.state === 'in a package');
    const named = !single;
    const facts = facts_of(option);
    return (
        <article class={`option ${option.kind}`} aria-label={option.name}>
            {named && <h4 class="option-name">{option.name}</h4>}
            {!single && option.text && <p class="option-text">{option.text}</p>}
            {option.kind === 'allowance' ? (
                <Allowance option={option} />
            ) : (
                <div
                    class="rows"
                    role={single ? undefined : 'radiogroup'}
                    aria-label={single ? undefined : option.name}
                >
                    {option.kind === 'levels' && !included && !held && <Without option={option} />}
                    {can.map((form) => (
                        <Row key={form.id} option={option} form={form} single={single} />
                    ))}
                </div>
            )}
            {option.quantity?.asked && option.picked && <Stepper option={option} />}
            {option.parts.length > 0 && <p class="facts">Brings {option.parts.join('; ')}</p>}
            {facts.length > 0 && <p class="facts">{facts.join(' · ')}</p>}
            {option.note && <p class="note">{option.note}</p>}
            {option.later && (
                <p class="note">
                    After closing instead: about {short(option.later.estimate)}. {option.later.note}
                </p>
            )}
        </article>
    );
}

/// What cannot be had here, each with its reason.
function Barred({options}: {options: Option[]}) {
    const rows = options.flatMap((option) =>
        option.forms
            .filter((form) => form.state === 'not to be had')
            .map((form) => ({
                key: `${option.id}:${form.id}`,
                why: form.why,
                name: form.name ? `${option.name}: ${form.name}` : option.name,
            })),
    );
    if (rows.length === 0) return null;
    return (
        <section class="group">
            <h3>Not to be had here</h3>
            <ul class="barred">
                {rows.map((row) => (
                    <li key={row.key}>
                        <span>{row.name}</span>
                        <span class="faint">{row.why}</span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

const standing_words: Record<string, string> = {
    'included': 'comes with yours',
    'choice at no cost': 'a choice at no cost',
    'yours': 'in your home',
    'extra': 'extra',
    'not to be had': 'not to be had here',
    'not for sale': 'decoration, not for sale',
};

function Model({items, model}: {items: Shown[]; model: string}) {
    if (items.length === 0) return null;
    return (
        <section class="group">
            <h3>What you see in the furnished {model}</h3>
            <ul class="model">
                {items.map((item, i) => (
                    <li key={i} class={item.standing === 'extra' ? 'extra' : ''}>
                        <span>{item.as_shown ? `${item.name}: ${item.as_shown}` : item.name}</span>
                        <span class="model-standing">
                            {item.standing === 'yours in part'
                                ? `yours: ${item.your_level}`
                                : (standing_words[item.standing] ?? item.standing)}
                            {item.standing === 'extra' && item.price && `, ${short(item.price)}`}
                        </span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

function Group({title, says, options}: {title: string; says: string; options: Option[]}) {
    if (options.length === 0) return null;
    return (
        <section class="group">
            <h3>{title}</h3>
            <p class="group-says">{says}</p>
            {options.map((option) => (
                <OptionCard key={option.id} option={option} />
            ))}
        </section>
    );
}

function AreaView({area, answer}: {area: Area; answer: Tour}) {
    const can = area.options.filter((option) =>
        option.forms.some((form) => form.state !== 'not to be had'),
    );
    const of = (...kinds: string[]) => can.filter((option) => kinds.includes(option.kind));
    return (
        <div class="area">
            {area.included.length > 0 && (
                <section class="group comes">
                    <h3>Comes with the {answer.heading.plan}</h3>
                    <ul class="included">
                        {area.included.map((text) => (
                            <li key={text}>{text}</li>
                        ))}
                    </ul>
                </section>
            )}
            <Group title="Packages" says="One price for several things." options={of('package')} />
            <Group
                title="Upgrades"
                says="Touch to put in or take out. The figures are what that changes."
                options={of('levels', 'upgrade')}
            />
            <Group title="Choices at no cost" says="Pick any one of them." options={of('choice')} />
            <Group
                title="Allowances"
                says="A budget that is in the price."
                options={of('allowance')}
            />
            {area.requests.length > 0 && (
                <section class="group">
                    <h3>Asked for outside the price book</h3>
                    <ul class="barred">
                        {area.requests.map((request) => (
                            <li key={request.text}>
                                <span>{request.text}</span>
                                <span class="faint">
                                    to be confirmed, not in the price
                                    {request.estimate &&
                                        `; estimated at ${short(request.estimate)}`}
                                </span>
                            </li>
                        ))}
                    </ul>
                </section>
            )}
            <Model items={area.shown} model={answer.model} />
            <Barred options={area.options} />
        </div>
    );
}

function Welcome() {
    const [open, set] = useState(() => {
        try {
            return localStorage.getItem('quoin.welcome') !== 'seen';
        } catch {
            return true;
        }
    });
    if (!open) return null;
    const close = () => {
        set(false);
        try {
            localStorage.setItem('quoin.welcome', 'seen');
        } catch {
            /* kept for this visit */
        }
    };
    return (
        <aside class="welcome">
            <p>
                <strong>This is a home already filled in.</strong> Walk through its rooms and touch
                any line: price, month and cash at the foot of the page follow at once. Undo takes
                every touch back.
            </p>
            <button class="step" onClick={close}>
                Understood
            </button>
        </aside>
    );
}

export function TourView() {
    const answer = tour.value!;
    const one = buyer.value!;
    const index = Math.max(
        answer.areas.findIndex((area) => area.id === one.area),
        0,
    );
    const area = answer.areas[index];
    const top = useRef<HTMLHeadingElement>(null);
    if (!area) {
        return (
            <div class="area-page">
                <h2>Nothing to walk through</h2>
                <p>
                    The price book lists no included features and no options. The home is its plan,
                    its elevation and its lot: see Site.
                </p>
                <Cautions texts={answer.cautions} />
            </div>
        );
    }
    const go = (id: string) => {
        walk_to(id);
        top.current?.focus({preventScroll: true});
        window.scrollTo({top: 0});
    };
    const next = answer.areas[index + 1];
    return (
        <div class="tour-page">
            <nav class="areas" aria-label="Areas of the home">
                {answer.areas.map((each) => (
                    <button
                        key={each.id}
                        class="area-link"
                        aria-current={each === area ? 'true' : undefined}
                        onClick={() => go(each.id)}
                    >
                        <span>{each.name}</span>
                        {each.options.some((option) => option.picked) && (
                            <span class="dot" title="something is chosen here" />
                        )}
                    </button>
                ))}
            </nav>
            <div class="area-page">
                <Welcome />
                <p class="home-line">
                    {answer.heading.plan}, elevation {answer.heading.elevation}, lot{' '}
                    {answer.heading.lot}
                    {answer.stage && `. Built as far as: ${answer.stage}`}
                </p>
                <h2 ref={top} tabIndex={-1}>
                    {area.name}
                </h2>
                <AreaView key={area.id} area={area} answer={answer} />
                {next && (
                    <button class="main-button next-area" onClick={() => go(next.id)}>
                        Next: {next.name}
                    </button>
                )}
                <Cautions texts={answer.cautions} />
            </div>
        </div>
    );
}
