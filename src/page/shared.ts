// An answer that repeats most of the one before: what is the same is the same object, so that nothing
// of it is drawn again.

function shared_list(before: unknown[], after: unknown[]): unknown[] {
    const list = after.map((one, at) => shared(before[at], one));
    const same = before.length === list.length && list.every((one, at) => one === before[at]);
    return same ? before : list;
}

type Members = Record<string, unknown>;

function shared_members(before: Members, after: Members): Members {
    const keys = Object.keys(after);
    let same = Object.keys(before).length === keys.length;
    const made: Members = {};
    for (const key of keys) {
        made[key] = shared(before[key], after[key]);
        same &&= made[key] === before[key] && key in before;
    }
    return same ? before : made;
}

/// `after`, made of as much of `before` as is equal; `before` itself where all of it is. Both are
/// plain values out of JSON.
export function shared<T>(before: unknown, after: T): T {
    if (before === after) return after;
    if (typeof before !== 'object' || typeof after !== 'object' || !before || !after) return after;
    if (Array.isArray(before) !== Array.isArray(after)) return after;
    return (
        Array.isArray(after)
            ? shared_list(before as unknown[], after)
            : shared_members(before as Members, after as Members)
    ) as T;
}
