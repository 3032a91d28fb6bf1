// Days, months of a year, and how long a loan runs.

const months = [
    'enero',
    'febrero',
    'marzo',
    'abril',
    'mayo',
    'junio',
    'julio',
    'agosto',
    'septiembre',
    'octubre',
    'noviembre',
    'diciembre',
];

/// Months count from one.
interface Day {
    day: number;
    month: number;
    year: number;
}

export const figures = {
    date: ({day, month, year}: Day) => `${day} de ${months[month - 1]} de ${year}`,
    short_date: ({day, month, year}: Day) => `${day} ${months[month - 1].slice(0, 3)} ${year}`,
    short_month: ({month, year}: {month: number; year: number}) =>
        `${months[month - 1].slice(0, 3)} ${year}`,
    month: ({month, year}: {month: number; year: number}) => `${months[month - 1]} de ${year}`,
    term: (count: number) =>
        count % 12 === 0
            ? `${count / 12} año${count === 12 ? '' : 's'}`
            : `${count} mes${count === 1 ? '' : 'es'}`,
};
