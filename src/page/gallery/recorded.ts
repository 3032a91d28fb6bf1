// What the gallery shows: one buyer of the example, and the program's answers about the home.
import type {
    Afford,
    Compare,
    Credit,
    CreditScenario,
    Option,
    Programs,
    Scenario,
    Schedule,
    Site,
    Tour,
} from '../answers';
import {ask, cases} from '../engine';
import type {Cases, Inquiry} from '../engine';
import {without_means} from '../inquiry';
import type {Buyer} from '../state/signals';

export const money = {amount: '12000', years: '7', instead: 'yes'};

export interface Recorded {
    cases: Cases;
    buyer: Buyer;
    inquiry: Inquiry;
    bare: Inquiry; ///< without income and cash, as the builder's money is asked about
    hand: string;
    tour: Tour;
    compare: Compare;
    with_points: Compare; ///< where points are paid for a loan
    refused: {written: any; scenario: Scenario}; ///< a loan with too little down
    programs: Programs;
    site: Site;
    schedule: Schedule;
    afford: Afford;
    credit: Credit;
    split: CreditScenario;
}

export async function record(): Promise<Recorded> {
    const known = await cases();
    const [book, found] = known.price_books
        .flatMap((each) => each.inquiries.map((one) => [each, one] as const))
        .find(([, one]) => one.id.includes('six-programs'))!;
    const inquiry: Inquiry = {...found.inquiry, price_book: book.id};
    const hand: string = inquiry.scenarios[0].name;
    const scenario = {scenario: hand};
    const bare = without_means(inquiry)!;
    const [first, ...others] = inquiry.scenarios;
    const pays = {...inquiry, scenarios: [{...first, rate: {points: '1'}}, ...others]};
    const written = {...first, down: {percent: '1'}};
    const short = {...inquiry, scenarios: [written]};
    const [tour, compare, with_points, too_little, programs, site, schedule, afford, credit] =
        await Promise.all([
            ask<Tour>('tour', inquiry, scenario),
            ask<Compare>('compare', inquiry, scenario),
            ask<Compare>('compare', pays, scenario),
            ask<Tour>('tour', short, scenario),
            ask<Programs>('programs', inquiry),
            ask<Site>('site', inquiry, scenario),
            ask<Schedule>('schedule', inquiry, scenario),
            ask<Afford>('afford', inquiry),
            ask<Credit>('credit', bare, {...scenario, ...money}),
        ]);
    const refusal = too_little.scenario;
    if (refusal.available) throw new Error('a loan with one percent down is not refused');
    const buyer = {
        key: 'gallery',
        inquiry,
        hand,
        area: '',
        asks: {amount: money.amount, years: money.years},
        uses: [],
        past: [],
        future: [],
    };
    const split = credit.scenarios.find((one) => one.terms.name === hand)!;
    return {
        cases: known,
        buyer,
        inquiry,
        bare,
        hand,
        tour,
        compare,
        with_points,
        refused: {written, scenario: refusal},
        programs,
        site,
        schedule,
        afford,
        credit,
        split,
    };
}

/// The first option of the home that is as wanted. None is a fault of the gallery.
export function option_that(of: Recorded, is: (option: Option) => boolean): Option {
    const found = of.tour.areas.flatMap((area) => area.options).find(is);
    if (!found) throw new Error(`no option of the example is so: ${is}`);
    return found;
}
