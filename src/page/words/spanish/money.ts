// What a builder's money can do, and the names of the credits that the page writes for it.
import {rich} from '../phrase';
import type {CreditUse} from '../english/money';
import type {Parts, Texts} from '../phrase';

const credit_names: Record<CreditUse, string> = {
    points: 'Crédito del constructor para puntos',
    temporary_buydown: 'Crédito del constructor para una reducción temporal de la tasa',
    closing_costs: 'Crédito del constructor para costos de cierre',
    upfront_fee: 'Crédito del constructor para el cargo inicial',
    prepaids: 'Crédito del constructor para gastos prepagados',
};

const shares = {
    off_price: 'rebaja del precio',
    points: ({rate, points}: Texts<'rate' | 'points'>) => `puntos: ${rate} con ${points}`,
    buydown: ({buydown}: Texts<'buydown'>) => `reducción temporal ${buydown} (buydown)`,
    closing_costs: 'costos de cierre',
    fee_financed: 'cargo inicial',
    fee_in_cash: ({fee}: Texts<'fee'>) => `${fee}, en efectivo`,
    prepaids: 'gastos prepagados',
    without_use: 'sin usar, no queda nada que pagar',
    over_cap: 'se pierde, supera el límite',
};

const table = {
    split: 'Reparto',
    month_now: 'Pago mensual ahora',
    after_three_years: 'Después de tres años',
    cost_over: ({years}: Texts<'years'>) => `Costo en ${years}`,
    lost_to_cap: 'Sobre el límite',
    nothing_to_pay: 'Sin usar',
    each: 'Cada reparto en cifras',
    best: 'Todos los repartos que ningún otro supera',
    best_count: ({count}: {count: number}) =>
        `Todos los repartos que ningún otro supera (${count})`,
    without: 'Sin el dinero',
    split_name: ({
        off_price,
        buydown,
        in_cash,
    }: Texts<'off_price'> & {buydown: string | null; in_cash: string | null}) =>
        `${off_price} de rebaja del precio` +
        (buydown ? `, buydown ${buydown}` : '') +
        (in_cash ? `, ${in_cash} en efectivo` : ''),
};

const chart = {
    title:
        'Cada punto es un reparto que ningún otro supera en pago, efectivo y costo a la vez. La ' +
        'línea une los que dan el menor pago ahora por su efectivo; los puntos tenues cuestan ' +
        'menos con los años.',
    label: 'Efectivo para el cierre y pago mensual ahora. La tabla de abajo tiene las mismas cifras.',
    stands_at: ({name, month, closing}: Texts<'name' | 'month' | 'closing'>) =>
        `${name}: ${month}, ${closing}`,
    without: 'sin el dinero',
};

const split = {
    month_after_three_years: 'Pago después de tres años',
    all_cash: 'Efectivo necesario',
    as_now: 'El dinero ya se usa así.',
    use: 'Usarlo así',
    take_out: 'Dejar de usarlo',
    used: ({loan}: Texts<'loan'>) => `El dinero del constructor se usa así con ${loan}`,
    taken_out: 'El dinero del constructor ya no se usa',
    not_off_price:
        'Una rebaja del precio tiene que ser un incentivo de la lista de precios. Ningún ' +
        'incentivo de aquí se puede usar así.',
    not_so: ({why}: Texts<'why'>) =>
        `La lista de precios no permite usar su incentivo así: ${why}.`,
};

export const money = {
    credit_names,
    shares,
    table,
    chart,
    split,

    title: 'Qué puede hacer el dinero del constructor',
    says:
        'El mismo dinero puede rebajar el precio. También puede pagar costos de cierre, puntos, ' +
        'una reducción temporal de la tasa (buydown), o un cargo inicial o una prima de seguro en ' +
        'efectivo. Vea cada uso por separado y repartido.',
    amount: 'El constructor da',
    no_amount: 'Escriba cuánto da el constructor.',
    years: 'Ver el costo en',
    years_label: 'Años en los que se ve el costo',
    years_unit: 'años',
    instead: 'En lugar de los incentivos que se usan ahora, no además de ellos',

    whole_loan: 'todo el préstamo',
    lowest_payment: 'El menor pago ahora',
    least_cash: 'El menor efectivo para el cierre',
    least_cost: ({years}: Texts<'years'>) => `El menor costo en ${years}`,
    all_off_price: ({use}: Texts<'use'>) => `Todo: ${use}`,
    all_to: ({use}: Texts<'use'>) => `Todo para ${use}`,
    a_split_between: 'Un reparto intermedio',
    allowed: ({uses, first}: {uses: string[]; first: string | null}) =>
        (uses.length > 0
            ? `Todos los incentivos de esta vivienda sirven para ${uses.join(', ')}`
            : 'Los incentivos de esta vivienda no comparten ningún uso') +
        (first ? `; por eso se abre primero «${first}».` : '.'),
    bests: 'Lo mejor de todos los repartos',

    no_cap:
        'Este préstamo no tiene límite para las contribuciones del vendedor y otras partes ' +
        'interesadas.',
    cap: ({
        percent,
        of,
        amount,
        concessions_alone,
        taken,
    }: Texts<'percent' | 'amount'> & {
        of: 'price' | 'value';
        concessions_alone: boolean;
        taken: string | null;
    }) =>
        'El vendedor y otras partes interesadas pueden contribuir hasta ' +
        `${percent} del ${of === 'price' ? 'precio' : 'valor'}, ${amount}` +
        (concessions_alone
            ? ', contando solo los gastos prepagados, las reducciones de la tasa (buydown) y el ' +
              'cargo de la VA (funding fee)'
            : '') +
        (taken ? `. De eso, ya se usan ${taken}.` : '.'),
    without_it: ({
        loan,
        month,
        closing,
        terms,
        estimate,
        cap,
    }: Parts<'loan' | 'month' | 'closing' | 'terms' | 'estimate' | 'cap'>) =>
        rich`${loan}, sin el dinero: ${month} al mes; ${closing}. ${terms}. ${estimate} ${cap}`,
    all_cash_down:
        'El pago inicial toma todo el efectivo que usted tiene, sin importar cómo se reparta el ' +
        'dinero.',
    why_not: ({use, why}: Texts<'use' | 'why'>) => `${use}: ${why}`,
    lender: ({lender}: Texts<'lender'>) => `Depende del prestamista: ${lender}.`,
    any_lender:
        'Usted puede elegir cualquier prestamista. Si el dinero depende de uno, compare el costo ' +
        'total de ese préstamo con el de otro préstamo sin el dinero.',
};
