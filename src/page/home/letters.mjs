// Bytes in letters that a file of text may hold: two of 91 stand for thirteen bits of them, or for
// fourteen where these are few enough (basE91). A fifth shorter than base64's four of 64.
//
// The letters are those that can be typed, but for "<", which may begin an element, and the two that
// some programs take for a sign of their own.
const letters = Array.from({length: 94}, (_, i) => String.fromCharCode(33 + i))
    .filter((letter) => !'<&\\'.includes(letter))
    .join('');
const few = 88; // values of thirteen bits up to here have room for one bit more

/** @param {Uint8Array} bytes */
export function to_letters(bytes) {
    let text = '';
    let bits = 0;
    let count = 0;
    const put = (value) => {
        text += letters[value % 91] + letters[Math.floor(value / 91)];
    };
    for (const byte of bytes) {
        bits |= byte << count;
        count += 8;
        if (count <= 13) continue;
        const size = (bits & 8191) > few ? 13 : 14;
        put(bits & ((1 << size) - 1));
        bits >>= size;
        count -= size;
    }
    if (count > 0) put(bits);
    return text;
}

/** @param {string} text what `to_letters` wrote of `length` bytes; of any other, other bytes */
export function from_letters(text, length) {
    const place = new Uint8Array(128);
    for (let i = 0; i < letters.length; i += 1) place[letters.charCodeAt(i)] = i;
    const bytes = new Uint8Array(length);
    let bits = 0;
    let count = 0;
    let at = 0;
    for (let i = 0; i + 1 < text.length; i += 2) {
        const value = place[text.charCodeAt(i) & 127] + place[text.charCodeAt(i + 1) & 127] * 91;
        bits |= value << count;
        count += (value & 8191) > few ? 13 : 14;
        for (; count > 7; count -= 8) {
            if (at < length) bytes[at] = bits & 255;
            at += 1;
            bits >>= 8;
        }
    }
    return bytes;
}
