// Firefox, driven over WebDriver BiDi (a W3C standard), in as much of it as the tests need.
import {spawn} from 'node:child_process';
import {existsSync, mkdtempSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import WebSocket from 'ws';

/// What a browser would do on its own beside the tests: ask the network, and draw slowly.
const preferences = {
    'app.update.disabledForTesting': true,
    'browser.aboutwelcome.enabled': false,
    'browser.preonboarding.enabled': false,
    'browser.shell.checkDefaultBrowser': false,
    'browser.startup.homepage_override.mstone': 'ignore',
    'datareporting.policy.dataSubmissionEnabled': false,
    'extensions.systemAddon.update.enabled': false,
    'network.captive-portal-service.enabled': false,
    'network.connectivity-service.enabled': false,
    'remote.prefs.recommended': true,
    'termsofuse.bypassNotification': true,
    'toolkit.startup.max_resumed_crashes': -1,
};

const program = ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find(existsSync);

export class Firefox {
    constructor() {
        this.asked = new Map();
        this.heard = [];
        this.number = 0;
    }

    async start() {
        if (!program) throw new Error('there is no Firefox: sh tests/setup.sh names the package');
        this.profile = mkdtempSync(join(tmpdir(), 'quoin-firefox-'));
        writeFileSync(
            join(this.profile, 'user.js'),
            Object.entries(preferences)
                .map(([name, value]) => `user_pref("${name}", ${JSON.stringify(value)});\n`)
                .join(''),
        );
        this.process = spawn(
            program,
            ['--headless', '--remote-debugging-port', '0', '--profile', this.profile],
            {env: {...process.env, HOME: this.profile, MOZ_CRASHREPORTER_DISABLE: '1'}},
        );
        const address = await new Promise((resolve, reject) => {
            let said = '';
            this.process.stderr.on('data', (text) => {
                said += text;
                const found = /WebDriver BiDi listening on (ws:\S+)/.exec(said);
                if (found) resolve(found[1]);
            });
            this.process.on('exit', () => reject(new Error(`Firefox has ended: ${said}`)));
        });
        this.socket = new WebSocket(`${address}/session`);
        await new Promise((resolve, reject) => {
            this.socket.on('open', resolve);
            this.socket.on('error', reject);
        });
        this.socket.on('message', (text) => this.hear(JSON.parse(text)));
        await this.ask('session.new', {capabilities: {}});
        await this.ask('session.subscribe', {events: ['log.entryAdded']});
        // A window of its own has the focus; the first one never gets it, and keys would do nothing.
        const {context} = await this.ask('browsingContext.create', {type: 'window'});
        this.context = context;
        return this;
    }

    hear(message) {
        if (message.type === 'event') {
            this.heard.push(message);
            return;
        }
        const {resolve, reject} = this.asked.get(message.id);
        this.asked.delete(message.id);
        if (message.type === 'success') resolve(message.result);
        else reject(new Error(`${message.error}: ${message.message}`));
    }

    ask(method, params) {
        this.number += 1;
        const id = this.number;
        this.socket.send(JSON.stringify({id, method, params}));
        return new Promise((resolve, reject) => this.asked.set(id, {resolve, reject}));
    }

    /// What went wrong in the page so far.
    wrong() {
        return this.heard
            .filter(({method, params}) => method === 'log.entryAdded' && params.level === 'error')
            .map(({params}) => params.text);
    }

    /// Runs before any script of the page.
    async before_pages(what) {
        await this.ask('script.addPreloadScript', {functionDeclaration: String(what)});
    }

    async go(url) {
        await this.ask('browsingContext.navigate', {context: this.context, url, wait: 'complete'});
    }

    async size(width, height) {
        await this.ask('browsingContext.setViewport', {
            context: this.context,
            viewport: {width, height},
        });
    }

    /// What a function of the page gives, as JSON carries it.
    async run(what, ...given) {
        const {type, result, exceptionDetails} = await this.ask('script.callFunction', {
            functionDeclaration: `async (text) => JSON.stringify(await (${what})(...JSON.parse(text)))`,
            arguments: [{type: 'string', value: JSON.stringify(given)}],
            awaitPromise: true,
            target: {context: this.context},
        });
        if (type === 'exception') throw new Error(`${exceptionDetails.text} in ${what}`);
        return result.type === 'string' ? JSON.parse(result.value) : undefined;
    }

    async press(...keys) {
        await this.ask('input.performActions', {
            context: this.context,
            actions: [
                {
                    type: 'key',
                    id: 'keyboard',
                    actions: keys.flatMap((value) => [
                        {type: 'keyDown', value},
                        {type: 'keyUp', value},
                    ]),
                },
            ],
        });
    }

    async click(x, y) {
        await this.ask('input.performActions', {
            context: this.context,
            actions: [
                {
                    type: 'pointer',
                    id: 'mouse',
                    actions: [
                        {type: 'pointerMove', x: Math.round(x), y: Math.round(y)},
                        {type: 'pointerDown', button: 0},
                        {type: 'pointerUp', button: 0},
                    ],
                },
            ],
        });
    }

    /// On US letter paper, in centimeters.
    async print() {
        const {data} = await this.ask('browsingContext.print', {
            context: this.context,
            page: {width: 21.59, height: 27.94},
        });
        return Buffer.from(data, 'base64');
    }

    async stop() {
        this.process.removeAllListeners('exit');
        const ended = new Promise((resolve) => this.process.once('exit', resolve));
        this.socket?.close();
        this.process.kill('SIGTERM');
        await ended;
        rmSync(this.profile, {recursive: true, force: true, maxRetries: 10, retryDelay: 100});
    }
}
