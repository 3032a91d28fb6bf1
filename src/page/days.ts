// Days as answers write them, by the clock of whoever looks.

/// "2026-11-28"
export function day_of(when: Date): string {
    const two = (number: number) => String(number).padStart(2, '0');
    return `${when.getFullYear()}-${two(when.getMonth() + 1)}-${two(when.getDate())}`;
}

export function today(): string {
    return day_of(new Date());
}
