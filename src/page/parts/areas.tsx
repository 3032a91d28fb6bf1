// The way through the home: its areas beside the tour or, where there is no room, in a sheet that a
// thumb reaches; before them what was chosen in all of them.
import {signal} from '@preact/signals';

import {brief, short} from '../figures';
import {say} from '../language';
import {walk_to} from '../state/changing';
import {all_areas, area, area_in_hand, floor_plan, looked_for, tour} from '../state/signals';
import {Dialog} from './dialog';
import {Icon} from './icon';

import './areas.css';

const sheet_open = signal(false);

/// How many options are in the home.
function count_of_chosen(): number {
    return tour.value!.all_areas.reduce((sum, area) => sum + area.chosen.length, 0);
}

export function go_to(id: string): void {
    looked_for.value = '';
    sheet_open.value = false;
    walk_to(id);
    window.scrollTo({top: 0});
    document.getElementById('area-title')?.focus({preventScroll: true});
}

/// What the tour shows: an area, or what was chosen in all, or the drawing where there is one.
export function shown_in_tour(): string {
    const here = area.value;
    const is_drawing = here === floor_plan && tour.value!.drawn;
    return here === all_areas || is_drawing ? here : area_in_hand.value;
}

function Links() {
    const here = looked_for.value ? '' : shown_in_tour();
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
            {tour.value!.all_areas.map((area) => {
                const some = area.chosen.length > 0;
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
