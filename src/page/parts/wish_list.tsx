// The wish list: what the buyer would like, dearest first, changed where it stands.
import {useState} from 'preact/hooks';

import type {Option} from '../answers';
import {say} from '../language';
import {act} from '../state/changing';
import {buyer, facing, problems, tour} from '../state/signals';
import {id_of, in_order, ranked, wish_for, wishes_of, with_last, with_wishes} from '../wishes';
import type {Placed, Wish} from '../wishes';
import {Typed} from './typed_field';
import {brief} from '../figures';

import './wish_list.css';

function options(): Option[] {
    return (tour.value?.areas ?? []).flatMap((area) => area.options);
}

export function wish_name(wish: Wish): string {
    const option = options().find((one) => one.id === wish.option);
    const form = option?.forms.find((one) => one.id !== '' && one.id === wish.level);
    const name = option?.name ?? wish.option;
    return form ? say.common.with_form({name, form: form.name}) : name;
}

function write(wishes: Wish[], what: string): void {
    void act(with_wishes(buyer.value!.inquiry, wishes), {what, touch: null, remarks: []}, true);
}

/// Puts an option on the list, last, or takes it off.
export function turn_wish(option: Option): void {
    const wishes = wishes_of(buyer.value!.inquiry);
    const others = wishes.filter((one) => one.option !== option.id);
    if (others.length < wishes.length) {
        write(others, say.wishes.list.off(option));
        return;
    }
    const wish = wish_for(option);
    if (wish) write(with_last(wishes, wish), say.wishes.list.on(option));
}

/// What is wrong with a member of a wish.
function wrong_in(place: number, member: string) {
    return problems.value.find((one) => one.path?.startsWith(`/wishes/${place}/${member}`));
}

function Row({list, at}: {list: Placed[]; at: number}) {
    const {wish, place} = list[at];
    const wishes = wishes_of(buyer.value!.inquiry);
    const name = wish_name(wish);
    const words = say.wishes.list;
    const move = (by: number) => {
        const next = list.map((one) => one.wish);
        next.splice(at, 1);
        next.splice(at + by, 0, wish);
        write(in_order(next), by < 0 ? words.dearer({name}) : words.less_dear({name}));
    };
    const set = (members: Partial<Wish>, what: string) =>
        write(
            wishes.map((one, i) => (i === place ? {...one, ...members} : one)),
            what,
        );
    const option = options().find((one) => one.id === wish.option);
    const levels =
        option?.forms.filter((form) => form.id !== '' && form.state !== 'unavailable') ?? [];
    const counted = option?.quantity?.asked ? option.quantity : null;
    return (
        <li class="wish">
            {!facing.value && <span class="wish-rank">{at + 1}</span>}
            <span class="wish-name">
                {wish.level && levels.length > 1 ? (
                    <select
                        aria-label={words.level_of({name})}
                        value={wish.level}
                        onChange={(event) => set({level: event.currentTarget.value}, name)}
                    >
                        {levels.map((form) => (
                            <option key={form.id} value={form.id}>
                                {wish_name({...wish, level: form.id})}
                            </option>
                        ))}
                    </select>
                ) : (
                    name
                )}
                {counted && (
                    <Typed
                        label={words.how_much_of({name})}
                        after={say.codes.units[counted.unit]}
                        value={String(wish.quantity ?? counted.usual ?? '')}
                        wrong={wrong_in(place, 'quantity')}
                        change={(value) =>
                            set(
                                {quantity: value || undefined},
                                say.common.with_form({name, form: value}),
                            )
                        }
                    />
                )}
            </span>
            <label class="tick-box">
                <input
                    type="checkbox"
                    checked={wish.must === true}
                    onChange={(event) =>
                        set(
                            {must: event.currentTarget.checked || undefined},
                            words.must_changed({name}),
                        )
                    }
                />
                <span>{say.common.must_have}</span>
            </label>
            {!facing.value && (
                <span class="wish-worth">
                    <Typed
                        label={words.worth_of({name})}
                        before={words.worth}
                        value={wish.weight ?? ''}
                        wrong={wrong_in(place, 'weight')}
                        change={(value) =>
                            set({weight: value || undefined}, words.worth_changed({name}))
                        }
                    />
                </span>
            )}
            <span class="wish-moves">
                {!facing.value && (
                    <>
                        <button
                            class="step"
                            aria-label={words.dearer({name})}
                            disabled={at === 0}
                            onClick={() => move(-1)}
                        >
                            ↑
                        </button>
                        <button
                            class="step"
                            aria-label={words.less_dear({name})}
                            disabled={at + 1 === list.length}
                            onClick={() => move(1)}
                        >
                            ↓
                        </button>
                    </>
                )}
                <button
                    class="step"
                    aria-label={words.take_off({name})}
                    onClick={() =>
                        write(
                            wishes.filter((_, i) => i !== place),
                            words.off({name}),
                        )
                    }
                >
                    ✕
                </button>
            </span>
        </li>
    );
}

/// Options that are no wish yet and could be one.
function Add({wishes}: {wishes: Wish[]}) {
    const [chosen, choose] = useState('');
    const could = options().filter(
        (option) => wish_for(option) !== null && !wishes.some((wish) => wish.option === option.id),
    );
    if (could.length === 0) return null;
    const option = could.find((one) => one.id === chosen) ?? could[0];
    return (
        <div class="wish-add">
            <label class="field">
                <span>{say.wishes.list.something_else}</span>
                <select value={option.id} onChange={(event) => choose(event.currentTarget.value)}>
                    {could.map((one) => (
                        <option key={one.id} value={one.id}>
                            {brief(one.name)}
                        </option>
                    ))}
                </select>
            </label>
            <button class="step" onClick={() => turn_wish(option)}>
                {say.wishes.list.add}
            </button>
        </div>
    );
}

/// While the buyer looks on, in the order of the tour: theirs would tell the ranks.
function listed(): Placed[] {
    const list = ranked(buyer.value!.inquiry);
    if (!facing.value) return list;
    const toured = options().map((one) => one.id);
    const place = ({wish}: Placed) => toured.indexOf(wish.option);
    return list.sort((a, b) => place(a) - place(b));
}

export function WishList() {
    const list = listed();
    return (
        <>
            {list.length === 0 ? (
                <p class="note">{say.wishes.list.none}</p>
            ) : (
                <ol class="wish-list">
                    {list.map(({wish}, at) => (
                        <Row key={id_of(wish)} list={list} at={at} />
                    ))}
                </ol>
            )}
            <Add wishes={list.map((one) => one.wish)} />
        </>
    );
}
