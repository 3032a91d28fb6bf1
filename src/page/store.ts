// What is open: the buyers, each with an inquiry, its past and the answer that is on the screen.
import {batch, computed, effect, signal} from '@preact/signals';

import type {Compare, Emptied, FallsOut, Form, Move, Option, Tour, Touch} from './answers';
import {ask, cases, Refused, set_code} from './engine';
import type {Cases, Inquiry, Options, Problem} from './engine';
import {brief, date} from './figures';
import {copy, from_link, only, touched, with_selection, without_refused} from './inquiry';
import type {Fallen} from './inquiry';
import {
    all_kept,
    buyer_in,
    forget_buyer,
    keep_buyer,
    keep_seen,
    keep_sitting,
    kept_buyer,
    kept_sitting,
    today,
} from './keeping';
import type {Kept} from './keeping';
import {language, say} from './language';
import {shown_name} from './loan_names';
import type {Language} from './words/catalogue';
import {all_gone, mended} from './mending';
import type {Mending} from './mending';
import {standing, with_use, without_money} from './money';
import type {Use} from './money';
import {set_address, take_place, view, view_in_address, watch_place} from './place';
import {shared} from './shared';

export {view};

export interface Buyer {
    key: string;
    inquiry: Inquiry;
    hand: string; ///< name of the scenario in hand
    area: string; ///< of the tour: an id, `all_areas` or `floor_plan`
    asks: Record<string, string>; ///< what is asked besides the inquiry, as options of a question
    uses: Use[]; ///< of the builder's money, so that another takes the place of the one before
    past: Inquiry[];
    future: Inquiry[];
    example?: boolean; ///< shown to a first visitor
    at?: number; ///< when it was last kept
}

/// In the tour, what was chosen in the whole home: no id has a star.
export const all_areas = '*';
/// Likewise, the drawing of the home.
export const floor_plan = '#';

/// What the last touch changed, in the engine's figures.
export interface Change {
    what: string;
    touch: Move | null;
    remarks: string[];
}

export const known = signal<Cases | null>(null);
export const buyers = signal<Buyer[]>([]);
export const current = signal('');
export const tour = signal<Tour | null>(null);
/// The inquiry that the tour answers: the others ask about it too, so that all figures agree.
export const answered = signal<Inquiry | null>(null);
/// The way to pay that it is under, and what stands above it.
export const hand = computed(() => tour.value?.scenario.terms.name ?? '');
export const heading = computed(() => {
    last_heading = shared(last_heading, tour.value?.heading ?? null);
    return last_heading;
});
let last_heading: Tour['heading'] | null = null;
export const problems = signal<Problem[]>([]);
export const gone = signal(false);
export const code_needed = signal(false);
export const busy = signal(false);
export const change = signal<Change | null>(null);
export const notice = signal('');
/// The buyer looks on: nothing of anybody else is on the screen, and nothing that is the agent's.
export const facing = signal(false);
/// The way on where the home or the day is not to be had any more.
export const mending = signal<Mending | null>(null);
/// Who was closed last, and where among the others: to be brought back.
export const closed = signal<{one: Buyer; place: number} | null>(null);
/// Who is kept in this browser and not open in this window.
export const away = signal<Kept[]>([]);

export const buyer = computed(() => buyers.value.find((one) => one.key === current.value) ?? null);
/// Where in the tour the buyer is; what changes with every touch stays out of it.
export const area = computed(() => buyer.value?.area ?? '');

const longest_past = 200;
const longest_uses = 40;

function new_key(): string {
    return `${Date.now().toString(36)}${Math.floor(Math.random() * 1e6).toString(36)}`;
}

// ---- keeping

/// Changed, and not written yet: a frame is painted first, writing takes as long as drawing it.
const to_keep = new Map<string, Buyer>();

function keep(one: Buyer): void {
    const first = to_keep.size === 0;
    to_keep.set(one.key, one);
    if (first) after_frame(keep_all);
}

function keep_all(): void {
    for (const one of to_keep.values())
        if (!keep_buyer(one)) notice.value = say.frame.keeps_nothing;
    to_keep.clear();
}

/// Where nobody looks no frame is painted.
function after_frame(what: () => void): void {
    if (document.hidden) what();
    else requestAnimationFrame(() => window.setTimeout(what));
}

/// The names of those who are kept and not open in this window.
function list_away(): void {
    keep_all();
    const open_here = new Set(buyers.value.map((one) => one.key));
    away.value = all_kept().filter((one) => !open_here.has(one.key));
}

/// Another tab of this browser changed a buyer that is open here too.
function hear(event: StorageEvent): void {
    const key = buyer_in(event.key);
    if (!key) return;
    list_away();
    if (!event.newValue || !buyers.value.some((one) => one.key === key)) return;
    const there = kept_buyer(key);
    if (!there) return;
    buyers.value = buyers.value.map((one) =>
        one.key === key
            ? {...one, inquiry: there.inquiry, uses: there.uses, past: there.past, future: []}
            : one,
    );
    if (key === current.value) void refresh();
}

const begun = signal(false);
let last_touch = today();

const open_keys = computed(() => buyers.value.map((one) => one.key).join('\n'));

effect(() => {
    const keys = open_keys.value === '' ? [] : open_keys.value.split('\n');
    const now = {keys, current: current.value, view: view.value, facing: facing.value};
    if (!begun.value) return;
    last_touch = today();
    keep_sitting(now);
});

/// A window left open over night shows names in the morning, and nobody's figures.
function look_at_day(): void {
    if (current.value && last_touch !== today()) put_all_away();
}

// ---- opening

function scenario_names(inquiry: Inquiry): string[] {
    return (inquiry.scenarios ?? []).map((one: any) => one.name);
}

/// One of the loans of the buyer in hand, as its name is shown.
export function loan_name(name: string): string {
    const written = buyer.value?.inquiry.scenarios?.find((one: any) => one.name === name);
    return written ? shown_name(name, written) : name;
}

function add(inquiry: Inquiry, example: boolean, hand: string): Buyer {
    const one: Buyer = {
        key: new_key(),
        inquiry: copy(inquiry),
        hand: hand || (scenario_names(inquiry)[0] ?? ''),
        area: '',
        asks: {},
        uses: [],
        past: [],
        future: [],
        ...(example ? {example} : {}),
    };
    buyers.value = [...buyers.value, one];
    return one;
}

/// Nothing of the buyer before stays on the screen: never one's figures under another's name.
function clear(): void {
    tour.value = null;
    answered.value = null;
    change.value = null;
    problems.value = [];
    mending.value = null;
    notice.value = '';
    closed.value = null;
}

/// `whole`: on the view where it was left, too.
export function show(key: string, whole = false): void {
    batch(() => {
        const shown = key === current.value ? [tour.value, answered.value] : [null, null];
        clear();
        [tour.value, answered.value] = shown as [Tour | null, Inquiry | null];
        if (key !== current.value || whole) take_place(key, whole);
        current.value = key;
    });
    if (buyer.value) keep(buyer.value);
    list_away();
    void refresh();
}

/// All who are kept but the one in hand, the last one that something was done with first.
export function all_others(): Kept[] {
    return all_kept().filter((one) => one.key !== current.value);
}

/// One of those who are kept, by name.
export function take_up(key: string): void {
    keep_all();
    const one = kept_buyer(key);
    if (!one) return list_away();
    if (!buyers.value.some((each) => each.key === key)) buyers.value = [...buyers.value, one];
    show(key, true);
}

function without_buyer(key: string): void {
    const others = buyers.value.filter((one) => one.key !== key);
    const next = others.some((one) => one.key === current.value) ? current.value : others[0]?.key;
    batch(() => {
        buyers.value = others;
        if (next) return;
        clear();
        take_place('', false);
        current.value = '';
    });
    list_away();
    if (next) show(next);
}

/// Off the screen; the name stays on the list.
export function put_away(key: string): void {
    without_buyer(key);
}

function put_all_away(): void {
    batch(() => {
        clear();
        take_place('', false);
        buyers.value = [];
        current.value = '';
        view.value = 'tour';
    });
    list_away();
}

/// A name that no open buyer has: "Buyer 1 (2)".
function fresh_name(name: string, others: string[] = []): string {
    const taken = new Set([...buyers.value.map((one) => one.inquiry.buyer), ...others]);
    let fresh = name;
    for (let i = 2; taken.has(fresh); ++i) fresh = say.common.numbered({name, number: i});
    return fresh;
}

/// Likewise, and nobody who is kept has it either.
export function new_name(name: string): string {
    return fresh_name(
        name,
        away.value.map((one) => one.name),
    );
}

/// `hand`: the loan to begin with, by its name.
export function open(inquiry: Inquiry, example = false, hand = ''): void {
    const name = fresh_name(inquiry.buyer || say.buyers.unnamed);
    const one = add({...inquiry, buyer: name}, example, hand);
    show(one.key);
}

/// Gone from this browser at once; while the page says so, it can be brought back.
export function close(key: string): void {
    const place = buyers.value.findIndex((one) => one.key === key);
    if (place < 0) return;
    const one = buyers.value[place];
    to_keep.delete(key);
    forget_buyer(key);
    without_buyer(key);
    closed.value = {one, place};
}

export function bring_back(): void {
    if (!closed.value) return;
    const {one, place} = closed.value;
    buyers.value = [...buyers.value.slice(0, place), one, ...buyers.value.slice(place)];
    show(one.key);
}

/// A new buyer: what is assumed of one is said.
export function open_new(first: Inquiry, hand = ''): void {
    open(first, false, hand);
    notice.value = first.comment;
}

/// The price book that an inquiry file means: by its id, or by the end of its path.
export function book_of(path: string): string | null {
    const books = known.value?.price_books ?? [];
    const plain = path.replace(/^(\.\.?\/)+/, '');
    const found =
        books.find((book) => book.id === path) ??
        books.find((book) => book.id === plain || book.id.endsWith(`/${plain}`));
    return found?.id ?? null;
}

const book_in_hand = computed(() => buyer.value?.inquiry.price_book);

const picture_addresses = computed(() => {
    const books = known.value?.price_books ?? [];
    const book = books.find((one) => one.id === book_in_hand.value);
    return new Map(book?.pictures.map((one) => [one.file, one.address]));
});

/// Where the picture of that name in the buyer's price book is; null where there is none.
export function picture_address(file: string): string | null {
    return picture_addresses.value.get(file) ?? null;
}

/// A first visitor sees the example with the most ways to pay: it shows the most.
function open_first(): void {
    const first = known.value?.price_books.find((book) => book.inquiries.length > 0);
    if (!first) {
        const bare = known.value?.price_books.find((book) => book.first)?.first;
        if (bare) open_new(bare);
        return;
    }
    const ways = (one: {inquiry: Inquiry}) => scenario_names(one.inquiry).length;
    open(
        first.inquiries.reduce((best, one) => (ways(one) > ways(best) ? one : best)).inquiry,
        true,
    );
}

/// A home out of a link, for a buyer of whom nothing else is known. Says why there is none, or null
/// where the address holds no link.
function open_link(): string | null {
    if (!location.hash.startsWith('#home=')) return null;
    const home = from_link(location.hash);
    set_address();
    if (!home) return say.buyers.link_damaged;
    const book = known.value?.price_books.find((one) => one.id === home.price_book);
    if (!book) return say.buyers.link_no_book({books: books_here()});
    if (!book.first) return say.buyers.link_no_home(book);
    open(with_selection(book.first, home));
    const {score, closing} = book.first;
    notice.value = say.buyers.from_link({score: `${score}`, closing: date(closing)});
    return '';
}

export function books_here(): string {
    return (
        (known.value?.price_books ?? []).map((one) => one.community).join(', ') ||
        say.buyers.no_books
    );
}

async function start(): Promise<void> {
    try {
        known.value = await cases();
    } catch (error) {
        if (error instanceof Refused) failed(error);
        else gone.value = true;
        if (!code_needed.value) window.setTimeout(() => void start(), 1500);
        return;
    }
    gone.value = false;
    code_needed.value = false;
    problems.value = [];
    begin();
}

/// After a reload the same buyer on the same view; on a first visit an example; else the names.
function begin(): void {
    const sitting = kept_sitting();
    facing.value = sitting?.facing === true;
    const mine = (sitting?.keys ?? [])
        .flatMap((key) => kept_buyer(key) ?? [])
        .filter((one) => book_of(one.inquiry.price_book) !== null);
    buyers.value = mine;
    list_away();
    const asked = view_in_address();
    const why = open_link();
    if (why !== '') {
        const last = mine.find((one) => one.key === sitting!.current) ?? mine[0];
        if (last) {
            view.value = asked ?? sitting!.view;
            show(last.key);
        } else if (away.value.length === 0) {
            view.value = asked ?? 'tour';
            open_first();
        }
        if (why) notice.value = why;
    }
    begun.value = true;
    watch_place();
}

/// Starts the page.
export function open_page(): void {
    window.addEventListener('storage', hear);
    window.addEventListener('hashchange', () => {
        const why = known.value ? open_link() : null;
        if (why) notice.value = why;
    });
    document.addEventListener('visibilitychange', look_at_day);
    document.addEventListener('visibilitychange', keep_all);
    window.addEventListener('pagehide', keep_all);
    window.addEventListener('focus', look_at_day);
    window.setInterval(look_at_day, 60_000);
    void start();
}

export function enter(code: string): void {
    set_code(code);
    void start();
}

/// The page in another language. What the engine said is asked anew; what was said of the last touch
/// stands in the language of before, and goes.
export function speak(next: Language): void {
    if (language.value === next) return;
    batch(() => {
        language.value = next;
        change.value = null;
        notice.value = '';
    });
    if (!known.value) return;
    void cases().then((heard) => {
        if (language.value === next) known.value = heard;
    }, failed);
    void refresh();
}

// ---- asking

function failed(error: unknown): void {
    if (!(error instanceof Refused)) {
        lost();
        return;
    }
    gone.value = false;
    if (error.status === 401) code_needed.value = true;
    else problems.value = error.problems;
}

let knocking = false;

/// No answer came to any of the questions: says so, and knocks until the program is back.
export function lost(): void {
    gone.value = true;
    if (knocking) return;
    knocking = true;
    window.setTimeout(() => void come_back(), 1500);
}

/// What was typed meanwhile is asked once the program answers again.
async function come_back(): Promise<void> {
    try {
        known.value = await cases();
    } catch (error) {
        if (error instanceof Refused) {
            knocking = false;
            failed(error);
        } else {
            window.setTimeout(() => void come_back(), 1500);
        }
        return;
    }
    knocking = false;
    gone.value = false;
    await refresh();
}

/// What is asked besides where no buyer looks on: else no answer has anything for the desk alone.
export function desk_alone(): Options {
    return facing.value ? {} : {'office-notes': ''};
}

let waiting = 0;

async function tour_of(one: Buyer): Promise<Tour> {
    const names = scenario_names(one.inquiry);
    const hand = names.includes(one.hand) ? one.hand : names[0];
    return ask<Tour>('tour', one.inquiry, {...(hand ? {scenario: hand} : {}), ...desk_alone()});
}

/// Asks about the buyer as it stands. An answer that was overtaken by a later touch is dropped.
export async function refresh(): Promise<boolean> {
    const one = buyer.value;
    if (!one) return false;
    const mine = ++waiting;
    busy.value = true;
    try {
        const answer = await tour_of(one);
        if (mine !== waiting) return true;
        batch(() => {
            tour.value = answer;
            answered.value = one.inquiry;
            problems.value = [];
            mending.value = null;
            gone.value = false;
            busy.value = false;
        });
        after_frame(() => {
            if (mine === waiting) keep_seen(one.key, one.inquiry, answer);
        });
        return true;
    } catch (error) {
        if (mine !== waiting) return true;
        busy.value = false;
        mending.value = null;
        failed(error);
        if (error instanceof Refused) void look_for_a_way_on(one, error.problems, mine);
        return false;
    }
}

/// Where the price book has moved on: what the buyer would have to do without, and what it comes to.
/// Beside figures that are on the screen, what was typed wrong is told where it stands instead.
async function look_for_a_way_on(one: Buyer, wrong: Problem[], mine: number): Promise<void> {
    const book = known.value?.price_books.find((each) => each.id === one.inquiry.price_book);
    if (!book || (tour.value && !all_gone(wrong))) return;
    try {
        const found = await mended(one.inquiry, wrong, book, (inquiry) =>
            tour_of({...one, inquiry}),
        );
        if (mine === waiting) mending.value = found;
    } catch {
        /* what is in the way stands on the screen */
    }
}

/// Where something was changed meanwhile, another way on is looked for already.
export function go_on(what: string): void {
    const found = mending.value;
    if (!found || found.of !== buyer.value?.inquiry) return;
    void act(found.next, {what, touch: null, remarks: []}, true);
}

// ---- changing

/// What remembers a way to pay by its name goes along when the name changes.
function renamed(one: Buyer, next: Inquiry): Buyer {
    const before = scenario_names(one.inquiry);
    const after = scenario_names(next);
    if (before.length !== after.length) return one;
    const now = (name: string) => after[before.indexOf(name)] ?? name;
    return {
        ...one,
        hand: now(one.hand),
        uses: one.uses.map((use) => ({
            before: {...use.before, scenario: now(use.before.scenario)},
            after: {...use.after, scenario: now(use.after.scenario)},
        })),
    };
}

function replace(one: Buyer): void {
    last_touch = today();
    buyers.value = buyers.value.map((each) => (each.key === one.key ? one : each));
    keep(one);
}

/// What led to an inquiry, as long as the page is open: a step back or forward says it again.
const led_to = new WeakMap<Inquiry, Change>();

/// The next inquiry of the buyer in hand. A home that cannot stand is put back as it was; typed
/// terms of a loan stay, with what is wrong beside them.
export async function act(next: Inquiry, what: Change, typed = false): Promise<void> {
    const one = buyer.value;
    if (!one) return;
    const before = one.inquiry;
    batch(() => {
        replace({
            ...renamed(one, next),
            inquiry: next,
            past: [...one.past.slice(-longest_past), before],
            future: [],
        });
        change.value = what;
        led_to.set(next, what);
        notice.value = '';
        closed.value = null;
    });
    const fine = await refresh();
    const now = buyer.value;
    if (fine || typed || gone.value || !now || now.inquiry !== next) return;
    const why = problems.value
        .map((one) => (one.expected ? say.frame.found_expected(one) : one.found))
        .join('; ');
    replace({...renamed(now, before), inquiry: before, past: now.past.slice(0, -1)});
    change.value = null;
    await refresh();
    notice.value = say.frame.nothing_changed({why});
}

export function touch(option: Option, form: Form, how: Touch): void {
    const one = buyer.value;
    if (!one) return;
    const name = brief(
        form.name ? say.common.with_form({name: option.name, form: form.name}) : option.name,
    );
    void act(touched(one.inquiry, option, form, how), {
        what: how.takes_out && form.state === 'chosen' ? say.options.taken_out({name}) : name,
        touch: how,
        remarks: remarks_of(how),
    });
}

/// Without what stands in parentheses at its end: the option that opens says all of it.
function in_short(jump: string): string {
    return jump.replace(/ \([^()]*\)$/, '');
}

export function remarks_of(how: Touch): string[] {
    const words: string[] = [];
    const along = {names: how.along.map(brief).join(', ')};
    const {and_with_it, together_with, instead_of} = say.options;
    if (along.names) words.push(how.takes_out ? and_with_it(along) : together_with(along));
    if (how.instead_of.length > 0)
        words.push(instead_of({names: how.instead_of.map(brief).join(', ')}));
    return words.concat(how.jumps.map(in_short));
}

/// Done, and what it came to is said once the engine has told, unless something else was touched
/// meanwhile.
export async function tell(
    done: Promise<void>,
    what: Change,
    figures: () => Promise<Partial<Change> | null>,
): Promise<void> {
    try {
        const [told] = await Promise.all([figures(), done]);
        if (!told) return;
        Object.assign(what, told); // a step back from here knows them, too
        if (change.value === what) change.value = {...what};
    } catch {
        // What is wrong with the change is said where it was made.
    }
}

/// What one way to pay comes to against another, on the same home.
async function against(inquiry: Inquiry, before: any, after: any): Promise<Partial<Change> | null> {
    const scenarios = [
        {...before, name: 'before'},
        {...after, name: 'after'},
    ];
    const answer = await ask<Compare>('compare', {...inquiry, scenarios});
    const difference = answer.scenarios[1].against_first;
    return difference.refusals ? null : {touch: {price: '0.00', ...difference}};
}

/// Terms of a way to pay changed.
export function change_terms(next: Inquiry, index: number, what: Change): void {
    const one = buyer.value;
    if (!one) return;
    const {inquiry} = one;
    void tell(act(next, what, true), what, () =>
        against(inquiry, inquiry.scenarios[index], next.scenarios[index]),
    );
}

type Moved = (inquiry: Inquiry) => Inquiry;

/// The inquiry moved, without what cannot go along.
async function moved(one: Buyer, to: Moved): Promise<{next: Inquiry; fallen: Fallen[]}> {
    let next = to(one.inquiry);
    const fallen: Fallen[] = [];
    for (let tries = 0; tries < 8; ++tries) {
        try {
            await tour_of({...one, inquiry: next});
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

function name_of(id: string): string {
    for (const area of tour.value?.areas ?? []) {
        const found = area.options.find((option) => option.id === id);
        if (found) return found.name;
    }
    return tour.value?.incentives.find((one) => one.id === id)?.name ?? id;
}

/// The builder's money put to use under a loan, or taken out again, from an inquiry without it. What
/// was changed since that was asked about stays.
export function use_money(bare: Inquiry, next: Inquiry, scenario: string, what: string): void {
    const one = buyer.value;
    if (!one) return;
    const before = without_money(one.inquiry, one.uses);
    const after = with_use(before, bare, next, scenario);
    const use = {before: standing(before, scenario), after: standing(after, scenario)};
    replace({...one, uses: [...one.uses, use].slice(-longest_uses)});
    void act(after, {what, touch: null, remarks: []});
}

/// All that may still be taken out.
export function take_all_out(all: Emptied): void {
    const one = buyer.value;
    if (!one) return;
    void act(only(one.inquiry, all.keeps), {
        what: say.tour.all_taken_out,
        touch: all.refusals ? null : all,
        remarks: [],
    });
}

/// A difference the other way: the same digits with the other sign.
function other_way(amount: string): string {
    if (/^-?0(\.0*)?$/.test(amount)) return amount;
    return amount.startsWith('-') ? amount.slice(1) : `-${amount}`;
}

function back(move: Move | null): Move | null {
    if (!move) return null;
    const {price, per_month, cash_needed} = move;
    return {
        price: other_way(price),
        ...(per_month !== undefined && {per_month: other_way(per_month)}),
        ...(cash_needed !== undefined && {cash_needed: other_way(cash_needed)}),
    } as Move;
}

function step(what: string, touch: Move | null): Change {
    return {what, touch, remarks: []};
}

export function undo(): void {
    if (closed.value) return bring_back();
    const one = buyer.value;
    if (!one || one.past.length === 0) return;
    const inquiry = one.past[one.past.length - 1];
    replace({
        ...renamed(one, inquiry),
        inquiry,
        past: one.past.slice(0, -1),
        future: [one.inquiry, ...one.future],
    });
    change.value = step(say.common.one_step_back, back(led_to.get(one.inquiry)?.touch ?? null));
    void refresh();
}

export function redo(): void {
    const one = buyer.value;
    if (!one || one.future.length === 0) return;
    const [inquiry, ...future] = one.future;
    replace({...renamed(one, inquiry), inquiry, past: [...one.past, one.inquiry], future});
    change.value = step(say.common.one_step_forward, led_to.get(inquiry)?.touch ?? null);
    void refresh();
}

export function take_in_hand(scenario: string): void {
    const one = buyer.value;
    if (!one) return;
    const named = (name: string) => one.inquiry.scenarios.find((each: any) => each.name === name);
    const before = named(tour.value?.scenario.terms.name ?? '');
    replace({...one, hand: scenario});
    const what: Change = {
        what: say.frame.figures_under({loan: brief(loan_name(scenario))}),
        touch: null,
        remarks: [],
    };
    change.value = what;
    void tell(
        refresh().then(() => undefined),
        what,
        async () => before && against(one.inquiry, before, named(scenario)),
    );
}

/// A question's option changed: the inquiry stays as it is.
export function set_ask(name: string, value: string): void {
    const one = buyer.value;
    if (one) replace({...one, asks: {...one.asks, [name]: value}});
}

/// Asked anew, so that nothing that was told for the desk is left in the page.
export function turn_to_buyer(): void {
    batch(() => {
        facing.value = true;
        closed.value = null;
        notice.value = '';
    });
    void refresh();
}

export function turn_back(): void {
    facing.value = false;
    void refresh();
}

export function walk_to(area: string): void {
    const one = buyer.value;
    if (one) replace({...one, area});
}
