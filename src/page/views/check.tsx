// The lender's view: every figure with its formula, inputs, rule and source.
import {use_answer} from '../parts/asked';
import {answered, known, tour} from '../store';

interface Step {
    name?: string;
    formula?: string;
    inputs?: unknown;
    rule?: string;
    source?: string;
    result?: unknown;
}

/// Whatever the answer holds, as lists and tables: its members are named by the engine.
function Value({value}: {value: unknown}) {
    const nothing = value === null || value === undefined || value === '';
    if (nothing) return <span class="faint">–</span>;
    if (Array.isArray(value)) {
        return (
            <ul class="values">
                {value.map((one, i) => (
                    <li key={i}>
                        <Value value={one} />
                    </li>
                ))}
            </ul>
        );
    }
    if (typeof value === 'object') {
        return (
            <dl class="values">
                {Object.entries(value as Step).map(([key, one]) => (
                    <div key={key}>
                        <dt>{key.replace(/_/g, ' ')}</dt>
                        <dd>
                            <Value value={one} />
                        </dd>
                    </div>
                ))}
            </dl>
        );
    }
    return <span>{String(value)}</span>;
}

function Recheck() {
    const scenario = tour.value!.scenario.terms.name;
    const question = known.value?.questions.find((one) => one.name === 'recheck') as
        {options?: {name: string}[]} | undefined;
    const takes = (question?.options ?? []).some(
        (one) => one.name.replace(/^-+/, '') === 'scenario',
    );
    const {answer, problems} = use_answer<Record<string, unknown>>(
        'recheck',
        answered.value,
        takes ? {scenario} : {},
    );
    if (problems.length > 0)
        return <p class="refused">{problems.map((one) => one.found).join('; ')}</p>;
    if (!answer) return <p class="waiting">Recomputing…</p>;
    const parts = Object.entries(answer).filter(([key]) => !['question', 'heading'].includes(key));
    return (
        <>
            {parts.map(([key, value]) => (
                <section class="group wide" key={key}>
                    <h3>{key.replace(/_/g, ' ')}</h3>
                    <Value value={value} />
                </section>
            ))}
        </>
    );
}

export function CheckView() {
    const has = known.value?.questions.some((one) => one.name === 'recheck') ?? false;
    return (
        <div class="check-page">
            <h2>Where each figure comes from</h2>
            <p class="home-line">
                For the lender: formula, inputs, rule and source of the figures of this home under{' '}
                {tour.value!.scenario.terms.name}.
            </p>
            {has ? (
                <Recheck />
            ) : (
                <p class="message">
                    This program does not answer the question "recheck" yet. Until it does, the
                    command line shows the parts of each figure: quoin quote, quoin cash and quoin
                    schedule.
                </p>
            )}
        </div>
    );
}
