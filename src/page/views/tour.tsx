// The tour: one area of the home at a time, what comes with it, what can be touched.
import {useRef, useState} from 'preact/hooks';

import type {Area, Option, Shown, Tour} from '../answers';
import {brief, short} from '../figures';
import {Cautions} from '../parts/cautions';
import {OptionCard} from '../parts/option_card';
import {buyer, tour, walk_to} from '../store';
import {Name} from '../parts/name';
import {standing_words} from '../words';

/// What cannot be had here, each with its reason.
function Barred({options}: {options: Option[]}) {
    const rows = options.flatMap((option) =>
        option.forms
            .filter((form) => form.state === 'unavailable')
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
                        <span>
                            <Name of={row.name} />
                        </span>
                        <span class="faint">{row.why}</span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

function Model({items, model}: {items: Shown[]; model: string}) {
    if (items.length === 0) return null;
    return (
        <section class="group">
            <h3>What you see in the furnished {brief(model)}</h3>
            <ul class="model">
                {items.map((item, i) => (
                    <li key={i} class={item.standing === 'extra' ? 'extra' : ''}>
                        <span>
                            <Name
                                of={item.as_shown ? `${item.name}: ${item.as_shown}` : item.name}
                            />
                        </span>
                        <span class="model-standing">
                            {item.standing === 'yours_partly'
                                ? `yours: ${brief(item.your_level)}`
                                : standing_words[item.standing]}
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
        option.forms.some((form) => form.state !== 'unavailable'),
    );
    const of = (...kinds: string[]) => can.filter((option) => kinds.includes(option.kind));
    return (
        <div class="area">
            {area.included.length > 0 && (
                <section class="group comes">
                    <h3>
                        Comes with the <Name of={answer.heading.plan} />
                    </h3>
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
                                <span>
                                    <Name of={request.text} />
                                </span>
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
    if (!open || !buyer.value?.example) return null;
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
                <strong>This is an example, already filled in.</strong> Walk through its rooms and
                touch any line: price, month and cash at the foot of the page follow at once. Undo
                takes every touch back.
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
                <Cautions all={answer.cautions} />
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
                        <span>{brief(each.name)}</span>
                        {each.options.some((option) => option.picked) && (
                            <span class="dot" title="something is chosen here" />
                        )}
                    </button>
                ))}
            </nav>
            <div class="area-page">
                <Welcome />
                <p class="home-line">
                    <Name of={answer.heading.plan} />, elevation{' '}
                    <Name of={answer.heading.elevation} />, lot {answer.heading.lot}
                    {answer.stage && `. Built as far as: ${answer.stage}`}
                </p>
                <h2 ref={top} tabIndex={-1}>
                    <Name of={area.name} />
                </h2>
                <AreaView key={area.id} area={area} answer={answer} />
                {next && (
                    <button class="main-button next-area" onClick={() => go(next.id)}>
                        Next: {brief(next.name)}
                    </button>
                )}
                <Cautions all={answer.cautions} />
            </div>
        </div>
    );
}
