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

export const figures = {
    /// "24 November 2026"; months count from one.
    date: ({day, month, year}: {day: number; month: number; year: number}) =>
        `${day} ${months[month - 1]} ${year}`,
    month: ({month, year}: {month: number; year: number}) => `${months[month - 1]} ${year}`,
    /// "30 years" of 360 months.
    term: (count: number) => (count % 12 === 0 ? years(count / 12) : `${count} months`),
};
