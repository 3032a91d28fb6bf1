// What is not available on this home, each with its reason.
import type {Option} from '../answers';
import {say} from '../language';
import {Name} from './name';

export function Barred({options}: {options: Option[]}) {
    const rows = options.flatMap((option) =>
        option.forms
            .filter((form) => form.state === 'unavailable')
            .map((form) => ({
                key: `${option.id}:${form.id}`,
                why: form.why,
                name: form.name
                    ? say.common.with_form({name: option.name, form: form.name})
                    : option.name,
            })),
    );
    if (rows.length === 0) return null;
    return (
        <section class="group">
            <h3>{say.tour.barred}</h3>
            <ul class="barred">
                {rows.map((row) => (
                    <li key={row.key}>
                        <span>
                            <Name of={row.name} />
                        </span>
                        <span class="faint">{row.why}</span>
                    </li>
                ))}
            </ul>
        </section>
    );
}

/// Whether there is anything of it to touch.
export function can_be_had(option: Option): boolean {
    return option.forms.some((form) => form.state !== 'unavailable');
}
