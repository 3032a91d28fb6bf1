// The way through the home: its areas beside the tour or, where there is no room, in a sheet that a
// thumb reaches; before them what was chosen in all of them.
import {signal} from '@preact/signals';

import {brief, short} from '../figures';
import {say} from '../language';
import {walk_to} from '../state/changing';
import {all_areas, area, floor_plan, tour} from '../state/signals';
import {Dialog} from './dialog';
import {Icon} from './icon';
import {looked_for} from './find';

import './areas.css';

const sheet_open = signal(false);

/// How many options are in the home.
function count_of_chosen(): number {
    const options = tour.value!.areas.flatMap((area) => area.options);
    return options.filter((option) => option.picked).length;
}

export function go_to(id: string): void {
    looked_for.value = '';
    sheet_open.value = false;
    walk_to(id);
    window.scrollTo({top: 0});
    document.getElementById('area-title')?.focus({preventScroll: true});
}

/// The area that the tour is in: the first where the buyer was in none, or in one that is gone.
export function area_in_hand(): string {
    const {areas} = tour.value!;
    const here = area.value;
    if (here === all_areas || (here === floor_plan && tour.value!.drawn)) return here;
    return (areas.find((area) => area.id === here) ?? areas[0])?.id ?? '';
}

function Links() {
    const here = looked_for.value ? '' : area_in_hand();
    return (
        <>
            <div class="areas-top">
                <button
                    class="area-link all-chosen"
                    aria-current={here === all_areas ? 'true' : undefined}
                    onClick={() => go_to(all_areas)}
                >
                    <span>{say.tour.all_chosen}</span>
                    <span class="count">{count_of_chosen()}</span>
                </button>
                {tour.value!.drawn && (
                    <button
                        class="area-link floor-plan-link"
                        aria-current={here === floor_plan ? 'true' : undefined}
                        onClick={() => go_to(floor_plan)}
                    >
                        <span>{say.tour.floor_plan}</span>
                    </button>
                )}
            </div>
            {tour.value!.areas.map((area) => {
                const some = area.options.some((option) => option.picked);
                return (
                    <button
                        key={area.id}
                        class="area-link"
                        aria-current={area.id === here ? 'true' : undefined}
                        onClick={() => go_to(area.id)}
                    >
                        <span>{brief(area.name)}</span>
                        {some && (
                            <span
                                class="dot"
                                title={say.tour.chosen_here({price: short(area.price)})}
                            />
                        )}
                    </button>
                );
            })}
        </>
    );
}

export function AreasBeside() {
    return (
        <nav class="areas" aria-label={say.tour.areas}>
            <Links />
        </nav>
    );
}

/// In the bar, where the areas do not stand beside the tour.
export function AreasButton() {
    return (
        <>
            <button
                class="step open-areas"
                aria-label={say.tour.areas}
                aria-haspopup="dialog"
                onClick={() => {
                    sheet_open.value = true;
                }}
            >
                <Icon of="areas" />
                <span class="step-word">{say.tour.areas_short}</span>
            </button>
            {sheet_open.value && (
                <Dialog
                    title={say.tour.areas}
                    kind="from-below"
                    done={() => {
                        sheet_open.value = false;
                    }}
                >
                    <nav class="areas-sheet" aria-label={say.tour.areas}>
                        <Links />
                    </nav>
                </Dialog>
            )}
        </>
    );
}
