// Bundles the page into a folder: one script, one style sheet, two fonts, an icon, the page itself.
//
//   node build.mjs FOLDER
//
// And what a file that is taken home is made of (home.mjs).
import zopfli from '@gfx/zopfli';
import {build} from 'esbuild';
import {copyFileSync, mkdirSync, readFileSync, writeFileSync} from 'node:fs';
import {dirname, join} from 'node:path';
import {fileURLToPath} from 'node:url';
import subset from 'subset-font';

import {build_home} from './home.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const out = process.argv[2] ?? join(here, '../../build/page');
mkdirSync(out, {recursive: true});

/// What d3-array makes of its functions as it is loaded is left out, too, where nothing uses it.
const only_what_is_used = {
    name: 'only what is used',
    setup: ({onLoad}) =>
        onLoad({filter: /d3-array\.mjs$/}, ({path}) => ({
            contents: readFileSync(path, 'utf8').replace(
                /^((?:const|var) \w+ = )(?=\w+\()/gm,
                '$1/* @__PURE__ */ ',
            ),
        })),
};

/// How every script and style of the page is made.
const settings = {
    absWorkingDir: here,
    outdir: out,
    bundle: true,
    minify: true,
    target: ['es2020', 'safari14'],
    jsx: 'automatic',
    jsxImportSource: 'preact',
    external: ['/assets/*'],
    legalComments: 'none',
    logLevel: 'warning',
    plugins: [only_what_is_used],
};
await build({...settings, entryPoints: {app: 'main.tsx'}, format: 'esm'});

const font = (family, name) =>
    join(here, 'node_modules/@fontsource-variable', family, 'files', name);
// The letters of both languages and the signs of the page, at the weights that the styles use: two
// of the sans, one of the serif, which has no accents but those of Spanish. A name in other letters
// is shown in the system's.
const between = (first, last) =>
    Array.from({length: last - first + 1}, (_, i) => String.fromCharCode(first + i)).join('');
const written = between(0x20, 0x7e) + between(0xc0, 0xff) + '¡¿·–—‘’“”…−';
const spanish = 'ÁÉÍÑÓÚÜáéíñóúü';
const serif = between(0x20, 0x7e) + spanish + '¡¿·–—‘’“”…−';
const letters = written + between(0xa0, 0xbf) + '×÷↑↓✕';
const cut = async (family, name, of, wght, to) =>
    writeFileSync(
        join(out, to),
        await subset(readFileSync(font(family, name)), of, {
            targetFormat: 'woff2',
            variationAxes: {wght},
        }),
    );
await cut(
    'source-sans-3',
    'source-sans-3-latin-wght-normal.woff2',
    letters,
    {min: 400, max: 600},
    'sans.woff2',
);
await cut('source-serif-4', 'source-serif-4-latin-wght-normal.woff2', serif, 500, 'serif.woff2');
copyFileSync(join(here, 'index.html'), join(out, 'index.html'));
copyFileSync(join(here, 'icon.svg'), join(out, 'icon.svg'));
copyFileSync(join(here, 'manifest.webmanifest'), join(out, 'manifest.webmanifest'));

// The licenses of what is in the bundle go along with it.
const parts = [
    'preact',
    '@preact/signals',
    '@preact/signals-core',
    'd3-array',
    'd3-path',
    'd3-shape',
    '@fontsource-variable/source-sans-3',
    '@fontsource-variable/source-serif-4',
];
const license = (name) => readFileSync(join(here, 'node_modules', name, 'LICENSE'), 'utf8');
writeFileSync(
    join(out, 'licenses.txt'),
    parts.map((name) => `${name}\n\n${license(name)}`).join('\n\n'),
);

// As they travel: a twentieth smaller than by zlib, for a second of the build.
for (const name of ['app.js', 'app.css']) {
    const small = await zopfli.gzipAsync(readFileSync(join(out, name)), {});
    writeFileSync(join(out, `${name}.gz`), small);
}

await build_home(settings, out);
