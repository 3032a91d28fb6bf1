// One option of the tour: a row that is touched, or one that opens its levels; and what it opens.
import type {ComponentChildren} from 'preact';

import type {Form, Option} from '../answers';
import {brief, short} from '../figures';
import {say} from '../language';
import {opened, set_open} from '../opened';
import {Allowance} from './option_number';
import {has_look, Look, room_for} from './look';
import {More} from './option_more';
import {
    Consequences,
    in_the_home,
    is_on,
    Money,
    price_of,
    Row,
    told_by,
    Without,
} from './option_row';
import {Name} from './name';

import './option_card.css';

function Opener({
    option,
    class: name,
    children,
}: {
    option: Option;
    class: string;
    children?: ComponentChildren;
}) {
    return (
        <button
            type="button"
            class={`opener ${name}`}
            aria-expanded={opened.value.has(option.id)}
            aria-label={children ? undefined : say.options.more_of(option)}
            onClick={() => set_open(option.id, !opened.value.has(option.id))}
        >
            {children}
            <span class="chevron" aria-hidden="true" />
        </button>
    );
}

/// What a closed group says at its right: what it is worth in the home.
function standing_of(option: Option, form: Form | undefined): string {
    if (option.kind === 'allowance') return short(option.budget);
    return form ? price_of(option, form, false) : '';
}

function is_single({kind}: Option): boolean {
    return kind === 'upgrade' || kind === 'package';
}

/// What a closed option shows: itself, or the form of it that is in the home.
function look_of(option: Option): Option | Form {
    const form = is_single(option) ? undefined : in_the_home(option);
    return form && has_look(form) ? form : option;
}

/// Of several forms the one in the home, or that there is none.
function Head({option}: {option: Option}) {
    const form = in_the_home(option);
    const now = form ? form.name : option.kind === 'levels' ? say.options.none_of_it : '';
    const yours = form && form.state !== 'included';
    return (
        <Opener option={option} class={`group-head ${yours ? 'on' : ''}`}>
            <Look of={look_of(option)} />
            <span class={`row-name ${now ? 'with-beside' : ''}`}>
                <span class="row-title">
                    <Name of={option.name} />
                </span>
                {now && <span class="row-beside">{brief(now)}</span>}
            </span>
            <Money price={standing_of(option, form)} how={form?.touch} taken />
        </Opener>
    );
}

function Forms({option}: {option: Option}) {
    const can = option.forms.filter((form) => form.state !== 'unavailable');
    const included = option.forms.some(
        (form) => form.state === 'included' || (form.touch?.takes_out && form.state === 'offered'),
    );
    const held = option.forms.some((form) => form.state === 'in_package');
    return (
        <div class={`rows ${room_for(can)}`} role="radiogroup" aria-label={option.name}>
            {option.kind === 'levels' && !included && !held && <Without option={option} />}
            {can.map((form) => (
                <div key={form.id} class="form">
                    <Row option={option} form={form} single={false} />
                    <Consequences form={form} how={told_by(form, false)} />
                </div>
            ))}
        </div>
    );
}

export function OptionCard({option}: {option: Option}) {
    const single = is_single(option);
    const open = opened.value.has(option.id);
    const form = option.forms.find((one) => one.state !== 'unavailable');
    return (
        <article
            class={`option ${option.kind} ${open ? 'open' : ''}`}
            aria-label={brief(option.name)}
        >
            {single && form ? (
                <div class={`single ${is_on(form, true) ? 'on' : ''}`}>
                    <Row option={option} form={form} single />
                    <Opener option={option} class="row-more" />
                </div>
            ) : (
                <Head option={option} />
            )}
            {open && (
                <div class="opened">
                    {option.kind === 'allowance' && <Allowance option={option} />}
                    {!single && option.kind !== 'allowance' && <Forms option={option} />}
                    {single && form && <Consequences form={form} how={form.touch} />}
                    <More option={option} />
                </div>
            )}
        </article>
    );
}

/// `draw`: in a way of its own, one of them.
export function OptionCards({
    options,
    draw = (option) => <OptionCard key={option.id} option={option} />,
}: {
    options: Option[];
    draw?: (option: Option) => ComponentChildren;
}) {
    return <div class={`options ${room_for(options.map(look_of))}`}>{options.map(draw)}</div>;
}
