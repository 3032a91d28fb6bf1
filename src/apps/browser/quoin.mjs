// Loads the module and makes functions of JavaScript of what it exports.
//
//   const engine = await load(bytes);            of quoin.wasm
//   engine.hold('rates/places/x.json', bytes);   each file: under rates/ and examples/
//   engine.open('2026-11-28', 'en-US');          {status, type, bytes}: 200, or why not
//   engine.reply('POST', '/api/quote', 'en-US', JSON.stringify(inquiry));
//
// It has no clock, files or network. Long work ends with the worker that it runs in.

/// What the C library asks of a system. There is none: nothing is set, and nothing can be written.
function system(memory) {
    const no_such_thing = 8; // EBADF, as WASI numbers it
    return {
        environ_sizes_get(count, size) {
            const view = new DataView(memory());
            view.setUint32(count, 0, true);
            view.setUint32(size, 0, true);
            return 0;
        },
        environ_get: () => 0,
        fd_close: () => no_such_thing,
        fd_seek: () => no_such_thing,
        fd_write: () => no_such_thing,
        proc_exit(code) {
            throw new Error(`the module ended (${code})`);
        },
    };
}

export async function load(bytes) {
    let module;
    const memory = () => module.memory.buffer;
    const {instance} = await WebAssembly.instantiate(bytes, {
        wasi_snapshot_preview1: system(memory),
        env: {emscripten_notify_memory_growth() {}},
    });
    module = instance.exports;
    module._initialize();

    /// A copy of bytes in the module's memory, with a zero behind it, while `use` runs.
    function with_bytes(from, use) {
        const at = module.malloc(from.length + 1);
        const copy = new Uint8Array(memory(), at, from.length + 1);
        copy.set(from);
        copy[from.length] = 0;
        try {
            return use(at, from.length);
        } finally {
            module.free(at);
        }
    }
    const with_text = (text, use) => with_bytes(new TextEncoder().encode(text), use);

    const taken = (at, size) => new Uint8Array(memory()).slice(at, at + size);
    function response() {
        return {
            status: module.reply_status(),
            type: new TextDecoder().decode(taken(module.reply_type(), module.reply_type_size())),
            bytes: taken(module.reply_bytes(), module.reply_size()),
        };
    }

    return {
        hold(path, file) {
            with_text(path, (name) => with_bytes(file, (at, size) => module.hold(name, at, size)));
        },
        open(today, language) {
            with_text(today, (day) =>
                with_text(language, (tag) => module.open_cases(day, tag)),
            );
            return response();
        },
        reply(method, address, language, body = '') {
            with_text(method, (verb) =>
                with_text(address, (path) =>
                    with_text(language, (tag) =>
                        with_text(body, (at, size) => module.reply_to(verb, path, tag, at, size)),
                    ),
                ),
            );
            return response();
        },
    };
}
