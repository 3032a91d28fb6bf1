// Places of the parts of the tour and of the site.
import {looked_for} from '../state/signals';
import {AreasBeside, AreasButton} from '../parts/areas';
import {Barred, can_be_had} from '../parts/barred';
import {AllChosen} from '../parts/chosen';
import {FindButton, FindField, FoundOptions} from '../parts/find';
import {FloorPlan} from '../parts/floor_plan';
import {Look, room_for} from '../parts/look';
import {More} from '../parts/option_more';
import {Allowance, Stepper} from '../parts/option_number';
import {OptionCards} from '../parts/option_card';
import {Row, Without} from '../parts/option_row';
import {SiteMap} from '../parts/site_map';
import type {Form, Option} from '../answers';
import type {Place, Places} from './place';
import type {Recorded} from './recorded';
import {option_that} from './recorded';

const nothing = () => {};
const single = (one: Option) => one.kind === 'upgrade' && one.forms.length === 1;

/// Options of the example that are so, as a group of them is drawn.
function cards(is: (one: Option) => boolean, touch?: string[]): Place {
    return {draw: (of) => <OptionCards options={[option_that(of, is)]} />, touch};
}

/// A single option whose touch does this.
function row(does: (form: Form, option: Option) => boolean): Place {
    const is = (one: Option) => single(one) && does(one.forms[0], one);
    return {
        draw: (of) => {
            const option = option_that(of, is);
            return (
                <div class={`options ${room_for([option])}`}>
                    <article class="option">
                        <div class={`single ${option.picked ? 'on' : ''}`}>
                            <Row option={option} form={option.forms[0]} single />
                        </div>
                    </article>
                </div>
            );
        },
    };
}

/// A level of an option, beside the others of it.
const level_row = (of: Recorded) => {
    const option = option_that(of, (one) => one.kind === 'levels' && can_be_had(one));
    return (
        <div class="options">
            <article class="option">
                <div class={`rows ${room_for(option.forms)}`}>
                    <Without option={option} />
                    {option.forms.map((form) => (
                        <Row key={form.id} option={option} form={form} single={false} />
                    ))}
                </div>
            </article>
        </div>
    );
};

const none = {picture: '', color: ''};
const pictured = (one: Option) => one.picture !== '';

export const of_the_tour: Places = {
    areas: {
        beside: {draw: () => <AreasBeside />},
        sheet: {draw: () => <AreasButton />, touch: ['.open-areas']},
    },
    barred: {
        rest: {
            draw: (of) => (
                <Barred
                    options={of.tour.areas
                        .flatMap((area) => area.options)
                        .filter((one) => one.forms.some((form) => form.state === 'unavailable'))}
                />
            ),
        },
    },
    chosen: {rest: {draw: () => <AllChosen />}},
    find: {
        button: {draw: () => <FindButton />},
        found: {
            draw: () => (
                <>
                    <FindButton />
                    <FindField />
                    {looked_for.value && <FoundOptions />}
                </>
            ),
            set: () => {
                looked_for.value = 'wa';
            },
        },
        nothing: {
            draw: () => <FoundOptions />,
            set: () => {
                looked_for.value = 'zzz';
            },
        },
        writing: {
            draw: () => (
                <>
                    <FindButton />
                    <FindField />
                </>
            ),
            touch: ['.find-button'],
        },
    },
    floor_plan: {rest: {draw: () => <FloorPlan />}},
    look: {
        picture: {draw: (of) => <Look of={option_that(of, pictured)} />},
        large: {draw: (of) => <Look of={option_that(of, pictured)} large />},
        color: {draw: () => <Look of={{...none, color: '#8b4426'}} />},
    },
    option_card: {
        area: {
            draw: (of) => (
                <OptionCards
                    options={
                        of.tour.areas
                            .map((area) => area.options.filter(can_be_had))
                            .sort((a, b) => b.length - a.length)[0]
                    }
                />
            ),
        },
        opened: cards((one) => single(one) && pictured(one) && can_be_had(one), ['.opener']),
        group: cards((one) => one.kind === 'levels' && can_be_had(one)),
        group_open: cards((one) => one.kind === 'levels' && can_be_had(one), ['.opener']),
        choice_open: cards((one) => one.kind === 'choice' && can_be_had(one), ['.opener']),
        allowance_open: cards((one) => one.kind === 'allowance', ['.opener']),
    },
    option_more: {
        rest: {
            draw: (of) => (
                <div class="opened">
                    <More option={option_that(of, pictured)} />
                </div>
            ),
        },
    },
    option_number: {
        steps: {draw: (of) => <Stepper option={option_that(of, (one) => !!one.quantity)} />},
        allowance: {
            draw: (of) => (
                <div class="opened">
                    <Allowance option={option_that(of, (one) => one.kind === 'allowance')} />
                </div>
            ),
        },
    },
    option_row: {
        rest: row((form) => form.state === 'offered'),
        chosen: row((form) => form.state === 'chosen'),
        brings_along: row((form) => (form.touch?.along.length ?? 0) > 0),
        replaces: row((form) => (form.touch?.instead_of.length ?? 0) > 0),
        in_a_package: row((form) => form.state === 'in_package'),
        levels: {draw: level_row},
    },
    site_map: {
        rest: {
            draw: (of) => (
                <SiteMap svg={of.site.map!.svg} looked={of.tour.heading.lot} look={nothing} />
            ),
        },
        none_looked_at: {
            draw: (of) => <SiteMap svg={of.site.map!.svg} looked="" look={nothing} />,
        },
    },
};
