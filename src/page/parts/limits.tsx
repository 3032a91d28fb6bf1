// The limits that a price is held against: what each takes and lets be taken, as bars and in words.
import type {AffordScenario, Room} from '../answers';
import {dollars, percent, size, unsigned} from '../figures';
import {say} from '../language';
import {Explained} from './term';

import './limits.css';

type Ratios = AffordScenario['ratios'];

/// The limits known by name; another is told by its own.
const names: Record<string, (ratios: Ratios) => string> = {
    front_ratio: (ratios) => say.afford.limits.front_ratio({ratio: percent(ratios?.front)}),
    back_ratio: (ratios) =>
        ratios?.passes_by_residual_income
            ? say.afford.limits.back_by_residual_income
            : say.afford.limits.back_ratio({ratio: percent(ratios?.back)}),
    cash: () => say.afford.limits.cash,
    program: () => say.afford.limits.program,
    residual_income: () => say.afford.limits.residual_income,
};

/// Automated underwriting was asked for, and no ratio is published for what it accepts.
export function holds_no_ratio(one: AffordScenario): boolean {
    return one.ratios !== null && one.ratios.back === null;
}

export function limit_words(limit: string, ratios: Ratios): string {
    return names[limit]?.(ratios) ?? limit.replace(/_/g, ' ');
}

export function limits_words(limits: string[], ratios: Ratios): string {
    return say.common.and(limits.map((limit) => limit_words(limit, ratios)));
}

function RoomRow({room, ratios, binds}: {room: Room; ratios: Ratios; binds: boolean}) {
    const over = room.room.startsWith('-');
    const monthly = room.limit !== 'cash';
    const widest = Math.max(size(room.needed), size(room.most), 1);
    const at = (amount: string) => (Math.max(size(amount), 0) / widest) * 100;
    return (
        <li class={`room ${over ? 'over' : ''} ${binds ? 'binds' : ''}`}>
            <p class="room-head">
                <span class="room-name">
                    <Explained
                        text={limit_words(room.limit, ratios)}
                        terms={['housing_ratio', 'dti', 'residual_income']}
                    />
                </span>
                <span class="room-left">
                    {over
                        ? say.afford.limits.too_much({amount: unsigned(room.room), monthly})
                        : say.afford.limits.left({amount: dollars(room.room), monthly})}
                </span>
            </p>
            <svg viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
                <rect class="room-most" width={at(room.most)} height="6" />
                <rect class="room-needed" y="1.2" width={at(room.needed)} height="3.6" />
                {over && (
                    <rect
                        class="room-over"
                        x={at(room.most)}
                        y="1.2"
                        width={at(room.needed) - at(room.most)}
                        height="3.6"
                    />
                )}
            </svg>
            <p class="facts">
                {say.afford.limits.takes({
                    needed: dollars(room.needed),
                    most: dollars(room.most),
                    monthly,
                })}
            </p>
        </li>
    );
}

export function Rooms({one}: {one: AffordScenario}) {
    return (
        <ul class="rooms">
            {one.rooms.map((room) => (
                <RoomRow
                    key={room.limit}
                    room={room}
                    ratios={one.ratios}
                    binds={one.binds.includes(room.limit)}
                />
            ))}
        </ul>
    );
}
