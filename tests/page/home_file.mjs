// A file as it is taken home, put together of what was built: the same steps as those of the program.
import {execFileSync} from 'node:child_process';
import {createHash} from 'node:crypto';
import {existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {dirname, extname, join} from 'node:path';
import {gzipSync} from 'node:zlib';

import {program, root} from './support.mjs';

const built = join(process.env.QUOIN_BUILD, 'page');
const module = join(process.env.QUOIN_BUILD, 'browser');

/// A build without emscripten has no engine for browsers.
export const can_be_built = existsSync(join(module, 'quoin.wasm'));

/// Of the languages of the page: the sentence that holds a value is in home_documents.json.
const dates = {
    en: (day) =>
        new Date(`${day}T12:00`).toLocaleDateString('en-US', {
            month: 'short',
            day: 'numeric',
            year: 'numeric',
        }),
    es: (day) => {
        const [year, month, date] = day.split('-').map(Number);
        const names = 'ene feb mar abr may jun jul ago sep oct nov dic'.split(' ');
        return `${date} ${names[month - 1]} ${year}`;
    },
};

const dollars = (amount) => {
    const [whole, cents] = amount.replace('-', '').split('.');
    return `$${whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',')}.${cents}`;
};
const short = (amount) => dollars(amount).replace(/\.00$/, '');
const rate = (text) => {
    const [whole, rest = ''] = text.split('.');
    return `${whole}.${rest.padEnd(3, '0')}%`;
};
const escaped = (text) =>
    text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

const filled = (text, values) =>
    text.replace(/\{\{(\w+)\}\}/g, (whole, name) => {
        if (!(name in values)) throw new Error(`no value for ${whole}`);
        return values[name];
    });

const texts = ['.json', '.csv', '.svg'];

/// A folder with what of the desk goes home with a buyer, as the command writes it.
export function desk_at_home(inquiry) {
    const folder = join(mkdtempSync(join(tmpdir(), 'quoin-home-')), 'desk');
    execFileSync(program, ['take-home', inquiry, '--desk', folder]);
    process.on('exit', () => rmSync(dirname(folder), {recursive: true}));
    return {folder, rates: join(folder, 'rates'), inquiry: join(folder, 'inquiry.json')};
}

/// Its files under the names that the engine has for them, as text or, of what is none, base64.
function packed_in({folder}) {
    const files = {};
    for (const name of readdirSync(folder, {recursive: true})) {
        const path = join(folder, name);
        if (!statSync(path).isFile()) continue;
        const bytes = readFileSync(path);
        files[name.startsWith('rates/') ? name : `examples/home/${name}`] = texts.includes(
            extname(name),
        )
            ? bytes.toString('utf8')
            : {base64: bytes.toString('base64')};
    }
    return files;
}

/// The first loan of the inquiry, and in which language.
function of_first({inquiry, rates}, language) {
    const {scenarios} = JSON.parse(readFileSync(inquiry, 'utf8'));
    return [inquiry, '--rates', rates, '--scenario', scenarios[0].name, '--language', language];
}

function sheet_of(desk, language) {
    const file = join(desk.folder, `../sheet.${language}.html`);
    execFileSync(program, ['sheet', ...of_first(desk, language), '--force', '-o', file]);
    return readFileSync(file, 'utf8');
}

function bar_of(desk, language, words) {
    const told = JSON.parse(
        execFileSync(program, ['tour', ...of_first(desk, language), '--json'], {
            encoding: 'utf8',
            maxBuffer: 1 << 28,
        }),
    );
    const {contract_price, heading, scenario} = told;
    const {cash, monthly, terms} = scenario;
    const closing_name = cash.to_close.startsWith('-')
        ? words.back_at_closing
        : words.cash_to_close;
    const years = terms.months / 12;
    return {
        heading,
        title: escaped(`${heading.community} – quoin`),
        community: escaped(heading.community),
        price: short(contract_price),
        month: dollars(monthly.total),
        cash: dollars(cash.needed),
        closing: filled(words.closing, {closing_name, cash_to_close: dollars(cash.to_close)}),
        terms: filled(words.terms, {
            loan: escaped(terms.program_name),
            rate: rate(terms.rate),
            apr: rate(terms.apr),
            term: language === 'es' ? `${years} años` : `${years} years`,
            down: short(terms.down_payment),
            down_percent: `${terms.down_percent}%`,
            as_of: dates[language](heading.as_of),
        }),
    };
}

let packed = null;

/// What is the same in every file, as base64.
function parts() {
    if (!packed) {
        execFileSync('node', [join(root, 'src/page/pack.mjs'), built, module]);
        packed = readFileSync(join(built, 'home_parts.gz')).toString('base64');
    }
    return packed;
}

/// `facts`: other days than those of the example. `without`: files that are left out.
export function home_file(desk, {language = 'en', facts = {}, without = null} = {}) {
    const words = JSON.parse(readFileSync(join(built, 'home_documents.json'), 'utf8'))[language];
    const sheet = sheet_of(desk, language);
    const [, sheet_style] = sheet.split(/<\/?style>/, 3);
    const [, sheet_class, inside] = /<main class="([^"]*)">([^]*)<\/main>/.exec(sheet);
    const {heading, ...bar} = bar_of(desk, language, words);
    const files = packed_in(desk);
    for (const name of Object.keys(files)) if (without?.test(name)) delete files[name];
    const hash = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
    const home = {
        facts: {
            hash,
            language,
            as_of: heading.as_of,
            rates_end: '2026-12-18',
            book_end: heading.price_book_expires,
            hand: scenario_name,
            ...facts,
        },
        files,
        sheet,
    };
    return filled(words.document, {
        ...bar,
        sheet_style,
        sheet_class,
        sheet: inside,
        home: gzipSync(JSON.stringify(home), {level: 9}).toString('base64'),
        state: '',
        parts: parts(),
    });
}
