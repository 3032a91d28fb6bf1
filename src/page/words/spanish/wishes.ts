// The wishes: the list of them, and which fit within the limits.
import type {Texts} from '../phrase';

const list = {
    none: 'Aún no hay deseos. Agregue uno aquí o en la visita.',
    level_of: ({name}: Texts<'name'>) => `Variante de ${name}`,
    how_much_of: ({name}: Texts<'name'>) => `Cantidad: ${name}`,
    worth: 'valor',
    worth_of: ({name}: Texts<'name'>) => `Valor: ${name}`,
    take_off: ({name}: Texts<'name'>) => `Quitar: ${name}`,
    something_else: 'Otro deseo',
    add: 'Agregar a la lista de deseos',
    take_off_any: 'En la lista de deseos: quitar',
    take_it_off: ({rank}: Texts<'rank'>) => `Deseo n.º ${rank}: quitar`,

    on: ({name}: Texts<'name'>) => `${name}: en la lista de deseos`,
    off: ({name}: Texts<'name'>) => `${name}: fuera de la lista de deseos`,
    dearer: ({name}: Texts<'name'>) => `${name}: más arriba en la lista`,
    less_dear: ({name}: Texts<'name'>) => `${name}: más abajo en la lista`,
    must_changed: ({name}: Texts<'name'>) => `${name}: esencial`,
    worth_changed: ({name}: Texts<'name'>) => `${name}: valor`,
};

type Over = Record<'monthly' | 'cash', string | null>;

function over({monthly, cash}: Over): string {
    return [monthly && `${monthly} al mes`, cash && `${cash} de efectivo`]
        .filter(Boolean)
        .join(' y ');
}

interface Next {
    name: string;
    raise: Over;
    give_up: string;
    gained: string | null;
}

const next = ({name, raise}: {name: string; raise: Over}) =>
    `${name} cabría con ${over(raise)} más`;

export const wishes = {
    list,
    title: 'Qué deseos caben',
    says:
        'Ponga primero el deseo que más quiere. La página revisa todo lo que la lista de precios ' +
        'permite combinar y elige lo que más vale para usted dentro de sus límites.',
    change_them: 'Cambiar la lista de deseos',
    month_may_come_to: 'Pago mensual, como máximo',
    cash_may_come_to: 'Efectivo necesario, como máximo',
    every_lot: 'En todos los lotes disponibles donde cabe el plano',
    lots: ({count, best}: {count: number; best: string}) =>
        `${count === 1 ? 'Se revisó 1 lote' : `Se revisaron ${count} lotes`}. El mejor es el lote ${best}.`,

    raised: ({month, cash, name, raise}: Texts<'month' | 'cash' | 'name'> & {raise: Over}) =>
        `Con ${month} al mes y ${cash} en efectivo no cabe ningún deseo. ` +
        `Los límites empiezan ${over(raise)} más arriba, que es lo que requiere ${name}. ` +
        'Lo que cabe ahí es lo que más valor tiene para usted.',
    fits: 'Lo que cabe',
    nothing_fits: 'Nada cabe',
    over_already: (limits: Over) =>
        `Solo con lo esencial, la vivienda supera sus límites en ${over(limits)}.`,
    needed: 'un deseo lo necesita',
    held: 'ya está en la vivienda',
    none_fits: 'Ningún deseo cabe dentro de estos límites. Suba uno de ellos.',
    then: ({
        price,
        month,
        cash,
        terms,
        estimate,
    }: Texts<'price' | 'month' | 'cash' | 'terms' | 'estimate'>) =>
        `La vivienda entonces: precio del contrato de ${price}, ${month} al mes, ${cash} de ` +
        `efectivo necesario. ${terms}. ${estimate}`,
    proven: 'Comprobado: ninguna otra combinación tiene más valor.',
    best_so_far: ({most, worth}: Texts<'most' | 'worth'>) =>
        `Lo mejor hasta ahora: esta combinación tiene un valor de ${worth}. Ninguna puede tener ` +
        `más de ${most}.`,
    incentives_lost: ({names}: Texts<'names'>) => `No se da en este lote: ${names}.`,
    put_in: 'Agregar esto a la vivienda',
    were_put_in: ({names}: Texts<'names'>) => `Se agregó: ${names}`,
    were_put_in_on: ({names, lot}: Texts<'names' | 'lot'>) =>
        `Se agregó: ${names}, en el lote ${lot}`,

    left_out: 'Lo que quedó fuera',
    by_the_loan: 'el préstamo no estaría disponible',
    too_much: (limits: Over) => `supera los límites en ${over(limits)}`,
    left_out_why: ({
        why,
        needs,
        in_place_of,
    }: Texts<'why'> & {needs: string | null; in_place_of: string | null}) =>
        why +
        (needs ? `; necesita ${needs}` : '') +
        (in_place_of ? `; reemplazaría ${in_place_of}` : ''),
    next_never: (one: Pick<Next, 'name' | 'raise'>) =>
        `${next(one)}. Dentro de los límites, ninguna combinación lo incluye.`,
    next_not_found: (one: Pick<Next, 'name' | 'raise'>) =>
        `${next(one)}. Dentro de los límites, la búsqueda no encontró ninguna combinación que lo ` +
        'incluya.',
    next_or: ({give_up, gained, ...one}: Next) =>
        `${next(one)}, o sin ${give_up}` +
        (gained ? `. Entonces también cabría ${gained}` : '') +
        '.',
};
