// Another plan, elevation or lot: what cannot go along stays behind, by name.
import type {FallsOut, Move} from '../answers';
import {Refused} from '../engine';
import type {Inquiry} from '../engine';
import {brief} from '../figures';
import {without_refused} from '../inquiry';
import type {Fallen} from '../inquiry';
import {say} from '../language';

import {tour_of} from './asking';
import {act} from './changing';
import {area_told, buyer, tour} from './signals';
import type {Buyer} from './signals';

type Moved = (inquiry: Inquiry) => Inquiry;

/// The inquiry moved, without what cannot go along.
async function moved(one: Buyer, to: Moved): Promise<{next: Inquiry; fallen: Fallen[]}> {
    let next = to(one.inquiry);
    const fallen: Fallen[] = [];
    for (let tries = 0; tries < 8; ++tries) {
        try {
            await tour_of({...one, inquiry: next}, area_told.value);
            break;
        } catch (error) {
            const less = error instanceof Refused ? without_refused(next, error.problems) : null;
            if (!less) break; // act() says what is wrong
            fallen.push(...less.fallen);
            next = less.next;
        }
    }
    return {next, fallen};
}

let moving: Promise<void> = Promise.resolve();

async function move_now(
    key: string | undefined,
    to: Moved,
    what: string,
    there: {falls_out: FallsOut[]; move: Move | null},
): Promise<void> {
    let one = buyer.value;
    if (!one || one.key !== key) return;
    let found = await moved(one, to);
    while (buyer.value?.key === key && buyer.value.inquiry !== one.inquiry) {
        one = buyer.value; // changed meanwhile
        found = await moved(one, to);
    }
    if (buyer.value?.key !== key) return; // another buyer does not move
    const {next, fallen} = found;
    const words = fallen.map((each) => {
        const told = there.falls_out.find((other) => other.option === each.id);
        const {name, why} = told ?? {name: name_of(each.id), why: each.why};
        return say.common.because({name: brief(name), why});
    });
    await act(next, {
        what,
        touch: there.move?.refusals ? null : there.move,
        remarks:
            words.length > 0
                ? [say.options.left_behind({names: words.join('; ')})]
                : [say.options.all_goes_along],
    });
}

/// Another plan, elevation or lot: picks that still apply go along, the others are named. One move
/// after the other, each from where the one before led.
export function move(
    to: Moved,
    what: string,
    there: {falls_out: FallsOut[]; move: Move | null} = {falls_out: [], move: null},
): void {
    const key = buyer.value?.key;
    moving = moving.then(() => move_now(key, to, what, there));
}

function name_of(id: string): string {
    const {all_areas, incentives, wishes} = tour.value!;
    const picks = [...all_areas.flatMap((area) => area.chosen), ...wishes];
    return (
        picks.find((pick) => pick.option === id)?.name ??
        incentives.find((one) => one.id === id)?.name ??
        id
    );
}
