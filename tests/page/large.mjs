// A price book of a hundred and fifty options, made of the example: each option once more, in areas
// of their own, with the rules among them.
import {cpSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {join} from 'node:path';

const again = (id) => `${id}-again`;
const twice = (name) =>
    typeof name === 'string'
        ? `${name}, second`
        : Object.fromEntries(
              Object.entries(name).map(([language, words]) => [
                  language,
                  `${words}, ${language === 'es' ? 'segundo' : 'second'}`,
              ]),
          );

/// An option that a rule names, with its level where it has one, or several of them.
function about_copy(named) {
    if (Array.isArray(named)) return named.map(about_copy);
    const [id, level] = named.split(':');
    return level === undefined ? again(id) : `${again(id)}:${level}`;
}

const rules = ['requires', 'excludes', 'parts', 'one_of'];

/// Writes it to a folder, with one of the example's buyers.
export function large_example(from, folder) {
    cpSync(from, folder, {recursive: true});
    const file = join(folder, 'pricebook.json');
    const book = JSON.parse(readFileSync(file, 'utf8'));
    const copies = book.options.map((one) => ({
        ...one,
        id: again(one.id),
        name: twice(one.name),
        area: again(one.area),
        ...Object.fromEntries(
            rules.filter((rule) => rule in one).map((rule) => [rule, about_copy(one[rule])]),
        ),
    }));
    book.areas.push(
        ...book.areas.map((one) => ({...one, id: again(one.id), name: twice(one.name)})),
    );
    book.options.push(...copies);
    book.community.name = 'Oxbarrow Meadow, twice';
    writeFileSync(file, JSON.stringify(book));
    const buyers = join(folder, 'buyers');
    const buyer = JSON.parse(readFileSync(join(buyers, 'six-programs.json'), 'utf8'));
    rmSync(buyers, {recursive: true});
    writeFileSync(
        join(folder, 'buyer.json'),
        JSON.stringify({...buyer, price_book: 'pricebook.json', buyer: 'Twice as many'}),
    );
}
