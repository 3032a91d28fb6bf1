// What was chosen in the whole home, area by area with what it comes to; what is still to decide.
import type {Area, Option} from '../answers';
import {is_zero, short} from '../figures';
import {say} from '../language';
import {take_all_out} from '../state/changing';
import {buyer, tour} from '../state/signals';
import {go_to} from './areas';
import {can_be_had} from './barred';
import {Name} from './name';
import {OptionCards} from './option_card';

import './chosen.css';

function Chosen({area}: {area: Area}) {
    return (
        <section class="group">
            <div class="group-top">
                <h3>
                    <button class="area-name" onClick={() => go_to(area.id)}>
                        <Name of={area.name} />
                    </button>
                </h3>
                {!is_zero(area.price) && <p class="area-price">{short(area.price)}</p>}
            </div>
            <OptionCards options={area.options.filter((option) => option.picked)} />
        </section>
    );
}

/// A color or a budget that the buyer has not said: the home has the first color, and no more than
/// the allowance.
function is_open(option: Option): boolean {
    return (
        can_be_had(option) &&
        !option.picked &&
        (option.kind === 'choice' || option.kind === 'allowance')
    );
}

/// By the stage that they are decided before, in the order that the options name the stages.
function by_cutoff(options: Option[]): [string, Option[]][] {
    const groups = new Map<string, Option[]>();
    for (const option of options) {
        groups.set(option.cutoff, [...(groups.get(option.cutoff) ?? []), option]);
    }
    return [...groups];
}

function StillOpen() {
    const open = tour.value!.areas.flatMap((area) => area.options).filter(is_open);
    if (open.length === 0) return null;
    return (
        <>
            <h2 class="still-open">{say.tour.still_open}</h2>
            {by_cutoff(open).map(([stage, options]) => (
                <section key={stage} class="group">
                    <h3>{stage ? say.tour.decide_before({stage}) : say.tour.decide_any_time}</h3>
                    <OptionCards options={options} />
                </section>
            ))}
        </>
    );
}

export function AllChosen() {
    const {all_areas, areas, emptied, options} = tour.value!;
    if (areas.length < all_areas.length) return null; // not all is told yet
    const some = areas.filter((area) => area.options.some((option) => option.picked));
    return (
        <>
            <header class="area-head">
                <h2 id="area-title" tabIndex={-1}>
                    {say.tour.all_chosen}
                </h2>
                <p class="home-line">{say.tour.options_come_to({price: short(options)})}</p>
            </header>
            <div class="area">
                {some.map((area) => (
                    <Chosen key={area.id} area={area} />
                ))}
                {emptied && (buyer.value?.inquiry.selections?.length ?? 0) > 0 && (
                    <button class="step take-out" onClick={() => take_all_out(emptied)}>
                        {say.tour.take_all_out}
                    </button>
                )}
                <StillOpen />
            </div>
        </>
    );
}
