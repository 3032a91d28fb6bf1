// The tour: one area of the home at a time, what comes with it, what can be touched.
import {useMemo, useState} from 'preact/hooks';

import type {Area, AreaInShort, Option, Shown as Exhibit, TermCode, Tour} from '../answers';
import {brief, short} from '../figures';
import {say} from '../language';
import {AreasBeside, go_to, shown_in_tour} from '../parts/areas';
import {Barred, can_be_had} from '../parts/barred';
import {AllChosen} from '../parts/chosen';
import {KeptFold} from '../parts/fold';
import {FloorPlan} from '../parts/floor_plan';
import {FindField, FoundOptions} from '../parts/find';
import {OptionCard, OptionCards} from '../parts/option_card';
import {first_said, FirstSaid} from '../parts/option_row';
import {all_areas, floor_plan, is_example, looked_for, tour} from '../state/signals';
import {strong} from '../parts/marks';
import {Name} from '../parts/name';
import {Again, Term} from '../parts/term';
import {use_shared} from '../parts/use_shared';
import {WhatToKnow} from '../parts/what_to_know';

import './tour.css';

/// How what is shown stands to the buyer's home.
function standing_of({standing, your_level, price}: Exhibit): string {
    if (standing === 'yours_partly') return say.tour.model_partly({level: brief(your_level)});
    const words = say.codes.standings[standing];
    return standing === 'extra' && price
        ? say.tour.model_extra({standing: words, price: short(price)})
        : words;
}

/// What comes with the plan: how much it is says the line, and what it is a touch.
function Included({area, plan}: {area: Area; plan: string}) {
    if (area.included.length === 0) return null;
    return (
        <KeptFold
            id="included"
            kept={`fold:included:${area.id}`}
            class="comes"
            title={say.tour.comes_with({plan: brief(plan)})}
            says={area.included.length}
        >
            <ul class="included">
                {area.included.map((text) => (
                    <li key={text}>{text}</li>
                ))}
            </ul>
        </KeptFold>
    );
}

function Model({area, items, model}: {area: string; items: Exhibit[]; model: string}) {
    if (items.length === 0) return null;
    const extra = items.filter((item) => item.standing === 'extra').length;
    return (
        <KeptFold
            id="model"
            kept={`fold:model:${area}`}
            title={say.tour.model({model: brief(model)})}
            says={extra > 0 && say.tour.extra_count({count: extra})}
        >
            <ul class="model">
                {items.map((item, i) => (
                    <li key={i} class={item.standing === 'extra' ? 'extra' : ''}>
                        <span>
                            <Name
                                of={
                                    item.as_shown
                                        ? say.common.with_form({
                                              name: item.name,
                                              form: item.as_shown,
                                          })
                                        : item.name
                                }
                            />
                        </span>
                        <span class="model-standing">{standing_of(item)}</span>
                    </li>
                ))}
            </ul>
        </KeptFold>
    );
}

function Group({
    title,
    options,
    explained,
    first,
    met,
}: {
    title: string;
    options: Option[];
    explained?: TermCode;
    first?: Option; ///< of the area: above it stands what the two figures are
    met?: Option; ///< the first of the area whose own terms are told
}) {
    if (options.length === 0) return null;
    return (
        <section class="group">
            <div class="group-top">
                <h3>
                    <Term of={explained}>{title}</Term>
                </h3>
                {options[0] === first && (
                    <p class="columns" aria-hidden="true">
                        <span>{say.tour.price_column}</span>
                        <span>{say.tour.month_column}</span>
                    </p>
                )}
            </div>
            <OptionCards
                options={options}
                draw={(option) => (
                    <Again.Provider key={option.id} value={option !== met}>
                        <OptionCard option={option} />
                    </Again.Provider>
                )}
            />
        </section>
    );
}

function AreaView({area, answer}: {area: Area; answer: Tour}) {
    // A row whose option says what it said before is not drawn again.
    const options = use_shared(area.options);
    const can = options.filter(can_be_had);
    const of = (...kinds: string[]) => can.filter((option) => kinds.includes(option.kind));
    const shown = [
        ...of('package'),
        ...of('levels', 'upgrade'),
        ...of('choice'),
        ...of('allowance'),
    ];
    const met = shown.find((option) => option.cutoff);
    const jumps = use_shared([...first_said(shown)]);
    const said = useMemo(() => new Map(jumps), [jumps]);
    return (
        <FirstSaid.Provider value={said}>
            <Group
                title={say.tour.packages}
                options={of('package')}
                explained="package"
                first={shown[0]}
                met={met}
            />
            <Group
                title={say.tour.upgrades}
                options={of('levels', 'upgrade')}
                explained="option"
                first={shown[0]}
                met={met}
            />
            <Group title={say.tour.choices} options={of('choice')} first={shown[0]} met={met} />
            <Group
                title={say.tour.allowances}
                options={of('allowance')}
                explained="allowance"
                first={shown[0]}
                met={met}
            />
            <Included area={area} plan={answer.heading.plan} />
            {area.requests.length > 0 && (
                <section class="group">
                    <h3>{say.tour.requests}</h3>
                    <ul class="barred">
                        {area.requests.map((request) => (
                            <li key={request.text}>
                                <span>
                                    <Name of={request.text} />
                                </span>
                                <span class="faint">
                                    {say.tour.request({estimate: short(request.estimate)})}
                                </span>
                            </li>
                        ))}
                    </ul>
                </section>
            )}
            <Model area={area.id} items={area.shown} model={answer.model} />
            <Barred options={options} />
        </FirstSaid.Provider>
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
    if (!open || !is_example.value) return null;
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
            <p>{say.tour.welcome({strong})}</p>
            <button class="step" onClick={close}>
                {say.tour.understood}
            </button>
        </aside>
    );
}

function AreaPage({area, next}: {area: Area; next?: AreaInShort}) {
    const answer = tour.value!;
    return (
        <>
            <header class="area-head">
                <h2 id="area-title" tabIndex={-1}>
                    <Name of={area.name} />
                </h2>
                <p class="home-line">
                    {say.tour.home_line({
                        plan: <Name of={answer.heading.plan} />,
                        elevation: <Name of={answer.heading.elevation} />,
                        lot: answer.heading.lot,
                        stage: answer.stage,
                    })}
                </p>
            </header>
            <div class="area">
                <AreaView key={area.id} area={area} answer={answer} />
            </div>
            {next && (
                <button class="main-button next-area" onClick={() => go_to(next.id)}>
                    {say.tour.next({area: brief(next.name)})}
                </button>
            )}
        </>
    );
}

function Shown() {
    const {all_areas: all, areas} = tour.value!;
    const here = shown_in_tour();
    if (looked_for.value) return <FoundOptions />;
    if (here === all_areas) return <AllChosen />;
    if (here === floor_plan) return <FloorPlan />;
    // Until the area in hand is told, the one before it stays.
    const area = areas.find((one) => one.id === here) ?? areas[0];
    if (!area) return null;
    const next = all[all.findIndex((one) => one.id === area.id) + 1];
    return <AreaPage area={area} next={next} />;
}

export function TourView() {
    const answer = tour.value!;
    if (answer.all_areas.length === 0) {
        return (
            <div class="area-page">
                <h2>{say.tour.empty}</h2>
                <p>{say.tour.empty_says}</p>
                <WhatToKnow all={answer.cautions} />
            </div>
        );
    }
    return (
        <div class="tour-page">
            <AreasBeside />
            <div class="area-page">
                <FindField />
                <Welcome />
                <Shown />
                <WhatToKnow all={answer.cautions} />
            </div>
        </div>
    );
}
