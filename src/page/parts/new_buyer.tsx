// A new buyer: a name, the plan and the lot, the loan to begin with; all of it filled in.
import {useState} from 'preact/hooks';

import type {Lot, Plan, Site} from '../answers';
import type {Inquiry} from '../engine';
import {brief} from '../figures';
import {say} from '../language';
import {shown_name} from '../loan_names';
import {new_name, open_new} from '../state/who';
import {use_answer} from './asked';

import './new_buyer.css';

interface Asked {
    buyer: string;
    plan: string;
    lot: string;
    loan: string;
}

/// The lots that can be had with a plan.
function lots_for(plan: string, answer: Site | null): Lot[] {
    return (answer?.lots ?? []).filter(
        (lot) => lot.status === 'free' && (lot.every_plan || lot.plans.includes(plan)),
    );
}

function begun_with(first: Inquiry, asked: Asked, plan: Plan | undefined): Inquiry {
    const elevation = asked.plan === first.plan ? first.elevation : plan!.elevations[0].id;
    const buyer = asked.buyer.trim() || say.buyers.new_default;
    return {...first, buyer, plan: asked.plan, elevation, lot: asked.lot};
}

function Choose({
    label,
    half = false,
    value,
    choices,
    choose,
}: {
    label: string;
    half?: boolean; ///< as wide as half of the others
    value: string;
    choices: [string, string][];
    choose: (value: string) => void;
}) {
    return (
        <label class={half ? 'field new-half' : 'field'}>
            <span>{label}</span>
            <select
                value={value}
                autocomplete="off"
                onChange={(event) => choose(event.currentTarget.value)}
            >
                {choices.map(([id, words]) => (
                    <option key={id} value={id}>
                        {words}
                    </option>
                ))}
            </select>
        </label>
    );
}

function plan_words(plan: Plan): string {
    const {name, style, bedrooms, bathrooms: baths} = plan;
    return say.buyers.plan({name: brief(name), style, bedrooms, baths});
}

function lot_words(lot: Lot): string {
    return `${say.common.lot({lot: lot.id})} · ${say.codes.grades[lot.grade]}`;
}

export function NewBuyer({
    first,
    done,
    back,
}: {
    first: Inquiry;
    done: () => void;
    back: () => void;
}) {
    const {answer} = use_answer<Site>('site', first);
    const [asked, set] = useState<Asked>(() => ({
        buyer: new_name(say.buyers.new_default),
        plan: first.plan,
        lot: first.lot,
        loan: first.scenarios[0].name,
    }));
    const plans = (answer?.plans ?? []).filter((one) => lots_for(one.id, answer).length > 0);
    const lots = lots_for(asked.plan, answer);
    const take_plan = (plan: string) => {
        const fitting = lots_for(plan, answer);
        const stays = fitting.some((lot) => lot.id === asked.lot);
        set({...asked, plan, lot: stays ? asked.lot : fitting[0].id});
    };
    const start = (inquiry: Inquiry, loan: string) => {
        open_new(inquiry, loan);
        done();
    };
    const submit = (event: Event) => {
        event.preventDefault();
        const plan = plans.find((one) => one.id === asked.plan);
        start(begun_with(first, asked, plan), asked.loan);
    };
    return (
        <form class="new-buyer" autocomplete="off" onSubmit={submit}>
            <label class="field">
                <span>{say.buyers.new_name}</span>
                <input
                    value={asked.buyer}
                    autocomplete="off"
                    spellcheck={false}
                    maxLength={120}
                    onFocus={(event) => event.currentTarget.select()}
                    onInput={(event) => set({...asked, buyer: event.currentTarget.value})}
                />
            </label>
            <Choose
                label={say.buyers.new_plan}
                half
                value={asked.plan}
                choices={plans.map((one) => [one.id, plan_words(one)])}
                choose={take_plan}
            />
            <Choose
                label={say.buyers.new_lot}
                half
                value={asked.lot}
                choices={lots.map((one) => [one.id, lot_words(one)])}
                choose={(lot) => set({...asked, lot})}
            />
            <Choose
                label={say.buyers.new_loan}
                value={asked.loan}
                choices={first.scenarios.map((one: any) => [one.name, shown_name(one.name, one)])}
                choose={(loan) => set({...asked, loan})}
            />
            <p class="facts">{first.comment}</p>
            <p class="new-steps">
                <button class="main-button">{say.buyers.start}</button>
                <button
                    type="button"
                    class="step"
                    onClick={() => start({...first, buyer: asked.buyer.trim() || first.buyer}, '')}
                >
                    {say.buyers.start_bare}
                </button>
                <button type="button" class="quiet" onClick={back}>
                    {say.common.back}
                </button>
            </p>
        </form>
    );
}
