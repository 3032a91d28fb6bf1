// What the entries of a catalogue are made of, besides plain text.
import type {ComponentChildren} from 'preact';

/// The values of an entry that are text: names, and figures as they are written.
export type Texts<Names extends string> = Record<Names, string>;

/// Those of a sentence in which something is marked, or a name is shown in its own way.
export type Part = ComponentChildren;
export type Parts<Names extends string> = Record<Names, Part>;

/// Sets words of a sentence apart, as <strong> does.
export type Mark = (words: Part) => Part;
export type Marks<Names extends string> = Record<Names, Mark>;

/// Such a sentence, as its pieces in order: a component shows them as they are.
export type Rich = Part[];

/// rich`${strong('To go on:')} ${changes}.`
export function rich(texts: TemplateStringsArray, ...parts: Part[]): Rich {
    return texts.flatMap((text, at): Part[] => [text, parts[at]]);
}

/// "ranch" as "Ranch", where it begins a sentence.
export function capital(words: string): string {
    return words.slice(0, 1).toUpperCase() + words.slice(1);
}
