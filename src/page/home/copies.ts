// A copy of the file with what was changed in it: the document's own parts, and its sheet anew.
import {ask_text} from '../engine';
import {
    brief,
    closing_name,
    dollars,
    percent,
    rate_percent,
    short,
    term,
    unsigned,
} from '../figures';
import {file_name, hand_over} from '../files';
import {language, say} from '../language';
import {buyer, hand, notice, tour} from '../state/signals';
import {changes_of} from '../changes';
import {closing_html, document_of, escaped, terms_html} from './document';
import {handed} from './handed';
import {said} from './say';
import {sent} from './start';
import {as_of_written} from './words';

async function packed(value: unknown): Promise<string> {
    const stream = new Blob([JSON.stringify(value)])
        .stream()
        .pipeThrough(new CompressionStream('gzip'));
    const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}

/// The engine's sheet as the document has it.
function sheet_in(text: string): {sheet_style: string; sheet_class: string; sheet: string} {
    const [, style] = text.split(/<\/?style>/, 3);
    const paper = new DOMParser().parseFromString(text, 'text/html').querySelector('main')!;
    return {sheet_style: style, sheet_class: paper.className, sheet: paper.innerHTML};
}

/// What the bar says, for whoever reads the copy before the page is there, or without it.
function bar_written() {
    const {contract_price, heading, scenario} = tour.value!;
    const {available, cash, monthly, terms, refusals} = scenario;
    const refused = refusals.map((one) => escaped(one.words)).join('; ');
    return {
        price: short(contract_price),
        month: available ? dollars(monthly.total) : escaped(say.common.not_to_be_had),
        cash: available ? dollars(cash.needed) : '–',
        closing: available
            ? closing_html(
                  language.value,
                  escaped(closing_name(cash.to_close)),
                  unsigned(cash.to_close),
              )
            : '',
        terms: !available
            ? refused
            : terms_html(language.value, {
                  loan: escaped(terms.program_name),
                  rate: rate_percent(terms.rate),
                  highest: terms.adjustable && rate_percent(terms.adjustable.highest_rate),
                  apr: terms.apr ? rate_percent(terms.apr) : escaped(say.common.apr_not_found),
                  term: escaped(term(terms.months)),
                  down: short(terms.down_payment),
                  down_percent: percent(terms.down_percent),
                  as_of: escaped(as_of_written(heading)),
              }),
    };
}

export async function copy_of_file(): Promise<string> {
    const {inquiry} = buyer.value!;
    const sheet = await ask_text('sheet', inquiry, {scenario: hand.value});
    const changes = changes_of(inquiry, sent.value);
    const state = changes && {id: Date.now().toString(36), changes};
    const policy = document.querySelector<HTMLMetaElement>('meta[http-equiv]')!.content;
    return document_of({
        ...sheet_in(sheet),
        ...bar_written(),
        language: language.value,
        policy: escaped(policy),
        style: document.getElementById('quoin-style')!.textContent!,
        opener: handed.opener_text,
        title: escaped(document.title),
        community: escaped(brief(tour.value!.heading.community)),
        home: handed.home_text,
        state: state ? await packed(state) : '',
        parts: handed.parts_text,
    });
}

export async function save_copy(): Promise<void> {
    const name = file_name(`${tour.value!.heading.community} ${handed.facts.as_of} 2`, 'html');
    hand_over(new Blob([await copy_of_file()], {type: 'text/html'}), name);
    notice.value = said().copied({file: name});
}
