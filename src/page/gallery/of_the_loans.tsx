// Places of the parts of the loans, of the budget and of the schedule.
import {size} from '../figures';
import {Afford} from '../parts/afford';
import {BuildersMoney} from '../parts/builders_money';
import {CreditChart} from '../parts/credit_chart';
import {Split} from '../parts/credit_split';
import {Incentives} from '../parts/incentives';
import {IncomeMoves} from '../parts/income_moves';
import {Later} from '../parts/later';
import {Rooms} from '../parts/limits';
import {Card, Loan} from '../parts/loan_card';
import {Crossings, Points, Years} from '../parts/loan_years';
import {Means} from '../parts/means';
import {MonthBar, MonthParts} from '../parts/month_bar';
import {RateMoves} from '../parts/rate_moves';
import {Reach} from '../parts/reach';
import {ScheduleChart} from '../parts/schedule_chart';
import {Wishes} from '../parts/wishes';
import {say} from '../language';
import {open_part} from '../opened';
import {answered, buyers, problems, tour} from '../state/signals';
import type {Place, Places} from './place';
import {money} from './recorded';
import type {Recorded} from './recorded';

const nothing = () => {};

/// One of the loans of the example, at its place among them.
function card(index: number, set?: Place['set']): Place {
    return {
        set,
        draw: (of) => (
            <div>
                <Card
                    index={index}
                    written={of.inquiry.scenarios[index]}
                    scenario={of.compare.scenarios[index]}
                    programs={of.programs.programs}
                    widest={5000}
                    only={false}
                />
            </div>
        ),
    };
}

function without_means_of(of: Recorded): void {
    const {income: _, cash: __, ...inquiry} = of.inquiry;
    buyers.value = [{...of.buyer, inquiry}];
    answered.value = inquiry;
}

const best = (of: Recorded, key: 'lowest_payment' | 'least_cost') => ({
    key,
    name: say.money.a_split_between,
    mix: of.split[key]!,
    best: true,
});

export const of_the_loans: Places = {
    afford: {
        rest: {draw: () => <Afford />},
        no_means: {set: without_means_of, draw: () => <Afford />},
    },
    builders_money: {
        rest: {set: () => open_part('budget', 'builders-money'), draw: () => <BuildersMoney />},
        no_amount: {
            set: (of) => {
                open_part('budget', 'builders-money');
                buyers.value = [{...of.buyer, asks: {amount: ''}}];
            },
            draw: () => <BuildersMoney />,
        },
    },
    credit_chart: {
        rest: {
            draw: (of) => (
                <CreditChart
                    one={of.split}
                    named={[best(of, 'lowest_payment'), best(of, 'least_cost')]}
                    chosen={best(of, 'lowest_payment')}
                    choose={nothing}
                />
            ),
        },
    },
    credit_split: {
        rest: {
            draw: (of) => (
                <Split
                    name={say.money.a_split_between}
                    mix={of.split.lowest_payment!}
                    amount={money.amount}
                    years={money.years}
                    inquiry={of.bare}
                    scenario={of.hand}
                    instead
                />
            ),
        },
    },
    incentives: {
        closed: {draw: () => <Incentives />},
        rest: {set: () => open_part('loans', 'incentives'), draw: () => <Incentives />},
    },
    income_moves: {
        closed: {draw: (of) => <IncomeMoves scenario={of.hand} />},
        open: {draw: (of) => <IncomeMoves scenario={of.hand} />, touch: ['summary']},
    },
    later: {rest: {set: () => open_part('budget', 'later'), draw: () => <Later />}},
    limits: {
        rest: {
            draw: (of) => {
                const one = of.afford.scenarios.find((each) => each.rooms.length > 0)!;
                return <Rooms one={one} />;
            },
        },
    },
    loan_card: {
        closed: {
            draw: (of) => (
                <Loan
                    index={1}
                    written={of.inquiry.scenarios[1]}
                    scenario={of.compare.scenarios[1]}
                    answer={of.compare}
                    programs={of.programs.programs}
                    widest={5000}
                    only={false}
                />
            ),
        },
        in_hand: card(0),
        rest: card(1),
        refused: {
            draw: (of) => (
                <div>
                    <Card
                        index={0}
                        written={of.refused.written}
                        scenario={of.refused.scenario}
                        programs={of.programs.programs}
                        widest={5000}
                        only
                    />
                </div>
            ),
        },
        fault: card(0, () => {
            problems.value = [
                {
                    id: 'number-unreadable',
                    path: '/scenarios/0/down/percent',
                    found: '"five"',
                    expected: '5',
                    advice: '',
                },
            ];
        }),
    },
    loan_years: {
        years: {draw: (of) => <Years answer={of.compare} />},
        crossings: {draw: (of) => <Crossings answer={of.compare} />},
        points: {draw: (of) => <Points answer={of.with_points} />},
    },
    means: {rest: {draw: () => <Means />}},
    month_bar: {
        rest: {
            draw: ({tour: {scenario}}) =>
                scenario.available && (
                    <>
                        <MonthBar
                            monthly={scenario.monthly}
                            widest={size(scenario.monthly.total)}
                        />
                        <MonthParts monthly={scenario.monthly} />
                    </>
                ),
        },
    },
    rate_moves: {
        rest: {
            set: () => open_part('loans', 'rates'),
            draw: (of) => <RateMoves scenario={of.hand} />,
        },
    },
    reach: {
        rest: {
            draw: (of) => <Reach answer={of.afford} home={of.tour.contract_price} hand={of.hand} />,
        },
    },
    schedule_chart: {rest: {draw: (of) => <ScheduleChart answer={of.schedule} />}},
    wishes: {
        rest: {set: () => open_part('budget', 'wishes'), draw: () => <Wishes />},
        none: {
            set: (of) => {
                open_part('budget', 'wishes');
                const inquiry = {...of.inquiry, wishes: []};
                buyers.value = [{...of.buyer, inquiry}];
                answered.value = inquiry;
                tour.value = of.tour;
            },
            draw: () => <Wishes />,
        },
    },
};
