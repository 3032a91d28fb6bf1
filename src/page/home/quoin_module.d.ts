// The loader of the engine's module (src/apps/browser/quoin.mjs), as the worker uses it.
declare module '*/quoin.mjs' {
    interface Reply {
        status: number;
        type: string;
        bytes: Uint8Array;
    }
    export function load(bytes: BufferSource): Promise<{
        hold(path: string, file: Uint8Array): void;
        open(today: string, language: string): Reply;
        reply(method: string, address: string, language: string, body?: string): Reply;
    }>;
}
