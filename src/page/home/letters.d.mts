export function to_letters(bytes: Uint8Array): string;
export function from_letters(text: string, length: number): Uint8Array<ArrayBuffer>;
