// Days, months of a year, and how long a loan runs.

const months = [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
];

function years(count: number): string {
    return `${count} year${count === 1 ? '' : 's'}`;
}

/// Months count from one.
interface Day {
    day: number;
    month: number;
    year: number;
}

export const figures = {
    /// "November 24, 2026", in a sentence.
    date: ({day, month, year}: Day) => `${months[month - 1]} ${day}, ${year}`,
    /// "Nov 24, 2026", where room is short.
    short_date: ({day, month, year}: Day) => `${months[month - 1].slice(0, 3)} ${day}, ${year}`,
    /// "Nov 2026", in a table.
    short_month: ({month, year}: {month: number; year: number}) =>
        `${months[month - 1].slice(0, 3)} ${year}`,
    month: ({month, year}: {month: number; year: number}) => `${months[month - 1]} ${year}`,
    /// "30 years" of 360 months.
    term: (count: number) =>
        count % 12 === 0 ? years(count / 12) : `${count} month${count === 1 ? '' : 's'}`,
};
