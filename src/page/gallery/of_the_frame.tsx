// Places of the parts of the frame: the bar, the buyers, what stands in the way, and small parts.
import {batch} from '@preact/signals';

import {App} from '../parts/app';
import {Amount} from '../parts/amount';
import {Bar} from '../parts/bar';
import {Buyers} from '../parts/buyers';
import {Cautions} from '../parts/cautions';
import {WhatToKnow} from '../parts/what_to_know';
import {Dialog} from '../parts/dialog';
import {Facts} from '../parts/facts';
import {Icon} from '../parts/icon';
import {LoanInHand} from '../parts/loan_in_hand';
import {Name, WholeName} from '../parts/name';
import {FromHome} from '../parts/from_home';
import {from_home} from '../state/from_home';
import {NewBuyer} from '../parts/new_buyer';
import {OfficeNote} from '../parts/office_note';
import {Openings} from '../parts/openings';
import {send_home, SendHome} from '../parts/send_home';
import {Term, TermCard} from '../parts/term';
import {Typed} from '../parts/typed_field';
import {WayOn} from '../parts/way_on';
import {say} from '../language';
import {
    buyers,
    change,
    closed,
    code_needed,
    current,
    facing,
    gone,
    known,
    problems,
    tour,
} from '../state/signals';
import type {Places} from './place';
import type {Recorded} from './recorded';
import {option_that} from './recorded';

const nothing = () => {};
const fault = {
    id: 'number-unreadable',
    path: '/scenarios/0/rate',
    found: '"6 1/2"',
    expected: '6.5',
    advice: '',
};
/// The longest text of an option, as long as a name can be.
const long_name = (of: Recorded) =>
    of.tour.areas
        .flatMap((area) => area.options)
        .map((one) => one.text)
        .sort((a, b) => b.length - a.length)[0];

function touched(of: Recorded): void {
    const option = option_that(of, (one) => one.forms.some((form) => form.touch?.per_month));
    const {touch} = option.forms.find((form) => form.touch?.per_month)!;
    change.value = {what: option.name, touch, remarks: [option.text, option.note].filter(Boolean)};
}

function nobody(): void {
    batch(() => {
        buyers.value = [];
        current.value = '';
        tour.value = null;
    });
}

export const of_the_frame: Places = {
    amount: {
        rest: {
            draw: (of) => (
                <p>
                    <Amount of={of.tour.contract_price} />
                </p>
            ),
        },
    },
    app: {
        tour: {draw: () => <App />},
        gone: {
            set: () => {
                gone.value = true;
            },
            draw: () => <App />,
        },
        stale: {
            set: () => {
                problems.value = [fault];
            },
            draw: () => <App />,
        },
        closed: {
            set: (of) => {
                closed.value = {one: of.buyer, place: 0};
            },
            draw: () => <App />,
        },
        start: {set: nobody, draw: () => <App />},
        code: {
            set: () => {
                code_needed.value = true;
            },
            draw: () => <App />,
        },
        waiting: {
            set: () => {
                nobody();
                known.value = null;
            },
            draw: () => <App />,
        },
    },
    bar: {
        rest: {draw: () => <Bar />},
        touched: {set: touched, draw: () => <Bar />},
        stale: {
            set: () => {
                problems.value = [fault];
            },
            draw: () => <Bar />,
        },
        refused: {
            set: (of) => {
                tour.value = {...of.tour, scenario: of.refused.scenario};
            },
            draw: () => <Bar />,
        },
    },
    buyers: {
        one: {draw: () => <Buyers />},
        two: {
            set: (of) => {
                const other = {...of.buyer, key: 'other', inquiry: {...of.inquiry, buyer: ''}};
                buyers.value = [of.buyer, other];
            },
            draw: () => <Buyers />,
        },
        away: {
            set: () => {
                facing.value = true;
            },
            draw: () => <Buyers />,
        },
    },
    cautions: {rest: {draw: (of) => <Cautions all={of.tour.cautions} />}},
    what_to_know: {rest: {draw: (of) => <WhatToKnow all={of.tour.cautions} />}},
    dialog: {
        open: {
            draw: (of) => (
                <Dialog title={of.tour.heading.community} done={nothing}>
                    <p>{long_name(of)}</p>
                </Dialog>
            ),
        },
        from_below: {
            draw: (of) => (
                <Dialog title={of.tour.heading.community} kind="from-below" done={nothing}>
                    <p>{long_name(of)}</p>
                </Dialog>
            ),
        },
    },
    facts: {rest: {draw: () => <Facts done={nothing} />}},
    icon: {
        all: {
            draw: () => (
                <p>
                    <Icon of="areas" /> <Icon of="undo" /> <Icon of="find" />
                </p>
            ),
        },
    },
    loan_in_hand: {open: {draw: () => <LoanInHand done={nothing} />}},
    name: {
        short: {
            draw: (of) => (
                <p>
                    <Name of={of.tour.heading.plan} />
                </p>
            ),
        },
        long: {
            draw: (of) => (
                <p>
                    <Name of={long_name(of)} />
                </p>
            ),
        },
        whole: {
            draw: (of) => (
                <>
                    <Name of={long_name(of)} />
                    <WholeName />
                </>
            ),
            touch: ['.whole-name'],
        },
    },
    openings: {
        rest: {
            draw: () => <Openings done={nothing} remarks begins={null} begin={nothing} />,
        },
    },
    new_buyer: {
        rest: {draw: (of) => <NewBuyer first={of.inquiry} done={nothing} back={nothing} />},
    },
    office_note: {
        rest: {draw: () => <OfficeNote of={{office_note: say.common.for_the_desk}} />},
    },
    from_home: {
        rest: {
            set: (of) => {
                const figured = {inquiry: of.inquiry, answer: of.tour, losses: []};
                from_home.value = {sent: of.tour, theirs: figured, today: null};
            },
            draw: () => <FromHome />,
        },
    },
    send_home: {rest: {set: send_home, draw: () => <SendHome />}},
    term: {
        label: {draw: () => <Term of="apr">{say.common.apr}</Term>},
        card: {
            draw: () => (
                <>
                    <Term of="apr">{say.common.apr}</Term>
                    <TermCard />
                </>
            ),
            touch: ['.term'],
        },
    },
    typed_field: {
        rest: {
            draw: () => (
                <Typed value="12000" label={say.money.amount} before="$" change={nothing} />
            ),
        },
        unit: {
            draw: () => (
                <Typed
                    value="7"
                    label={say.money.years_label}
                    after={say.money.years_unit}
                    change={nothing}
                />
            ),
        },
        empty: {
            draw: () => <Typed value="" label={say.money.amount} hint="1750" change={nothing} />,
        },
        fault: {
            draw: () => (
                <Typed
                    value="6 1/2"
                    label={say.later.fields.rate_label}
                    after="%"
                    wrong={fault}
                    change={nothing}
                />
            ),
        },
    },
    way_on: {
        rest: {
            draw: (of) => (
                <WayOn
                    found={{
                        of: of.inquiry,
                        losses: [
                            {
                                left_out: option_that(of, (one) => one.picked).id,
                                instead: '',
                                why: '',
                            },
                        ],
                        next: of.inquiry,
                        answer: of.tour,
                    }}
                />
            ),
        },
    },
};
