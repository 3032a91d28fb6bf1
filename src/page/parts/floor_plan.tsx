// The home's floors as the engine draws them, with what was chosen: a touch on a room opens its area.
import {signal} from '@preact/signals';

import type {Rooms} from '../answers';
import {say} from '../language';
import {answered, tour} from '../state/signals';
import {go_to} from './areas';
import {use_answer} from './asked';
import {Cautions} from './cautions';
import {Name} from './name';

import './floor_plan.css';

type Floor = Rooms['floors'][number];

/// The floor that is looked at, by its id: another plan may have it, too.
const shown = signal('');

/// Those that are lived on come first, from the lowest; then the others.
function in_order(floors: Floor[]): Floor[] {
    const lived_on = (floor: Floor) => floor.rooms.some((room) => room.living);
    return [...floors.filter(lived_on), ...floors.filter((floor) => !lived_on(floor))];
}

function has_options(area: string | null): boolean {
    return tour.value!.all_areas.some((one) => one.id === area);
}

/// The engine's own picture. Rooms are touched; with keys, the list beneath leads to the same.
function Drawing({floor}: {floor: Floor}) {
    return (
        <div
            class="plan-drawing"
            tabIndex={0} // where it is wider than the screen, arrows move it
            onClick={(event) => {
                const room = (event.target as Element).closest<SVGElement>('[data-area]');
                const area = room?.dataset.area ?? null;
                if (area && has_options(area)) go_to(area);
            }}
            dangerouslySetInnerHTML={{__html: floor.svg}}
        />
    );
}

function List({floor}: {floor: Floor}) {
    return (
        <section class="group">
            <h3>{say.tour.rooms_listed}</h3>
            <ul class="plan-rooms">
                {floor.rooms.map((room) => (
                    <li key={room.id}>
                        {has_options(room.area) ? (
                            <button class="room-link" onClick={() => go_to(room.area!)}>
                                {room.name}
                            </button>
                        ) : (
                            <span>{room.name}</span>
                        )}
                        <span class="faint">{room.size}</span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

function Chooser({floors, floor}: {floors: Floor[]; floor: Floor}) {
    if (floors.length < 2) return null;
    return (
        <div class="plan-floors" role="group" aria-label={say.tour.floors}>
            {floors.map((one) => (
                <button
                    key={one.id}
                    class="step"
                    aria-pressed={one === floor}
                    onClick={() => {
                        shown.value = one.id;
                    }}
                >
                    {one.name}
                </button>
            ))}
        </div>
    );
}

export function FloorPlan() {
    const {answer} = use_answer<Rooms>('rooms', answered.value);
    const floors = in_order(answer?.floors ?? []);
    const floor = floors.find((one) => one.id === shown.value) ?? floors[0];
    return (
        <>
            <header class="area-head">
                <h2 id="area-title" tabIndex={-1}>
                    <Name of={tour.value!.heading.plan} />
                </h2>
                <p class="home-line">{say.tour.plan_says}</p>
            </header>
            {!answer && <p class="waiting">{say.tour.drawing}</p>}
            {floor && (
                <>
                    <Chooser floors={floors} floor={floor} />
                    <Drawing floor={floor} />
                    <List floor={floor} />
                </>
            )}
            {answer && <Cautions all={answer.cautions} />}
        </>
    );
}
